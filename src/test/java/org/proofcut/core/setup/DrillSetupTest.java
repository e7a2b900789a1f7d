package org.proofcut.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.setup.ShopsForTests.BITS;
import static org.proofcut.core.setup.ShopsForTests.CLEARANCE;
import static org.proofcut.core.setup.ShopsForTests.CONDITIONS;
import static org.proofcut.core.setup.ShopsForTests.CONE;
import static org.proofcut.core.setup.ShopsForTests.CUP;
import static org.proofcut.core.setup.ShopsForTests.DRILL;
import static org.proofcut.core.setup.ShopsForTests.EIGHT;
import static org.proofcut.core.setup.ShopsForTests.FIVE;
import static org.proofcut.core.setup.ShopsForTests.LIMITS;
import static org.proofcut.core.setup.ShopsForTests.PILOT;
import static org.proofcut.core.setup.ShopsForTests.PRESS;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.setup.CutAsked.Countersink;
import org.proofcut.core.setup.CutAsked.Holes;
import org.proofcut.core.setup.CutAsked.Row;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.setup.Setting.Role;
import org.proofcut.core.shop.Bit;
import org.proofcut.core.shop.HandDrill;
import org.proofcut.core.stock.Material;

class DrillSetupTest {

  private static final Conditions WITHOUT_CLAMPS =
      new Conditions(LIMITS, List.of(), LengthUnit.MILLIMETRE);

  private static Length mm(String millimetres) {
    return Length.of(millimetres + " mm");
  }

  private static Worked<Length> entered(String millimetres) {
    return Worked.entered("test", mm(millimetres));
  }

  private static Row row(String fromEdge, String... along) {
    return new Row(
        entered(fromEdge), List.of(along).stream().map(DrillSetupTest::entered).toList());
  }

  private static Work piece(String along, String across, String thickness) {
    return new Work(band(along), band(across), band(thickness));
  }

  private static Band band(String at) {
    return new Band(mm(at), mm(at));
  }

  private static Holes holes(String diameter, Optional<String> depth, Row row, Work work) {
    return new Holes(
        entered(diameter),
        Optional.empty(),
        depth.map(DrillSetupTest::entered),
        false,
        row,
        Material.PLYWOOD,
        work);
  }

  private static Holes blind(String diameter, String depth) {
    return holes(diameter, Optional.of(depth), row("37", "96", "128"), piece("700", "300", "18"));
  }

  private static Setup made(Answer answer) {
    if (answer instanceof Refusal refusal) {
      throw new AssertionError(refusal.what());
    }
    return (Setup) answer;
  }

  private static Length set(Setup setup, Role role) {
    return setup.setting(role).orElseThrow().set().value();
  }

  private static Length target(Setup setup, Dimension dimension) {
    return setup.measures().stream()
        .filter(measure -> measure.dimension() == dimension)
        .findFirst()
        .orElseThrow()
        .target()
        .value();
  }

  private static void refused(Refusal.Reason reason, Answer answer) {
    assertTrue(answer instanceof Refusal, "not refused");
    var refusal = (Refusal) answer;
    assertEquals(reason, refusal.reason(), refusal.what());
    assertTrue(!refusal.instead().isBlank(), refusal.what());
  }

  @Test
  void press_blindHole_setsFenceStopAndDepth_andMeasuresNearWalls() {
    var setup = made(DrillSetup.holes(blind("5", "10"), PRESS, FIVE, CONDITIONS));
    assertEquals(mm("37"), set(setup, Role.FENCE));
    assertEquals(mm("96"), set(setup, Role.STOP));
    assertEquals(mm("10"), set(setup, Role.DEPTH));
    // 37 − 5/2 and 96 − 5/2.
    assertEquals(mm("34.5"), target(setup, Dimension.DISTANCE));
    assertEquals(mm("93.5"), target(setup, Dimension.FROM_END));
    assertEquals(mm("10"), target(setup, Dimension.DEPTH));
  }

  @Test
  void press_throughHole_goesIntoTheWasteBoard_andHasNoDepthToMeasure() {
    var asked = holes("8", Optional.empty(), row("50", "60"), piece("700", "300", "18"));
    var setup = made(DrillSetup.holes(asked, PRESS, EIGHT, CONDITIONS));
    assertEquals(mm("20"), set(setup, Role.DEPTH));
    assertTrue(
        setup.measures().stream().noneMatch(measure -> measure.dimension() == Dimension.DEPTH));
  }

  @Test
  void press_moreHolesThanStops_areMarked() {
    var five = row("37", "50", "82", "114", "146", "178");
    var asked = holes("5", Optional.of("10"), five, piece("700", "300", "18"));
    var setup = made(DrillSetup.holes(asked, PRESS, FIVE, CONDITIONS));
    assertTrue(setup.setting(Role.STOP).isEmpty());
    assertEquals(mm("50"), set(setup, Role.MARK));
    var far = holes("5", Optional.of("10"), row("37", "401"), piece("700", "300", "18"));
    assertTrue(
        made(DrillSetup.holes(far, PRESS, FIVE, CONDITIONS)).setting(Role.STOP).isEmpty(),
        "the stop reaches 400 mm");
  }

  @Test
  void hand_collarStandsGuideAndDepthAndPointFromTheTip() {
    var free = made(DrillSetup.holes(blind("5", "10"), DRILL, FIVE, CONDITIONS));
    assertEquals(mm("12"), set(free, Role.COLLAR));
    assertEquals(Guide.MARKS, free.guide());
    var guided = new HandDrill("d", "d", DRILL.speeds(), mm("0.1"), mm("30"), mm("40"), false);
    var setup = made(DrillSetup.holes(blind("5", "10"), guided, FIVE, CONDITIONS));
    assertEquals(mm("42"), set(setup, Role.COLLAR));
    assertEquals(Guide.DRILL_GUIDE, setup.guide());
    assertEquals(mm("10"), setup.passes().get(setup.passes().size() - 1).depth().value());
  }

  @Test
  void hand_withoutClamps_isRefused() {
    refused(
        Refusal.Reason.AID_MISSING,
        DrillSetup.holes(blind("5", "10"), DRILL, FIVE, WITHOUT_CLAMPS));
  }

  @Test
  void hand_cupWithoutGuide_isRefused() {
    var wide = new HandDrill("d", "d", DRILL.speeds(), mm("0.1"), Length.ZERO, mm("40"), false);
    var cup = holes("35", Optional.of("12.5"), row("22.5", "100"), piece("700", "300", "18"));
    refused(Refusal.Reason.AID_MISSING, DrillSetup.holes(cup, wide, CUP, CONDITIONS));
  }

  @Test
  void point_throughTheFarFace_isRefused_andExactlyTheLeastIsNot() {
    // Point 2 mm, 1 mm to stay: 15 mm in 18 mm stock is the deepest.
    made(DrillSetup.holes(blind("5", "15"), PRESS, FIVE, CONDITIONS));
    refused(Refusal.Reason.TOO_DEEP, DrillSetup.holes(blind("5", "15.1"), PRESS, FIVE, CONDITIONS));
  }

  @Test
  void otherBits_areRefused() {
    refused(
        Refusal.Reason.CUTTER_TOO_WIDE,
        DrillSetup.holes(blind("5", "10"), PRESS, EIGHT, CONDITIONS));
    refused(
        Refusal.Reason.CUTTER_TOO_NARROW,
        DrillSetup.holes(blind("5", "10"), PRESS, CLEARANCE, CONDITIONS));
    refused(
        Refusal.Reason.CUTTER_DOES_NOT_FIT_MACHINE,
        DrillSetup.holes(blind("12", "10"), PRESS, CONE, CONDITIONS));
    var flat =
        new Holes(
            entered("8"),
            Optional.empty(),
            Optional.of(entered("10")),
            true,
            row("37", "96"),
            Material.PLYWOOD,
            piece("700", "300", "18"));
    refused(
        Refusal.Reason.CUTTER_DOES_NOT_FIT_MACHINE,
        DrillSetup.holes(flat, PRESS, EIGHT, CONDITIONS));
  }

  @Test
  void outOfReach_isRefused() {
    var board = piece("700", "400", "18");
    refused(
        Refusal.Reason.OUT_OF_REACH,
        DrillSetup.holes(
            holes("5", Optional.of("10"), row("160.1", "96"), board), PRESS, FIVE, CONDITIONS));
    // 600 mm from table to chuck: the bit takes 62 of them.
    refused(
        Refusal.Reason.OUT_OF_REACH,
        DrillSetup.holes(
            holes("5", Optional.of("10"), row("9", "96"), piece("200", "18", "539")),
            PRESS,
            FIVE,
            CONDITIONS));
    refused(
        Refusal.Reason.CUTTER_TOO_SHORT,
        DrillSetup.holes(
            holes("5", Optional.of("61"), row("9", "96"), piece("200", "18", "300")),
            PRESS,
            FIVE,
            CONDITIONS));
  }

  @Test
  void holesThatBreakOut_areRefused() {
    for (var row :
        List.of(row("2.5", "96"), row("37", "2.5"), row("37", "697.5"), row("297.5", "96"))) {
      refused(
          Refusal.Reason.WORK_TOO_SMALL,
          DrillSetup.holes(
              holes("5", Optional.of("10"), row, piece("700", "300", "18")),
              DRILL,
              FIVE,
              CONDITIONS));
    }
  }

  @Test
  void shortPiece_wantsClamps() {
    var asked = holes("5", Optional.of("10"), row("30", "40"), piece("149", "60", "18"));
    refused(Refusal.Reason.WORK_TOO_SMALL, DrillSetup.holes(asked, PRESS, FIVE, WITHOUT_CLAMPS));
    made(DrillSetup.holes(asked, PRESS, FIVE, CONDITIONS));
    var atLimit = holes("5", Optional.of("10"), row("30", "40"), piece("150", "60", "18"));
    made(DrillSetup.holes(atLimit, PRESS, FIVE, WITHOUT_CLAMPS));
  }

  /** 480 is under 55,000 ÷ (π · 35) = 500.2 a minute; a mark of less wins. */
  @Test
  void speed_isTheFastestStepUnderTheLimit() {
    var cup = holes("35", Optional.of("12.5"), row("22.5", "100"), piece("700", "300", "18"));
    var setup = made(DrillSetup.holes(cup, PRESS, CUP, CONDITIONS));
    assertEquals(500, setup.speed().limit().value());
    assertEquals(500, setup.speed().step().perMinute());
    var marked =
        new Bit(
            "m", "m", CUP.kind(), CUP.diameter(), CUP.length(), CUP.point(), 2, Optional.of(300));
    assertEquals(
        250, made(DrillSetup.holes(cup, PRESS, marked, CONDITIONS)).speed().step().perMinute());
    var slow =
        new Bit(
            "m", "m", CUP.kind(), CUP.diameter(), CUP.length(), CUP.point(), 2, Optional.of(200));
    refused(Refusal.Reason.TOO_FAST, DrillSetup.holes(cup, PRESS, slow, CONDITIONS));
  }

  /**
   * A 90° cone, 12 wide and 6 long, on a hole of 4: it touches with 2 of its 6 below the rim. For a
   * head of 8 its 8 mm circle, 4 above the tip, lies 0.3 below the face: the tip at 4.3, the travel
   * 2.3.
   */
  @Test
  void countersink_travelsFromTheRimOfTheHole() {
    var seat =
        new Countersink(
            entered("8"),
            entered("4"),
            entered("0.3"),
            row("37", "96"),
            Material.HARDWOOD,
            piece("700", "300", "18"));
    var press = made(DrillSetup.countersink(seat, PRESS, CONE, CONDITIONS));
    assertEquals(mm("2.3"), set(press, Role.DEPTH));
    assertEquals(
        List.of(Dimension.DEPTH), press.measures().stream().map(Measure::dimension).toList());
    assertEquals(mm("0.3"), target(press, Dimension.DEPTH));
    var hand = made(DrillSetup.countersink(seat, DRILL, CONE, CONDITIONS));
    assertEquals(mm("4.3"), set(hand, Role.COLLAR));
    refused(
        Refusal.Reason.CUTTER_DOES_NOT_FIT_MACHINE,
        DrillSetup.countersink(seat, PRESS, EIGHT, CONDITIONS));
  }

  /** Judged by walking the bit down, not by the formula that made the plunges. */
  @Test
  void anyHole_plungesReachTheDepth_andNoneGoesTooFarWithoutALift() {
    var chance = new Random(20_260);
    int made = 0;
    for (int i = 0; i < 2_000; i++) {
      var bit = BITS.get(chance.nextInt(BITS.size()));
      var depth = Length.ofMicrometres(1_000 + 100 * chance.nextInt(500));
      var across = Length.ofMicrometres(100 * chance.nextInt(2_000));
      var positions =
          IntStream.rangeClosed(1, 1 + chance.nextInt(6))
              .mapToObj(n -> Worked.entered("hole", Length.ofMillimetres(20L * n)))
              .toList();
      var asked =
          new Holes(
              Worked.entered("hole", bit.diameter()),
              Optional.empty(),
              Optional.of(Worked.entered("depth", depth)),
              bit.kind() == Bit.Kind.CUP,
              new Row(Worked.entered("edge", across), positions),
              Material.SOFTWOOD,
              piece("300", "200", "50"));
      var answer =
          chance.nextBoolean()
              ? DrillSetup.holes(asked, PRESS, bit, CONDITIONS)
              : DrillSetup.holes(asked, DRILL, bit, CONDITIONS);
      if (answer instanceof Setup setup) {
        made++;
        var at = Length.ZERO;
        for (var pass : setup.passes()) {
          assertTrue(pass.depth().value().isGreaterThan(at), "no plunge goes up");
          assertTrue(pass.depth().value().minus(at).isAtMost(bit.diameter().times(3)), "chips jam");
          assertTrue(pass.takes().least().isPositive(), "breaks out of the edge");
          assertEquals(across, pass.takes().middle());
          at = pass.depth().value();
        }
        assertEquals(depth, at);
        // Wood stays under the tip.
        assertTrue(at.plus(bit.point()).isLessThan(mm("50")));
        int limit = setup.speed().limit().value();
        assertTrue(setup.speed().step().perMinute() <= limit);
        assertTrue(
            setup.machine().speeds().stream()
                .noneMatch(
                    step ->
                        step.perMinute() <= limit
                            && step.perMinute() > setup.speed().step().perMinute()));
      }
    }
    assertTrue(made > 500, made + " made");
  }

  @Test
  void pilotAndClearance_fitTheirBands() {
    var narrow =
        new Holes(
            entered("3.2"),
            Optional.of(new Band(mm("2.95"), mm("3.45"))),
            Optional.of(entered("14")),
            false,
            row("37", "96"),
            Material.PLYWOOD,
            piece("700", "300", "18"));
    made(DrillSetup.holes(narrow, PRESS, PILOT, CONDITIONS));
  }
}
