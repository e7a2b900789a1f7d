package org.proofcut.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.StreamSupport;
import org.eclipse.microprofile.config.ConfigProvider;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.io.TempDir;
import org.proofcut.core.run.Act;

/**
 * What was acknowledged outlives the death of the program. The death of the machine is what {@code
 * synchronous=FULL} is for; no test here can pull that plug.
 */
@QuarkusTest
class LogbookKillTest {

  private static final String SETTINGS = "quarkus.datasource.jdbc.additional-jdbc-properties.";

  @Inject Logbook logbook;

  @RepeatedTest(3)
  void entries_acknowledgedBeforeTheKill_areAllThere(@TempDir Path folder) throws Exception {
    logbook.keep(new JobRecord("killed", Map.of(), Instant.EPOCH, Instant.EPOCH, false));
    var file = folder.resolve("killed.db");
    logbook.copyTo(file);
    logbook.discard("killed");

    var said = folder.resolve("said.txt");
    var process =
        new ProcessBuilder(command("jdbc:sqlite:" + file, "killed"))
            .redirectOutput(said.toFile())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    while (process.isAlive() && Files.readAllLines(said).size() < 300) {
      Thread.sleep(20);
    }
    process.destroyForcibly();
    assertTrue(process.waitFor(10, TimeUnit.SECONDS));
    assertEquals(128 + 9, process.exitValue(), "killed, not ended");
    var acknowledged = Files.readAllLines(said);
    assertTrue(acknowledged.size() >= 300);

    try (var reopened = DriverManager.getConnection("jdbc:sqlite:" + file);
        var statement = reopened.createStatement()) {
      try (var check = statement.executeQuery("pragma integrity_check")) {
        assertEquals("ok", check.getString(1));
      }
      var kept = new ArrayList<String>();
      try (var rows =
          statement.executeQuery(
              "select id, act from entry where job = 'killed' order by number")) {
        while (rows.next()) {
          new Written<>(Act.class).read(rows.getString(2), "killed");
          kept.add(rows.getString(1));
        }
      }
      // One may be kept whose acknowledgement died with the program.
      assertEquals(acknowledged, kept.subList(0, acknowledged.size()));
      assertTrue(kept.size() <= acknowledged.size() + 1, kept.size() + " kept");
    }
  }

  private static List<String> command(String... arguments) {
    var command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                AppendsUntilKilled.class.getName()));
    command.addAll(List.of(arguments));
    var config = ConfigProvider.getConfig();
    StreamSupport.stream(config.getPropertyNames().spliterator(), false)
        .filter(name -> name.startsWith(SETTINGS))
        .map(name -> name.substring(SETTINGS.length()) + "=" + config.getValue(name, String.class))
        .forEach(command::add);
    assertTrue(command.contains("synchronous=FULL"), command.toString());
    return command;
  }
}
