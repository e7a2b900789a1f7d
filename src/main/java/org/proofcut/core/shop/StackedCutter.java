package org.proofcut.core.shop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.measure.Length;

/**
 * Two outer saw blades with chippers and shims between them, for slots in one pass. The same type
 * says what is owned and what of it is on the arbor.
 *
 * @param edges teeth of each outer blade
 * @param outerKerf width of the cut of each outer blade
 * @param chippers thickest first, each thickness once
 * @param shims thickest first, each thickness once
 */
public record StackedCutter(
    String id,
    String name,
    Length diameter,
    int edges,
    Length outerKerf,
    List<Layer> chippers,
    List<Layer> shims,
    Optional<Integer> markedTopSpeed)
    implements Cutter {

  /**
   * Chippers or shims of one thickness.
   *
   * @param thickness what each adds to the width
   * @param count how many there are, at least 1
   */
  public record Layer(Length thickness, int count) {

    public Layer {
      if (!thickness.isPositive() || count < 1) {
        throw new IllegalArgumentException(count + " of " + thickness + " make no layer");
      }
    }

    Length together() {
      return thickness.times(count);
    }
  }

  public StackedCutter {
    chippers = inOrder(chippers);
    shims = inOrder(shims);
  }

  private static List<Layer> inOrder(List<Layer> layers) {
    var ordered = new ArrayList<Layer>();
    for (var layer :
        layers.stream().sorted(Comparator.comparing(Layer::thickness).reversed()).toList()) {
      int last = ordered.size() - 1;
      if (last >= 0 && ordered.get(last).thickness().equals(layer.thickness())) {
        ordered.set(last, new Layer(layer.thickness(), ordered.get(last).count() + layer.count()));
      } else {
        ordered.add(layer);
      }
    }
    return List.copyOf(ordered);
  }

  /** Width with everything on that is listed. */
  @Override
  public Length cutWidth() {
    var width = outerKerf.times(2);
    for (var layer : chippers) {
      width = width.plus(layer.together());
    }
    for (var layer : shims) {
      width = width.plus(layer.together());
    }
    return width;
  }

  /** This cutter with only some of its chippers and shims on, under a name that says which. */
  public StackedCutter with(List<Layer> someChippers, List<Layer> someShims, String called) {
    return new StackedCutter(
        id, called, diameter, edges, outerKerf, someChippers, someShims, markedTopSpeed);
  }
}
