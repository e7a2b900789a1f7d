package org.proofcut.core.boring;

import java.util.List;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Scale;

/**
 * The boring for the cup of a hinge, in the back of a door. All that the hinge decides is read off
 * its own sheet.
 *
 * @param diameter of the cup
 * @param depth of the cup
 * @param fromEdge from the door's edge to the near edge of the cup
 * @param door thickness of the door
 * @param leastLeft least wood under the cup that is not to show or split
 */
public record HingeCup(
    Worked<Length> diameter,
    Worked<Length> depth,
    Worked<Length> fromEdge,
    Worked<Length> door,
    Worked<Length> leastLeft) {

  private static final Citation OVERLAY =
      new Citation(
          Citation.Kind.DATA_SHEET,
          "general chart of a cup hinge maker, seen in a secondary copy",
          "");

  public HingeCup {
    for (var one : List.of(diameter, depth, fromEdge, door, leastLeft)) {
      one.value().requirePositive(one.name());
    }
  }

  /** From the door's edge to the middle of the cup. */
  public Worked<Length> centre() {
    return Worked.called("door's edge to the middle of the cup")
        .by("edge to cup + diameter of the cup ÷ 2")
        .with("edge to cup", fromEdge)
        .with("diameter of the cup", diameter)
        .is(fromEdge.value().plus(diameter.value().half()));
  }

  /** Wood left under the cup; not positive where it comes through. */
  public Worked<Length> left() {
    return Worked.called("wood left under the cup")
        .by("door − depth of the cup")
        .with("door", door)
        .with("depth of the cup", depth)
        .is(door.value().minus(depth.value()));
  }

  /** What is wrong with the boring; names {@code depth}. */
  public List<Problem> problems(LengthUnit unit) {
    var scale = Scale.caliper(unit);
    var left = left().value();
    if (left.isAtLeast(leastLeft.value())) {
      return List.of();
    }
    var allowed = scale.show(leastLeft.value()).text() + " or more left under the cup";
    if (!left.isPositive()) {
      return List.of(
          Problem.stops(
              "depth",
              "A cup "
                  + scale.show(depth.value()).text()
                  + " deep comes through a door of "
                  + scale.show(door.value()).text(),
              allowed,
              "Use a hinge with a shallower cup, or a thicker door"));
    }
    return List.of(
        Problem.warns(
            "depth",
            "Only " + scale.show(left).text() + " of wood is left under the cup",
            allowed,
            "Use a hinge with a shallower cup, or bore one in scrap of the door first"));
  }

  /**
   * How far the door covers the case: the hinge's fixed distance and the edge to the cup add up,
   * the plate takes its height off.
   *
   * @param fixed the hinge's fixed distance, from its sheet
   * @param plate height of the mounting plate, from its sheet
   */
  public Worked<Length> overlay(Worked<Length> fixed, Worked<Length> plate) {
    return Worked.called("overlay of the door")
        .by("fixed distance + edge to cup − height of the plate")
        .with("fixed distance", fixed)
        .with("edge to cup", fromEdge)
        .with("height of the plate", plate)
        .from(OVERLAY)
        .is(fixed.value().plus(fromEdge.value()).minus(plate.value()));
  }

  /** From the door's edge to the cup, for an overlay: the same figures the other way round. */
  public static Worked<Length> fromEdge(
      Worked<Length> overlay, Worked<Length> fixed, Worked<Length> plate) {
    return Worked.called("door's edge to the cup")
        .by("overlay − fixed distance + height of the plate")
        .with("overlay", overlay)
        .with("fixed distance", fixed)
        .with("height of the plate", plate)
        .from(OVERLAY)
        .is(overlay.value().minus(fixed.value()).plus(plate.value()));
  }

  /**
   * What is wrong with an edge to cup that an overlay asks for; names {@code overlay}.
   *
   * @param allowed by the hinge's sheet
   */
  public static List<Problem> problems(Worked<Length> fromEdge, Band allowed, LengthUnit unit) {
    if (allowed.contains(fromEdge.value())) {
      return List.of();
    }
    var scale = Scale.caliper(unit);
    return List.of(
        Problem.stops(
            "overlay",
            "This overlay puts the cup "
                + scale.show(fromEdge.value()).text()
                + " from the door's edge",
            scale.show(allowed.least()).text() + " to " + scale.show(allowed.most()).text(),
            "Use a plate of another height, or a hinge for another overlay"));
  }
}
