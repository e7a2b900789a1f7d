package org.proofcut.content.yaml;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.proofcut.core.evidence.Problem;

/** Collects what is wrong while reading goes on, so that all of it is told at once. */
public final class Faults {

  private static final int NAMES_SHOWN = 12;

  /** So many are told; whoever mends those reads the next ones then. */
  private static final int TOLD = 50;

  /** So many are kept, of which the first are told: a file can hold more than memory does. */
  private static final int KEPT = 2_000;

  /** A line of a file, and what was written there, may be as long as the file. */
  private static final int LONGEST = 300;

  private static final int LONGEST_NAME = 60;

  private final List<Fault> faults = new ArrayList<>();
  private int found;

  /** Notes a fault; see {@link Problem} for the three sentences. */
  public void add(Spot spot, String what, String allowed, String doThis) {
    found++;
    if (faults.size() < KEPT) {
      faults.add(
          new Fault(
              spot.shortened(LONGEST),
              Problem.stops(spot.toString(), shortened(what, LONGEST), allowed, doThis)));
    }
  }

  /** The same, when it was noted elsewhere. */
  public void add(Fault fault) {
    found++;
    faults.add(fault);
  }

  private static String shortened(String text, int longest) {
    return text.length() > longest ? text.substring(0, longest) + "…" : text;
  }

  /**
   * Notes a name that nobody knows, with the nearest ones that are known.
   *
   * @param kind what the name should be the name of, such as {@code key} or {@code source}
   */
  public void addUnknown(Spot spot, String kind, String name, Collection<String> known) {
    if (faults.size() == KEPT) {
      // Not looked for in vain, a million times.
      found++;
      return;
    }
    var nearest = NearestNames.to(name, known);
    add(
        spot,
        "\"%s\" is no known %s".formatted(shortened(name, LONGEST_NAME), kind),
        some(known),
        nearest.isEmpty()
            ? "Write one of these, or take it out."
            : "Write " + String.join(" or ", nearest) + ".");
  }

  /** Notes a name unless it is known; see {@link #addUnknown}. */
  public void refuseUnknown(Located<String> name, String kind, Collection<String> known) {
    if (!known.contains(name.value())) {
      addUnknown(name.spot(), kind, name.value(), known);
    }
  }

  /** How many there are beyond {@link #all}. */
  public int more() {
    return Math.max(0, found - TOLD);
  }

  /** The first faults, in the order of files and lines. */
  public List<Fault> all() {
    return faults.stream()
        .sorted(
            Comparator.comparing((Fault fault) -> fault.spot().file())
                .thenComparing(fault -> fault.spot().line())
                .thenComparing(fault -> fault.spot().column()))
        .limit(TOLD)
        .toList();
  }

  /** Leaves out all but these, if there are any of these: the others may only follow from them. */
  public void preferThoseIn(Collection<String> files) {
    var preferred = faults.stream().filter(fault -> files.contains(fault.spot().file())).toList();
    if (!preferred.isEmpty()) {
      found -= faults.size() - preferred.size();
      faults.retainAll(preferred);
    }
  }

  public boolean none() {
    return faults.isEmpty();
  }

  /** So many names as a person will read; the rest is counted. */
  static String some(Collection<String> names) {
    if (names.isEmpty()) {
      return "nothing; there are none yet";
    }
    var shown = names.stream().sorted().limit(NAMES_SHOWN).collect(Collectors.joining(", "));
    var more = names.size() - NAMES_SHOWN;
    return more > 0 ? shown + " … and " + more + " more" : shown;
  }
}
