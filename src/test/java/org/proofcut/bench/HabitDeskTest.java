package org.proofcut.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.agroal.api.AgroalDataSource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.proofcut.core.habit.Lesson;
import org.proofcut.core.habit.Observation;
import org.proofcut.core.habit.Trait;
import org.proofcut.core.intake.Demo;
import org.proofcut.core.intake.RulingForms;
import org.proofcut.core.measure.Length;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.plan.OperationSheet;
import org.proofcut.core.proof.Verdict;
import org.proofcut.core.run.Act;
import org.proofcut.core.run.SheetProgress;
import org.proofcut.core.run.Stage;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.shop.RouterTable;
import org.proofcut.logbook.Logbook;

/** What the proof cuts of a job teach while it is worked. */
@QuarkusTest
class HabitDeskTest {

  private static final String TABLET = "tablet";

  @Inject JobDesk jobs;
  @Inject ShopFloor floor;
  @Inject WorkBench bench;
  @Inject HabitDesk desk;
  @Inject Logbook logbook;
  @Inject AgroalDataSource database;

  private Taught taught;
  private String job;

  @BeforeEach
  void keepJob() {
    taught = new Taught(logbook, floor);
    job = jobs.keep(Optional.empty(), Demo.job()).value().orElseThrow().id();
  }

  @AfterEach
  void discardJob() {
    bench.discard(job);
    taught.forget();
  }

  private static SheetProgress atFirstProof(Hand hand) {
    return hand.until(now -> now.stage() == Stage.PROOF && !now.verdicts().isEmpty());
  }

  private static SheetProgress atProofOfASlot(Hand hand) {
    return hand.until(
        now -> now.stage() == Stage.PROOF && now.sheet().operation().kind() == OperationKind.DADO);
  }

  /** Reads every measure as its target and this much more. */
  private static void measure(Hand hand, SheetProgress proof, String more) {
    for (var verdict : proof.verdicts()) {
      measure(hand, proof, verdict, more);
    }
  }

  private static void measure(Hand hand, SheetProgress proof, Verdict verdict, String more) {
    var measure = verdict.measure();
    for (int i = 0; i < measure.readings(); i++) {
      hand.act(
          proof,
          new Act.ReadingTaken(
              proof.attempt(),
              measure.dimension(),
              measure.target().value().plus(Length.of(more))));
    }
  }

  private List<Observation> kept(SheetProgress proof) {
    return logbook.observations().stream()
        .filter(one -> one.proof().startsWith(job + "/" + proof.sheet().id() + "/"))
        .toList();
  }

  @Test
  void firstProof_teachesOnceItIsWhollyMeasured() {
    var hand = new Hand(bench, job, TABLET);
    var proof = atProofOfASlot(hand);
    var last = proof.verdicts().get(proof.verdicts().size() - 1);
    for (var verdict : proof.verdicts().subList(0, proof.verdicts().size() - 1)) {
      measure(hand, proof, verdict, "0.05 mm");
    }
    assertEquals(List.of(), kept(proof));
    measure(hand, proof, last, "0.05 mm");

    var kept = kept(proof);
    assertEquals(
        List.of(job + "/" + proof.sheet().id() + "/" + proof.sheet().marks().fingerprint() + "/1"),
        kept.stream().map(Observation::proof).distinct().toList());
    var setup = proof.setup().orElseThrow();
    var width =
        kept.stream()
            .filter(one -> one.trait().equals(new Trait.CutWidth(setup.cutter().id())))
            .findFirst()
            .orElseThrow();
    assertEquals(setup.cutter().diameter(), width.set());
    assertTrue(kept.stream().anyMatch(one -> one.trait() instanceof Trait.ScaleOffset));
    for (var one : kept) {
      assertTrue(desk.habits().of(one.trait()).learned().contains(one), one.toString());
    }
  }

  @Test
  void proofAfterACorrection_teachesNothing() {
    var hand = new Hand(bench, job, TABLET);
    var proof = atFirstProof(hand);
    measure(hand, proof, "0.9 mm");
    var kept = kept(proof);
    assertFalse(kept.isEmpty());
    hand.act(proof, hand.sheet(proof.sheet().id()).corrections());
    var again = hand.until(now -> now.sheet().id().equals(proof.sheet().id()) && now.isMeasured());
    assertEquals(2, again.attempt());
    assertEquals(kept, kept(proof));
  }

  @Test
  void readingsThrownAway_areLeftOut_andTakenAgainAreJudgedAnew() {
    var hand = new Hand(bench, job, TABLET);
    var proof = atProofOfASlot(hand);
    measure(hand, proof, "0.9 mm");
    var first = kept(proof);
    assertFalse(first.isEmpty());
    var dropped =
        proof.verdicts().stream()
            .filter(verdict -> verdict.measure().dimension() == Dimension.WIDTH)
            .findFirst()
            .orElseThrow();
    hand.act(proof, new Act.ReadingsDropped(1, Dimension.WIDTH));
    for (var one : first) {
      var lessons = desk.habits().of(one.trait()).lessons();
      var lesson =
          lessons.stream().filter(each -> each.observation().equals(one)).findFirst().orElseThrow();
      assertEquals(
          "its readings were thrown away",
          assertInstanceOf(Lesson.LeftOut.class, lesson).because());
    }
    measure(hand, hand.sheet(proof.sheet().id()), dropped, "0 mm");
    var again = kept(proof);
    assertEquals(2 * first.size(), again.size());
    var width =
        again.subList(first.size(), again.size()).stream()
            .filter(one -> one.trait() instanceof Trait.CutWidth)
            .findFirst()
            .orElseThrow();
    assertEquals(List.of(width), desk.habits().of(width.trait()).learned());
  }

  /** As on a full disk: what it teaches can't be kept, and so the act is not either. */
  @Test
  void observation_thatCannotBeKept_takesItsActWithIt() throws SQLException {
    var hand = new Hand(bench, job, TABLET);
    var proof = atFirstProof(hand);
    run(
        "create trigger disk_full before insert on observation begin select raise(abort, 'x'); end");
    try {
      assertThrows(RuntimeException.class, () -> measure(hand, proof, "0 mm"));
    } finally {
      run("drop trigger disk_full");
    }
    assertEquals(List.of(), kept(proof));
    assertFalse(hand.sheet(proof.sheet().id()).isMeasured());
    hand.until(SheetProgress::isMeasured);
    assertFalse(kept(proof).isEmpty());
  }

  private void run(String sql) throws SQLException {
    try (var connection = database.getConnection();
        var statement = connection.createStatement()) {
      statement.executeUpdate(sql);
    }
  }

  @Test
  void discard_job_keepsWhatItTaught() {
    var hand = new Hand(bench, job, TABLET);
    var proof = atFirstProof(hand);
    measure(hand, proof, "0 mm");
    var kept = kept(proof);
    bench.discard(job);
    assertEquals(kept, kept(proof));
    assertTrue(desk.habits().of(kept.get(0).trait()).learned().contains(kept.get(0)));
  }

  @Test
  void demo_teachesNothing() {
    var before = logbook.observations();
    var demo = jobs.keepDemo().id();
    try {
      var hand = new Hand(bench, demo, TABLET);
      measure(hand, atFirstProof(hand), "0.1 mm");
      assertEquals(before, logbook.observations());
    } finally {
      bench.discard(demo);
    }
  }

  @Test
  void habits_unchanged_areNotWorkedOutAgain() {
    taught.fenceOff("0.3 mm");
    var habits = desk.habits();
    assertSame(habits, desk.habits());
    taught.fenceOff("0.3 mm");
    assertEquals(2, desk.habits().of(taught.fence()).learned().size());
    desk.rule(at -> RulingForms.takenUp(taught.fence(), at));
    assertEquals(2, desk.habits().of(taught.fence()).learned().size());
  }

  private OperationSheet sheet(OperationKind kind) {
    return bench.work(job).orElseThrow().plan().sheets().stream()
        .filter(sheet -> sheet.operation().kind() == kind)
        .findFirst()
        .orElseThrow();
  }

  private static Setup setup(OperationSheet sheet) {
    return sheet.operation().setup().orElseThrow();
  }

  private void teachHeight(Setup of, String offset) {
    var height = new Trait.ScaleOffset(of.machine().id(), of.cutter().id(), Trait.Datum.HEIGHT);
    for (int proof = 0; proof < 4; proof++) {
      var set = Length.ofMillimetres(6);
      logbook.append(
          new Observation(
              "taught-" + proof, height, set, set.plus(Length.of(offset)), Instant.now()));
    }
  }

  /** The rabbet for the top comes before that for the back, with the same cutter. */
  private void assertOneCutter() {
    var top = setup(sheet(OperationKind.RABBET));
    var back = setup(sheet(OperationKind.BACK_RABBET));
    assertTrue(top.machine() instanceof RouterTable);
    assertEquals(top.machine(), back.machine());
    assertEquals(top.cutter(), back.cutter());
    assertEquals(List.of(), back.taught());
  }

  @Test
  void sheetThatIsBegun_keepsItsFigures_theNextUsesWhatWasTaughtSince() {
    var hand = new Hand(bench, job, TABLET);
    var begun = atFirstProofOf(hand, OperationKind.RABBET);
    assertOneCutter();
    var next = setup(sheet(OperationKind.BACK_RABBET));
    teachHeight(setup(begun), "0.4 mm");
    bench.planAllAgain();

    assertEquals(setup(begun), setup(sheet(OperationKind.RABBET)));
    assertEquals(Stage.PROOF, hand.sheet(begun.id()).stage());
    var height = setup(sheet(OperationKind.BACK_RABBET)).setting(Setting.Role.HEIGHT).orElseThrow();
    assertEquals(Length.of("-0.4 mm"), height.read().value().minus(height.set().value()));
    assertEquals(next.setting(Setting.Role.HEIGHT).orElseThrow().set(), height.set());
    int revision = bench.work(job).orElseThrow().revision();
    bench.planAllAgain();
    assertEquals(revision, bench.work(job).orElseThrow().revision());
  }

  /** What was taught elsewhere since the plan was made does not move figures under the hand. */
  @Test
  void firstActOnASheet_leavesTheFiguresThatWereSeen() {
    var hand = new Hand(bench, job, TABLET);
    hand.until(now -> now.sheet().operation().kind() == OperationKind.RABBET);
    assertOneCutter();
    var seen = sheet(OperationKind.RABBET);
    teachHeight(setup(seen), "0.4 mm");
    var reached = atFirstProofOf(hand, OperationKind.RABBET);
    assertEquals(setup(seen), setup(reached));
    assertFalse(setup(sheet(OperationKind.BACK_RABBET)).taught().isEmpty());
  }

  private static OperationSheet atFirstProofOf(Hand hand, OperationKind kind) {
    return hand.until(now -> now.stage() == Stage.PROOF && now.sheet().operation().kind() == kind)
        .sheet();
  }
}
