package org.proofcut.core.shop;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a shop has of one kind of gear or work aid, held against what a step needs of it. Days pass
 * after it was worked out, so what serves is judged on the day.
 *
 * <p>Of several pieces that meet the need the one is offered that exceeds it least; of those, one
 * that has a place before one that has none, then the one whose days end first, so that it is used
 * up; then the one that was entered first.
 *
 * @param kind id of the kind
 * @param name what the kind is called
 * @param needed the marks that are needed; empty where any piece of the kind will do
 * @param pieces all that the shop owns of the kind, the best choice first
 */
public record GearOffer(String kind, String name, Optional<String> needed, List<Piece> pieces) {

  public static final String OUT_OF_USE = "out of use";

  /**
   * One owned piece.
   *
   * @param id of the piece in the shop; empty of a work aid that is at hand and not entered as one
   * @param marked what is marked on it; may be empty
   * @param unfit why it never meets the need as it is; empty where only its days count
   */
  public record Piece(
      String id, String name, String marked, String place, Optional<String> unfit, GearLife life) {

    /** Whether it was entered by itself, and has a place or may get one. */
    public boolean isEntered() {
      return !id.isEmpty();
    }

    private Piece refused(String why) {
      return new Piece(id, name, marked, place, Optional.ofNullable(why), life);
    }

    /** Why it is not offered on a day; empty where it may be. */
    public Optional<String> refusedOn(LocalDate day) {
      return unfit.or(() -> life.overOn(day));
    }
  }

  public GearOffer {
    pieces = List.copyOf(pieces);
  }

  /**
   * Holds what is owned against what is needed.
   *
   * @param leasts ids of the classes that are asked for; the strongest counts
   * @param owned pieces of any kind, in the order entered
   * @param beard whether hair grows where a mask seals
   */
  public static GearOffer of(
      GearKind kind, Collection<String> leasts, List<OwnedGear> owned, boolean beard) {
    var needed = needed(kind, leasts);
    var words = words(needed);
    var pieces =
        owned.stream()
            .filter(piece -> piece.kind().equals(kind.id()))
            .sorted(
                Comparator.comparingInt((OwnedGear piece) -> rank(kind, piece))
                    .thenComparing(piece -> piece.place().isBlank())
                    .thenComparing(piece -> piece.life().lastDay().orElse(LocalDate.MAX)))
            .map(
                piece ->
                    new Piece(
                        piece.id(),
                        piece.name(),
                        marked(kind, piece),
                        piece.place(),
                        unfit(kind, needed, words, piece, beard),
                        piece.life()))
            .sorted(Comparator.comparing(piece -> piece.unfit().isPresent()))
            .toList();
    return new GearOffer(kind.id(), kind.name(), words, pieces);
  }

  /** All that is owned of a kind of work aid; what was only said to be at hand comes last. */
  public static GearOffer of(WorkAid aid, Shop shop) {
    var owned =
        shop.ownedAids().stream()
            .filter(piece -> piece.kind().equals(aid.id()))
            .sorted(
                Comparator.comparing((OwnedAid piece) -> piece.place().isBlank())
                    .thenComparing(piece -> piece.life().lastDay().orElse(LocalDate.MAX)))
            .map(
                piece ->
                    new Piece(
                        piece.id(), piece.name(), "", piece.place(), piece.unfit(), piece.life()));
    var told =
        shop.aids().stream()
            .filter(aid.id()::equals)
            .map(any -> new Piece("", aid.name(), "", "", Optional.empty(), GearLife.UNDATED));
    return new GearOffer(
        aid.id(),
        aid.name(),
        Optional.empty(),
        Stream.concat(owned, told)
            .sorted(Comparator.comparing(piece -> piece.unfit().isPresent()))
            .toList());
  }

  /**
   * The same, held to more than the step asks for.
   *
   * @param marks that are needed
   * @param refused why pieces are not enough, by their ids
   */
  public GearOffer heldTo(String marks, Map<String, String> refused) {
    var held =
        pieces.stream()
            .map(
                piece -> piece.unfit().isPresent() ? piece : piece.refused(refused.get(piece.id())))
            .sorted(Comparator.comparing(piece -> piece.unfit().isPresent()))
            .toList();
    return new GearOffer(kind, name, Optional.of(marks), held);
  }

  /** The best piece whatever the day; empty where none meets the need. */
  public Optional<Piece> fit() {
    return pieces.stream().filter(piece -> piece.unfit().isEmpty()).findFirst();
  }

  /** The piece to take on a day; empty where none meets the need. */
  public Optional<Piece> best(LocalDate day) {
    return pieces.stream().filter(piece -> piece.refusedOn(day).isEmpty()).findFirst();
  }

  /**
   * The same, of those that are in their places where there is one.
   *
   * @param out ids of pieces that somebody has
   */
  public Optional<Piece> best(LocalDate day, Set<String> out) {
    return pieces.stream()
        .filter(piece -> piece.refusedOn(day).isEmpty() && !out.contains(piece.id()))
        .findFirst()
        .or(() -> best(day));
  }

  /** Why each piece that is owned is not offered on a day, piece by piece. */
  public List<String> refused(LocalDate day) {
    return pieces.stream()
        .flatMap(piece -> piece.refusedOn(day).map(why -> piece.name() + ": " + why).stream())
        .toList();
  }

  /** The kind with the marks that are needed: {@code dust mask, FFP3 or P100}. */
  public String wanted() {
    return needed.map(marks -> name + ", " + marks).orElse(name);
  }

  /** One class, the strongest; of classes that are each for a use of their own, all of them. */
  private static List<GearClass> needed(GearKind kind, Collection<String> leasts) {
    var asked = kind.classes().stream().filter(one -> leasts.contains(one.id())).toList();
    return kind.judgedBy() == GearKind.Judged.BY_USE || asked.isEmpty()
        ? asked
        : asked.subList(asked.size() - 1, asked.size());
  }

  private static Optional<String> words(List<GearClass> needed) {
    return needed.isEmpty()
        ? Optional.empty()
        : Optional.of(needed.stream().map(GearClass::name).collect(Collectors.joining(" and ")));
  }

  /** What is not known to be weak is kept for what needs more. */
  private static int rank(GearKind kind, OwnedGear piece) {
    return kind.classOf(piece).map(one -> kind.rank(one.id())).orElse(Integer.MAX_VALUE);
  }

  private static String marked(GearKind kind, OwnedGear piece) {
    return Stream.of(
            piece.rated().map(Object::toString),
            kind.judgedBy() == GearKind.Judged.BY_FIGURE
                ? Optional.<String>empty()
                : kind.classOf(piece).map(GearClass::name),
            Optional.of(piece.rating()).filter(note -> !note.isBlank()))
        .flatMap(Optional::stream)
        .findFirst()
        .orElse("");
  }

  private static Optional<String> unfit(
      GearKind kind,
      List<GearClass> needed,
      Optional<String> words,
      OwnedGear piece,
      boolean beard) {
    if (piece.outOfUse()) {
      return Optional.of(OUT_OF_USE);
    }
    var own = kind.classOf(piece);
    if (own.isEmpty() && words.isPresent()) {
      return Optional.of("its marks are not entered; needed: " + words.get());
    }
    if (own.isPresent() && !needed.stream().allMatch(least -> meets(kind, own.get(), least))) {
      return Optional.of(own.get().name() + "; needed: " + words.orElse(""));
    }
    // What is not known may seal.
    boolean seals =
        own.map(GearClass::isUndoneByABeard)
            .orElseGet(() -> kind.classes().stream().anyMatch(GearClass::isUndoneByABeard));
    return beard && seals ? Optional.of("does not seal over a beard") : Optional.empty();
  }

  private static boolean meets(GearKind kind, GearClass own, GearClass least) {
    return kind.judgedBy() == GearKind.Judged.BY_USE
        ? own.id().equals(least.id())
        : kind.rank(own.id()) >= kind.rank(least.id());
  }
}
