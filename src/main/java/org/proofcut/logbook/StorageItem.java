package org.proofcut.logbook;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * A cabinet for gear, or somebody who takes things out, as typed.
 *
 * @param typed what was typed, by name of the field
 */
public record StorageItem(String id, Sort sort, Map<String, String> typed) {

  /** What there is. */
  public enum Sort {
    CABINET,
    PERSON
  }

  public StorageItem {
    Objects.requireNonNull(id);
    Objects.requireNonNull(sort);
    typed = Collections.unmodifiableMap(new LinkedHashMap<>(typed));
  }
}
