package org.proofcut.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.logbook.ShopItem.Shelf.KIT;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.Demo;
import org.proofcut.core.measure.Length;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.run.Act;
import org.proofcut.core.run.SheetProgress;
import org.proofcut.core.run.Stage;
import org.proofcut.logbook.Logbook;
import org.proofcut.logbook.ShopItem;

@QuarkusTest
class WorkBenchTest {

  private static final String TABLET = "tablet by the saw";

  @Inject JobDesk desk;
  @Inject ShopFloor floor;
  @Inject WorkBench bench;
  @Inject Logbook logbook;

  private String job;

  @BeforeEach
  void keepJob() {
    new Taught(logbook, floor).forget();
    job = desk.keepDemo().id();
  }

  @AfterEach
  void discardJob() {
    bench.discard(job);
    // As the demo has it, for other tests.
    pushSticks().forEach(floor::remove);
    floor.keepDemo();
    bench.planAllAgain();
  }

  @Test
  void sheetStoppedByARule_isToldOnTheJob_andOpensWhenTheShopIsPutRight() {
    pushSticks().forEach(floor::remove);
    var told = desk.draft(desk.job(job).orElseThrow().typed());
    assertTrue(told.isSound(), "work can begin");
    assertTrue(
        told.problems().stream().anyMatch(one -> one.allowed().contains("no-push-stick")),
        told.problems().toString());

    var hand = new Hand(bench, job, TABLET);
    assertTrue(rip().sheet().isStopped());
    assertEquals("A rule stops this operation as planned", rip().lockedBecause());
    assertTrue(refused(hand.current().orElseThrow(), new Act.Held()).isEmpty());

    var typed = Map.of("name", "new stick", "kept-height", "450 mm");
    var tooShort = Map.of("name", "bird's mouth", "kept-height", "300", "kept-width", "60");
    assertEquals(List.of(), floor.keep(Optional.empty(), KIT, "push-stick", tooShort).problems());
    assertTrue(bench.planAgain(job).isEmpty());
    assertTrue(rip().sheet().isStopped(), "that is shorter than 450 mm, or not known to be longer");
    assertEquals(List.of(), floor.keep(Optional.empty(), KIT, "push-stick", typed).problems());
    bench.planAllAgain();
    assertFalse(rip().sheet().isStopped());
    assertEquals(List.of(), desk.draft(desk.job(job).orElseThrow().typed()).problems());
  }

  private List<String> pushSticks() {
    return floor.items().stream()
        .filter(item -> item.shelf() == KIT && item.kind().equals("push-stick"))
        .map(ShopItem::id)
        .toList();
  }

  private SheetProgress rip() {
    return bench.work(job).orElseThrow().progress().sheets().stream()
        .filter(one -> one.sheet().operation().kind() == OperationKind.RIP)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void act_onAPageFromBeforeAChange_saysWhatChanged() {
    var hand = new Hand(bench, job, TABLET);
    var before = hand.until(now -> now.sheet().operation().kind() == OperationKind.DADO);
    var typed = new LinkedHashMap<>(desk.job(job).orElseThrow().typed());
    typed.put("bottom-dado", "7 mm");
    typed.put("shelf-dado", "7 mm");
    assertEquals(List.of(), desk.keep(Optional.of(job), typed).problems());
    bench.planAgain(job);
    var refusal = refused(before, new Act.Held()).orElseThrow();
    assertTrue(
        refusal.what().contains("The plan changed since this page was shown: "), refusal.what());
    assertTrue(refusal.what().contains("height"), refusal.what());
  }

  @Test
  void reading_farFromTheFigure_isASlip() {
    var hand = new Hand(bench, job, TABLET);
    var proof = hand.until(now -> now.stage() == Stage.PROOF);
    var measure = proof.verdicts().get(0).measure();
    var target = measure.target().value();
    var slip = target.plus(target).plus(Length.of("26 mm"));
    assertTrue(
        refused(proof, new Act.ReadingTaken(1, measure.dimension(), slip))
            .orElseThrow()
            .what()
            .contains("is far from"));
    assertEquals(
        Optional.empty(),
        refused(
            proof, new Act.ReadingTaken(1, measure.dimension(), target.plus(Length.of("20 mm")))));
  }

  @Test
  void correction_otherThanTheVerdictsAsk_isRefused() {
    var hand = new Hand(bench, job, TABLET);
    var proof =
        hand.until(
            now ->
                now.stage() == Stage.PROOF
                    && now.verdicts().get(0).measure().correctedBy().isPresent());
    for (var verdict : proof.verdicts()) {
      var measure = verdict.measure();
      var off = measure.accepted().most().plus(measure.accepted().extent());
      for (int i = 0; i < measure.readings(); i++) {
        hand.act(proof, new Act.ReadingTaken(1, measure.dimension(), off));
      }
    }
    var asked = hand.sheet(proof.sheet().id()).corrections();
    assertFalse(asked.corrections().isEmpty());
    assertTrue(refused(proof, new Act.Corrected(List.of())).isPresent());
    assertEquals(Optional.empty(), refused(proof, asked));
  }

  @Test
  void demoShop_hasWhatTheseTestsTakeAway() {
    assertTrue(Demo.things().stream().anyMatch(thing -> thing.kind().equals("push-stick")));
  }

  private Optional<Problem> refused(SheetProgress seen, Act act) {
    return bench.act(
        job,
        new WorkBench.Sent(
            WorkBench.newEntryId(),
            TABLET,
            seen.sheet().id(),
            seen.sheet().marks().fingerprint(),
            act));
  }
}
