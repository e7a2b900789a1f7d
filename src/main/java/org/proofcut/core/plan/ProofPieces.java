package org.proofcut.core.plan;

import java.util.ArrayList;
import java.util.List;
import org.proofcut.core.measure.Length;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.operation.OperationLimits;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.shop.KnifeMachine;

/** The scrap that a set-up is proven on: large enough to be held safely and measured. */
final class ProofPieces {

  private ProofPieces() {}

  static List<ProofPiece> of(Operation operation, OperationLimits limits) {
    var needsProof = operation.setup().map(setup -> !setup.measures().isEmpty()).orElse(false);
    if (!needsProof) {
      return List.of();
    }
    if (operation.asked().orElseThrow() instanceof CutAsked.Mitre mitre) {
      return mitred(operation, mitre, limits.proofPieceLength().value());
    }
    if (operation.asked().orElseThrow() instanceof CutAsked.Tapered tapered) {
      return tapered(operation, tapered);
    }
    var along = along(operation.asked().orElseThrow(), limits);
    var beyond = limits.proofPieceBeyond().value();
    var pieces = new ArrayList<ProofPiece>();
    for (var sheet : operation.cutSheets()) {
      pieces.add(
          new ProofPiece(
              sheet.name(),
              along.max(shortest(operation)),
              reach(operation.asked().orElseThrow()).plus(beyond),
              "to cut, with one square edge against the guide"));
    }
    for (var sheet : operation.enteringSheets()) {
      pieces.add(
          new ProofPiece(sheet.name(), along, beyond, "to try in the cut, from the same sheet"));
    }
    return pieces;
  }

  /** Long enough to hold; the first hole of a row stands as far from its end as in the piece. */
  private static Length along(CutAsked asked, OperationLimits limits) {
    var least = limits.proofPieceLength().value();
    return asked instanceof CutAsked.Bored bored
        ? least.max(bored.row().first().value().plus(limits.proofPieceBeyond().value()))
        : least;
  }

  /** As wide as the piece, or the cut would not run in as far. */
  private static List<ProofPiece> mitred(
      Operation operation, CutAsked.Mitre asked, Length atLeast) {
    return operation.cutSheets().stream()
        .map(
            sheet ->
                new ProofPiece(
                    sheet.name(),
                    atLeast.max(asked.size().value()),
                    asked.width().value(),
                    "to cut, just as wide as the piece, its first end square"))
        .toList();
  }

  /** As wide as the piece and no shorter than the run, or the stops would not hold it so. */
  private static List<ProofPiece> tapered(Operation operation, CutAsked.Tapered asked) {
    return operation.cutSheets().stream()
        .map(
            sheet ->
                new ProofPiece(
                    sheet.name(),
                    asked.work().alongGuide().least(),
                    asked.wide(),
                    asked.second()
                        ? "to cut, the one whose first edge is proven"
                        : "to cut, as long and as wide as the piece, its narrow end square"))
        .toList();
  }

  /** How far from the guide the cut ends. */
  private static Length reach(CutAsked asked) {
    if (asked instanceof CutAsked.Slot slot) {
      return slot.distance().value().plus(slot.width().value());
    }
    if (asked instanceof CutAsked.Rabbet rabbet) {
      return rabbet.width().value();
    }
    if (asked instanceof CutAsked.Tongue tongue) {
      return tongue.length().value();
    }
    if (asked instanceof CutAsked.EdgeProfile profile) {
      return profile.width().value();
    }
    if (asked instanceof CutAsked.TemplateRecess recess) {
      return recess.width().value();
    }
    if (asked instanceof CutAsked.EdgeTrim trim) {
      return trim.now().value().minus(trim.size().value());
    }
    if (asked instanceof CutAsked.CentredGroove groove) {
      return groove.work().acrossGuide().most();
    }
    if (asked instanceof CutAsked.Bored bored) {
      return bored.row().fromEdge().value();
    }
    if (asked instanceof CutAsked.Bevel bevel) {
      return bevel.widest();
    }
    if (asked instanceof CutAsked.Step step) {
      return step.width().value();
    }
    if (asked instanceof CutAsked.Strips strips) {
      return strips.work().acrossGuide().most();
    }
    if (asked instanceof CutAsked.Jointing || asked instanceof CutAsked.Planing) {
      return Length.ZERO;
    }
    return ((CutAsked.Parting) asked).size().value();
  }

  /** Knives want a longer piece than a fence does. */
  private static Length shortest(Operation operation) {
    return operation.setup().orElseThrow().machine() instanceof KnifeMachine knives
        ? knives.shortestWork()
        : Length.ZERO;
  }
}
