package org.proofcut.logbook;

import io.agroal.api.AgroalDataSource;
import io.quarkus.panache.common.Sort;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import jakarta.transaction.Transactional.TxType;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.SQLException;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.proofcut.core.habit.Observation;
import org.proofcut.core.habit.Ruling;
import org.proofcut.core.plan.Marks;
import org.proofcut.core.plan.Plan;
import org.proofcut.core.run.Entry;

/**
 * All that is kept. Every method is one transaction, or part of the caller's; when it has returned
 * from one of its own, what it kept outlives a crash.
 */
@ApplicationScoped
@Transactional
public class Logbook {

  private final AgroalDataSource database;

  Logbook(AgroalDataSource database) {
    this.database = database;
  }

  /** Everything in the shop, in the order first kept. */
  public List<ShopItem> shop() {
    return ShopItemRow.<ShopItemRow>listAll(Sort.by("position")).stream()
        .map(ShopItemRow::asItem)
        .toList();
  }

  /** Adds a thing to the shop, or replaces the one with its id and keeps its position. */
  public void keep(ShopItem item) {
    keep(List.of(item));
  }

  /** Adds things to the shop, or replaces those with their ids. */
  public void keep(List<ShopItem> items) {
    var rows = ShopItemRow.withIds(items.stream().map(ShopItem::id).toList());
    for (var item : items) {
      var row = rows.computeIfAbsent(item.id(), id -> new ShopItemRow());
      row.take(item);
      row.persist();
    }
  }

  /** Takes a thing out of the shop; nothing happens if it is not there. */
  public void remove(String shopItemId) {
    ShopItemRow.delete("itemId", shopItemId);
  }

  /** All jobs, the newest change first. */
  public List<JobRecord> jobs() {
    return JobRow.<JobRow>listAll(Sort.descending("changed")).stream().map(JobRow::asJob).toList();
  }

  /** The job with this id, if there is one. */
  public Optional<JobRecord> job(String id) {
    return Optional.ofNullable(JobRow.withId(id)).map(JobRow::asJob);
  }

  /** Adds a job, or replaces what was typed for the one with its id. */
  public void keep(JobRecord job) {
    var row = Objects.requireNonNullElseGet(JobRow.withId(job.id()), JobRow::new);
    row.take(job);
    row.persist();
  }

  /**
   * Throws a job away with its plans and its record, all or nothing. What its proof cuts have shown
   * of machines and cutters stays.
   */
  public void discard(String jobId) {
    // The database deletes plans and record with it, in the same statement.
    JobRow.deleteById(jobId);
  }

  /**
   * Keeps the plan that work begins with, as the job's next revision.
   *
   * @throws NoSuchElementException if there is no such job
   */
  public PlanRecord begin(String jobId, Plan plan) {
    JobRow.require(jobId);
    int before = BegunPlanRow.latest(jobId).map(row -> row.revision).orElse(0);
    var begun = new PlanRecord(before + 1, Instant.now(), plan);
    BegunPlanRow.of(jobId, begun).persist();
    keepMarks(jobId, plan);
    return begun;
  }

  /**
   * The plan that work was last begun with.
   *
   * @throws UnreadableException if it can't be read back
   */
  public Optional<PlanRecord> latestPlan(String jobId) {
    return BegunPlanRow.latest(jobId).map(BegunPlanRow::asPlan);
  }

  /** When each plan of a job was made, the earliest first; none where work has not begun. */
  public List<Instant> planned(String jobId) {
    return BegunPlanRow.planned(jobId);
  }

  /** The marks of every set-up that any plan of the job has had, by fingerprint. */
  public Map<String, Marks> earlierMarks(String jobId) {
    var marks = new LinkedHashMap<String, Marks>();
    SetUpMarksRow.of(jobId).forEach(row -> marks.put(row.fingerprint, row.asMarks()));
    return marks;
  }

  /**
   * Adds an entry to the record of a job.
   *
   * @return false if the record has an entry with this id already; that one stays as it is
   * @throws NoSuchElementException if there is no such job
   */
  public boolean append(String jobId, Entry entry) {
    JobRow.require(jobId);
    if (EntryRow.has(jobId, entry.id())) {
      return false;
    }
    EntryRow.of(jobId, entry).persist();
    return true;
  }

  /**
   * The record of a job, in the order recorded.
   *
   * @throws UnreadableException if an entry can't be read back
   */
  public List<Entry> entries(String jobId) {
    return EntryRow.of(jobId).stream().map(EntryRow::asEntry).toList();
  }

  /** Adds what a proof cut has shown; of one proof and trait kept twice, readers take the later. */
  public void append(Observation observation) {
    ObservationRow.of(observation).persist();
  }

  /** Adds what the maker has ruled about observations. */
  public void append(Ruling ruling) {
    RulingRow.of(ruling).persist();
  }

  /** How many observations and rulings are kept; the same number is of the very same ones. */
  public long lessonsKept() {
    return ObservationRow.count() + RulingRow.count();
  }

  /**
   * All that proof cuts have shown, of whatever job, in the order kept.
   *
   * @throws UnreadableException if one can't be read back
   */
  public List<Observation> observations() {
    return ObservationRow.all();
  }

  /**
   * All that the maker has ruled, in the order kept.
   *
   * @throws UnreadableException if one can't be read back
   */
  public List<Ruling> rulings() {
    return RulingRow.all();
  }

  /**
   * Writes a copy of all that is kept, in one consistent state. Others wait until it is done.
   *
   * @param file must not be there yet; appears only when it is complete
   * @throws FileAlreadyExistsException if there is such a file
   * @throws IOException if the copy can't be written
   */
  @Transactional(TxType.NEVER) // SQLite copies only outside a transaction.
  public void copyTo(Path file) throws IOException {
    if (Files.exists(file)) {
      throw new FileAlreadyExistsException(file.toString(), null, "a copy never replaces a file");
    }
    var unfinished = file.resolveSibling(file.getFileName() + ".unfinished");
    Files.deleteIfExists(unfinished);
    try (var connection = database.getConnection();
        var vacuum = connection.prepareStatement("vacuum into ?")) {
      vacuum.setString(1, unfinished.toString());
      vacuum.execute();
    } catch (SQLException e) {
      throw new IOException("The copy " + file + " can't be written: " + e.getMessage(), e);
    }
    try (var written = FileChannel.open(unfinished, StandardOpenOption.WRITE)) {
      written.force(true);
    }
    Files.move(unfinished, file, StandardCopyOption.ATOMIC_MOVE);
  }

  private static void keepMarks(String jobId, Plan plan) {
    var kept =
        SetUpMarksRow.of(jobId).stream().map(row -> row.fingerprint).collect(Collectors.toSet());
    for (var sheet : plan.sheets()) {
      if (kept.add(sheet.marks().fingerprint())) {
        SetUpMarksRow.of(jobId, sheet.marks()).persist();
      }
    }
  }
}
