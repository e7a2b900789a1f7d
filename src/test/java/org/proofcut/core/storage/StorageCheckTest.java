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
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.measure.Band;

/** Each rule broken on purpose, and kept at its limit. */
class StorageCheckTest {

  private static final Thing JAR = kind("jar", Posture.STANDING).thing("jar", 80, 200, 80, 500);
  private static final Thing SMALL = kind("small", Posture.LYING).thing("small", 100, 60, 60, 200);
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

    /** A drawer is drawn out: 90 mm are clear in it, whatever is over it. */
    @ParameterizedTest
    @CsvSource({"90,true", "91,false"})
    void inADrawer_nothingIsOverIt(long high, boolean good) {
      var goggles = kind("goggles", Posture.LYING).thing("goggles", 100, high, 60, 200);
      assertEquals(good ? Set.of() : Set.of(HardRule.IN_PLACE), broken(goggles, "drawer-1", 450));
    }

    /** The lid is 580 mm up, and is lifted by 30. */
    @ParameterizedTest
    @CsvSource({"628,true", "627,false"})
    void lidIsLifted(long top, boolean good) {
      var more =
          new Fitting.Shelf("shelf-3", "shelf 3", 2, length(top), length(18), length(200), 9);
      var task = task(cabinet().with(all -> plus(all, more)), List.of(SMALL));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.HAND_ROOM),
          broken(task, put(task, SMALL, "box-1", 625)));
    }

    /** The hooks are 660 mm over the shelf, and what hangs there hangs 10 mm free of it. */
    @ParameterizedTest
    @CsvSource({"650,true", "651,false"})
    void hangsDownToTheShelf(long high, boolean good) {
      var apron = kind("apron", Posture.HANGING).thing("apron", 200, high, 60, 300);
      assertEquals(good ? Set.of() : Set.of(HardRule.NOT_THROUGH), broken(apron, "rail-1", 0));
    }

    /** On the wall are 800 mm below the hooks. */
    @ParameterizedTest
    @CsvSource({"790,true", "791,false"})
    void hangsDownToWhatIsUnderTheWall(long high, boolean good) {
      var apron = kind("apron", Posture.HANGING).thing("apron", 200, high, 60, 300);
      assertEquals(good ? Set.of() : Set.of(HardRule.IN_PLACE), broken(apron, "wall", 0));
    }

    /** The cabinet is 1000 mm high; 30 lift a thing off its hook. */
    @ParameterizedTest
    @CsvSource({"970,true", "971,false"})
    void liftedOffItsHook(long at, boolean good) {
      var rail = new Fitting.Rail("rail-1", "hooks", 1, length(at), 10_000, 5_000);
      var task = task(cabinet().with(all -> List.of(rail)), List.of(MUFFS));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.HAND_ROOM),
          broken(task, put(task, MUFFS, "rail-1", 0)));
    }

    @ParameterizedTest
    @CsvSource({"220,true", "219,false"})
    void besideEachOtherOnHooks(long second, boolean good) {
      var other = kind("muffs", Posture.HANGING).thing("other muffs", 180, 220, 60, 300);
      var task = task(cabinet(), List.of(MUFFS, other));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.HAND_ROOM),
          broken(task, put(task, MUFFS, "rail-1", 0), put(task, other, "rail-1", second)));
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
    @CsvSource({"10,110,true", "10,109,false", "9,110,false"})
    void nothingPressesOnIt(long left, long second, boolean good) {
      var mask =
          kind("mask", Posture.STANDING).needs(Need.UNDEFORMED).thing("mask", 80, 100, 80, 200);
      var task = task(cabinet(), List.of(JAR, mask));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.UNDEFORMED),
          broken(task, put(task, mask, "shelf-1", left), put(task, JAR, "shelf-1", second)));
    }

    @ParameterizedTest
    @CsvSource({"310,true", "311,false"})
    void nothingPressesOnIt_fromTheRight(long left, boolean good) {
      var mask =
          kind("mask", Posture.STANDING).needs(Need.UNDEFORMED).thing("mask", 80, 100, 80, 200);
      assertEquals(good ? Set.of() : Set.of(HardRule.UNDEFORMED), broken(mask, "shelf-1", left));
    }

    /** In the box are 170 mm each way, and 10 stay free over it, before it and behind it. */
    @ParameterizedTest
    @CsvSource({"160,150,true", "161,150,false", "160,151,false"})
    void noLidPressesOnIt(long high, long deep, boolean good) {
      var mask =
          kind("mask", Posture.LYING).needs(Need.UNDEFORMED).thing("mask", 80, high, deep, 200);
      assertEquals(good ? Set.of() : Set.of(HardRule.UNDEFORMED), broken(mask, "box-1", 640));
    }

    @ParameterizedTest
    @CsvSource({"10,110,true", "10,109,false", "9,110,false"})
    void handGetsAtOnceToIt(long left, long second, boolean good) {
      var stick = kind("stick", Posture.STANDING).needs(Need.AT_ONCE).thing("stick", 80, 9, 80, 9);
      var task = task(cabinet(), List.of(JAR, stick));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.HAND_ROOM),
          broken(task, put(task, stick, "shelf-1", left), put(task, JAR, "shelf-1", second)));
    }

    /** Untouched by 25 mm, it wants more room under what hangs than anything else does. */
    @ParameterizedTest
    @CsvSource({"195,true", "196,false"})
    void nothingPressesOnIt_fromAnotherPlace(long high, boolean good) {
      var apron = kind("apron", Posture.HANGING).thing("apron", 200, 440, 60, 300);
      var mask =
          kind("mask", Posture.STANDING).needs(Need.UNDEFORMED).thing("mask", 80, high, 80, 200);
      var task =
          new StorageTask(
              cabinet(),
              List.of(apron, mask),
              List.of(STANDING),
              Map.of(),
              Map.of(),
              StorageForTests.untouched(25));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.UNDEFORMED),
          broken(task, put(task, apron, "rail-1", 0), put(task, mask, "shelf-1", 100)));
    }

    /** 660 mm are over the shelf: 440 hang, 10 are free, 210 stand. */
    @ParameterizedTest
    @CsvSource({"210,true", "211,false"})
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

    /** On the door hang 80 mm of 300; 25 stay free, and not 10 alone. */
    @ParameterizedTest
    @CsvSource({"195,true", "196,false"})
    void nothingPressesOnIt_fromTheDoor(long deep, boolean good) {
      var visor = kind("visor", Posture.HANGING).thing("visor", 100, 550, 80, 200);
      var mask =
          kind("mask", Posture.STANDING).needs(Need.UNDEFORMED).thing("mask", 80, 200, deep, 200);
      var task =
          new StorageTask(
              cabinet(),
              List.of(visor, mask),
              List.of(STANDING),
              Map.of(),
              Map.of(),
              StorageForTests.untouched(25));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.UNDEFORMED),
          broken(task, put(task, visor, "door-1", 60), put(task, mask, "shelf-1", 60)));
    }
  }

  @Nested
  class Doors {

    /** Behind the door are 300 mm: 80 hang on it, 10 are air, 18 a batten on a back of 8. */
    @ParameterizedTest
    @CsvSource({"192,true", "193,false"})
    void shutsOverWhatIsBehind(long deep, boolean good) {
      var visor = kind("visor", Posture.HANGING).thing("visor", 100, 150, 80, 200);
      var box = kind("box", Posture.HANGING).thing("box", 200, 220, deep, 500);
      var task = task(cabinet(), List.of(visor, box));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.DOOR_SHUTS),
          broken(task, put(task, visor, "door-1", 50), put(task, box, "rail-1", 50)));
    }

    /** A screw holds in a back of 13 mm: there all hangs from the back itself. */
    @ParameterizedTest
    @CsvSource({"12,193,false", "13,210,true", "13,211,false"})
    void backThatHoldsAScrew_needsNoBatten(long back, long deep, boolean good) {
      var visor = kind("visor", Posture.HANGING).thing("visor", 100, 150, 80, 200);
      var box = kind("box", Posture.HANGING).thing("box", 200, 220, deep, 500);
      var task = task(changed(back, 200, cabinet().fittings()), List.of(visor, box));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.DOOR_SHUTS),
          broken(task, put(task, visor, "door-1", 50), put(task, box, "rail-1", 50)));
    }

    /** 300 mm from back to door. */
    @ParameterizedTest
    @CsvSource({"290,true", "291,false"})
    void shutsOverWhatStands(long deep, boolean good) {
      var shelf = shelf(300);
      var can = kind("can", Posture.STANDING).thing("can", 80, 200, deep, 500);
      var task = task(cabinet().with(all -> List.of(shelf)), List.of(can));
      var place = as(place(task, "shelf-1"), new Band(length(0), length(300)), Axis.DEEP);
      assertEquals(
          good ? Set.of() : Set.of(HardRule.DOOR_SHUTS),
          broken(task, new Put(can, place, length(0))));
      var open =
          new Cabinet(
              "open",
              "open",
              task.cabinet().inside(),
              length(700),
              length(0),
              length(8),
              length(18),
              length(200),
              true,
              cabinet().bays(),
              List.of(),
              List.of(shelf));
      var without = task(open, List.of(can));
      assertEquals(Set.of(), broken(without, put(without, can, "shelf-1", 0)));
    }

    /** The shelf reaches out to 200 mm. */
    @ParameterizedTest
    @CsvSource({"90,true", "91,false"})
    void passesTheShelf(long deep, boolean good) {
      var wide = cabinet().with(all -> all.stream().map(StorageCheckTest::deepRail).toList());
      var visor = kind("visor", Posture.HANGING).thing("visor", 100, 650, deep, 200);
      var task = task(wide, List.of(visor));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.DOOR_SHUTS),
          broken(task, put(task, visor, "door-1", 60)));
    }

    /** It hangs from 900 mm, and sways 10 mm down and up. */
    @ParameterizedTest
    @CsvSource({"590,true", "591,false"})
    void swaysClearOfTheShelf(long high, boolean good) {
      var wide = cabinet().with(all -> all.stream().map(StorageCheckTest::deepRail).toList());
      var visor = kind("visor", Posture.HANGING).thing("visor", 100, high, 110, 200);
      var task = task(wide, List.of(visor));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.DOOR_SHUTS),
          broken(task, put(task, visor, "door-1", 60)));
    }

    @ParameterizedTest
    @CsvSource({"900,890,true", "900,891,false", "990,200,true", "991,200,false"})
    void swaysClearOfBottomAndTop(long at, long high, boolean good) {
      var rail = new Fitting.DoorRail("door-1", "hooks", 1, length(at), length(80), 4_000, 3_000);
      var visor = kind("visor", Posture.HANGING).thing("visor", 100, high, 80, 200);
      var task = task(cabinet().with(all -> List.of(rail)), List.of(visor));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.DOOR_SHUTS),
          broken(task, put(task, visor, "door-1", 60)));
    }

    /** A glove is flat, but its hook stands out by 40 mm: 250 are left behind it. */
    @ParameterizedTest
    @CsvSource({"250,true", "251,false"})
    void hookPassesTheShelf(long deep, boolean good) {
      var glove = kind("glove", Posture.HANGING).thing("glove", 100, 650, 10, 100);
      var rail = new Fitting.DoorRail("door-1", "hooks", 1, length(900), length(30), 4_000, 3_000);
      var task = task(cabinet().with(all -> List.of(shelf(deep), rail)), List.of(glove));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.DOOR_SHUTS),
          broken(task, put(task, glove, "door-1", 60)));
    }

    /** It hangs at 900 mm and sways up by 10; behind it something hangs down from 960. */
    @ParameterizedTest
    @CsvSource({"50,true", "51,false"})
    void swaysUnderWhatHangsBehind(long high, boolean good) {
      var visor = kind("visor", Posture.HANGING).thing("visor", 100, 150, 80, 200);
      var box = kind("box", Posture.HANGING).thing("box", 200, high, 250, 200);
      var task = task(cabinet(), List.of(visor, box));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.DOOR_SHUTS),
          broken(task, put(task, visor, "door-1", 60), put(task, box, "rail-1", 60)));
    }

    /** So does a hook on the back, 18 mm before it: 300 less 58 and 10 of air are 232. */
    @ParameterizedTest
    @CsvSource({"232,true", "233,false"})
    void passesAHookOnTheBack(long deep, boolean good) {
      var glove = kind("glove", Posture.HANGING).thing("glove", 100, 300, 10, 100);
      var visor = kind("visor", Posture.HANGING).thing("visor", 100, 150, deep, 200);
      var rail = new Fitting.DoorRail("door-1", "hooks", 1, length(900), length(240), 4_000, 3_000);
      var back = new Fitting.Rail("rail-1", "hooks", 1, length(960), 10_000, 5_000);
      var task = task(cabinet().with(all -> List.of(back, rail)), List.of(glove, visor));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.DOOR_SHUTS),
          broken(task, put(task, glove, "rail-1", 60), put(task, visor, "door-1", 60)));
    }

    /**
     * Shut, the visor ends 160 mm from the hinges, but its corner comes by at √(160² + 80²) + 10 =
     * 188.9. What stands 10 mm behind the door has to begin at √(188.9² − 10²) = 188.6 mm.
     */
    @ParameterizedTest
    @CsvSource({"189,true", "188,false", "160,false"})
    void cornerPassesWhatStandsBesideIt(long left, boolean good) {
      var visor = kind("visor", Posture.HANGING).thing("visor", 100, 150, 80, 200);
      var can = kind("can", Posture.STANDING).thing("can", 80, 500, 290, 500);
      var fittings = List.of(shelf(290), cabinet().fittings().get(5));
      var task = task(cabinet().with(all -> fittings), List.of(visor, can));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.DOOR_SHUTS),
          broken(task, put(task, visor, "door-1", 60), put(task, can, "shelf-1", left)));
    }

    /** Hinged on the right, at 818 mm, the same the other way round. */
    @ParameterizedTest
    @CsvSource({"189,true", "188,false", "160,false"})
    void cornerPassesWhatStandsBesideIt_onTheOtherDoor(long fromRight, boolean good) {
      var visor = kind("visor", Posture.HANGING).thing("visor", 100, 150, 80, 200);
      var can = kind("can", Posture.STANDING).thing("can", 80, 500, 290, 500);
      var shelf =
          new Fitting.Shelf("shelf-1", "shelf 1", 2, length(300), length(18), length(290), 15_000);
      var rail = new Fitting.DoorRail("door-2", "hooks", 2, length(900), length(80), 4_000, 3_000);
      var task = task(cabinet().with(all -> List.of(shelf, rail)), List.of(visor, can));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.DOOR_SHUTS),
          broken(
              task,
              put(task, visor, "door-2", 818 - 160),
              put(task, can, "shelf-1", 818 - fromRight - 80)));
    }

    /**
     * The upright begins 400 mm from the hinges: √(381² + 80²) + 10 = 399.3, and 400.3 from 382.
     */
    @ParameterizedTest
    @CsvSource({"281,300,true", "282,300,false", "282,200,true"})
    void cornerPassesTheUpright(long left, long uprightDeep, boolean good) {
      var visor = kind("visor", Posture.HANGING).thing("visor", 100, 150, 80, 200);
      var task = task(changed(8, uprightDeep, cabinet().fittings()), List.of(visor));
      var wider = as(place(task, "door-1"), new Band(length(0), length(409)), Axis.ACROSS);
      assertEquals(
          good ? Set.of() : Set.of(HardRule.DOOR_SHUTS),
          broken(task, new Put(visor, wider, length(left))));
    }

    /** The door is 409 mm wide; 50 at each edge take no hook. */
    @ParameterizedTest
    @CsvSource({"0,100,true", "0,98,false", "309,100,true", "311,98,false"})
    void hookIsNotInTheEdge(long left, long wide, boolean good) {
      var card = kind("card", Posture.HANGING).thing("card", wide, 150, 1, 200);
      var task = task(cabinet(), List.of(card));
      var wider = as(place(task, "door-1"), new Band(length(0), length(409)), Axis.ACROSS);
      var broken = broken(task, new Put(card, wider, length(left)));
      assertEquals(good, !broken.contains(HardRule.IN_PLACE), broken.toString());
    }

    /** Of 409 mm of opening 399 are free: √(390² + 80²) = 398.1, √(391² + 80²) = 399.1. */
    @ParameterizedTest
    @CsvSource({"290,true", "291,false"})
    void cornerPassesTheFrame(long left, boolean good) {
      var visor = kind("visor", Posture.HANGING).thing("visor", 100, 150, 80, 200);
      var task = task(cabinet(), List.of(visor));
      // The place is no wider than any corner passes; here it is taken for wider, to judge the
      // rule.
      var wider = as(place(task, "door-1"), new Band(length(0), length(409)), Axis.ACROSS);
      assertEquals(
          good ? Set.of() : Set.of(HardRule.DOOR_SHUTS),
          broken(task, new Put(visor, wider, length(left))));
    }
  }

  private enum Axis {
    ACROSS,
    UPRIGHT,
    DEEP
  }

  /** The same place, said to be larger or smaller than it is. */
  private static Place as(Place place, Band band, Axis axis) {
    return new Place(
        place.id(),
        place.name(),
        place.kind(),
        place.column(),
        axis == Axis.ACROSS ? band : place.across(),
        axis == Axis.UPRIGHT ? band : place.upright(),
        axis == Axis.DEEP ? band : place.deep(),
        place.mostGrams(),
        place.mostGramsEach(),
        place.sealed(),
        place.dry());
  }

  private static List<Fitting> plus(List<Fitting> all, Fitting one) {
    return Stream.concat(all.stream(), Stream.of(one)).toList();
  }

  /** In bay 1, 300 mm up. */
  private static Fitting.Shelf shelf(long deep) {
    return new Fitting.Shelf(
        "shelf-1", "shelf 1", 1, length(300), length(18), length(deep), 15_000);
  }

  private static Cabinet changed(long back, long uprightDeep, List<Fitting> fittings) {
    var c = cabinet();
    return new Cabinet(
        c.id(),
        c.name(),
        c.inside(),
        c.raised(),
        c.before(),
        length(back),
        c.side(),
        length(uprightDeep),
        true,
        c.bays(),
        c.doors(),
        fittings);
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

    @ParameterizedTest
    @CsvSource({"700,true", "701,false"})
    void rowOfHooksCarriesAll(int grams, boolean good) {
      var rail = new Fitting.Rail("rail-1", "hooks", 1, length(960), 1_000, 5_000);
      var other = kind("muffs", Posture.HANGING).thing("other muffs", 100, 220, 60, grams);
      var task = task(cabinet().with(all -> List.of(rail)), List.of(MUFFS, other));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.LOAD),
          broken(task, put(task, MUFFS, "rail-1", 0), put(task, other, "rail-1", 220)));
    }

    /** The box would carry 20 kg; the shelf that it stands on carries 15. */
    @ParameterizedTest
    @CsvSource({"15000,true", "15001,false"})
    void shelfCarriesTheBoxOnIt(int grams, boolean good) {
      var box =
          new Fitting.LidBox(
              "box-1",
              "box",
              1,
              "shelf-1",
              new Size(length(200), length(180), length(180)),
              new Size(length(190), length(170), length(170)),
              20_000);
      var lead = kind("lead", Posture.LYING).thing("lead", 100, 60, 60, grams);
      var task = task(cabinet().with(all -> List.of(shelf(200), box)), List.of(lead));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.LOAD), broken(task, put(task, lead, "box-1", 205)));
    }
  }

  /** What a place says of itself is not believed. */
  @Nested
  class PlacesThatSayTooMuch {

    private static Place saying(Place place, int grams, int each, boolean sealed, boolean dry) {
      return new Place(
          place.id(),
          place.name(),
          place.kind(),
          place.column(),
          place.across(),
          place.upright(),
          place.deep(),
          grams,
          place.mostGramsEach().map(any -> each),
          sealed,
          dry);
    }

    private static boolean isBelieved(Place place) {
      return new AsBuilt(cabinet()).gives(place);
    }

    @Test
    void asTheyAre_allAreBelieved() {
      var places = task(cabinet(), List.of()).places();
      assertEquals(
          Set.of(Place.Kind.values()), Set.copyOf(places.stream().map(Place::kind).toList()));
      places.forEach(place -> assertTrue(isBelieved(place), place.name()));
    }

    /** Each in turn a millimetre or a gram over what its fitting gives. */
    @Test
    void largerOrStronger_noneIs() {
      var mm = length(1);
      for (var place : task(cabinet(), List.of()).places()) {
        var grown = new Block(place.across(), place.upright(), place.deep()).grown(mm, mm, mm);
        var each = place.mostGramsEach().orElse(0);
        var fitting = cabinet().fittings().stream().filter(one -> one.id().equals(place.id()));
        int most = fitting.findFirst().map(Fitting::mostGrams).orElse(Fitting.BOTTOM_GRAMS);
        boolean box = place.kind() == Place.Kind.BOX;
        for (var more :
            List.of(
                as(place, new Band(length(-1), length(819)), Axis.ACROSS),
                as(place, grown.upright(), Axis.UPRIGHT),
                as(place, grown.deep(), Axis.DEEP),
                saying(place, most + 1, each, box, true),
                saying(place, most, each, !box, true))) {
          assertTrue(!isBelieved(more), () -> more.toString());
        }
        assertTrue(isBelieved(saying(place, most, each, box, true)), place.name());
        if (place.kind().isHung()) {
          assertTrue(!isBelieved(saying(place, most, each + 1, false, true)), place.name());
        }
      }
    }

    @Test
    void notThereAtAll_isBroken() {
      var place =
          as(
              place(task(cabinet(), List.of()), "shelf-1"),
              new Band(length(500), length(900)),
              Axis.UPRIGHT);
      var task = task(cabinet(), List.of(JAR));
      assertEquals(Set.of(HardRule.IN_PLACE), broken(task, new Put(JAR, place, length(0))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"bottom-9", "bottom-", "shelf-9", ""})
    void ofAnIdThatNothingHas_isNotBelieved(String id) {
      var there = place(task(cabinet(), List.of()), "bottom-1");
      var place =
          new Place(
              id,
              there.name(),
              there.kind(),
              there.column(),
              there.across(),
              there.upright(),
              there.deep(),
              1,
              there.mostGramsEach(),
              there.sealed(),
              there.dry());
      assertTrue(!isBelieved(place));
    }

    @Test
    void onADoorThatIsNotThere_isBroken_andTheRestIsJudged() {
      var all = task(cabinet(), List.of(MUFFS, JAR));
      var hooks = place(all, "door-1");
      var without = task(cabinet().with(fittings -> List.of(shelf(200))), List.of(MUFFS, JAR));
      assertEquals(
          Set.of(HardRule.IN_PLACE, HardRule.POSTURE),
          broken(without, new Put(MUFFS, hooks, length(60)), put(all, JAR, "rail-1", 0)));
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
    void hangsOrStands_eitherIsGood() {
      var both = kind("both", Posture.HANGING, Posture.STANDING).thing("both", 80, 200, 80, 500);
      assertEquals(Set.of(), broken(both, "rail-1", 0));
      assertEquals(Set.of(), broken(both, "shelf-1", 0));
    }

    @Test
    void upright_onAHook() {
      var bottle = kind("bottle", Posture.STANDING, Posture.HANGING).needs(Need.UPRIGHT);
      var thing = bottle.thing("bottle", 80, 80, 80, 100);
      assertEquals(Set.of(HardRule.POSTURE), broken(thing, "rail-1", 0));
      assertEquals(Set.of(), broken(thing, "shelf-1", 0));
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
      // Damp goes through a lid.
      assertEquals(Set.of(HardRule.DRY), broken(task, put(task, paper, "box-1", 625)));
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
      assertEquals(Set.of(HardRule.AT_ONCE), broken(kit, "box-1", 640));
      assertEquals(Set.of(), broken(kit, "shelf-1", 10));
    }

    /** 5 mm deep, it stands behind what hangs before a batten of 18. */
    @ParameterizedTest
    @CsvSource({"50,false", "150,true"})
    void atOnce_behindWhatHangsBeforeABatten(long left, boolean good) {
      var kit = kind("kit", Posture.STANDING).needs(Need.AT_ONCE).thing("kit", 100, 400, 5, 200);
      var coat = kind("coat", Posture.HANGING).thing("coat", 150, 400, 100, 500);
      var task = task(cabinet(), List.of(kit, coat));
      var plan = new Put[] {put(task, kit, "shelf-1", 20), put(task, coat, "rail-1", left)};
      assertEquals(good ? Set.of() : Set.of(HardRule.AT_ONCE), broken(task, plan));
      var either =
          new StorageTask(
              task.cabinet(),
              task.things(),
              task.people(),
              Map.of("kit", "shelf-1", "coat", "rail-1"),
              Map.of(),
              LIMITS);
      assertEquals(
          1, StoragePlanner.plan(either, new EveryPlacing(), Placer.Effort.PLAN).puts().size());
    }

    /** The wall has heights of its own: there nothing of the cabinet is before anything. */
    @Test
    void whatHangsOutside_isInNobodysWay() {
      var kit = kind("kit", Posture.HANGING).needs(Need.AT_ONCE).thing("kit", 100, 200, 30, 200);
      var coat = kind("coat", Posture.HANGING).thing("coat", 150, 400, 100, 500);
      var task = task(cabinet(), List.of(kit, coat));
      assertEquals(
          Set.of(), broken(task, put(task, kit, "wall", 10), put(task, coat, "rail-1", 0)));
      assertEquals(
          Set.of(), broken(task, put(task, coat, "wall", 0), put(task, kit, "rail-1", 10)));
    }

    /** Not even on the wall is one thing hung before another. */
    @Test
    void atOnce_behindSomethingOnTheWall() {
      var kit = kind("kit", Posture.HANGING).needs(Need.AT_ONCE).thing("kit", 100, 200, 30, 200);
      var coat = kind("coat", Posture.HANGING).thing("coat", 150, 400, 100, 500);
      var task = task(cabinet(), List.of(kit, coat));
      assertTrue(
          broken(task, put(task, kit, "wall", 10), put(task, coat, "wall", 50))
              .contains(HardRule.AT_ONCE));
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

    @Test
    void dirtyOutside_fallsOnNothingInside() {
      var apron = kind("apron", Posture.HANGING).soil(Soil.DIRTY).thing("apron", 200, 300, 60, 300);
      var mask = kind("mask", Posture.LYING).soil(Soil.CLEAN).thing("mask", 100, 40, 60, 100);
      var task = task(cabinet(), List.of(apron, mask));
      assertEquals(
          Set.of(), broken(task, put(task, apron, "wall", 0), put(task, mask, "shelf-1", 50)));
    }

    /** What hangs out to 200 mm, 18 of them a batten, sheds no farther than the shelf reaches. */
    @ParameterizedTest
    @CsvSource({"182,true", "183,false"})
    void dirtyOnTheBack_fallsOnTheShelf(long deep, boolean good) {
      var apron =
          kind("apron", Posture.HANGING).soil(Soil.DIRTY).thing("apron", 200, 300, deep, 300);
      var mask = kind("mask", Posture.LYING).soil(Soil.CLEAN).thing("mask", 100, 40, 290, 100);
      var task = task(cabinet(), List.of(apron, mask));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.APART),
          broken(task, put(task, apron, "rail-1", 60), put(task, mask, "bottom-1", 100)));
    }

    /**
     * The shelf ends at 200 mm, what hangs on the door begins at 220: dirt falls before the shelf.
     */
    @ParameterizedTest
    @CsvSource({"220,true", "221,false"})
    void dirtyOnTheDoor_fallsPastTheShelf(long deep, boolean good) {
      var apron = kind("apron", Posture.HANGING).soil(Soil.DIRTY).thing("apron", 200, 300, 80, 300);
      var mask = kind("mask", Posture.LYING).soil(Soil.CLEAN).thing("mask", 100, 40, deep, 100);
      var task = task(cabinet(), List.of(apron, mask));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.APART),
          broken(task, put(task, apron, "door-1", 60), put(task, mask, "bottom-1", 100)));
    }
  }

  @Nested
  class People {

    /** Hooks 1660 mm above the floor: too high from a chair. */
    @Test
    void tooHigh_forOneOfTwo() {
      var all = task(cabinet(), List.of(MUFFS));
      var both = used(MUFFS);
      assertEquals(Set.of(), broken(all, put(all, MUFFS, "rail-1", 0)));
      assertEquals(Set.of(HardRule.REACH), broken(both, put(both, MUFFS, "rail-1", 0)));
      var hers =
          new Thing(
              "muffs", "muffs", MUFFS.kind(), MUFFS.size(), 300, false, Use.OFTEN, Set.of("Ilse"));
      var alone = used(hers);
      assertEquals(Set.of(), broken(alone, put(alone, hers, "rail-1", 0)));
      var nobodys =
          new Thing(
              "muffs", "muffs", MUFFS.kind(), MUFFS.size(), 300, false, Use.OFTEN, Set.of("Nemo"));
      var lost = used(nobodys);
      assertEquals(Set.of(HardRule.REACH), broken(lost, put(lost, nobodys, "rail-1", 0)));
    }

    private static StorageTask used(Thing thing) {
      return new StorageTask(
          cabinet(), List.of(thing), List.of(STANDING, SEATED), Map.of(), Map.of(), LIMITS);
    }

    /** Ilse grips up to 1950 mm: the hook, or the middle of what stands. */
    @ParameterizedTest
    @CsvSource({"1950,true", "1951,false"})
    void hookTooHigh(long at, boolean good) {
      var task = onlyWall(at, MUFFS);
      assertEquals(
          good ? Set.of() : Set.of(HardRule.REACH), broken(task, put(task, MUFFS, "wall", 0)));
    }

    @ParameterizedTest
    @CsvSource({"100,true", "102,false"})
    void middleTooHigh(long high, boolean good) {
      var c = cabinet();
      var raised =
          new Cabinet(
              c.id(),
              c.name(),
              c.inside(),
              length(1600),
              c.before(),
              c.back(),
              c.side(),
              c.uprightDeep(),
              true,
              c.bays(),
              c.doors(),
              c.fittings());
      var jar = kind("jar", Posture.STANDING).thing("jar", 80, high, 80, 500);
      var task = task(raised, List.of(jar));
      assertEquals(
          good ? Set.of() : Set.of(HardRule.REACH), broken(task, put(task, jar, "shelf-1", 0)));
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

    @Test
    void asWellLeftOver_orNeverAskedFor() {
      var task = task(cabinet(), List.of(JAR));
      var put = put(task, JAR, "shelf-1", 0);
      var both = new StoragePlan(List.of(put), List.of(JAR), 0, 0);
      assertEquals(
          List.of(HardRule.ONCE),
          StorageCheck.faults(task, both).stream().map(StorageCheck.Fault::rule).toList());
      var lighter = kind("jar", Posture.STANDING).thing("jar", 80, 200, 80, 400);
      assertEquals(Set.of(HardRule.ONCE), broken(task, put(task, lighter, "shelf-1", 0)));
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
