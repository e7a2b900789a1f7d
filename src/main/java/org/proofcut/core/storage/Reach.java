package org.proofcut.core.storage;

import java.util.Optional;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;

/** Between which heights above the floor a person takes hold of things. */
public final class Reach {

  private Reach() {}

  /**
   * The heights that a person reaches; empty where nothing is reached.
   *
   * @param before how deep something is that they reach over
   */
  public static Optional<Band> of(Person person, Length before, StorageLimits limits) {
    if (!person.seated()) {
      return Optional.of(new Band(Length.ZERO, person.highest()));
    }
    if (before.isGreaterThan(limits.seatedFar().value())) {
      return Optional.empty();
    }
    var high =
        before.isGreaterThan(limits.seatedNear().value())
            ? limits.seatedHighOver().value()
            : limits.seatedHigh().value();
    var low = limits.seatedLow().value();
    return Optional.of(high.min(person.highest()))
        .filter(low::isAtMost)
        .map(highest -> new Band(low, highest));
  }
}
