package org.proofcut.core.run;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;

/** When the bench was left: by an interruption, or overnight. */
final class BenchClock {

  private final List<Entry> entries;
  private final Instant now;
  private final ZoneId zone;

  BenchClock(List<Entry> entries, Instant now, ZoneId zone) {
    this.entries = entries;
    this.now = now;
    this.zone = zone;
  }

  LocalDate today() {
    return now.atZone(zone).toLocalDate();
  }

  boolean isToday(Instant then) {
    return then.atZone(zone).toLocalDate().equals(today());
  }

  /** Whether nothing was done for so long since an act that work began anew after it. */
  boolean hadABreakSince(Entry act) {
    if (!isToday(act.at())) {
      return true;
    }
    var before = act.at();
    for (var entry : entries) {
      if (entry.at().isAfter(before)) {
        if (before.plus(Progress.BREAK).isBefore(entry.at())) {
          return true;
        }
        before = entry.at();
      }
    }
    return before.plus(Progress.BREAK).isBefore(now);
  }

  /** Whether the bench was left, or another tablet taken up, between an act and now. */
  boolean wasLeftSince(Entry act) {
    if (!isToday(act.at())) {
      return true;
    }
    var before = act;
    boolean reached = false;
    for (var entry : entries) {
      if (reached) {
        if (isPause(before.at(), entry.at()) || !entry.device().equals(before.device())) {
          return true;
        }
        before = entry;
      }
      reached |= entry.id().equals(act.id());
    }
    return isPause(before.at(), now);
  }

  private static boolean isPause(Instant from, Instant to) {
    return from.plus(Progress.INTERRUPTION).isBefore(to);
  }
}
