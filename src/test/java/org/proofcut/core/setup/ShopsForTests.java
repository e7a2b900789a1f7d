package org.proofcut.core.setup;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.shop.BearingCutter;
import org.proofcut.core.shop.Bit;
import org.proofcut.core.shop.Cutter;
import org.proofcut.core.shop.DrillPress;
import org.proofcut.core.shop.HandDrill;
import org.proofcut.core.shop.HandRouter;
import org.proofcut.core.shop.Jointer;
import org.proofcut.core.shop.KnifeMachine;
import org.proofcut.core.shop.MitreSaw;
import org.proofcut.core.shop.OwnedGear;
import org.proofcut.core.shop.Planer;
import org.proofcut.core.shop.RouterTable;
import org.proofcut.core.shop.SawBlade;
import org.proofcut.core.shop.Shop;
import org.proofcut.core.shop.Side;
import org.proofcut.core.shop.SpeedStep;
import org.proofcut.core.shop.StraightCutter;
import org.proofcut.core.shop.TableSaw;
import org.proofcut.core.shop.TableSaw.BlindCuts;
import org.proofcut.core.shop.Tilt;
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
          Optional.empty(),
          Optional.of(new Tilt(List.of(Side.LEFT), Angle.ofDegrees(46), Angle.parse("0.1"))),
          Optional.empty(),
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
          true,
          Optional.of(new Tilt(List.of(Side.RIGHT), Angle.ofDegrees(47), Angle.parse("0.5"))));

  /** Tilts to the left alone. */
  public static final MitreSaw MITRE =
      new MitreSaw(
          "mitre",
          "mitre saw",
          List.of(new SpeedStep("fixed", 4_800)),
          Angle.ofDegrees(50),
          Angle.parse("0.1"),
          Optional.of(new Tilt(List.of(Side.LEFT), Angle.ofDegrees(46), Angle.parse("0.1"))),
          mm(305),
          mm(70),
          mm(36),
          mm(1800),
          tenths(1),
          new Band(mm(214), mm(216)),
          true,
          true);

  public static final Jointer JOINTER =
      new Jointer(
          "jointer",
          "jointer",
          new KnifeMachine.Head(5_000, mm(70), 3),
          mm(200),
          mm(700),
          mm(700),
          mm(3),
          tenths(1),
          mm(300),
          mm(8),
          true,
          true);

  public static final Planer PLANER =
      new Planer(
          "planer",
          "planer",
          new KnifeMachine.Head(8_000, mm(50), 2),
          mm(6_000),
          mm(330),
          mm(700),
          mm(150),
          mm(3),
          tenths(1),
          mm(350),
          mm(6),
          true,
          true,
          true);

  public static final StraightCutter FOUR_AND_A_HALF = straight("4.5", "4.5 mm");
  public static final StraightCutter TWELVE = straight("12", "12 mm");
  public static final StraightCutter SIXTEEN = straight("16", "16 mm");
  public static final StraightCutter EIGHTEEN = straight("18", "18 mm");

  public static final BearingCutter ROUND_OVER =
      bearing("round-over", BearingCutter.Profile.ROUND_OVER, "12 mm", "24 mm");
  public static final BearingCutter FLUSH =
      bearing("flush", BearingCutter.Profile.FLUSH_TRIM, "12 mm", "12 mm");

  public static final SawBlade RIP_BLADE =
      new SawBlade("250", "250 mm blade", mm(250), tenths(28), 40, Optional.of(7_000));
  public static final SawBlade TRACK_BLADE =
      new SawBlade("160", "160 mm blade", mm(160), tenths(18), 48, Optional.of(9_500));

  public static final SawBlade MITRE_BLADE =
      new SawBlade("216", "216 mm blade", mm(216), tenths(22), 60, Optional.of(7_000));

  public static final DrillPress PRESS =
      new DrillPress(
          "press",
          "drill press",
          List.of(
              new SpeedStep("A", 250),
              new SpeedStep("B", 500),
              new SpeedStep("C", 1_000),
              new SpeedStep("D", 2_500)),
          mm(160),
          tenths(1),
          mm(400),
          mm(80),
          mm(600),
          tenths(1),
          mm(40),
          true,
          true);

  public static final HandDrill DRILL =
      new HandDrill(
          "drill",
          "hand drill",
          List.of(new SpeedStep("1", 400), new SpeedStep("2", 1_500)),
          tenths(1),
          Length.ZERO,
          mm(20),
          false);

  public static final Bit CLEARANCE = bit("4.5-twist", Bit.Kind.TWIST, "4.5 mm", "1.4 mm");
  public static final Bit PILOT = bit("3", Bit.Kind.TWIST, "3 mm", "0.9 mm");
  public static final Bit FIVE = bit("5", Bit.Kind.BRAD_POINT, "5 mm", "2 mm");
  public static final Bit EIGHT = bit("8", Bit.Kind.BRAD_POINT, "8 mm", "3 mm");
  public static final Bit CUP = bit("35", Bit.Kind.CUP, "35 mm", "1.2 mm");
  public static final Bit CONE = bit("cone", Bit.Kind.COUNTERSINK, "12 mm", "6 mm");

  public static final Bit STEPPED =
      new Bit(
          "step",
          "stepped bit",
          Bit.Kind.STEPPED,
          Length.of("9.5 mm"),
          mm(110),
          mm(12),
          2,
          Optional.empty());

  public static final List<Bit> BITS = List.of(CLEARANCE, PILOT, FIVE, EIGHT, CUP, CONE, STEPPED);

  public static final SetupLimits LIMITS =
      new SetupLimits(
          new SettingLimits(
              limit("tolerance of a depth", "0.2 mm"),
              limit("tolerance of a distance", "0.3 mm"),
              limit("tolerance of a size", "0.2 mm"),
              limit("fine step", "0.02 mm"),
              limit("step of a mark", "0.1 mm"),
              limit("least strip", "0.1 mm")),
          new RouterLimits(
              limit("deepest pass", "6 mm"),
              limit("light last pass", "0.5 mm"),
              limit("least overlap", "1 mm"),
              limit("shortest edge on the router table's fence", "150 mm"),
              Worked.given("overhang to contact", 3, Citation.COMMON_PRACTICE),
              limit("narrowest piece at the router table", "60 mm"),
              limit("least wood beside a groove", "4 mm"),
              limit("thinnest tongue", "4 mm"),
              limit("least edge for a bearing", "3 mm"),
              limit("room for clamps", "50 mm"),
              limit("most overhang to trim", "3 mm"),
              limit("most of an edge in one pass", "1.5 mm"),
              limit("thinnest chip", "0.05 mm"),
              limit("thickest chip", "0.15 mm"),
              Worked.given(
                  "top speeds by diameter",
                  List.of(
                      new SpeedBand(Length.of("25.4 mm"), 24_000),
                      new SpeedBand(Length.of("50.8 mm"), 18_000),
                      new SpeedBand(Length.of("63.5 mm"), 16_000),
                      new SpeedBand(Length.of("88.9 mm"), 12_000)),
                  Citation.COMMON_PRACTICE)),
          new SawLimits(
              limit("blade above the stock", "5 mm"),
              limit("blade below the stock", "3 mm"),
              Worked.given("most passes at the saw", 5, Citation.COMMON_PRACTICE),
              limit("shortest rip", "300 mm"),
              limit("narrowest at the saw", "25 mm"),
              limit("shortest held across", "200 mm"),
              limit("narrowest under the track", "100 mm"),
              limit("shortest piece at the mitre saw", "300 mm"),
              limit("shortest piece on a carrier", "200 mm"),
              limit("narrowest end on a carrier", "12 mm"),
              limit("stops apart", "100 mm"),
              limit("carrier behind its stops", "50 mm"),
              Worked.given("steepest taper", 4, Citation.COMMON_PRACTICE),
              limit("last joint open", "0.5 mm")),
          new KnifeLimits(
              limit("deepest pass of knives", "1.5 mm"),
              limit("light pass of knives", "0.5 mm"),
              limit("shortest at knives", "305 mm"),
              limit("thinnest at knives", "6.5 mm"),
              limit("snipe", "75 mm"),
              limit("tolerance of a thickness", "0.15 mm"),
              Worked.given("table lengths", 2, Citation.COMMON_PRACTICE),
              Worked.given("least knife marks", 20, Citation.COMMON_PRACTICE)),
          new DrillLimits(
              Worked.given(
                  "rim speeds of bits",
                  List.of(
                      new RimSpeed(Bit.Kind.BRAD_POINT, 45, 30, 40),
                      new RimSpeed(Bit.Kind.TWIST, 60, 30, 45),
                      new RimSpeed(Bit.Kind.CUP, 55, 30, 55),
                      new RimSpeed(Bit.Kind.COUNTERSINK, 30, 20, 25),
                      new RimSpeed(Bit.Kind.STEPPED, 55, 40, 50)),
                  Citation.COMMON_PRACTICE),
              Worked.given("diameters before it is lifted", 3, Citation.COMMON_PRACTICE),
              limit("tolerance of a hole", "0.15 mm"),
              limit("into the waste board", "2 mm"),
              limit("under the point", "1 mm"),
              limit("shortest at a drill", "150 mm"),
              Worked.given("most stops", 4, Citation.COMMON_PRACTICE),
              limit("least bite", "12 mm"),
              limit("beyond the tip", "2 mm"),
              limit("tolerance of a pocket screw", "1 mm")));

  public static final Conditions CONDITIONS =
      new Conditions(
          LIMITS, List.of("straightedge", "clamps", "pocket-jig"), LengthUnit.MILLIMETRE);

  private ShopsForTests() {}

  public static Shop shop() {
    return new Shop(
        "Test shop",
        List.of(TABLE, HAND, SAW, TRACK, MITRE, PRESS, DRILL, JOINTER, PLANER),
        Stream.<Cutter>concat(
                Stream.of(
                    FOUR_AND_A_HALF,
                    TWELVE,
                    SIXTEEN,
                    EIGHTEEN,
                    ROUND_OVER,
                    FLUSH,
                    RIP_BLADE,
                    TRACK_BLADE,
                    MITRE_BLADE),
                BITS.stream())
            .toList(),
        List.of(new OwnedGear("glasses", "glasses", "old glasses", "", "hook 1")),
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
    return new SawForTests().step(step).sledReach(sledReach).blindCuts(blind).made();
  }

  public static StraightCutter straight(String id, String diameter) {
    return new StraightCutter(
        id, id + " mm cutter", Length.of(diameter), mm(25), 2, mm(12), Optional.of(24_000));
  }

  static Bit bit(String id, Bit.Kind kind, String diameter, String point) {
    return new Bit(
        id,
        id + " mm bit",
        kind,
        Length.of(diameter),
        mm(60),
        Length.of(point),
        2,
        Optional.empty());
  }

  public static BearingCutter bearing(
      String id, BearingCutter.Profile profile, String bearing, String diameter) {
    return new BearingCutter(
        id,
        id,
        profile,
        Length.of(bearing),
        Length.of(diameter),
        mm(14),
        2,
        mm(8),
        Optional.of(22_000));
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
