package org.proofcut.core.run;

import java.util.Map;
import java.util.Optional;
import org.proofcut.core.setup.Setup;

/**
 * What was looked at on a machine while work at it goes on. It holds for the next sheet at the same
 * machine with the same cutter; other work between, another cutter or a long break, and it is
 * looked at again.
 *
 * @param at machine and cutter; empty for work without a machine
 * @param looked the answers that still count, by item
 */
record MachineWork(Optional<At> at, Map<String, Looked> looked) {

  /** No work at any machine. */
  static final MachineWork NONE = new MachineWork(Optional.empty(), Map.of());

  /** A machine with a cutter in it, by their ids. */
  record At(String machine, String cutter) {

    static At of(Setup setup) {
      return new At(setup.machine().id(), setup.cutter().id());
    }
  }

  /** An answer, and the act that gave it. */
  record Looked(String answer, Entry by) {}

  MachineWork {
    looked = Map.copyOf(looked);
  }

  /** What of it holds for a set-up. */
  Map<String, Looked> holdsFor(Optional<Setup> setup) {
    return at.isPresent() && at.equals(setup.map(At::of)) ? looked : Map.of();
  }
}
