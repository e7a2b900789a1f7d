package org.proofcut.bench;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.exposure.DayAsked;
import org.proofcut.core.exposure.ExposureLimits;
import org.proofcut.core.intake.NoiseForm;
import org.proofcut.core.noise.NoiseDay;
import org.proofcut.core.noise.NoiseLevels;
import org.proofcut.core.plan.Plan;
import org.proofcut.logbook.JobRecord;

/** The noise of a day's work, worked out while it is typed; nothing is kept. */
@ApplicationScoped
public class NoiseDesk {

  private final ShopFloor floor;
  private final House house;
  private final JobDesk jobs;
  private final WorkBench bench;

  NoiseDesk(ShopFloor floor, House house, JobDesk jobs, WorkBench bench) {
    this.floor = floor;
    this.house = house;
    this.jobs = jobs;
    this.bench = bench;
  }

  /** A day that belongs to no job. */
  public NoiseDraft draft(Map<String, String> typed) {
    return draft(Optional.empty(), Optional.empty(), typed);
  }

  /** A day on a job, in work or not; empty where there is no such job. */
  public Optional<NoiseDraft> draft(String jobId, Map<String, String> typed) {
    return jobs.job(jobId).map(job -> draft(Optional.of(job), plan(job), typed));
  }

  /** As it was kept when work began; as it would be planned now where it has not. */
  private Optional<Plan> plan(JobRecord job) {
    return bench.work(job.id()).map(Work::plan).or(() -> jobs.draft(job.typed()).plan());
  }

  private NoiseDraft draft(
      Optional<JobRecord> job, Optional<Plan> plan, Map<String, String> typed) {
    int sheets = plan.map(one -> one.sheets().size()).orElse(0);
    var read = NoiseForm.read(typed, sheets);
    var shop = floor.shop();
    var noise = house.content().noise();
    var day =
        NoiseDay.dayOf(
            plan,
            shop,
            new NoiseLevels(noise.levels(), floor.measuredLevels()),
            house.content().limits(ExposureLimits.class),
            noise.lawIn(shop.region()),
            read.value().orElse(DayAsked.AS_PLANNED));
    return new NoiseDraft(
        job, sheets, NoiseForm.filledIn(typed, sheets), day, List.copyOf(read.problems()));
  }
}
