package org.proofcut.broken.core.impure;

import java.nio.file.Path;
import java.time.Instant;

record Impure(Path file) {

  boolean isOver(Instant end) {
    return Instant.now().isAfter(end);
  }
}
