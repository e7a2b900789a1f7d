package org.proofcut.core.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.proofcut.core.casework.Case;
import org.proofcut.core.casework.CaseFigure;
import org.proofcut.core.checklist.Item;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.operation.OperationKind;

/**
 * A job worked out to its last sheet.
 *
 * @param designed the case as designed
 * @param finished the case with the depths that proof cuts have found
 * @param sheets the operation sheets in order; none while the design has problems that stop
 * @param problems all that is wrong with design, shop and sheets
 */
public record Plan(
    Case designed, Case finished, List<OperationSheet> sheets, List<Problem> problems) {

  public Plan {
    sheets = List.copyOf(sheets);
    problems = List.copyOf(problems);
  }

  /** The sheet of an operation, if this plan has it. */
  public Optional<OperationSheet> sheet(String operationId) {
    return sheets.stream().filter(sheet -> sheet.id().equals(operationId)).findFirst();
  }

  /** The sheet with this number, if there is one. */
  public Optional<OperationSheet> sheet(int number) {
    return number >= 1 && number <= sheets.size()
        ? Optional.of(sheets.get(number - 1))
        : Optional.empty();
  }

  /** What is measured or struck on the case itself in an operation; nothing where a cutter runs. */
  public List<CaseFigure> caseFigures(OperationSheet sheet) {
    var kind = sheet.operation().kind();
    if (kind.cuts()) {
      return List.of();
    }
    return kind == OperationKind.DRY_FIT
        ? CaseFigure.outside(finished)
        : CaseFigure.screwLines(finished);
  }

  /** The plan with every item of its checklists as it is judged later. */
  public Plan with(UnaryOperator<Item> judged) {
    return new Plan(
        designed, finished, sheets.stream().map(sheet -> sheet.with(judged)).toList(), problems);
  }

  /** Whether work can begin. */
  public boolean isSound() {
    return !sheets.isEmpty() && !Problem.anyStops(problems);
  }
}
