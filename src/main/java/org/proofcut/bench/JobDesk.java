package org.proofcut.bench;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.Clock;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Stream;
import org.proofcut.core.casework.CaseDesign;
import org.proofcut.core.casework.ProvenDepths;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.exposure.ExposureLimits;
import org.proofcut.core.intake.Demo;
import org.proofcut.core.intake.JobForm;
import org.proofcut.core.intake.Read;
import org.proofcut.core.noise.JobNoise;
import org.proofcut.core.noise.NoiseLevels;
import org.proofcut.core.part.PartRole;
import org.proofcut.core.plan.Plan;
import org.proofcut.core.setup.Learned;
import org.proofcut.core.shop.Shop;
import org.proofcut.logbook.JobRecord;
import org.proofcut.logbook.Logbook;

/** Jobs as entered, and what they come to while they are typed. */
@ApplicationScoped
public class JobDesk {

  private final Logbook logbook;
  private final ShopFloor floor;
  private final House house;
  private final HabitDesk habits;
  private final Clock clock;

  JobDesk(Logbook logbook, ShopFloor floor, House house, HabitDesk habits, Clock clock) {
    this.habits = habits;
    this.logbook = logbook;
    this.floor = floor;
    this.house = house;
    this.clock = clock;
  }

  /** The demo is there on the very first start, all of it, and never comes back by itself. */
  void start(@Observes StartupEvent event) {
    QuarkusTransaction.requiringNew()
        .run(
            () -> {
              if (floor.isUntouched()) {
                floor.keepDemo();
                keepDemo();
              }
            });
  }

  /** All jobs, the newest change first. */
  public List<JobRecord> jobs() {
    return logbook.jobs();
  }

  public Optional<JobRecord> job(String id) {
    return logbook.job(id);
  }

  /** What typed fields come to with what proof cuts have taught, worked out and not kept. */
  public Draft draft(Map<String, String> typed) {
    var learned = habits.taught(JobForm.unit(typed));
    return draft(typed, ProvenDepths.NONE, operation -> learned);
  }

  /**
   * The same for a job in work. A sheet that was begun keeps to what had been taught when its
   * figures were made; the others reckon with all that is known.
   *
   * @param made by the id of each operation that was begun, when its figures were made
   */
  Draft draft(Map<String, String> typed, ProvenDepths proven, Map<String, Instant> made) {
    var unit = JobForm.unit(typed);
    var now = habits.taught(unit);
    var by = habits.taughtBy(unit);
    return draft(
        typed,
        proven,
        operation -> made.containsKey(operation) ? by.apply(made.get(operation)) : now);
  }

  private Draft draft(
      Map<String, String> typed, ProvenDepths proven, Function<String, Learned> learned) {
    var read = JobForm.read(typed);
    if (read.value().isEmpty()) {
      return new Draft(typed, Optional.empty(), read.problems());
    }
    var shop = floor.shop();
    var plan = heard(house.planner().plan(read.value().get(), shop, proven, learned), shop);
    var problems =
        Stream.concat(
                plan.problems().stream().map(problem -> JobForm.atField(problem, typed)),
                unknownWoods(read.value().get()))
            .toList();
    return new Draft(typed, Optional.of(plan), problems);
  }

  /** With the ear protectors that are enough for the noise of the job. */
  private Plan heard(Plan plan, Shop shop) {
    var noise = house.content().noise();
    return JobNoise.judge(
        plan,
        shop,
        new NoiseLevels(noise.levels(), floor.measuredLevels()),
        house.content().limits(ExposureLimits.class),
        noise.lawIn(shop.region()));
  }

  /** A wood that the house does not know is cut like any of its material. */
  private Stream<Problem> unknownWoods(CaseDesign design) {
    return Arrays.stream(PartRole.values())
        .map(role -> design.sheets().of(role))
        .distinct()
        .filter(sheet -> sheet.wood().isPresent())
        .filter(sheet -> house.content().dust().wood(sheet.wood().get()).isEmpty())
        .map(
            sheet ->
                Problem.warns(
                    sheet.id() + "-wood",
                    "Nothing is known of the dust of \"" + sheet.wood().get() + "\"",
                    "such as iroko, oak, birch plywood; the page on dust names all",
                    "Write it so, or go on: it counts as " + sheet.material().words()));
  }

  /**
   * Keeps a job as typed, if all of it can be read; it may still have problems to mend.
   *
   * @param id of the job to change; empty for a new one
   */
  public Read<JobRecord> keep(Optional<String> id, Map<String, String> typed) {
    var read = JobForm.read(typed);
    if (read.value().isEmpty()) {
      return new Read<>(Optional.empty(), read.problems());
    }
    var now = clock.instant();
    var before = id.flatMap(logbook::job);
    var job =
        new JobRecord(
            id.orElseGet(() -> UUID.randomUUID().toString()),
            JobForm.filledIn(typed),
            before.map(JobRecord::created).orElse(now),
            now,
            before.map(JobRecord::demo).orElse(false));
    logbook.keep(job);
    return new Read<>(Optional.of(job), List.of());
  }

  /** Puts the demo job in. */
  public JobRecord keepDemo() {
    var now = clock.instant();
    var job = new JobRecord(UUID.randomUUID().toString(), Demo.job(), now, now, true);
    logbook.keep(job);
    return job;
  }
}
