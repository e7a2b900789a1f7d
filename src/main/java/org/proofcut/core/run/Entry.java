package org.proofcut.core.run;

import java.time.Instant;
import java.util.Objects;

/**
 * One line of the record.
 *
 * @param id made where the act happened; sent twice, it is done once
 * @param at when it happened
 * @param device which tablet, as it names itself
 * @param operation id of the operation
 * @param fingerprint of the set-up that it was done with
 */
public record Entry(
    String id, Instant at, String device, String operation, String fingerprint, Act act) {

  public Entry {
    Objects.requireNonNull(id);
    Objects.requireNonNull(at);
    Objects.requireNonNull(device);
    Objects.requireNonNull(operation);
    Objects.requireNonNull(fingerprint);
    Objects.requireNonNull(act);
  }
}
