package org.proofcut.core.run;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.casework.ProvenDepths;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.plan.Marks;
import org.proofcut.core.plan.Plan;
import org.proofcut.core.setup.Measure.Dimension;

/**
 * How far a job is: worked out from its plan and the record, whenever it is asked.
 *
 * @param sheets one for each sheet of the plan, in order
 */
public record Progress(List<SheetProgress> sheets) {

  /** After a pause this long, gear and what comes before power are asked again (our choice). */
  public static final Duration INTERRUPTION = Duration.ofMinutes(10);

  /** After a break this long, work at a machine begins anew (our choice). */
  public static final Duration BREAK = Duration.ofMinutes(60);

  public Progress {
    sheets = List.copyOf(sheets);
  }

  /**
   * What a record comes to.
   *
   * @param earlier marks of set-ups of earlier plans of the job, by their fingerprint
   * @param entries in the order they were recorded
   * @param zone tells where one day ends
   */
  public static Progress of(
      Plan plan, Map<String, Marks> earlier, List<Entry> entries, Instant now, ZoneId zone) {
    var sheets = new ArrayList<SheetProgress>();
    var clock = new BenchClock(entries, now, zone);
    String blockedBy = "";
    var machineWork = MachineWork.NONE;
    for (var sheet : plan.sheets()) {
      var own = entries.stream().filter(entry -> entry.operation().equals(sheet.id())).toList();
      var reader = new SheetReader(sheet, earlier, own, clock, machineWork);
      var progress = reader.read(blockedBy);
      machineWork = reader.machineWork();
      sheets.add(progress);
      if (blockedBy.isEmpty() && !progress.isDone()) {
        blockedBy = "Sheet " + sheet.number() + " is not signed off yet";
      }
    }
    return new Progress(sheets);
  }

  /** The first sheet that is not signed off; empty when the job is done. */
  public Optional<SheetProgress> current() {
    return sheets.stream().filter(sheet -> !sheet.isDone()).findFirst();
  }

  /** The sheet of an operation. */
  public Optional<SheetProgress> sheet(String operation) {
    return sheets.stream().filter(one -> one.sheet().id().equals(operation)).findFirst();
  }

  /** Depths that proof cuts have found, for the final lengths. */
  public ProvenDepths provenDepths() {
    var depths = new HashMap<String, Worked<Length>>();
    for (var progress : sheets) {
      var operation = progress.sheet().operation();
      boolean decidesLength =
          operation.kind() == OperationKind.RABBET || operation.kind() == OperationKind.DADO;
      if (decidesLength && progress.proof() instanceof ProofState.Proven
          || decidesLength && progress.proof() instanceof ProofState.ReadAgainFirst) {
        provenDepth(progress)
            .ifPresent(
                depth -> {
                  var entering = operation.id().substring(operation.id().indexOf(':') + 1);
                  for (var part : operation.parts()) {
                    depths.put(part.id() + ":" + entering, depth);
                  }
                });
      }
    }
    return new ProvenDepths(depths);
  }

  private static Optional<Worked<Length>> provenDepth(SheetProgress progress) {
    return progress.verdicts().stream()
        .filter(verdict -> verdict.measure().dimension() == Dimension.DEPTH)
        .findFirst()
        .map(
            verdict ->
                Worked.measured(
                    "depth that the proof cut of sheet " + progress.sheet().number() + " found",
                    Length.mean(verdict.found(), Length.ofMicrometres(10), Rounding.NEAREST)));
  }
}
