package org.proofcut.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.setup.CutsForTests.assertRefused;
import static org.proofcut.core.setup.CutsForTests.assertSet;
import static org.proofcut.core.setup.CutsForTests.band;
import static org.proofcut.core.setup.CutsForTests.entered;
import static org.proofcut.core.setup.CutsForTests.setup;
import static org.proofcut.core.setup.CutsForTests.work;
import static org.proofcut.core.setup.ShopsForTests.CONDITIONS;
import static org.proofcut.core.setup.ShopsForTests.RIP_BLADE;
import static org.proofcut.core.setup.ShopsForTests.SAW;
import static org.proofcut.core.setup.ShopsForTests.TRACK;
import static org.proofcut.core.setup.ShopsForTests.TRACK_BLADE;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.CutAsked.Parting;
import org.proofcut.core.setup.Refusal.Reason;
import org.proofcut.core.shop.SawBlade;
import org.proofcut.core.shop.TableSaw;

/** Worked by hand, in stock of 17.78 mm. */
class SawSetupTest {

  @Nested
  class Rips {

    @Test
    void fence_isSetToTheNearSide_soThatTheKerfFallsOnTheWaste() {
      var setup = setup(rip("400 mm", "900 mm"));
      assertSet("400 mm", Setting.Role.FENCE, setup);
      // 17.78 + 5 = 22.78, on steps of 0.5
      assertSet("23 mm", Setting.Role.HEIGHT, setup);
      assertEquals(band("400 mm", "402.8 mm"), setup.passes().get(0).takes());
      assertEquals(Guide.FENCE, setup.guide());
      assertEquals(Feed.INTO_THE_BLADE, setup.feed());
      var size = setup.measures().get(0);
      assertEquals(band("399.8 mm", "400.2 mm"), size.accepted());
      assertEquals(Optional.of(Setting.Role.FENCE), size.correctedBy());
    }

    @Test
    void fenceOutOfReach_isRefused() {
      setup(rip("650 mm", "900 mm"));
      assertRefused(Reason.OUT_OF_REACH, rip("650.1 mm", "900 mm"));
    }

    @Test
    void pieceTooShort_isRefused() {
      setup(rip("200 mm", "300 mm"));
      assertRefused(Reason.WORK_TOO_SMALL, rip("200 mm", "299.9 mm"));
    }

    @Test
    void pieceWiderThanLong_isRefused() {
      setup(rip("400 mm", "400 mm"));
      assertRefused(Reason.END_TOO_SHORT_ON_FENCE, rip("400.1 mm", "400 mm"));
    }

    @Test
    void bladeThatCannotStandHighEnough_isRefused() {
      // 75 + 5 = 80; 75.3 + 5 = 80.3, set to 80.5
      setup(rip("400 mm", "900 mm", "75 mm"));
      assertRefused(Reason.TOO_DEEP, rip("400 mm", "900 mm", "75.3 mm"));
    }

    @Test
    void bladeOfAnotherSize_isRefused() {
      setup(rip(blade("230 mm", Optional.of(7_000))));
      setup(rip(blade("254 mm", Optional.of(7_000))));
      assertRefused(Reason.CUTTER_DOES_NOT_FIT_MACHINE, rip(blade("229.9 mm", Optional.of(7_000))));
      assertRefused(Reason.CUTTER_DOES_NOT_FIT_MACHINE, rip(blade("254.1 mm", Optional.of(7_000))));
    }

    @Test
    void bladeMarkedSlowerThanTheSaw_orWithoutAMark_isRefused() {
      setup(rip(blade("250 mm", Optional.of(4_000))));
      assertRefused(Reason.TOO_FAST, rip(blade("250 mm", Optional.of(3_999))));
      assertRefused(Reason.TOO_FAST, rip(blade("250 mm", Optional.empty())));
    }

    @Test
    void sizeThatTheFencesStepsMiss_isRefused_butNotForARoughCut() {
      var coarse = saw("1 mm", "1000 mm");
      setup(SawSetup.table(rip("400.2 mm", true), coarse, RIP_BLADE, CONDITIONS));
      assertRefused(
          Reason.STEP_TOO_COARSE,
          SawSetup.table(rip("400.21 mm", true), coarse, RIP_BLADE, CONDITIONS));
      var rough = setup(SawSetup.table(rip("400.21 mm", false), coarse, RIP_BLADE, CONDITIONS));
      assertEquals(List.of(), rough.measures());
    }

    private Answer rip(String size, String along) {
      return rip(size, along, "17.78 mm");
    }

    private Answer rip(String size, String along, String thickness) {
      var asked = new Parting(entered(size), true, true, work(along, size, thickness));
      return SawSetup.table(asked, SAW, RIP_BLADE, CONDITIONS);
    }

    private Answer rip(SawBlade blade) {
      return SawSetup.table(rip("400 mm", true), SAW, blade, CONDITIONS);
    }

    private Parting rip(String size, boolean toSize) {
      return new Parting(entered(size), toSize, true, work("900 mm", "410 mm", "17.78 mm"));
    }

    private SawBlade blade(String diameter, Optional<Integer> marked) {
      return new SawBlade(
          "blade", "blade", Length.of(diameter), RIP_BLADE.kerf(), RIP_BLADE.edges(), marked);
    }
  }

  @Nested
  class Crosscuts {

    @Test
    void stop_isSetFromTheBlade_onTheSled() {
      var setup = setup(crosscut("900 mm", "400 mm", SAW));
      assertSet("900 mm", Setting.Role.STOP, setup);
      assertEquals(Guide.SLED, setup.guide());
      assertEquals(Optional.of(Setting.Role.STOP), setup.measures().get(0).correctedBy());
      assertTrue(setup.setting(Setting.Role.FENCE).isEmpty());
    }

    @Test
    void stopOutOfReach_isRefused() {
      setup(crosscut("1000 mm", "400 mm", SAW));
      assertRefused(Reason.OUT_OF_REACH, crosscut("1000.1 mm", "400 mm", SAW));
    }

    @Test
    void workWiderThanTheSled_isRefused() {
      setup(crosscut("900 mm", "620 mm", SAW));
      assertRefused(Reason.OUT_OF_REACH, crosscut("900 mm", "620.1 mm", SAW));
    }

    @Test
    void sawWithoutASled_isRefused() {
      assertRefused(Reason.AID_MISSING, crosscut("900 mm", "400 mm", saw("0.1 mm", "0 mm")));
    }

    @Test
    void shortPiece_wantsAClamp() {
      setup(crosscut("50 mm", "40 mm", SAW));
      var bare = new Conditions(CONDITIONS.limits(), List.of(), CONDITIONS.unit());
      setup(crosscut("200 mm", "40 mm", SAW, bare));
      assertRefused(Reason.WORK_TOO_SMALL, crosscut("199.9 mm", "40 mm", SAW, bare));
    }

    private Answer crosscut(String size, String across, TableSaw saw) {
      return crosscut(size, across, saw, CONDITIONS);
    }

    private Answer crosscut(String size, String across, TableSaw saw, Conditions conditions) {
      var asked = new Parting(entered(size), true, false, work(size, across, "17.78 mm"));
      return SawSetup.table(asked, saw, RIP_BLADE, conditions);
    }
  }

  @Nested
  class AlongTheTrack {

    @Test
    void track_liesOnThePieceThatIsKept() {
      var setup = setup(rip("406 mm", "2440 mm", "17.78 mm"));
      assertSet("406 mm", Setting.Role.MARK, setup);
      // 17.78 + 3 = 20.78, on steps of 0.5
      assertSet("21 mm", Setting.Role.DEPTH, setup);
      assertEquals(band("406 mm", "407.8 mm"), setup.passes().get(0).takes());
      assertEquals(Guide.TRACK, setup.guide());
      assertEquals(Feed.ALONG_THE_TRACK, setup.feed());
    }

    @Test
    void ripLongerThanTheTrack_isRefused() {
      setup(rip("406 mm", "2700 mm", "17.78 mm"));
      assertRefused(Reason.OUT_OF_REACH, rip("406 mm", "2700.1 mm", "17.78 mm"));
    }

    @Test
    void pieceThatDoesNotCarryTheTrack_isRefused() {
      setup(rip("100 mm", "900 mm", "18 mm"));
      assertRefused(Reason.WORK_TOO_SMALL, rip("99.9 mm", "900 mm", "18 mm"));
      setup(crosscut("100 mm", "300 mm"));
      assertRefused(Reason.WORK_TOO_SMALL, crosscut("99.9 mm", "300 mm"));
    }

    @Test
    void crosscut_runsAcrossThePiece() {
      setup(crosscut("4000 mm", "2700 mm"));
      assertRefused(Reason.OUT_OF_REACH, crosscut("900 mm", "2700.1 mm"));
    }

    @Test
    void bladeThatDoesNotReachThrough_isRefused() {
      setup(rip("406 mm", "2440 mm", "52 mm"));
      // 52.3 + 3 = 55.3, set to 55.5
      assertRefused(Reason.TOO_DEEP, rip("406 mm", "2440 mm", "52.3 mm"));
    }

    @Test
    void bladeOfTheTableSaw_isRefused() {
      var asked =
          new Parting(entered("406 mm"), false, true, work("2440 mm", "1220 mm", "17.78 mm"));
      assertRefused(
          Reason.CUTTER_DOES_NOT_FIT_MACHINE, SawSetup.track(asked, TRACK, RIP_BLADE, CONDITIONS));
    }

    private Answer rip(String size, String along, String thickness) {
      var asked = new Parting(entered(size), true, true, work(along, "1220 mm", thickness));
      return SawSetup.track(asked, TRACK, TRACK_BLADE, CONDITIONS);
    }

    private Answer crosscut(String size, String across) {
      var asked = new Parting(entered(size), true, false, work(size, across, "17.78 mm"));
      return SawSetup.track(asked, TRACK, TRACK_BLADE, CONDITIONS);
    }
  }

  @Nested
  class AgainstTheGauge {

    private final TableSaw saw = withGauge(Length.ZERO);

    @Test
    void gauge_isTakenWhereTheSledDoesNotReach() {
      var both = withGauge(Length.of("1000 mm"));
      assertEquals(Guide.SLED, setup(crosscut("1000 mm", "300 mm", both)).guide());
      var setup = setup(crosscut("1000.1 mm", "300 mm", both));
      assertEquals(Guide.GAUGE, setup.guide());
      var stop = setup.setting(Setting.Role.STOP).orElseThrow();
      assertEquals(Length.of("1000.1 mm"), stop.set().value());
      // No sled's base lies between.
      var height = setup.setting(Setting.Role.HEIGHT).orElseThrow();
      assertEquals("from the table to the top tooth", height.from());
    }

    @Test
    void pieceThatBringsTheHandToTheBlade_isRefused() {
      setup(crosscut("200 mm", "100 mm", saw));
      assertRefused(Reason.WORK_TOO_SMALL, crosscut("199.9 mm", "100 mm", saw));
    }

    @Test
    void pieceWiderThanLong_isRefused() {
      setup(crosscut("250 mm", "250 mm", saw));
      assertRefused(Reason.END_TOO_SHORT_ON_FENCE, crosscut("250 mm", "250.1 mm", saw));
    }

    @Test
    void gaugeIsNoLongerAndNoWiderThanItIs() {
      setup(crosscut("1200 mm", "310 mm", saw));
      assertRefused(Reason.OUT_OF_REACH, crosscut("1200.1 mm", "310 mm", saw));
      assertRefused(Reason.OUT_OF_REACH, crosscut("1200 mm", "310.1 mm", saw));
    }

    private Answer crosscut(String size, String across, TableSaw on) {
      var asked = new Parting(entered(size), true, false, work(size, across, "18 mm"));
      return SawSetup.table(asked, on, RIP_BLADE, CONDITIONS);
    }

    private TableSaw withGauge(Length sledReach) {
      return new SawForTests().sledReach(sledReach).gauge("1200 mm", "310 mm").made();
    }
  }

  private static TableSaw saw(String fenceStep, String sledReach) {
    return new SawForTests().step(Length.of(fenceStep)).sledReach(Length.of(sledReach)).made();
  }
}
