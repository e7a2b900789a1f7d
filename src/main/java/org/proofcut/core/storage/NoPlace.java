package org.proofcut.core.storage;

import java.util.Optional;
import java.util.stream.Collectors;

/** Why a thing is not kept in a place, or in none. */
public final class NoPlace {

  private static final int MOST_REASONS = 3;

  private NoPlace() {}

  /** Why a thing can't be kept in a place, as a sentence without its stop; empty where it can. */
  public static Optional<String> why(StorageTask task, Thing thing, Place place) {
    return new Suits(task.unpinned(thing.id())).refusal(thing, place).map(Suits.Why::words);
  }

  /** Why a plan left a thing over, as a sentence without its stop. */
  public static String why(StorageTask task, Thing thing) {
    var suits = new Suits(task);
    var places = task.places();
    if (places.stream().anyMatch(place -> suits.refusal(thing, place).isEmpty())) {
      return "Every place that would take it is wanted by others";
    }
    if (thing.needs(Need.ELSEWHERE)) {
      return "It is never kept with gear";
    }
    return places.stream()
        .filter(place -> thing.postures().stream().anyMatch(place::takes) || places.size() == 1)
        .limit(MOST_REASONS)
        .map(place -> place.name() + ": " + suits.refusal(thing, place).orElseThrow().words())
        .collect(Collectors.collectingAndThen(Collectors.joining("; "), NoPlace::orNone));
  }

  private static String orNone(String reasons) {
    return reasons.isEmpty() ? "There is no place of the kind that it is kept in" : reasons;
  }
}
