package org.proofcut.core.habit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
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
  private static final int SHOPS_FOR_EACH_WAY = 500;
  private static final List<Integer> SHOWN = List.of(0, 1, 3, 10);
  private static final int LAST = 10;

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
    final int shops;
    final int[] goodAfter = new int[LAST + 1];
    int sound;
    int soundAsked;
    int bungled;
    int bungledAsked;

    Tally(int shops) {
      this.shops = shops;
    }

    void count(boolean isBungled, boolean isAsked) {
      bungled += isBungled ? 1 : 0;
      sound += isBungled ? 0 : 1;
      bungledAsked += isBungled && isAsked ? 1 : 0;
      soundAsked += !isBungled && isAsked ? 1 : 0;
    }

    String good(int after) {
      return percent(goodAfter[after], shops);
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
    // One kind has nothing to do with another.
    for (var rows : KINDS.parallelStream().map(LearningTest::rows).toList()) {
      table.append(rows.figures());
      ways.append(rows.ways());
    }
    return table.append(ways).toString();
  }

  /** What the tables say of one kind of shop. */
  private record Rows(String figures, String ways) {}

  private static Rows rows(Kind kind) {
    var ours = tally(kind, Way.OURS, SHOPS);
    var figures =
        String.format(
            Locale.ROOT,
            "| %s | %s | %s | %s | %s | %s | %s | %s | %.1f %% | %s |\n",
            kind.words(),
            kind.saw() ? "" : decimals(kind.cutterUnder()) + " ± " + decimals(kind.cutterOff()),
            decimals(kind.scaleOff()),
            decimals(kind.scatter()),
            ours.good(0),
            ours.good(1),
            ours.good(3),
            ours.good(10),
            100.0 * ours.soundAsked / ours.sound,
            ours.bungled == 0 ? "" : percent(ours.bungledAsked, ours.bungled));
    var always = tally(kind, Way.MEAN_ALWAYS, SHOPS_FOR_EACH_WAY);
    var interval = tally(kind, Way.MEAN_ONCE_THE_INTERVAL_LEAVES_THE_MARK, SHOPS_FOR_EACH_WAY);
    return new Rows(
        figures,
        way(kind.words(), "ours", ours)
            + way("", "the mean, always", always)
            + way("", "the mean, once its interval leaves the mark out", interval));
  }

  private static String way(String shop, String way, Tally tally) {
    return "| %s | %s | %s | %s | %s |\n"
        .formatted(shop, way, tally.good(1), tally.good(3), tally.good(10));
  }

  private static Tally tally(Kind kind, Way way, int shops) {
    var tally = new Tally(shops);
    for (int number = 0; number < shops; number++) {
      follow(new SimulatedShop(kind, 1_000_003L * number + 17), way, tally);
    }
    return tally;
  }

  /**
   * Eleven set-ups of one shop. Each is set with what those before had taught when it was last
   * looked at, and is judged when it is one of those that the tables show.
   */
  private static void follow(SimulatedShop shop, Way way, Tally tally) {
    var observations = new ArrayList<Observation>();
    var rulings = new ArrayList<Ruling>();
    var learned = new HashMap<Trait, List<Observation>>();
    var reckoned = Reckoned.with(learn(observations, rulings), way);
    for (int before = 0; before <= LAST; before++) {
      boolean shown = SHOWN.contains(before);
      if (shown) {
        reckoned = Reckoned.with(learn(observations, rulings), way);
      }
      var setup = reckoned.corrected(shop.next(reckoned.cutWidth()));
      var cut = shop.proof(setup);
      var found = new EnumMap<Dimension, List<Length>>(Dimension.class);
      setup.measures().forEach(measure -> found.put(measure.dimension(), cut.found(measure)));
      if (shown && isGood(setup, found)) {
        tally.goodAfter[before]++;
      }
      var proof = "proof " + before;
      var at = HabitsForTests.day(before);
      for (var one : Observations.of(proof, setup, it -> found.get(it.dimension()), at)) {
        observations.add(one);
        var earlier = learned.computeIfAbsent(one.trait(), trait -> new ArrayList<>());
        var lesson = Lesson.of(one, earlier, HabitsForTests.LIMITS, HabitsForTests.T);
        boolean bungled = cut.isBungled(isGuide(one.trait()));
        boolean asked = lesson instanceof Lesson.AskFirst;
        tally.count(bungled, asked);
        if (!asked || !bungled) {
          earlier.add(one);
        }
        if (asked) {
          rulings.add(
              bungled
                  ? new Ruling.LeftOut(proof, one.trait(), "a chip at the fence", at)
                  : new Ruling.Accepted(proof, one.trait(), at));
        }
      }
    }
    // The tally above went its own way, one lesson after another.
    var inOneGo = learn(observations, rulings);
    learned.forEach((trait, those) -> assertEquals(those, inOneGo.of(trait).learned()));
  }

  private static Habits learn(List<Observation> observations, List<Ruling> rulings) {
    return Habits.of(observations, rulings, HabitsForTests.LIMITS, HabitsForTests.T);
  }

  private static boolean isGood(Setup setup, Map<Dimension, List<Length>> found) {
    return Proof.judge(setup, measure -> found.get(measure.dimension())).stream()
        .allMatch(Verdict::isProven);
  }

  private static boolean isGuide(Trait trait) {
    return trait instanceof Trait.ScaleOffset scale
        && scale.datum() == Trait.Datum.FENCE_TO_NEAREST_EDGE;
  }

  /** What a set-up reckons with: the cutter's width, and what each scale comes out beyond it. */
  private record Reckoned(Length cutWidth, Map<Trait.Datum, Length> beyond) {

    static Reckoned with(Habits habits, Way way) {
      var beyond = new EnumMap<Trait.Datum, Length>(Trait.Datum.class);
      var mark = ShopsForTests.SIXTEEN.diameter();
      var width = mark;
      for (var habit : habits.all()) {
        if (habit.trait() instanceof Trait.ScaleOffset scale) {
          beyond.put(scale.datum(), way.use(habit, Length.ZERO));
        } else {
          width = mark.plus(way.use(habit, mark));
        }
      }
      return new Reckoned(width, beyond);
    }

    /** Every scale set with its correction, on its own steps. */
    Setup corrected(Setup setup) {
      return moved(
          moved(setup, Setting.Role.FENCE, Trait.Datum.FENCE_TO_NEAREST_EDGE),
          Setting.Role.HEIGHT,
          Trait.Datum.HEIGHT);
    }

    private Setup moved(Setup setup, Setting.Role role, Trait.Datum datum) {
      var by = beyond.getOrDefault(datum, Length.ZERO).negated();
      var step = setup.setting(role).orElseThrow().step();
      return setup.movedBy(role, by.roundedTo(step, Rounding.NEAREST));
    }
  }

  private static String percent(int of, int all) {
    return Math.round(100.0 * of / all) + " %";
  }

  private static String decimals(double millimetres) {
    return String.format(Locale.ROOT, "%.2f", millimetres);
  }
}
