package org.proofcut.web.storage;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.proofcut.bench.CabinetDraft;
import org.proofcut.bench.PlannedCabinet;
import org.proofcut.core.drawing.CabinetElevation;
import org.proofcut.core.drawing.Picture;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.CabinetForm;
import org.proofcut.core.storage.StoragePlan;
import org.proofcut.web.part.Asked;
import org.proofcut.web.part.FormView;
import org.proofcut.web.storage.PlanView.Drawn;

/**
 * Everything on the page of a cabinet as it is typed.
 *
 * @param id of the cabinet that is changed; empty for a new one
 * @param job of which it is the case; empty for one that was measured
 * @param drawn null while something can't be read
 * @param places what would live where
 * @param refused why it was not kept; empty where nobody tried
 * @param fresh what the fields begin with that is not kept yet
 */
record CabinetView(
    String id,
    String title,
    String job,
    FormView form,
    String verdict,
    String shape,
    Drawn drawn,
    List<PlanView.PlaceRow> places,
    List<PlanView.Left> without,
    List<Problem> refused,
    Fresh fresh) {

  /** Sent by the button that takes a fitting out: what the names of its fields begin with. */
  private static final String WITHOUT = "without";

  private static final String FITTING = "fitting-[0-9]+";

  /**
   * What the fields begin with that is not kept yet.
   *
   * @param says in a sentence; empty where they begin with what is kept
   * @param changed the fields that say something else than what is kept
   */
  record Fresh(String says, List<Changed> changed) {

    static final Fresh NOTHING = new Fresh("", List.of());

    static Fresh says(String says) {
      return new Fresh(says, List.of());
    }

    /** A change that was worked out, as the form begins with it. */
    static Fresh change(String words, CabinetDraft kept, CabinetDraft changed) {
      var before =
          form(kept).groups().stream()
              .flatMap(group -> group.asked().stream())
              .collect(Collectors.toMap(Asked::id, Function.identity()));
      return new Fresh(
          words + ". That is entered here and not saved yet: look it over, then save the cabinet.",
          form(changed).groups().stream()
              .flatMap(
                  group ->
                      group.asked().stream()
                          .filter(one -> isOther(one, before.get(one.id())))
                          .map(one -> Changed.of(group.title(), one)))
              .toList());
    }

    /** Lengths are compared as they were understood: the same one may be written in many ways. */
    private static boolean isOther(Asked one, Asked before) {
      if (before == null) {
        return false;
      }
      return one.isChoice()
          ? !one.value().equals(before.value())
          : one.echo() != null && !before.value().isBlank() && !one.echo().equals(before.echo());
    }
  }

  /** A field that says something else than what is kept. */
  record Changed(String id, String words) {

    private static Changed of(String group, Asked field) {
      return new Changed(
          field.id(),
          group.equals(field.label())
              ? group + ": " + field.said()
              : "%s, %s: %s"
                  .formatted(group, field.label().toLowerCase(Locale.ROOT), field.said()));
    }
  }

  private static FormView form(CabinetDraft draft) {
    return FormView.of(draft.groups(), draft.typed(), draft.problems(), draft.unit());
  }

  static CabinetView of(
      String id,
      String title,
      CabinetDraft draft,
      Optional<PlannedCabinet> plan,
      List<Problem> refused,
      Fresh fresh) {
    var form =
        refused.isEmpty()
            ? form(draft)
            : FormView.sentBack(draft.groups(), draft.typed(), refused, draft.unit());
    boolean sound = draft.cabinet().isPresent();
    return new CabinetView(
        id,
        title,
        draft.typed().getOrDefault(CabinetForm.JOB, ""),
        form,
        sound ? plan.map(PlanView::verdict).orElse("It can be built so") : form.undone(),
        sound ? plan.map(PlanView::shape).orElse("shape-done") : form.undoneShape(),
        sound
            ? new Drawn(picture(draft, plan, PlanView.WIDE), picture(draft, plan, PlanView.NARROW))
            : null,
        plan.map(PlanView::rows).orElse(List.of()),
        plan.map(PlanView::without).orElse(List.of()),
        refused,
        fresh);
  }

  private static Picture picture(CabinetDraft draft, Optional<PlannedCabinet> plan, int width) {
    return CabinetElevation.of(
        draft.cabinet().orElseThrow(),
        plan.map(PlannedCabinet::places).orElse(draft.places()),
        plan.map(PlannedCabinet::plan).orElse(new StoragePlan(List.of(), List.of(), 0, 0)),
        draft.unit(),
        width);
  }

  /** Where the form goes to be kept. */
  public String action() {
    return id.isEmpty() ? "/storage/cabinets" : "/storage/cabinets/" + id + "/change";
  }

  /** Of a fitting that is there, what the names of its fields begin with; else empty. */
  public String fitting(FormView.Group group) {
    var kind = group.asked().get(0);
    return kind.id().matches(FITTING + "-kind") && !kind.value().isBlank()
        ? kind.id().replace("-kind", "")
        : "";
  }

  /** What was typed without a fitting that is to be taken out; its number stays free. */
  static Map<String, String> withoutFitting(Map<String, String> typed) {
    var left = without(typed, WITHOUT);
    var fitting = typed.getOrDefault(WITHOUT, "");
    if (fitting.matches(FITTING)) {
      left.keySet().removeIf(field -> field.startsWith(fitting + "-"));
    }
    return left;
  }

  static Map<String, String> without(Map<String, String> typed, String field) {
    var left = new LinkedHashMap<>(typed);
    left.remove(field);
    return left;
  }
}
