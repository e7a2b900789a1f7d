package org.proofcut.bench;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.casework.CaseLimits;
import org.proofcut.core.casework.Casework;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.intake.CabinetForm;
import org.proofcut.core.intake.JobForm;
import org.proofcut.core.intake.Read;
import org.proofcut.core.storage.Cabinet;
import org.proofcut.core.storage.CaseCabinet;
import org.proofcut.core.storage.Places;
import org.proofcut.core.storage.StorageLimits;
import org.proofcut.logbook.JobRecord;
import org.proofcut.logbook.StorageItem;
import org.proofcut.logbook.StorageLog;

/** Cabinets as typed: those that were measured, and those that are the case of a job. */
@ApplicationScoped
class CabinetShelf {

  /** What a shelf of a case is reckoned to carry until something else is typed (our own choice). */
  private static final int SHELF_GRAMS = 15_000;

  private final StorageLog storage;
  private final JobDesk jobs;
  private final House house;

  CabinetShelf(StorageLog storage, JobDesk jobs, House house) {
    this.storage = storage;
    this.jobs = jobs;
    this.house = house;
  }

  List<GearCabinet> all() {
    return storage.all(StorageItem.Sort.CABINET).stream().map(this::cabinet).toList();
  }

  Optional<GearCabinet> cabinet(String id) {
    return storage.item(StorageItem.Sort.CABINET, id).map(this::cabinet);
  }

  private GearCabinet cabinet(StorageItem item) {
    return cabinet(item.id(), item.typed());
  }

  GearCabinet cabinet(String id, Map<String, String> typed) {
    var read = read(id, typed);
    return new GearCabinet(
        id,
        typed.getOrDefault("name", ""),
        JobForm.unit(typed),
        typed,
        job(typed),
        read.value(),
        read.problems());
  }

  static Optional<String> job(Map<String, String> typed) {
    return Optional.ofNullable(typed.get(CabinetForm.JOB)).filter(job -> !job.isBlank());
  }

  Read<Cabinet> read(String id, Map<String, String> typed) {
    var made = made(typed);
    return job(typed).isPresent() && made.isEmpty()
        ? new Read<>(Optional.empty(), List.of(noCase()))
        : CabinetForm.read(id, typed, made);
  }

  CabinetDraft draft(Map<String, String> typed) {
    var read = read("", typed);
    return new CabinetDraft(
        CabinetForm.groups(typed, made(typed)),
        typed,
        JobForm.unit(typed),
        read.value(),
        read.value().map(cabinet -> Places.of(cabinet, limits())).orElse(List.of()),
        read.problems());
  }

  StorageLimits limits() {
    return house.content().limits(StorageLimits.class);
  }

  /** The case of the job that is named, before doors and hooks. */
  Optional<Cabinet> made(Map<String, String> typed) {
    return job(typed)
        .flatMap(jobs::job)
        .flatMap(job -> made(job, CabinetForm.shelfGrams(typed).orElse(SHELF_GRAMS)));
  }

  private Optional<Cabinet> made(JobRecord job, int shelfGrams) {
    var content = house.content();
    return JobForm.read(job.typed())
        .value()
        .map(
            design ->
                Casework.derive(
                    design, content.limits(CaseLimits.class), content.limits(FitLimits.class)))
        .filter(made -> !Problem.anyStops(made.problems()))
        .map(made -> CaseCabinet.of(made, job.id(), made.design().name(), shelfGrams));
  }

  /** What a cabinet begins with that is the case of a job. */
  Optional<Map<String, String>> ofJob(JobRecord job) {
    var unit = JobForm.unit(job.typed());
    return made(job, SHELF_GRAMS)
        .map(made -> CabinetForm.typed(made, unit, job.id(), made, SHELF_GRAMS));
  }

  /** The same cabinet changed, as it would be typed; empty where a case would have to follow it. */
  Optional<Map<String, String>> typed(GearCabinet before, Cabinet changed) {
    if (changed.fittings().size() > CabinetForm.MOST_FITTINGS) {
      return Optional.empty();
    }
    if (before.job().isEmpty()) {
      return Optional.of(CabinetForm.typed(changed, before.unit()));
    }
    return made(before.typed())
        .filter(made -> changed.fittings().containsAll(made.fittings()))
        .filter(made -> changed.inside().equals(made.inside()))
        .map(
            made ->
                CabinetForm.typed(
                    changed,
                    before.unit(),
                    before.job().get(),
                    made,
                    CabinetForm.shelfGrams(before.typed()).orElse(SHELF_GRAMS)));
  }

  Optional<JobRecord> job(String id) {
    return jobs.job(id);
  }

  /** What stops a job that is typed so; its design is worked out for that. */
  List<Problem> unsound(Map<String, String> typed) {
    return jobs.draft(typed).problems().stream().filter(Problem::stops).toList();
  }

  /** Keeps a job as typed; what can't be read of it. */
  List<Problem> keepJob(String id, Map<String, String> typed) {
    return jobs.keep(Optional.of(id), typed).problems();
  }

  private static Problem noCase() {
    return Problem.stops(
        CabinetForm.JOB,
        "The job is gone, or its design can't be put together",
        "a job with nothing to mend in its design",
        "Mend the design of the job, or take the cabinet out");
  }
}
