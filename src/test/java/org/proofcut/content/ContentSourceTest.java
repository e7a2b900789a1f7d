package org.proofcut.content;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ContentSourceTest {

  private static final Path FOLDER = Path.of("content");

  @Test
  void bundled_fromClasses_isTheFolder() {
    assertSame(ContentSource.folder(FOLDER), ContentSource.bundled());
  }

  /** A space and a plus in the jar's name are what paths and addresses write differently. */
  @Test
  void bundled_fromAJar_isTheFolder(@TempDir Path temp) throws Exception {
    var jar = temp.resolve("a shop+more.jar");
    var folder = ContentSource.folder(FOLDER);
    try (var zip = new ZipOutputStream(Files.newOutputStream(jar))) {
      for (var file : folder.files().entrySet()) {
        zip.putNextEntry(new ZipEntry("content/" + file.getKey()));
        zip.write(file.getValue());
      }
    }
    try (var loader = new URLClassLoader(new URL[] {jar.toUri().toURL()}, null)) {
      assertSame(folder, ContentSource.from(loader));
    }
  }

  private static void assertSame(ContentSource expected, ContentSource actual) {
    assertEquals(expected.files().keySet(), actual.files().keySet());
    expected
        .files()
        .forEach((path, bytes) -> assertArrayEquals(bytes, actual.files().get(path), path));
  }
}
