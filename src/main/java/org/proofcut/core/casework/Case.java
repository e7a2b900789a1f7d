package org.proofcut.core.casework;

import java.util.List;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.part.Housing;
import org.proofcut.core.part.Part;

/**
 * A case taken apart on paper.
 *
 * @param design what was wanted
 * @param parts every part at its finished size, sides first
 * @param housings every housing in every part
 * @param problems what is wrong with the design; parts and housings are still given where they can
 *     be worked out, so that the drawing can show the fault
 */
public record Case(
    CaseDesign design, List<Part> parts, List<Housing> housings, List<Problem> problems) {

  public Case {
    parts = List.copyOf(parts);
    housings = List.copyOf(housings);
    problems = List.copyOf(problems);
  }

  /**
   * The part with this id.
   *
   * @throws IllegalArgumentException if there is none
   */
  public Part part(String id) {
    return parts.stream()
        .filter(part -> part.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no part " + id));
  }

  /**
   * The housing with this id.
   *
   * @throws IllegalArgumentException if there is none
   */
  public Housing housing(String id) {
    return housings.stream()
        .filter(housing -> housing.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no housing " + id));
  }

  /** The housings cut in a part. */
  public List<Housing> housingsIn(String partId) {
    return housings.stream().filter(housing -> housing.cut().equals(partId)).toList();
  }
}
