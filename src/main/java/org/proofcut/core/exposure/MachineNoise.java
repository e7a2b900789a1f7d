package org.proofcut.core.exposure;

import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;

/**
 * How loud a kind of machine is at the ear of who works it, where nobody has measured it. From
 * {@code content/exposure/levels.yaml}.
 *
 * @param id kind of machine, or {@code extractor}
 * @param name what it is called in a working
 * @param least quiet end of what is measured, in dBA
 * @param most loud end, which is used
 */
public record MachineNoise(String id, String name, Amount least, Amount most, Citation because) {

  public MachineNoise {
    if (!least.unit().equals("dBA") || !most.unit().equals("dBA")) {
      throw new IllegalArgumentException("a level of " + id + " is not in dBA");
    }
    if (least.value().compareTo(most.value()) > 0) {
      throw new IllegalArgumentException(id + " is louder at its quiet end than at its loud one");
    }
  }

  /** The loud end. */
  public Worked<Amount> level() {
    return Worked.given(
        "level of a " + name + ", loud end of " + least.value().toPlainString() + " to " + most,
        most,
        because);
  }
}
