package org.proofcut.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.setup.CutsForTests.assertRefused;
import static org.proofcut.core.setup.CutsForTests.assertSet;
import static org.proofcut.core.setup.CutsForTests.entered;
import static org.proofcut.core.setup.CutsForTests.setup;
import static org.proofcut.core.setup.CutsForTests.withAids;
import static org.proofcut.core.setup.CutsForTests.work;
import static org.proofcut.core.setup.ShopsForTests.CONDITIONS;
import static org.proofcut.core.setup.ShopsForTests.FLUSH;
import static org.proofcut.core.setup.ShopsForTests.HAND;
import static org.proofcut.core.setup.ShopsForTests.LIMITS;
import static org.proofcut.core.setup.ShopsForTests.ROUND_OVER;
import static org.proofcut.core.setup.ShopsForTests.TABLE;
import static org.proofcut.core.setup.ShopsForTests.bearing;
import static org.proofcut.core.setup.ShopsForTests.mm;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.CutAsked.EdgeKind;
import org.proofcut.core.setup.CutAsked.EdgeProfile;
import org.proofcut.core.setup.CutAsked.FlushTrim;
import org.proofcut.core.setup.CutSimulation.Direction;
import org.proofcut.core.setup.CutSimulation.Met;
import org.proofcut.core.setup.CutSimulation.Motion;
import org.proofcut.core.setup.CutSimulation.Truth;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.setup.Pass.Engages;
import org.proofcut.core.setup.Refusal.Reason;
import org.proofcut.core.shop.BearingCutter;
import org.proofcut.core.shop.BearingCutter.Profile;

/** Profiles by a cutter with a bearing of 12 and a largest diameter of 24: 6 mm over the face. */
class EdgeCutsTest {

  private static final Work SHELF = work("600 mm", "300 mm", "18 mm");

  private static EdgeProfile profile(String width, String height, EdgeKind edge, Work work) {
    return new EdgeProfile(Profile.ROUND_OVER, entered(width), entered(height), edge, work);
  }

  private static EdgeProfile roundOver(EdgeKind edge) {
    return profile("6 mm", "6 mm", edge, SHELF);
  }

  private static Answer onTable(EdgeProfile asked) {
    return EdgeProfileSetup.table(asked, TABLE, ROUND_OVER, withAids("starting-pin"));
  }

  private static Answer byHand(EdgeProfile asked) {
    return EdgeProfileSetup.hand(asked, HAND, ROUND_OVER, CONDITIONS);
  }

  @Nested
  class Profiles {

    @Test
    void straightEdge_ridesTheFence_inLineWithTheBearing() {
      var setup = setup(onTable(roundOver(EdgeKind.OUTSIDE_STRAIGHT)));
      // (24 − 12) ÷ 2
      assertSet("6 mm", Setting.Role.FENCE, setup);
      assertSet("6 mm", Setting.Role.HEIGHT, setup);
      assertEquals(Guide.FENCE, setup.guide());
      assertEquals(Feed.RIGHT_TO_LEFT, setup.feed());
      assertEquals(Engages.AWAY_FROM_GUIDE, setup.passes().get(0).engages());
    }

    @Test
    void curvedEdge_ridesTheBearing_begunAtThePin_orIsRefusedWithoutOne() {
      var curved = roundOver(EdgeKind.OUTSIDE_CURVED);
      var setup = setup(onTable(curved));
      assertEquals(Guide.BEARING_WITH_PIN, setup.guide());
      assertEquals(Optional.empty(), setup.setting(Setting.Role.FENCE));
      assertRefused(
          Reason.AID_MISSING, EdgeProfileSetup.table(curved, TABLE, ROUND_OVER, CONDITIONS));
    }

    @Test
    void opening_isNoWorkForTheTable_andClockwiseByHand() {
      var inside = roundOver(EdgeKind.INSIDE);
      assertRefused(Reason.NOT_ALLOWED, onTable(inside));
      assertEquals(Feed.CLOCKWISE_INSIDE, setup(byHand(inside)).feed());
      var outside = setup(byHand(roundOver(EdgeKind.OUTSIDE_CURVED)));
      assertEquals(Feed.COUNTER_CLOCKWISE_ROUND, outside.feed());
      assertEquals(Guide.BEARING, outside.guide());
    }

    @Test
    void highProfile_isCutInSeveralHeights_theLastALightOne() {
      var high = profile("6 mm", "12 mm", EdgeKind.OUTSIDE_STRAIGHT, SHELF);
      // 12 − 0.5 in two, 5.75 down to 5.7
      assertEquals(
          List.of("off 5.7 mm", "off 11.5 mm", "off 12 mm"),
          CutsForTests.depths(setup(onTable(high))));
    }

    @Test
    void reachOfTheCutter_isWhatIsWanted_withinItsTolerance() {
      // 0.3 either side of 6
      setup(onTable(profile("5.7 mm", "6 mm", EdgeKind.OUTSIDE_STRAIGHT, SHELF)));
      setup(onTable(profile("6.3 mm", "6 mm", EdgeKind.OUTSIDE_STRAIGHT, SHELF)));
      assertRefused(
          Reason.CUTTER_TOO_WIDE,
          onTable(profile("5.69 mm", "6 mm", EdgeKind.OUTSIDE_STRAIGHT, SHELF)));
      assertRefused(
          Reason.CUTTER_TOO_NARROW,
          onTable(profile("6.31 mm", "6 mm", EdgeKind.OUTSIDE_STRAIGHT, SHELF)));
    }

    @Test
    void edgeLeftForTheBearing_isRefusedUnderTheLimit_atItIsNot() {
      // 3 mm have to be left of it.
      setup(byHand(profile("6 mm", "6 mm", EdgeKind.INSIDE, work("600 mm", "300 mm", "9 mm"))));
      assertRefused(
          Reason.TOO_DEEP,
          byHand(profile("6 mm", "6 mm", EdgeKind.INSIDE, work("600 mm", "300 mm", "8.99 mm"))));
    }

    @Test
    void pieceThatDoesNotCarryTheRouter_isRefused_atTheLimitItIsNot() {
      // Half the base, 80, and 50 for clamps; all of it, 160, and 50.
      var edge = EdgeKind.OUTSIDE_STRAIGHT;
      setup(byHand(profile("6 mm", "6 mm", edge, work("210 mm", "130 mm", "18 mm"))));
      assertRefused(
          Reason.WORK_TOO_SMALL,
          byHand(profile("6 mm", "6 mm", edge, work("209.9 mm", "130 mm", "18 mm"))));
      assertRefused(
          Reason.WORK_TOO_SMALL,
          byHand(profile("6 mm", "6 mm", edge, work("210 mm", "129.9 mm", "18 mm"))));
    }

    @Test
    void narrowPieceOnTheTable_isRefused_atTheLimitItIsNot() {
      var edge = EdgeKind.OUTSIDE_STRAIGHT;
      setup(onTable(profile("6 mm", "6 mm", edge, work("600 mm", "60 mm", "18 mm"))));
      assertRefused(
          Reason.WORK_TOO_SMALL,
          onTable(profile("6 mm", "6 mm", edge, work("600 mm", "59.9 mm", "18 mm"))));
    }

    @Test
    void width_isMeasuredOnlyWhereTheWholeProfileShows() {
      assertEquals(
          List.of(Dimension.WIDTH, Dimension.DEPTH),
          dimensions(onTable(roundOver(EdgeKind.OUTSIDE_STRAIGHT))));
      assertEquals(
          List.of(Dimension.DEPTH),
          dimensions(onTable(profile("6 mm", "4 mm", EdgeKind.OUTSIDE_STRAIGHT, SHELF))));
    }

    private List<Dimension> dimensions(Answer answer) {
      return setup(answer).measures().stream().map(Measure::dimension).toList();
    }
  }

  @Nested
  class Trims {

    private static FlushTrim trim(String overhang, String layer, String under) {
      return new FlushTrim(
          entered(overhang), entered(layer), entered(under), EdgeKind.OUTSIDE_STRAIGHT, SHELF);
    }

    private static Answer byHand(FlushTrim asked, BearingCutter cutter) {
      return FlushTrimSetup.hand(asked, HAND, cutter, CONDITIONS);
    }

    @Test
    void edges_reachALittleBelowTheLayer_inOnePass_withNothingToProve() {
      var setup = setup(byHand(trim("2 mm", "4 mm", "18 mm"), FLUSH));
      assertSet("5 mm", Setting.Role.DEPTH, setup);
      assertEquals(1, setup.passes().size());
      assertEquals(List.of(), setup.measures());
    }

    @Test
    void overhang_isAtMostTheLimit() {
      setup(byHand(trim("3 mm", "4 mm", "18 mm"), FLUSH));
      assertRefused(Reason.TOO_DEEP, byHand(trim("3.01 mm", "4 mm", "18 mm"), FLUSH));
      // Beyond the middle of a thin cutter its edges would run with the feed.
      var thin = bearing("thin", Profile.FLUSH_TRIM, "5 mm", "5 mm");
      setup(byHand(trim("2.5 mm", "4 mm", "18 mm"), thin));
      assertRefused(Reason.TOO_DEEP, byHand(trim("2.51 mm", "4 mm", "18 mm"), thin));
    }

    @Test
    void bearing_hasAnEdgeToRideBelowTheLayer() {
      // 1 mm of it is passed by the edges, 3 mm have to be left.
      setup(byHand(trim("2 mm", "4 mm", "4 mm"), FLUSH));
      assertRefused(Reason.TOO_DEEP, byHand(trim("2 mm", "4 mm", "3.9 mm"), FLUSH));
    }

    @Test
    void bearingOfAnotherSizeThanTheCutter_isRefused() {
      assertRefused(
          Reason.CUTTER_TOO_WIDE,
          byHand(
              trim("2 mm", "4 mm", "18 mm"),
              bearing("worn", Profile.FLUSH_TRIM, "11.9 mm", "12 mm")));
      setup(
          byHand(
              trim("2 mm", "4 mm", "18 mm"),
              bearing("fair", Profile.FLUSH_TRIM, "11.96 mm", "12 mm")));
    }

    @Test
    void layer_comesOutLevelWithTheEdge_withoutAClimbCut() {
      var setup = setup(byHand(trim("2 mm", "4 mm", "18 mm"), FLUSH));
      var cut = CutSimulation.cut(setup, mm(300), Truth.asMarked(setup));
      assertEquals(mm(2).negated(), cut.wood().nearWall());
      assertEquals(Length.ZERO, cut.wood().farWall());
      assertFalse(cut.passes().get(0).isClimb());
      assertTrue(cut.passes().get(0).pressesOn());
    }
  }

  @Nested
  class WhichWayRound {

    private final Setup outside = setup(byHand(roundOver(EdgeKind.OUTSIDE_CURVED)));

    private Met met(Motion motion) {
      return CutSimulation.cutByBearing(outside, mm(300), Truth.asMarked(outside), motion)
          .passes()
          .get(0);
    }

    /** At any place of the edge, with the wood toward the middle or away from it. */
    @Test
    void outsideCounterClockwise_insideClockwise_areGood_theOthersClimb() {
      for (var at :
          List.of(
              new Direction(1, 0),
              new Direction(0, 1),
              new Direction(-1, 0),
              new Direction(0, -1))) {
        assertFalse(met(Motion.round(at, 1, -1)).isClimb(), "outside, counter-clockwise " + at);
        assertTrue(met(Motion.round(at, 1, -1)).pressesOn());
        assertFalse(met(Motion.round(at, -1, 1)).isClimb(), "inside, clockwise " + at);
        assertTrue(met(Motion.round(at, -1, 1)).pressesOn());
        assertTrue(met(Motion.round(at, -1, -1)).isClimb(), "outside, clockwise " + at);
        assertTrue(met(Motion.round(at, 1, 1)).isClimb(), "inside, counter-clockwise " + at);
      }
    }

    @Test
    void onTheTable_fromLeftToRight_isAClimbCut() {
      var wrong = new Motion(1, new Direction(1, 0), new Direction(0, -1), 1);
      assertTrue(met(wrong).isClimb());
      assertFalse(met(Motion.byBearing(Feed.RIGHT_TO_LEFT)).isClimb());
    }
  }

  @Provide
  Arbitrary<Setup> setups() {
    var cutters =
        Combinators.combine(
                Arbitraries.of(Profile.ROUND_OVER, Profile.CHAMFER, Profile.RABBET, Profile.OGEE),
                RandomCuts.micrometres(8_000, 20_000),
                RandomCuts.micrometres(1_000, 12_000))
            .as(
                (kind, bearing, reach) ->
                    new BearingCutter(
                        "b",
                        "b",
                        kind,
                        bearing,
                        bearing.plus(reach.times(2)),
                        mm(20),
                        2,
                        mm(8),
                        Optional.of(18_000)));
    return Combinators.combine(
            cutters,
            RandomCuts.micrometres(1_000, 16_000),
            Arbitraries.of(EdgeKind.values()),
            RandomCuts.micrometres(8_000, 40_000),
            Arbitraries.of(true, false))
        .as(
            (cutter, height, edge, thickness, table) -> {
              var asked =
                  new EdgeProfile(
                      cutter.profile(),
                      entered(cutter.cutWidth().toString()),
                      entered(height.toString()),
                      edge,
                      work("600 mm", "300 mm", thickness.toString()));
              return table
                  ? EdgeProfileSetup.table(asked, TABLE, cutter, withAids("starting-pin"))
                  : EdgeProfileSetup.hand(asked, HAND, cutter, CONDITIONS);
            })
        .filter(100_000, Setup.class::isInstance)
        .map(Setup.class::cast);
  }

  @Property(tries = 1_500, edgeCases = EdgeCasesMode.NONE)
  void anyProfile_isAsWideAndHighAsAsked_withoutAClimbCut(@ForAll("setups") Setup setup) {
    Statistics.label("guide").collect(setup.guide());
    var asked = (EdgeProfile) setup.asked();
    var cut = CutSimulation.cut(setup, mm(300), Truth.asMarked(setup));
    assertEquals(Length.ZERO, cut.wood().nearWall());
    var off = cut.wood().farWall().minus(asked.width().value()).abs();
    assertTrue(off.isAtMost(LIMITS.settings().distanceTolerance().value()), () -> off + " off");
    var high = cut.wood().deepest().minus(asked.height().value()).abs();
    assertTrue(
        high.isAtMost(LIMITS.settings().depthTolerance().value()), () -> high + " off in height");
    for (var met : cut.passes()) {
      assertFalse(met.isClimb(), () -> "climb cut in " + setup);
      assertTrue(met.pressesOn(), () -> "pulled off in " + setup);
      assertTrue(met.bite().isAtMost(LIMITS.router().deepestPass().value()), () -> "bites " + met);
    }
  }
}
