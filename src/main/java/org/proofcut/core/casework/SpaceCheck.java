package org.proofcut.core.casework;

import static org.proofcut.core.evidence.Problem.stops;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.part.Housing;

/**
 * Puts a case together in space, as a second opinion on {@link Casework}.
 *
 * <p>It knows none of the formulas that made the parts. It takes each part as a box of its own size
 * and mean thickness, cuts the housings out, and seats one part after another on the floors of the
 * housings, from the left side outward. Then it measures: the whole has the size that was wanted,
 * nothing overlaps, nothing gapes, everything that should touch does.
 */
public final class SpaceCheck {

  /**
   * What was found.
   *
   * @param width outer size as assembled
   * @param height outer size as assembled
   * @param depth outer size as assembled
   * @param faults what does not fit; empty when all is well
   */
  public record Found(Length width, Length height, Length depth, List<Problem> faults) {}

  private final Case wanted;
  private final Length clearance;
  private final Length backEase;
  private final Map<String, Solid> solids = new LinkedHashMap<>();
  private final List<Problem> faults = new ArrayList<>();

  private SpaceCheck(Case wanted, Length clearance, Length backEase) {
    this.wanted = wanted;
    this.clearance = clearance;
    this.backEase = backEase;
  }

  /**
   * Assembles the case and measures it.
   *
   * @param clearance most room that a part may have in its housing
   * @param backEase how much smaller than its opening the back may be
   */
  public static Found assemble(Case wanted, Length clearance, Length backEase) {
    return new SpaceCheck(wanted, clearance, backEase).assemble();
  }

  /** Where each part of a sound case ends up, and what wood is left of it. */
  public static List<Seated> seated(Case sound) {
    var check = new SpaceCheck(sound, Length.ZERO, Length.ZERO);
    check.seat();
    return sound.parts().stream()
        .map(
            part ->
                new Seated(
                    part, check.solid(part.id()).wood().stream().map(SpaceCheck::block).toList()))
        .toList();
  }

  private static Seated.Block block(Box box) {
    return new Seated.Block(band(box.x()), band(box.y()), band(box.z()));
  }

  private static Band band(Interval interval) {
    return new Band(length(interval.from()), length(interval.to()));
  }

  private void seat() {
    seatSides();
    seatTop();
    seatShelves();
    seatBack();
    seatPlinth();
  }

  private Found assemble() {
    seat();
    overlaps();
    voids();
    contacts();
    var left = solid("left-side").box();
    var right = solid("right-side").box();
    return new Found(
        length(right.x().to() - left.x().from()),
        length(greatest(solid -> solid.box().z().to())),
        length(greatest(solid -> solid.box().y().to())),
        List.copyOf(faults));
  }

  // ---- seating -------------------------------------------------------------------------------

  private void seatSides() {
    var left = side("left-side", 0);
    var bottomAt = floorOf(left, "bottom", true);
    var bottom =
        new Box(
            new Interval(bottomAt, bottomAt + partLength("bottom")),
            new Interval(0, partWidth("bottom")),
            upFrom(housing("left-side:bottom").distance(), thickness("bottom")));
    solids.put("bottom", new Solid(bottom, List.of()));
    // The right side is pushed on until the floor of its dado meets the bottom.
    long insideFace = bottom.x().to() - pico(housing("right-side:bottom").depth().value());
    side("right-side", insideFace);
  }

  /** A standing side with its housings; {@code x} is its left face. */
  private Solid side(String id, long x) {
    long thickness = thickness(id);
    var box =
        new Box(
            new Interval(x, x + thickness),
            new Interval(0, partWidth(id)),
            new Interval(0, partLength(id)));
    boolean opensRight = id.equals("left-side");
    var cuts = new ArrayList<Cut>();
    for (var housing : wanted.housingsIn(id)) {
      long depth = pico(housing.depth().value());
      var across = opensRight ? box.x().last(depth) : box.x().first(depth);
      cuts.add(new Cut(housing, stripOf(housing, box, across)));
    }
    var solid = new Solid(box, cuts);
    solids.put(id, solid);
    return solid;
  }

  private static Box stripOf(Housing housing, Box side, Interval into) {
    long width = pico(housing.width().value());
    long distance = pico(housing.distance().value());
    return switch (housing.kind()) {
      case DADO -> new Box(into, side.y(), side.z().from(distance, width));
      case END_RABBET -> new Box(into, side.y(), side.z().last(distance + width));
      case EDGE_RABBET -> new Box(into, side.y().last(distance + width), side.z());
    };
  }

  private void seatTop() {
    long x = floorOf(solid("left-side"), "top", true);
    long shoulder = cut("left-side:top").box().z().from();
    var box =
        new Box(
            new Interval(x, x + partLength("top")),
            new Interval(0, partWidth("top")),
            new Interval(shoulder, shoulder + thickness("top")));
    var housing = housing("top:back");
    var strip =
        new Box(
            box.x(),
            box.y().last(pico(housing.distance().value()) + pico(housing.width().value())),
            box.z().first(pico(housing.depth().value())));
    solids.put("top", new Solid(box, List.of(new Cut(housing, strip))));
  }

  private void seatShelves() {
    for (var housing : wanted.housingsIn("left-side")) {
      if (housing.kind() == Housing.Kind.DADO && !housing.entering().equals("bottom")) {
        var shelf = housing.entering();
        long x = floorOf(solid("left-side"), shelf, true);
        var box =
            new Box(
                new Interval(x, x + partLength(shelf)),
                new Interval(0, partWidth(shelf)),
                upFrom(housing.distance(), thickness(shelf)));
        solids.put(shelf, new Solid(box, List.of()));
      }
    }
  }

  /** The back stands level with the underside of the bottom, against the left rabbet's floor. */
  private void seatBack() {
    long x = floorOf(solid("left-side"), "back", true);
    long shoulder = cut("left-side:back").box().y().from();
    long z = solid("bottom").box().z().from();
    var box =
        new Box(
            new Interval(x, x + partWidth("back")),
            new Interval(shoulder, shoulder + thickness("back")),
            new Interval(z, z + partLength("back")));
    solids.put("back", new Solid(box, List.of()));
  }

  private void seatPlinth() {
    long x = solid("left-side").box().x().to();
    long y = pico(wanted.design().plinth().setBack());
    var box =
        new Box(
            new Interval(x, x + partLength("plinth")),
            new Interval(y, y + thickness("plinth")),
            new Interval(0, partWidth("plinth")));
    solids.put("plinth", new Solid(box, List.of()));
  }

  // ---- measuring -----------------------------------------------------------------------------

  private void overlaps() {
    var names = List.copyOf(solids.keySet());
    for (int i = 0; i < names.size(); i++) {
      for (int j = i + 1; j < names.size(); j++) {
        var one = solid(names.get(i)).wood();
        var other = solid(names.get(j)).wood();
        if (one.stream().anyMatch(a -> other.stream().anyMatch(a::overlaps))) {
          fault(
              "The " + names.get(i) + " and the " + names.get(j) + " take the same place",
              "parts that touch and do not overlap");
        }
      }
    }
  }

  /**
   * Every point of a housing lies within the clearance of a part that fills it. Grown by the
   * clearance, the other parts must cover the housing whole.
   */
  private void voids() {
    long setIn = pico(wanted.design().joinery().backSetIn());
    for (var owner : solids.entrySet()) {
      for (var cut : owner.getValue().cuts()) {
        var region = cut.box();
        boolean forBack = cut.housing().kind() == Housing.Kind.EDGE_RABBET;
        if (forBack) {
          // Left empty on purpose: behind a back that is set in, and under the bottom, where the
          // rabbet runs out to the floor.
          region = region.withY(new Interval(region.y().from(), region.y().to() - setIn));
          if (!owner.getKey().equals("top")) {
            long bottom = solid("bottom").box().z().from();
            region = region.withZ(new Interval(bottom, region.z().to()));
          }
        }
        long most = pico(forBack ? backEase.max(clearance) : clearance);
        var open = forBack ? List.of(region) : withoutBackRabbet(region, owner.getValue());
        for (var other : solids.entrySet()) {
          if (!other.getKey().equals(owner.getKey())) {
            for (var wood : other.getValue().wood()) {
              open = Box.subtract(open, wood.grownBy(most));
            }
          }
        }
        if (!open.isEmpty()) {
          fault(
              "The housing for the "
                  + cut.housing().entering()
                  + " in the "
                  + owner.getKey()
                  + " is not filled",
              "a gap of at most " + length(most));
        }
      }
    }
  }

  /** The rabbet for the back takes the rear of every other housing with it. */
  private static List<Box> withoutBackRabbet(Box region, Solid owner) {
    var rest = List.of(region);
    for (var cut : owner.cuts()) {
      if (cut.housing().kind() == Housing.Kind.EDGE_RABBET) {
        rest = Box.subtract(rest, cut.box());
      }
    }
    return rest;
  }

  private void contacts() {
    var right = solid("right-side").box();
    var bottom = solid("bottom").box();
    var back = solid("back").box();
    var plinth = solid("plinth").box();
    for (var housed : solids.keySet()) {
      if (housed.equals("bottom") || housed.equals("top") || housed.startsWith("shelf")) {
        long floor = floorOf(solid("right-side"), housed, false);
        touch(solid(housed).box().x().to(), floor, "right end of the " + housed);
        if (!housed.equals("top")) {
          touch(solid(housed).box().y().to(), back.y().from(), "rear edge of the " + housed);
        }
      }
    }
    touch(plinth.x().to(), right.x().from(), "right end of the plinth");
    touch(plinth.z().to(), bottom.z().from(), "upper edge of the plinth");
  }

  private void touch(long one, long other, String what) {
    if (one != other) {
      fault(
          "The " + what + " misses what it meets by " + length(Math.abs(one - other)),
          "parts that touch");
    }
  }

  private void fault(String what, String allowed) {
    faults.add(
        stops("design", what, allowed, "Change the joinery of the design; do not cut these parts"));
  }

  // ---- parts ---------------------------------------------------------------------------------

  /** A part: its box, and what is cut out of it. */
  private record Solid(Box box, List<Cut> cuts) {

    List<Box> wood() {
      var wood = List.of(box);
      for (var cut : cuts) {
        wood = Box.subtract(wood, cut.box());
      }
      return wood;
    }
  }

  private record Cut(Housing housing, Box box) {}

  private long floorOf(Solid side, String entering, boolean opensRight) {
    var strip =
        side.cuts().stream()
            .filter(cut -> cut.housing().entering().equals(entering))
            .findFirst()
            .orElseThrow()
            .box();
    return opensRight ? strip.x().from() : strip.x().to();
  }

  private Cut cut(String id) {
    return solids.values().stream()
        .flatMap(solid -> solid.cuts().stream())
        .filter(cut -> cut.housing().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static Interval upFrom(
      org.proofcut.core.evidence.Worked<Length> distance, long thickness) {
    long from = pico(distance.value());
    return new Interval(from, from + thickness);
  }

  private Housing housing(String id) {
    return wanted.housing(id);
  }

  private Solid solid(String id) {
    return solids.get(id);
  }

  private long thickness(String id) {
    return pico(wanted.part(id).sheet().thickness().mean().value());
  }

  private long partLength(String id) {
    return pico(wanted.part(id).length().value());
  }

  private long partWidth(String id) {
    return pico(wanted.part(id).width().value());
  }

  private long greatest(java.util.function.ToLongFunction<Solid> of) {
    return solids.values().stream().mapToLong(of).max().orElseThrow();
  }

  private static long pico(Length length) {
    return length.picometres();
  }

  private static Length length(long picometres) {
    return new Length(picometres);
  }
}
