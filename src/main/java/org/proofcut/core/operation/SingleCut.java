package org.proofcut.core.operation;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.proofcut.core.method.Choice;
import org.proofcut.core.method.Methods;
import org.proofcut.core.part.Edge;
import org.proofcut.core.part.PartRole;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.stock.Sheet;

/**
 * One cut in one piece that belongs to no job.
 *
 * @param kind the operation that it would be in a job: its words and its rules hold here too
 * @param title what it is
 * @param stock what is cut
 * @param entering what will go into the cut; empty where nothing does
 * @param sidesOn the edge of both sides of a case that rides the guide; empty for one piece
 */
public record SingleCut(
    OperationKind kind,
    String title,
    CutAsked asked,
    Sheet stock,
    Optional<Sheet> entering,
    Optional<Edge> sidesOn) {

  /** A cut in one piece. */
  public SingleCut(
      OperationKind kind, String title, CutAsked asked, Sheet stock, Optional<Sheet> entering) {
    this(kind, title, asked, stock, entering, Optional.empty());
  }

  /** The cut as an operation on this one piece, with the first machine and cutter that serve. */
  public Operation by(Methods methods) {
    var choice = methods.choose(asked);
    var pieces =
        sidesOn
            .map(
                edge ->
                    List.of(
                        side(PartRole.LEFT_SIDE, "left side", edge, choice),
                        side(PartRole.RIGHT_SIDE, "right side", edge, choice)))
            .orElseGet(
                () ->
                    List.of(
                        new PartCut(
                            "piece",
                            "the piece",
                            Optional.empty(),
                            Handlings.reference(asked),
                            choice.setup().map(Handlings::single))));
    return new Operation(
        kind.id(),
        kind,
        title,
        Optional.of(asked),
        Optional.of(choice),
        pieces,
        List.of(stock),
        entering.stream().toList(),
        entering.map(sheet -> sheet.thickness().ends()),
        List.of());
  }

  private static PartCut side(PartRole role, String name, Edge rides, Choice choice) {
    return new PartCut(
        role.name().toLowerCase(Locale.ROOT).replace('_', '-'),
        name,
        Optional.empty(),
        rides,
        choice.setup().map(setup -> Handlings.boredSide(role, rides, setup)));
  }
}
