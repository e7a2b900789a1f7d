package org.proofcut.content;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Each folder is laid over sound content and breaks it in one way; this is what is then said. */
class BrokenContentTest {

  private static final Path FOLDER = Path.of("src/test/resources/broken-content");
  private static final String EXPECTED = "expected.txt";

  @TestFactory
  Stream<DynamicTest> faults() throws IOException {
    try (var folders = Files.list(FOLDER)) {
      return folders.sorted().toList().stream()
          .map(folder -> dynamicTest(folder.getFileName().toString(), () -> read(folder)));
    }
  }

  private static void read(Path folder) throws IOException {
    var files = new TreeMap<>(ContentSource.bundled().files());
    files.putAll(ContentSource.folder(folder).files());
    files.remove(EXPECTED);
    var loaded = ContentReader.read(new ContentSource(files), List.copyOf(LimitFolder.ALL));
    var faulty = assertInstanceOf(Faulty.class, loaded);
    Golden.assertSame(folder.resolve(EXPECTED), faulty.printed());
  }
}
