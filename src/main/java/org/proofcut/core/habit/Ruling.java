package org.proofcut.core.habit;

import java.time.Instant;

/** What the maker says about observations. Rulings are only ever added; the last one holds. */
public sealed interface Ruling {

  Instant at();

  /** An observation that was asked about is right after all. */
  record Accepted(String proof, Trait trait, Instant at) implements Ruling {}

  /** An observation does not count: a chip at the fence, a reading typed wrong. */
  record LeftOut(String proof, Trait trait, String because, Instant at) implements Ruling {}

  /**
   * What was observed earlier no longer holds: cutter sharpened, fence set anew.
   *
   * @param at observations before it don't count
   */
  record StartedAfresh(About about, String because, Instant at) implements Ruling {}

  /** Nothing learned of this is used, though it goes on being learned. */
  record SetAside(Trait trait, String because, Instant at) implements Ruling {}

  /** What was set aside is used again. */
  record TakenUp(Trait trait, Instant at) implements Ruling {}

  /** How much is started afresh. */
  sealed interface About {

    /** All that is known of a cutter, on whatever machine. */
    record Cutter(String id) implements About {}

    /** All that is known of a machine, with whatever cutter. */
    record Machine(String id) implements About {}

    /** One scale of a machine, with whatever cutter. */
    record Scale(String machine, Trait.Datum datum) implements About {}

    /** One thing alone. */
    record Only(Trait trait) implements About {}

    default boolean covers(Trait trait) {
      if (this instanceof Cutter cutter) {
        return trait.cutter().equals(cutter.id);
      }
      if (this instanceof Machine machine) {
        return trait.isOfMachine(machine.id);
      }
      if (this instanceof Scale scale) {
        return trait instanceof Trait.ScaleOffset offset
            && offset.machine().equals(scale.machine)
            && isOneScale(offset.datum(), scale.datum);
      }
      return ((Only) this).trait.equals(trait);
    }

    /** Who sets a fence anew, sets it anew for either edge. */
    private static boolean isOneScale(Trait.Datum one, Trait.Datum other) {
      return one == other || isFence(one) && isFence(other);
    }

    private static boolean isFence(Trait.Datum datum) {
      return datum == Trait.Datum.FENCE_TO_NEAREST_EDGE
          || datum == Trait.Datum.FENCE_TO_FARTHEST_EDGE;
    }
  }
}
