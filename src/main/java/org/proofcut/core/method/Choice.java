package org.proofcut.core.method;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.setup.Refusal;
import org.proofcut.core.setup.Setup;

/**
 * The way a cut is made.
 *
 * @param setup the first way that works; empty where none does
 * @param refused every way tried before it, with why it was refused
 */
public record Choice(Optional<Setup> setup, List<Refused> refused) {

  /** A way that was tried and refused. */
  public record Refused(String machine, String cutter, Refusal why) {}

  public Choice {
    refused = List.copyOf(refused);
  }
}
