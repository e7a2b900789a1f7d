package org.proofcut.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.noise.NoiseDay;
import org.proofcut.logbook.JobRecord;

/**
 * The noise of a day as typed so far.
 *
 * @param job whose sheets are done; empty for a day without one
 * @param sheets how many there are
 * @param typed with what is taken where nothing was said
 * @param day as it is typed; as it was planned while something typed can't be read
 * @param problems everything that can't be read, each at its field
 */
public record NoiseDraft(
    Optional<JobRecord> job,
    int sheets,
    Map<String, String> typed,
    NoiseDay day,
    List<Problem> problems) {

  public NoiseDraft {
    problems = List.copyOf(problems);
  }
}
