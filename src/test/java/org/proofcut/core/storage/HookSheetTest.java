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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.measure.Length;
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

  /** The back is 8 mm: 5 are too little to hold, 15 of the batten do. The door is 18: 15 too. */
  @Test
  void screwNeverComesThrough() {
    var inBatten = hooks().get(0).goesIn();
    assertEquals(length(15), inBatten.value());
    assertEquals("batten", inBatten.inputs().get(0).as());
    var inDoor = hooks().get(1).goesIn();
    assertEquals(length(15), inDoor.value());
    assertEquals("panel", inDoor.inputs().get(0).as());
  }

  @Test
  void load_isFiveTimesWhatHangsThere() {
    assertEquals(1500, hooks().get(0).load().value());
    assertEquals(1000, hooks().get(1).load().value());
  }

  /** A batten of 18 mm comes on the back, and none on the door. */
  @Test
  void batten_onlyWhereThePanelIsTooThin() {
    assertEquals(length(18), hooks().get(0).batten().orElseThrow().value());
    assertTrue(hooks().get(1).batten().isEmpty());
  }

  /** 10 mm hold; 3 stay before the tip. */
  @ParameterizedTest
  @CsvSource({"13,10,false", "12,15,true", "18,15,false"})
  void back_holdsAScrew_from13mm(long back, long in, boolean onBatten) {
    var thick = withBack(back);
    var task = task(thick, List.of(MUFFS));
    var hook =
        HookSheet.of(task, plan(new Put(MUFFS, place(task, "rail-1"), length(20))), Fastening.USUAL)
            .hooks()
            .get(0);
    assertEquals(length(in), hook.goesIn().value());
    assertEquals(onBatten, hook.batten().isPresent());
  }

  private static Cabinet withBack(long back) {
    var c = cabinet();
    return new Cabinet(
        c.id(),
        c.name(),
        c.inside(),
        c.raised(),
        c.before(),
        length(back),
        c.side(),
        c.uprightDeep(),
        c.dry(),
        c.bays(),
        c.doors(),
        c.fittings());
  }

  /** Bay 2 begins at 418: no tape goes through the upright. Rows come as the places do. */
  @Test
  void eachBay_isMeasuredFromItsOwnCorner_inTheOrderOfThePlaces() {
    var second =
        cabinet()
            .with(
                all ->
                    List.of(
                        new Fitting.Rail("z-rail", "pegs", 1, length(960), 8_000, 5_000),
                        new Fitting.Rail("a-rail", "hooks", 2, length(700), 8_000, 5_000)));
    var other = kind("muffs", Posture.HANGING).thing("other muffs", 100, 220, 60, 300);
    var task = task(second, List.of(MUFFS, VISOR, other));
    var hooks =
        HookSheet.of(
                task,
                plan(
                    new Put(VISOR, place(task, "a-rail"), length(600)),
                    new Put(MUFFS, place(task, "z-rail"), length(20)),
                    new Put(other, place(task, "a-rail"), length(428))),
                Fastening.USUAL)
            .hooks();
    assertEquals(
        List.of("muffs", "other muffs", "visor"),
        hooks.stream().map(hook -> hook.holds().name()).toList());
    assertEquals(
        List.of("lower left corner inside bay 1", "lower left corner inside bay 2"),
        hooks.stream().map(Hook::corner).distinct().toList());
    assertEquals(
        List.of(length(110), length(60), length(232)),
        hooks.stream().map(hook -> hook.spot().fromSide().value()).toList());
  }

  /** No. 6: root 0.094 in = 2.3876 mm, for a panel all of it. */
  @Test
  void pilot_isTheRootOfTheScrew() {
    assertEquals(Length.of("2.39 mm"), hooks().get(0).pilot().value());
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
