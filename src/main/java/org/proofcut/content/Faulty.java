package org.proofcut.content;

import java.util.List;
import java.util.stream.Collectors;
import org.proofcut.content.yaml.Fault;
import org.proofcut.core.evidence.Problem;

/** Content that can't be used, with all that is wrong with it. */
public record Faulty(List<Fault> faults) implements Loaded {

  public Faulty {
    faults = List.copyOf(faults);
  }

  public List<Problem> problems() {
    return faults.stream().map(Fault::problem).toList();
  }

  /** For a console: every fault with its line. */
  public String printed() {
    return faults.stream()
        .map(Fault::printed)
        .collect(
            Collectors.joining(
                "\n",
                "The content folder has to be mended (%d):\n\n".formatted(faults.size()),
                ""));
  }
}
