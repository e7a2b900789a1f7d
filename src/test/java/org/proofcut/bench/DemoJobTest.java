package org.proofcut.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.proofcut.content.Content;
import org.proofcut.core.casework.CaseLimits;
import org.proofcut.core.checklist.PauseCautions;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.intake.Demo;
import org.proofcut.core.intake.JobForm;
import org.proofcut.core.operation.OperationLimits;
import org.proofcut.core.plan.Book;
import org.proofcut.core.plan.Plan;
import org.proofcut.core.plan.Planner;
import org.proofcut.core.safety.Check.Pause;
import org.proofcut.core.safety.SignalWord;
import org.proofcut.core.shop.Shop;

/** The demo job with the content that the service runs on. */
class DemoJobTest {

  private static final Plan PLAN = plan();

  @Test
  void demo_canBeBegun() {
    assertEquals(List.of(), PLAN.problems());
    assertTrue(PLAN.isSound());
  }

  /** What is asked and what stands in full beside it, at every pause of every sheet. */
  @Test
  void noSheet_showsMoreThanNineThingsAtOnce() {
    for (var sheet : PLAN.sheets()) {
      for (var pause : Pause.values()) {
        int asked = sheet.checklist().at(pause).size();
        var cautions = PauseCautions.at(pause, sheet.findings(), Set.of(), asked);
        int things = asked + cautions.open().size();
        assertTrue(things <= 9, sheet.id() + " shows " + things + " things at " + pause);
        var tap = cautions.later().getOrDefault(pause, List.of());
        assertTrue(tap.size() <= 9, sheet.id() + " has " + tap.size() + " more at " + pause);
      }
    }
  }

  /** The content as it is has room for every look that its rules ask for. */
  @Test
  void noSheet_leavesALookUnasked() {
    for (var sheet : PLAN.sheets()) {
      assertEquals(Optional.empty(), sheet.checklist().unasked(), sheet.id());
    }
  }

  @Test
  void noSheet_hasMoreThanTwoDangers() {
    for (var sheet : PLAN.sheets()) {
      long dangers =
          sheet.findings().stream().filter(finding -> finding.word() == SignalWord.DANGER).count();
      assertTrue(dangers <= 2, sheet.id() + " has " + dangers + " dangers");
    }
  }

  static Plan plan() {
    return planner().plan(JobForm.read(Demo.job()).value().orElseThrow(), shop());
  }

  static Planner planner() {
    var content = Content.bundled();
    return new Planner(
        new Book(
            content.limits(CaseLimits.class),
            content.limits(FitLimits.class),
            content.setupLimits(),
            content.limits(OperationLimits.class),
            content.rulebook(),
            content.wording()));
  }

  static Shop shop() {
    return Rehearsal.shop(Content.bundled());
  }
}
