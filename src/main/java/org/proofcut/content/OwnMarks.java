package org.proofcut.content;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.proofcut.content.yaml.Faults;
import org.proofcut.content.yaml.Spot;
import org.proofcut.content.yaml.YamlFile;

/**
 * What of the content is a shop's own, and how a citation says so. Where nothing was laid over
 * ours, nothing is.
 */
final class OwnMarks {

  /** Stands before the path of a file of ours, where a shop's files are laid over it. */
  private static final String OURS = "ours: ";

  private static final String FACTS = "facts.yaml";
  private static final String INSTEAD = "this shop's own instead of ours";
  private static final String OWN = "this shop's own";

  private static final Comparator<Spot> IN_THE_FILE =
      Comparator.comparingInt(Spot::line).thenComparingInt(Spot::column);

  private final Set<String> own;
  private final Set<String> ours;

  /** For each file of entries, where each of them begins. */
  private final Map<String, NavigableMap<Spot, String>> byEntry = new HashMap<>();

  private final Map<String, String> byFile = new HashMap<>();
  private final List<Change> changes = new ArrayList<>();

  OwnMarks(Set<String> own, Set<String> ours) {
    this.own = own;
    this.ours = ours;
  }

  /** The paths of the shop's files. */
  Set<String> own() {
    return own;
  }

  boolean nothing() {
    return own.isEmpty();
  }

  /** How faults call a file of ours. */
  String shown(String path) {
    return own.isEmpty() ? path : OURS + path;
  }

  boolean isOurs(Spot spot) {
    return !own.isEmpty() && spot.file().startsWith(OURS);
  }

  /** In these each entry stands for itself; in any other the file is one thing. */
  static boolean holdsEntries(String path) {
    return path.contains("/limits/")
        || path.startsWith("sources/")
        || path.startsWith("shop/")
        || path.startsWith("stock/")
        || path.startsWith("storage/")
        || path.startsWith("exposure/")
        || path.startsWith(MatrixReader.FOLDER)
        || path.equals("regions.yaml")
        || path.equals("trouble.yaml");
  }

  /** What is laid over a file of ours, and what a citation in it then says. */
  YamlFile lay(YamlFile over, Optional<YamlFile> below) {
    if (over.path().equals(FACTS)) {
      // Refused already; what would follow from it is of no use.
      return below.orElse(over);
    }
    if (!holdsEntries(over.path())) {
      var words = below.isPresent() ? INSTEAD : OWN;
      byFile.put(over.path(), words);
      if (!over.path().endsWith(RuleReader.CASES)) {
        changes.add(new Change(over.path(), over.stem(), over.stem() + ": " + words, false));
      }
      return over;
    }
    var ours = below.map(file -> file.keys().keySet()).orElse(Set.of());
    var begins = byEntry.computeIfAbsent(over.path(), path -> new TreeMap<>(IN_THE_FILE));
    over.keys()
        .forEach(
            (entry, spot) -> {
              var words = words(over, below.filter(file -> ours.contains(entry)), entry);
              begins.put(spot, words);
              changes.add(new Change(over.path(), entry, name(over, entry) + ": " + words, false));
            });
    return below.map(over::over).orElse(over);
  }

  private static String words(YamlFile over, Optional<YamlFile> below, String entry) {
    if (below.isEmpty()) {
      return OWN;
    }
    var here = over.text(entry, "value");
    var there = below.flatMap(file -> file.text(entry, "value"));
    return here.isEmpty() || there.isEmpty()
        ? INSTEAD
        : here.equals(there)
            ? "%s, %s as ours".formatted(OWN, here.get())
            : "this shop: %s instead of %s".formatted(here.get(), there.get());
  }

  private static String name(YamlFile file, String entry) {
    return file.text(entry, "name").map(name -> name + " (" + entry + ")").orElse(entry);
  }

  /** What a citation that is written here says of the shop; empty where it is ours. */
  Optional<String> at(Spot spot) {
    return Optional.ofNullable(byEntry.get(spot.file()))
        .flatMap(begins -> Optional.ofNullable(begins.floorEntry(spot)))
        .map(Map.Entry::getValue)
        .or(() -> Optional.ofNullable(byFile.get(spot.file())));
  }

  /** That a rule of ours stays in force, whatever the shop's says. */
  void oursStays(String id) {
    var file =
        byFile.keySet().stream()
            .filter(path -> path.endsWith("/" + id + ".yaml"))
            .findFirst()
            .orElse("");
    oursStays(file, id);
  }

  /**
   * The same of anything else of ours.
   *
   * @param file in which ours stands
   */
  void oursStays(String file, String id) {
    changes.add(
        new Change(file, id, id + " rests on law: ours stays in force beside this shop's", true));
  }

  List<Change> changes() {
    return List.copyOf(changes);
  }

  /** What the program knows can't be told otherwise, and cases speak of the rule beside them. */
  void refuse(Faults faults) {
    if (own.contains(FACTS)) {
      faults.add(
          Spot.of(FACTS),
          "facts are what the program knows of a step",
          "rules, limits, sources, regions, gear, aids and words",
          "Take the file out; the facts that there are stand on the page of all rules.");
    }
    for (var path : own) {
      if (path.endsWith(RuleReader.CASES)
          && !own.contains(path.replace(RuleReader.CASES, ".yaml"))
          && ours.contains(path.replace(RuleReader.CASES, ".yaml"))) {
        faults.add(
            Spot.of(path),
            "these cases are laid over those of a rule that is ours",
            "a rule of the shop's own with its cases beside it",
            "Put the rule beside them, or take them out.");
      }
    }
  }
}
