package org.proofcut.core.operation;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.method.Methods;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.stock.Sheet;

/**
 * One cut in one piece that belongs to no job.
 *
 * @param kind the operation that it would be in a job: its words and its rules hold here too
 * @param title what it is
 * @param stock what is cut
 * @param entering what will go into the cut; empty where nothing does
 */
public record SingleCut(
    OperationKind kind, String title, CutAsked asked, Sheet stock, Optional<Sheet> entering) {

  /** The cut as an operation on this one piece, with the first machine and cutter that serve. */
  public Operation by(Methods methods) {
    var choice = methods.choose(asked);
    var piece =
        new PartCut(
            "piece",
            "the piece",
            Optional.empty(),
            Handlings.reference(asked),
            choice.setup().map(Handlings::single));
    return new Operation(
        kind.id(),
        kind,
        title,
        Optional.of(asked),
        Optional.of(choice),
        List.of(piece),
        List.of(stock),
        entering.stream().toList(),
        entering.map(sheet -> sheet.thickness().ends()),
        List.of());
  }
}
