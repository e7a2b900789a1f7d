package org.proofcut.core.setup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.shop.StackedCutter;
import org.proofcut.core.shop.StackedCutter.Layer;

/**
 * Which stacks of outer blades, chippers and shims make a width.
 *
 * <p>Every choice of chippers comes to a width, and so does every choice of shims; a stack is one
 * of each. Both are listed by width, and for each choice of chippers only those shims are looked at
 * that bring it into the band. Of choices that come to the same width only the best few are kept: a
 * worse one can't be part of one of the best few stacks.
 */
public final class Stacks {

  /** So many stacks are worth choosing among. */
  public static final int FEW = 3;

  private static final Comparator<Stack> ORDER =
      Comparator.comparing(Stack::off)
          .thenComparing(stack -> stack.shims.count)
          .thenComparing(stack -> stack.chippers.count)
          .thenComparing(Stack::chippers)
          .thenComparing(Stack::shims);

  private Stacks() {}

  /**
   * The best stacks for a width: nearest to it, then of fewest shims, then of fewest chippers, then
   * of the thickest chippers. Both outer blades are always on.
   *
   * @param width aimed at
   * @param accepted widths that serve
   * @param owned the whole stacked cutter
   * @param howMany at most
   */
  public static List<StackedCutter> best(
      Length width, Band accepted, StackedCutter owned, int howMany, Conditions conditions) {
    var blades = owned.outerKerf().times(2);
    var chippers = picks(owned.chippers(), accepted.most().minus(blades), howMany);
    var shims = picks(owned.shims(), accepted.most().minus(blades), howMany);
    var stacks = new ArrayList<Stack>();
    chippers.forEach(
        (thick, fewChippers) -> {
          var sofar = blades.plus(thick);
          var fits =
              shims.subMap(accepted.least().minus(sofar), true, accepted.most().minus(sofar), true);
          fits.forEach(
              (thin, fewShims) -> {
                var off = sofar.plus(thin).minus(width).abs();
                for (var some : fewChippers) {
                  for (var between : fewShims) {
                    stacks.add(new Stack(off, some, between));
                  }
                }
              });
          keepBest(stacks, howMany);
        });
    return stacks.stream().map(stack -> stack.of(owned, conditions)).toList();
  }

  private static void keepBest(List<Stack> stacks, int howMany) {
    stacks.sort(ORDER);
    if (stacks.size() > howMany) {
      stacks.subList(howMany, stacks.size()).clear();
    }
  }

  /** The best few choices among layers, by the thickness that they come to. */
  private static TreeMap<Length, List<Pick>> picks(List<Layer> layers, Length most, int howMany) {
    var picks = new TreeMap<Length, List<Pick>>();
    if (!most.isNegative()) {
      picks.put(Length.ZERO, List.of(new Pick(0, List.of())));
    }
    for (var layer : layers) {
      var with = new TreeMap<Length, List<Pick>>();
      picks.forEach(
          (thick, some) -> {
            for (int more = 0; more <= layer.count(); more++) {
              var sum = thick.plus(layer.thickness().times(more));
              if (sum.isGreaterThan(most)) {
                break;
              }
              var here = with.computeIfAbsent(sum, key -> new ArrayList<>());
              for (var pick : some) {
                here.add(pick.and(more));
              }
            }
          });
      with.replaceAll((thick, some) -> some.stream().sorted().limit(howMany).toList());
      picks = with;
    }
    return picks;
  }

  /**
   * How many of each layer, thickest first; ordered by fewest, then by most of the thickest.
   *
   * @param count of all together
   */
  private record Pick(int count, List<Integer> ofEach) implements Comparable<Pick> {

    Pick and(int more) {
      return new Pick(count + more, Stream.concat(ofEach.stream(), Stream.of(more)).toList());
    }

    List<Layer> of(List<Layer> layers) {
      var some = new ArrayList<Layer>();
      for (int i = 0; i < ofEach.size(); i++) {
        if (ofEach.get(i) > 0) {
          some.add(new Layer(layers.get(i).thickness(), ofEach.get(i)));
        }
      }
      return some;
    }

    @Override
    public int compareTo(Pick other) {
      int order = Integer.compare(count, other.count);
      for (int i = 0; order == 0 && i < ofEach.size(); i++) {
        order = Integer.compare(other.ofEach.get(i), ofEach.get(i));
      }
      return order;
    }
  }

  /**
   * One choice of chippers with one of shims.
   *
   * @param off how far its width is from the one aimed at, either way
   */
  private record Stack(Length off, Pick chippers, Pick shims) {

    StackedCutter of(StackedCutter owned, Conditions conditions) {
      var some = chippers.of(owned.chippers());
      var between = shims.of(owned.shims());
      var parts =
          Stream.of(words("chippers", some, conditions), words("shims", between, conditions))
              .filter(words -> !words.isEmpty())
              .collect(Collectors.joining("; "));
      return owned.with(
          some,
          between,
          owned.name()
              + ", "
              + (parts.isEmpty() ? "outer blades alone" : "2 outer blades; " + parts));
    }

    private static String words(String what, List<Layer> layers, Conditions conditions) {
      return layers.isEmpty()
          ? ""
          : layers.stream()
              .map(layer -> layer.count() + " × " + conditions.caliper(layer.thickness()))
              .collect(Collectors.joining(", ", what + " ", ""));
    }
  }
}
