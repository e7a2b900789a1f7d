package org.proofcut.core.storage;

import static org.proofcut.core.storage.StorageForTests.length;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;

/** Cabinets and gear of any kind that makes sense. */
public final class StorageArbitraries {

  private StorageArbitraries() {}

  /** Tasks with at most so many things. */
  public static Arbitrary<StorageTask> tasks(int most) {
    return Arbitraries.longs()
        .map(seed -> new Made(new Random(seed), seed % 2 == 0 ? 10 : 1).task(most));
  }

  /**
   * @param step millimetres that sizes are multiples of: of tens, things often just fit
   */
  private record Made(Random chance, int step) {

    int between(int least, int most) {
      return least + chance.nextInt((most - least) / step + 1) * step;
    }

    int count(int least, int most) {
      return least + chance.nextInt(most - least + 1);
    }

    int board() {
      return step == 1 ? 18 : 20;
    }

    <T> T oneOf(List<T> all) {
      return all.get(chance.nextInt(all.size()));
    }

    StorageTask task(int most) {
      var cabinet = cabinet();
      var things =
          IntStream.range(0, count(1, most)).mapToObj(number -> thing("thing " + number)).toList();
      var people =
          chance.nextInt(4) == 0
              ? List.of(StorageForTests.STANDING, StorageForTests.SEATED)
              : List.of(StorageForTests.STANDING);
      var pins = Map.<String, String>of();
      if (chance.nextInt(3) == 0) {
        var places = Places.of(cabinet, StorageForTests.LIMITS);
        pins = Map.of(things.get(0).id(), oneOf(places).id());
      }
      // Else what presses on nothing would be as far from all as what hangs is in any case.
      var limits = StorageForTests.untouched(oneOf(List.of(10, 25)));
      return new StorageTask(cabinet, things, people, pins, Map.of(), limits);
    }

    Cabinet cabinet() {
      int count = count(1, 3);
      var bays = new ArrayList<Bay>();
      int right = 0;
      for (int number = 1; number <= count; number++) {
        int left = right + (number == 1 ? 0 : board());
        right = left + between(200, 700);
        bays.add(new Bay(number, new Band(length(left), length(right))));
      }
      int high = between(500, 1300);
      int deep = between(180, 450);
      int shelfDeep = deep - between(0, 120);
      var doors = new ArrayList<Door>();
      int leaves = oneOf(List.of(0, 1, 1, 2));
      // Seldom where an upright is: what hangs on a door then has one beside it.
      int split = leaves == 2 ? between(right / 4, right * 3 / 4) : right;
      if (leaves > 0) {
        boolean left = leaves == 2 || chance.nextBoolean();
        doors.add(new Door(1, new Band(Length.ZERO, length(split)), left, length(between(12, 25))));
      }
      if (leaves == 2) {
        doors.add(
            new Door(2, new Band(length(split), length(right)), false, length(between(12, 25))));
      }
      var fittings = new ArrayList<Fitting>();
      bays.forEach(bay -> fittings.addAll(fittings(bay, high, shelfDeep)));
      if (!doors.isEmpty() && chance.nextBoolean()) {
        fittings.add(
            new Fitting.DoorRail(
                "door-rail",
                "hooks",
                count(1, leaves),
                length(between(100, high)),
                length(between(30, deep)),
                count(1, 10) * 1000,
                count(1, 6) * 1000));
      }
      if (chance.nextBoolean()) {
        fittings.add(
            new Fitting.Wall(
                "wall",
                "the wall",
                length(between(600, 1800)),
                length(between(200, 800)),
                length(between(200, 600)),
                length(between(100, 300)),
                30_000,
                200_000));
      }
      return new Cabinet(
          "any",
          "any",
          new Size(length(right), length(high), length(deep)),
          length(between(0, 1000)),
          length(oneOf(List.of(0, 0, 400, 600, 700))),
          length(oneOf(List.of(8, 15))),
          length(18),
          length(shelfDeep),
          chance.nextInt(5) > 0,
          bays,
          doors,
          fittings);
    }

    List<Fitting> fittings(Bay bay, int high, int deep) {
      var made = new ArrayList<Fitting>();
      int at = 0;
      int n = bay.number();
      if (chance.nextInt(3) == 0) {
        int front = between(80, 200);
        int wide = bay.width().inMillimetres().intValue();
        made.add(
            new Fitting.Drawer(
                "drawer-" + n,
                "drawer",
                n,
                Length.ZERO,
                length(front),
                new Size(length(wide - 30), length(front - 20), length(deep - 15)),
                count(2, 20) * 1000));
        at = front;
      }
      for (int shelf = 1; shelf <= count(0, 3); shelf++) {
        at += between(80, 400);
        if (at < high - 60) {
          made.add(
              new Fitting.Shelf(
                  "shelf-" + n + "-" + shelf,
                  "shelf " + shelf,
                  n,
                  length(at),
                  length(board()),
                  length(deep),
                  count(3, 30) * 1000));
          if (chance.nextInt(4) == 0) {
            made.add(
                new Fitting.LidBox(
                    "box-" + n + "-" + shelf,
                    "box",
                    n,
                    "shelf-" + n + "-" + shelf,
                    new Size(length(150), length(50), length(Math.min(deep, 160))),
                    new Size(length(140), length(40), length(Math.min(deep, 160) - 10)),
                    2_000));
          }
        }
      }
      if (chance.nextBoolean()) {
        made.add(
            new Fitting.Rail(
                "rail-" + n,
                "hooks",
                n,
                length(high - between(10, 200)),
                count(1, 20) * 1000,
                count(1, 10) * 1000));
      }
      return made;
    }

    Thing thing(String id) {
      var kind =
          new StorageForTests.Kind(
              "kind of " + id,
              oneOf(
                  List.of(
                      List.of(Posture.HANGING),
                      List.of(Posture.STANDING),
                      List.of(Posture.LYING),
                      List.of(Posture.HANGING, Posture.STANDING),
                      List.of(Posture.STANDING, Posture.LYING),
                      List.of(Posture.LYING, Posture.HANGING))),
              chance.nextBoolean() ? Set.of() : Set.of(oneOf(List.of(Need.values()))),
              oneOf(List.of(Soil.values())),
              chance.nextBoolean() ? Optional.empty() : Optional.of(count(1, 5)),
              chance.nextInt(3) > 0 ? Optional.empty() : Optional.of(oneOf(List.of("a", "b"))),
              chance.nextInt(8) > 0
                  ? Optional.empty()
                  : Optional.of(
                      new Mounting(
                          length(1530), length(1070), 18_140, length(102), Citation.OWN_CHOICE)));
      return new Thing(
          id,
          id,
          kind.made(),
          new Size(length(between(20, 320)), length(between(20, 450)), length(between(10, 280))),
          count(1, 60) * 100,
          chance.nextInt(4) == 0,
          oneOf(List.of(Use.values())),
          chance.nextInt(4) == 0 ? Set.of("Ilse") : Set.of());
    }
  }
}
