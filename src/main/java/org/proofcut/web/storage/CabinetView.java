package org.proofcut.web.storage;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.bench.CabinetDraft;
import org.proofcut.bench.PlannedCabinet;
import org.proofcut.core.drawing.CabinetElevation;
import org.proofcut.core.drawing.Picture;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.CabinetForm;
import org.proofcut.core.storage.StoragePlan;
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
 * @param fresh what the fields begin with that is not kept yet, in a sentence; empty where nothing
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
    List<String> without,
    List<Problem> refused,
    String fresh) {

  static CabinetView of(
      String id,
      String title,
      CabinetDraft draft,
      Optional<PlannedCabinet> plan,
      List<Problem> refused,
      String fresh) {
    var form = FormView.of(draft.groups(), draft.typed(), draft.problems(), draft.unit());
    boolean sound = draft.cabinet().isPresent();
    return new CabinetView(
        id,
        title,
        draft.typed().getOrDefault(CabinetForm.JOB, ""),
        form,
        sound ? plan.map(PlanView::verdict).orElse("It can be built so") : form.undone(),
        sound
            ? plan.filter(one -> !one.without().isEmpty())
                .map(one -> "shape-stop")
                .orElse("shape-done")
            : form.undoneShape(),
        sound
            ? new Drawn(picture(draft, plan, PlanView.WIDE), picture(draft, plan, PlanView.NARROW))
            : null,
        plan.map(PlanView::rows).orElse(List.of()),
        plan.stream()
            .flatMap(one -> one.without().stream())
            .map(one -> Says.capital(one.thing().name()) + ": " + one.why())
            .toList(),
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

  static Map<String, String> without(Map<String, String> typed, String field) {
    var left = new java.util.LinkedHashMap<>(typed);
    left.remove(field);
    return left;
  }
}
