package org.proofcut.core.storage;

import java.util.ArrayList;
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
 * @param hooks row by row, from left to right
 */
public record HookSheet(List<Hook> hooks) {

  /**
   * From the corner that all is measured from to the hook.
   *
   * @param fromSide from the left; on a door from its hinges, however it stands
   */
  public record Spot(Worked<Length> fromSide, Worked<Length> fromBottom) {}

  /**
   * One hook.
   *
   * @param row name of the place
   * @param corner from where it is measured
   * @param panel thickness of what it is screwed to
   * @param goesIn how deep its screw may go at most, tip and all; empty where the panel is too thin
   *     to hold one, and a batten has to be fastened first
   * @param pilot diameter of the hole
   * @param load grams that it must carry: what hangs there, as often as the rule asks
   */
  public record Hook(
      Place row,
      Thing holds,
      String corner,
      Spot spot,
      Worked<Length> panel,
      Optional<Worked<Length>> goesIn,
      Worked<Length> pilot,
      Worked<Integer> load) {}

  /**
   * How hooks are fastened.
   *
   * @param gauge of their screws
   * @param leftOver wood that stays before the tip
   * @param leastIn that a screw must go in to hold
   */
  public record Fastening(int gauge, Worked<Length> leftOver, Worked<Length> leastIn) {

    /** No. 6, 3 mm left, 10 mm in: our own choice. */
    public static final Fastening USUAL =
        new Fastening(
            6,
            Worked.given("wood left before the tip", Length.ofMillimetres(3), Citation.OWN_CHOICE),
            Worked.given(
                "least that a screw goes in", Length.ofMillimetres(10), Citation.OWN_CHOICE));
  }

  public HookSheet {
    hooks = List.copyOf(hooks);
  }

  /** The hooks of a plan, with what hangs on the wall left to its own fixings. */
  public static HookSheet of(StorageTask task, StoragePlan plan, Fastening fastening) {
    var hooks = new ArrayList<Hook>();
    for (var place : task.places()) {
      if (place.kind() == Place.Kind.RAIL || place.kind() == Place.Kind.DOOR_RAIL) {
        plan.in(place.id()).forEach(put -> hooks.add(hook(task, put, fastening)));
      }
    }
    hooks.sort(
        Comparator.comparing((Hook hook) -> hook.row().isOnDoor())
            .thenComparing(hook -> hook.row().id())
            .thenComparing(hook -> hook.spot().fromSide().value()));
    return new HookSheet(hooks);
  }

  private static Hook hook(StorageTask task, Put put, Fastening fastening) {
    var cabinet = task.cabinet();
    var place = put.place();
    var panel =
        place.isOnDoor()
            ? Worked.entered("thickness of the door", door(cabinet, put).thickness())
            : Worked.entered("thickness of the back", cabinet.back());
    var in =
        Worked.called("most that the screw goes in")
            .by("panel − wood left before the tip")
            .with("panel", panel)
            .with("wood left before the tip", fastening.leftOver())
            .is(panel.value().minus(fastening.leftOver().value()));
    boolean holds = in.value().isAtLeast(fastening.leastIn().value());
    var factor = task.limits().hookFactor();
    return new Hook(
        place,
        put.thing(),
        place.isOnDoor()
            ? "lower corner of the opening at the hinges, marked on the back of the door"
            : "lower left corner inside",
        new Spot(fromSide(cabinet, put), Worked.entered("height of the row", put.grip())),
        panel,
        holds ? Optional.of(in) : Optional.empty(),
        ScrewHoles.ofGauge(fastening.gauge()).pilot(ScrewHoles.Wood.PANEL),
        Worked.called("load of the hook, in g")
            .by("weight × factor")
            .with("weight", Worked.entered("weight of " + put.thing().name(), put.thing().grams()))
            .with("factor", factor)
            .from(factor.source())
            .is(put.thing().grams() * factor.value()));
  }

  private static Door door(Cabinet cabinet, Put put) {
    return cabinet.doors().stream()
        .filter(door -> Block.overlap(door.across(), put.place().across()))
        .findFirst()
        .orElseThrow();
  }

  /** A hook holds the middle of what hangs there. */
  private static Worked<Length> fromSide(Cabinet cabinet, Put put) {
    var middle =
        Worked.called("middle of " + put.thing().name() + ", from the left side inside")
            .by("its left + half its width")
            .with("its left", Worked.given("left of the thing", put.left(), PLANNED))
            .with("its width", Worked.entered("its width", put.thing().size().wide()))
            .is(put.left().plus(put.thing().size().wide().half()));
    return put.place().isOnDoor() ? fromHinges(door(cabinet, put), middle) : middle;
  }

  private static Worked<Length> fromHinges(Door door, Worked<Length> middle) {
    var hinges = door.hingedLeft() ? door.across().least() : door.across().most();
    return Worked.called("from the hinges to the hook")
        .by(door.hingedLeft() ? "middle − hinges" : "hinges − middle")
        .with("middle", middle)
        .with("hinges", Worked.given("edge of the opening at the hinges", hinges, PLANNED))
        .is(middle.value().minus(hinges).abs());
  }

  private static final Citation PLANNED = new Citation(Citation.Kind.GEOMETRY, "from the plan", "");
}
