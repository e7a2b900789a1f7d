package org.proofcut.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.setup.CutsForTests.assertSet;
import static org.proofcut.core.setup.CutsForTests.entered;
import static org.proofcut.core.setup.CutsForTests.setup;
import static org.proofcut.core.setup.CutsForTests.withAids;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.geometry.Taper;
import org.proofcut.core.habit.Observations;
import org.proofcut.core.measure.Length;
import org.proofcut.core.proof.Proof;
import org.proofcut.core.proof.Verdict.Outcome;
import org.proofcut.core.setup.CutAsked.Tapered;
import org.proofcut.core.setup.Setting.Role;

class TaperSetupTest {

  private enum Edges {
    ONE,
    FIRST,
    SECOND
  }

  private static Tapered asked(
      Edges edges, String run, String wide, String narrow, String along, String apart) {
    return new Tapered(
        new Taper(entered(run), entered(wide), entered(narrow), edges != Edges.ONE),
        edges == Edges.SECOND,
        new CutAsked.Carrier(entered("250 mm"), entered("12 mm"), entered(apart)),
        KnifeSetupTest.board(along, wide, "30 mm", "30.2 mm"));
  }

  private static Answer cut(Tapered asked) {
    return TaperSetup.cut(
        asked, ShopsForTests.SAW, ShopsForTests.RIP_BLADE, withAids("flat-carrier"));
  }

  private static Setup leg(Edges edges) {
    return setup(cut(asked(edges, "600 mm", "50 mm", "30 mm", "700 mm", "400 mm")));
  }

  /** One edge: 20 in 600. cos = 0.99944…, 30 · cos = 29.98; 400 · 20 ÷ 600 = 13.33 → 13.34. */
  @Test
  void oneEdge_heelAndOffset_fenceAtTheCarriersWidth_bladeOverCarrierAndStock() {
    var setup = leg(Edges.ONE);
    assertSet("29.98 mm", Role.STOP, setup);
    assertSet("13.34 mm", Role.STOP_OFFSET, setup);
    assertSet("250 mm", Role.FENCE, setup);
    // 12 + 30.2 + 5, in steps of half a millimetre
    assertSet("47 mm", Role.HEIGHT, setup);
    assertEquals(Guide.CARRIER, setup.guide());
    assertEquals(ShopsForTests.mm(250), setup.passes().get(0).takes().least());
    assertEquals(Feed.INTO_THE_BLADE, setup.feed());
  }

  /**
   * Both: 10 in 600. First 40 · cos(0.955°) = 39.99 → 40.00; 400 · 10 ÷ 600 = 6.67, half way.
   * Second as derived in TaperTest.
   */
  @Test
  void bothEdges_firstLeavesTheSecondsPart_secondHasTwiceTheAngle() {
    var first = leg(Edges.FIRST);
    assertSet("40 mm", Role.STOP, first);
    assertSet("6.68 mm", Role.STOP_OFFSET, first);
    assertEquals(ShopsForTests.mm(40), first.measures().get(0).target().value());
    var second = leg(Edges.SECOND);
    assertSet("30 mm", Role.STOP, second);
    assertSet("13.34 mm", Role.STOP_OFFSET, second);
    assertEquals(ShopsForTests.mm(30), second.measures().get(0).target().value());
  }

  @Test
  void eachMeasure_isPutRightByItsOwnStop_neverByTheFence() {
    for (var edges : Edges.values()) {
      var measures = leg(edges).measures();
      assertEquals(Role.STOP, measures.get(0).correctedBy().orElseThrow());
      assertEquals(Role.STOP_OFFSET, measures.get(1).correctedBy().orElseThrow());
      // 0.20 over 600 is 0.13 over 400
      assertEquals(Length.of("0.26 mm"), measures.get(1).accepted().extent());
    }
  }

  /** The stops stand on the carrier: no scale of the saw is read. */
  @Test
  void proof_tellsNothingOfTheSaw() {
    var told =
        Observations.of(
            "p1",
            leg(Edges.ONE),
            measure -> Collections.nCopies(2, measure.target().value()),
            Instant.parse("2026-03-02T08:00:00Z"));
    assertEquals(List.of(), told);
  }

  @ParameterizedTest
  @CsvSource({
    "ONE, 600 mm, 50 mm, 50 mm, 700 mm, 400 mm, WORK_TOO_SMALL, rip it straight",
    "ONE, 79.9 mm, 50 mm, 30 mm, 700 mm, 400 mm, OUT_OF_REACH, along a track",
    "ONE, 150 mm, 50 mm, 30 mm, 199 mm, 120 mm, WORK_TOO_SMALL, longer piece",
    "ONE, 600 mm, 24.9 mm, 20 mm, 700 mm, 400 mm, WORK_TOO_SMALL, wider board",
    "ONE, 600 mm, 50 mm, 11.9 mm, 700 mm, 400 mm, WORK_TOO_SMALL, thin end off",
    "SECOND, 600 mm, 50 mm, 11.9 mm, 700 mm, 400 mm, WORK_TOO_SMALL, thin end off",
    "ONE, 600 mm, 50 mm, 30 mm, 700 mm, 99 mm, OUT_OF_REACH, between 100",
    "ONE, 600 mm, 50 mm, 30 mm, 700 mm, 601 mm, OUT_OF_REACH, and 600",
    // 600 − 50 · 2 · 10 · 600 ÷ (600² − 10²) = 598.33
    "SECOND, 600 mm, 50 mm, 30 mm, 700 mm, 599 mm, OUT_OF_REACH, and 598.3",
    "ONE, 99 mm, 50 mm, 40 mm, 300 mm, 99 mm, WORK_TOO_SMALL, longer piece"
  })
  void workOrCarrier_thatHoldsNothing_isRefusedWithAnotherWay(
      Edges edges,
      String run,
      String wide,
      String narrow,
      String along,
      String apart,
      Refusal.Reason why,
      String instead) {
    var refusal =
        assertInstanceOf(Refusal.class, cut(asked(edges, run, wide, narrow, along, apart)));
    assertEquals(why, refusal.reason(), refusal.what());
    assertTrue(refusal.instead().contains(instead), refusal.instead());
  }

  @ParameterizedTest
  @CsvSource({
    "ONE, 120 mm, 50 mm, 20 mm, 200 mm, 100 mm",
    "ONE, 600 mm, 25 mm, 12 mm, 700 mm, 600 mm",
    "SECOND, 600 mm, 50 mm, 12 mm, 700 mm, 400 mm",
    // The first of both leaves more than the end that is wanted.
    "FIRST, 600 mm, 50 mm, 10 mm, 700 mm, 400 mm"
  })
  void workThatJustServes_isCut(
      Edges edges, String run, String wide, String narrow, String along, String apart) {
    setup(cut(asked(edges, run, wide, narrow, along, apart)));
  }

  @Test
  void withoutACarrier_itIsRefused_andFreeHandIsNoWay() {
    var answer =
        TaperSetup.cut(
            asked(Edges.ONE, "600 mm", "50 mm", "30 mm", "700 mm", "400 mm"),
            ShopsForTests.SAW,
            ShopsForTests.RIP_BLADE,
            withAids("carrier-jig", "push-stick"));
    var refusal = assertInstanceOf(Refusal.class, answer);
    assertEquals(Refusal.Reason.AID_MISSING, refusal.reason());
    assertTrue(refusal.what().contains("never cut free-hand, nor with the fence alone"));
  }

  @ParameterizedTest
  @CsvSource({
    // 29.98 + 13.34 + 50 = 93.32
    "93.3 mm, 12 mm, OUT_OF_REACH, at least 93.3",
    "651 mm, 12 mm, OUT_OF_REACH, narrower carrier",
    // 80 is as high as the blade goes; 45.2 + 35.2 rounds to 80.5
    "250 mm, 45.2 mm, TOO_DEEP, thinner base"
  })
  void carrierThatDoesNotServe_isRefused(
      String width, String base, Refusal.Reason why, String instead) {
    var good = asked(Edges.ONE, "600 mm", "50 mm", "30 mm", "700 mm", "400 mm");
    var refusal =
        assertInstanceOf(
            Refusal.class,
            cut(
                new Tapered(
                    good.taper(),
                    false,
                    new CutAsked.Carrier(entered(width), entered(base), good.carrier().apart()),
                    good.work())));
    assertEquals(why, refusal.reason(), refusal.what());
    assertTrue(refusal.instead().contains(instead), refusal.instead());
  }

  // ---- sawn as the sheet says ----------------------------------------------------------------

  private record Place(double along, double out) {

    Place minus(Place other) {
      return new Place(along - other.along, out - other.out);
    }

    double dot(Place other) {
      return along * other.along + out * other.out;
    }

    double length() {
      return Math.hypot(along, out);
    }
  }

  /**
   * A piece as its corners, round from the one that goes into the heel: along the edge that lies on
   * the stops, across the wide end, back along the other side. Nothing here knows of angles: it is
   * laid against the two stops and what sticks out over the carrier's edge is sawn off.
   */
  private record Sawn(List<Place> corners) {

    static Sawn blank(double length, double width) {
      return new Sawn(
          List.of(
              new Place(0, 0),
              new Place(length, 0),
              new Place(length, width),
              new Place(0, width)));
    }

    /** The saw takes what lies out over the edge of the carrier. */
    Sawn cut(double heel, double offset, double apart) {
      double hypotenuse = Math.hypot(apart, offset);
      double cos = apart / hypotenuse;
      double sin = offset / hypotenuse;
      var corner = corners.get(0);
      var along = unit(corners.get(1).minus(corner));
      var across = new Place(-along.out, along.along);
      if (across.dot(corners.get(2).minus(corner)) < 0) {
        across = new Place(-across.along, -across.out);
      }
      var kept = new ArrayList<Place>();
      for (int i = 0; i < corners.size(); i++) {
        var one = corners.get(i);
        var next = corners.get((i + 1) % corners.size());
        double in = inside(one.minus(corner), along, across, heel, cos, sin);
        double nextIn = inside(next.minus(corner), along, across, heel, cos, sin);
        if (in >= 0) {
          kept.add(one);
        }
        if (in >= 0 != nextIn >= 0) {
          double share = in / (in - nextIn);
          kept.add(
              new Place(
                  one.along + share * (next.along - one.along),
                  one.out + share * (next.out - one.out)));
        }
      }
      return new Sawn(kept);
    }

    /** How far a place lies from the carrier's edge, over the carrier. */
    private static double inside(
        Place from, Place along, Place across, double heel, double cos, double sin) {
      return heel + from.dot(along) * sin - from.dot(across) * cos;
    }

    private static Place unit(Place of) {
      return new Place(of.along / of.length(), of.out / of.length());
    }

    /** Turned over: the corner that was just cut goes into the heel. */
    Sawn turnedOver() {
      var round = new ArrayList<Place>();
      for (int i = corners.size() - 1; i >= 0; i--) {
        round.add(corners.get(i));
      }
      return new Sawn(round);
    }

    /** From corner to corner of the narrow end. */
    double end() {
      return corners.get(corners.size() - 1).minus(corners.get(0)).length();
    }

    /** Square to the edge that lay on the stops, so far from the narrow end. */
    double widthAt(double at) {
      var along = unit(corners.get(1).minus(corners.get(0)));
      for (int i = 2; i < corners.size() - 1; i++) {
        var one = corners.get(i).minus(corners.get(0));
        var other = corners.get(i + 1).minus(corners.get(0));
        double from = one.dot(along);
        double to = other.dot(along);
        if (from >= at && at >= to && from > to) {
          double share = (from - at) / (from - to);
          var across = new Place(-along.out, along.along);
          return Math.abs((1 - share) * one.dot(across) + share * other.dot(across));
        }
      }
      throw new AssertionError("nothing across from " + at);
    }
  }

  private static double mm(Setup setup, Role role) {
    return millimetres(setup.setting(role).orElseThrow().read().value());
  }

  private static double millimetres(Length length) {
    return length.picometres() / 1e9;
  }

  private static double apart(Setup setup) {
    return millimetres(((Tapered) setup.asked()).carrier().apart().value());
  }

  private static Sawn saw(Sawn piece, Setup setup, double heelOff, double offsetOff) {
    return piece.cut(
        mm(setup, Role.STOP) + heelOff, mm(setup, Role.STOP_OFFSET) + offsetOff, apart(setup));
  }

  /** What a caliper that reads hundredths says of both measures. */
  private static List<Length> found(Sawn sawn, Setup setup, Measure measure) {
    double is =
        measure.dimension() == Measure.Dimension.SIZE
            ? sawn.end()
            : sawn.widthAt(apart(setup)) - sawn.widthAt(1e-9);
    var read = Length.ofMicrometres(Math.round(is * 100) * 10);
    return List.of(read, read);
  }

  private static boolean proves(Sawn sawn, Setup setup) {
    return Proof.judge(setup, measure -> found(sawn, setup, measure)).stream()
        .allMatch(verdict -> verdict.outcome() == Outcome.PROVEN);
  }

  /** Set off the marks by so much, then as often as a correction is asked for. */
  private static int proofsUntilProven(Sawn piece, Setup asSet, double heelOff, double offsetOff) {
    var setup = asSet;
    for (int proof = 1; proof <= 5; proof++) {
      var sawn = saw(piece, setup, heelOff, offsetOff);
      var now = setup;
      var verdicts = Proof.judge(setup, measure -> found(sawn, now, measure));
      if (verdicts.stream().allMatch(one -> one.outcome() == Outcome.PROVEN)) {
        return proof;
      }
      for (var verdict : verdicts) {
        if (verdict.correction().isPresent()) {
          var by = verdict.correction().get();
          setup = setup.movedBy(by.role(), by.by());
        }
      }
    }
    return Integer.MAX_VALUE;
  }

  @Property(tries = 1_000, edgeCases = EdgeCasesMode.NONE)
  void oneEdge_sawnAsSet_isProven_andBeginsWhereTheRunDoes(
      @ForAll @IntRange(min = 1000, max = 9000) int runTenths,
      @ForAll @IntRange(min = 250, max = 2000) int wideTenths,
      @ForAll @IntRange(min = 120, max = 1990) int narrowTenths,
      @ForAll @IntRange(min = 1000, max = 9000) int apartTenths) {
    var run = ShopsForTests.tenths(runTenths);
    var answer =
        cut(
            asked(
                Edges.ONE,
                run.toString(),
                ShopsForTests.tenths(wideTenths).toString(),
                ShopsForTests.tenths(narrowTenths).toString(),
                "1000 mm",
                ShopsForTests.tenths(apartTenths).toString()));
    Assume.that(answer instanceof Setup);
    var setup = (Setup) answer;
    var sawn = saw(Sawn.blank(1000, wideTenths / 10.0), setup, 0, 0);
    assertTrue(proves(sawn, setup));
    assertEquals(narrowTenths / 10.0, sawn.end(), 0.02);
    // On the other side the taper begins at its run, as sure as so slight an angle can be set.
    double in = (wideTenths - narrowTenths) / 10.0;
    double slope = in / (runTenths / 10.0);
    double stepsOver = 0.02 + 0.02 * (runTenths / 10.0) / apart(setup);
    assertEquals(runTenths / 10.0, sawn.corners().get(3).along(), stepsOver / slope);
  }

  @Property(tries = 1_000, edgeCases = EdgeCasesMode.NONE)
  void bothEdges_oneAfterTheOther_makeAPieceThatIsTheSameOnBothSides(
      @ForAll @IntRange(min = 2000, max = 9000) int runTenths,
      @ForAll @IntRange(min = 250, max = 2000) int wideTenths,
      @ForAll @IntRange(min = 120, max = 1990) int narrowTenths) {
    var sizes =
        List.of(runTenths, wideTenths, narrowTenths).stream()
            .map(tenths -> ShopsForTests.tenths(tenths).toString())
            .toList();
    var answers =
        List.of(Edges.FIRST, Edges.SECOND).stream()
            .map(
                edges ->
                    cut(
                        asked(
                            edges, sizes.get(0), sizes.get(1), sizes.get(2), "1000 mm", "120 mm")))
            .toList();
    Assume.that(answers.stream().allMatch(Setup.class::isInstance));
    var first = (Setup) answers.get(0);
    var second = (Setup) answers.get(1);
    var once = saw(Sawn.blank(1000, wideTenths / 10.0), first, 0, 0);
    assertTrue(proves(once, first));
    var twice = saw(once.turnedOver(), second, 0, 0);
    assertTrue(proves(twice, second));
    assertEquals(narrowTenths / 10.0, twice.end(), 0.03);
    // Both ends of the narrow end lie as far from the middle line of the blank.
    double middle = wideTenths / 20.0;
    double one = Math.abs(twice.corners().get(0).out() - middle);
    double other = Math.abs(twice.corners().get(twice.corners().size() - 1).out() - middle);
    // Each cut's heel is set to a hundredth either way, and both of the caliper's ends show it.
    assertEquals(one, other, 0.05);
  }

  /** By so little that the taper still reaches to where it is measured. */
  @Property(tries = 500, edgeCases = EdgeCasesMode.NONE)
  void stopsSetOff_areProvenByTheThirdProof(
      @ForAll @IntRange(min = -50, max = 50) int heelOff,
      @ForAll @IntRange(min = -25, max = 25) int offsetOff,
      @ForAll @IntRange(min = 8, max = 30) int in) {
    var answer = cut(asked(Edges.ONE, "400 mm", "60 mm", (60 - in) + " mm", "1000 mm", "300 mm"));
    var setup = setup(answer);
    int proofs = proofsUntilProven(Sawn.blank(1000, 60), setup, heelOff / 100.0, offsetOff / 100.0);
    assertTrue(proofs <= 3, proofs + " proofs");
  }

  @Nested
  class SeededFaults {

    private final Sawn blank = Sawn.blank(700, 50);

    @Test
    void goodSetup_isProven() {
      assertTrue(proves(saw(blank, leg(Edges.ONE), 0, 0), leg(Edges.ONE)));
    }

    /** As if the corner lay square to the carrier's edge: forgets how the end leans. */
    @Test
    void heelOffByATolerance_isFound() {
      assertFalse(proves(saw(blank, leg(Edges.ONE), 0.22, 0), leg(Edges.ONE)));
    }

    @Test
    void offsetOffByItsShare_isFound() {
      assertFalse(proves(saw(blank, leg(Edges.ONE), 0, 0.15), leg(Edges.ONE)));
    }

    /** The stops left as they stood for the first edge. */
    @Test
    void secondEdge_onTheFirstsStops_isFound() {
      var second = leg(Edges.SECOND);
      var once = saw(blank, leg(Edges.FIRST), 0, 0);
      assertTrue(proves(saw(once.turnedOver(), second, 0, 0), second));
      assertFalse(proves(saw(once.turnedOver(), leg(Edges.FIRST), 0, 0), second));
    }

    /** Straight edge on the stops again: the second cut would make one edge steeper. */
    @Test
    void secondEdge_notTurnedOver_isFound() {
      var second = leg(Edges.SECOND);
      var once = saw(blank, leg(Edges.FIRST), 0, 0);
      var again = saw(once, second, 0, 0);
      double middle = 25;
      assertTrue(Math.abs(middle - (again.corners().get(0).out() + again.end() / 2)) > 5);
    }

    @Test
    void fedFromBehind_isAClimbCut_andLifts() {
      var setup = leg(Edges.ONE);
      for (var feed : List.of(CutSimulation.AWAY, CutSimulation.TOWARD_YOU)) {
        var met =
            new CutSimulation(ShopsForTests.mm(400))
                .passOfBlade(
                    feed,
                    setup.passes().get(0).takes().least(),
                    ShopsForTests.RIP_BLADE.kerf(),
                    ShopsForTests.RIP_BLADE.diameter(),
                    setup.setting(Role.HEIGHT).orElseThrow().set().value());
        assertEquals(feed == CutSimulation.TOWARD_YOU, met.isClimb());
        assertEquals(feed == CutSimulation.AWAY, met.pressesOn());
      }
    }
  }
}
