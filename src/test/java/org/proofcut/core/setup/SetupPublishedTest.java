package org.proofcut.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.proofcut.core.setup.CutsForTests.assertRefused;
import static org.proofcut.core.setup.CutsForTests.assertSet;
import static org.proofcut.core.setup.CutsForTests.entered;
import static org.proofcut.core.setup.CutsForTests.setup;
import static org.proofcut.core.setup.ShopsForTests.CONDITIONS;
import static org.proofcut.core.setup.ShopsForTests.LIMITS;
import static org.proofcut.core.setup.ShopsForTests.TABLE;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.fit.SlotFit;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.readings.Readings;
import org.proofcut.core.shop.TableSaw;

/** Published figures of set-ups, each with how it is known. */
class SetupPublishedTest {

  /**
   * Blade projection: 3/4 in stock and 1/4 in above it make a height of 1 in. Found in a secondary
   * copy; advice in print on how far a blade stands above the stock ranges from 1/8 to 1/2 in.
   */
  @Test
  void blade_standsAQuarterInchAboveThreeQuarterStock() {
    var asked =
        new CutAsked.Parting(
            entered("12 in"), true, true, CutsForTests.work("36 in", "13 in", "0.75 in"));
    var limits = withBladeAbove(Length.ofInches(1, 4));
    var conditions = new Conditions(limits, List.of(), LengthUnit.INCH);
    var answer = SawSetup.table(asked, inchSaw(), ShopsForTests.RIP_BLADE, conditions);
    assertSet("1 in", Setting.Role.HEIGHT, setup(answer));
  }

  /**
   * Plywood labelled 23/32 in may measure .688 to .750 in. Found on the page "Performance category"
   * of apawood-europe.org, for US PS 1. So hardwood plywood labelled 3/4 in may measure .703 in
   * (nominal less 3/64 in: from memory, low confidence).
   */
  @ParameterizedTest
  @ValueSource(strings = {"0.688 in", "0.703 in", "0.719 in", "0.750 in"})
  void slot_followsWhatIsMeasured_notTheLabel(String measured) {
    var thickness = Length.of(measured);
    var fit = SlotFit.of(new Readings("sheet", List.of(thickness)), CasesForTests.FIT);
    var asked =
        new CutAsked.Slot(
            fit.target(),
            fit.accepted().orElseThrow(),
            entered("0.25 in"),
            entered("4 in"),
            CutsForTests.work("16 in", "36 in", measured));
    var room = setup(slot(asked, "0.5 in")).measures().get(0).target().value().minus(thickness);
    assertEquals(Length.of("0.15 mm"), room);
  }

  /** See above: the cutter of the label's width leaves .047 in of room at .703 in. */
  @Test
  void cutterOfTheLabelsWidth_isRefusedForASheetThatMeasuresLess() {
    var fit = SlotFit.of(new Readings("sheet", List.of(Length.of("0.703 in"))), CasesForTests.FIT);
    var asked =
        new CutAsked.Slot(
            fit.target(),
            fit.accepted().orElseThrow(),
            entered("0.25 in"),
            entered("4 in"),
            CutsForTests.work("16 in", "36 in", "0.703 in"));
    assertRefused(Refusal.Reason.CUTTER_TOO_WIDE, slot(asked, "0.75 in"));
  }

  private static Answer slot(CutAsked.Slot asked, String cutter) {
    return RouterTableSetup.slot(asked, TABLE, CutsForTests.cutter(cutter), CONDITIONS);
  }

  private static TableSaw inchSaw() {
    var step = Length.ofInches(1, 64);
    return new SawForTests().step(step).heightStep(step).made();
  }

  private static SetupLimits withBladeAbove(Length above) {
    return new SetupLimits(
        LIMITS.settings(),
        LIMITS.router(),
        new SawLimits(
            Worked.entered("blade above the stock", above),
            LIMITS.saw().trackBelow(),
            LIMITS.saw().mostPassesAtSaw(),
            LIMITS.saw().shortestAtSaw(),
            LIMITS.saw().narrowestAtSaw(),
            LIMITS.saw().shortestHeldAcross(),
            LIMITS.saw().narrowestUnderTrack(),
            LIMITS.saw().shortestAtMitreSaw(),
            LIMITS.saw().shortestOnCarrier(),
            LIMITS.saw().narrowestEnd(),
            LIMITS.saw().leastStopsApart(),
            LIMITS.saw().behindStops(),
            LIMITS.saw().steepestTaper(),
            LIMITS.saw().lastJointOpen()),
        LIMITS.knives(),
        LIMITS.drill());
  }
}
