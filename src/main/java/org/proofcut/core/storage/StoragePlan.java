package org.proofcut.core.storage;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where everything lives.
 *
 * @param puts in the order of the places, from left to right in each
 * @param without things that have no place, in the order of their names
 * @param cost what the wishes that are not met come to, without those that have no place
 * @param bound the least that any plan costs, as far as was proven
 */
public record StoragePlan(List<Put> puts, List<Thing> without, long cost, long bound) {

  public StoragePlan {
    puts = List.copyOf(puts);
    without = List.copyOf(without);
  }

  /** Whether no plan is better by the wishes. */
  public boolean isBest() {
    return cost <= bound;
  }

  /** By how much a better plan could be better at most, in per cent of the cost, rounded up. */
  public BigDecimal gap() {
    return isBest()
        ? BigDecimal.ZERO
        : BigDecimal.valueOf(cost - bound)
            .movePointRight(2)
            .divide(BigDecimal.valueOf(cost), 1, RoundingMode.CEILING);
  }

  /** Where a thing is, if it has a place. */
  public Optional<Put> of(String thing) {
    return puts.stream().filter(put -> put.thing().id().equals(thing)).findFirst();
  }

  /** What is in a place, from left to right. */
  public List<Put> in(String place) {
    return puts.stream()
        .filter(put -> put.place().id().equals(place))
        .sorted(Comparator.comparing(Put::left))
        .toList();
  }
}
