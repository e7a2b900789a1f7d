package org.proofcut.content;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Text that is compared with a file, and written to it with {@code -Dproofcut.golden=write}: the
 * difference is then read before it is committed.
 */
final class Golden {

  private static final boolean WRITE = "write".equals(System.getProperty("proofcut.golden"));

  private Golden() {}

  static void assertSame(Path file, String text) throws IOException {
    if (WRITE) {
      Files.createDirectories(file.getParent());
      Files.writeString(file, text);
    }
    assertEquals(
        Files.exists(file) ? Files.readString(file) : "",
        text,
        () -> file + " is stale; run with -Dproofcut.golden=write and read what changed");
  }
}
