package org.proofcut.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.setup.CutsForTests.assertRefused;
import static org.proofcut.core.setup.CutsForTests.assertSet;
import static org.proofcut.core.setup.CutsForTests.cutter;
import static org.proofcut.core.setup.CutsForTests.depths;
import static org.proofcut.core.setup.CutsForTests.entered;
import static org.proofcut.core.setup.CutsForTests.setup;
import static org.proofcut.core.setup.CutsForTests.work;
import static org.proofcut.core.setup.ShopsForTests.CONDITIONS;
import static org.proofcut.core.setup.ShopsForTests.HAND;
import static org.proofcut.core.setup.ShopsForTests.LIMITS;
import static org.proofcut.core.setup.ShopsForTests.TWELVE;
import static org.proofcut.core.setup.ShopsForTests.mm;

import java.util.List;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.CutAsked.Bush;
import org.proofcut.core.setup.CutAsked.TemplateRecess;
import org.proofcut.core.setup.CutSimulation.Truth;
import org.proofcut.core.setup.Refusal.Reason;
import org.proofcut.core.shop.StraightCutter;

/** A recess of 90 by 40 and 9 deep; bush 24 outside and 21 inside, template 12 thick. */
class TemplateSetupTest {

  private static final Bush BUSH = bush("24 mm", "21 mm", "8 mm");

  private static Bush bush(String outside, String bore, String collar) {
    return new Bush(entered(outside), entered(bore), entered(collar));
  }

  private static TemplateRecess recess(
      String length, String width, String depth, String corner, String template, Bush bush) {
    return new TemplateRecess(
        entered(length),
        entered(width),
        entered(depth),
        entered(corner),
        entered(template),
        bush,
        work("400 mm", "300 mm", "18 mm"));
  }

  private static Answer with(StraightCutter cutter, TemplateRecess asked) {
    return TemplateSetup.hand(asked, HAND, cutter, CONDITIONS);
  }

  @Test
  void opening_isLargerByBushLessCutter_andTheCutterStandsOutByTheTemplateToo() {
    var setup = setup(with(TWELVE, recess("90 mm", "40 mm", "9 mm", "6 mm", "12 mm", BUSH)));
    assertSet("102 mm", Setting.Role.OPENING_LENGTH, setup);
    assertSet("52 mm", Setting.Role.OPENING_WIDTH, setup);
    assertSet("21 mm", Setting.Role.DEPTH, setup);
    assertEquals(Guide.TEMPLATE, setup.guide());
    assertEquals(Feed.CLOCKWISE_IN_THE_TEMPLATE, setup.feed());
    // 8.5 in two, 4.25 down to 4.2
    assertEquals(List.of("off 4.2 mm", "off 8.5 mm", "off 9 mm"), depths(setup));
  }

  @Test
  void cornersTighterThanTheCutter_areRefused_asRoundAsItTheyAreNot() {
    setup(with(TWELVE, recess("90 mm", "40 mm", "6 mm", "6 mm", "12 mm", BUSH)));
    assertRefused(
        Reason.CUTTER_TOO_WIDE,
        with(TWELVE, recess("90 mm", "40 mm", "6 mm", "5.99 mm", "12 mm", BUSH)));
  }

  @Test
  void recessAsWideAsTheCutter_isAMortise_narrowerItIsRefused() {
    setup(with(TWELVE, recess("90 mm", "12 mm", "6 mm", "6 mm", "12 mm", BUSH)));
    assertRefused(
        Reason.CUTTER_TOO_WIDE,
        with(TWELVE, recess("90 mm", "11.9 mm", "6 mm", "6 mm", "12 mm", BUSH)));
  }

  @Test
  void bushThatTheCutterRubs_orThatStandsOnTheWork_isRefused() {
    var asked = recess("90 mm", "40 mm", "6 mm", "12 mm", "12 mm", BUSH);
    assertRefused(Reason.CUTTER_DOES_NOT_FIT_MACHINE, with(cutter("21 mm"), asked));
    assertRefused(
        Reason.CUTTER_DOES_NOT_FIT_MACHINE,
        with(TWELVE, recess("90 mm", "40 mm", "6 mm", "6 mm", "8 mm", BUSH)));
    setup(with(TWELVE, recess("90 mm", "40 mm", "6 mm", "6 mm", "8.1 mm", BUSH)));
  }

  @Test
  void recessAsLargeAsThePiece_orAsDeep_isRefused() {
    assertRefused(
        Reason.WORK_TOO_SMALL,
        with(TWELVE, recess("400 mm", "40 mm", "6 mm", "6 mm", "12 mm", BUSH)));
    assertRefused(
        Reason.TOO_DEEP, with(TWELVE, recess("90 mm", "40 mm", "18 mm", "6 mm", "12 mm", BUSH)));
  }

  @Property(tries = 600, edgeCases = EdgeCasesMode.NONE)
  void anyRecess_isAsWideAndDeepAsAsked_clockwiseWithoutAClimbCut_theOtherWayWithOne(
      @ForAll @IntRange(min = 12_000, max = 80_000) int wide,
      @ForAll @IntRange(min = 1_000, max = 17_000) int deep,
      @ForAll @IntRange(min = 8_100, max = 20_000) int template) {
    var width = Length.ofMicrometres(wide);
    var depth = Length.ofMicrometres(deep);
    var asked =
        recess(
            "100 mm",
            width.toString(),
            depth.toString(),
            "6 mm",
            Length.ofMicrometres(template).toString(),
            BUSH);
    var setup = setup(with(TWELVE, asked));
    var truth = Truth.asMarked(setup);
    var overlap = LIMITS.router().leastOverlap().value();
    var cut = CutSimulation.cutInATemplate(setup, truth, overlap, -1);
    var off = cut.wood().farWall().times(2).minus(width).abs();
    assertTrue(off.isAtMost(LIMITS.settings().fineStep().value()), () -> off + " off in " + width);
    var depthOff = cut.wood().deepest().minus(depth).abs();
    assertTrue(depthOff.isAtMost(HAND.depthStep()), () -> depthOff + " off in " + depth);
    assertEquals(cut.wood().deepest(), cut.wood().shallowest());
    for (var met : cut.passes()) {
      assertFalse(met.isClimb(), () -> "climb cut in " + setup);
      assertTrue(
          met.bite().isAtMost(mm(6).plus(HAND.depthStep())), () -> "bites " + met + " in " + setup);
    }
    if (width.isGreaterThan(mm(13))) {
      assertTrue(
          CutSimulation.cutInATemplate(setup, truth, overlap, 1).passes().stream()
              .anyMatch(CutSimulation.Met::isClimb));
    }
  }
}
