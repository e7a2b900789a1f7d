package org.proofcut.content.yaml;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Which known names were probably meant by a misspelt one. */
final class NearestNames {

  private static final int OFFERED = 3;

  /** Nobody misspells a name into so many letters, and comparing them would take long. */
  private static final int LONGEST = 80;

  private NearestNames() {}

  /** At most three names, the nearest first; none if all are far off. */
  static List<String> to(String name, Collection<String> known) {
    if (name.length() > LONGEST) {
      return List.of();
    }
    var farthest = Math.max(2, name.length() / 3);
    return known.stream()
        .filter(candidate -> edits(name, candidate) <= farthest)
        .sorted(
            Comparator.comparingInt((String candidate) -> edits(name, candidate))
                .thenComparing(Comparator.naturalOrder()))
        .limit(OFFERED)
        .toList();
  }

  /** Letters to insert, drop or change to make one of the other (Levenshtein's distance). */
  private static int edits(String from, String to) {
    var previous = new int[to.length() + 1];
    for (var j = 0; j <= to.length(); j++) {
      previous[j] = j;
    }
    for (var i = 1; i <= from.length(); i++) {
      var current = new int[to.length() + 1];
      current[0] = i;
      for (var j = 1; j <= to.length(); j++) {
        var change = previous[j - 1] + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
        current[j] = Math.min(change, 1 + Math.min(previous[j], current[j - 1]));
      }
      previous = current;
    }
    return previous[to.length()];
  }
}
