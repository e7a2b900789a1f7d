package org.proofcut.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.setup.ShopsForTests.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.CutAsked.Slot;
import org.proofcut.core.setup.CutSimulation.Truth;
import org.proofcut.core.shop.TableSaw.BlindCuts;

/** Every slot set up at the saw is cut in simulated wood, as its sheet says. */
class SawSlotsByCuttingTest {

  private static final SetupLimits LIMITS = ShopsForTests.LIMITS;
  private static final Conditions CONDITIONS = RandomSawSlots.CONDITIONS;

  @Provide
  Arbitrary<RandomSawSlots.Trial> trials() {
    return RandomSawSlots.trials();
  }

  @Property(tries = 3_000, edgeCases = EdgeCasesMode.NONE)
  void anySetup_cutsWhatWasAsked(@ForAll("trials") RandomSawSlots.Trial trial) {
    var answer = trial.answer();
    Statistics.label("answer").collect(describe(trial, answer));
    Statistics.label("made")
        .collect(trial.stacked() ? "stack" : "passes", answer instanceof Setup)
        .coverage(
            coverage -> {
              coverage.check("stack", true).percentage(share -> share > 8);
              coverage.check("passes", true).percentage(share -> share > 15);
            });
    Assume.that(answer instanceof Setup);
    var setup = (Setup) answer;
    var across = trial.across();
    var truth = Truth.asMarked(setup);
    var cut =
        CutSimulation.cutAtSaw(
            setup, across, truth, unevenStrips(setup, trial.uneven()), CutSimulation.AWAY);
    assertAsAsked(setup, cut.wood());
    var passes = setup.passes();
    assertTrue(passes.size() <= LIMITS.saw().mostPassesAtSaw().value());
    var alike = CutSimulation.cut(setup, across, truth).passes();
    for (int i = 0; i < passes.size(); i++) {
      var met = cut.passes().get(i);
      assertFalse(met.isClimb(), "climb cut");
      assertTrue(met.pressesOn(), "lifted off the table");
      assertTrue(
          met.bite().isAtMost(setup.setting(Setting.Role.HEIGHT).orElseThrow().set().value()));
      assertSame(alike.get(i).covers(), passes.get(i));
      if (i > 0) {
        var overlap = passes.get(i - 1).takes().most().minus(passes.get(i).takes().least());
        // The pack is set to a step, and a pack may not divide into whole picometres.
        var rounded = LIMITS.settings().fineStep().value().half().plus(new Length(2));
        assertTrue(
            overlap.plus(rounded).isAtLeast(LIMITS.router().leastOverlap().value()),
            () -> "overlap " + overlap + " in " + passes);
      }
    }
  }

  private static void assertSame(Band found, Pass pass) {
    var off = found.least().minus(pass.takes().least()).abs();
    assertTrue(off.isAtMost(new Length(5)), () -> found + " is not " + pass.takes());
    assertEquals(found.extent(), pass.takes().extent());
  }

  private static void assertAsAsked(Setup setup, CutSimulation wood) {
    for (var measure : setup.measures()) {
      var found =
          switch (measure.dimension()) {
            case WIDTH -> wood.width();
            case DEPTH -> wood.deepest();
            case DISTANCE -> wood.nearWall();
            case SIZE, RUN_ACROSS, RUN_THROUGH, RUN_ALONG, DIAMETER, FROM_END ->
                throw new AssertionError("a slot parts nothing");
          };
      assertTrue(measure.accepted().contains(found), () -> measure + " found " + found);
    }
    assertEquals(wood.deepest(), wood.shallowest(), "the floor is level and no fin stands");
  }

  /** Strips of a pack as they come: only the pack is calipered, and none is over its most. */
  private static List<Length> unevenStrips(Setup setup, List<Integer> uneven) {
    var strips = new ArrayList<>(CutSimulation.equalStrips(setup));
    if (strips.size() < 2) {
      return strips;
    }
    var most = setup.cutter().cutWidth().minus(LIMITS.router().leastOverlap().value());
    for (int i = 1; i < strips.size(); i++) {
      // Moves thickness from one strip to its neighbour, as far as that one bears it.
      var room = most.minus(strips.get(i)).min(strips.get(i - 1)).max(Length.ZERO);
      var moved = new Length(room.picometres() / 100 * uneven.get(i));
      strips.set(i, strips.get(i).plus(moved));
      strips.set(i - 1, strips.get(i - 1).minus(moved));
    }
    return strips;
  }

  private static String describe(RandomSawSlots.Trial trial, Answer answer) {
    var how = trial.stacked() ? "stack " : "blade ";
    return answer instanceof Setup setup
        ? how + setup.guide().id() + ", passes " + setup.passes().size()
        : how + "refused " + ((Refusal) answer).reason();
  }

  /** The simulation has to see what is wrong, or its silence says nothing. */
  @Nested
  class SeededFaults {

    private final Setup good =
        (Setup)
            SawSlotSetup.passes(
                new Slot(
                    Worked.entered("width", Length.of("8.1 mm")),
                    CutsForTests.band("8.05 mm", "8.15 mm"),
                    Worked.entered("depth", mm(6)),
                    Worked.entered("distance", mm(100)),
                    CutsForTests.work("900 mm", "400 mm", "17.7 mm")),
                ShopsForTests.sawWith(new BlindCuts(true, Optional.empty())),
                ShopsForTests.RIP_BLADE,
                CONDITIONS);

    /** A pack of 5.3 in three strips. */
    @Test
    void asSetUp_isGood() {
      var cut = cut(good, CutSimulation.equalStrips(good), CutSimulation.AWAY);
      assertAsAsked(good, cut.wood());
      assertEquals(4, cut.passes().size());
      assertTrue(cut.passes().stream().noneMatch(CutSimulation.Met::isClimb));
    }

    @Test
    void fedFromBehind_isAClimbCut_andLifts() {
      var met = cut(good, CutSimulation.equalStrips(good), CutSimulation.TOWARD_YOU).passes();
      assertTrue(met.stream().allMatch(CutSimulation.Met::isClimb));
      assertTrue(met.stream().noneMatch(CutSimulation.Met::pressesOn));
    }

    @Test
    void stripForgottenOfThePack_isTooNarrow() {
      var strips = CutSimulation.equalStrips(good);
      var few = List.of(strips.get(0), strips.get(1), Length.ZERO);
      assertTooNarrowOrWide(cut(good, few, CutSimulation.AWAY).wood());
    }

    @Test
    void packThickerThanSet_isTooWide() {
      var strips = CutSimulation.equalStrips(good);
      var thick = List.of(strips.get(0), strips.get(1), strips.get(2).plus(Length.of("0.06 mm")));
      assertTooNarrowOrWide(cut(good, thick, CutSimulation.AWAY).wood());
    }

    @Test
    void kerfWiderThanMarked_isTooWide() {
      var wide = new Truth(Length.of("2.9 mm"), Length.ZERO, Length.ZERO);
      assertTooNarrowOrWide(
          CutSimulation.cutAtSaw(
                  good, mm(400), wide, CutSimulation.equalStrips(good), CutSimulation.AWAY)
              .wood());
    }

    @Test
    void stripThickerThanTheKerf_leavesAFin() {
      var strips = List.of(Length.of("0.8 mm"), Length.of("0.8 mm"), Length.of("3.7 mm"));
      var wood = cut(good, strips, CutSimulation.AWAY).wood();
      assertEquals(Length.ZERO, wood.shallowest());
    }

    @Test
    void twoStripsTakenOutAtOnce_leaveAFin() {
      var passes = new ArrayList<>(good.passes());
      passes.remove(1);
      assertEquals(
          Length.ZERO,
          cut(with(passes), CutSimulation.equalStrips(good), CutSimulation.AWAY)
              .wood()
              .shallowest());
    }

    @Test
    void lastStripLeftIn_isTooNarrow() {
      var passes = good.passes().subList(0, good.passes().size() - 1);
      assertTooNarrowOrWide(
          cut(with(passes), CutSimulation.equalStrips(good), CutSimulation.AWAY).wood());
    }

    @Test
    void shimForgottenInAStack_isTooNarrow() {
      var owned =
          StacksTest.set(
              StacksTest.layers("3.2 mm", 3, "1.6 mm", 1), StacksTest.layers("0.3 mm", 1));
      var stack =
          (Setup)
              SawSlotSetup.stacked(
                  CutsForTests.slot(
                      "6 mm", "100 mm", CutsForTests.work("900 mm", "400 mm", "17.7 mm")),
                  ShopsForTests.sawWith(new BlindCuts(false, Optional.of(mm(20)))),
                  owned.with(
                      StacksTest.layers("3.2 mm", 3, "1.6 mm", 1),
                      StacksTest.layers("0.3 mm", 1),
                      "s"),
                  CONDITIONS);
      assertEquals(Length.of("17.9 mm"), Truth.asMarked(stack).cuts());
      var less = new Truth(Length.of("17.6 mm"), Length.ZERO, Length.ZERO);
      var wood = CutSimulation.cutAtSaw(stack, mm(400), less, List.of(), CutSimulation.AWAY).wood();
      assertFalse(stack.measures().get(0).accepted().contains(wood.width()));
    }

    private void assertTooNarrowOrWide(CutSimulation wood) {
      assertFalse(good.measures().get(0).accepted().contains(wood.width()), wood.width()::toString);
    }

    private CutSimulation.Result cut(
        Setup setup, List<Length> strips, CutSimulation.Direction feed) {
      return CutSimulation.cutAtSaw(setup, mm(400), Truth.asMarked(setup), strips, feed);
    }

    private Setup with(List<Pass> passes) {
      return good.with(passes);
    }
  }
}
