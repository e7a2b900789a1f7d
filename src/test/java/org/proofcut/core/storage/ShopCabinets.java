package org.proofcut.core.storage;

import static org.proofcut.core.storage.StorageForTests.kind;
import static org.proofcut.core.storage.StorageForTests.length;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.measure.Band;

/**
 * Cabinets of a size that a shop has, with gear as shops have it: kinds and how they are kept are
 * always the same, sizes and weights are drawn for each thing.
 */
public final class ShopCabinets {

  /**
   * What a shop has of a kind, sizes in millimetres, give or take a tenth.
   *
   * @param most how many of sixty things are of this kind; half as many of thirty
   */
  private record Had(
      StorageForTests.Kind kind, int most, int wide, int high, int deep, int grams, Use use) {}

  private static final Mounting EXTINGUISHER =
      new Mounting(length(1530), length(1070), 18_140, length(102), Citation.OWN_CHOICE);

  private static final List<Had> GEAR = gear();

  private ShopCabinets() {}

  /** Thirty things and a cabinet of two bays. */
  public static StorageTask thirty(long seed) {
    return new StorageTask(
        cabinet(2, 480),
        things(2, new Random(seed)),
        List.of(StorageForTests.STANDING),
        Map.of(),
        Map.of(),
        StorageForTests.LIMITS);
  }

  /** Sixty things and a cabinet of three bays, used by two people. */
  public static StorageTask sixty(long seed) {
    var shorter = new Person("Runa", length(680), length(960), length(1290), length(1800), false);
    return new StorageTask(
        cabinet(3, 620),
        things(1, new Random(seed)),
        List.of(StorageForTests.STANDING, shorter),
        Map.of(),
        Map.of(),
        StorageForTests.LIMITS);
  }

  private static List<Had> gear() {
    var muffs = kind("ear muffs", Posture.HANGING, Posture.STANDING).needs(Need.UNDEFORMED);
    var glasses = kind("glasses", Posture.LYING).soil(Soil.CLEAN).dressing(2);
    var half = kind("half mask", Posture.LYING).needs(Need.SEALED, Need.UNDEFORMED);
    var gloves = kind("work gloves", Posture.HANGING, Posture.LYING);
    return List.of(
        had(muffs.dressing(3), 4, 180, 210, 95, 300, Use.EVERY_DAY),
        had(kind("plugs", Posture.LYING).dressing(3), 2, 90, 60, 60, 90, Use.OFTEN),
        had(glasses, 4, 170, 60, 80, 120, Use.EVERY_DAY),
        had(glasses, 2, 190, 90, 100, 200, Use.OFTEN),
        had(
            kind("face shield", Posture.HANGING, Posture.STANDING).soil(Soil.CLEAN).dressing(4),
            2,
            250,
            330,
            200,
            500,
            Use.OFTEN),
        had(half.soil(Soil.CLEAN).dressing(1).together("breath"), 2, 150, 130, 130, 350, Use.OFTEN),
        had(
            kind("disposable masks", Posture.STANDING, Posture.LYING)
                .needs(Need.DRY)
                .soil(Soil.CLEAN)
                .dressing(1)
                .together("breath"),
            2,
            140,
            120,
            140,
            250,
            Use.EVERY_DAY),
        had(
            kind("cartridges", Posture.LYING).needs(Need.SEALED).together("breath"),
            4,
            100,
            60,
            100,
            180,
            Use.SELDOM),
        had(gloves.dressing(5), 6, 110, 240, 40, 120, Use.OFTEN),
        had(
            kind("solvent gloves", Posture.HANGING).soil(Soil.DIRTY).together("finish"),
            2,
            130,
            350,
            50,
            150,
            Use.SELDOM),
        had(
            kind("apron", Posture.HANGING).soil(Soil.DIRTY).dressing(5).together("finish"),
            2,
            220,
            420,
            60,
            600,
            Use.OFTEN),
        had(kind("sleeves", Posture.HANGING, Posture.LYING), 2, 120, 300, 40, 150, Use.SELDOM),
        had(kind("knee pads", Posture.HANGING, Posture.STANDING), 2, 180, 250, 90, 500, Use.OFTEN),
        had(
            kind("push stick", Posture.HANGING, Posture.LYING).together("saw"),
            4,
            60,
            330,
            25,
            200,
            Use.EVERY_DAY),
        had(
            kind("push block", Posture.STANDING, Posture.LYING).together("saw"),
            4,
            110,
            130,
            240,
            700,
            Use.EVERY_DAY),
        had(
            kind("first aid kit", Posture.STANDING, Posture.HANGING).needs(Need.AT_ONCE),
            2,
            260,
            180,
            110,
            1600,
            Use.EMERGENCY),
        had(
            kind("extinguisher", Posture.HANGING).needs(Need.OPEN).mounted(EXTINGUISHER),
            2,
            150,
            480,
            150,
            9500,
            Use.EMERGENCY),
        had(
            kind("eye wash", Posture.STANDING).needs(Need.AT_ONCE),
            2,
            120,
            230,
            90,
            1200,
            Use.EMERGENCY),
        had(kind("blade case", Posture.STANDING, Posture.LYING), 4, 60, 270, 240, 2200, Use.OFTEN),
        had(kind("box of wipes", Posture.STANDING), 2, 130, 180, 120, 900, Use.OFTEN),
        had(
            kind("rags in a tin", Posture.STANDING).soil(Soil.DIRTY).together("finish"),
            2,
            170,
            200,
            170,
            1100,
            Use.SELDOM),
        had(kind("caliper case", Posture.LYING).soil(Soil.CLEAN), 2, 240, 40, 100, 450, Use.OFTEN));
  }

  private static Had had(
      StorageForTests.Kind kind, int most, int wide, int high, int deep, int grams, Use use) {
    return new Had(kind, most, wide, high, deep, grams, use);
  }

  private static List<Thing> things(int share, Random chance) {
    var things = new ArrayList<Thing>();
    for (var had : GEAR) {
      for (int number = 1; number <= had.most() / share; number++) {
        things.add(thing(had, things.size() + 1, chance));
      }
    }
    return things;
  }

  private static Thing thing(Had had, int number, Random chance) {
    return new Thing(
        "thing-" + number,
        had.kind().id() + " " + number,
        had.kind().made(),
        new Size(
            length(near(had.wide(), chance)),
            length(near(had.high(), chance)),
            length(near(had.deep(), chance))),
        (int) near(had.grams(), chance),
        false,
        had.use(),
        Set.of());
  }

  private static long near(int size, Random chance) {
    int tenth = size / 10;
    return size - tenth + chance.nextInt(2 * tenth + 1);
  }

  /** As high as a person reaches, with shelves, hooks, a drawer and a box in each bay. */
  private static Cabinet cabinet(int count, int wide) {
    var bays =
        IntStream.range(0, count)
            .mapToObj(
                bay -> {
                  int left = bay * (wide + 18);
                  return new Bay(bay + 1, new Band(length(left), length(left + wide)));
                })
            .toList();
    int all = count * (wide + 18) - 18;
    var doors =
        List.of(
            new Door(1, new Band(length(0), length(all / 2)), true, length(18)),
            new Door(2, new Band(length(all / 2), length(all)), false, length(18)));
    var fittings = new ArrayList<Fitting>();
    bays.forEach(bay -> fittings.addAll(fittings(bay.number(), wide)));
    doors.forEach(
        door ->
            fittings.add(
                new Fitting.DoorRail(
                    "door-" + door.number(),
                    "hooks",
                    door.number(),
                    length(1150),
                    length(100),
                    5_000,
                    3_000)));
    fittings.add(
        new Fitting.Wall(
            "wall",
            "beside the cabinet",
            length(1400),
            length(count * 220),
            length(700),
            length(250),
            60_000,
            200_000));
    return new Cabinet(
        "shop",
        "shop cabinet",
        new Size(length(all), length(1500), length(400)),
        length(350),
        length(0),
        length(8),
        length(18),
        length(280),
        true,
        bays,
        doors,
        fittings);
  }

  private static List<Fitting> fittings(int bay, int wide) {
    var deep = length(bay == 1 ? 200 : 280);
    return List.of(
        new Fitting.Rail("rail-" + bay, "hooks", bay, length(1460), 12_000, 6_000),
        shelf(bay, 3, 1000, deep),
        shelf(bay, 2, 640, deep),
        shelf(bay, 1, 330, deep),
        new Fitting.Drawer(
            "drawer-" + bay,
            "drawer",
            bay,
            length(0),
            length(150),
            new Size(length(wide - 40), length(120), length(260)),
            8_000),
        new Fitting.LidBox(
            "box-" + bay,
            "lidded box",
            bay,
            "shelf-" + bay + "-2",
            new Size(length(wide / 2), length(190), length(190)),
            new Size(length(wide / 2 - 10), length(180), length(180)),
            4_000));
  }

  private static Fitting shelf(
      int bay, int number, int top, org.proofcut.core.measure.Length deep) {
    return new Fitting.Shelf(
        "shelf-" + bay + "-" + number,
        "shelf " + number,
        bay,
        length(top),
        length(18),
        deep,
        20_000);
  }
}
