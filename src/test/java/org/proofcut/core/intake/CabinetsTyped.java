package org.proofcut.core.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.storage.Bay;
import org.proofcut.core.storage.Cabinet;
import org.proofcut.core.storage.CabinetCheck;
import org.proofcut.core.storage.Door;
import org.proofcut.core.storage.Fitting;
import org.proofcut.core.storage.Size;

/** Cabinets as people type them, and any that the form can say. */
final class CabinetsTyped {

  private CabinetsTyped() {}

  /** Two bays, two doors, and one fitting of every kind. */
  static Map<String, String> full() {
    var typed = new LinkedHashMap<String, String>();
    put(typed, "name", "gear cabinet", "unit", "mm", "dry", "yes");
    put(typed, "width", "818", "height", "1000", "depth", "300", "raised", "700", "before", "0");
    put(typed, "back", "8", "side", "18", "bays", "2", "upright", "18", "bay-1", "400");
    put(typed, "upright-depth", "200", "doors", "two", "door", "18");
    fitting(typed, 1, "shelf", "at", "300", "thickness", "18", "load", "15 kg");
    fitting(typed, 2, "rail", "at", "960", "load", "10", "each", "5");
    fitting(typed, 3, "drawer", "bay", "2", "at", "0", "height", "120", "load", "5");
    put(typed, "fitting-3-inner-width", "360", "fitting-3-inner-height", "90");
    put(typed, "fitting-3-inner-depth", "180");
    fitting(typed, 4, "shelf", "bay", "2", "at", "400", "thickness", "18", "load", "15");
    fitting(typed, 5, "box", "bay", "2", "on", "fitting-4", "load", "2");
    put(typed, "fitting-5-width", "200", "fitting-5-height", "180", "fitting-5-depth", "180");
    put(typed, "fitting-5-inner-width", "190", "fitting-5-inner-height", "170");
    put(typed, "fitting-5-inner-depth", "170");
    fitting(typed, 6, "door-rail", "door", "1", "at", "900", "depth", "80", "load", "4");
    put(typed, "fitting-6-each", "3");
    fitting(typed, 7, "wall", "at", "1500", "width", "300", "drop", "800", "depth", "250");
    put(typed, "fitting-7-load", "20", "fitting-7-each", "100");
    return typed;
  }

  private static void fitting(Map<String, String> typed, int number, String kind, String... more) {
    typed.put("fitting-" + number + "-kind", kind);
    for (int i = 0; i < more.length; i += 2) {
      typed.put("fitting-" + number + "-" + more[i], more[i + 1]);
    }
  }

  private static void put(Map<String, String> typed, String... pairs) {
    for (int i = 0; i < pairs.length; i += 2) {
      typed.put(pairs[i], pairs[i + 1]);
    }
  }

  /** Any cabinet that can be built and that the form can say. */
  static Cabinet any(long seed) {
    return new Made(new Random(seed)).cabinet();
  }

  private record Made(Random chance) {

    int between(int least, int most) {
      return least + chance.nextInt(most - least + 1);
    }

    Length length(int least, int most) {
      return Length.ofMicrometres(between(least * 10, most * 10) * 100L);
    }

    int grams() {
      return between(100, 400_000);
    }

    Cabinet cabinet() {
      int count = between(1, 4);
      var upright = length(12, 25);
      var bays = new ArrayList<Bay>();
      var right = Length.ZERO;
      for (int number = 1; number <= count; number++) {
        var left = number == 1 ? Length.ZERO : right.plus(upright);
        right = left.plus(length(100, 700));
        bays.add(new Bay(number, new Band(left, right)));
      }
      var inside = new Size(right, length(300, 1500), length(150, 500));
      var cabinet =
          new Cabinet(
              "id",
              "cabinet " + between(1, 99),
              inside,
              length(0, 1500),
              length(0, 700),
              length(3, 20),
              length(12, 25),
              inside.deep().minus(length(0, 90)),
              chance.nextBoolean(),
              bays,
              doors(inside.wide()),
              List.of());
      for (int number = 1; number <= 12; number++) {
        var fitting = fitting("fitting-" + number, number, cabinet);
        var with = cabinet.with(all -> plus(all, fitting));
        if (CabinetCheck.problems(with, LengthUnit.MILLIMETRE).isEmpty()) {
          cabinet = with;
        }
      }
      return cabinet;
    }

    private List<Fitting> plus(List<Fitting> all, Fitting one) {
      var more = new ArrayList<>(all);
      more.add(one);
      return more;
    }

    private List<Door> doors(Length wide) {
      var thick = length(10, 30);
      return switch (between(0, 3)) {
        case 0 -> List.of();
        case 1 -> List.of(new Door(1, new Band(Length.ZERO, wide), true, thick));
        case 2 -> List.of(new Door(1, new Band(Length.ZERO, wide), false, thick));
        default -> {
          var middle = length(50, wide.inMillimetres().intValue() - 10);
          yield List.of(
              new Door(1, new Band(Length.ZERO, middle), true, thick),
              new Door(2, new Band(middle, wide), false, thick));
        }
      };
    }

    private Size size() {
      return new Size(length(40, 300), length(40, 300), length(40, 300));
    }

    private Fitting fitting(String id, int number, Cabinet cabinet) {
      int bay = between(1, cabinet.bays().size());
      var name = "name " + number;
      return switch (between(0, 5)) {
        case 0 ->
            new Fitting.Shelf(
                id, name, bay, length(20, 1400), length(6, 30), length(50, 500), grams());
        case 1 -> new Fitting.Rail(id, name, bay, length(1, 1500), grams(), grams());
        case 2 ->
            new Fitting.Drawer(id, name, bay, length(0, 900), length(50, 300), size(), grams());
        case 3 ->
            new Fitting.LidBox(
                id,
                name,
                bay,
                cabinet
                    .fittings(Fitting.Shelf.class)
                    .filter(shelf -> shelf.bay() == bay)
                    .map(Fitting::id)
                    .findFirst()
                    .orElse(""),
                size(),
                size(),
                grams());
        case 4 ->
            new Fitting.DoorRail(
                id, name, between(1, 2), length(1, 1500), length(10, 300), grams(), grams());
        default ->
            new Fitting.Wall(
                id,
                name,
                length(100, 2000),
                length(50, 900),
                length(50, 900),
                length(50, 400),
                grams(),
                grams());
      };
    }
  }
}
