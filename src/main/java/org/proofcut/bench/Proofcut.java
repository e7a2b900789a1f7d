package org.proofcut.bench;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;
import org.proofcut.content.Content;

/** Starts the service, and has its content read on another core while the database opens. */
@QuarkusMain
public final class Proofcut {

  private Proofcut() {}

  public static void main(String... arguments) {
    var reading = new Thread(Proofcut::readContent, "content");
    // A start that ends for another reason waits for nobody.
    reading.setDaemon(true);
    reading.start();
    Quarkus.run(arguments);
  }

  private static void readContent() {
    try {
      Content.bundled();
    } catch (IllegalStateException faulty) {
      // Not lost: the house asks for the content next, is told the same, and ends the start.
    }
  }
}
