package org.proofcut.core.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.proofcut.core.storage.StorageForTests.cabinet;
import static org.proofcut.core.storage.StorageForTests.kind;
import static org.proofcut.core.storage.StorageForTests.length;
import static org.proofcut.core.storage.StorageForTests.place;
import static org.proofcut.core.storage.StorageForTests.task;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.measure.Band;

/** What random cabinets seldom come to; all else is held to the judge by the properties. */
class SuitsTest {

  private static Optional<HardRule> refusal(StorageTask task, Thing thing, String place) {
    return new Suits(task).refusal(thing, place(task, place)).map(Suits.Why::rule);
  }

  /**
   * The place ends 359 mm from the hinges; what is 80 mm deep comes by at √(359² + 80²) + 10 =
   * 377.8, where the upright has to be past.
   */
  @ParameterizedTest
  @CsvSource({"378,true", "377,false"})
  void doorSwingsPastAnUpright(long upright, boolean good) {
    var c = cabinet();
    var odd =
        new Cabinet(
            c.id(),
            c.name(),
            c.inside(),
            c.raised(),
            c.before(),
            c.back(),
            c.side(),
            c.inside().deep(),
            true,
            List.of(
                new Bay(1, new Band(length(0), length(upright))),
                new Bay(2, new Band(length(upright + 18), length(818)))),
            c.doors(),
            List.of(
                new Fitting.DoorRail("door", "hooks", 1, length(900), length(80), 4_000, 3_000)));
    var visor = kind("visor", Posture.HANGING).thing("visor", 100, 150, 80, 200);
    assertEquals(
        good ? Optional.empty() : Optional.of(HardRule.DOOR_SHUTS),
        refusal(task(odd, List.of(visor)), visor, "door"));
  }

  /**
   * It fills the row of hooks and comes by at the same 377.8 mm. The can behind the next door
   * stands out to 10 mm from it: √(377.8² − 10²) = 377.7.
   */
  @ParameterizedTest
  @CsvSource({"378,2", "377,1", "360,1"})
  void doorSwingsPastWhatStandsInTheNextBay(long bay, int placed) {
    var c = cabinet();
    var odd =
        new Cabinet(
            c.id(),
            c.name(),
            c.inside(),
            c.raised(),
            c.before(),
            c.back(),
            c.side(),
            length(200),
            true,
            List.of(
                new Bay(1, new Band(length(0), length(bay - 18))),
                new Bay(2, new Band(length(bay), length(818)))),
            c.doors(),
            List.of(
                new Fitting.DoorRail("door", "hooks", 1, length(900), length(80), 4_000, 3_000)));
    var visor = kind("visor", Posture.HANGING).thing("visor", 309, 150, 80, 200);
    var can = kind("can", Posture.STANDING).thing("can", 100, 800, 290, 200);
    var task =
        new StorageTask(
            odd,
            List.of(visor, can),
            List.of(StorageForTests.STANDING),
            Map.of("can", "bottom-2"),
            Map.of(),
            StorageForTests.LIMITS);
    var plan = StoragePlanner.plan(task, new EveryPlacing(), Placer.Effort.PLAN);
    assertEquals(placed, plan.puts().size());
    assertEquals(List.of(), StorageCheck.faults(task, plan));
  }

  /** 500 mm from its hook to its lowest point. */
  @ParameterizedTest
  @CsvSource({"1530,true", "1531,false", "602,true", "601,false"})
  void mounted_atItsLimits(long at, boolean good) {
    var how = new Mounting(length(1530), length(1070), 18_140, length(102), Citation.OWN_CHOICE);
    var can = kind("can", Posture.HANGING).mounted(how).thing("can", 150, 500, 150, 4000);
    var wall =
        new Fitting.Wall(
            "wall", "wall", length(at), length(300), length(600), length(200), 50_000, 500_000);
    var task = task(cabinet().with(all -> List.of(wall)), List.of(can));
    assertEquals(
        good ? Optional.empty() : Optional.of(HardRule.MOUNTING), refusal(task, can, "wall"));
  }

  /** The cabinet with hooks on its left door for what is this deep. */
  private static Cabinet doorFor(long deepest) {
    var rail = new Fitting.DoorRail("door", "hooks", 1, length(900), length(deepest), 4_000, 3_000);
    return cabinet()
        .with(
            all ->
                Stream.concat(
                        all.stream().filter(one -> !(one instanceof Fitting.DoorRail)),
                        Stream.of(rail))
                    .toList());
  }

  /** The shelf reaches to 200 of 300 mm, 300 up; hooks at 900, 10 mm to sway. */
  @ParameterizedTest
  @CsvSource({"590,110,true", "591,110,false", "650,90,true", "650,91,false"})
  void doorShuts_overAShelf(long high, long deep, boolean good) {
    var visor = kind("visor", Posture.HANGING).thing("visor", 100, high, deep, 200);
    assertEquals(
        good ? Optional.empty() : Optional.of(HardRule.DOOR_SHUTS),
        refusal(task(doorFor(120), List.of(visor)), visor, "door"));
  }

  private static boolean cross(StorageTask task, String one, String other) {
    return new Suits(task)
        .cross(task.things().get(0), place(task, one), task.things().get(1), place(task, other));
  }

  /** A flat glove hangs before a batten of 18 mm on a hook of 40; 10 are air: 232 are left. */
  @ParameterizedTest
  @CsvSource({"232,false", "233,true"})
  void hookOnTheBack_isInTheWayOfTheDoor(long deep, boolean crosses) {
    var glove = kind("glove", Posture.HANGING).thing("glove", 100, 300, 10, 100);
    var visor = kind("visor", Posture.HANGING).thing("visor", 100, 150, deep, 200);
    assertEquals(crosses, cross(task(doorFor(240), List.of(glove, visor)), "rail-1", "door"));
    assertEquals(crosses, cross(task(doorFor(240), List.of(visor, glove)), "door", "rail-1"));
  }

  /** It hangs at 900 mm and sways up by 10; behind it something hangs down from 960. */
  @ParameterizedTest
  @CsvSource({"50,false", "51,true"})
  void hangsBehindTheDoor_overWhatSways(long high, boolean crosses) {
    var visor = kind("visor", Posture.HANGING).thing("visor", 100, 150, 80, 200);
    var box = kind("box", Posture.HANGING).thing("box", 200, high, 250, 200);
    assertEquals(crosses, cross(task(doorFor(80), List.of(visor, box)), "door", "rail-1"));
    assertEquals(crosses, cross(task(doorFor(80), List.of(box, visor)), "rail-1", "door"));
  }

  private static StorageTask untouched(Thing... things) {
    return new StorageTask(
        doorFor(80),
        List.of(things),
        List.of(StorageForTests.STANDING),
        Map.of(),
        Map.of(),
        StorageForTests.untouched(25));
  }

  /** Over the shelf are 660 mm to the hooks: 440 hang, 25 stay untouched. */
  @ParameterizedTest
  @CsvSource({"195,false", "196,true"})
  void maskUnderAnApron_staysUntouched(long high, boolean crosses) {
    var apron = kind("apron", Posture.HANGING).thing("apron", 200, 440, 60, 300);
    var mask =
        kind("mask", Posture.STANDING).needs(Need.UNDEFORMED).thing("mask", 80, high, 80, 200);
    assertEquals(crosses, cross(untouched(apron, mask), "rail-1", "shelf-1"));
    assertEquals(crosses, cross(untouched(mask, apron), "shelf-1", "rail-1"));
  }

  /** Of 300 mm 80 hang on the door, and 25 stay untouched. */
  @ParameterizedTest
  @CsvSource({"195,false", "196,true"})
  void maskBehindADoor_staysUntouched(long deep, boolean crosses) {
    var visor = kind("visor", Posture.HANGING).thing("visor", 100, 550, 80, 200);
    var mask =
        kind("mask", Posture.STANDING).needs(Need.UNDEFORMED).thing("mask", 80, 200, deep, 200);
    assertEquals(crosses, cross(untouched(visor, mask), "door", "shelf-1"));
    assertEquals(crosses, cross(untouched(mask, visor), "shelf-1", "door"));
  }

  /** Dirt falls before the shelf, which ends at 200 mm: on a mask that is deeper than that. */
  @ParameterizedTest
  @CsvSource({
    "door,80,220,2",
    "door,80,221,1",
    "rail-1,182,290,2",
    "rail-1,183,290,1",
    "rail-1,182,200,2"
  })
  void dirtyOverClean_withAShelfBetween(String place, long apron, long mask, int placed) {
    var dirty = kind("apron", Posture.HANGING).soil(Soil.DIRTY).thing("apron", 200, 300, apron, 9);
    var clean = kind("mask", Posture.LYING).soil(Soil.CLEAN).thing("mask", 100, 40, mask, 9);
    var task =
        new StorageTask(
            doorFor(80),
            List.of(dirty, clean),
            List.of(StorageForTests.STANDING),
            Map.of("apron", place, "mask", "bottom-1"),
            Map.of(),
            StorageForTests.LIMITS);
    var plan = StoragePlanner.plan(task, new EveryPlacing(), Placer.Effort.PLAN);
    assertEquals(placed, plan.puts().size());
  }
}
