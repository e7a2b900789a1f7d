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

  private final List<Fault> faults = new ArrayList<>();

  /** Notes a fault; see {@link Problem} for the three sentences. */
  public void add(Spot spot, String what, String allowed, String doThis) {
    faults.add(new Fault(spot, Problem.stops(spot.toString(), what, allowed, doThis)));
  }

  /**
   * Notes a name that nobody knows, with the nearest ones that are known.
   *
   * @param kind what the name should be the name of, such as {@code key} or {@code source}
   */
  public void addUnknown(Spot spot, String kind, String name, Collection<String> known) {
    var nearest = NearestNames.to(name, known);
    add(
        spot,
        "\"%s\" is no known %s".formatted(name, kind),
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

  /** All faults, in the order of files and lines. */
  public List<Fault> all() {
    return faults.stream()
        .sorted(
            Comparator.comparing((Fault fault) -> fault.spot().file())
                .thenComparing(fault -> fault.spot().line())
                .thenComparing(fault -> fault.spot().column()))
        .toList();
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
