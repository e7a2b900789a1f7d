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
}
