package org.proofcut.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.storage.Cabinet;

/**
 * A cabinet for gear, as kept.
 *
 * @param unit of its bare numbers
 * @param job id of the job whose case it is; empty for one that was measured
 * @param cabinet empty while something is wrong: the job is gone, or its design changed
 * @param problems what is wrong, by field
 */
public record GearCabinet(
    String id,
    String name,
    LengthUnit unit,
    Map<String, String> typed,
    Optional<String> job,
    Optional<Cabinet> cabinet,
    List<Problem> problems) {

  public GearCabinet {
    typed = Map.copyOf(typed);
    problems = List.copyOf(problems);
  }
}
