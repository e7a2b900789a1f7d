package org.proofcut.core.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.storage.StorageForTests.LIMITS;
import static org.proofcut.core.storage.StorageForTests.SEATED;
import static org.proofcut.core.storage.StorageForTests.STANDING;
import static org.proofcut.core.storage.StorageForTests.cabinet;
import static org.proofcut.core.storage.StorageForTests.kind;
import static org.proofcut.core.storage.StorageForTests.length;
import static org.proofcut.core.storage.StorageForTests.place;
import static org.proofcut.core.storage.StorageForTests.plan;
import static org.proofcut.core.storage.StorageForTests.task;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.evidence.Citation;

/** Each rule broken on purpose, and kept at its limit. */
class StorageCheckTest {

  private static final Thing JAR = kind("jar", Posture.STANDING).thing("jar", 80, 200, 80, 500);
  private static final Thing MUFFS =
      kind("muffs", Posture.HANGING).thing("muffs", 180, 220, 60, 300);

  private static Put put(StorageTask task, Thing thing, String place, long left) {
    return new Put(thing, place(task, place), length(left));
  }

  private static Set<HardRule> broken(StorageTask task, Put... puts) {
    return StorageCheck.faults(task, plan(puts)).stream()
        .map(StorageCheck.Fault::rule)
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(HardRule.class)));
  }

  /** One thing in one place of the cabinet. */
  private static Set<HardRule> broken(Thing thing, String place, long left) {
    var task = task(cabinet(), List.of(thing));
    return broken(task, put(task, thing, place, left));
  }

  @Nested
  class Room {

    @Test
    void jarOnAShelf_isGood() {
      assertEquals(Set.of(), broken(JAR, "shelf-1", 0));
      assertEquals(Set.of(), broken(JAR, "shelf-1", 320));
    }

    @Test
    void pastTheEndOfTheShelf() {
      assertTrue(broken(JAR, "shelf-1", 321).contains(HardRule.IN_PLACE));
    }

    /** Over the bottom of bay 1 are 282 mm, of which a hand takes 30. */
    @ParameterizedTest
    @CsvSource({"252,true", "253,false", "282,false"})
    void handOverIt(long high, boolean good) {
      var jar = kind("jar", Posture.STANDING).thing("jar", 80, high, 80, 500);
      assertEquals(good ? Set.of() : Set.of(HardRule.HAND_ROOM), broken(jar, "bottom-1", 0));
    }

    /** The hooks are 660 mm over the shelf. */
    @ParameterizedTest
    @CsvSource({"660,true", "661,false"})
    void hangsDownToTheShelf(long high, boolean good) {
      var apron = kind("apron", Posture.HANGING).thing("apron", 200, high, 60, 300);
      assertEquals(good, broken(apron, "rail-1", 0).isEmpty());
    }

    @ParameterizedTest
    @CsvSource({"90,true", "89,false"})
    void besideEachOther(long second, boolean good) {
      var other = kind("jar", Posture.STANDING).thing("other jar", 80, 200, 80, 500);
      var task = task(cabinet(), List.of(JAR, other));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.HAND_ROOM),
          broken(task, put(task, JAR, "shelf-1", 0), put(task, other, "shelf-1", second)));
    }

    @ParameterizedTest
    @CsvSource({"100,true", "99,false"})
    void nothingPressesOnIt(long second, boolean good) {
      var mask =
          kind("mask", Posture.STANDING).needs(Need.UNDEFORMED).thing("mask", 80, 100, 80, 200);
      var task = task(cabinet(), List.of(JAR, mask));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.UNDEFORMED),
          broken(task, put(task, mask, "shelf-1", 0), put(task, JAR, "shelf-1", second)));
    }

    /** What hangs down 440 mm of 660 meets what stands 221 mm high below it. */
    @ParameterizedTest
    @CsvSource({"220,true", "221,false"})
    void hangingMeetsStanding(long high, boolean good) {
      var apron = kind("apron", Posture.HANGING).thing("apron", 200, 440, 60, 300);
      var jar = kind("jar", Posture.STANDING).thing("jar", 80, high, 80, 500);
      var task = task(cabinet(), List.of(apron, jar));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.NOT_THROUGH),
          broken(task, put(task, apron, "rail-1", 0), put(task, jar, "shelf-1", 100)));
    }

    @Test
    void besideOneAnother_hangingAndStandingDoNotMeet() {
      var apron = kind("apron", Posture.HANGING).thing("apron", 100, 640, 60, 300);
      var task = task(cabinet(), List.of(apron, JAR));
      assertEquals(
          Set.of(), broken(task, put(task, apron, "rail-1", 0), put(task, JAR, "shelf-1", 100)));
    }
  }

  @Nested
  class Doors {

    /** Behind the door are 300 mm: 80 for what hangs there, 10 of air, 210 for what is behind. */
    @ParameterizedTest
    @CsvSource({"210,true", "211,false"})
    void shutsOverWhatIsBehind(long deep, boolean good) {
      var visor = kind("visor", Posture.HANGING).thing("visor", 100, 150, 80, 200);
      var box = kind("box", Posture.HANGING).thing("box", 200, 220, deep, 500);
      var task = task(cabinet(), List.of(visor, box));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.DOOR_SHUTS),
          broken(task, put(task, visor, "door-1", 50), put(task, box, "rail-1", 50)));
    }

    /** The shelf reaches out to 200 mm. */
    @ParameterizedTest
    @CsvSource({"80,true", "90,true"})
    void passesTheShelf(long deep, boolean good) {
      var wide = cabinet().with(all -> all.stream().map(StorageCheckTest::deepRail).toList());
      var visor = kind("visor", Posture.HANGING).thing("visor", 100, 650, deep, 200);
      var task = task(wide, List.of(visor));
      assertEquals(good, broken(task, put(task, visor, "door-1", 60)).isEmpty());
    }

    @Test
    void meetsTheShelf() {
      var wide = cabinet().with(all -> all.stream().map(StorageCheckTest::deepRail).toList());
      var visor = kind("visor", Posture.HANGING).thing("visor", 100, 650, 91, 200);
      var task = task(wide, List.of(visor));
      assertEquals(Set.of(HardRule.DOOR_SHUTS), broken(task, put(task, visor, "door-1", 60)));
    }

    /** Of 409 mm of opening 399 are free: √(390² + 80²) = 398.1, √(391² + 80²) = 399.1. */
    @ParameterizedTest
    @CsvSource({"290,true", "291,false"})
    void cornerPassesTheFrame(long left, boolean good) {
      var visor = kind("visor", Posture.HANGING).thing("visor", 100, 150, 80, 200);
      var task = task(cabinet(), List.of(visor));
      var door = place(task, "door-1");
      // The place is no wider than any corner passes; here it is taken for wider, to judge the
      // rule.
      var wider =
          new Place(
              door.id(),
              door.name(),
              door.kind(),
              door.column(),
              new org.proofcut.core.measure.Band(length(0), length(409)),
              door.upright(),
              door.deep(),
              door.mostGrams(),
              door.mostGramsEach(),
              door.sealed(),
              door.dry());
      assertEquals(
          good ? Set.of() : Set.of(HardRule.DOOR_SHUTS),
          broken(task, new Put(visor, wider, length(left))));
    }
  }

  private static Fitting deepRail(Fitting fitting) {
    return fitting instanceof Fitting.DoorRail rail
        ? new Fitting.DoorRail(
            rail.id(), rail.name(), rail.door(), rail.at(), length(120), 4_000, 3_000)
        : fitting;
  }

  @Nested
  class Loads {

    @ParameterizedTest
    @CsvSource({"1000,true", "1001,false"})
    void hookCarriesFiveTimes(int grams, boolean good) {
      var muffs = kind("muffs", Posture.HANGING).thing("muffs", 180, 220, 60, grams);
      assertEquals(good ? Set.of() : Set.of(HardRule.LOAD), broken(muffs, "rail-1", 0));
    }

    @ParameterizedTest
    @CsvSource({"7500,true", "7501,false"})
    void shelfCarriesAll(int grams, boolean good) {
      var can = kind("can", Posture.STANDING).thing("can", 80, 200, 80, 7500);
      var other = kind("can", Posture.STANDING).thing("other can", 80, 200, 80, grams);
      var task = task(cabinet(), List.of(can, other));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.LOAD),
          broken(task, put(task, can, "shelf-1", 0), put(task, other, "shelf-1", 100)));
    }
  }

  @Nested
  class Kept {

    @Test
    void onlyHangs_onAShelf() {
      assertEquals(Set.of(HardRule.POSTURE), broken(MUFFS, "shelf-1", 0));
    }

    @Test
    void onlyStands_onAHook() {
      assertEquals(Set.of(HardRule.POSTURE), broken(JAR, "rail-1", 0));
    }

    @Test
    void upright_butLying() {
      var bottle = kind("bottle", Posture.LYING).needs(Need.UPRIGHT);
      assertEquals(
          Set.of(HardRule.POSTURE), broken(bottle.thing("bottle", 80, 80, 80, 100), "shelf-1", 0));
    }

    @Test
    void sealed_inABoxOnly_orInItsOwn() {
      var kind = kind("filter", Posture.LYING).needs(Need.SEALED);
      var filter = kind.thing("filter", 100, 60, 60, 200);
      assertEquals(Set.of(HardRule.SEALED), broken(filter, "shelf-1", 0));
      assertEquals(Set.of(), broken(filter, "box-1", 625));
      var bagged =
          new Thing("bagged", "bagged", kind.made(), filter.size(), 200, true, Use.OFTEN, Set.of());
      assertEquals(Set.of(), broken(bagged, "shelf-1", 0));
    }

    @Test
    void dry_inADampCabinet() {
      var paper = kind("paper", Posture.LYING).needs(Need.DRY).thing("paper", 100, 60, 60, 200);
      assertEquals(Set.of(), broken(paper, "shelf-1", 0));
      var c = cabinet();
      var damp =
          new Cabinet(
              c.id(),
              c.name(),
              c.inside(),
              c.raised(),
              c.before(),
              c.back(),
              c.side(),
              c.uprightDeep(),
              false,
              c.bays(),
              c.doors(),
              c.fittings());
      var task = task(damp, List.of(paper));
      assertEquals(Set.of(HardRule.DRY), broken(task, put(task, paper, "shelf-1", 0)));
      assertEquals(Set.of(), broken(task, put(task, paper, "box-1", 625)));
    }

    @Test
    void inSight_behindADoor() {
      var seen = kind("seen", Posture.HANGING).needs(Need.OPEN).thing("seen", 100, 200, 60, 200);
      assertEquals(Set.of(HardRule.OPEN), broken(seen, "rail-1", 0));
      assertEquals(Set.of(), broken(seen, "wall", 0));
    }

    @Test
    void atOnce_inADrawer() {
      var kit = kind("kit", Posture.LYING).needs(Need.AT_ONCE).thing("kit", 100, 50, 60, 200);
      assertEquals(Set.of(HardRule.AT_ONCE), broken(kit, "drawer-1", 450));
      assertEquals(Set.of(), broken(kit, "shelf-1", 0));
    }

    @Test
    void atOnce_behindSomething() {
      var kit = kind("kit", Posture.HANGING).needs(Need.AT_ONCE).thing("kit", 100, 200, 30, 200);
      var coat = kind("coat", Posture.HANGING).thing("coat", 150, 400, 100, 500);
      var task = task(cabinet(), List.of(kit, coat));
      assertTrue(
          broken(task, put(task, kit, "rail-1", 0), put(task, coat, "rail-1", 50))
              .contains(HardRule.AT_ONCE));
    }

    @Test
    void neverHere() {
      var rag = kind("rag", Posture.LYING).needs(Need.ELSEWHERE).thing("rag", 50, 20, 50, 50);
      assertEquals(Set.of(HardRule.ELSEWHERE), broken(rag, "shelf-1", 0));
    }

    @Test
    void dirtyBesideClean() {
      var glove = kind("glove", Posture.LYING).soil(Soil.DIRTY).thing("glove", 100, 40, 60, 100);
      var mask = kind("mask", Posture.LYING).soil(Soil.CLEAN).thing("mask", 100, 40, 60, 100);
      var task = task(cabinet(), List.of(glove, mask));
      assertEquals(
          Set.of(HardRule.APART),
          broken(task, put(task, glove, "shelf-1", 0), put(task, mask, "shelf-1", 250)));
      assertEquals(
          Set.of(), broken(task, put(task, glove, "shelf-1", 0), put(task, mask, "bottom-1", 0)));
    }

    @Test
    void dirtyOverClean_unlessABoardIsBetween() {
      var apron = kind("apron", Posture.HANGING).soil(Soil.DIRTY).thing("apron", 200, 300, 60, 300);
      var mask = kind("mask", Posture.LYING).soil(Soil.CLEAN).thing("mask", 100, 40, 60, 100);
      var task = task(cabinet(), List.of(apron, mask));
      assertEquals(
          Set.of(HardRule.APART),
          broken(task, put(task, apron, "rail-1", 0), put(task, mask, "shelf-1", 100)));
      assertEquals(
          Set.of(), broken(task, put(task, apron, "rail-1", 0), put(task, mask, "shelf-1", 210)));
      assertEquals(
          Set.of(), broken(task, put(task, apron, "rail-1", 0), put(task, mask, "bottom-1", 0)));
    }
  }

  @Nested
  class People {

    /** Hooks 1660 mm above the floor: too high from a chair. */
    @Test
    void tooHigh_forOneOfTwo() {
      var all = task(cabinet(), List.of(MUFFS));
      var both =
          new StorageTask(
              all.cabinet(), all.things(), List.of(STANDING, SEATED), Map.of(), Map.of(), LIMITS);
      assertEquals(Set.of(), broken(all, put(all, MUFFS, "rail-1", 0)));
      assertEquals(Set.of(HardRule.REACH), broken(both, put(both, MUFFS, "rail-1", 0)));
      var hers =
          new Thing(
              "muffs", "muffs", MUFFS.kind(), MUFFS.size(), 300, false, Use.OFTEN, Set.of("Ilse"));
      assertEquals(Set.of(), broken(both, put(both, hers, "rail-1", 0)));
    }

    @ParameterizedTest
    @CsvSource({"830,18140,true", "831,18140,false", "370,18141,true", "371,18141,false"})
    void mounted_noHigherThanItMay(long top, int grams, boolean good) {
      var how = new Mounting(length(1530), length(1070), 18_140, length(102), Citation.OWN_CHOICE);
      var can =
          kind("extinguisher", Posture.HANGING).mounted(how).thing("can", 150, 500, 150, grams);
      var task = onlyWall(700 + top, can);
      assertEquals(
          good ? Set.of() : Set.of(HardRule.MOUNTING), broken(task, put(task, can, "wall", 0)));
    }

    @ParameterizedTest
    @CsvSource({"602,true", "601,false"})
    void mounted_noNearerToTheFloor(long at, boolean good) {
      var how = new Mounting(length(1530), length(1070), 18_140, length(102), Citation.OWN_CHOICE);
      var can = kind("can", Posture.HANGING).mounted(how).thing("can", 150, 500, 150, 4000);
      var task = onlyWall(at, can);
      assertEquals(
          good ? Set.of() : Set.of(HardRule.MOUNTING), broken(task, put(task, can, "wall", 0)));
    }

    /** Hooks on the wall, so high above the floor, and nothing else. */
    private static StorageTask onlyWall(long at, Thing thing) {
      var wall =
          new Fitting.Wall(
              "wall", "wall", length(at), length(300), length(600), length(200), 50_000, 500_000);
      return task(cabinet().with(all -> List.of(wall)), List.of(thing));
    }

    @Test
    void pinned_butElsewhere() {
      var free = task(cabinet(), List.of(JAR));
      var task =
          new StorageTask(
              free.cabinet(),
              free.things(),
              free.people(),
              Map.of("jar", "shelf-1"),
              Map.of(),
              LIMITS);
      assertEquals(Set.of(), broken(task, put(task, JAR, "shelf-1", 0)));
      assertEquals(Set.of(HardRule.PINNED), broken(task, put(task, JAR, "bottom-1", 0)));
    }

    @Test
    void twice_orNotAtAll() {
      var task = task(cabinet(), List.of(JAR));
      assertEquals(
          Set.of(HardRule.ONCE),
          broken(task, put(task, JAR, "shelf-1", 0), put(task, JAR, "bottom-1", 0)));
      assertEquals(Set.of(HardRule.ONCE), broken(task));
    }
  }

  /** Whoever adds a rule adds its violation here. */
  @Test
  void everyRule_isBrokenSomewhereAbove() throws Exception {
    var source =
        java.nio.file.Files.readString(
            java.nio.file.Path.of("src/test/java/org/proofcut/core/storage/StorageCheckTest.java"));
    for (var rule : HardRule.values()) {
      assertTrue(source.contains("HardRule." + rule.name()), rule.name());
    }
  }
}
