package org.proofcut.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.setup.CutsForTests.band;
import static org.proofcut.core.setup.ShopsForTests.CONDITIONS;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.api.Test;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.shop.StackedCutter;
import org.proofcut.core.shop.StackedCutter.Layer;

class StacksTest {

  /** What is wanted, and what there is. */
  record Wanted(Length width, Band accepted, StackedCutter owned, int howMany) {}

  @Test
  void best_workedByHand_nearestFirst() {
    var owned = set(layers("3.2 mm", 4, "1.6 mm", 1), layers("0.3 mm", 2, "0.1 mm", 4));
    var best =
        Stacks.best(Length.of("17.87 mm"), band("17.83 mm", "17.91 mm"), owned, 3, CONDITIONS);
    // Chippers come to 9.6, 11.2 and 12.8; 11.2 + 6.4 = 17.6 and 0.3 makes 17.9, 0.03 off. Also
    // 3 × 0.1, with two shims more.
    assertEquals(
        List.of("1 × 0.3 mm", "3 × 0.1 mm"), best.stream().map(StacksTest::shims).toList());
    assertEquals(Length.of("17.9 mm"), best.get(0).cutWidth());
    assertEquals(
        "stack, 2 outer blades; chippers 3 × 3.20 mm, 1 × 1.60 mm; shims 1 × 0.30 mm",
        best.get(0).name());
  }

  @Test
  void best_outerBladesAlone_needNothingBetween() {
    var owned = set(layers("3.2 mm", 4), List.of());
    var best = Stacks.best(Length.of("6.4 mm"), band("6.3 mm", "6.5 mm"), owned, 3, CONDITIONS);
    assertEquals(1, best.size());
    assertEquals("stack, outer blades alone", best.get(0).name());
  }

  @Test
  void best_nothingInTheBand_isEmpty() {
    var owned = set(layers("3.2 mm", 4), layers("0.1 mm", 1));
    assertEquals(
        List.of(),
        Stacks.best(Length.of("18 mm"), band("17.9 mm", "18.1 mm"), owned, 3, CONDITIONS));
  }

  /** A drawer full of odd thicknesses is searched without a wait. */
  @Test
  void best_sixOfSixThicknessesEach_isQuick() {
    var chippers = new ArrayList<Layer>();
    var shims = new ArrayList<Layer>();
    for (int i = 0; i < 6; i++) {
      chippers.add(new Layer(Length.ofMicrometres(1_000 + 397L * i), 6));
      shims.add(new Layer(Length.ofMicrometres(50 + 37L * i), 6));
    }
    long before = System.nanoTime();
    var best =
        Stacks.best(
            Length.of("19 mm"), band("18.9 mm", "19.1 mm"), set(chippers, shims), 3, CONDITIONS);
    long milliseconds = (System.nanoTime() - before) / 1_000_000;
    assertEquals(3, best.size());
    assertEquals(Length.of("19 mm"), best.get(0).cutWidth());
    assertTrue(milliseconds < 5_000, milliseconds + " ms");
  }

  @Provide
  Arbitrary<Wanted> wanted() {
    var chippers = layers(1_000, 3_400, 3, 2);
    var shims = layers(50, 600, 3, 2);
    return Combinators.combine(
            Arbitraries.integers().between(1_500, 3_400),
            chippers,
            shims,
            Arbitraries.integers().between(0, 100),
            Arbitraries.integers().between(0, 300),
            Arbitraries.integers().between(1, 4))
        .as(
            (kerf, some, between, percent, half, howMany) -> {
              var owned = set(Length.ofMicrometres(kerf), some, between);
              // Anywhere from the outer blades alone to all that there is.
              var least = owned.outerKerf().times(2).picometres();
              var width =
                  new Length(least + (owned.cutWidth().picometres() - least) / 100 * percent);
              return new Wanted(
                  width, Band.around(width, Length.ofMicrometres(half)), owned, howMany);
            });
  }

  private static Arbitrary<List<Layer>> layers(int least, int most, int kinds, int count) {
    return Combinators.combine(
            Arbitraries.integers().between(least / 50, most / 50),
            Arbitraries.integers().between(1, count))
        // On steps of 0.05 mm, so that many stacks come to the same width.
        .as((steps, of) -> new Layer(Length.ofMicrometres(50L * steps), of))
        .list()
        .ofMinSize(1)
        .ofMaxSize(kinds);
  }

  @Property(tries = 1_000, edgeCases = EdgeCasesMode.NONE)
  void best_isTheBestOfAllSubsets(@ForAll("wanted") Wanted wanted) {
    var found =
        Stacks.best(
            wanted.width(), wanted.accepted(), wanted.owned(), wanted.howMany(), CONDITIONS);
    var all = everySubset(wanted.owned());
    var good =
        all.stream()
            .filter(one -> wanted.accepted().contains(one.width()))
            .sorted(
                Comparator.comparing((Subset one) -> one.width().minus(wanted.width()).abs())
                    .thenComparing(one -> one.shims().size())
                    .thenComparing(one -> one.chippers().size())
                    .thenComparing(Subset::chippers, StacksTest::thickestFirst)
                    .thenComparing(Subset::shims, StacksTest::thickestFirst))
            .limit(wanted.howMany())
            .toList();
    Statistics.label("stacks found, more than one wanted")
        .collect(wanted.howMany() > 1 ? Math.min(good.size(), 2) : -1)
        .coverage(
            coverage -> {
              coverage.check(0).percentage(share -> share > 5);
              coverage.check(2).percentage(share -> share > 5);
            });
    assertEquals(good, found.stream().map(StacksTest::subset).toList());
    for (var stack : found) {
      assertTrue(wanted.accepted().contains(stack.cutWidth()), stack::name);
    }
    assertEquals(
        found.size(), found.stream().map(StackedCutter::name).distinct().count(), "names differ");
  }

  /** Pieces one by one, thickest first. */
  private record Subset(List<Length> chippers, List<Length> shims, Length width) {}

  /** Takes every piece or leaves it, piece by piece. */
  private static Set<Subset> everySubset(StackedCutter owned) {
    var subsets = new HashSet<Subset>();
    var chippers = pieces(owned.chippers());
    var shims = pieces(owned.shims());
    for (int which = 0; which < 1 << chippers.size(); which++) {
      for (int other = 0; other < 1 << shims.size(); other++) {
        subsets.add(subset(owned.outerKerf(), taken(chippers, which), taken(shims, other)));
      }
    }
    return subsets;
  }

  private static Subset subset(StackedCutter stack) {
    return subset(stack.outerKerf(), pieces(stack.chippers()), pieces(stack.shims()));
  }

  private static Subset subset(Length kerf, List<Length> chippers, List<Length> shims) {
    var width = kerf.plus(kerf);
    for (var piece : chippers) {
      width = width.plus(piece);
    }
    for (var piece : shims) {
      width = width.plus(piece);
    }
    return new Subset(chippers, shims, width);
  }

  private static List<Length> pieces(List<Layer> layers) {
    var pieces = new ArrayList<Length>();
    for (var layer : layers) {
      for (int i = 0; i < layer.count(); i++) {
        pieces.add(layer.thickness());
      }
    }
    pieces.sort(Comparator.reverseOrder());
    return pieces;
  }

  private static List<Length> taken(List<Length> pieces, int which) {
    var taken = new ArrayList<Length>();
    for (int i = 0; i < pieces.size(); i++) {
      if ((which >> i & 1) == 1) {
        taken.add(pieces.get(i));
      }
    }
    return taken;
  }

  /** Both are of the same number, thickest first. */
  private static int thickestFirst(List<Length> one, List<Length> other) {
    for (int i = 0; i < one.size(); i++) {
      int order = other.get(i).compareTo(one.get(i));
      if (order != 0) {
        return order;
      }
    }
    return 0;
  }

  private static String shims(StackedCutter stack) {
    return stack.shims().stream()
        .map(layer -> layer.count() + " × " + layer.thickness())
        .reduce((one, other) -> one + ", " + other)
        .orElse("none");
  }

  static StackedCutter set(List<Layer> chippers, List<Layer> shims) {
    return set(Length.of("3.2 mm"), chippers, shims);
  }

  private static StackedCutter set(Length kerf, List<Layer> chippers, List<Layer> shims) {
    return new StackedCutter(
        "stack", "stack", Length.of("200 mm"), 24, kerf, chippers, shims, Optional.of(6_000));
  }

  /** Thickness and count in turn. */
  static List<Layer> layers(Object... thicknessAndCount) {
    var layers = new ArrayList<Layer>();
    for (int i = 0; i < thicknessAndCount.length; i += 2) {
      layers.add(
          new Layer(Length.of((String) thicknessAndCount[i]), (Integer) thicknessAndCount[i + 1]));
    }
    return layers;
  }
}
