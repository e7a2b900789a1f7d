package org.proofcut.content;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.zip.ZipFile;

/**
 * The files of a content folder, read into memory.
 *
 * @param files by their path below the folder, with {@code /} between
 */
record ContentSource(SortedMap<String, byte[]> files) {

  private static final String FOLDER = "content/";
  private static final String ALWAYS_THERE = FOLDER + "facts.yaml";

  ContentSource {
    files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
  }

  /** A folder on disk. */
  static ContentSource folder(Path folder) {
    var files = new TreeMap<String, byte[]>();
    try (var paths = Files.walk(folder)) {
      for (var path : (Iterable<Path>) paths.filter(Files::isRegularFile)::iterator) {
        files.put(folder.relativize(path).toString().replace('\\', '/'), Files.readAllBytes(path));
      }
    } catch (IOException e) {
      throw new UncheckedIOException("can't read the content folder " + folder, e);
    }
    return new ContentSource(files);
  }

  /** Not as a file system: Java would read the jar's thousands of entries a second time for it. */
  private static ContentSource jar(Path jar) throws IOException {
    var files = new TreeMap<String, byte[]>();
    try (var zip = new ZipFile(jar.toFile())) {
      for (var entry : Collections.list(zip.entries())) {
        if (entry.getName().startsWith(FOLDER) && !entry.isDirectory()) {
          files.put(
              entry.getName().substring(FOLDER.length()), zip.getInputStream(entry).readAllBytes());
        }
      }
    }
    return new ContentSource(files);
  }

  /** The folder that comes with the program, from its jar or its classes. */
  static ContentSource bundled() {
    return from(ContentSource.class.getClassLoader());
  }

  static ContentSource from(ClassLoader loader) {
    var resource = loader.getResource(ALWAYS_THERE);
    if (resource == null) {
      throw new IllegalStateException("the program was packed without its content folder");
    }
    try {
      if (!resource.getProtocol().equals("jar")) {
        return folder(Path.of(resource.toURI()).getParent());
      }
      // jar:file:/…/proofcut.jar!/content/facts.yaml
      var text = resource.getPath();
      var jar = Path.of(new URI(text.substring(0, text.indexOf("!/"))));
      return jar(jar);
    } catch (IOException e) {
      throw new UncheckedIOException("can't read the content in " + resource, e);
    } catch (URISyntaxException e) {
      throw new IllegalStateException("no place to read from: " + resource, e);
    }
  }
}
