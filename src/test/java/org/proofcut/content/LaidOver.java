package org.proofcut.content;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.TreeMap;
import org.proofcut.core.evidence.Problem;

/** Our content, more of ours that only a test needs, and a shop's own laid over both. */
final class LaidOver {

  private final TreeMap<String, byte[]> below = new TreeMap<>(ContentSource.bundled().files());
  private final TreeMap<String, byte[]> own = new TreeMap<>();
  private boolean more;

  /** One more file of ours. */
  LaidOver ours(String path, String text) {
    below.put(path, text.getBytes(StandardCharsets.UTF_8));
    more = true;
    return this;
  }

  /** A file of the shop's. */
  LaidOver own(String path, String text) {
    return own(path, text.getBytes(StandardCharsets.UTF_8));
  }

  LaidOver own(String path, byte[] bytes) {
    own.put(path, bytes);
    return this;
  }

  /** What stands in a file of ours. */
  static String text(String path) {
    return new String(ContentSource.bundled().files().get(path), StandardCharsets.UTF_8);
  }

  /** Ours alone. */
  Content below() {
    return more
        ? ContentReader.read(new ContentSource(below), LimitFolder.ALL).orThrow()
        : Content.bundled();
  }

  Overlay laid() {
    return ContentReader.read(new ContentSource(below), new ContentSource(own), below());
  }

  Content content() {
    return laid().loaded().orThrow();
  }

  List<String> changes() {
    return laid().changes().stream().map(Change::words).toList();
  }

  List<Problem> problems() {
    return assertInstanceOf(Faulty.class, laid().loaded()).problems();
  }
}
