package org.proofcut.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.setup.CutsForTests.assertRefused;
import static org.proofcut.core.setup.CutsForTests.assertSet;
import static org.proofcut.core.setup.CutsForTests.band;
import static org.proofcut.core.setup.CutsForTests.entered;
import static org.proofcut.core.setup.CutsForTests.setup;
import static org.proofcut.core.setup.CutsForTests.slot;
import static org.proofcut.core.setup.CutsForTests.withAids;
import static org.proofcut.core.setup.CutsForTests.work;
import static org.proofcut.core.setup.ShopsForTests.RIP_BLADE;
import static org.proofcut.core.setup.StacksTest.layers;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.CutAsked.Slot;
import org.proofcut.core.setup.Pass.Engages;
import org.proofcut.core.setup.Refusal.Reason;
import org.proofcut.core.shop.SawBlade;
import org.proofcut.core.shop.StackedCutter;
import org.proofcut.core.shop.TableSaw;
import org.proofcut.core.shop.TableSaw.BlindCuts;

/** Worked by hand; the blade is 250 mm with a kerf of 2.8 mm. */
class SawSlotSetupTest {

  private static final TableSaw SAW =
      ShopsForTests.sawWith(new BlindCuts(true, Optional.of(Length.of("20 mm"))));
  private static final Conditions WITH_COMB = withAids("featherboard");
  private static final Work PANEL = work("900 mm", "400 mm", "17.7 mm");

  /** For a panel that measures 5.9 to 6.0 mm: 6.1 wide, 6.05 to 6.15 accepted. */
  private static Slot groove(String depth, String distance, Work work) {
    return new Slot(
        entered("6.1 mm"), band("6.05 mm", "6.15 mm"), entered(depth), entered(distance), work);
  }

  private static Answer cut(Slot slot) {
    return SawSlotSetup.passes(slot, SAW, RIP_BLADE, WITH_COMB);
  }

  @Nested
  class SeveralPasses {

    /** A pack of 6.1 − 2.8 = 3.3 in ceil(3.3 ÷ 1.8) = 2 strips: three passes, 1.65 apart. */
    @Test
    void groove_isSharedIntoPasses_withOneStripLessInEach() {
      var setup = setup(cut(groove("6 mm", "10 mm", PANEL)));
      assertSet("13.3 mm", Setting.Role.FENCE, setup);
      assertSet("3.3 mm", Setting.Role.STRIP, setup);
      assertSet("6 mm", Setting.Role.HEIGHT, setup);
      assertEquals(
          "all 2 together by caliper: they make the width; none thicker than 1.80 mm",
          setup.setting(Setting.Role.STRIP).orElseThrow().from());
      assertEquals(3, setup.passes().size());
      assertPass(setup.passes().get(0), 2, "10 mm", "12.8 mm", Engages.BOTH_SIDES);
      assertPass(setup.passes().get(1), 1, "11.65 mm", "14.45 mm", Engages.AWAY_FROM_GUIDE);
      assertPass(setup.passes().get(2), 0, "13.3 mm", "16.1 mm", Engages.AWAY_FROM_GUIDE);
      assertEquals(Guide.FENCE, setup.guide());
      assertEquals(Feed.INTO_THE_BLADE, setup.feed());
    }

    private void assertPass(Pass pass, int strips, String from, String to, Engages engages) {
      assertEquals(Optional.of(strips), pass.strips());
      CutsForTests.assertPass(pass, strips > 0, "6 mm", from, to, engages);
    }

    @Test
    void proof_widthIsCorrectedByThePack_andThePackMovesTheNearWall() {
      var measures = setup(cut(groove("6 mm", "10 mm", PANEL))).measures();
      assertEquals(Optional.of(Setting.Role.STRIP), measures.get(0).correctedBy());
      assertEquals(Optional.of(Setting.Role.HEIGHT), measures.get(1).correctedBy());
      assertEquals(Optional.of(Setting.Role.FENCE), measures.get(2).correctedBy());
      assertEquals(Optional.of(Setting.Role.STRIP), measures.get(2).counteredBy());
    }

    @Test
    void twoPasses_needOneStrip() {
      var slot =
          new Slot(
              entered("4.6 mm"),
              band("4.55 mm", "4.65 mm"),
              entered("6 mm"),
              entered("10 mm"),
              PANEL);
      var setup = setup(cut(slot));
      assertEquals(2, setup.passes().size());
      assertTrue(setup.passes().stream().allMatch(pass -> pass.strips().isEmpty()));
      assertSet("1.8 mm", Setting.Role.STRIP, setup);
    }

    @Test
    void kerfThatFits_needsNoStrip() {
      var slot =
          new Slot(
              entered("2.85 mm"),
              band("2.8 mm", "2.9 mm"),
              entered("6 mm"),
              entered("10 mm"),
              PANEL);
      var setup = setup(cut(slot));
      assertEquals(1, setup.passes().size());
      assertTrue(!setup.usesStrip());
    }

    /** Five passes reach 2.8 + 4 × 1.8 = 10. */
    @Test
    void morePassesThanTheLimit_areRefused() {
      assertEquals(5, setup(cut(ofWidth("10 mm"))).passes().size());
      assertRefused(Reason.CUTTER_TOO_NARROW, cut(ofWidth("10.02 mm")));
      var refusal = (Refusal) cut(slot("6 mm", "100 mm", PANEL));
      assertEquals(
          "250 mm blade can't make a width of 17.87 mm in 5 passes that overlap", refusal.what());
      assertTrue(refusal.instead().startsWith("Rout it, or use a stacked cutter"));
    }

    private Slot ofWidth(String width) {
      return new Slot(
          entered(width), band(width, width), entered("6 mm"), entered("100 mm"), PANEL);
    }

    @Test
    void kerfNotWiderThanTheOverlap_isRefused() {
      var thin =
          new SawBlade(
              "thin", "thin", Length.of("250 mm"), Length.of("1 mm"), 40, Optional.of(7_000));
      assertRefused(
          Reason.CUTTER_TOO_NARROW,
          SawSlotSetup.passes(groove("6 mm", "10 mm", PANEL), SAW, thin, WITH_COMB));
    }

    @Test
    void kerfWiderThanTheSlot_isRefused() {
      assertRefused(Reason.CUTTER_TOO_WIDE, cut(ofWidth("2.79 mm")));
    }

    @Test
    void sawThatSaysNothingOfBlindCuts_orWhoseKnifeCannotStay_isRefused() {
      var slot = groove("6 mm", "10 mm", PANEL);
      assertRefused(
          Reason.NOT_ALLOWED, SawSlotSetup.passes(slot, ShopsForTests.SAW, RIP_BLADE, WITH_COMB));
      var without = ShopsForTests.sawWith(new BlindCuts(false, Optional.empty()));
      assertRefused(Reason.NOT_ALLOWED, SawSlotSetup.passes(slot, without, RIP_BLADE, WITH_COMB));
    }

    @Test
    void bladeWithoutAMark_orMarkedSlower_isRefused() {
      var slot = groove("6 mm", "10 mm", PANEL);
      setup(SawSlotSetup.passes(slot, SAW, marked(Optional.of(4_000)), WITH_COMB));
      assertRefused(
          Reason.TOO_FAST, SawSlotSetup.passes(slot, SAW, marked(Optional.of(3_999)), WITH_COMB));
      assertRefused(
          Reason.TOO_FAST, SawSlotSetup.passes(slot, SAW, marked(Optional.empty()), WITH_COMB));
    }

    private SawBlade marked(Optional<Integer> top) {
      return new SawBlade("b", "blade", Length.of("250 mm"), Length.of("2.8 mm"), 40, top);
    }
  }

  @Nested
  class Guides {

    @Test
    void endTooShortForTheFence_goesToTheSled() {
      assertEquals(Guide.FENCE, setup(onSled("300 mm", "600 mm", "100 mm")).guide());
      var setup = setup(onSled("299.9 mm", "600 mm", "100 mm"));
      assertEquals(Guide.SLED, setup.guide());
      assertSet("103.3 mm", Setting.Role.STOP, setup);
      assertTrue(setup.setting(Setting.Role.FENCE).isEmpty(), "never with the fence");
      assertEquals(Optional.of(Setting.Role.STOP), setup.measures().get(2).correctedBy());
    }

    @Test
    void overhang_upToThreeTimesTheEdge_ridesTheFence() {
      assertEquals(Guide.FENCE, setup(onSled("310 mm", "930 mm", "100 mm")).guide());
      assertEquals(Guide.SLED, setup(onSled("310 mm", "930.1 mm", "100 mm")).guide());
    }

    @Test
    void fenceOutOfReach_goesToTheSled_andBeyondItsStopIsRefused() {
      assertEquals(Guide.FENCE, setup(onSled("600 mm", "1200 mm", "646.7 mm")).guide());
      assertEquals(Guide.SLED, setup(onSled("600 mm", "1200 mm", "646.8 mm")).guide());
      setup(onSled("600 mm", "1200 mm", "996.7 mm"));
      assertRefused(Reason.OUT_OF_REACH, onSled("600 mm", "1200 mm", "996.8 mm"));
    }

    @Test
    void workLongerThanTheSledCarries_isRefused() {
      setup(onSled("620 mm", "1900 mm", "100 mm"));
      assertRefused(Reason.OUT_OF_REACH, onSled("620.1 mm", "1900 mm", "100 mm"));
    }

    @Test
    void sawWithoutASled_saysWhyTheFenceDoesNotServe() {
      var none = ShopsForTests.sawWithoutSled(new BlindCuts(true, Optional.empty()));
      assertRefused(
          Reason.WORK_TOO_SMALL,
          SawSlotSetup.passes(
              groove("6 mm", "100 mm", work("299 mm", "600 mm", "17.7 mm")),
              none,
              RIP_BLADE,
              WITH_COMB));
      assertRefused(
          Reason.END_TOO_SHORT_ON_FENCE,
          SawSlotSetup.passes(
              groove("6 mm", "100 mm", work("310 mm", "931 mm", "17.7 mm")),
              none,
              RIP_BLADE,
              WITH_COMB));
      assertRefused(
          Reason.OUT_OF_REACH,
          SawSlotSetup.passes(
              groove("6 mm", "700 mm", work("600 mm", "1200 mm", "17.7 mm")),
              none,
              RIP_BLADE,
              WITH_COMB));
    }

    @Test
    void nothingButHands_isRefused_aSledIsAJig() {
      var onFence = groove("6 mm", "10 mm", PANEL);
      assertRefused(
          Reason.AID_MISSING, SawSlotSetup.passes(onFence, SAW, RIP_BLADE, withAids("sled")));
      var onSled = groove("6 mm", "100 mm", work("299 mm", "600 mm", "17.7 mm"));
      setup(SawSlotSetup.passes(onSled, SAW, RIP_BLADE, withAids("sled")));
      assertRefused(
          Reason.AID_MISSING, SawSlotSetup.passes(onSled, SAW, RIP_BLADE, withAids("clamps")));
    }

    private Answer onSled(String along, String across, String distance) {
      return cut(groove("6 mm", distance, work(along, across, "17.7 mm")));
    }
  }

  @Nested
  class Depth {

    @Test
    void cutThatGoesThrough_isRefused() {
      setup(cut(groove("17.5 mm", "10 mm", PANEL)));
      assertRefused(Reason.TOO_DEEP, cut(groove("18 mm", "10 mm", PANEL)));
    }

    /** The saw takes 254: a blade of 250 stands 2 mm lower than its greatest 80. */
    @Test
    void deeperThanTheBladeReaches_isRefused() {
      var thick = work("900 mm", "400 mm", "100 mm");
      setup(cut(groove("78 mm", "10 mm", thick)));
      assertRefused(Reason.TOO_DEEP, cut(groove("78.5 mm", "10 mm", thick)));
    }

    @Test
    void depthThatTheStepsMiss_isRefused() {
      setup(cut(groove("6.2 mm", "10 mm", PANEL)));
      assertRefused(Reason.STEP_TOO_COARSE, cut(groove("6.25 mm", "10 mm", PANEL)));
    }

    @Test
    void slotThatCouldRunOutAtTheEdge_isRefused() {
      setup(cut(groove("6 mm", "0.4 mm", PANEL)));
      assertRefused(Reason.OUT_OF_REACH, cut(groove("6 mm", "0.3 mm", PANEL)));
    }

    @Test
    void slotThatRunsOffThePiece_isRefused() {
      assertRefused(Reason.WORK_TOO_SMALL, cut(groove("6 mm", "394 mm", PANEL)));
    }
  }

  @Nested
  class Stacked {

    private final StackedCutter owned =
        StacksTest.set(layers("3.2 mm", 4, "1.6 mm", 1), layers("0.3 mm", 2, "0.1 mm", 4));

    @Test
    void bestStack_cutsInOnePass() {
      var setup = setup(SawSlotSetup.stacked(dado("100 mm"), SAW, owned, WITH_COMB));
      assertEquals(1, setup.passes().size());
      assertEquals(band("100 mm", "117.9 mm"), setup.passes().get(0).takes());
      assertSet("100 mm", Setting.Role.FENCE, setup);
      assertTrue(setup.setting(Setting.Role.STRIP).isEmpty());
      assertEquals(Optional.empty(), setup.measures().get(0).correctedBy());
      assertEquals(
          "stack, 2 outer blades; chippers 3 × 3.20 mm, 1 × 1.60 mm; shims 1 × 0.30 mm",
          setup.cutter().name());
    }

    @Test
    void stacks_anyOfTheFew_canBeSetUp() {
      var stacks = SawSlotSetup.stacks(dado("100 mm"), SAW, owned, WITH_COMB);
      assertEquals(2, stacks.size());
      for (var stack : stacks) {
        assertEquals(
            stack, setup(SawSlotSetup.withStack(dado("100 mm"), SAW, stack, WITH_COMB)).cutter());
      }
    }

    /** Readings 17.66 to 17.78 in 17.9: 0.12 and 0.24 of room. */
    @Test
    void choices_sayWhatRoomIsLeftAtBothEnds() {
      var choices =
          SawSlotSetup.choices(dado("100 mm"), SAW, owned, band("17.66 mm", "17.78 mm"), WITH_COMB);
      assertEquals(2, choices.size());
      for (var choice : choices) {
        assertEquals(Length.of("17.9 mm"), choice.cuts().value());
        assertEquals(band("0.12 mm", "0.24 mm"), choice.room());
      }
    }

    @Test
    void sawThatMayNotTakeAStack_isRefused() {
      for (var saw :
          List.of(
              ShopsForTests.SAW, ShopsForTests.sawWith(new BlindCuts(true, Optional.empty())))) {
        assertRefused(
            Reason.NOT_ALLOWED, SawSlotSetup.stacked(dado("100 mm"), saw, owned, WITH_COMB));
        assertRefused(
            Reason.NOT_ALLOWED, SawSlotSetup.withStack(dado("100 mm"), saw, owned, WITH_COMB));
      }
    }

    @Test
    void stackWiderThanTheArborTakes_isRefused() {
      setup(onArborOf("17.9 mm"));
      assertRefused(Reason.CUTTER_DOES_NOT_FIT_MACHINE, onArborOf("17.89 mm"));
    }

    /** 17.84 is 0.03 off as 17.90 is, and the only one of the two that the arbor takes. */
    @Test
    void narrowerStackThatAlsoServes_isTakenWhereTheArborIsShort() {
      var two = StacksTest.set(layers("3.2 mm", 3, "1.6 mm", 1), layers("0.3 mm", 1, "0.24 mm", 1));
      var saw = ShopsForTests.sawWith(new BlindCuts(true, Optional.of(Length.of("17.85 mm"))));
      var cutter = setup(SawSlotSetup.stacked(dado("100 mm"), saw, two, WITH_COMB)).cutter();
      assertEquals(Length.of("17.84 mm"), cutter.cutWidth());
    }

    private Answer onArborOf(String widest) {
      var saw = ShopsForTests.sawWith(new BlindCuts(true, Optional.of(Length.of(widest))));
      return SawSlotSetup.stacked(dado("100 mm"), saw, owned, WITH_COMB);
    }

    @Test
    void stackOfAnotherWidth_isRefused() {
      assertRefused(
          Reason.NO_STACK_FITS,
          SawSlotSetup.withStack(
              dado("100 mm"),
              SAW,
              owned.with(layers("3.2 mm", 4), layers("0.1 mm", 1), "wrong"),
              WITH_COMB));
    }

    @Test
    void noStackInTheBand_saysWhatIsNearest_andWhichShimWouldDo() {
      var few = StacksTest.set(layers("3.2 mm", 3, "1.6 mm", 1), List.of());
      var refusal = (Refusal) SawSlotSetup.stacked(dado("100 mm"), SAW, few, WITH_COMB);
      assertEquals(Reason.CUTTER_TOO_NARROW, refusal.reason());
      var more = StacksTest.set(layers("3.2 mm", 4, "1.6 mm", 1), List.of());
      refusal = (Refusal) SawSlotSetup.stacked(dado("100 mm"), SAW, more, WITH_COMB);
      assertEquals(Reason.NO_STACK_FITS, refusal.reason());
      assertTrue(refusal.what().endsWith("the nearest cuts 17.60 mm"), refusal.what());
      // 17.83 − 17.6 to 17.91 − 17.6
      assertEquals("Add a shim of 0.23 mm to 0.31 mm", refusal.instead());
    }

    @Test
    void outerBladesWiderThanTheSlot_areRefused() {
      assertRefused(
          Reason.CUTTER_TOO_WIDE,
          SawSlotSetup.stacked(groove("6 mm", "10 mm", PANEL), SAW, owned, WITH_COMB));
    }

    @Test
    void stackOverItsSpeed_orUnmarked_isRefused() {
      setup(marked(Optional.of(4_000)));
      assertRefused(Reason.TOO_FAST, marked(Optional.of(3_999)));
      assertRefused(Reason.TOO_FAST, marked(Optional.empty()));
    }

    private Answer marked(Optional<Integer> top) {
      var cutter =
          new StackedCutter(
              "s",
              "s",
              owned.diameter(),
              24,
              owned.outerKerf(),
              owned.chippers(),
              owned.shims(),
              top);
      return SawSlotSetup.stacked(dado("100 mm"), SAW, cutter, WITH_COMB);
    }

    /** 200 where the saw takes 254: 27 mm lower than 80. */
    @Test
    void deeperThanTheStackReaches_isRefused() {
      setup(deep("53 mm"));
      assertRefused(Reason.TOO_DEEP, deep("53.5 mm"));
    }

    private Answer deep(String depth) {
      return SawSlotSetup.stacked(
          slot(depth, "100 mm", work("900 mm", "400 mm", "100 mm")), SAW, owned, WITH_COMB);
    }

    @Test
    void stackLargerThanTheSawTakes_isRefused() {
      var large =
          new StackedCutter(
              "s",
              "s",
              Length.of("255 mm"),
              24,
              owned.outerKerf(),
              owned.chippers(),
              owned.shims(),
              Optional.of(6_000));
      assertRefused(
          Reason.CUTTER_DOES_NOT_FIT_MACHINE,
          SawSlotSetup.stacked(dado("100 mm"), SAW, large, WITH_COMB));
    }

    private Slot dado(String distance) {
      return slot("6 mm", distance, PANEL);
    }
  }
}
