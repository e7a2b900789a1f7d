package org.proofcut.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.proofcut.content.Content;
import org.proofcut.core.intake.CabinetForm;
import org.proofcut.core.storage.Placer;
import org.proofcut.core.storage.StorageLimits;
import org.proofcut.core.storage.StorageTask;
import org.proofcut.solver.AnnealedPlacer;

class StoragePlansTest {

  private static final StorageLimits LIMITS = Content.bundled().limits(StorageLimits.class);
  private static final Placer ANNEALED = new AnnealedPlacer();

  private static StorageTask task(String... changed) {
    var cabinet = CabinetForm.read("c", GearTyped.cabinet(changed), Optional.empty());
    return new StorageTask(
        cabinet.value().orElseThrow(), List.of(), List.of(), Map.of(), Map.of(), LIMITS);
  }

  @Test
  void plan_askedForByManyAtOnce_isWorkedOutOnce() throws Exception {
    var begun = new AtomicInteger();
    var go = new CountDownLatch(1);
    var plans =
        new StoragePlans(
            (placing, effort) -> {
              begun.incrementAndGet();
              await(go);
              return ANNEALED.place(placing, effort);
            });
    var task = task();
    var pool = Executors.newFixedThreadPool(4);
    try {
      var all = IntStream.range(0, 4).mapToObj(any -> pool.submit(() -> plans.plan(task))).toList();
      // Long enough for each of them to have asked.
      Thread.sleep(200);
      go.countDown();
      var first = all.get(0).get(10, TimeUnit.SECONDS);
      for (var one : all) {
        assertSame(first, one.get(10, TimeUnit.SECONDS));
      }
      assertEquals(1, begun.get());
    } finally {
      pool.shutdownNow();
    }
  }

  @Test
  void plan_outlivesWhatIsTypedMeanwhile() {
    var plans = new StoragePlans(ANNEALED);
    var seen = plans.plan(task());
    for (int wide = 300; wide < 350; wide++) {
      plans.glance(task("width", "" + wide));
    }
    assertSame(seen, plans.plan(task()));
  }

  @Test
  void plan_thatFailed_isTriedAgain() {
    var fails = new AtomicInteger(1);
    var plans =
        new StoragePlans(
            (placing, effort) -> {
              if (fails.getAndDecrement() > 0) {
                throw new IllegalStateException("the library is gone");
              }
              return ANNEALED.place(placing, effort);
            });
    var e = assertThrows(IllegalStateException.class, () -> plans.plan(task()));
    assertEquals("the library is gone", e.getCause().getMessage());
    assertEquals(List.of(), plans.plan(task()).plan().puts());
  }

  /** The same things in the same spots, in a cabinet whose hooks have another name. */
  @Test
  void mark_ofAnotherCabinet_isAnother() {
    var plans = new StoragePlans(ANNEALED);
    assertEquals(plans.plan(task()).mark(), plans.glance(task()).mark());
    assertNotEquals(plans.plan(task()).mark(), plans.plan(task("fitting-1-name", "pegs")).mark());
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await(10, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
