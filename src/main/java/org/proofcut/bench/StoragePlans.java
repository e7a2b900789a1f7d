package org.proofcut.bench;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collections;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;
import org.proofcut.core.measure.Length;
import org.proofcut.core.storage.Change;
import org.proofcut.core.storage.HookSheet;
import org.proofcut.core.storage.Placer;
import org.proofcut.core.storage.Placer.Effort;
import org.proofcut.core.storage.ShelfHeights;
import org.proofcut.core.storage.SmallestChange;
import org.proofcut.core.storage.StorageCheck;
import org.proofcut.core.storage.StorageCheck.Fault;
import org.proofcut.core.storage.StoragePlan;
import org.proofcut.core.storage.StoragePlanner;
import org.proofcut.core.storage.StorageTask;
import org.proofcut.core.storage.Wishes;
import org.proofcut.core.storage.Wishes.Unmet;

/**
 * Plans of cabinets. What was planned once is not planned again, and what is being planned is
 * waited for: two tablets that ask for the same get the same, after one plan's time. Plans take
 * seconds, so nobody may ask for one within a transaction.
 */
@ApplicationScoped
class StoragePlans {

  private static final int MOST_KEPT = 16;

  /** From so many things on a plan may take longer (our own choice). */
  private static final int MANY_THINGS = 40;

  private final Placer placer;
  private final Map<StorageTask, CompletableFuture<Solved>> plans = lastUsed();

  /** Apart from plans: who types must not drive out what took seconds. */
  private final Map<StorageTask, CompletableFuture<Solved>> glances = lastUsed();

  private final Map<StorageTask, CompletableFuture<Optional<Change>>> changes = lastUsed();
  private final Map<Movable, CompletableFuture<ShelfHeights.Chosen>> heights = lastUsed();

  StoragePlans(Placer placer) {
    this.placer = placer;
  }

  private static <K, V> Map<K, V> lastUsed() {
    return Collections.synchronizedMap(
        new LinkedHashMap<>(MOST_KEPT, 0.75f, true) {
          private static final long serialVersionUID = 1L;

          @Override
          protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
            return size() > MOST_KEPT;
          }
        });
  }

  /** The first who asks works it out; all others wait for that. */
  private static <K, V> V once(Map<K, CompletableFuture<V>> known, K asked, Supplier<V> workedOut) {
    var mine = new CompletableFuture<V>();
    var others = known.putIfAbsent(asked, mine);
    if (others != null) {
      return joined(others);
    }
    try {
      mine.complete(workedOut.get());
    } catch (RuntimeException | Error e) {
      // Whoever asks again tries again.
      known.remove(asked, mine);
      mine.completeExceptionally(e);
    }
    return joined(mine);
  }

  private static <V> V joined(CompletableFuture<V> future) {
    try {
      return future.join();
    } catch (CompletionException e) {
      throw new IllegalStateException("what was asked for can't be planned", e.getCause());
    }
  }

  /** A plan with all that is said of it. */
  record Solved(
      StoragePlan plan, List<Fault> faults, List<Unmet> unmet, HookSheet hooks, String mark) {}

  /**
   * A cabinet whose shelves may move.
   *
   * @param shelves their ids
   * @param step that heights of their faces are multiples of
   * @param clear least room between a shelf and what is next above or below
   */
  record Movable(StorageTask task, List<String> shelves, Length step, Length clear) {}

  /** The plan of a task: two seconds for thirty things, ten for sixty, if nobody asked before. */
  Solved plan(StorageTask task) {
    var effort = task.things().size() > MANY_THINGS ? Effort.LONG : Effort.PLAN;
    return once(plans, task, () -> solve(task, effort));
  }

  /** The plan of a task that is still being typed. */
  Solved glance(StorageTask task) {
    return once(glances, task, () -> solve(task, Effort.GLANCE));
  }

  /**
   * The smallest change that gives everything a place: many plans, so it is asked for by itself.
   */
  Optional<Change> change(StorageTask task) {
    return once(changes, task, () -> SmallestChange.of(task, plan(task).plan(), placer));
  }

  /** Heights of shelves that suit the things best: many plans, too. */
  ShelfHeights.Chosen heights(Movable asked) {
    return once(
        heights,
        asked,
        () -> ShelfHeights.of(asked.task(), asked.shelves(), asked.step(), asked.clear(), placer));
  }

  private Solved solve(StorageTask task, Effort effort) {
    var plan = StoragePlanner.plan(task, placer, effort);
    return new Solved(
        plan,
        StorageCheck.faults(task, plan),
        Wishes.unmet(task, plan),
        HookSheet.of(task, plan, HookSheet.Fastening.USUAL),
        mark(task, plan));
  }

  /** The same for the same things in the same spots of the same cabinet. */
  private static String mark(StorageTask task, StoragePlan plan) {
    var words = new StringBuilder(task.cabinet().toString());
    for (var put : plan.puts()) {
      words
          .append(put.thing().id())
          .append('@')
          .append(put.place().id())
          .append('+')
          .append(put.left())
          .append(';');
    }
    plan.without().forEach(thing -> words.append('-').append(thing.id()).append(';'));
    try {
      var digest = MessageDigest.getInstance("SHA-256");
      var bytes = digest.digest(words.toString().getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(bytes, 0, 8);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
