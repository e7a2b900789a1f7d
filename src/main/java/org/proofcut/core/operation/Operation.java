package org.proofcut.core.operation;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.measure.Band;
import org.proofcut.core.method.Choice;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.stock.Sheet;

/**
 * One kind of cut or task, done in one set-up to a batch of parts.
 *
 * @param id stable within the job, such as {@code dado:bottom}
 * @param title what it is, to which parts
 * @param asked what the cut must come to; empty for work without a cutter
 * @param choice with what it is made; empty for work without a cutter
 * @param parts the pieces, in the order they are run
 * @param cutSheets the sheets that are cut into
 * @param enteringSheets the sheets whose parts will go in
 * @param entering thinnest and thickest reading of what goes in; empty where nothing does
 * @param waitsFor ids of operations whose proof this one's size stands on
 */
public record Operation(
    String id,
    OperationKind kind,
    String title,
    Optional<CutAsked> asked,
    Optional<Choice> choice,
    List<PartCut> parts,
    List<Sheet> cutSheets,
    List<Sheet> enteringSheets,
    Optional<Band> entering,
    List<String> waitsFor) {

  public Operation {
    parts = List.copyOf(parts);
    cutSheets = List.copyOf(cutSheets);
    enteringSheets = List.copyOf(enteringSheets);
    waitsFor = List.copyOf(waitsFor);
  }

  /** The set-up, where there is a cutter and one was found. */
  public Optional<Setup> setup() {
    return choice.flatMap(Choice::setup);
  }
}
