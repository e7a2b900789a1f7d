package org.proofcut.content;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.jboss.logging.Logger;
import org.proofcut.content.yaml.Fault;
import org.proofcut.content.yaml.Faults;
import org.proofcut.content.yaml.Spot;

/**
 * The folder of a shop's own content. Whatever lies in it, looking at it takes little and reading
 * it ends: what is too large, too many or too deep is refused before it is read.
 */
public final class OwnFolder {

  static final int LARGEST_FILE = 256 * 1024;

  /** Several times all of ours; read, a letter of YAML may take a hundred times its size. */
  static final int LARGEST_IN_ALL = 2 * 1024 * 1024;

  static final int MOST = 2_000;
  static final int DEEPEST = 6;

  private static final Logger LOG = Logger.getLogger(OwnFolder.class);

  /** As in ours; an editor's own files, hidden or ending in a tilde, are passed by before. */
  private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9_.-]*|README\\.md");

  private static final String BOUNDS =
      "at most 256 KB a file, 2,000 files and folders, 2 MB in all, folders %d deep"
          .formatted(DEEPEST);

  private final Path folder;

  public OwnFolder(Path folder) {
    this.folder = folder.toAbsolutePath().normalize();
  }

  /**
   * What lies there now; two looks are equal while nothing has changed.
   *
   * @param there whether there is such a folder
   * @param files by their path below the folder, each with its size and when it was written
   * @param refused what can't be read at all
   */
  public record Look(boolean there, Map<String, String> files, List<Fault> refused, int more) {

    private static final Look NOTHING = new Look(false, Map.of(), List.of(), 0);

    /** What there is when there is no folder. */
    public static Look nothing() {
      return NOTHING;
    }

    /** Whether it leaves our content as it is. */
    public boolean isEmpty() {
      return files.isEmpty() && refused.isEmpty();
    }
  }

  public Path path() {
    return folder;
  }

  /** Looks at names, sizes and times, and reads nothing. */
  public Look look() {
    if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      return Look.nothing();
    }
    var walk = new Walk();
    if (Files.isDirectory(folder)) {
      walk.into(folder, 0);
    } else {
      walk.faults.add(
          Spot.of("."),
          "%s is no folder".formatted(folder),
          "a folder, or nothing",
          "Move it away, or make a folder of that name.");
    }
    return new Look(true, walk.files, walk.faults.all(), walk.faults.more());
  }

  /**
   * Reads what was looked at and lays it over ours. Nothing is thrown, whatever is written there.
   */
  public Overlay lay(Look look, Content ours) {
    var files = List.copyOf(look.files().keySet());
    if (!look.refused().isEmpty()) {
      return new Overlay(new Faulty(look.refused(), look.more()), files, List.of());
    }
    if (files.isEmpty()) {
      return new Overlay(ours, files, List.of());
    }
    var faults = new Faults();
    var read = new TreeMap<String, byte[]>();
    files.forEach(path -> bytes(path, faults).ifPresent(bytes -> read.put(path, bytes)));
    if (!faults.none()) {
      return new Overlay(new Faulty(faults.all(), faults.more()), files, List.of());
    }
    try {
      return ContentReader.read(ContentSource.bundled(), new ContentSource(read), ours);
    } catch (RuntimeException | StackOverflowError e) {
      LOG.error("The shop's own content can't be read", e);
      faults.add(
          Spot.of("."),
          "it can't be read: " + e.getClass().getSimpleName(),
          "files like those in the program's own content folder",
          "Take out what was changed last.");
      return new Overlay(new Faulty(faults.all(), 0), files, List.of());
    }
  }

  private Optional<byte[]> bytes(String path, Faults faults) {
    // Once more without following: it may have been changed for a link since it was looked at.
    try (var in = Files.newInputStream(folder.resolve(path), LinkOption.NOFOLLOW_LINKS)) {
      var bytes = in.readNBytes(LARGEST_FILE + 1);
      if (bytes.length <= LARGEST_FILE) {
        return Optional.of(bytes);
      }
      addTooMuch(faults, path, "the file grew beyond 256 KB while it was read");
    } catch (IOException e) {
      addUnreadable(faults, path);
    }
    return Optional.empty();
  }

  private static void addTooMuch(Faults faults, String path, String what) {
    faults.add(Spot.of(path), what, BOUNDS, "Take out what is not needed.");
  }

  private static void addUnreadable(Faults faults, String path) {
    faults.add(
        Spot.of(path),
        "it can't be opened",
        "files and folders that this program may read",
        "Let the program read it, or take it out.");
  }

  /** One walk through the folder, which ends where there is too much of it. */
  private final class Walk {
    private final Faults faults = new Faults();
    private final TreeMap<String, String> files = new TreeMap<>();
    private int met;
    private long bytes;

    void into(Path within, int depth) {
      try (var entries = Files.newDirectoryStream(within)) {
        for (var entry : entries) {
          if (met > MOST) {
            return;
          }
          at(entry, depth);
        }
      } catch (IOException | DirectoryIteratorException e) {
        addUnreadable(faults, name(within));
      }
    }

    private void at(Path entry, int depth) throws IOException {
      met++;
      if (met > MOST) {
        addTooMuch(faults, ".", "more than 2,000 files and folders");
        return;
      }
      var last = entry.getFileName().toString();
      if (last.startsWith(".") || last.endsWith("~")) {
        return;
      }
      var path = name(entry);
      if (!NAME.matcher(last).matches()) {
        faults.add(
            Spot.of(path),
            "the name holds a sign that no name of ours has",
            "small letters, digits, hyphens, underscores and dots",
            "Rename it.");
        return;
      }
      BasicFileAttributes is;
      try {
        is = Files.readAttributes(entry, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
      } catch (IOException e) {
        addUnreadable(faults, path);
        return;
      }
      if (is.isSymbolicLink()) {
        faults.add(
            Spot.of(path),
            "it is a link, and links are not followed",
            "files and folders that lie there themselves",
            "Put the file itself there.");
      } else if (is.isDirectory()) {
        folder(entry, path, depth);
      } else if (is.isRegularFile()) {
        file(entry, path, is);
      } else {
        faults.add(Spot.of(path), "it is neither a file nor a folder", "files", "Take it out.");
      }
    }

    private void folder(Path entry, String path, int depth) {
      if (entry.getFileName().toString().endsWith(".yaml")) {
        faults.add(
            Spot.of(path),
            "a folder has the name of a file",
            "folders named as ours",
            "Rename it.");
      } else if (depth == DEEPEST) {
        addTooMuch(faults, path, "the folders lie more than %d deep".formatted(DEEPEST));
      } else {
        into(entry, depth + 1);
      }
    }

    private void file(Path entry, String path, BasicFileAttributes is) {
      bytes += is.size();
      if (is.size() > LARGEST_FILE) {
        addTooMuch(faults, path, "the file has %,d bytes".formatted(is.size()));
      } else if (bytes > LARGEST_IN_ALL) {
        addTooMuch(faults, ".", "more than 2 MB in all");
        met = MOST + 1;
      } else if (!Files.isReadable(entry)) {
        addUnreadable(faults, path);
      } else {
        files.put(path, is.size() + " bytes of " + is.lastModifiedTime() + ", " + is.fileKey());
      }
    }

    /** With nothing in it that a log or a page would take for more than a name. */
    private String name(Path entry) {
      var path = folder.relativize(entry).toString().replace('\\', '/');
      return path.isEmpty() ? "." : path.replaceAll("\\p{Cntrl}", "?");
    }
  }
}
