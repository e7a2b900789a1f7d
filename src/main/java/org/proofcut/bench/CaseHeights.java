package org.proofcut.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.JobForm;
import org.proofcut.core.intake.LengthTyped;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.storage.Cabinet;
import org.proofcut.core.storage.Fitting;

/** Shelf heights of a job's case, before it is built: found by the plan of the gear. */
final class CaseHeights {

  /** Least room between shelves (our own choice). */
  private static final Length CLEAR = Length.ofMillimetres(60);

  private final CabinetShelf shelf;
  private final StoragePlans plans;

  CaseHeights(CabinetShelf shelf, StoragePlans plans) {
    this.shelf = shelf;
    this.plans = plans;
  }

  Optional<ChosenHeights> choose(PlannedCabinet planned) {
    var typed = planned.cabinet().typed();
    return CabinetShelf.job(typed)
        .flatMap(shelf::job)
        .flatMap(
            job -> shelf.made(typed).map(made -> choose(planned, job.id(), job.typed(), made)));
  }

  private ChosenHeights choose(
      PlannedCabinet planned, String job, Map<String, String> typed, Cabinet made) {
    var ids = made.fittings(Fitting.Shelf.class).map(Fitting::id).toList();
    var unit = JobForm.unit(typed);
    var step = unit == LengthUnit.INCH ? Length.ofInches(1, 4) : Length.ofMillimetres(5);
    var chosen = plans.heights(new StoragePlans.Movable(planned.task(), ids, step, CLEAR));
    var fields = fields(typed);
    var moved = new ArrayList<ChosenHeights.MovedShelf>();
    var after = new LinkedHashMap<>(typed);
    for (int i = 0; i < ids.size(); i++) {
      var was = underside(shelf(planned.task().cabinet(), ids.get(i)), made);
      var is = underside(shelf(chosen.task().cabinet(), ids.get(i)), made);
      moved.add(
          new ChosenHeights.MovedShelf(
              fields.get(i),
              shelf(made, ids.get(i)).name(),
              LengthTyped.of(was, unit),
              LengthTyped.of(is, unit)));
      if (!is.equals(was)) {
        after.put(fields.get(i), LengthTyped.of(is, unit));
      }
    }
    return new ChosenHeights(
        job, unit, chosen.task().cabinet(), moved, planned.plan(), chosen.plan(), typed, after);
  }

  /** Shelves of a design are the fields that are filled in, in their order. */
  private static List<String> fields(Map<String, String> typed) {
    return IntStream.rangeClosed(1, JobForm.MOST_SHELVES)
        .mapToObj(number -> JobForm.shelf(number).name())
        .filter(field -> !typed.getOrDefault(field, "").isBlank())
        .toList();
  }

  private static Fitting.Shelf shelf(Cabinet cabinet, String id) {
    return cabinet
        .fittings(Fitting.Shelf.class)
        .filter(one -> one.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** As the job's form asks for it: from the floor that the case stands on. */
  private static Length underside(Fitting.Shelf one, Cabinet made) {
    return one.top().minus(one.thickness()).plus(made.raised());
  }

  /** Keeps the job with these heights, unless somebody changed it since they were found. */
  List<Problem> keep(ChosenHeights chosen) {
    boolean asItWas =
        shelf.job(chosen.job()).filter(job -> job.typed().equals(chosen.designed())).isPresent();
    return asItWas
        ? shelf.keepJob(chosen.job(), chosen.typed())
        : List.of(StorageRefusals.otherDesign());
  }
}
