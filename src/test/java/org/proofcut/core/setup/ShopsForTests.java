package org.proofcut.core.setup;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.shop.HandRouter;
import org.proofcut.core.shop.RouterTable;
import org.proofcut.core.shop.SawBlade;
import org.proofcut.core.shop.Shop;
import org.proofcut.core.shop.SpeedStep;
import org.proofcut.core.shop.StraightCutter;
import org.proofcut.core.shop.TableSaw;
import org.proofcut.core.shop.TableSaw.BlindCuts;
import org.proofcut.core.shop.TrackSaw;

/** A small shop, and the limits its set-ups are judged by. */
public final class ShopsForTests {

  public static final List<SpeedStep> DIAL =
      List.of(
          new SpeedStep("1", 8_000),
          new SpeedStep("2", 12_000),
          new SpeedStep("3", 15_500),
          new SpeedStep("4", 18_000),
          new SpeedStep("5", 21_000),
          new SpeedStep("6", 24_000));

  public static final RouterTable TABLE =
      new RouterTable(
          "table", "router table", DIAL, mm(450), tenths(1), tenths(1), mm(60), true, true);

  public static final HandRouter HAND =
      new HandRouter("hand", "hand router", DIAL, mm(80), tenths(1), mm(40), true, true);

  public static final TableSaw SAW =
      new TableSaw(
          "saw",
          "table saw",
          List.of(new SpeedStep("fixed", 4_000)),
          mm(650),
          tenths(1),
          tenths(5),
          mm(80),
          new Band(mm(230), mm(254)),
          mm(1000),
          mm(620),
          true,
          true,
          true,
          Optional.empty());

  public static final TrackSaw TRACK =
      new TrackSaw(
          "track",
          "track saw",
          List.of(new SpeedStep("fixed", 5_500)),
          mm(2700),
          tenths(5),
          mm(55),
          new Band(mm(160), mm(160)),
          true,
          true,
          true);

  public static final StraightCutter FOUR_AND_A_HALF = straight("4.5", "4.5 mm");
  public static final StraightCutter TWELVE = straight("12", "12 mm");
  public static final StraightCutter SIXTEEN = straight("16", "16 mm");
  public static final StraightCutter EIGHTEEN = straight("18", "18 mm");

  public static final SawBlade RIP_BLADE =
      new SawBlade("250", "250 mm blade", mm(250), tenths(28), 40, Optional.of(7_000));
  public static final SawBlade TRACK_BLADE =
      new SawBlade("160", "160 mm blade", mm(160), tenths(18), 48, Optional.of(9_500));

  public static final SetupLimits LIMITS =
      new SetupLimits(
          limit("deepest pass", "6 mm"),
          limit("light last pass", "0.5 mm"),
          limit("least overlap", "1 mm"),
          Worked.given("most passes at the saw", 5, Citation.COMMON_PRACTICE),
          limit("least strip", "0.1 mm"),
          limit("fine step", "0.02 mm"),
          limit("step of a mark", "0.1 mm"),
          limit("tolerance of a depth", "0.2 mm"),
          limit("tolerance of a distance", "0.3 mm"),
          limit("tolerance of a size", "0.2 mm"),
          limit("blade above the stock", "5 mm"),
          limit("blade below the stock", "3 mm"),
          limit("shortest rip", "300 mm"),
          limit("shortest edge on the router table's fence", "150 mm"),
          Worked.given("overhang to contact", 3, Citation.COMMON_PRACTICE),
          limit("least wood beside a groove", "4 mm"),
          Worked.given(
              "top speeds by diameter",
              List.of(
                  new SpeedBand(Length.of("25.4 mm"), 24_000),
                  new SpeedBand(Length.of("50.8 mm"), 18_000),
                  new SpeedBand(Length.of("63.5 mm"), 16_000),
                  new SpeedBand(Length.of("88.9 mm"), 12_000)),
              Citation.COMMON_PRACTICE));

  public static final Conditions CONDITIONS =
      new Conditions(LIMITS, List.of("straightedge", "clamps"), LengthUnit.MILLIMETRE);

  private ShopsForTests() {}

  public static Shop shop() {
    return new Shop(
        "Test shop",
        List.of(TABLE, HAND, SAW, TRACK),
        List.of(FOUR_AND_A_HALF, TWELVE, SIXTEEN, EIGHTEEN, RIP_BLADE, TRACK_BLADE),
        List.of(),
        CONDITIONS.aids());
  }

  /** The saw, with what it allows of blind cuts. */
  public static TableSaw sawWith(BlindCuts blind) {
    return saw(SAW.fenceStep(), SAW.sledStopReach(), blind);
  }

  static TableSaw sawWith(Length step, BlindCuts blind) {
    return saw(step, SAW.sledStopReach(), blind);
  }

  static TableSaw sawWithoutSled(BlindCuts blind) {
    return saw(SAW.fenceStep(), Length.ZERO, blind);
  }

  private static TableSaw saw(Length step, Length sledReach, BlindCuts blind) {
    return new TableSaw(
        SAW.id(),
        SAW.name(),
        SAW.speeds(),
        SAW.fenceReach(),
        step,
        SAW.heightStep(),
        SAW.greatestHeight(),
        SAW.blades(),
        sledReach,
        SAW.sledDepth(),
        true,
        true,
        true,
        Optional.of(blind));
  }

  public static StraightCutter straight(String id, String diameter) {
    return new StraightCutter(
        id, id + " mm cutter", Length.of(diameter), mm(25), 2, mm(12), Optional.of(24_000));
  }

  static Length mm(long millimetres) {
    return CasesForTests.mm(millimetres);
  }

  static Length tenths(long tenths) {
    return Length.ofMicrometres(tenths * 100);
  }

  private static Worked<Length> limit(String name, String value) {
    return Worked.given(name, Length.of(value), Citation.COMMON_PRACTICE);
  }
}
