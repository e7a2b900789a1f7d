package org.proofcut.core.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.storage.StorageForTests.LIMITS;
import static org.proofcut.core.storage.StorageForTests.cabinet;
import static org.proofcut.core.storage.StorageForTests.kind;
import static org.proofcut.core.storage.StorageForTests.length;
import static org.proofcut.core.storage.StorageForTests.task;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.storage.Placer.Effort;

class SmallestChangeTest {

  private static final Placer PLACER = new FirstFit();

  private static Optional<Change> change(StorageTask task) {
    return SmallestChange.of(task, StoragePlanner.plan(task, PLACER, Effort.PLAN), PLACER);
  }

  /** One bay, one shelf in the middle, no hooks. */
  private static Cabinet plain() {
    return new Cabinet(
        "plain",
        "plain",
        new Size(length(400), length(600), length(300)),
        length(700),
        length(0),
        length(8),
        length(18),
        length(200),
        true,
        List.of(cabinet().bays().get(0)),
        List.of(),
        List.of(
            new Fitting.Shelf(
                "shelf", "the shelf", 1, length(300), length(18), length(200), 15_000)));
  }

  @Test
  void allFits_nothingIsToBeChanged() {
    var jar = kind("jar", Posture.STANDING).thing("jar", 80, 200, 80, 500);
    assertEquals(Optional.empty(), change(task(plain(), List.of(jar))));
  }

  /** 350 mm high and 30 for the hand: the shelf goes down by 80 mm, or up by 116. */
  @Test
  void tooTall_theShelfIsMovedTheShortWay_andNoFarther() {
    var can = kind("can", Posture.STANDING).thing("can", 80, 350, 80, 500);
    var change = change(task(plain(), List.of(can))).orElseThrow();
    assertEquals(80, change.much());
    assertEquals(
        "Move the shelf: its top goes from 300 mm to 220 mm above the bottom", change.words());
  }

  private static Cabinet with(Fitting... more) {
    return plain()
        .with(
            fittings -> {
              var all = new ArrayList<>(fittings);
              all.addAll(List.of(more));
              return all;
            });
  }

  private static Fitting.Rail hooks(long at) {
    return new Fitting.Rail("rail", "new hooks", 1, length(at), 8_000, 8_000);
  }

  /** It hangs down 270 mm from 560, and 10 stay free: the shelf, at 300, goes down by 20. */
  @Test
  void hangsTooFarDown_theShelfIsMoved() {
    var coat = kind("coat", Posture.HANGING).thing("coat", 200, 270, 60, 300);
    assertEquals(
        "Move the shelf: its top goes from 300 mm to 280 mm above the bottom",
        change(task(with(hooks(560)), List.of(coat))).orElseThrow().words());
  }

  /** Ilse grips up to 1950 mm, and takes what is 100 high by its middle: 1950 − 1640 − 50. */
  @Test
  void tooHighToReach_theShelfIsMovedDown() {
    var c = plain();
    var high =
        new Cabinet(
            c.id(),
            c.name(),
            c.inside(),
            length(1640),
            c.before(),
            c.back(),
            c.side(),
            c.uprightDeep(),
            true,
            c.bays(),
            c.doors(),
            c.fittings());
    var tin = kind("tin", Posture.STANDING).thing("tin", 80, 100, 80, 500);
    var crate = kind("crate", Posture.STANDING).thing("crate", 390, 200, 80, 500);
    var every = new EveryPlacing();
    var task = task(high, List.of(tin, crate));
    var plan = StoragePlanner.plan(task, every, Effort.PLAN);
    assertEquals(1, plan.without().size());
    assertEquals(
        "Move the shelf: its top goes from 300 mm to 260 mm above the bottom",
        SmallestChange.of(task, plan, every).orElseThrow().words());
  }

  /** 180 hang over 80 that stand, with 10 between: 560 − 270 = 290. */
  @Test
  void hangsOnWhatStandsBelow_theShelfIsMoved() {
    var coat = kind("coat", Posture.HANGING).thing("coat", 200, 180, 60, 300);
    var tin = kind("tin", Posture.STANDING).thing("tin", 80, 80, 80, 500);
    var crate = kind("crate", Posture.STANDING).thing("crate", 390, 240, 80, 500);
    var task = task(with(hooks(560)), List.of(coat, tin, crate));
    var every = new EveryPlacing();
    var plan = StoragePlanner.plan(task, every, Effort.PLAN);
    assertEquals(1, plan.without().size());
    assertEquals(
        "Move the shelf: its top goes from 300 mm to 290 mm above the bottom",
        SmallestChange.of(task, plan, every).orElseThrow().words());
  }

  /** At 278 mm the can has just room over the shelf, which would then lie over hooks at 270. */
  @Test
  void shelfIsNotMovedOverHooks() {
    var can = kind("can", Posture.STANDING).thing("can", 80, 292, 80, 500);
    var crate = kind("crate", Posture.STANDING).thing("crate", 390, 230, 80, 500);
    assertEquals(
        "Move the shelf: its top goes from 300 mm to 278 mm above the bottom",
        change(task(with(hooks(560)), List.of(can, crate))).orElseThrow().words());
    assertEquals(
        "Move the shelf: its top goes from 300 mm to 340 mm above the bottom",
        change(task(with(hooks(270)), List.of(can, crate))).orElseThrow().words());
  }

  /** Where there are new hooks already, others get another name. */
  @Test
  void moreHooks_haveANameOfTheirOwn() {
    var coat = kind("coat", Posture.HANGING).thing("coat", 200, 100, 60, 300);
    var tooWeak = new Fitting.Rail("rail", "new hooks", 1, length(100), 100, 100);
    var task = task(with(tooWeak), List.of(coat));
    var change = (Change.AddRail) change(task).orElseThrow();
    assertEquals("new hooks 2", change.rail().name());
    assertEquals(
        List.of(), CabinetCheck.problems(change.in(task).cabinet(), LengthUnit.MILLIMETRE));
  }

  /** The shelf would have to go up by 548 mm: more than 500, and 10 mm of width. */
  @Test
  void widerByLittle_countsForLessThanAShelfMovedFar() {
    var tall =
        new Cabinet(
            "tall",
            "tall",
            new Size(length(100), length(1300), length(300)),
            length(300),
            length(0),
            length(8),
            length(18),
            length(200),
            true,
            List.of(new Bay(1, new Band(length(0), length(100)))),
            List.of(),
            List.of(
                new Fitting.Shelf(
                    "shelf", "the shelf", 1, length(80), length(18), length(200), 15_000)));
    var one = kind("a", Posture.STANDING).thing("a", 50, 600, 80, 500);
    var two = kind("b", Posture.STANDING).thing("b", 50, 580, 80, 500);
    assertEquals(
        "Build it wider by 10 mm, all of it in the bay on the right",
        change(task(tall, List.of(one, two))).orElseThrow().words());
  }

  @Test
  void onlyHangs_hooksComeIn() {
    var apron = kind("apron", Posture.HANGING).thing("apron", 200, 150, 60, 300);
    var change = change(task(plain(), List.of(apron))).orElseThrow();
    assertTrue(change instanceof Change.AddRail, change::words);
  }

  @Test
  void pinnedWhereItDoesNotFit_thePinComesOut() {
    var can = kind("can", Posture.STANDING).thing("can", 80, 265, 80, 500);
    var free = task(plain(), List.of(can));
    var pinned =
        new StorageTask(
            free.cabinet(),
            free.things(),
            free.people(),
            Map.of("can", "bottom-1"),
            Map.of(),
            LIMITS);
    assertEquals(Optional.empty(), change(free).filter(any -> true));
    assertEquals("Take the pin out of can", change(pinned).orElseThrow().words());
  }

  /** Seven of 100 mm with 10 between, in twice 400: four and three need 430. */
  @Test
  void tooMany_itIsBuiltWider_byTheLeastTenMillimetres() {
    var jars =
        List.of("a", "b", "c", "d", "e", "f", "g").stream()
            .map(name -> kind("jar", Posture.STANDING).thing(name, 100, 200, 80, 500))
            .toList();
    assertEquals(
        "Build it wider by 30 mm, all of it in the bay on the right",
        change(task(plain(), jars)).orElseThrow().words());
  }

  @Test
  void neverKeptHere_isNoReasonToChangeAnything() {
    var rag = kind("rag", Posture.LYING).needs(Need.ELSEWHERE).thing("rag", 50, 20, 50, 50);
    assertEquals(Optional.empty(), change(task(plain(), List.of(rag))));
  }

  @Provide
  Arbitrary<StorageTask> tasks() {
    return StorageArbitraries.tasks(6);
  }

  /** Whatever is advised, after it everything has a place, and the plan is sound. */
  @Property(tries = 100)
  void advised_helps(@ForAll("tasks") StorageTask task) {
    change(task)
        .ifPresent(
            change -> {
              var changed = change.in(task);
              var plan = StoragePlanner.plan(changed, PLACER, Effort.GLANCE);
              assertTrue(
                  plan.without().stream().allMatch(thing -> thing.needs(Need.ELSEWHERE)),
                  change::words);
              assertEquals(List.of(), StorageCheck.faults(changed, plan));
              assertEquals(
                  List.of(), CabinetCheck.problems(changed.cabinet(), LengthUnit.MILLIMETRE));
            });
  }
}
