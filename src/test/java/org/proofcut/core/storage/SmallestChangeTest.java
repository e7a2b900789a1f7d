package org.proofcut.core.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.storage.StorageForTests.LIMITS;
import static org.proofcut.core.storage.StorageForTests.cabinet;
import static org.proofcut.core.storage.StorageForTests.kind;
import static org.proofcut.core.storage.StorageForTests.length;
import static org.proofcut.core.storage.StorageForTests.task;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
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
            });
  }
}
