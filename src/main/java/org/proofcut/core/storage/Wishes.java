package org.proofcut.core.storage;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;

/**
 * What a plan is wished to be, beyond what it must be: often used things at hand height, heavy ones
 * low, in the order of dressing, those used together together, with room to grow.
 */
public final class Wishes {

  /**
   * A wish that is not met.
   *
   * @param words in a few words, the thing first
   * @param cost what it counts
   */
  public record Unmet(String words, long cost) {}

  private static final BigDecimal CENTIMETRE = BigDecimal.TEN;
  private static final int GRAMS_OF_KILOGRAM = 1000;

  private final StorageTask task;
  private final StorageLimits limits;

  Wishes(StorageTask task) {
    this.task = task;
    this.limits = task.limits();
  }

  /** The wishes that a plan does not meet, the one that counts most first. */
  public static List<Unmet> unmet(StorageTask task, StoragePlan plan) {
    var wishes = new Wishes(task);
    var unmet = new ArrayList<Unmet>();
    for (var put : plan.puts()) {
      unmet.addAll(wishes.unmet(put.thing(), put.place()));
    }
    unmet.addAll(wishes.spread(plan));
    unmet.addAll(wishes.outOfTurn(plan));
    return unmet.stream()
        .filter(one -> one.cost() > 0)
        .sorted(Comparator.comparingLong(Unmet::cost).reversed().thenComparing(Unmet::words))
        .toList();
  }

  /** What a thing costs in a place, whatever else is where. */
  long cost(Thing thing, Place place) {
    return unmet(thing, place).stream().mapToLong(Unmet::cost).sum();
  }

  private List<Unmet> unmet(Thing thing, Place place) {
    var unmet = new ArrayList<Unmet>();
    long away = 0;
    for (var person : task.usersOf(thing)) {
      away = Math.max(away, away(thing, place, person));
    }
    if (away > 0) {
      unmet.add(
          new Unmet(
              "%s: %d cm away from %s"
                  .formatted(
                      thing.name(), away, isHeavy(thing) ? "where heavy things go" : "hand height"),
              away * perCentimetre(thing)));
    }
    if (!place.takes(thing.postures().get(0))) {
      unmet.add(
          new Unmet(
              thing.name() + ": better " + thing.postures().get(0).words(),
              limits.otherPosture().value()));
    }
    var before = task.before().get(thing.id());
    if (before != null && !before.equals(place.id())) {
      unmet.add(
          new Unmet(thing.name() + ": moved from where it lives now", limits.moved().value()));
    }
    return unmet;
  }

  private boolean isHeavy(Thing thing) {
    return thing.grams() >= limits.heavyGrams().value();
  }

  private long perCentimetre(Thing thing) {
    return isHeavy(thing)
        ? -(long) Math.floorDiv(-thing.grams(), GRAMS_OF_KILOGRAM)
            * limits.perCentimetreAndKilogram().value()
        : (long) thing.use().weight() * limits.perCentimetre().value();
  }

  /** Daily things between elbow and shoulder, heavy ones between knuckle and elbow. */
  private long away(Thing thing, Place place, Person person) {
    var band =
        isHeavy(thing)
            ? new Band(person.knuckle(), person.elbow())
            : new Band(person.elbow(), person.shoulder());
    var grip = Put.grip(thing, place).plus(task.cabinet().raised());
    var off =
        grip.isLessThan(band.least())
            ? band.least().minus(grip)
            : grip.isGreaterThan(band.most()) ? grip.minus(band.most()) : Length.ZERO;
    return off.inMillimetres().divide(CENTIMETRE, 0, RoundingMode.CEILING).longValueExact();
  }

  /** Things that are taken out together, by the word that they share. */
  static Map<String, List<Thing>> together(List<Thing> things) {
    var groups = new TreeMap<String, List<Thing>>();
    for (var thing : things) {
      thing
          .kind()
          .together()
          .ifPresent(word -> groups.computeIfAbsent(word, any -> new ArrayList<>()).add(thing));
    }
    groups.values().removeIf(group -> group.size() < 2);
    return groups;
  }

  private List<Unmet> spread(StoragePlan plan) {
    return together(plan.puts().stream().map(Put::thing).toList()).values().stream()
        .map(
            group -> {
              long places =
                  group.stream()
                      .map(thing -> plan.of(thing.id()).orElseThrow().place().id())
                      .distinct()
                      .count();
              return new Unmet(
                  "%s and %d more are used together and lie in %d places"
                      .formatted(group.get(0).name(), group.size() - 1, places),
                  (places - 1) * limits.apart().value());
            })
        .toList();
  }

  private List<Unmet> outOfTurn(StoragePlan plan) {
    var unmet = new ArrayList<Unmet>();
    for (var one : plan.puts()) {
      for (var other : plan.puts()) {
        if (isBefore(one.thing(), other.thing()) && one.place().column() > other.place().column()) {
          unmet.add(
              new Unmet(
                  "%s: put on before %s, and to the right of it"
                      .formatted(one.thing().name(), other.thing().name()),
                  limits.outOfTurn().value()));
        }
      }
    }
    return unmet;
  }

  /** Whether one is put on before the other. */
  static boolean isBefore(Thing one, Thing other) {
    return one.dressing().isPresent()
        && other.dressing().isPresent()
        && one.dressing().get() < other.dressing().get();
  }
}
