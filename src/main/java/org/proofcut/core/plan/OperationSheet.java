package org.proofcut.core.plan;

import java.util.List;
import java.util.function.UnaryOperator;
import org.proofcut.core.checklist.Checklist;
import org.proofcut.core.checklist.Item;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.safety.Finding;

/**
 * The sheet of one operation.
 *
 * @param number from 1, in the order of work
 * @param findings what the rules say, gravest first
 * @param proofPieces the scrap to prove the set-up on; none where nothing is cut to a size
 * @param marks what the set-up stands on: a proof is lost when any of it changes
 */
public record OperationSheet(
    int number,
    Operation operation,
    List<Finding> findings,
    Checklist checklist,
    List<ProofPiece> proofPieces,
    Marks marks) {

  public OperationSheet {
    findings = List.copyOf(findings);
    proofPieces = List.copyOf(proofPieces);
  }

  public String id() {
    return operation.id();
  }

  OperationSheet with(UnaryOperator<Item> judged) {
    return new OperationSheet(
        number, operation, findings, checklist.with(judged), proofPieces, marks);
  }

  /** Whether a rule stops the operation as planned. */
  public boolean isStopped() {
    return findings.stream().anyMatch(finding -> finding.effect() == Finding.Effect.STOP);
  }

  /** Whether something is cut to a size and so has to be proven. */
  public boolean needsProof() {
    return operation.setup().map(setup -> !setup.measures().isEmpty()).orElse(false);
  }
}
