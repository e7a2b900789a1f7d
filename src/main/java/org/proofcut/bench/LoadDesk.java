package org.proofcut.bench;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.casework.Case;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.exposure.LiftLimits;
import org.proofcut.core.exposure.StandingLimits;
import org.proofcut.core.intake.JobForm;
import org.proofcut.core.intake.LiftForm;
import org.proofcut.core.intake.StandForm;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.plan.Plan;
import org.proofcut.core.stock.Sheet;
import org.proofcut.core.weight.CaseBody;
import org.proofcut.core.weight.Densities;
import org.proofcut.core.weight.PartAtTheSaw;
import org.proofcut.core.weight.Weight;
import org.proofcut.logbook.JobRecord;

/** What things weigh, whether they can be lifted, and whether a case stands; nothing is kept. */
@ApplicationScoped
public class LoadDesk {

  /** Fields that name a part of a job: the lift then begins with what is known of it. */
  public static final String JOB = "job";

  public static final String PART = "part";

  private final ShopFloor floor;
  private final JobDesk jobs;
  private final House house;

  LoadDesk(ShopFloor floor, JobDesk jobs, House house) {
    this.floor = floor;
    this.jobs = jobs;
    this.house = house;
  }

  /**
   * What a job weighs.
   *
   * @param parts the heaviest first
   * @param sheets whole, as they were bought, the heaviest first
   */
  public record Weights(
      JobRecord job,
      LengthUnit unit,
      List<PartAtTheSaw> parts,
      List<SheetWeight> sheets,
      CaseBody body) {

    public Weights {
      parts = List.copyOf(parts);
      sheets = List.copyOf(sheets);
    }
  }

  /** One whole sheet. */
  public record SheetWeight(Sheet sheet, Weight weight) {}

  public LiftLimits liftLimits() {
    return house.content().limits(LiftLimits.class);
  }

  /** What the parts, sheets and the case of a job weigh; empty while its design is not sound. */
  public Optional<Weights> weights(JobRecord job) {
    return designed(job)
        .map(
            made ->
                new Weights(
                    job,
                    made.design().unit(),
                    parts(made),
                    sheets(made),
                    CaseBody.of(made, densities())));
  }

  private List<PartAtTheSaw> parts(Case made) {
    return made.parts().stream()
        .map(part -> PartAtTheSaw.of(part, densities(), liftLimits()))
        .sorted(
            Comparator.comparing((PartAtTheSaw one) -> one.weight().most().value().value())
                .reversed())
        .toList();
  }

  private List<SheetWeight> sheets(Case made) {
    return made.parts().stream()
        .map(part -> part.sheet())
        .distinct()
        .map(sheet -> new SheetWeight(sheet, Weight.of(sheet, densities())))
        .sorted(
            Comparator.comparing((SheetWeight one) -> one.weight().most().value().value())
                .reversed())
        .toList();
  }

  /** What typed fields of a lift come to; with what is known of a part where one is named. */
  public LiftDraft lift(Map<String, String> typed) {
    var part = part(typed);
    var filledIn = new LinkedHashMap<>(typed);
    part.ifPresent(one -> LiftForm.typed(one.part(), one.unit()).forEach(filledIn::putIfAbsent));
    var all = JobForm.withUnit(filledIn, floor.unit());
    var read = LiftForm.read(all, liftLimits());
    return new LiftDraft(
        LiftForm.groups(),
        all,
        JobForm.unit(all),
        part.map(LiftPart::part),
        read.value(),
        LiftForm.estimatedOut(all),
        LiftForm.isTooLarge(all, liftLimits()),
        read.problems());
  }

  private record LiftPart(PartAtTheSaw part, LengthUnit unit) {}

  private Optional<LiftPart> part(Map<String, String> typed) {
    return jobs.job(typed.getOrDefault(JOB, ""))
        .flatMap(this::weights)
        .flatMap(
            weights ->
                weights.parts().stream()
                    .filter(one -> one.part().id().equals(typed.getOrDefault(PART, "")))
                    .findFirst()
                    .map(one -> new LiftPart(one, weights.unit())));
  }

  /** What typed fields of a case on the floor come to; empty while its design is not sound. */
  public Optional<StandDraft> stand(JobRecord job, Map<String, String> typed) {
    return designed(job)
        .map(
            made -> {
              var form = new StandForm(made);
              var filledIn = form.filledIn(typed, standing());
              var read = form.read(filledIn, standing(), densities());
              return new StandDraft(
                  form.groups(),
                  filledIn,
                  made,
                  read.value(),
                  CaseBody.of(made, densities()),
                  read.problems());
            });
  }

  /** The case of a job, if it can be put together. */
  private Optional<Case> designed(JobRecord job) {
    return jobs.draft(job.typed())
        .plan()
        .map(Plan::designed)
        .filter(made -> !Problem.anyStops(made.problems()));
  }

  private Densities densities() {
    return house.content().limits(Densities.class);
  }

  private StandingLimits standing() {
    return house.content().limits(StandingLimits.class);
  }
}
