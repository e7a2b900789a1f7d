package org.proofcut.core.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.proofcut.core.casework.CaseDesign;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.checklist.Item;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.plan.Marks;
import org.proofcut.core.plan.OperationSheet;
import org.proofcut.core.plan.Plan;
import org.proofcut.core.plan.PlansForTests;
import org.proofcut.core.proof.Verdict;
import org.proofcut.core.safety.Check.Pause;
import org.proofcut.core.setup.Measure.Dimension;

class ProgressTest {

  private static final Instant MORNING = Instant.parse("2026-03-02T09:00:00Z");
  private static final String DADO = "dado:bottom";

  private final Bench bench = new Bench(PlansForTests.plan());

  @Nested
  class Stages {

    @Test
    void firstSheet_isOpen_theNextIsLocked() {
      var sheets = bench.progress().sheets();
      assertEquals(Stage.SET, sheets.get(0).stage());
      assertEquals(Stage.LOCKED, sheets.get(1).stage());
      assertEquals("Sheet 1 is not signed off yet", sheets.get(1).lockedBecause());
    }

    @Test
    void dado_goesThroughEveryStageInOrder() {
      bench.signOffAllBefore(DADO);
      var stages = new ArrayList<Stage>();
      stages.add(bench.stage(DADO));
      bench.confirm(DADO, Pause.SET);
      stages.add(bench.stage(DADO));
      bench.confirm(DADO, Pause.MACHINE);
      stages.add(bench.stage(DADO));
      bench.confirm(DADO, Pause.BEFORE_POWER);
      stages.add(bench.stage(DADO));
      bench.prove(DADO);
      stages.add(bench.stage(DADO));
      bench.cutAll(DADO);
      stages.add(bench.stage(DADO));
      bench.confirm(DADO, Pause.LEAVE_SAFE);
      bench.act(DADO, new Act.SignedOff());
      stages.add(bench.stage(DADO));
      assertEquals(
          List.of(
              Stage.SET,
              Stage.MACHINE,
              Stage.BEFORE_POWER,
              Stage.PROOF,
              Stage.CUT,
              Stage.LEAVE_SAFE,
              Stage.DONE),
          stages);
    }

    @Test
    void partTickedByMistake_isStillToCut() {
      bench.toTheCut(DADO);
      bench.cutAll(DADO);
      bench.act(DADO, new Act.PartNotCut("right-side"));
      assertEquals(Stage.CUT, bench.stage(DADO));
    }

    @Test
    void overriding_opensTheCutAndSaysWhy() {
      bench.toTheProof(DADO);
      bench.act(DADO, new Act.Overridden("the same set-up as last week"));
      assertEquals(Stage.CUT, bench.stage(DADO));
      assertEquals(
          new ProofState.Overridden("the same set-up as last week"), bench.sheet(DADO).proof());
    }
  }

  @Nested
  class Proofs {

    @Test
    void oneReadingOut_isCorrectedBySettingTheStrip() {
      bench.toTheProof(DADO);
      // Accepted 17.83 to 17.91, aimed at 17.87; found 17.79 to 17.81: 0.07 too narrow.
      bench.read(DADO, Dimension.WIDTH, "17.79 mm", "17.80 mm", "17.81 mm");
      var verdict = bench.sheet(DADO).nextVerdict().orElseThrow();
      assertEquals(Verdict.Outcome.CHANGE, verdict.outcome());
      bench.read(DADO, Dimension.DEPTH, "6 mm", "6 mm", "6 mm");
      bench.read(DADO, Dimension.DISTANCE, "100 mm", "100 mm");
      assertEquals(Stage.PROOF, bench.stage(DADO));
      bench.act(DADO, new Act.Corrected(List.of(verdict.correction().orElseThrow())));

      var after = bench.sheet(DADO);
      assertEquals(2, after.attempt());
      assertEquals(
          Length.of("1.96 mm"),
          after
              .setup()
              .orElseThrow()
              .setting(org.proofcut.core.setup.Setting.Role.STRIP)
              .orElseThrow()
              .set()
              .value());
      assertEquals(java.util.Set.of("figure:strip"), after.askedAgain());
      assertEquals(Stage.SET, after.stage());
    }

    @Test
    void provenDepth_isHandedOnForTheFinalLengths() {
      bench.toTheProof(DADO);
      bench.read(DADO, Dimension.WIDTH, "17.87 mm", "17.86 mm", "17.88 mm");
      bench.read(DADO, Dimension.DEPTH, "6.11 mm", "6.09 mm", "6.10 mm");
      bench.read(DADO, Dimension.DISTANCE, "100 mm", "100.1 mm");
      var depths = bench.progress().provenDepths().byHousing();
      assertEquals(Length.of("6.1 mm"), depths.get("left-side:bottom").value());
      assertEquals(Length.of("6.1 mm"), depths.get("right-side:bottom").value());
    }

    @Test
    void knock_losesTheProofAndSaysWhy() {
      bench.toTheCut(DADO);
      bench.act(DADO, new Act.Disturbed("the fence was knocked"));
      var sheet = bench.sheet(DADO);
      assertEquals(new ProofState.Lost("the fence was knocked", List.of()), sheet.proof());
      assertEquals(Stage.SET, sheet.stage());
    }

    @Test
    void nextDay_oneReadingIsAskedBeforeTheProofCounts() {
      bench.toTheCut(DADO);
      bench.wait(Duration.ofDays(1));
      bench.confirm(DADO, Pause.MACHINE);
      bench.confirm(DADO, Pause.BEFORE_POWER);
      assertEquals(new ProofState.ReadAgainFirst(), bench.sheet(DADO).proof());
      assertEquals(Stage.PROOF, bench.stage(DADO));
      bench.act(DADO, new Act.ReadAgain(Length.of("102.0 mm")));
      assertEquals(Stage.CUT, bench.stage(DADO));
    }

    @Test
    void nextDay_anotherReadingLosesTheProof() {
      bench.toTheCut(DADO);
      bench.wait(Duration.ofDays(1));
      bench.act(DADO, new Act.ReadAgain(Length.of("102.1 mm")));
      assertTrue(bench.sheet(DADO).proof() instanceof ProofState.Lost);
    }

    @Test
    void changedPlan_losesTheProofAndSaysWhatChanged() {
      bench.toTheCut(DADO);
      bench.planAnew(higherPlinth());
      var lost = (ProofState.Lost) bench.sheet(DADO).proof();
      var fence = lost.changed().stream().filter(one -> one.what().equals("fence")).findFirst();
      assertEquals(new Marks.Difference("fence", "101.9 mm", "111.9 mm"), fence.orElseThrow());
    }

    @Test
    void changedPlan_leavesOtherSetUpsProven() {
      bench.toTheCut("rabbet:top");
      bench.planAnew(higherPlinth());
      assertEquals(new ProofState.Proven(), bench.sheet("rabbet:top").proof());
    }
  }

  @Nested
  class Interruptions {

    @Test
    void tenMinutes_areNoInterruption_aSecondMoreIs() {
      bench.toTheCut(DADO);
      bench.wait(Duration.ofMinutes(10));
      assertEquals(Stage.CUT, bench.stage(DADO));
      bench.wait(Duration.ofSeconds(1));
      var sheet = bench.sheet(DADO);
      assertEquals(Stage.BEFORE_POWER, sheet.stage());
      assertTrue(sheet.askedAgain().contains("gear:glasses:on"), sheet.askedAgain().toString());
      assertFalse(sheet.askedAgain().contains("figure:fence"), "figures stay");
    }

    @Test
    void anotherTablet_isAskedForGearAgain() {
      bench.toTheCut(DADO);
      bench.device = "second tablet";
      bench.act(DADO, new Act.PartCut("left-side"));
      assertEquals(Stage.BEFORE_POWER, bench.stage(DADO));
    }
  }

  @Nested
  class Permissions {

    @Test
    void gear_beforeTheMachineIsSet_isRefused() {
      bench.signOffAllBefore(DADO);
      assertRefused(new Act.Confirmed("gear:glasses:on", "On"));
    }

    @Test
    void cutting_beforeTheProof_isRefused() {
      bench.toTheProof(DADO);
      assertRefused(new Act.PartCut("left-side"));
    }

    @Test
    void figure_readWrong_isRefused_oneStepOff_isNot() {
      bench.signOffAllBefore(DADO);
      assertRefused(new Act.Confirmed("figure:fence", "110.9 mm"));
      assertRefused(new Act.Confirmed("figure:fence", "set"));
      assertAllowed(new Act.Confirmed("figure:fence", "102 mm"));
    }

    @Test
    void glovesAtTheCutter_areRefusedWhateverTheReason() {
      bench.signOffAllBefore(DADO);
      bench.confirm(DADO, Pause.SET);
      bench.confirm(DADO, Pause.MACHINE);
      assertRefused(new Act.WentWithout("gear:gloves:off", "cold hands"));
      assertAllowed(new Act.WentWithout("gear:glasses:on", "they fogged up"));
    }

    @Test
    void moreReadingsThanAsked_areRefused() {
      bench.toTheProof(DADO);
      bench.read(DADO, Dimension.DISTANCE, "100 mm", "100 mm");
      assertRefused(new Act.ReadingTaken(1, Dimension.DISTANCE, Length.of("100 mm")));
      assertRefused(new Act.ReadingTaken(2, Dimension.WIDTH, Length.of("17.8 mm")));
      assertAllowed(new Act.ReadingTaken(1, Dimension.WIDTH, Length.of("17.8 mm")));
    }

    @Test
    void signingOff_beforeTheMachineIsSafe_isRefused() {
      bench.toTheCut(DADO);
      bench.cutAll(DADO);
      assertRefused(new Act.SignedOff());
      bench.confirm(DADO, Pause.LEAVE_SAFE);
      assertAllowed(new Act.SignedOff());
    }

    private void assertRefused(Act act) {
      assertTrue(refuse(act).isPresent(), act + " was allowed");
    }

    private Optional<Problem> refuse(Act act) {
      return new Permission(bench.sheet(DADO), LengthUnit.MILLIMETRE).refuse(act);
    }

    private void assertAllowed(Act act) {
      assertEquals(Optional.empty(), refuse(act));
    }
  }

  @Nested
  class TheMachineItself {

    private static final Duration LESS_THAN_A_BREAK = Duration.ofMinutes(59);

    private final String first = pair(true).get(0).id();
    private final String second = pair(true).get(1).id();

    @Test
    void nextSheet_atTheSameMachineWithTheSameCutter_doesNotAskAgain() {
      workThrough(first);
      assertEquals(List.of(), bench.sheet(second).open(Pause.MACHINE));
      bench.confirm(second, Pause.SET);
      assertEquals(Stage.BEFORE_POWER, bench.stage(second));
      assertEquals(
          bench.sheet(first).answers().get(item()), bench.sheet(second).answers().get(item()));
    }

    @Test
    void nextSheet_withAnotherCutterOrMachine_asks() {
      var other = pair(false);
      workThrough(other.get(0).id());
      assertEquals(1, bench.sheet(other.get(1).id()).open(Pause.MACHINE).size());
    }

    @Test
    void nextSheet_afterOneThatWasSignedOffUnlooked_asks() {
      bench.signOffAllBefore(second);
      assertEquals(1, bench.sheet(second).open(Pause.MACHINE).size());
    }

    @Test
    void shortInterruption_asksForGearAgainAndNotForTheMachine() {
      bench.signOffAllBefore(first);
      bench.confirm(first, Pause.SET);
      bench.confirm(first, Pause.MACHINE);
      bench.confirm(first, Pause.BEFORE_POWER);
      bench.wait(LESS_THAN_A_BREAK);
      assertEquals(Stage.BEFORE_POWER, bench.stage(first));
      bench.confirm(first, Pause.BEFORE_POWER);
      bench.wait(LESS_THAN_A_BREAK);
      assertEquals(List.of(), bench.sheet(first).open(Pause.MACHINE));
    }

    @Test
    void breakOfAnHour_andTheNextMorning_askForTheMachineAgain() {
      workThrough(first);
      bench.wait(LESS_THAN_A_BREAK.plusMinutes(2));
      assertEquals(1, bench.sheet(second).open(Pause.MACHINE).size());
      bench.confirm(second, Pause.SET);
      bench.confirm(second, Pause.MACHINE);
      bench.wait(Duration.ofHours(20));
      assertEquals(Stage.MACHINE, bench.stage(second));
    }

    private String item() {
      return bench.sheet(first).sheet().checklist().at(Pause.MACHINE).get(0).id();
    }

    private void workThrough(String operation) {
      bench.signOffAllBefore(operation);
      bench.confirm(operation, Pause.SET);
      bench.confirm(operation, Pause.MACHINE);
      bench.act(operation, new Act.SignedOff());
    }

    /** Two sheets that follow each other, with the same machine and cutter or with another. */
    private List<OperationSheet> pair(boolean same) {
      var sheets = bench.plan.sheets();
      for (int i = 1; i < sheets.size(); i++) {
        var one = sheets.get(i - 1).operation().setup();
        var other = sheets.get(i).operation().setup();
        if (one.isPresent()
            && other.isPresent()
            && same
                == (one.get().machine().equals(other.get().machine())
                    && one.get().cutter().equals(other.get().cutter()))) {
          return sheets.subList(i - 1, i + 1);
        }
      }
      throw new AssertionError("no two such sheets in the plan");
    }
  }

  private static CaseDesign higherPlinth() {
    var d = CasesForTests.cupboard();
    return new CaseDesign(
        d.name(),
        d.unit(),
        d.outside(),
        d.sheets(),
        d.joinery(),
        new CaseDesign.Plinth(CasesForTests.mm(110), d.plinth().setBack()),
        d.shelves());
  }

  /** A person at the bench, with a clock that moves a second at each act. */
  private static final class Bench {
    private Plan plan;
    private final Map<String, Marks> earlier = new HashMap<>();
    private final List<Entry> entries = new ArrayList<>();
    private Instant now = MORNING;
    String device = "tablet";

    Bench(Plan plan) {
      this.plan = plan;
    }

    void act(String operation, Act act) {
      now = now.plusSeconds(1);
      var sheet = plan.sheet(operation).orElseThrow();
      entries.add(
          new Entry(
              Integer.toString(entries.size()),
              now,
              device,
              operation,
              sheet.marks().fingerprint(),
              act));
    }

    void wait(Duration time) {
      now = now.plus(time);
    }

    void planAnew(CaseDesign design) {
      plan.sheets().forEach(sheet -> earlier.put(sheet.marks().fingerprint(), sheet.marks()));
      plan = PlansForTests.plan(design, progress().provenDepths());
    }

    Progress progress() {
      return Progress.of(plan, earlier, entries, now, ZoneOffset.UTC);
    }

    SheetProgress sheet(String operation) {
      return progress().sheet(operation).orElseThrow();
    }

    Stage stage(String operation) {
      return sheet(operation).stage();
    }

    void signOffAllBefore(String operation) {
      for (OperationSheet sheet : plan.sheets()) {
        if (sheet.id().equals(operation)) {
          return;
        }
        act(sheet.id(), new Act.SignedOff());
      }
    }

    void confirm(String operation, Pause pause) {
      for (var item : sheet(operation).open(pause)) {
        var answer =
            item instanceof Item.Figure figure
                ? sheet(operation)
                    .setup()
                    .orElseThrow()
                    .setting(figure.role())
                    .orElseThrow()
                    .set()
                    .value()
                    .toString()
                : "as asked";
        act(operation, new Act.Confirmed(item.id(), answer));
      }
    }

    void read(String operation, Dimension dimension, String... found) {
      for (var text : found) {
        act(
            operation,
            new Act.ReadingTaken(sheet(operation).attempt(), dimension, Length.of(text)));
      }
    }

    void prove(String operation) {
      for (var verdict : sheet(operation).verdicts()) {
        var measure = verdict.measure();
        for (int i = 0; i < measure.readings(); i++) {
          read(operation, measure.dimension(), measure.target().value().toString());
        }
      }
    }

    void toTheProof(String operation) {
      signOffAllBefore(operation);
      confirm(operation, Pause.SET);
      confirm(operation, Pause.MACHINE);
      confirm(operation, Pause.BEFORE_POWER);
    }

    void toTheCut(String operation) {
      toTheProof(operation);
      prove(operation);
    }

    void cutAll(String operation) {
      plan.sheet(operation)
          .orElseThrow()
          .operation()
          .parts()
          .forEach(part -> act(operation, new Act.PartCut(part.id())));
    }
  }
}
