package org.proofcut.core.habit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.habit.HabitsForTests.FENCE;
import static org.proofcut.core.habit.HabitsForTests.HEIGHT;
import static org.proofcut.core.habit.HabitsForTests.LIMITS;
import static org.proofcut.core.habit.HabitsForTests.WIDTH;
import static org.proofcut.core.habit.HabitsForTests.day;
import static org.proofcut.core.habit.HabitsForTests.learn;
import static org.proofcut.core.habit.HabitsForTests.offset;
import static org.proofcut.core.habit.HabitsForTests.offsets;
import static org.proofcut.core.habit.HabitsForTests.width;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.habit.Ruling.About;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;

class HabitsTest {

  private static final LengthUnit MM = LengthUnit.MILLIMETRE;
  private static final Worked<Length> MARK =
      Worked.entered("marked diameter", Length.ofMillimetres(16));

  /** 0.2, 0.3, 0.4, 0.3, 0.2, 0.4: mean 0.3, s = √(0.04 ÷ 5) = 0.0894. */
  private static final List<Observation> SIX =
      offsets("0.2 mm", "0.3 mm", "0.4 mm", "0.3 mm", "0.2 mm", "0.4 mm");

  @Nested
  class Learning {

    @Test
    void firstFarFromItsMark_isAskedAbout() {
      assertLearned(1, List.of(width(0, "15.5 mm")), WIDTH);
      assertAsked(1, List.of(width(0, "15.499 mm")), WIDTH);
      assertLearned(1, offsets("1.5 mm"), FENCE);
      assertAsked(1, offsets("-1.501 mm"), FENCE);
    }

    @Test
    void secondFarFromTheFirst_isAskedAbout() {
      assertLearned(2, offsets("0.3 mm", "0.8 mm"), FENCE);
      assertAsked(1, offsets("0.3 mm", "0.801 mm"), FENCE);
      assertLearned(2, List.of(width(0, "15.9 mm"), width(1, "16 mm")), WIDTH);
      assertAsked(1, List.of(width(0, "15.9 mm"), width(1, "16.001 mm")), WIDTH);
    }

    /** Twice the usual scatter: Grubbs' test alone would take 0.51 for an outlier. */
    @Test
    void smallDifference_isNoQuestion() {
      var firm = offsets("0.3 mm", "0.3 mm", "0.3 mm", "0.3 mm");
      assertLearned(5, with(firm, "0.5 mm"), FENCE);
      assertAsked(1, with(firm, "0.501 mm"), FENCE);
    }

    @Test
    void looseFence_mayDifferMoreThanAFirmOne() {
      assertAsked(1, offsets("0.3 mm", "0.3 mm", "0.32 mm", "0.28 mm", "0.9 mm"), FENCE);
      assertLearned(5, offsets("0.3 mm", "0.7 mm", "0.1 mm", "0.5 mm", "0.9 mm"), FENCE);
    }

    @Test
    void question_saysWhatWasExpected() {
      var ask = learn(with(SIX, "2 mm")).of(FENCE).open().get(0);
      assertEquals(6, ask.earlier());
      assertEquals(Length.of("0.3 mm"), ask.expected());
      var why = ask.why(MM);
      assertTrue(
          why.startsWith("This proof found 2.00 mm, the mean of 6 proofs before was 0.30 mm."),
          why);
    }

    @Test
    void traits_areLearnedApart() {
      var both = new ArrayList<>(SIX);
      both.add(width(0, "15.9 mm"));
      var habits = learn(both);
      assertEquals(2, habits.all().size());
      assertEquals(6, habits.of(FENCE).learned().size());
      assertEquals(1, habits.of(WIDTH).learned().size());
      assertEquals(Optional.empty(), habits.of(HEIGHT).estimate());
    }

    @Test
    void ids_ofTraits_tellThemApart() {
      var ids = new HashSet<String>();
      for (var datum : Trait.Datum.values()) {
        ids.add(new Trait.ScaleOffset("a", "b", datum).id());
      }
      ids.add(new Trait.BaseToEdge("a", "b").id());
      ids.add(new Trait.BaseToEdge("b", "a").id());
      ids.add(WIDTH.id());
      assertEquals(Trait.Datum.values().length + 3, ids.size());
      assertEquals("scale~table~16~fence-to-nearest-edge", FENCE.id());
    }

    @Test
    void proofToldTwice_countsOnce() {
      var twice = with(SIX, "0.4 mm");
      twice.add(twice.get(6));
      assertEquals(7, learn(twice).of(FENCE).learned().size());
    }
  }

  @Nested
  class Rulings {

    private final List<Observation> oneFar = with(SIX, "2 mm");

    @Test
    void accepted_isLearned() {
      var habit = learn(oneFar, new Ruling.Accepted("p6", FENCE, day(7))).of(FENCE);
      assertEquals(7, habit.learned().size());
      assertEquals(List.of(), habit.open());
    }

    @Test
    void leftOut_isNeitherLearnedNorAskedAgain() {
      var habit = learn(oneFar, new Ruling.LeftOut("p6", FENCE, "a chip", day(7))).of(FENCE);
      assertEquals(6, habit.learned().size());
      assertEquals(List.of(), habit.open());
    }

    @Test
    void ruling_isOfOneTraitOfOneProof() {
      var habit =
          learn(
                  oneFar,
                  new Ruling.LeftOut("p6", HEIGHT, "a chip", day(7)),
                  new Ruling.LeftOut("p5", FENCE, "a chip", day(7)))
              .of(FENCE);
      assertEquals(5, habit.learned().size());
      assertEquals(1, habit.open().size());
    }

    @Test
    void theLastRuling_holds() {
      var no = new Ruling.LeftOut("p6", FENCE, "a chip", day(7));
      var yes = new Ruling.Accepted("p6", FENCE, day(8));
      assertEquals(7, learn(oneFar, no, yes).of(FENCE).learned().size());
      assertEquals(7, learn(oneFar, yes, no).of(FENCE).learned().size());
    }

    /** A reading typed wrong, left out, then taken again; and one accepted, then taken again. */
    @Test
    void proofToldAgainAfterARuling_isJudgedAnew() {
      var no = new Ruling.LeftOut("p6", FENCE, "typed wrong", day(7));
      var yes = new Ruling.Accepted("p6", FENCE, day(7));
      var right = with(oneFar, toldAgain(6, 8, "0.3 mm"));
      assertEquals(7, learn(right, no).of(FENCE).learned().size());
      var farAgain = with(oneFar, toldAgain(6, 8, "-2 mm"));
      assertEquals(1, learn(farAgain, yes).of(FENCE).open().size());
    }

    @Test
    void lessons_sayWhatBecameOfEach_asTheyHappened() {
      var lessons =
          learn(oneFar, new Ruling.LeftOut("p2", FENCE, "a chip", day(7))).of(FENCE).lessons();
      assertEquals(oneFar, lessons.stream().map(Lesson::observation).toList());
      assertEquals("a chip", assertInstanceOf(Lesson.LeftOut.class, lessons.get(2)).because());
      assertInstanceOf(Lesson.Learned.class, lessons.get(3));
      assertInstanceOf(Lesson.AskFirst.class, lessons.get(6));
    }

    @Test
    void startedAfresh_ofAFence_coversBothEdgesAndNoOtherScale() {
      var afresh = new About.Scale("table", Trait.Datum.FENCE_TO_FARTHEST_EDGE);
      assertTrue(afresh.covers(FENCE));
      assertFalse(afresh.covers(HEIGHT));
      assertFalse(new About.Scale("saw", Trait.Datum.FENCE_TO_NEAREST_EDGE).covers(FENCE));
    }

    @Test
    void startedAfresh_forgetsWhatWasBefore_andKeepsWhy() {
      var reset =
          new Ruling.StartedAfresh(
              new About.Scale("table", Trait.Datum.FENCE_TO_NEAREST_EDGE),
              "fence set anew",
              day(4));
      var habit = learn(SIX, reset).of(FENCE);
      assertEquals(List.of("p4", "p5"), habit.learned().stream().map(Observation::proof).toList());
      assertEquals(Optional.of(reset), habit.since());
    }

    @ParameterizedTest
    @CsvSource({"16, table, 0, 0", "12, table, 0, 1", "16, saw, 0, 0", "12, saw, 1, 1"})
    void startedAfresh_reachesAsFarAsItSays(
        String cutter, String machine, int fenceLearned, int widthLearned) {
      var told = List.of(offset(0, "0.3 mm"), width(0, "15.9 mm"));
      var habits =
          learn(
              told,
              new Ruling.StartedAfresh(new About.Cutter(cutter), "sharpened", day(1)),
              new Ruling.StartedAfresh(new About.Machine(machine), "moved", day(1)));
      assertEquals(fenceLearned, habits.of(FENCE).learned().size());
      assertEquals(widthLearned, habits.of(WIDTH).learned().size());
    }

    @Test
    void setAside_isLearnedAndNotUsed_untilTakenUp() {
      var aside = new Ruling.SetAside(FENCE, "the fence goes for repair", day(7));
      var habit = learn(SIX, aside).of(FENCE);
      assertEquals(6, habit.learned().size());
      var advice = habit.correction(LIMITS, MM);
      assertFalse(advice.isLearned());
      assertEquals(Length.ZERO, advice.use().value());
      assertTrue(advice.words().endsWith("Set aside: the fence goes for repair."), advice.words());
      assertTrue(
          learn(SIX, aside, new Ruling.TakenUp(FENCE, day(8)))
              .of(FENCE)
              .correction(LIMITS, MM)
              .isLearned());
    }
  }

  @Nested
  class Using {

    /** chance = √(0.1² + 5 × 0.089²) ÷ 6 = 0.0371, up to 0.038; 0.3 − 0.038² ÷ 0.3 = 0.295. */
    @Test
    void correction_ofSixProofs_workedByHand() {
      var advice = learn(SIX).of(FENCE).correction(LIMITS, MM);
      assertTrue(advice.isLearned());
      assertEquals(Length.of("-0.295 mm"), advice.use().value());
      assertEquals(
          "Set by your fence, cuts have come out 0.30 mm more than set: 6 proofs, ±0.10 mm.",
          advice.words());
      var names = advice.use().lines().stream().map(Worked::name).toList();
      assertTrue(names.contains("mean of 6 proofs"), names::toString);
      assertTrue(names.contains("chance in the mean"), names::toString);
      assertEquals("correction of the fence", names.get(names.size() - 1));
    }

    /** 0.5 − 0.1² ÷ 0.5 = 0.48. */
    @Test
    void correction_ofOneProof_farBeyondTheUsualScatter_isUsedAlmostWhole() {
      var advice = learn(offsets("-0.5 mm")).of(FENCE).correction(LIMITS, MM);
      assertEquals(Length.of("0.48 mm"), advice.use().value());
      assertEquals(
          "Set by your fence, cuts have come out 0.50 mm less than set: 1 proof; one alone gives no"
              + " interval.",
          advice.words());
    }

    @Test
    void correction_withinTheUsualScatter_isNotUsed() {
      var advice = learn(offsets("0.1 mm")).of(FENCE).correction(LIMITS, MM);
      assertFalse(advice.isLearned());
      assertEquals(Length.ZERO, advice.use().value());
      assertTrue(advice.words().endsWith("That is too near to tell from chance."), advice.words());
      assertTrue(learn(offsets("0.101 mm")).of(FENCE).correction(LIMITS, MM).isLearned());
    }

    /** chance = 0.02 ÷ 2 = 0.01; 16 − 0.1 + 0.01² ÷ 0.1 = 15.901. */
    @Test
    void size_ofACutter_workedByHand() {
      var habit = learn(List.of(width(0, "15.9 mm"), width(1, "15.9 mm"))).of(WIDTH);
      var advice = habit.size(MARK, LIMITS, MM);
      assertEquals(Length.of("15.901 mm"), advice.use().value());
      assertEquals("Your cutter has cut 15.90 mm wide: 2 proofs, ±0.01 mm.", advice.words());
    }

    @Test
    void unknown_leavesTheMark() {
      var advice = learn(List.of()).of(WIDTH).size(MARK, LIMITS, MM);
      assertFalse(advice.isLearned());
      assertEquals(MARK, advice.use());
    }

    @Test
    void words_speakTheUnitOfTheShop() {
      var advice = learn(offsets("0.508 mm")).of(FENCE).correction(LIMITS, LengthUnit.INCH);
      assertTrue(advice.words().contains("0.020 in more than set"), advice.words());
    }

    @Test
    void askedTheWrongWay_isAFaultOfTheProgram() {
      var habits = learn(List.of(offset(0, "0.3 mm"), width(0, "15.9 mm")));
      assertThrows(IllegalStateException.class, () -> habits.of(WIDTH).correction(LIMITS, MM));
      assertThrows(IllegalStateException.class, () -> habits.of(FENCE).size(MARK, LIMITS, MM));
    }
  }

  private static void assertLearned(int count, List<Observation> told, Trait trait) {
    var habit = learn(told).of(trait);
    assertEquals(count, habit.learned().size());
    assertEquals(List.of(), habit.open());
  }

  /** The last is the only one asked about. */
  private static void assertAsked(int count, List<Observation> told, Trait trait) {
    var habit = learn(told).of(trait);
    assertEquals(count, habit.open().size());
    assertInstanceOf(Lesson.AskFirst.class, habit.open().get(0));
    assertEquals(told.get(told.size() - 1), habit.open().get(0).observation());
    assertEquals(told.size() - 1, habit.learned().size());
  }

  private static Observation toldAgain(int proof, int day, String offset) {
    var again = offset(day, offset);
    return new Observation("p" + proof, again.trait(), again.set(), again.found(), again.at());
  }

  private static List<Observation> with(List<Observation> earlier, Observation next) {
    var all = new ArrayList<>(earlier);
    all.add(next);
    return all;
  }

  private static List<Observation> with(List<Observation> earlier, String offset) {
    var all = new ArrayList<>(earlier);
    all.add(offset(earlier.size(), offset));
    return all;
  }
}
