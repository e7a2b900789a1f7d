package org.proofcut.logbook;

import java.sql.DriverManager;
import java.time.Instant;
import java.util.Properties;
import org.proofcut.core.run.Act;
import org.proofcut.core.run.Entry;

/** A second program that adds to the record of a job and says, after each commit, that it did. */
final class AppendsUntilKilled {

  private AppendsUntilKilled() {}

  /**
   * @param arguments place of the database, id of the job, then settings as {@code name=value}
   */
  public static void main(String[] arguments) throws Exception {
    var settings = new Properties();
    for (int i = 2; i < arguments.length; i++) {
      var setting = arguments[i].split("=", 2);
      settings.setProperty(setting[0], setting[1]);
    }
    try (var connection = DriverManager.getConnection(arguments[0], settings);
        var insert =
            connection.prepareStatement(
                "insert into entry (job, id, happened, device, operation, fingerprint, act)"
                    + " values (?, ?, ?, ?, ?, ?, ?)")) {
      connection.setAutoCommit(false);
      for (int number = 0; ; number++) {
        var act = new Act.WentWithout("gear", "x".repeat(number % 5000));
        var row =
            EntryRow.of(
                arguments[1], new Entry("e" + number, Instant.EPOCH, "tablet", "dado", "abc", act));
        insert.setString(1, row.job);
        insert.setString(2, row.entryId);
        insert.setString(3, row.happened);
        insert.setString(4, row.device);
        insert.setString(5, row.operation);
        insert.setString(6, row.fingerprint);
        insert.setString(7, row.act);
        insert.executeUpdate();
        connection.commit();
        // In one piece: println could die between the words and the end of the line.
        System.out.print(row.entryId + "\n");
        System.out.flush();
      }
    }
  }
}
