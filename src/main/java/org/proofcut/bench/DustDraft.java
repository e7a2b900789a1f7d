package org.proofcut.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.content.Region;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.exposure.DustAnswer;
import org.proofcut.core.exposure.Wood;
import org.proofcut.core.intake.DustForm;
import org.proofcut.core.measure.LengthUnit;

/**
 * A question about dust as typed, and what it comes to.
 *
 * @param job name of the job that tells its woods; empty where none was named
 * @param ofJob those woods
 * @param answer empty while something can't be read
 */
public record DustDraft(
    List<DustForm.Group> groups,
    Map<String, String> typed,
    LengthUnit unit,
    Region region,
    Optional<String> job,
    List<Wood> ofJob,
    Optional<DustAnswer> answer,
    List<Problem> problems) {

  public DustDraft {
    groups = List.copyOf(groups);
    typed = Map.copyOf(typed);
    ofJob = List.copyOf(ofJob);
    problems = List.copyOf(problems);
  }
}
