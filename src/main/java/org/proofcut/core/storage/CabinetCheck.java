package org.proofcut.core.storage;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.storage.Fitting.DoorRail;
import org.proofcut.core.storage.Fitting.Drawer;
import org.proofcut.core.storage.Fitting.LidBox;
import org.proofcut.core.storage.Fitting.Rail;
import org.proofcut.core.storage.Fitting.Shelf;
import org.proofcut.core.storage.Fitting.Wall;

/** Whether what a cabinet is fitted out with can be built in there. */
public final class CabinetCheck {

  private final Cabinet cabinet;
  private final LengthUnit unit;
  private final List<Problem> problems = new ArrayList<>();

  private CabinetCheck(Cabinet cabinet, LengthUnit unit) {
    this.cabinet = cabinet;
    this.unit = unit;
  }

  /**
   * What can't be. Each problem is at a measure of a fitting: its id, a hyphen and one of {@code
   * name}, {@code bay}, {@code door}, {@code on}, {@code at}, {@code width}, {@code height}, {@code
   * depth}, {@code inner-width}, {@code inner-height}, {@code inner-depth}, {@code drop}, {@code
   * load}.
   *
   * @param unit that lengths are said in
   */
  public static List<Problem> problems(Cabinet cabinet, LengthUnit unit) {
    var check = new CabinetCheck(cabinet, unit);
    cabinet.fittings(Shelf.class).forEach(check::shelf);
    cabinet.fittings(Rail.class).forEach(check::rail);
    cabinet.fittings(Drawer.class).forEach(check::drawer);
    cabinet.fittings(LidBox.class).forEach(check::box);
    cabinet.fittings(DoorRail.class).forEach(check::doorRail);
    cabinet.fittings(Wall.class).forEach(check::wall);
    if (check.problems.isEmpty()) {
      check.boards();
      cabinet.fittings(Rail.class).forEach(check::hooks);
      cabinet.fittings(LidBox.class).forEach(check::stands);
      check.names();
    }
    return List.copyOf(check.problems);
  }

  private boolean hasBay(Fitting fitting, int bay) {
    boolean has = cabinet.bay(bay).isPresent();
    if (!has) {
      wrong(
          fitting,
          "bay",
          "There is no bay " + bay,
          cabinet.bays().size() == 1 ? "bay 1" : "bay 1 to " + cabinet.bays().size());
    }
    return has;
  }

  private boolean hasDoor(DoorRail rail) {
    boolean has = cabinet.door(rail.door()).isPresent();
    if (!has) {
      wrong(
          rail,
          "door",
          cabinet.doors().isEmpty() ? "The cabinet has no door" : "There is no door " + rail.door(),
          "a door that the cabinet has");
    }
    return has;
  }

  private boolean hasShelf(LidBox box) {
    boolean has =
        box.on().isEmpty()
            || cabinet
                .fittings(Shelf.class)
                .anyMatch(shelf -> shelf.id().equals(box.on()) && shelf.bay() == box.bay());
    if (!has) {
      wrong(
          box, "on", "There is no such shelf in bay " + box.bay(), "the bottom, or a shelf there");
    }
    return has;
  }

  private void shelf(Shelf shelf) {
    var inside = cabinet.inside();
    hasBay(shelf, shelf.bay());
    if (shelf.top().isLessThan(shelf.thickness()) || shelf.top().isAtLeast(inside.high())) {
      wrong(
          shelf,
          "at",
          "Its face would be " + shown(shelf.top()) + " above the bottom",
          shown(shelf.thickness()) + " to less than " + shown(inside.high()));
    }
    atMost(shelf, "depth", shelf.deep(), inside.deep(), "the cabinet is deep inside");
  }

  private void rail(Rail rail) {
    hasBay(rail, rail.bay());
    atMost(rail, "at", rail.at(), cabinet.inside().high(), "the cabinet is high inside");
  }

  private void drawer(Drawer drawer) {
    var inside = cabinet.inside();
    if (!hasBay(drawer, drawer.bay())) {
      return;
    }
    if (drawer.bottom().isAtLeast(inside.high())) {
      wrong(
          drawer,
          "at",
          "That is " + shown(drawer.bottom()),
          "less than " + shown(inside.high()) + ": so much the cabinet is high inside");
    } else {
      atMost(
          drawer,
          "height",
          drawer.high(),
          inside.high().minus(drawer.bottom()),
          "there is from its lowest edge to the top");
    }
    var inner = drawer.inner();
    atMost(drawer, "inner-width", inner.wide(), width(drawer.bay()), "the bay is wide");
    atMost(drawer, "inner-height", inner.high(), drawer.high(), "its front is high");
    atMost(
        drawer,
        "inner-depth",
        inner.deep(),
        inside.deep().min(cabinet.uprightDeep()),
        "the bay is deep");
  }

  private void box(LidBox box) {
    if (!hasBay(box, box.bay()) || !hasShelf(box)) {
      return;
    }
    atMost(box, "width", box.outer().wide(), width(box.bay()), "the bay is wide");
    atMost(box, "inner-width", box.inner().wide(), box.outer().wide(), "it is wide outside");
    atMost(box, "inner-height", box.inner().high(), box.outer().high(), "it is high outside");
    atMost(box, "inner-depth", box.inner().deep(), box.outer().deep(), "it is deep outside");
  }

  private void doorRail(DoorRail rail) {
    if (!hasDoor(rail)) {
      return;
    }
    atMost(rail, "at", rail.at(), cabinet.inside().high(), "the cabinet is high inside");
    atMost(rail, "depth", rail.deepest(), cabinet.inside().deep(), "the cabinet is deep inside");
  }

  private void wall(Wall wall) {
    atMost(wall, "drop", wall.drop(), wall.at(), "the hooks are above the floor");
  }

  private Length width(int bay) {
    return cabinet.bay(bay).orElseThrow().width();
  }

  private record Board(Fitting fitting, int bay, Band upright) {}

  private List<Board> all() {
    var boards = new ArrayList<Board>();
    for (var fitting : cabinet.fittings()) {
      if (fitting instanceof Shelf shelf) {
        boards.add(
            new Board(
                shelf, shelf.bay(), new Band(shelf.top().minus(shelf.thickness()), shelf.top())));
      }
      if (fitting instanceof Drawer drawer) {
        boards.add(
            new Board(
                drawer,
                drawer.bay(),
                new Band(drawer.bottom(), drawer.bottom().plus(drawer.high()))));
      }
    }
    return boards;
  }

  /** No shelf and no drawer goes through another. */
  private void boards() {
    var boards = all();
    for (int i = 0; i < boards.size(); i++) {
      for (int j = 0; j < i; j++) {
        var one = boards.get(i);
        var other = boards.get(j);
        if (one.bay() == other.bay() && Block.overlap(one.upright(), other.upright())) {
          wrong(
              one.fitting(),
              "at",
              "It goes through " + other.fitting().name(),
              "clear of %s, which is from %s to %s"
                  .formatted(
                      other.fitting().name(),
                      shown(other.upright().least()),
                      shown(other.upright().most())));
        }
      }
    }
  }

  /** No hook is screwed into the edge of a shelf, or behind a drawer. */
  private void hooks(Rail rail) {
    for (var board : all()) {
      if (board.bay() == rail.bay()
          && rail.at().isGreaterThan(board.upright().least())
          && rail.at().isLessThan(board.upright().most())) {
        wrong(
            rail,
            "at",
            "It is behind " + board.fitting().name(),
            "above or below it: to %s, or from %s"
                .formatted(shown(board.upright().least()), shown(board.upright().most())));
      }
    }
  }

  private void stands(LidBox box) {
    var surface = cabinet.surface(box.on());
    var ceiling = cabinet.inside().high();
    for (var board : all()) {
      if (board.bay() == box.bay() && board.upright().most().isGreaterThan(surface)) {
        ceiling = ceiling.min(board.upright().least().max(surface));
      }
    }
    atMost(box, "height", box.outer().high(), ceiling.minus(surface), "there is above its shelf");
    var shelf = cabinet.fittings(Shelf.class).filter(one -> one.id().equals(box.on())).findFirst();
    var deep = shelf.map(Shelf::deep).orElse(cabinet.inside().deep());
    atMost(box, "depth", box.outer().deep(), deep, "its shelf is deep");
    int grams = shelf.map(Shelf::mostGrams).orElse(Fitting.BOTTOM_GRAMS);
    if (box.mostGrams() > grams) {
      wrong(
          box,
          "load",
          "It carries " + kilograms(box.mostGrams()),
          "at most " + kilograms(grams) + ": so much what it stands on carries");
    }
    cabinet
        .fittings(LidBox.class)
        .takeWhile(other -> !other.equals(box))
        .filter(other -> other.bay() == box.bay() && other.on().equals(box.on()))
        .findFirst()
        .ifPresent(
            other ->
                wrong(
                    box,
                    "on",
                    other.name() + " stands there already",
                    "one box with a lid on each shelf"));
  }

  /** Labels and prompts go by names. */
  private void names() {
    var seen = new HashSet<String>();
    for (var fitting : cabinet.fittings()) {
      if (!seen.add(where(fitting) + ", " + fitting.name())) {
        wrong(
            fitting,
            "name",
            "There are two of the name \"" + fitting.name() + "\" there",
            "a name of its own");
      }
    }
  }

  private static String where(Fitting fitting) {
    if (fitting instanceof DoorRail rail) {
      return "door " + rail.door();
    }
    return bayOf(fitting).map(bay -> "bay " + bay).orElse("outside");
  }

  private static Optional<Integer> bayOf(Fitting fitting) {
    if (fitting instanceof Shelf shelf) {
      return Optional.of(shelf.bay());
    }
    if (fitting instanceof Rail rail) {
      return Optional.of(rail.bay());
    }
    if (fitting instanceof Drawer drawer) {
      return Optional.of(drawer.bay());
    }
    return fitting instanceof LidBox box ? Optional.of(box.bay()) : Optional.empty();
  }

  private void atMost(Fitting fitting, String measure, Length is, Length most, String because) {
    if (is.isGreaterThan(most)) {
      wrong(
          fitting,
          measure,
          "That is " + shown(is),
          "at most " + shown(most) + ": so much " + because);
    }
  }

  private void wrong(Fitting fitting, String measure, String what, String allowed) {
    problems.add(
        Problem.stops(
            fitting.id() + "-" + measure,
            fitting.name() + ": " + what,
            allowed,
            "Change it, or what it does not go with"));
  }

  private static String kilograms(int grams) {
    return BigDecimal.valueOf(grams).movePointLeft(3).stripTrailingZeros().toPlainString() + " kg";
  }

  private String shown(Length length) {
    return Scale.caliper(unit).show(length).text();
  }
}
