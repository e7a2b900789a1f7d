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
import org.proofcut.core.storage.Change;
import org.proofcut.core.storage.HookSheet;
import org.proofcut.core.storage.Placer;
import org.proofcut.core.storage.Placer.Effort;
import org.proofcut.core.storage.SmallestChange;
import org.proofcut.core.storage.StorageCheck;
import org.proofcut.core.storage.StorageCheck.Fault;
import org.proofcut.core.storage.StoragePlan;
import org.proofcut.core.storage.StoragePlanner;
import org.proofcut.core.storage.StorageTask;
import org.proofcut.core.storage.Wishes;
import org.proofcut.core.storage.Wishes.Unmet;

/** Plans of cabinets; what was planned once is not planned again. */
@ApplicationScoped
class StoragePlans {

  private static final int MOST_KEPT = 16;

  /** From so many things on a plan may take longer (our own choice). */
  private static final int MANY_THINGS = 40;

  private final Placer placer;
  private final Map<Asked, Solved> solved = lastUsed();
  private final Map<StorageTask, Optional<Change>> changes = lastUsed();

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

  private record Asked(StorageTask task, Effort effort) {}

  /** A plan with all that is said of it. */
  record Solved(
      StoragePlan plan, List<Fault> faults, List<Unmet> unmet, HookSheet hooks, String mark) {}

  Placer placer() {
    return placer;
  }

  /** The plan of a task. */
  Solved plan(StorageTask task) {
    return of(task, task.things().size() > MANY_THINGS ? Effort.LONG : Effort.PLAN);
  }

  /** The plan of a task that is still being typed. */
  Solved glance(StorageTask task) {
    return of(task, Effort.GLANCE);
  }

  /**
   * The smallest change that gives everything a place: many plans, so it is asked for by itself.
   */
  Optional<Change> change(StorageTask task) {
    var known = changes.get(task);
    if (known == null) {
      known = SmallestChange.of(task, plan(task).plan(), placer);
      changes.put(task, known);
    }
    return known;
  }

  private Solved of(StorageTask task, Effort effort) {
    var asked = new Asked(task, effort);
    var known = solved.get(asked);
    if (known == null) {
      known = solve(task, effort);
      solved.put(asked, known);
    }
    return known;
  }

  private Solved solve(StorageTask task, Effort effort) {
    var plan = StoragePlanner.plan(task, placer, effort);
    return new Solved(
        plan,
        StorageCheck.faults(task, plan),
        Wishes.unmet(task, plan),
        HookSheet.of(task, plan, HookSheet.Fastening.USUAL),
        mark(plan));
  }

  /** The same for the same things in the same spots. */
  private static String mark(StoragePlan plan) {
    var words = new StringBuilder();
    for (var put : plan.puts()) {
      words
          .append(put.thing().id())
          .append('@')
          .append(put.place().id())
          .append('+')
          .append(put.left())
          .append(';');
    }
    try {
      var digest = MessageDigest.getInstance("SHA-256");
      var bytes = digest.digest(words.toString().getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(bytes, 0, 8);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
