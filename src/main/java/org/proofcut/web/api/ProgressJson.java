package org.proofcut.web.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.proofcut.bench.Work;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.plan.Marks;
import org.proofcut.core.proof.Verdict;
import org.proofcut.core.run.ProofState;
import org.proofcut.core.run.SheetProgress;

/** How far a job is. */
final class ProgressJson {

  private ProgressJson() {}

  /** How far a whole job is. */
  @Schema(name = "Progress")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Whole(
      boolean begun,
      Optional<Integer> revision,
      boolean done,
      @Schema(description = "the sheet that is open; left out when all are signed off")
          Optional<String> current,
      @Schema(description = "what has become wrong since the plan was made")
          List<ProblemDetail.One> problems,
      List<OneSheet> sheets) {}

  /** How far one sheet is. */
  @Schema(name = "SheetProgress")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record OneSheet(
      String id,
      int number,
      @Schema(description = "sent with every act") String fingerprint,
      @Schema(description = "locked, set, before-power, proof, cut, leave-safe or done")
          String stage,
      String lockedBecause,
      @Schema(description = "answers that still count, by item") Map<String, String> answers,
      @Schema(description = "items that have to be confirmed again") List<String> askedAgain,
      @Schema(description = "the figures with all corrections so far")
          List<MachineJson.Figure> figures,
      @Schema(description = "which proof cut this is, from 1") int attempt,
      List<Judged> verdicts,
      Proof proof,
      @Schema(description = "ids of the parts that are cut") List<String> cut,
      boolean held,
      Optional<String> lastAct,
      @Schema(description = "gear to put on that nothing in the shop meets today")
          List<Lacking> lacking,
      @Schema(description = "why an item is gone without, by its id")
          Map<String, String> without) {}

  /** Gear that is asked for and that nothing meets. */
  @Schema(name = "LackingGear")
  record Lacking(
      String item,
      @Schema(description = "the kind with the marks that are needed") String wanted,
      @Schema(description = "why each owned piece does not do") List<String> refused,
      @Schema(description = "whether it rests on law: no reason sets it aside") boolean law) {}

  /** What the readings of one measure say. */
  @Schema(name = "Verdict")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Judged(
      MachineJson.Measured measure,
      List<LengthJson.Plain> found,
      @Schema(description = "more-readings, proven, change, other-cutter or uneven") String outcome,
      Optional<ActJson.Moved> correction,
      @Schema(description = "an angle to change; left out where none is") Optional<Turned> turn) {}

  /** An angle that is changed by a correction. */
  @Schema(name = "Turn")
  record Turned(
      String role,
      @Schema(description = "positive makes the angle larger") String by,
      @Schema(description = "whether that is finer than the machine's steps") boolean betweenMarks,
      List<LengthJson.Line> working) {}

  /** What is known of the proof of a set-up. */
  @Schema(name = "Proof")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Proof(
      @Schema(description = "not-needed, not-yet, proven, read-again-first, overridden or lost")
          String type,
      boolean opensTheCut,
      @Schema(description = "of one overridden or lost") Optional<String> because,
      @Schema(description = "of one lost: what changed in the plan") List<Changed> changed) {}

  /** Something that differs between two set-ups. */
  @Schema(name = "Difference")
  record Changed(String what, String was, String is) {}

  static final Whole NOT_BEGUN =
      new Whole(false, Optional.empty(), false, Optional.empty(), List.of(), List.of());

  static Whole whole(Work work) {
    var unit = work.plan().finished().design().unit();
    var current = work.progress().current();
    return new Whole(
        true,
        Optional.of(work.revision()),
        current.isEmpty(),
        current.map(sheet -> sheet.sheet().id()),
        ProblemDetail.One.all(work.problems()),
        work.progress().sheets().stream().map(sheet -> sheet(sheet, unit)).toList());
  }

  static OneSheet sheet(SheetProgress progress, LengthUnit unit) {
    return new OneSheet(
        progress.sheet().id(),
        progress.sheet().number(),
        progress.sheet().marks().fingerprint(),
        ShopJson.word(progress.stage()),
        progress.lockedBecause(),
        new TreeMap<>(progress.answers()),
        progress.askedAgain().stream().sorted().toList(),
        progress.setup().map(setup -> MachineJson.figures(setup, unit)).orElse(List.of()),
        progress.attempt(),
        progress.verdicts().stream().map(verdict -> judged(verdict, unit)).toList(),
        proof(progress.proof()),
        progress.cut().stream().sorted().toList(),
        progress.held(),
        progress.lastAct().map(Object::toString),
        progress.lacking().stream()
            .map(
                gear ->
                    new Lacking(
                        gear.id(),
                        gear.wanted(),
                        gear.offer()
                            .map(offer -> offer.refused(progress.today()))
                            .orElse(List.of()),
                        gear.law().isPresent()))
            .toList(),
        new TreeMap<>(progress.without()));
  }

  static Judged judged(Verdict verdict, LengthUnit unit) {
    return new Judged(
        MachineJson.measured(verdict.measure(), unit),
        verdict.found().stream().map(one -> LengthJson.plain(one, unit)).toList(),
        ShopJson.word(verdict.outcome()),
        verdict.correction().map(correction -> moved(correction, unit)),
        verdict
            .turn()
            .map(
                turn ->
                    new Turned(
                        ShopJson.word(turn.role()),
                        turn.by().value().toString(),
                        turn.betweenMarks(),
                        LengthJson.working(turn.by(), unit))));
  }

  static List<ActJson.Moved> moved(List<Verdict.Correction> corrections, LengthUnit unit) {
    return corrections.stream().map(correction -> moved(correction, unit)).toList();
  }

  private static ActJson.Moved moved(Verdict.Correction correction, LengthUnit unit) {
    return new ActJson.Moved(
        ShopJson.word(correction.role()), LengthJson.plain(correction.by(), unit));
  }

  private static Proof proof(ProofState state) {
    if (state instanceof ProofState.Overridden overridden) {
      return proof("overridden", state, Optional.of(overridden.reason()), List.of());
    }
    if (state instanceof ProofState.Lost lost) {
      return proof("lost", state, Optional.of(lost.because()), lost.changed());
    }
    if (state instanceof ProofState.NotNeeded) {
      return proof("not-needed", state, Optional.empty(), List.of());
    }
    if (state instanceof ProofState.NotYet) {
      return proof("not-yet", state, Optional.empty(), List.of());
    }
    var type = state instanceof ProofState.Proven ? "proven" : "read-again-first";
    return proof(type, state, Optional.empty(), List.of());
  }

  private static Proof proof(
      String type, ProofState state, Optional<String> because, List<Marks.Difference> changed) {
    return new Proof(
        type,
        state.opensTheCut(),
        because,
        changed.stream().map(one -> new Changed(one.what(), one.was(), one.is())).toList());
  }
}
