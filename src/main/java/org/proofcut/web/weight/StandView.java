package org.proofcut.web.weight;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.proofcut.bench.StandDraft;
import org.proofcut.core.drawing.CaseOnFeet;
import org.proofcut.core.drawing.Picture;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.ClothingStorage;
import org.proofcut.core.measure.Length;
import org.proofcut.core.weight.CaseOnFloor;
import org.proofcut.core.weight.CaseOnFloor.State;
import org.proofcut.logbook.JobRecord;
import org.proofcut.web.part.FormView;
import org.proofcut.web.part.WorkingLine;

/**
 * Everything on the page of a finished case that stands free.
 *
 * @param states each way in which it is met with, the worst first
 * @param body its own weight and middle of gravity
 * @param compared its sizes against those of a standard for clothing storage
 */
record StandView(
    String job,
    String name,
    FormView form,
    String verdict,
    String shape,
    List<StateView> states,
    List<Figure> body,
    List<Figure> compared,
    boolean asLarge,
    String standard,
    Picture wide,
    Picture narrow) {

  /**
   * One way in which it is met with.
   *
   * @param says what comes of it
   */
  record StateView(String words, boolean tips, String says, List<WorkingLine> working) {}

  /** A figure that opens to its working. */
  record Figure(String name, String text, List<WorkingLine> working) {}

  private static final int WIDE = 600;
  private static final int NARROW = 350;

  static StandView of(JobRecord job, StandDraft draft) {
    var weighs = new Weighs(draft.unit());
    var form = FormView.of(draft.groups(), draft.typed(), draft.problems(), draft.unit());
    var floor = draft.onFloor();
    var worst = floor.map(CaseOnFloor::worst);
    return new StandView(
        job.id(),
        draft.made().design().name(),
        form,
        worst.map(StandView::verdict).orElseGet(form::undone),
        worst
            .map(one -> one.standing().tips() ? "shape-stop" : "shape-now")
            .orElseGet(form::undoneShape),
        floor.stream()
            .flatMap(one -> one.states().stream())
            .sorted(
                Comparator.comparing((State state) -> state.standing().margin().value().value()))
            .map(state -> state(state, floor.orElseThrow(), weighs))
            .toList(),
        List.of(
            new Figure(
                "Its own weight",
                weighs.band(draft.body().weight()),
                lines(draft.body().weight().most(), weighs)),
            new Figure(
                "Middle of gravity, behind the front edges",
                weighs.length(draft.body().behind().value()),
                lines(draft.body().behind(), weighs)),
            new Figure(
                "Middle of gravity, above the floor",
                weighs.length(draft.body().high().value()),
                lines(draft.body().high(), weighs))),
        floor.map(one -> compared(one.comparedInSize(), weighs)).orElse(List.of()),
        floor.map(one -> one.comparedInSize().isAsLarge()).orElse(false),
        ClothingStorage.SCOPE.text(),
        CaseOnFeet.of(
            draft.made(),
            draft.body().behind().value(),
            draft.body().high().value(),
            draft.unit(),
            WIDE),
        CaseOnFeet.of(
            draft.made(),
            draft.body().behind().value(),
            draft.body().high().value(),
            draft.unit(),
            NARROW));
  }

  public String action() {
    return "/jobs/" + job + "/standing";
  }

  private static String verdict(State worst) {
    return worst.standing().tips()
        ? "It tips: " + worst.words()
        : "It stands in every way reckoned with here. Fasten it all the same";
  }

  private static StateView state(State state, CaseOnFloor floor, Weighs weighs) {
    var standing = state.standing();
    var margin = standing.margin();
    if (standing.tips()) {
      return new StateView(
          state.words(),
          true,
          "it tips: %s short".formatted(weighs.turning(margin.value()).replace("-", "")),
          lines(margin, weighs));
    }
    var top = Worked.entered("height of the case", floor.outside().height());
    var more = standing.morePull(top);
    return new StateView(
        state.words(),
        false,
        "%s left; a further pull of %s at its top tips it"
            .formatted(weighs.turning(margin.value()), weighs.atLeast(more.value())),
        lines(more, weighs));
  }

  private static List<Figure> compared(ClothingStorage size, Weighs weighs) {
    return Stream.of(
            new Figure(
                "Height, against " + limit(0, weighs),
                weighs.length(size.height().value()) + reaches(size.isHigh()),
                lines(size.height(), weighs)),
            new Figure(
                "Weight when empty, against " + limit(1, weighs),
                weighs.text(size.weight().value()) + reaches(size.isHeavy()),
                lines(size.weight(), weighs)),
            new Figure(
                "Closed space, if doors close all of it, against " + limit(2, weighs),
                size.volume().value() + reaches(size.isRoomy()),
                lines(size.volume(), weighs)))
        .toList();
  }

  private static String limit(int which, Weighs weighs) {
    return ClothingStorage.limits().get(which).value() instanceof Length length
        ? weighs.length(length)
        : String.valueOf(ClothingStorage.limits().get(which).value());
  }

  private static String reaches(boolean reached) {
    return reached ? ", reaches it" : ", below it";
  }

  private static List<WorkingLine> lines(Worked<?> worked, Weighs weighs) {
    return WorkingLine.of(worked, weighs.scale());
  }
}
