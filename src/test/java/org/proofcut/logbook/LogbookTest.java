package org.proofcut.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.agroal.api.AgroalDataSource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.core.casework.CaseDesign;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.habit.Observation;
import org.proofcut.core.habit.Ruling;
import org.proofcut.core.habit.Trait;
import org.proofcut.core.measure.Length;
import org.proofcut.core.plan.OperationSheet;
import org.proofcut.core.run.Act;
import org.proofcut.core.run.Entry;
import org.proofcut.logbook.ShopItem.Shelf;

@QuarkusTest
class LogbookTest {

  private static final Instant MONDAY = Instant.parse("2030-03-04T08:15:00.123456789Z");

  @Inject Logbook logbook;
  @Inject AgroalDataSource database;

  private String newJob() {
    return newJob(MONDAY);
  }

  private String newJob(Instant changed) {
    var id = UUID.randomUUID().toString();
    logbook.keep(new JobRecord(id, Map.of("name", "Glaze cupboard"), MONDAY, changed, false));
    return id;
  }

  private static Entry entry(String id) {
    return new Entry(id, MONDAY, "tablet", "dado:bottom", "abc", new Act.PartCut("left-side"));
  }

  private String text(String sql) throws SQLException {
    try (var connection = database.getConnection()) {
      return text(connection, sql);
    }
  }

  private static String text(Connection connection, String sql) throws SQLException {
    try (var statement = connection.createStatement();
        var result = statement.executeQuery(sql)) {
      result.next();
      return result.getString(1);
    }
  }

  private void run(String sql) throws SQLException {
    try (var connection = database.getConnection();
        var statement = connection.createStatement()) {
      statement.executeUpdate(sql);
    }
  }

  @ParameterizedTest
  @CsvSource({"journal_mode, wal", "synchronous, 2", "foreign_keys, 1", "busy_timeout, 5000"})
  void connection_pragmas_areAsSet(String pragma, String value) throws SQLException {
    assertEquals(value, text("pragma " + pragma));
  }

  @Test
  void keep_shopItem_replacesItInItsPlace() {
    var before = logbook.shop();
    var first = new ShopItem("t1", Shelf.MACHINE, "router-table", Map.of("reach", "450 mm"));
    var second = new ShopItem("t2", Shelf.SHOP, "", Map.of());
    logbook.keep(first);
    logbook.keep(second);
    var changed = new ShopItem("t1", Shelf.MACHINE, "table-saw", Map.of("reach", "18,25 \"<b>"));
    logbook.keep(changed);
    var with = new ArrayList<>(before);
    with.addAll(List.of(changed, second));
    assertEquals(with, logbook.shop());
    logbook.remove("t1");
    logbook.remove("t1");
    logbook.keep(first);
    with.remove(changed);
    with.add(first);
    assertEquals(with, logbook.shop());
    logbook.remove("t1");
    logbook.remove("t2");
    assertEquals(before, logbook.shop());
  }

  @Test
  void jobs_several_comeNewestChangeFirst() {
    var whole = newJob(MONDAY.plusSeconds(3600).minusNanos(123456789));
    var later = newJob(MONDAY.plusSeconds(3600).minusNanos(123456788));
    var oldest = newJob(MONDAY);
    var ids = logbook.jobs().stream().map(JobRecord::id).toList();
    assertTrue(ids.indexOf(later) < ids.indexOf(whole), ids.toString());
    assertTrue(ids.indexOf(whole) < ids.indexOf(oldest), ids.toString());
  }

  @Test
  void keep_jobAgain_replacesWhatWasTyped() {
    var id = newJob();
    logbook.append(id, entry("1"));
    var changed = new JobRecord(id, Map.of("width", "1e9"), MONDAY, MONDAY.plusNanos(1), true);
    logbook.keep(changed);
    assertEquals(Optional.of(changed), logbook.job(id));
    assertEquals(List.of(entry("1")), logbook.entries(id));
  }

  @Test
  void job_unknown_isEmpty() {
    assertEquals(Optional.empty(), logbook.job("none"));
    assertEquals(Optional.empty(), logbook.latestPlan("none"));
    assertEquals(List.of(), logbook.entries("none"));
    assertEquals(Map.of(), logbook.earlierMarks("none"));
  }

  @Test
  void append_sameIdTwice_isDoneOnceAndKeepsTheFirst() {
    var id = newJob();
    assertTrue(logbook.append(id, entry("1")));
    var other = new Entry("1", MONDAY, "phone", "rip", "def", new Act.SignedOff());
    assertFalse(logbook.append(id, other));
    assertTrue(logbook.append(id, entry("0")));
    assertEquals(List.of(entry("1"), entry("0")), logbook.entries(id));
    assertTrue(logbook.append(newJob(), entry("1")), "another job has a record of its own");
  }

  @Test
  void append_unknownJob_isRefused() throws SQLException {
    assertThrows(NoSuchElementException.class, () -> logbook.append("none", entry("1")));
    assertThrows(
        NoSuchElementException.class, () -> logbook.begin("none", BundledPlans.cupboard()));
    assertEquals("0", text("select count(*) from entry where job = 'none'"));
  }

  @Test
  void begin_twice_givesTheNextRevisionAndKeepsAllMarks() {
    var id = newJob();
    var cupboard = BundledPlans.cupboard();
    var first = logbook.begin(id, cupboard);
    assertEquals(1, first.revision());
    assertEquals(Optional.of(first), logbook.latestPlan(id));

    var wider = BundledPlans.plan(deeper(CasesForTests.cupboard()));
    var second = logbook.begin(id, wider);
    assertEquals(2, second.revision());
    assertEquals(Optional.of(second), logbook.latestPlan(id));

    var marks = logbook.earlierMarks(id);
    var expected = new HashSet<String>();
    for (var sheet : concat(cupboard.sheets(), wider.sheets())) {
      assertEquals(sheet.marks(), marks.get(sheet.marks().fingerprint()));
      expected.add(sheet.marks().fingerprint());
    }
    assertEquals(expected, marks.keySet());
    assertTrue(expected.size() > new HashSet<>(fingerprints(cupboard.sheets())).size());
  }

  private static List<OperationSheet> concat(List<OperationSheet> one, List<OperationSheet> two) {
    var both = new ArrayList<>(one);
    both.addAll(two);
    return both;
  }

  private static List<String> fingerprints(List<OperationSheet> sheets) {
    return sheets.stream().map(sheet -> sheet.marks().fingerprint()).toList();
  }

  private static CaseDesign deeper(CaseDesign d) {
    var outside =
        new CaseDesign.Outside(
            d.outside().width(),
            d.outside().height(),
            d.outside().depth().plus(CasesForTests.mm(50)));
    return new CaseDesign(
        d.name(), d.unit(), outside, d.sheets(), d.joinery(), d.plinth(), d.shelves());
  }

  @Test
  void latestPlan_ofALaterVersion_namesJobAndRevision() throws SQLException {
    var id = newJob();
    run(
        "insert into begun_plan (job, revision, begun, content) values ('"
            + id
            + "', 3, '2030-01-01T00:00:00.000000000Z', '{\"version\":99,\"content\":{}}')");
    var e = assertThrows(UnreadableException.class, () -> logbook.latestPlan(id));
    assertEquals("job " + id + ", plan 3", e.problem().where());
    assertEquals("it was written as version 99", e.problem().what());
    assertEquals("1", text("select count(*) from begun_plan where job = '" + id + "'"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "update entry set act = act where job = '%s'",
        "update or replace entry set device = 'x' where job = '%s'",
        "delete from entry where job = '%s'",
        "insert or replace into entry (job, id, happened, device, operation, fingerprint, act)"
            + " select job, id, happened, 'x', operation, fingerprint, act from entry"
            + " where job = '%s'",
        "replace into entry select number, job, 'new', happened, 'x', operation, fingerprint, act"
            + " from entry where job = '%s'",
        "update begun_plan set content = '' where job = '%s'",
        "delete from begun_plan where job = '%s'",
        "replace into begun_plan select number, job, revision, begun, '' from begun_plan"
            + " where job = '%s'",
        "replace into job select * from job where id = '%s'",
        "update job set id = 'x' where id = '%s'",
      })
  void record_changedBySql_isRefusedByTheDatabase(String sql) throws SQLException {
    var id = newJob();
    logbook.append(id, entry("1"));
    var plan = logbook.begin(id, BundledPlans.cupboard());
    var e = assertThrows(SQLException.class, () -> run(sql.formatted(id)));
    assertTrue(e.getMessage().contains("never") || e.getMessage().contains("only when"), "" + e);
    assertEquals(List.of(entry("1")), logbook.entries(id));
    assertEquals(Optional.of(plan), logbook.latestPlan(id));
  }

  @Test
  void discard_job_takesItsPlansAndRecordAndNoOthers() throws SQLException {
    var id = newJob();
    var other = newJob();
    for (var job : List.of(id, other)) {
      logbook.append(job, entry("1"));
      logbook.begin(job, BundledPlans.cupboard());
    }
    logbook.discard(id);
    logbook.discard(id);
    assertEquals(Optional.empty(), logbook.job(id));
    for (var table : List.of("entry", "begun_plan", "set_up_marks")) {
      assertEquals("0", text("select count(*) from " + table + " where job = '" + id + "'"));
      assertFalse(
          "0".equals(text("select count(*) from " + table + " where job = '" + other + "'")));
    }
  }

  private static Observation observation() {
    return new Observation(
        UUID.randomUUID().toString(),
        new Trait.CutWidth("cutter of this test"),
        Length.of("16 mm"),
        Length.of("15.9 mm"),
        MONDAY);
  }

  @Test
  void append_observationsAndRulings_keepsThemInOrder() {
    var observationsBefore = logbook.observations();
    var rulingsBefore = logbook.rulings();
    long before = logbook.lessonsKept();
    var first = observation();
    var second = observation();
    var ruling = new Ruling.Accepted(first.proof(), first.trait(), MONDAY);
    for (var one : List.of(first, second, first)) {
      logbook.append(one);
    }
    logbook.append(ruling);
    var observations = new ArrayList<>(observationsBefore);
    observations.addAll(List.of(first, second, first));
    var rulings = new ArrayList<>(rulingsBefore);
    rulings.add(ruling);
    assertEquals(observations, logbook.observations());
    assertEquals(rulings, logbook.rulings());
    assertEquals(before + 4, logbook.lessonsKept());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "update observation set content = content",
        "update or replace ruling set content = ''",
        "delete from observation",
        "delete from ruling",
        "replace into observation select number, '' from observation",
        "insert or replace into ruling (number, content) select number, '' from ruling",
      })
  void lessons_changedBySql_areRefusedByTheDatabase(String sql) {
    var one = observation();
    logbook.append(one);
    logbook.append(new Ruling.TakenUp(one.trait(), MONDAY));
    var observations = logbook.observations();
    var rulings = logbook.rulings();
    var e = assertThrows(SQLException.class, () -> run(sql));
    assertTrue(e.getMessage().contains("never"), e.getMessage());
    assertEquals(observations, logbook.observations());
    assertEquals(rulings, logbook.rulings());
  }

  @Test
  void append_fromTwoThreads_losesNoneAndKeepsNoneTwice() throws Exception {
    var id = newJob();
    int each = 200;
    var together = new CyclicBarrier(2);
    // Every id is sent by both: one of them is first.
    Callable<Long> sender =
        () -> {
          together.await();
          return IntStream.range(0, each)
              .filter(number -> logbook.append(id, entry("shared-" + number)))
              .count();
        };
    Callable<Long> own =
        () -> {
          var prefix = Thread.currentThread().getName();
          together.await();
          return IntStream.range(0, each)
              .filter(number -> logbook.append(id, entry(prefix + number)))
              .count();
        };
    var threads = Executors.newFixedThreadPool(2);
    try {
      long shared = 0;
      for (var done : threads.invokeAll(List.of(sender, sender))) {
        shared += done.get();
      }
      assertEquals(each, shared);
      for (var done : threads.invokeAll(List.of(own, own))) {
        assertEquals(each, done.get());
      }
    } finally {
      threads.shutdownNow();
    }
    var ids = logbook.entries(id).stream().map(Entry::id).toList();
    assertEquals(3 * each, ids.size());
    assertEquals(3 * each, new HashSet<>(ids).size());
  }

  @Test
  void append_whileAnotherProgramWrites_waits() throws Exception {
    var id = newJob();
    var file = text("select file from pragma_database_list where name = 'main'");
    try (var other = DriverManager.getConnection("jdbc:sqlite:" + file);
        var statement = other.createStatement()) {
      statement.execute("begin immediate");
      var release = new Thread(() -> releaseAfter(statement, 300));
      release.start();
      assertTrue(logbook.append(id, entry("1")));
      release.join();
    }
    assertEquals(List.of(entry("1")), logbook.entries(id));
  }

  private static void releaseAfter(java.sql.Statement statement, long milliseconds) {
    try {
      Thread.sleep(milliseconds);
      statement.execute("commit");
    } catch (InterruptedException | SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void copyTo_newFile_holdsAllThatIsKept(@TempDir Path folder) throws Exception {
    var id = newJob();
    logbook.append(id, entry("1"));
    logbook.append(observation());
    var copy = folder.resolve("it's a copy.db");
    logbook.copyTo(copy);
    try (var opened = DriverManager.getConnection("jdbc:sqlite:" + copy)) {
      assertEquals("ok", text(opened, "pragma integrity_check"));
      for (var table :
          List.of(
              "shop_item", "job", "begun_plan", "set_up_marks", "entry", "observation", "ruling")) {
        assertEquals(
            text("select count(*) from " + table), text(opened, "select count(*) from " + table));
      }
      assertEquals("1", text(opened, "select id from entry where job = '" + id + "'"));
      assertEquals(
          text("select count(*) from sqlite_master where type = 'trigger'"),
          text(opened, "select count(*) from sqlite_master where type = 'trigger'"));
    }
    try (var files = Files.list(folder)) {
      assertEquals(List.of(copy), files.toList());
    }
  }

  @Test
  void copyTo_fileThatIsThere_leavesItAlone(@TempDir Path folder) throws Exception {
    var there = Files.writeString(folder.resolve("there.db"), "mine");
    assertThrows(FileAlreadyExistsException.class, () -> logbook.copyTo(there));
    assertEquals("mine", Files.readString(there));
    assertThrows(
        java.io.IOException.class, () -> logbook.copyTo(folder.resolve("no/such/folder.db")));
    assertNotNull(logbook.jobs());
  }
}
