package org.proofcut.core.setup;

import java.util.List;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Scale;

/**
 * What holds for every set-up of a job.
 *
 * @param aids ids of the kinds of work aid at hand
 * @param unit the unit that words are written in; no figure depends on it
 */
public record Conditions(SetupLimits limits, List<String> aids, LengthUnit unit) {

  public Conditions {
    aids = List.copyOf(aids);
  }

  String shown(Length length) {
    return Scale.rule(unit).show(length).text();
  }

  String caliper(Length length) {
    return Scale.caliper(unit).show(length).text();
  }
}
