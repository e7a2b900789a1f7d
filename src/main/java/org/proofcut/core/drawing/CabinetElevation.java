package org.proofcut.core.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.proofcut.core.drawing.Drawing.Fill;
import org.proofcut.core.drawing.Drawing.Line;
import org.proofcut.core.drawing.Drawing.Type;
import org.proofcut.core.drawing.FreeSpots.Spot;
import org.proofcut.core.drawing.OpenCabinet.Laid;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.storage.Block;
import org.proofcut.core.storage.Cabinet;
import org.proofcut.core.storage.Place;
import org.proofcut.core.storage.Put;
import org.proofcut.core.storage.StoragePlan;

/**
 * A cabinet for gear from the front, below it the backs of doors with hooks and the wall, with
 * everything in its place: each thing a block to scale with its number, and its name where there is
 * room.
 */
public final class CabinetElevation {

  /** A row higher than this in pixels would not be seen at one glance. */
  private static final long TALLEST = 560;

  private static final long EDGE = 10;

  /** Room between two rows, for words and numbers, in pixels. */
  private static final long BETWEEN = 76;

  /** Room over and under the cabinet for words, in pixels. */
  private static final long MARGIN = 36;

  /** How far from its thing a number is looked for, in pixels. */
  private static final long STEP = 28;

  private static final int STEPS = 5;
  private static final long HOOK = 4_000;

  /** Free of words under the middle of a hook, in pixels. */
  private static final long HOOK_ROOM = 8;

  /** Things that no number found room for are named up to this many. */
  private static final int MOST_NAMED = 8;

  private final Cabinet cabinet;
  private final List<Place> places;
  private final StoragePlan plan;
  private final Map<String, Integer> numbers;
  private final OpenCabinet open;
  private final PlanSheet sheet;
  private FreeSpots spots;

  private CabinetElevation(
      Cabinet cabinet, List<Place> places, StoragePlan plan, LengthUnit unit, int width) {
    this.cabinet = cabinet;
    this.places = places;
    this.plan = plan;
    this.numbers = numbers(places, plan);
    this.open = new OpenCabinet(cabinet, places, plan);
    this.sheet = new PlanSheet(width, words(unit));
  }

  /**
   * The cabinet with its plan, to scale.
   *
   * @param places of the cabinet, in the order in which they are listed
   * @param plan may be empty: then the cabinet is
   * @param unit in which figures are written
   * @param widthPx width at which the page shows it, at least 300
   */
  public static Picture of(
      Cabinet cabinet, List<Place> places, StoragePlan plan, LengthUnit unit, int widthPx) {
    return new CabinetElevation(cabinet, places, plan, unit, widthPx).drawn(unit);
  }

  /** Number of each thing in the drawing, by its id: place by place, from left to right. */
  public static Map<String, Integer> numbers(List<Place> places, StoragePlan plan) {
    var numbers = new LinkedHashMap<String, Integer>();
    for (var place : places) {
      plan.in(place.id()).forEach(put -> numbers.put(put.thing().id(), numbers.size() + 1));
    }
    return numbers;
  }

  private String words(LengthUnit unit) {
    var words = new StringBuilder(cabinet.name() + " from the front. " + size(unit));
    for (var place : places) {
      var there = plan.in(place.id());
      if (!there.isEmpty()) {
        words.append(" ").append(capital(place.name())).append(", from left to right: ");
        words.append(
            there.stream()
                .map(put -> numbers.get(put.thing().id()) + " " + put.thing().name())
                .reduce((one, other) -> one + ", " + other)
                .orElse(""));
        words.append(".");
      }
    }
    return words.append(numbers.isEmpty() ? " Nothing is in it." : "").toString();
  }

  private String size(LengthUnit unit) {
    var scale = Scale.rule(unit);
    var inside = cabinet.inside();
    return "Inside %s wide, %s high, %s deep; its bottom %s above the floor."
        .formatted(
            scale.show(inside.wide()),
            scale.show(inside.high()),
            scale.show(inside.deep()),
            scale.show(cabinet.raised()));
  }

  private Picture drawn(LengthUnit unit) {
    sheet.head(cabinet.doors().isEmpty() ? "From the front." : "From the front, its doors open.");
    layOut();
    carcass();
    for (var one : open.others()) {
      one.part()
          .door()
          .ifPresent(door -> box(one, one.across(), one.part().upright(), Fill.WASTE, Line.PLAIN));
    }
    built();
    places.forEach(this::place);
    captions();
    sheet.note(size(unit));
    sheet.note("To scale. Numbers as in the list of places.");
    return sheet.picture();
  }

  private void layOut() {
    long room = sheet.width() - 2 * EDGE;
    var pixel = new Length(open.wide().picometres() / room + 1);
    pixel = pixel.max(new Length(open.highest().picometres() / TALLEST + 1));
    var high = open.layOut(pixel.times(BETWEEN));
    sheet.field(pixel, EDGE, MARGIN, EDGE, high.dividedBy(pixel, Rounding.UP) + 1);
    sheet.lower(MARGIN);
    spots =
        new FreeSpots(sheet.drawing(), new Spot(8, sheet.top(), sheet.width() - 8, sheet.bottom()));
  }

  private Spot spot(Laid on, Band across, Band upright) {
    var one = at(on, across.least(), upright.most());
    var other = at(on, across.most(), upright.least());
    return new Spot(
        one.xThousandths() / 1000,
        one.yThousandths() / 1000,
        other.xThousandths() / 1000,
        other.yThousandths() / 1000);
  }

  private Drawing.Point at(Laid on, Length right, Length up) {
    return sheet.drawing().at(right, on.down(up));
  }

  private void box(Laid on, Band across, Band upright, Fill fill, Line line) {
    sheet
        .drawing()
        .box(
            at(on, across.least(), upright.most()),
            at(on, across.most(), upright.least()),
            fill,
            line);
  }

  private void carcass() {
    var front = open.front();
    box(front, front.across(), front.part().upright(), Fill.WOOD, Line.PLAIN);
    box(
        front,
        open.inFront(cabinet.room().across()),
        cabinet.room().upright(),
        Fill.SHEET,
        Line.PLAIN);
  }

  private void built() {
    var front = open.front();
    for (Block block : cabinet.built()) {
      box(front, open.inFront(block.across()), block.upright(), Fill.WOOD, Line.PLAIN);
    }
    // What has a front of its own is drawn open, so that what is in it can be seen.
    for (var place : places) {
      if (place.kind() == Place.Kind.DRAWER || place.kind() == Place.Kind.BOX) {
        box(front, open.across(place), place.upright(), Fill.SHEET, Line.THIN);
      }
    }
  }

  private void place(Place place) {
    var on = open.of(place);
    if (place.kind().isHung()) {
      var across = open.across(place);
      var at = place.upright().most();
      sheet.drawing().line(Line.THICK, at(on, across.least(), at), at(on, across.most(), at));
    }
    var there = plan.in(place.id());
    there.forEach(put -> spots.keep(spot(on, open.across(put), put.block().upright())));
    there.forEach(this::thing);
  }

  private void thing(Put put) {
    var on = open.of(put.place());
    var across = open.across(put);
    var upright = put.block().upright();
    boolean hidden =
        put.place().kind() == Place.Kind.DRAWER || put.place().kind() == Place.Kind.BOX;
    box(on, across, upright, Fill.SHEET, hidden ? Line.DASHED : Line.PLAIN);
    if (put.place().kind().isHung()) {
      sheet.drawing().circle(at(on, across.middle(), upright.most()), HOOK, Fill.INK, Line.PLAIN);
    }
  }

  /** After all is drawn: no block lies over words. */
  private void captions() {
    heads();
    var unnumbered = new ArrayList<String>();
    for (var place : places) {
      for (var put : plan.in(place.id())) {
        if (!isNamed(put)) {
          unnumbered.add(numbers.get(put.thing().id()) + " " + put.thing().name());
        }
      }
    }
    if (!unnumbered.isEmpty()) {
      sheet.note(
          "Too narrow for their numbers: "
              + String.join(", ", unnumbered.subList(0, Math.min(MOST_NAMED, unnumbered.size())))
              + (unnumbered.size() > MOST_NAMED
                  ? " and %d more.".formatted(unnumbered.size() - MOST_NAMED)
                  : "."));
    }
  }

  private boolean isNamed(Put put) {
    var number = Integer.toString(numbers.get(put.thing().id()));
    var spot = spot(open.of(put.place()), open.across(put), put.block().upright());
    var free = put.place().kind().isHung() ? underHook(spot) : spot;
    return spots.inside(free, number + " " + put.thing().name(), Type.NOTE)
        || spots.inside(free, number, Type.STRESS)
        || isNumberedBeside(spot, number);
  }

  private static Spot underHook(Spot spot) {
    return new Spot(
        spot.left(), Math.min(spot.top() + HOOK_ROOM, spot.bottom()), spot.right(), spot.bottom());
  }

  /** Over what stands, under what hangs, with a line to it that goes over nothing else. */
  private boolean isNumberedBeside(Spot spot, String number) {
    for (int step = 1; step <= STEPS; step++) {
      long away = step * STEP - STEP / 3;
      if (isNumbered(spot, number, spot.top() - away, STEP / 2, spot.top())
          || isNumbered(spot, number, spot.bottom() + away, -STEP / 2, spot.bottom())) {
        return true;
      }
    }
    return false;
  }

  private boolean isNumbered(Spot spot, String number, long y, long toItsEdge, long to) {
    long x = spot.middleX();
    long from = y + toItsEdge;
    if (!spots.isClear(x, from, to, spot) || !spots.beside(x, y, number, Type.STRESS)) {
      return false;
    }
    var drawing = sheet.drawing();
    drawing.line(Line.THIN, drawing.px(x, from), drawing.px(x, to));
    return true;
  }

  /** What stands over bays, doors and the wall, as far as there is room. */
  private void heads() {
    var front = open.front();
    if (cabinet.bays().size() > 1) {
      for (var bay : cabinet.bays()) {
        head(front, open.inFront(bay.across()), "bay " + bay.number());
      }
    }
    open.others().forEach(one -> head(one, one.across(), one.part().caption()));
  }

  private void head(Laid on, Band across, String words) {
    var top = on.part().upright().most();
    var spot = spot(on, across, new Band(top, top));
    long half = sheet.drawing().widthOf(words, Type.NOTE) / 2 + EDGE;
    long x = Math.max(half, Math.min(spot.middleX(), sheet.width() - half));
    spots.beside(x, spot.top() - MARGIN / 2, words, Type.NOTE);
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
  }
}
