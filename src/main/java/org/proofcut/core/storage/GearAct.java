package org.proofcut.core.storage;

import java.time.LocalDate;
import java.util.Optional;

/** What was done with a piece of gear. */
public sealed interface GearAct {

  /**
   * It was taken out.
   *
   * @param who has it now
   */
  record TakenOut(String who) implements GearAct {}

  /**
   * It was put back.
   *
   * @param who had it, or found it
   */
  record PutBack(String who) implements GearAct {}

  /**
   * It was looked at.
   *
   * @param ageing id of what fell due; {@link Due#MARKED} for the day that is marked on the piece
   * @param good whether it may be used on; what has failed is not offered until it is mended or
   *     replaced
   * @param note in one line; may be empty
   * @param next day by which it is to be looked at again, where that is marked on the piece
   */
  record LookedAt(String ageing, boolean good, String note, Optional<LocalDate> next)
      implements GearAct {}

  /**
   * It was mended after it had failed, and is good.
   *
   * @param note in one line; may be empty
   */
  record Mended(String note) implements GearAct {}

  /**
   * It was replaced by a new one of its kind, which was opened on the day of the act.
   *
   * @param note in one line; may be empty
   * @param goodUntil the last day that is marked on the new one
   */
  record Replaced(String note, Optional<LocalDate> goodUntil) implements GearAct {}
}
