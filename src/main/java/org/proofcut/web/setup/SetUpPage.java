package org.proofcut.web.setup;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.proofcut.bench.CutDraft;
import org.proofcut.bench.WorkBench;
import org.proofcut.content.Content;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.intake.CutForm;
import org.proofcut.core.operation.Handling;
import org.proofcut.core.operation.PartCut;
import org.proofcut.core.plan.SinglePlan;
import org.proofcut.core.setup.Measure;
import org.proofcut.core.setup.StackChoice;
import org.proofcut.web.part.FormView;
import org.proofcut.web.reading.GearReads;
import org.proofcut.web.reading.SheetReads;
import org.proofcut.web.reading.Shows;
import org.proofcut.web.reading.Today;
import org.proofcut.web.reading.Verdicts;
import org.proofcut.web.reading.Verdicts.VerdictView;

/**
 * Everything on the page of one cut.
 *
 * @param form with what is wrong with what was entered, or why the shop can't make the cut
 * @param reads the sheet; null while there is none
 * @param gear what to put on and take off first
 * @param together how the gear goes together, and what the law on it means
 * @param stacks the stacks that serve, where one is used: the first is set up
 * @param lies how the piece lies at the machine
 * @param measures what is measured on the proof cut, and what proves it
 * @param verdicts on what was measured so far
 * @param measured whether all of it was
 * @param teaches whether such a proof can show what machine and cutter do
 * @param proof id that this proof is kept under
 * @param fingerprint of the set-up; empty while there is none
 * @param kept whether the last proof was kept just now
 * @param refused why it was not; null where nobody tried
 */
record SetUpPage(
    String kind,
    String title,
    String says,
    FormView form,
    SheetReads reads,
    List<GearReads> gear,
    List<String> together,
    List<Stack> stacks,
    List<String> lies,
    List<Proof> measures,
    List<VerdictView> verdicts,
    boolean measured,
    boolean teaches,
    String proof,
    String fingerprint,
    boolean kept,
    Problem refused) {

  /** One way to stack a stacked cutter: what is on the arbor, and what comes of it. */
  record Stack(String name, String comesTo) {}

  /** What is measured on the proof cut. */
  record Proof(String what, String where, String accepted) {}

  static SetUpPage of(CutForm form, CutDraft draft, Content content, boolean kept, Today today) {
    var wording = content.wording();
    var shows = new Shows(draft.unit());
    var plan = draft.plan();
    var setup = plan.flatMap(one -> one.sheet().operation().setup());
    return new SetUpPage(
        form.kind(),
        form.title(),
        form.says(),
        FormView.of(draft.groups(), draft.typed(), draft.allProblems(), draft.unit()),
        plan.map(one -> SheetReads.of(one.sheet(), setup, wording, shows)).orElse(null),
        plan.map(one -> GearReads.of(one.sheet(), wording, today)).orElse(List.of()),
        plan.map(one -> GearReads.together(one.sheet(), wording)).orElse(List.of()),
        plan.stream()
            .flatMap(one -> one.stacks().stream())
            .map(choice -> stack(choice, shows))
            .toList(),
        plan.map(SetUpPage::lies).orElse(List.of()),
        setup.stream()
            .flatMap(one -> one.measures().stream())
            .map(measure -> proof(measure, shows))
            .toList(),
        verdicts(draft, new Verdicts(shows, content.limits(FitLimits.class))),
        draft.isMeasured(),
        draft.teaches(),
        WorkBench.newEntryId(),
        plan.map(one -> one.sheet().marks().fingerprint()).orElse(""),
        kept,
        null);
  }

  /** The same page with why the proof was not kept. */
  SetUpPage refused(Problem why) {
    return new SetUpPage(
        kind,
        title,
        says,
        form,
        reads,
        gear,
        together,
        stacks,
        lies,
        measures,
        verdicts,
        measured,
        teaches,
        proof,
        fingerprint,
        kept,
        why);
  }

  private static List<VerdictView> verdicts(CutDraft draft, Verdicts verdicts) {
    return draft.verdicts().stream()
        .map(
            verdict ->
                verdicts.of(
                    verdict,
                    draft.plan().orElseThrow().sheet().operation(),
                    draft.setup().orElseThrow()))
        .toList();
  }

  private static Stack stack(StackChoice choice, Shows shows) {
    return new Stack(
        choice.stack().name(),
        "cuts %s; room %s at the thickest reading, %s at the thinnest"
            .formatted(
                shows.fine(choice.cuts().value()),
                shows.fine(choice.room().least()),
                shows.fine(choice.room().most())));
  }

  private static List<String> lies(SinglePlan plan) {
    return plan.sheet().operation().parts().stream()
        .map(PartCut::handling)
        .flatMap(Optional::stream)
        .flatMap(SetUpPage::lies)
        .toList();
  }

  private static Stream<String> lies(Handling handling) {
    return Stream.concat(
        Stream.of(
            sentence(handling.face()),
            sentence(handling.led()),
            sentence(
                handling
                    .end()
                    .orElseGet(() -> handling.leads().words() + " meets the cutter first"))),
        handling.breakout().map(SetUpPage::sentence).stream());
  }

  private static String sentence(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
  }

  private static Proof proof(Measure measure, Shows shows) {
    return new Proof(
        measure.dimension().words(),
        measure.what(),
        shows.fine(measure.accepted().least()) + " to " + shows.fine(measure.accepted().most()));
  }

  public List<Problem> refusals() {
    return refused == null ? List.of() : List.of(refused);
  }

  public String action() {
    return "/setups/" + kind;
  }

  /** Whether there is a set-up to read. */
  public boolean isFound() {
    return reads != null && reads.plan() != null;
  }

  /** Whether the proof cut shows all that it should. */
  public boolean isProven() {
    return measured && verdicts.stream().allMatch(VerdictView::proven);
  }

  public boolean isStopped() {
    return isFound() && !reads.stops().isEmpty();
  }

  /** In one line, for the strip that stays in sight. */
  public String verdict() {
    if (isStopped()) {
      return "Stopped: see why";
    }
    if (isFound()) {
      return Stream.concat(
              reads.figures().stream().map(one -> one.name() + " " + one.figure().text()),
              reads.angles().stream().map(one -> one.name() + " " + one.figure()))
          .reduce((one, other) -> one + " · " + other)
          .orElseThrow();
    }
    return form.undone();
  }
}
