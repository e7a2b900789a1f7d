package org.proofcut.core.intake;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Problem;

/**
 * What came of reading typed text.
 *
 * @param value what it says; empty as soon as anything is wrong
 * @param problems everything that is wrong, at once
 */
public record Read<T>(Optional<T> value, List<Problem> problems) {

  public Read {
    problems = List.copyOf(problems);
  }
}
