package org.proofcut.core.checklist;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.proofcut.core.safety.Check.Pause;
import org.proofcut.core.safety.Finding;
import org.proofcut.core.safety.SignalWord;

/**
 * Which cautions of a step stand open at a pause, and which are one tap away. With what is asked at
 * the pause they come to nine things at most: more is not read.
 *
 * @param open in full, the gravest first
 * @param later the others by the pause at which they matter, that of now first; none is left out
 */
public record PauseCautions(List<Finding> open, Map<Pause, List<Finding>> later) {

  /** What a person takes in at one pause. */
  public static final int THINGS = 9;

  private static final int MOST_OPEN = 3;

  public PauseCautions {
    open = List.copyOf(open);
    later = Collections.unmodifiableMap(new LinkedHashMap<>(later));
  }

  /**
   * @param findings all that the rules say, of equally grave ones that for fewer cuts first; stops
   *     stand above a sheet and are no part of this
   * @param known rules that spoke on the sheet before: what is new comes before what was heard
   * @param asked how many items are asked at the pause
   */
  public static PauseCautions at(Pause now, List<Finding> findings, Set<String> known, int asked) {
    var ranked =
        cautions(findings)
            .sorted(
                Comparator.comparing((Finding finding) -> !stands(finding, now))
                    .thenComparing(Finding.GRAVEST_FIRST)
                    .thenComparing(finding -> known.contains(finding.rule())))
            .toList();
    return parted(ranked, Math.max(1, Math.min(MOST_OPEN, THINGS - asked)), now);
  }

  /** Of a step that is only looked up: the gravest of all stand open. */
  public static PauseCautions gravest(List<Finding> findings) {
    return parted(cautions(findings).sorted(Finding.GRAVEST_FIRST).toList(), MOST_OPEN, Pause.SET);
  }

  private static Stream<Finding> cautions(List<Finding> findings) {
    return findings.stream().filter(finding -> finding.effect() == Finding.Effect.CAUTION);
  }

  private static PauseCautions parted(List<Finding> ranked, int mostOpen, Pause now) {
    int open = Math.min(ranked.size(), mostOpen);
    var later = new LinkedHashMap<Pause, List<Finding>>();
    later.put(now, new ArrayList<>());
    for (var pause : Pause.values()) {
      later.putIfAbsent(pause, new ArrayList<>());
    }
    for (var finding : ranked.subList(open, ranked.size())) {
      later.get(finding.matters()).add(finding);
    }
    later.values().removeIf(List::isEmpty);
    return new PauseCautions(ranked.subList(0, open), later);
  }

  /** Danger stands open at every pause; the rest where it matters. */
  private static boolean stands(Finding finding, Pause now) {
    return finding.word() == SignalWord.DANGER || finding.matters() == now;
  }
}
