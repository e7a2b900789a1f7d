package org.proofcut.logbook;

import io.quarkus.flyway.FlywayConfigurationCustomizer;
import io.quarkus.runtime.PreventFurtherStepsException;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.jboss.logging.Logger;

/** Makes the folder that everything is kept in, before anything opens the database in it. */
@Singleton
final class DataFolder implements FlywayConfigurationCustomizer {

  private static final Logger LOG = Logger.getLogger("org.proofcut.logbook");

  private final Path folder;

  DataFolder(@ConfigProperty(name = "proofcut.folder") Path folder) {
    this.folder = folder.toAbsolutePath().normalize();
  }

  @Override
  public void customize(FluentConfiguration migration) {
    make();
    LOG.infof("Everything is kept in %s", folder.resolve("proofcut.db"));
  }

  void make() {
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw refused("can't be made (" + e + ")");
    }
    if (!Files.isWritable(folder)) {
      throw refused("can't be written to");
    }
  }

  /** An exception that ends the start with its message alone. */
  private PreventFurtherStepsException refused(String why) {
    return new PreventFurtherStepsException(
        "Proofcut keeps everything in the folder "
            + folder
            + ", which "
            + why
            + ". Make it writable, or set PROOFCUT_FOLDER to a folder that is.",
        1);
  }
}
