package org.proofcut.core.boring;

import java.util.ArrayList;
import java.util.List;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.measure.display.Scale;

/**
 * Dowels across a joint, evenly spaced, in mirror image about its middle: both parts can be marked
 * from either edge.
 *
 * @param joint width of the joint, that the dowels share
 * @param count how many
 * @param edge from either edge of the joint to the first dowel, centre
 * @param diameter of the dowels
 * @param length of the dowels
 * @param glueRoom left empty at the bottom of each hole
 * @param face thickness of the part that is bored into its face
 * @param end thickness of the part that is bored into its end
 * @param leastLeft least wood under the hole in the face
 */
public record Dowels(
    Worked<Length> joint,
    int count,
    Worked<Length> edge,
    Worked<Length> diameter,
    Worked<Length> length,
    Worked<Length> glueRoom,
    Worked<Length> face,
    Worked<Length> end,
    Worked<Length> leastLeft) {

  public Dowels {
    for (var one : List.of(joint, edge, diameter, length, face, end)) {
      one.value().requirePositive(one.name());
    }
    if (count < 1 || glueRoom.value().isNegative() || leastLeft.value().isNegative()) {
      throw new IllegalArgumentException(
          count + " dowels, room " + glueRoom.value() + ", left " + leastLeft.value());
    }
  }

  /**
   * From one edge of the joint to the centre of each dowel, the nearest first; one stands midway.
   */
  public List<Worked<Length>> positions() {
    var positions = new ArrayList<Worked<Length>>();
    for (int i = 0; i < count; i++) {
      // The far half is measured from the far edge, or rounding would spoil the mirror image.
      boolean far = 2 * i > count - 1;
      var near = far ? position(count - 1 - i) : position(i);
      var working =
          Worked.called("edge to dowel " + (i + 1))
              .with("joint", joint)
              .with("edge", edge)
              .with("dowels", Worked.given("dowels in the joint", count, Citation.ENTERED));
      positions.add(
          count == 1
              ? working.by("joint ÷ 2").is(near)
              : working
                  .by(
                      "edge + (joint − 2 × edge) × %d ÷ (dowels − 1), to the nearest 0.01 mm from the edge it is nearer to"
                          .formatted(i))
                  .is(far ? joint.value().minus(near) : near));
    }
    return positions;
  }

  private Length position(int i) {
    if (2 * i == count - 1) {
      return joint.value().half();
    }
    return edge.value()
        .plus(
            between()
                .inProportion(
                    new Length(i), new Length(count - 1L), Length.HUNDREDTH, Rounding.NEAREST));
  }

  /**
   * How deep the hole in the face is: half the dowel and its glue room, if there is wood for it.
   */
  public Worked<Length> depthInFace() {
    var half = length.value().half().plus(glueRoom.value());
    return Worked.called("depth of the hole in the face")
        .by("the less of half the dowel + glue room, and the thickness − wood left under it")
        .with("dowel", length)
        .with("glue room", glueRoom)
        .with("thickness", face)
        .with("wood left under it", leastLeft)
        .from(leastLeft.source())
        .is(half.min(face.value().minus(leastLeft.value())));
  }

  /** How deep the hole in the end is: what the dowel needs besides, and glue room. */
  public Worked<Length> depthInEnd() {
    return Worked.called("depth of the hole in the end")
        .by("dowel + 2 × glue room − depth in the face")
        .with("dowel", length)
        .with("glue room", glueRoom)
        .with("depth in the face", depthInFace())
        .is(length.value().plus(glueRoom.value().times(2)).minus(depthInFace().value()));
  }

  /** From the face of the end-bored part to the middle of its dowels. */
  public Worked<Length> centre() {
    return Worked.called("face to the middle of the dowel")
        .by("thickness of the part bored into its end ÷ 2")
        .with("thickness of the part bored into its end", end)
        .is(end.value().half());
  }

  /**
   * What is wrong with what was asked; names {@code edge}, {@code count}, {@code diameter} or
   * {@code length}. A dowel is a third to half as thick as the part (common practice).
   */
  public List<Problem> problems(LengthUnit unit) {
    var scale = Scale.caliper(unit);
    var problems = new ArrayList<Problem>();
    if (edge.value().isLessThan(diameter.value())) {
      problems.add(
          Problem.stops(
              "edge",
              "A dowel " + scale.show(edge.value()).text() + " from the edge splits it off",
              "its diameter or more, " + scale.show(diameter.value()).text(),
              "Move the first dowel in, or use thinner ones"));
    }
    if (between().isNegative() || count > 1 && tooClose()) {
      problems.add(
          Problem.stops(
              "count",
              count + " dowels do not fit between the edges",
              "two diameters or more from one to the next",
              "Use fewer or thinner dowels"));
    }
    if (!diameter.value().isLessThan(end.value())) {
      problems.add(
          Problem.stops(
              "diameter",
              "The dowel is as thick as the part it is bored into",
              thirdToHalf(scale),
              "Use a thinner dowel"));
    } else if (diameter.value().times(2).isGreaterThan(end.value())
        || diameter.value().times(3).isLessThan(end.value())) {
      problems.add(
          Problem.warns(
              "diameter",
              "A dowel of " + scale.show(diameter.value()).text() + " suits another thickness",
              thirdToHalf(scale),
              "Use another dowel if you have one"));
    }
    if (depthInFace().value().isLessThan(glueRoom.value().plus(diameter.value()))) {
      problems.add(
          Problem.stops(
              "length",
              "Only "
                  + scale.show(depthInFace().value()).text()
                  + " can be bored into the face: the dowel does not hold there",
              "its diameter and the glue room or more, "
                  + scale.show(glueRoom.value().plus(diameter.value())).text(),
              "Use a thinner dowel, or join it another way"));
    }
    return problems;
  }

  private String thirdToHalf(Scale scale) {
    return "a third to half of " + scale.show(end.value()).text();
  }

  private boolean tooClose() {
    return between().isLessThan(diameter.value().times(2L * (count - 1)));
  }

  private Length between() {
    return joint.value().minus(edge.value().times(2));
  }
}
