package org.proofcut.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.Demo;
import org.proofcut.core.storage.GearAct;
import org.proofcut.core.storage.Placer;
import org.proofcut.logbook.ShopItem.Shelf;
import org.proofcut.logbook.StorageLog;

/** Two tablets at once, and plans that take their time. */
@QuarkusTest
class StorageAtOnceTest {

  @Inject StorageDesk desk;
  @Inject StorageLog storage;
  @Inject ShopFloor floor;
  @Inject CabinetShelf shelf;
  @Inject ThingDesk things;
  @Inject GearActs acts;
  @Inject Homes homes;
  @Inject WorkBench bench;
  @Inject JobDesk jobs;
  @Inject Placer placer;

  private final ExecutorService others = Executors.newFixedThreadPool(4);
  private String cabinet;
  private String muffs;

  @BeforeEach
  void keepOneOfEach() {
    cabinet = desk.keep(Optional.empty(), GearTyped.cabinet()).value().orElseThrow().id();
    var typed = GearTyped.muffs("grey muffs", "kept-in", cabinet);
    muffs = floor.keep(Optional.empty(), Shelf.GEAR, "ear-protection", typed).value().orElseThrow();
  }

  @AfterEach
  void takeAllOutAgain() {
    others.shutdownNow();
    floor.remove(muffs);
    desk.discard(cabinet);
  }

  /** The same desk, with a placer of the test's. */
  private StorageDesk with(Placer other) {
    var plans = new StoragePlans(other);
    return new StorageDesk(
        storage,
        floor,
        shelf,
        things,
        acts,
        new CabinetPlans(storage, shelf, things, plans),
        plans,
        homes,
        bench);
  }

  /** Says when it was asked, and waits until it may go on. */
  private Placer slow(CountDownLatch begun, CountDownLatch goOn) {
    return (placing, effort) -> {
      begun.countDown();
      try {
        assertTrue(goOn.await(30, TimeUnit.SECONDS));
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
      return placer.place(placing, effort);
    };
  }

  /** What is done elsewhere while a plan is worked out, and what the taking then says. */
  private Optional<Problem> takenWhile(Callable<?> done) throws Exception {
    var begun = new CountDownLatch(1);
    var goOn = new CountDownLatch(1);
    var slow = with(slow(begun, goOn));
    var mark = desk.plan(cabinet).orElseThrow().mark();
    var taken = others.submit(() -> slow.take(cabinet, mark));
    assertTrue(begun.await(10, TimeUnit.SECONDS));
    try {
      done.call();
    } finally {
      goOn.countDown();
    }
    return taken.get(10, TimeUnit.SECONDS);
  }

  private static String where(Optional<Problem> problem) {
    return problem.map(Problem::where).orElse("nothing is wrong");
  }

  @Test
  void take_whileSomebodyTakesAThingOut_isTaken_andNobodyWaits() throws Exception {
    var out = new GearAct.TakenOut("Ola");
    var begun = new CountDownLatch(1);
    var goOn = new CountDownLatch(1);
    var slow = with(slow(begun, goOn));
    var mark = desk.plan(cabinet).orElseThrow().mark();
    var taken = others.submit(() -> slow.take(cabinet, mark));
    assertTrue(begun.await(10, TimeUnit.SECONDS));
    try {
      var act = others.submit(() -> slow.act(UUID.randomUUID().toString(), muffs, out));
      assertEquals(Optional.empty(), act.get(10, TimeUnit.SECONDS));
      var pin = others.submit(() -> slow.pin(muffs, "nothing", "bottom-1"));
      assertEquals("cabinet", where(pin.get(10, TimeUnit.SECONDS)));
    } finally {
      goOn.countDown();
    }
    assertEquals(Optional.empty(), taken.get(10, TimeUnit.SECONDS));
    assertEquals(Optional.of("Small one: hooks"), desk.placeOf(muffs));
  }

  @Test
  void take_whileTheThingGoes_isRefused() throws Exception {
    var refused =
        takenWhile(
            () -> {
              floor.remove(muffs);
              return true;
            });
    assertEquals("mark", where(refused));
    assertEquals(Optional.empty(), desk.placeOf(muffs));
  }

  @Test
  void take_whileTheCabinetGoesOrIsChanged_isRefused() throws Exception {
    assertEquals("mark", where(takenWhile(() -> keep("fitting-1-at", "600"))));
    var refused =
        takenWhile(
            () -> {
              desk.discard(cabinet);
              return true;
            });
    assertEquals("mark", where(refused));
    assertEquals(Optional.empty(), desk.placeOf(muffs));
  }

  private Object keep(String... changed) {
    return desk.keep(Optional.of(cabinet), GearTyped.cabinet(changed)).value().orElseThrow();
  }

  @Test
  void takenOut_byFourAtOnce_isWithOne() throws Exception {
    var all =
        others.invokeAll(
            IntStream.range(0, 4)
                .<Callable<Optional<Problem>>>mapToObj(
                    who ->
                        () ->
                            desk.act(
                                UUID.randomUUID().toString(),
                                muffs,
                                new GearAct.TakenOut("number " + who)))
                .toList());
    int taken = 0;
    for (var one : all) {
      taken += one.get().isEmpty() ? 1 : 0;
    }
    assertEquals(1, taken);
    assertEquals(1, desk.record(muffs).size());
  }

  @Test
  void sameName_enteredByTwoAtOnce_isKeptOnce() throws Exception {
    var typed = GearTyped.pairs("name", "Tomo", "body", "1700 mm");
    try {
      others.invokeAll(
          List.of(
              () -> desk.keepPerson(Optional.empty(), typed),
              () -> desk.keepPerson(Optional.empty(), typed),
              () -> desk.keepPerson(Optional.empty(), typed)));
      assertEquals(1, desk.people().stream().filter(this::isTomo).count());
    } finally {
      desk.people().stream().filter(this::isTomo).forEach(one -> desk.discardPerson(one.id()));
    }
  }

  private boolean isTomo(KeptPerson one) {
    return one.person().name().equals("Tomo");
  }

  @Test
  void heights_ofAJobThatIsChangedMeanwhile_areNotTaken_andTheChangeStays() {
    var job = jobs.keep(Optional.empty(), Demo.job()).value().orElseThrow();
    var typed = new LinkedHashMap<>(desk.ofJob(job).orElseThrow());
    typed.put("hung", "800 mm");
    var ofJob = desk.keep(Optional.empty(), typed).value().orElseThrow().id();
    // 480 mm stand nowhere while the shelf is in the middle.
    var more = GearTyped.muffs("tall", "kept-in", ofJob, "kept-height", "480", "kept-width", "300");
    var tall =
        floor.keep(Optional.empty(), Shelf.GEAR, "ear-protection", more).value().orElseThrow();
    try {
      var renamed = new LinkedHashMap<>(job.typed());
      renamed.put("name", "another name");
      var once = new AtomicBoolean();
      var slow =
          with(
              (placing, effort) -> {
                if (effort == Placer.Effort.GLANCE && !once.getAndSet(true)) {
                  jobs.keep(Optional.of(job.id()), renamed);
                }
                return placer.place(placing, effort);
              });
      assertEquals(List.of("job"), slow.takeHeights(ofJob).stream().map(Problem::where).toList());
      assertEquals(renamed.get("name"), jobs.job(job.id()).orElseThrow().typed().get("name"));
      assertEquals(renamed.get("shelf-1"), jobs.job(job.id()).orElseThrow().typed().get("shelf-1"));
    } finally {
      floor.remove(tall);
      desk.discard(ofJob);
      bench.discard(job.id());
    }
  }
}
