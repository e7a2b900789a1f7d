package org.proofcut.core.habit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.habit.SimulatedShop.Kind;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.proof.Proof;
import org.proofcut.core.proof.Verdict;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.setup.ShopsForTests;

/**
 * How often the first proof cut of a set-up is good, in simulated shops that learn from those
 * before, as docs/learning.md prints it. To write its table anew: {@code mvn test
 * -Dtest=LearningTest -Dproofcut.refresh=true}.
 */
class LearningTest {

  private static final Path DOCUMENT = Path.of("docs/learning.md");
  private static final String BEGIN = "<!-- learning: begin -->\n";
  private static final String END = "<!-- learning: end -->\n";

  private static final int SHOPS = 2_000;

  private static final List<Kind> KINDS =
      List.of(
          new Kind("true and firm, new cutter", false, 0, 0.03, 0.05, 0.04, 0),
          new Kind("true and firm, resharpened cutter", false, 0.2, 0.1, 0.05, 0.04, 0),
          new Kind("off and firm, new cutter", false, 0, 0.03, 0.4, 0.05, 0),
          new Kind("off and firm, resharpened cutter", false, 0.2, 0.1, 0.4, 0.05, 0),
          new Kind("the same, one set-up in 20 bungled", false, 0.2, 0.1, 0.4, 0.05, 0.05),
          new Kind("true and loose, new cutter", false, 0, 0.03, 0.05, 0.2, 0),
          new Kind("off and loose, resharpened cutter", false, 0.2, 0.1, 0.4, 0.2, 0),
          new Kind("saw, true and firm", true, 0, 0, 0.1, 0.05, 0),
          new Kind("saw, off and firm", true, 0, 0, 0.5, 0.08, 0),
          new Kind("saw, true and loose", true, 0, 0, 0.05, 0.15, 0));

  /** Ways to use what was learned, tried against each other. */
  private enum Way {
    OURS,
    MEAN_ALWAYS,
    MEAN_ONCE_THE_INTERVAL_LEAVES_THE_MARK;

    /** How much to add to the mark. */
    Length use(Habit habit, Length mark) {
      if (habit.estimate().isEmpty()) {
        return Length.ZERO;
      }
      var known = habit.estimate().get();
      var off = known.mean().minus(mark);
      return switch (this) {
        case MEAN_ALWAYS -> off;
        case MEAN_ONCE_THE_INTERVAL_LEAVES_THE_MARK ->
            known.scatter().isEmpty() || known.scatter().get().ofMean().contains(mark)
                ? Length.ZERO
                : off;
        case OURS -> {
          var unit = LengthUnit.MILLIMETRE;
          if (habit.trait() instanceof Trait.ScaleOffset) {
            var advice = habit.correction(HabitsForTests.LIMITS, unit);
            yield advice.use().value().negated();
          }
          var advice = habit.size(Worked.entered("mark", mark), HabitsForTests.LIMITS, unit);
          yield advice.use().value().minus(mark);
        }
      };
    }
  }

  /** What became of the shops of one kind. */
  private static final class Tally {
    final int[] goodAfter = new int[11];
    int sound;
    int soundAsked;
    int bungled;
    int bungledAsked;

    String good(int after) {
      return percent(goodAfter[after], SHOPS);
    }
  }

  @Test
  void document_tables_areAsTheSimulationGives() throws IOException {
    var document = Files.readString(DOCUMENT);
    int begin = document.indexOf(BEGIN);
    int end = document.indexOf(END);
    assertTrue(0 <= begin && begin < end, DOCUMENT + " has lost its markers " + BEGIN + END);
    var fresh = document.substring(0, begin) + BEGIN + tables() + document.substring(end);
    if (Boolean.getBoolean("proofcut.refresh")) {
      Files.writeString(DOCUMENT, fresh);
    } else {
      assertEquals(fresh, document, "stale: run this test with -Dproofcut.refresh=true");
    }
  }

  private static String tables() {
    var table =
        new StringBuilder(
            """
            | shop | cutter under mark | scales off | scatter | without learning | after 1 proof | after 3 | after 10 | sound proofs asked about | bungled ones |
            | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |
            """);
    var ways =
        new StringBuilder(
            """

            | shop | | after 1 proof | after 3 | after 10 |
            | --- | --- | --- | --- | --- |
            """);
    for (var kind : KINDS) {
      var ours = tally(kind, Way.OURS);
      table.append(
          "| %s | %s | %s | %s | %s | %s | %s | %s | %s | %s |\n"
              .formatted(
                  kind.words(),
                  kind.saw()
                      ? ""
                      : decimals(kind.cutterUnder()) + " ± " + decimals(kind.cutterOff()),
                  decimals(kind.scaleOff()),
                  decimals(kind.scatter()),
                  ours.good(0),
                  ours.good(1),
                  ours.good(3),
                  ours.good(10),
                  percent(ours.soundAsked, ours.sound),
                  ours.bungled == 0 ? "" : percent(ours.bungledAsked, ours.bungled)));
      ways(ways, kind.words(), "ours", ours);
      ways(ways, "", "the mean, always", tally(kind, Way.MEAN_ALWAYS));
      ways(
          ways,
          "",
          "the mean, once its interval leaves the mark out",
          tally(kind, Way.MEAN_ONCE_THE_INTERVAL_LEAVES_THE_MARK));
    }
    return table.append(ways).toString();
  }

  private static void ways(StringBuilder table, String shop, String way, Tally tally) {
    table.append(
        "| %s | %s | %s | %s | %s |\n"
            .formatted(shop, way, tally.good(1), tally.good(3), tally.good(10)));
  }

  private static Tally tally(Kind kind, Way way) {
    var tally = new Tally();
    for (int number = 0; number < SHOPS; number++) {
      follow(new SimulatedShop(kind, 1_000_003L * number + 17), way, tally);
    }
    return tally;
  }

  /** Eleven set-ups of one shop, each reckoning with what those before have taught. */
  private static void follow(SimulatedShop shop, Way way, Tally tally) {
    var observations = new ArrayList<Observation>();
    var rulings = new ArrayList<Ruling>();
    for (int before = 0; before <= 10; before++) {
      var habits = Habits.of(observations, rulings, HabitsForTests.LIMITS, HabitsForTests.T);
      var setup = corrected(shop.next(cutWidth(habits, way)), habits, way);
      var cut = shop.proof(setup);
      var found = new EnumMap<Dimension, List<Length>>(Dimension.class);
      setup.measures().forEach(measure -> found.put(measure.dimension(), cut.found(measure)));
      var verdicts = Proof.judge(setup, measure -> found.get(measure.dimension()));
      if (verdicts.stream().allMatch(Verdict::isProven)) {
        tally.goodAfter[before]++;
      }
      var proof = "proof " + before;
      var at = HabitsForTests.day(before);
      for (var one :
          Observations.of(proof, setup, measure -> found.get(measure.dimension()), at)) {
        observations.add(one);
        var lesson =
            Lesson.of(one, habits.of(one.trait()).learned(), HabitsForTests.LIMITS, HabitsForTests.T);
        boolean bungled = cut.isBungled(isGuide(one.trait()));
        boolean asked = lesson instanceof Lesson.AskFirst;
        tally.bungled += bungled ? 1 : 0;
        tally.sound += bungled ? 0 : 1;
        tally.bungledAsked += bungled && asked ? 1 : 0;
        tally.soundAsked += !bungled && asked ? 1 : 0;
        if (asked) {
          rulings.add(
              bungled
                  ? new Ruling.LeftOut(proof, one.trait(), "a chip at the fence", at)
                  : new Ruling.Accepted(proof, one.trait(), at));
        }
      }
    }
  }

  private static boolean isGuide(Trait trait) {
    return trait instanceof Trait.ScaleOffset scale
        && scale.datum() == Trait.Datum.FENCE_TO_NEAREST_EDGE;
  }

  private static Length cutWidth(Habits habits, Way way) {
    var mark = ShopsForTests.SIXTEEN.diameter();
    var cutter = new Trait.CutWidth(ShopsForTests.SIXTEEN.id());
    return mark.plus(way.use(habits.of(cutter), mark));
  }

  /** Every scale of the set-up set with its correction, on its own steps. */
  private static Setup corrected(Setup setup, Habits habits, Way way) {
    var moved = setup;
    for (var role : Map.of(
            Setting.Role.FENCE, Trait.Datum.FENCE_TO_NEAREST_EDGE,
            Setting.Role.HEIGHT, Trait.Datum.HEIGHT)
        .entrySet()) {
      var trait =
          new Trait.ScaleOffset(setup.machine().id(), setup.cutter().id(), role.getValue());
      var by = way.use(habits.of(trait), Length.ZERO).negated();
      var step = setup.setting(role.getKey()).orElseThrow().step();
      moved = moved.movedBy(role.getKey(), by.roundedTo(step, Rounding.NEAREST));
    }
    return moved;
  }

  private static String percent(int of, int all) {
    return Math.round(100.0 * of / all) + " %";
  }

  private static String decimals(double millimetres) {
    return String.format(Locale.ROOT, "%.2f", millimetres);
  }
}
