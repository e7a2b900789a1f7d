package org.proofcut.core.storage;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.boring.ScrewHoles;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * Where each hook of a plan is screwed in: from one corner, with pilot, screw and load.
 *
 * @param hooks row by row in the order of the places, the doors last; in each from the side that it
 *     is measured from
 */
public record HookSheet(List<Hook> hooks) {

  /**
   * From the corner that all is measured from to the hook.
   *
   * @param fromSide from the left side of its bay; on a door from its hinges, however it stands
   * @param fromBottom to where things hang: the screw lies higher by as much as the hook holds
   *     lower
   */
  public record Spot(Worked<Length> fromSide, Worked<Length> fromBottom) {}

  /**
   * One hook.
   *
   * @param row name of the place
   * @param corner from where it is measured
   * @param panel thickness of what it is screwed to
   * @param batten thickness of what has to be fastened first where the panel is too thin to hold a
   *     screw; empty where it is not
   * @param goesIn how deep its screw may go at most, tip and all: into the batten where there is
   *     one, into the panel where there is none
   * @param pilot diameter of the hole
   * @param load grams that it must carry: what hangs there, as often as the rule asks
   */
  public record Hook(
      Place row,
      Thing holds,
      String corner,
      Spot spot,
      Worked<Length> panel,
      Optional<Worked<Length>> batten,
      Worked<Length> goesIn,
      Worked<Length> pilot,
      Worked<Integer> load) {}

  /**
   * How hooks are fastened.
   *
   * @param gauge of their screws: 4, 6, 8 or 10
   * @param leftOver wood that stays before the tip
   * @param leastIn that a screw must go in to hold
   * @param batten thickness of a batten that they are screwed to on a panel that is too thin
   */
  public record Fastening(
      int gauge, Worked<Length> leftOver, Worked<Length> leastIn, Worked<Length> batten) {

    /** No. 6, 3 mm left, 10 mm in, battens of 18 mm: our own choice. */
    public static final Fastening USUAL =
        new Fastening(
            6,
            Worked.given("wood left before the tip", Length.ofMillimetres(3), Citation.OWN_CHOICE),
            Worked.given(
                "least that a screw goes in", Length.ofMillimetres(10), Citation.OWN_CHOICE),
            Worked.given("thickness of the batten", Length.ofMillimetres(18), Citation.OWN_CHOICE));

    /** How far before a panel all hangs: by the batten, where there has to be one. */
    Length standsOut(Length panel) {
      return holds(panel) ? Length.ZERO : batten.value();
    }

    private boolean holds(Length panel) {
      return panel.minus(leftOver.value()).isAtLeast(leastIn.value());
    }
  }

  public HookSheet {
    hooks = List.copyOf(hooks);
  }

  /** The hooks of a plan, with what hangs on the wall left to its own fixings. */
  public static HookSheet of(StorageTask task, StoragePlan plan, Fastening fastening) {
    return new HookSheet(
        task.places().stream()
            .filter(
                place -> place.kind() == Place.Kind.RAIL || place.kind() == Place.Kind.DOOR_RAIL)
            .sorted(Comparator.comparing(Place::isOnDoor))
            .flatMap(
                place ->
                    plan.in(place.id()).stream()
                        .map(put -> hook(task, put, fastening))
                        .sorted(Comparator.comparing(hook -> hook.spot().fromSide().value())))
            .toList());
  }

  private static Hook hook(StorageTask task, Put put, Fastening fastening) {
    var cabinet = task.cabinet();
    var place = put.place();
    var panel =
        place.isOnDoor()
            ? Worked.entered("thickness of the door", cabinet.doorOf(place).thickness())
            : Worked.entered("thickness of the back", cabinet.back());
    boolean holds = fastening.holds(panel.value());
    var into = holds ? panel : fastening.batten();
    var in =
        Worked.called("most that the screw goes in")
            .by((holds ? "panel" : "batten") + " − wood left before the tip")
            .with(holds ? "panel" : "batten", into)
            .with("wood left before the tip", fastening.leftOver())
            .is(into.value().minus(fastening.leftOver().value()));
    var factor = task.limits().hookFactor();
    return new Hook(
        place,
        put.thing(),
        corner(cabinet, place),
        new Spot(fromSide(cabinet, put), Worked.entered("height of the row", put.grip())),
        panel,
        holds ? Optional.empty() : Optional.of(fastening.batten()),
        in,
        ScrewHoles.ofGauge(fastening.gauge()).pilot(ScrewHoles.Wood.PANEL),
        Worked.called("load of the hook, in g")
            .by("weight × factor")
            .with("weight", Worked.entered("weight of " + put.thing().name(), put.thing().grams()))
            .with("factor", factor)
            .from(factor.source())
            .is(put.thing().grams() * factor.value()));
  }

  /** No tape goes through an upright: each bay is measured from its own left side. */
  private static String corner(Cabinet cabinet, Place place) {
    if (place.isOnDoor()) {
      return "lower corner of the opening at the hinges, marked on the back of the door";
    }
    return cabinet.bays().size() == 1
        ? "lower left corner inside"
        : "lower left corner inside bay " + bay(place);
  }

  private static int bay(Place rail) {
    return rail.column() + 1;
  }

  /** A hook holds the middle of what hangs there. */
  private static Worked<Length> fromSide(Cabinet cabinet, Put put) {
    var middle =
        Worked.called("middle of " + put.thing().name() + ", from the left side inside")
            .by("its left + half its width")
            .with("its left", Worked.given("left of the thing", put.left(), PLANNED))
            .with("its width", Worked.entered("its width", put.thing().size().wide()))
            .is(put.left().plus(put.thing().size().wide().half()));
    return put.place().isOnDoor()
        ? fromHinges(cabinet.doorOf(put.place()), middle)
        : fromBay(cabinet.bay(bay(put.place())).orElseThrow(), middle);
  }

  private static Worked<Length> fromBay(Bay bay, Worked<Length> middle) {
    return bay.number() == 1
        ? middle
        : Worked.called("from the left side of bay " + bay.number() + " to the hook")
            .by("middle − side of the bay")
            .with("middle", middle)
            .with(
                "side of the bay",
                Worked.given("left side of the bay", bay.across().least(), PLANNED))
            .is(middle.value().minus(bay.across().least()));
  }

  private static Worked<Length> fromHinges(Door door, Worked<Length> middle) {
    return Worked.called("from the hinges to the hook")
        .by(door.hingedLeft() ? "middle − hinges" : "hinges − middle")
        .with("middle", middle)
        .with("hinges", Worked.given("edge of the opening at the hinges", door.hinges(), PLANNED))
        .is(door.fromHinges(middle.value()));
  }

  private static final Citation PLANNED = new Citation(Citation.Kind.GEOMETRY, "from the plan", "");
}
