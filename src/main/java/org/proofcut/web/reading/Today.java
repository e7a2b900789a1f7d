package org.proofcut.web.reading;

import java.time.LocalDate;
import java.util.Map;

/**
 * When a sheet is read: days make gear unfit, and people take it out.
 *
 * @param out who has a piece and since when, in words, by the ids of those that are not in their
 *     places: {@code with Ash, since yesterday}
 */
public record Today(LocalDate day, Map<String, String> out) {

  public Today {
    out = Map.copyOf(out);
  }
}
