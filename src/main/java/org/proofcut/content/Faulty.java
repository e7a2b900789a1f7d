package org.proofcut.content;

import java.util.List;
import java.util.stream.Collectors;
import org.proofcut.content.yaml.Fault;
import org.proofcut.content.yaml.Faults;
import org.proofcut.content.yaml.Spot;
import org.proofcut.core.evidence.Problem;

/**
 * Content that can't be used, with what is wrong with it.
 *
 * @param faults the first of them
 * @param more how many there are besides
 */
public record Faulty(List<Fault> faults, int more) implements Loaded {

  public Faulty {
    faults = List.copyOf(faults);
  }

  /** What is wrong with all of it and stands in no line. */
  public static Faulty inAll(String what, String allowed, String doThis) {
    var faults = new Faults();
    faults.add(Spot.of("."), what, allowed, doThis);
    return new Faulty(faults.all(), faults.more());
  }

  /** How many faults there are. */
  public int count() {
    return faults.size() + more;
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
                "The content folder has to be mended (%d):\n\n".formatted(faults.size() + more),
                more > 0 ? "\nand %d more\n".formatted(more) : ""));
  }
}
