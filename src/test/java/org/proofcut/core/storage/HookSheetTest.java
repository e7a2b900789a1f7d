package org.proofcut.core.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.storage.StorageForTests.cabinet;
import static org.proofcut.core.storage.StorageForTests.kind;
import static org.proofcut.core.storage.StorageForTests.length;
import static org.proofcut.core.storage.StorageForTests.place;
import static org.proofcut.core.storage.StorageForTests.plan;
import static org.proofcut.core.storage.StorageForTests.task;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.proofcut.core.storage.HookSheet.Fastening;
import org.proofcut.core.storage.HookSheet.Hook;

class HookSheetTest {

  private static final Thing MUFFS =
      kind("muffs", Posture.HANGING).thing("muffs", 180, 220, 60, 300);
  private static final Thing VISOR =
      kind("visor", Posture.HANGING).thing("visor", 100, 150, 80, 200);
  private static final Thing JAR = kind("jar", Posture.STANDING).thing("jar", 80, 200, 80, 500);

  private static List<Hook> hooks() {
    var task = task(cabinet(), List.of(MUFFS, VISOR, JAR));
    return HookSheet.of(
            task,
            plan(
                new Put(VISOR, place(task, "door-1"), length(60)),
                new Put(JAR, place(task, "shelf-1"), length(0)),
                new Put(MUFFS, place(task, "rail-1"), length(20))),
            Fastening.USUAL)
        .hooks();
  }

  @Test
  void onlyWhatHangs_rowsOfTheBackFirst() {
    assertEquals(
        List.of("muffs", "visor"), hooks().stream().map(hook -> hook.holds().name()).toList());
  }

  /** Hung by its middle: 20 + 180 ÷ 2; on the door 60 + 100 ÷ 2. */
  @Test
  void measuredFromTheCorner_toTheMiddle() {
    var muffs = hooks().get(0).spot();
    assertEquals(length(110), muffs.fromSide().value());
    assertEquals(length(960), muffs.fromBottom().value());
    var visor = hooks().get(1).spot();
    assertEquals(length(110), visor.fromSide().value());
    assertEquals(length(900), visor.fromBottom().value());
  }

  /** The back is 8 mm: 5 are too little to hold. The door is 18: 15 at most. */
  @Test
  void screwNeverComesThrough_andAThinPanelWantsABatten() {
    assertTrue(hooks().get(0).goesIn().isEmpty());
    assertEquals(length(15), hooks().get(1).goesIn().orElseThrow().value());
  }

  @Test
  void load_isFiveTimesWhatHangsThere() {
    assertEquals(1500, hooks().get(0).load().value());
    assertEquals(1000, hooks().get(1).load().value());
  }

  /** Hinged on the right, at 818: its hook at 550 lies 268 from there, open or shut. */
  @Test
  void secondDoor_isMeasuredFromItsHinges() {
    var second =
        cabinet()
            .with(
                all ->
                    List.of(
                        new Fitting.DoorRail(
                            "door-2", "hooks", 2, length(900), length(80), 4_000, 3_000)));
    var task = task(second, List.of(VISOR));
    var hooks =
        HookSheet.of(
                task, plan(new Put(VISOR, place(task, "door-2"), length(500))), Fastening.USUAL)
            .hooks();
    assertEquals(length(818 - 500 - 50), hooks.get(0).spot().fromSide().value());
  }
}
