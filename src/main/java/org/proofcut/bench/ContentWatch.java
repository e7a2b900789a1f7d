package org.proofcut.bench;

import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.util.HexFormat;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;

/**
 * Has the shop's folder looked at every second, and plans what is in work anew when its content has
 * changed: also when that happened while nothing was running.
 */
@ApplicationScoped
class ContentWatch {

  private static final Logger LOG = Logger.getLogger(ContentWatch.class);

  private final House house;
  private final WorkBench bench;
  private final Duration every;
  private final Path plannedBy;
  private ScheduledExecutorService looking;

  /**
   * Whether planning anew is still to be done, as when it failed before. At a start it is: the
   * power may have gone between what was recorded, such as gear that failed, and the plans that
   * follow it.
   */
  private boolean owed = true;

  ContentWatch(
      House house,
      WorkBench bench,
      @ConfigProperty(name = "proofcut.folder") Path folder,
      @ConfigProperty(name = "proofcut.content.every") Duration every) {
    this.house = house;
    this.bench = bench;
    this.every = every;
    // What the jobs in work were last planned by; not there while that is ours alone.
    plannedBy = folder.resolve("planned-by-own-content");
  }

  void start(@Observes StartupEvent event) {
    looking =
        Executors.newSingleThreadScheduledExecutor(
            task -> {
              var thread = new Thread(task, "own-content");
              thread.setDaemon(true);
              return thread;
            });
    looking.scheduleWithFixedDelay(
        this::look, every.toMillis(), every.toMillis(), TimeUnit.MILLISECONDS);
  }

  void stop(@Observes ShutdownEvent event) throws InterruptedException {
    looking.shutdown();
    // A plan that is being kept is kept.
    looking.awaitTermination(10, TimeUnit.SECONDS);
  }

  private void look() {
    try {
      owed |= house.lookAgain();
      var inForce = digest(house.inForce());
      if (owed || !inForce.equals(lastPlannedBy())) {
        bench.planAllAgain();
        keep(inForce);
        owed = false;
      }
    } catch (IOException | RuntimeException | StackOverflowError e) {
      // Whatever gets out of here ends the looking for good.
      LOG.error("The shop's own content could not be looked at; it is tried again", e);
    }
  }

  private String lastPlannedBy() throws IOException {
    return Files.exists(plannedBy) ? Files.readString(plannedBy) : "";
  }

  private void keep(String inForce) throws IOException {
    if (inForce.isEmpty()) {
      Files.deleteIfExists(plannedBy);
    } else {
      Files.writeString(plannedBy, inForce);
    }
  }

  private static String digest(String inForce) {
    if (inForce.isEmpty()) {
      return "";
    }
    try {
      return HexFormat.of()
          .formatHex(
              MessageDigest.getInstance("SHA-256")
                  .digest(inForce.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has it", e);
    }
  }
}
