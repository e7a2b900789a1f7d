package org.proofcut.core.safety;

import java.util.List;
import java.util.Optional;

/**
 * One thing to look at or touch before going on.
 *
 * @param pause when it is asked
 * @param ask what to look at and where, as a question or an order
 * @param answer the state or value that is right, never "checked" or "OK"
 * @param aids ids of the kinds of work aid that are looked for, each of which will do; empty where
 *     none is
 */
public record Check(Pause pause, String ask, String answer, Optional<List<String>> aids) {

  public Check {
    aids = aids.map(List::copyOf);
  }

  /** Something to look at that is no work aid. */
  public Check(Pause pause, String ask, String answer) {
    this(pause, ask, answer, Optional.empty());
  }

  /** The pauses of an operation. */
  public enum Pause {
    /** Power off: cutter, fence, guard. */
    SET,
    /** Power still off: the machine itself, once while work at it goes on with one cutter. */
    MACHINE,
    /** Gear, clear table, hold-down, push aids. */
    BEFORE_POWER,
    /** Measure, enter, correct. */
    PROOF,
    /** Stopped, isolated, guard back, dust and rags. */
    LEAVE_SAFE
  }
}
