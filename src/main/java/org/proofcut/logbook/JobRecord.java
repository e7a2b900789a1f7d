package org.proofcut.logbook;

import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * A job as typed.
 *
 * @param typed what was typed, by name of the field
 * @param changed when it was last changed by a person
 * @param demo whether it came with the program, to walk through and throw away
 */
public record JobRecord(
    String id, Map<String, String> typed, Instant created, Instant changed, boolean demo) {

  public JobRecord {
    Objects.requireNonNull(id);
    typed = Collections.unmodifiableMap(new LinkedHashMap<>(typed));
    Objects.requireNonNull(created);
    Objects.requireNonNull(changed);
  }
}
