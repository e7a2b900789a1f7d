package org.proofcut.logbook;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.plan.Marks;
import org.proofcut.core.plan.Plan;
import org.proofcut.core.run.Entry;

/**
 * All that is kept. Every method is one transaction, or part of the caller's; when it has returned
 * from one of its own, what it kept outlives a crash.
 */
@ApplicationScoped
public class Logbook {

  /** Everything in the shop, in the order first kept. */
  public List<ShopItem> shop() {
    throw new UnsupportedOperationException();
  }

  /** Adds a thing to the shop, or replaces the one with its id and keeps its position. */
  public void keep(ShopItem item) {
    throw new UnsupportedOperationException();
  }

  /** Takes a thing out of the shop; nothing happens if it is not there. */
  public void remove(String shopItemId) {
    throw new UnsupportedOperationException();
  }

  /** All jobs, the newest change first. */
  public List<JobRecord> jobs() {
    throw new UnsupportedOperationException();
  }

  /** The job with this id, if there is one. */
  public Optional<JobRecord> job(String id) {
    throw new UnsupportedOperationException();
  }

  /** Adds a job, or replaces what was typed for the one with its id. */
  public void keep(JobRecord job) {
    throw new UnsupportedOperationException();
  }

  /** Throws a job away with its plans and its record, all or nothing. */
  public void discard(String jobId) {
    throw new UnsupportedOperationException();
  }

  /**
   * Keeps the plan that work begins with, as the job's next revision.
   *
   * @throws java.util.NoSuchElementException if there is no such job
   */
  public PlanRecord begin(String jobId, Plan plan) {
    throw new UnsupportedOperationException();
  }

  /**
   * The plan that work was last begun with.
   *
   * @throws UnreadableException if it can't be read back
   */
  public Optional<PlanRecord> latestPlan(String jobId) {
    throw new UnsupportedOperationException();
  }

  /** The marks of every set-up that any plan of the job has had, by fingerprint. */
  public Map<String, Marks> earlierMarks(String jobId) {
    throw new UnsupportedOperationException();
  }

  /**
   * Adds an entry to the record of a job.
   *
   * @return false if the record has an entry with this id already; that one stays as it is
   * @throws java.util.NoSuchElementException if there is no such job
   */
  public boolean append(String jobId, Entry entry) {
    throw new UnsupportedOperationException();
  }

  /**
   * The record of a job, in the order recorded.
   *
   * @throws UnreadableException if an entry can't be read back
   */
  public List<Entry> entries(String jobId) {
    throw new UnsupportedOperationException();
  }

  /**
   * Writes a copy of all that is kept, in one consistent state, while work goes on.
   *
   * @param file must not be there yet
   */
  public void copyTo(Path file) {
    throw new UnsupportedOperationException();
  }
}
