package org.proofcut.bench;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.control.ActivateRequestContext;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.jboss.logging.Logger;
import org.proofcut.core.casework.ProvenDepths;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.plan.Marks;
import org.proofcut.core.plan.OperationSheet;
import org.proofcut.core.plan.Plan;
import org.proofcut.core.run.Act;
import org.proofcut.core.run.Entry;
import org.proofcut.core.run.Permission;
import org.proofcut.core.run.Progress;
import org.proofcut.logbook.JobRecord;
import org.proofcut.logbook.Logbook;
import org.proofcut.logbook.PlanRecord;
import org.proofcut.logbook.UnreadableException;

/** Jobs in work: their sheets, and the acts that are added to their record. */
@ApplicationScoped
public class WorkBench {

  static final Logger LOG = Logger.getLogger(WorkBench.class);

  private final Logbook logbook;
  private final JobDesk desk;
  private final HabitDesk habits;
  private final Homes homes;
  private final House house;
  private final Clock clock;
  private final Map<String, PlanRecord> plans = new ConcurrentHashMap<>();

  /** One act at a time: what is allowed is judged from the record that it is then added to. */
  private final Object oneAtATime = new Object();

  WorkBench(
      Logbook logbook, JobDesk desk, HabitDesk habits, Homes homes, House house, Clock clock) {
    this.homes = homes;
    this.house = house;
    this.logbook = logbook;
    this.desk = desk;
    this.habits = habits;
    this.clock = clock;
  }

  /**
   * An act as it was sent.
   *
   * @param entryId made where the act happened; the same one again does nothing
   * @param device which tablet, as it names itself
   * @param operation id of the operation
   * @param fingerprint of the set-up that the person saw
   */
  public record Sent(
      String entryId, String device, String operation, String fingerprint, Act act) {}

  /** Begins work on a job: keeps its plan. Does nothing where it has begun. */
  public List<Problem> begin(String jobId) {
    synchronized (oneAtATime) {
      if (planOf(jobId).isPresent()) {
        return List.of();
      }
      return planAnew(jobId);
    }
  }

  /**
   * After a change of its design: a new plan, where work has begun and it is sound. Where gear
   * lived in its case and its place is gone, the sheets of all jobs say so.
   */
  public List<Problem> planAgain(String jobId) {
    if (homes.follow()) {
      planAllAgain();
    }
    return planIfBegun(jobId);
  }

  private List<Problem> planIfBegun(String jobId) {
    synchronized (oneAtATime) {
      return planOf(jobId).isPresent() ? planAnew(jobId) : List.of();
    }
  }

  /**
   * After a change of the shop or of its content: new plans for every job in work. One whose plan
   * can't be read back stays as it is, and says so when it is opened.
   */
  @ActivateRequestContext
  public void planAllAgain() {
    homes.follow();
    for (var job : desk.jobs()) {
      try {
        planIfBegun(job.id());
      } catch (UnreadableException e) {
        LOG.warn(e.getMessage());
      } catch (RuntimeException e) {
        // It fails again, and is told, when its page is opened; the others are planned all the
        // same.
        LOG.errorf(e, "The job %s can't be planned anew", job.id());
      }
    }
  }

  /** A job in work; empty where there is none, or where work has not begun. */
  public Optional<Work> work(String jobId) {
    return logbook.job(jobId).flatMap(job -> planOf(jobId).map(plan -> work(job, plan)));
  }

  /** How far a job is by its plan as it is kept; empty where work has not begun. */
  Optional<Progress> progress(String jobId) {
    return planOf(jobId).map(plan -> progress(jobId, plan.plan()));
  }

  /** The record of a job, in the order recorded. */
  public List<Entry> record(String jobId) {
    return logbook.entries(jobId);
  }

  private Work work(JobRecord job, PlanRecord plan) {
    var progress = progress(job.id(), plan.plan());
    var draft = desk.draft(job.typed(), progress.provenDepths(), made(job.id()));
    return new Work(job, plan.revision(), plan.plan(), progress, stopping(draft.problems()));
  }

  /**
   * Adds an act to the record, if it may be taken now.
   *
   * @return why it may not; empty when it was taken, or had been before
   */
  public Optional<Problem> act(String jobId, Sent sent) {
    synchronized (oneAtATime) {
      var work = work(jobId);
      if (work.isEmpty()) {
        return Optional.of(gone());
      }
      if (isRecorded(jobId, sent.entryId())) {
        return Optional.empty();
      }
      if (work.get().isStopped()) {
        return Optional.of(work.get().problems().get(0));
      }
      var progress = work.get().progress().sheet(sent.operation());
      if (progress.isEmpty()) {
        return Optional.of(gone());
      }
      if (!progress.get().sheet().marks().fingerprint().equals(sent.fingerprint())) {
        return Optional.of(changed(jobId, progress.get().sheet(), sent.fingerprint()));
      }
      var refused = new Permission(progress.get(), work.get().unit()).refuse(sent.act());
      if (refused.isPresent()) {
        return refused;
      }
      QuarkusTransaction.requiringNew().run(() -> append(work.get(), sent));
      replanIfLengthsMoved(jobId);
      return Optional.empty();
    }
  }

  /** Throws a job away with its plans and its record. */
  public void discard(String jobId) {
    synchronized (oneAtATime) {
      logbook.discard(jobId);
      plans.remove(jobId);
    }
  }

  /** The act and what it teaches are kept together or not at all. */
  private void append(Work work, Sent sent) {
    var job = work.job();
    var now = clock.instant();
    logbook.append(
        job.id(),
        new Entry(
            sent.entryId(), now, sent.device(), sent.operation(), sent.fingerprint(), sent.act()));
    // The demo's readings are of nobody's wood.
    if (!job.demo() && HabitDesk.isOfAProof(sent.act())) {
      var after = progress(job.id(), work.plan()).sheet(sent.operation()).orElseThrow();
      habits.learn(job.id(), after, sent.act(), now);
    }
  }

  /** Final lengths follow the depths that proofs find; a plan with other lengths is a new plan. */
  private void replanIfLengthsMoved(String jobId) {
    var job = logbook.job(jobId).orElseThrow();
    var plan = planOf(jobId).orElseThrow().plan();
    var draft = desk.draft(job.typed(), progress(jobId, plan).provenDepths(), made(jobId));
    if (draft.isSound() && !fingerprints(draft.plan().get()).equals(fingerprints(plan))) {
      keepPlan(jobId, draft.plan().get());
    }
  }

  private List<Problem> planAnew(String jobId) {
    var job = logbook.job(jobId);
    if (job.isEmpty()) {
      return List.of(gone());
    }
    var proven =
        planOf(jobId)
            .map(plan -> progress(jobId, plan.plan()).provenDepths())
            .orElse(ProvenDepths.NONE);
    var draft = desk.draft(job.get().typed(), proven, made(jobId));
    if (!draft.isSound()) {
      return stopping(draft.problems());
    }
    // Whole sheets: a guard fitted or gear bought leaves the marks as they are, and opens a sheet.
    boolean same =
        planOf(jobId)
            .map(plan -> plan.plan().sheets().equals(draft.plan().get().sheets()))
            .orElse(false);
    if (!same) {
      keepPlan(jobId, draft.plan().get());
    }
    return List.of();
  }

  private static List<List<String>> fingerprints(Plan plan) {
    var all = new ArrayList<List<String>>();
    for (var sheet : plan.sheets()) {
      all.add(List.of(sheet.id(), sheet.marks().fingerprint()));
    }
    return all;
  }

  private void keepPlan(String jobId, Plan plan) {
    house.planned();
    plans.put(jobId, QuarkusTransaction.requiringNew().call(() -> logbook.begin(jobId, plan)));
  }

  private Optional<PlanRecord> planOf(String jobId) {
    var kept = plans.get(jobId);
    if (kept == null) {
      var read = logbook.latestPlan(jobId);
      read.ifPresent(plan -> plans.put(jobId, plan));
      return read;
    }
    return Optional.of(kept);
  }

  private Progress progress(String jobId, Plan plan) {
    return Progress.of(
        plan,
        logbook.earlierMarks(jobId),
        logbook.entries(jobId),
        clock.instant(),
        clock.getZone());
  }

  /**
   * When the figures of each operation that was begun were made: with the last plan before the
   * first act on it.
   */
  private Map<String, Instant> made(String jobId) {
    var planned = logbook.planned(jobId);
    var made = new HashMap<String, Instant>();
    for (var entry : logbook.entries(jobId)) {
      made.computeIfAbsent(
          entry.operation(),
          operation ->
              planned.stream()
                  .filter(plan -> !plan.isAfter(entry.at()))
                  .max(Comparator.naturalOrder())
                  .orElse(entry.at()));
    }
    return made;
  }

  private boolean isRecorded(String jobId, String entryId) {
    return logbook.entries(jobId).stream().anyMatch(entry -> entry.id().equals(entryId));
  }

  /** An id for an act on a page without script. */
  public static String newEntryId() {
    return UUID.randomUUID().toString();
  }

  private static List<Problem> stopping(List<Problem> problems) {
    return problems.stream().filter(Problem::stops).toList();
  }

  private static Problem gone() {
    return Problem.stops(
        "sheet", "There is no such sheet", "a sheet of a job in work", "Open the job again");
  }

  private Problem changed(String jobId, OperationSheet sheet, String seen) {
    var marks = Optional.ofNullable(logbook.earlierMarks(jobId).get(seen));
    var changed =
        marks.map(sheet.marks()::since).orElse(List.of()).stream()
            .map(Marks.Difference::what)
            .collect(Collectors.joining(", "));
    return Problem.stops(
        "sheet",
        "The plan changed since this page was shown" + (changed.isEmpty() ? "" : ": " + changed),
        "acts on the sheet as it is now",
        "Look at sheet " + sheet.number() + " again: its figures may be others");
  }
}
