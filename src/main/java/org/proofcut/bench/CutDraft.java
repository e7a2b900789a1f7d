package org.proofcut.bench;

import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.habit.Observations;
import org.proofcut.core.intake.CutForm;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.plan.SinglePlan;
import org.proofcut.core.proof.Proof;
import org.proofcut.core.proof.Verdict;
import org.proofcut.core.setup.Measure;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.setup.Setup;

/**
 * A single cut as typed, and what it comes to.
 *
 * @param groups its fields, with the machines and cutters that the shop has for it
 * @param unit that figures are shown in
 * @param plan empty while something can't be read
 * @param found what the caliper says of the proof cut, as far as it was entered
 * @param problems what is wrong with what was typed
 */
public record CutDraft(
    List<CutForm.Group> groups,
    Map<String, String> typed,
    LengthUnit unit,
    Optional<SinglePlan> plan,
    Map<Dimension, List<Length>> found,
    List<Problem> problems) {

  public CutDraft {
    groups = List.copyOf(groups);
    typed = Map.copyOf(typed);
    problems = List.copyOf(problems);
  }

  /** The verdicts on what was measured so far; none before the first reading. */
  public List<Verdict> verdicts() {
    return setup().stream()
        .flatMap(setup -> Proof.judge(setup, this::readings).stream())
        .filter(verdict -> !verdict.found().isEmpty())
        .toList();
  }

  /** Whether all that is measured on the proof cut has been; never of a rough cut. */
  public boolean isMeasured() {
    return setup()
        .filter(
            setup ->
                !setup.measures().isEmpty()
                    && setup.measures().stream()
                        .allMatch(measure -> readings(measure).size() >= measure.readings()))
        .isPresent();
  }

  /** Whether a proof of this set-up can show what a machine or cutter does. */
  public boolean teaches() {
    return setup()
        .filter(setup -> !Observations.of("", setup, CutDraft::asWanted, Instant.EPOCH).isEmpty())
        .isPresent();
  }

  private static List<Length> asWanted(Measure measure) {
    return Collections.nCopies(measure.readings(), measure.target().value());
  }

  /** The set-up, where there is one that no rule stops. */
  public Optional<Setup> setup() {
    return isSound() ? plan.flatMap(one -> one.sheet().operation().setup()) : Optional.empty();
  }

  List<Length> readings(Measure measure) {
    return found.getOrDefault(measure.dimension(), List.of());
  }

  /** Whether there is a set-up, and no rule stops it. */
  public boolean isSound() {
    return plan.isPresent() && plan.get().problems().isEmpty() && !plan.get().sheet().isStopped();
  }

  /** All that is wrong: with what was typed, or with the shop. */
  public List<Problem> allProblems() {
    return Stream.concat(problems.stream(), plan.stream().flatMap(one -> one.problems().stream()))
        .toList();
  }
}
