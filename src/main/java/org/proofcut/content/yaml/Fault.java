package org.proofcut.content.yaml;

import org.proofcut.core.evidence.Problem;

/** One thing that is wrong with a file: a {@link Problem} with the line that shows it. */
public record Fault(Spot spot, Problem problem) {

  /** For a console: place, line with a caret under the fault, what, allowed, what to do. */
  public String printed() {
    var shown =
        spot.text().isEmpty()
            ? ""
            : "    " + spot.text() + "\n    " + " ".repeat(spot.column() - 1) + "^\n";
    return """
        %s
        %s  %s
          Allowed: %s
          Do this: %s
        """
        .formatted(spot, shown, problem.what(), problem.allowed(), problem.doThis());
  }
}
