package org.proofcut.web.handwork;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proofcut.bench.HandDraft;
import org.proofcut.core.checklist.Item;
import org.proofcut.core.checklist.Wording;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.intake.HandForm;
import org.proofcut.core.plan.OperationSheet;
import org.proofcut.core.safety.Check.Pause;
import org.proofcut.web.part.Asked;
import org.proofcut.web.part.FormView;
import org.proofcut.web.part.WorkingLine;
import org.proofcut.web.reading.AidReads;
import org.proofcut.web.reading.GearReads;
import org.proofcut.web.reading.SheetReads;
import org.proofcut.web.reading.Shows;
import org.proofcut.web.reading.Today;

/**
 * Everything on the page of one task without a cutter.
 *
 * @param reads the sheet; null while there is none
 * @param figures what was worked out
 * @param gear what to put on and take off first
 * @param ready what to look at first
 * @param before what to look at before the work begins
 * @param leave what to look at when it is left
 * @param steps what is done, in order
 */
record HandPage(
    String kind,
    String title,
    String says,
    FormView form,
    SheetReads reads,
    List<Figure> figures,
    List<GearReads> gear,
    List<Look> ready,
    List<Look> before,
    List<Look> leave,
    List<String> steps) {

  /** Something worked out. */
  record Figure(String name, String value, List<WorkingLine> working) {}

  /** One thing to look at, and where the aids are that it is about. */
  record Look(String ask, String answer, List<String> where) {}

  static HandPage of(HandForm form, HandDraft draft, Wording wording, Today today) {
    var shows = new Shows(draft.unit());
    var sheet = draft.plan().map(one -> one.sheet());
    return new HandPage(
        form.kind(),
        form.title(),
        form.says(),
        form(draft),
        sheet.map(one -> SheetReads.of(one, Optional.empty(), wording, shows)).orElse(null),
        draft.task().stream()
            .flatMap(task -> task.figures().stream())
            .map(worked -> figure(worked, shows))
            .toList(),
        sheet.map(one -> GearReads.of(one, wording, today)).orElse(List.of()),
        looks(sheet, Pause.SET, today),
        looks(sheet, Pause.BEFORE_POWER, today),
        looks(sheet, Pause.LEAVE_SAFE, today),
        sheet
            .map(one -> wording.operations().get(one.operation().kind().id()).steps())
            .orElse(List.of()));
  }

  private static FormView form(HandDraft draft) {
    var asks =
        draft.fields().stream()
            .map(field -> Asked.of(field, draft.typed(), draft.problems(), draft.unit()))
            .toList();
    return FormView.of(
        List.of(new FormView.Group("asked", "What is to be done", asks)),
        draft.typed(),
        draft.problems());
  }

  private static Figure figure(Worked<?> worked, Shows shows) {
    return new Figure(
        worked.name(), String.valueOf(worked.value()), WorkingLine.of(worked, shows.caliper()));
  }

  private static List<Look> looks(Optional<OperationSheet> sheet, Pause pause, Today today) {
    return sheet.stream()
        .flatMap(one -> one.checklist().at(pause).stream())
        .filter(Item.Look.class::isInstance)
        .map(Item.Look.class::cast)
        .map(look -> new Look(look.ask(), look.answer(), AidReads.of(look, today).lines()))
        .toList();
  }

  public String action() {
    return "/hand-work/" + kind;
  }

  public boolean isFound() {
    return reads != null;
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
      var cautions = reads.cautions().count();
      return Stream.concat(
              Stream.of(cautions == 1 ? "1 caution" : cautions + " cautions"),
              figures.stream().map(Figure::value))
          .collect(Collectors.joining(" · "));
    }
    return form.undone();
  }
}
