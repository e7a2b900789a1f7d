package org.proofcut.web.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.proofcut.bench.OutOfPlace;
import org.proofcut.bench.Work;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.run.ProofState;
import org.proofcut.core.run.SheetProgress;
import org.proofcut.web.reading.Shows;

/**
 * All sheets of a job, in order.
 *
 * @param out what is out of its place, where the job is done and things go back; else none
 */
record SheetList(
    String job,
    String jobName,
    List<Row> rows,
    Integer openNumber,
    String openTitle,
    int done,
    List<String> lengths,
    List<String> proofPieces,
    List<OutOfPlace> out,
    List<Problem> problems) {

  /** Its own address. */
  public String address() {
    return "/jobs/" + job + "/sheets";
  }

  /** One sheet. */
  record Row(
      int number,
      String title,
      String machine,
      String state,
      String shape,
      boolean open,
      List<String> notes) {}

  static SheetList of(Work work, Shows shows, List<OutOfPlace> out) {
    var rows = work.progress().sheets().stream().map(SheetList::row).toList();
    var open = work.progress().current();
    return new SheetList(
        work.job().id(),
        work.plan().designed().design().name(),
        rows,
        open.map(one -> one.sheet().number()).orElse(null),
        open.map(one -> one.sheet().operation().title()).orElse(null),
        (int) work.progress().sheets().stream().filter(SheetProgress::isDone).count(),
        lengths(work, shows),
        proofPieces(work, shows),
        open.isEmpty() ? out : List.of(),
        work.problems());
  }

  private static Row row(SheetProgress progress) {
    var operation = progress.sheet().operation();
    return new Row(
        progress.sheet().number(),
        operation.title(),
        operation.setup().map(setup -> setup.machine().name()).orElse("by hand"),
        state(progress),
        shape(progress),
        progress.isOpen(),
        notes(progress));
  }

  /** Gear that is lacking, and gear that is gone without. */
  private static List<String> notes(SheetProgress progress) {
    return Stream.concat(
            progress.lacking().stream().map(gear -> "Not in the shop: " + gear.wanted()),
            progress.workedWithout().stream()
                .map(
                    gear ->
                        "Without "
                            + gear.kindName()
                            + ", because "
                            + progress.without().get(gear.id())))
        .toList();
  }

  private static String state(SheetProgress progress) {
    return switch (progress.stage()) {
      case LOCKED -> progress.sheet().isStopped() ? "stopped by a rule" : "not open yet";
      case SET ->
          progress.proof() instanceof ProofState.Lost ? "proof lost, set again" : "to be set";
      case MACHINE -> "the machine itself";
      case BEFORE_POWER -> "before power";
      case PROOF -> "to be proven";
      case CUT -> "parts to cut";
      case LEAVE_SAFE -> "to be left safe";
      case DONE -> "signed off";
    };
  }

  private static String shape(SheetProgress progress) {
    return switch (progress.stage()) {
      case DONE -> "shape-done";
      case LOCKED -> progress.sheet().isStopped() ? "shape-stop" : "shape-open";
      case SET, MACHINE, BEFORE_POWER, PROOF, CUT, LEAVE_SAFE -> "shape-now";
    };
  }

  /** Where a proof moved a final length: what was designed and what it is now. */
  private static List<String> lengths(Work work, Shows shows) {
    var moved = new ArrayList<String>();
    for (var part : work.plan().finished().parts()) {
      var designed = work.plan().designed().part(part.id()).length().value();
      var now = part.length().value();
      if (!designed.equals(now)) {
        moved.add(
            "The "
                + part.name()
                + " was designed "
                + shows.fine(designed)
                + " long and is now cut to "
                + shows.fine(now)
                + ", because its housings were proven at another depth.");
      }
    }
    return moved;
  }

  private static List<String> proofPieces(Work work, Shows shows) {
    return work.plan().sheets().stream()
        .flatMap(
            sheet ->
                sheet.proofPieces().stream()
                    .map(
                        piece ->
                            "Sheet "
                                + sheet.number()
                                + ": "
                                + piece.sheet()
                                + ", at least "
                                + shows.text(piece.alongGuide())
                                + " × "
                                + shows.text(piece.acrossGuide())
                                + ", "
                                + piece.purpose()))
        .toList();
  }
}
