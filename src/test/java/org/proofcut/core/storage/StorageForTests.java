package org.proofcut.core.storage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;

/** Cabinets, kinds and limits with round numbers. */
public final class StorageForTests {

  public static final StorageLimits LIMITS = untouched(10);

  public static final Person STANDING =
      new Person("Ilse", length(750), length(1050), length(1400), length(1950), false);
  public static final Person SEATED =
      new Person("Tomo", length(600), length(700), length(1050), length(1300), true);

  private StorageForTests() {}

  /** The same but for the room that a thing has that nothing may press on. */
  static StorageLimits untouched(long millimetres) {
    return new StorageLimits(
        mm("beside standing", 10),
        mm("beside hanging", 40),
        mm("above", 30),
        mm("untouched", millimetres),
        mm("behind door", 10),
        mm("stile", 50),
        mm("below hanging", 10),
        mm("hook deep", 40),
        count("hook factor", 5),
        mm("seated low", 380),
        mm("seated high", 1220),
        mm("seated high over", 1120),
        mm("seated near", 508),
        mm("seated far", 635),
        count("room to grow", 15),
        count("per centimetre", 1),
        count("per centimetre and kilogram", 2),
        count("heavy", 3000),
        count("other posture", 20),
        count("apart", 60),
        count("out of turn", 15),
        count("crowded", 2),
        count("moved", 5));
  }

  public static Length length(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  private static Worked<Length> mm(String name, long millimetres) {
    return Worked.given(name, length(millimetres), Citation.OWN_CHOICE);
  }

  private static Worked<Integer> count(String name, int count) {
    return Worked.given(name, count, Citation.OWN_CHOICE);
  }

  /** A kind of thing that may be kept in these postures, the best first. */
  public static Kind kind(String id, Posture... postures) {
    return new Kind(id, List.of(postures));
  }

  /** A kind in the making. */
  public record Kind(
      String id,
      List<Posture> postures,
      Set<Need> needs,
      Soil soil,
      Optional<Integer> dressing,
      Optional<String> together,
      Optional<Mounting> mounting) {

    Kind(String id, List<Posture> postures) {
      this(
          id,
          postures,
          Set.of(),
          Soil.EITHER,
          Optional.empty(),
          Optional.empty(),
          Optional.empty());
    }

    public Kind needs(Need... asked) {
      return new Kind(id, postures, Set.of(asked), soil, dressing, together, mounting);
    }

    public Kind soil(Soil other) {
      return new Kind(id, postures, needs, other, dressing, together, mounting);
    }

    public Kind dressing(int turn) {
      return new Kind(id, postures, needs, soil, Optional.of(turn), together, mounting);
    }

    public Kind together(String word) {
      return new Kind(id, postures, needs, soil, dressing, Optional.of(word), mounting);
    }

    public Kind mounted(Mounting how) {
      return new Kind(id, postures, needs, soil, dressing, together, Optional.of(how));
    }

    ThingKind made() {
      var small = new Size(length(1), length(1), length(1));
      var large = new Size(length(2000), length(2000), length(2000));
      return new ThingKind(
          id,
          id,
          Optional.empty(),
          small,
          large,
          1,
          100_000,
          postures,
          needs.stream()
              .sorted()
              .map(need -> new Keeping(need, "It must.", Citation.OWN_CHOICE))
              .toList(),
          soil,
          Use.OFTEN,
          dressing,
          together,
          mounting,
          List.of(),
          Citation.OWN_CHOICE);
    }

    /** A thing of this kind, with its sizes in millimetres. */
    public Thing thing(String name, long wide, long high, long deep, int grams) {
      return new Thing(
          name,
          name,
          made(),
          new Size(length(wide), length(high), length(deep)),
          grams,
          false,
          Use.OFTEN,
          Set.of());
    }
  }

  /**
   * Two bays of 400 mm, 1000 mm high, 300 mm deep, its bottom 700 mm above the floor, two doors.
   * Left a shelf and hooks over it, right a drawer, a shelf with a box on it; hooks on the left
   * door and on the wall.
   */
  public static Cabinet cabinet() {
    var deep = length(200);
    var fittings = new ArrayList<Fitting>();
    fittings.add(new Fitting.Shelf("shelf-1", "shelf 1", 1, length(300), length(18), deep, 15_000));
    fittings.add(new Fitting.Rail("rail-1", "hooks", 1, length(960), 10_000, 5_000));
    fittings.add(
        new Fitting.Drawer(
            "drawer-1",
            "drawer",
            2,
            Length.ZERO,
            length(120),
            new Size(length(360), length(90), length(180)),
            5_000));
    fittings.add(new Fitting.Shelf("shelf-2", "shelf 2", 2, length(400), length(18), deep, 15_000));
    fittings.add(
        new Fitting.LidBox(
            "box-1",
            "lidded box",
            2,
            "shelf-2",
            new Size(length(200), length(180), length(180)),
            new Size(length(190), length(170), length(170)),
            2_000));
    fittings.add(new Fitting.DoorRail("door-1", "hooks", 1, length(900), length(80), 4_000, 3_000));
    fittings.add(
        new Fitting.Wall(
            "wall",
            "beside the door",
            length(1500),
            length(300),
            length(800),
            length(250),
            20_000,
            100_000));
    return new Cabinet(
        "cabinet",
        "cabinet",
        new Size(length(818), length(1000), length(300)),
        length(700),
        Length.ZERO,
        length(8),
        length(18),
        deep,
        true,
        List.of(
            new Bay(1, new Band(Length.ZERO, length(400))),
            new Bay(2, new Band(length(418), length(818)))),
        List.of(
            new Door(1, new Band(Length.ZERO, length(409)), true, length(18)),
            new Door(2, new Band(length(409), length(818)), false, length(18))),
        fittings);
  }

  public static StorageTask task(Cabinet cabinet, List<Thing> things) {
    return new StorageTask(cabinet, things, List.of(STANDING), Map.of(), Map.of(), LIMITS);
  }

  /** A plan in which each thing lies where it is told, costs unknown. */
  public static StoragePlan plan(Put... puts) {
    return new StoragePlan(List.of(puts), List.of(), 0, 0);
  }

  public static Place place(StorageTask task, String id) {
    return task.places().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
  }
}
