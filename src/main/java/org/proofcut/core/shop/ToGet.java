package org.proofcut.core.shop;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

/**
 * Gear to be got, by kind and marks and never by maker.
 *
 * @param kind id of the kind
 * @param name what the kind is called
 * @param needed the marks to look for; empty where any piece of the kind will do
 * @param forWhat jobs with their sheets, and machines, that ask for it
 * @param why why each owned piece does not do; empty where none is owned
 * @param until the last day that what is owned serves; empty where nothing serves today
 */
public record ToGet(
    String kind,
    String name,
    Optional<String> needed,
    List<String> forWhat,
    List<String> why,
    Optional<LocalDate> until) {

  /** Gear that something asks for. */
  public record Wanted(String forWhat, GearOffer offer) {}

  public ToGet {
    forWhat = List.copyOf(forWhat);
    why = List.copyOf(why);
  }

  /**
   * What is missing or out of date, then what ends within {@link GearLife#SOON_IN_DAYS}; each once,
   * with all that it is wanted for.
   */
  public static List<ToGet> of(List<Wanted> wanted, LocalDate today) {
    var forWhat = new LinkedHashMap<GearOffer, LinkedHashSet<String>>();
    for (var one : wanted) {
      forWhat.computeIfAbsent(one.offer(), offer -> new LinkedHashSet<>()).add(one.forWhat());
    }
    var missing = new ArrayList<ToGet>();
    var soon = new ArrayList<ToGet>();
    forWhat.forEach(
        (offer, all) -> {
          if (offer.best(today).isEmpty()) {
            missing.add(toGet(offer, all, offer.refused(today), Optional.empty()));
          } else if (offer.best(today.plusDays(GearLife.SOON_IN_DAYS)).isEmpty()) {
            soon.add(toGet(offer, all, offer.refused(today), lastDay(offer, today)));
          }
        });
    missing.addAll(soon);
    return oncePerKind(missing);
  }

  /** Where marks are wanted of a kind, what asks for any piece of it is served by the same. */
  private static List<ToGet> oncePerKind(List<ToGet> all) {
    var once = new ArrayList<ToGet>();
    for (var one : all) {
      var marked = marked(one.kind(), all);
      if (one.needed().isPresent() || marked.isEmpty()) {
        boolean first = marked.filter(one::equals).isPresent();
        once.add(first ? one.forAll(all) : one);
      }
    }
    return List.copyOf(once);
  }

  private static Optional<ToGet> marked(String kind, List<ToGet> all) {
    return all.stream()
        .filter(one -> one.kind().equals(kind) && one.needed().isPresent())
        .findFirst();
  }

  private ToGet forAll(List<ToGet> all) {
    var together = new LinkedHashSet<>(forWhat);
    all.stream()
        .filter(one -> one.kind.equals(kind) && one.needed.isEmpty())
        .forEach(one -> together.addAll(one.forWhat));
    return new ToGet(kind, name, needed, List.copyOf(together), why, until);
  }

  /** Whether nothing that is owned serves today. */
  public boolean isMissing() {
    return until.isEmpty();
  }

  /** The kind with the marks to look for. */
  public String wanted() {
    return needed.map(marks -> name + ", " + marks).orElse(name);
  }

  private static Optional<LocalDate> lastDay(GearOffer offer, LocalDate today) {
    return offer.pieces().stream()
        .filter(piece -> piece.refusedOn(today).isEmpty())
        .flatMap(piece -> piece.life().lastDay().stream())
        .max(LocalDate::compareTo);
  }

  private static ToGet toGet(
      GearOffer offer, LinkedHashSet<String> forWhat, List<String> why, Optional<LocalDate> until) {
    return new ToGet(offer.kind(), offer.name(), offer.needed(), List.copyOf(forWhat), why, until);
  }
}
