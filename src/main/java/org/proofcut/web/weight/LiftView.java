package org.proofcut.web.weight;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.proofcut.bench.LiftDraft;
import org.proofcut.bench.LoadDesk;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.Lift.NotCovered;
import org.proofcut.core.exposure.LiftLimits;
import org.proofcut.core.exposure.LiftTask;
import org.proofcut.core.exposure.LiftTask.Judged;
import org.proofcut.core.exposure.LiftTask.Strain;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.weight.PartAtTheSaw;
import org.proofcut.web.part.FormView;
import org.proofcut.web.part.LiveForm;
import org.proofcut.web.part.WorkingLine;

/**
 * Everything on the page of a lift.
 *
 * @param job of the part that it began with; empty where it began with none
 * @param part that part
 * @param of where its weight comes from; null where it was typed
 * @param weight what is lifted; empty while something can't be read
 * @param verdict in one line
 * @param shape that says the same
 * @param ends each judged end; none while there is no figure
 * @param hurts which multiplier takes away most; null while there is no figure
 * @param better what could be done otherwise
 * @param reasons why there is no figure, where the equation was not made for such a lift
 * @param instead what to do then
 * @param guess how far out the hands are, while nobody measured; null where somebody did
 */
record LiftView(
    FormView form,
    String job,
    String part,
    Opened of,
    String weight,
    String verdict,
    String shape,
    List<EndView> ends,
    String hurts,
    List<BetterView> better,
    List<String> reasons,
    List<String> instead,
    Guess guess) {

  /** A figure that opens to its working. */
  record Opened(String name, String figure, List<WorkingLine> working) {}

  /** One end of the way. */
  record EndView(
      String title,
      String most,
      String index,
      boolean decides,
      List<WorkingLine> multipliers,
      List<WorkingLine> working) {}

  /** One thing done otherwise. */
  record BetterView(String change, String then) {}

  /** An estimate, and the address that enters it. */
  record Guess(Opened out, String href) {}

  static LiftView of(LiftDraft draft, LiftLimits limits) {
    var unit = draft.unit();
    var weighs = new Weighs(unit);
    var form = FormView.of(draft.groups(), draft.typed(), draft.problems(), unit);
    var decides = draft.task().flatMap(task -> task.decides(unit));
    var notCovered = draft.task().map(LiftTask::notCovered).orElse(List.of());
    return new LiftView(
        form,
        draft.part().map(any -> draft.typed().getOrDefault(LoadDesk.JOB, "")).orElse(""),
        draft.part().map(one -> one.part().id()).orElse(""),
        draft.part().map(one -> weightOf(one, weighs)).orElse(null),
        draft.task().map(task -> weighs.text(task.weight().value())).orElse(""),
        verdict(draft, form, decides.map(Judged::strain).orElse(null)),
        shape(draft, form, decides.map(Judged::strain).orElse(null)),
        draft.task().stream()
            .flatMap(task -> task.judged(unit).stream())
            .map(one -> end(one, decides.orElseThrow().end() == one.end(), weighs))
            .toList(),
        decides.map(one -> hurts(one, unit)).orElse(null),
        draft.task().stream()
            .flatMap(task -> task.better(unit).stream())
            .map(
                one ->
                    new BetterView(
                        one.change(), one.then().most().value() + ": " + index(one.then())))
            .toList(),
        reasons(notCovered, draft, limits, weighs),
        draft
            .task()
            .filter(task -> !task.notCovered().isEmpty())
            .map(task -> task.instead(unit))
            .orElse(List.of()),
        draft.estimatedOut().map(out -> guess(out, draft, weighs)).orElse(null));
  }

  private static Opened weightOf(PartAtTheSaw one, Weighs weighs) {
    var most = one.weight().most();
    return opened(
        "The " + one.part().name() + ", at most", weighs.text(most.value()), most, weighs);
  }

  private static Guess guess(Worked<Length> out, LiftDraft draft, Weighs weighs) {
    return new Guess(
        opened("Hands out, estimated", weighs.length(out.value()), out, weighs),
        with(draft.typed(), "out", out.value().toString()));
  }

  private static String shape(LiftDraft draft, FormView form, Strain strain) {
    if (draft.task().isEmpty()) {
      return form.undoneShape();
    }
    return strain == Strain.WITHIN ? "shape-done" : "shape-stop";
  }

  private static String verdict(LiftDraft draft, FormView form, Strain strain) {
    if (draft.task().isEmpty()) {
      return draft.tooLarge() ? "Too large for a figure; " + form.undone() : form.undone();
    }
    return strain == null ? "No figure for this: see what to do instead" : strain.words();
  }

  private static EndView end(Judged one, boolean decides, Weighs weighs) {
    var unit = weighs.unit();
    return new EndView(
        "Recommended as most, " + one.end().words(),
        one.most().value().text(),
        index(one),
        decides,
        one.lift().multipliers(unit).stream().map(each -> printed(each, weighs)).toList(),
        WorkingLine.of(one.index().isPresent() ? one.index().get() : one.most(), weighs.scale()));
  }

  private static String index(Judged one) {
    return one.index()
        .map(index -> "lifting index " + index.value().toPlainString())
        .orElse("nothing is to be lifted so");
  }

  /** Its own line, with the multiplier to two places as the equation's tables print it. */
  private static WorkingLine printed(Worked<BigDecimal> multiplier, Weighs weighs) {
    var lines = WorkingLine.of(multiplier, weighs.scale());
    var last = lines.get(lines.size() - 1);
    return new WorkingLine(
        last.name(),
        last.formula(),
        last.inputs(),
        multiplier.value().setScale(2, RoundingMode.HALF_UP).toPlainString(),
        last.source());
  }

  private static String hurts(Judged one, LengthUnit unit) {
    var least =
        one.lift().multipliers(unit).stream()
            .min(Comparator.comparing(Worked::value))
            .orElseThrow();
    return least.value().compareTo(BigDecimal.ONE) < 0
        ? "The " + least.name() + " takes away most."
        : "Nothing takes anything away.";
  }

  private static List<String> reasons(
      List<NotCovered> notCovered, LiftDraft draft, LiftLimits limits, Weighs weighs) {
    var reasons = new ArrayList<String>();
    if (draft.tooLarge()) {
      reasons.add(
          "longer than %s, or more than %s outward: too large for one person to hold steady (%s)"
              .formatted(
                  weighs.length(limits.longestHeld().value()),
                  weighs.length(limits.deepestHeld().value()),
                  limits.longestHeld().source().text()));
    }
    notCovered.stream()
        .filter(one -> !(one == NotCovered.UNSTABLE && draft.tooLarge()))
        .map(NotCovered::words)
        .forEach(reasons::add);
    return reasons;
  }

  private static Opened opened(String name, String figure, Worked<?> worked, Weighs weighs) {
    return new Opened(name, figure, WorkingLine.of(worked, weighs.scale()));
  }

  private static String with(Map<String, String> typed, String field, String text) {
    var all = new LinkedHashMap<>(typed);
    all.put(field, text);
    return LiveForm.address("/lifting", all);
  }
}
