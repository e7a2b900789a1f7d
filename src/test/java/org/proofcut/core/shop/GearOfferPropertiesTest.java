package org.proofcut.core.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.shop.GearForTests.MASK;
import static org.proofcut.core.shop.GearForTests.TODAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Choosing against a second way to choose: every piece tried against every other. */
class GearOfferPropertiesTest {

  private static final List<String> CLASSES = List.of("one", "two", "three", "hood");

  @Property
  void best_isWhatTryingEveryPieceFinds(
      @ForAll("owned") List<OwnedGear> drawn,
      @ForAll("leasts") List<String> leasts,
      @ForAll boolean beard,
      @ForAll("days") LocalDate day) {
    var owned = numbered(drawn);
    var offer = GearOffer.of(MASK, leasts, owned, beard);
    assertEquals(
        tried(owned, leasts, beard, day),
        offer.best(day).map(GearOffer.Piece::id),
        () -> owned + " " + leasts + " " + beard + " " + day);
  }

  @Property
  void everyPiece_isOfferedOrSaysWhyNot(
      @ForAll("owned") List<OwnedGear> drawn,
      @ForAll("leasts") List<String> leasts,
      @ForAll boolean beard,
      @ForAll("days") LocalDate day) {
    var owned = numbered(drawn);
    var offer = GearOffer.of(MASK, leasts, owned, beard);
    assertEquals(owned.size(), offer.pieces().size());
    long fit = owned.stream().filter(one -> serves(one, leasts, beard, day)).count();
    assertEquals(owned.size() - fit, offer.refused(day).size());
    offer.refused(day).forEach(why -> assertTrue(why.matches("piece [0-9]+: .+"), why));
  }

  @Property
  void order_inWhichNeedsAreAsked_changesNothing(
      @ForAll("owned") List<OwnedGear> drawn, @ForAll("leasts") List<String> leasts) {
    var reversed = new ArrayList<>(leasts);
    java.util.Collections.reverse(reversed);
    assertEquals(
        GearOffer.of(MASK, leasts, numbered(drawn), false),
        GearOffer.of(MASK, new HashSet<>(reversed), numbered(drawn), false));
  }

  private static Optional<String> tried(
      List<OwnedGear> owned, List<String> leasts, boolean beard, LocalDate day) {
    Optional<OwnedGear> best = Optional.empty();
    for (var one : owned) {
      if (serves(one, leasts, beard, day) && (best.isEmpty() || isBetter(one, best.get()))) {
        best = Optional.of(one);
      }
    }
    return best.map(OwnedGear::id);
  }

  private static boolean serves(
      OwnedGear piece, List<String> leasts, boolean beard, LocalDate day) {
    if (piece.outOfUse()
        || piece.life().goodUntil().map(day::isAfter).orElse(false)
        || piece.life().inspectBy().map(day::isAfter).orElse(false)) {
      return false;
    }
    var marked = piece.marked();
    if (marked.isEmpty()) {
      return leasts.isEmpty() && !beard;
    }
    for (var least : leasts) {
      if (CLASSES.indexOf(marked.get()) < CLASSES.indexOf(least)) {
        return false;
      }
    }
    return !beard || marked.get().equals("hood");
  }

  /** Strictly: of two alike the one entered first stays. */
  private static boolean isBetter(OwnedGear one, OwnedGear other) {
    int grade = grade(one) - grade(other);
    if (grade != 0) {
      return grade < 0;
    }
    if (one.place().isEmpty() != other.place().isEmpty()) {
      return other.place().isEmpty();
    }
    return end(one) < end(other);
  }

  private static int grade(OwnedGear piece) {
    return piece.marked().map(CLASSES::indexOf).orElse(99);
  }

  private static long end(OwnedGear piece) {
    long good = piece.life().goodUntil().map(LocalDate::toEpochDay).orElse(Long.MAX_VALUE);
    long looked = piece.life().inspectBy().map(LocalDate::toEpochDay).orElse(Long.MAX_VALUE);
    return Math.min(good, looked);
  }

  private static List<OwnedGear> numbered(List<OwnedGear> drawn) {
    var numbered = new ArrayList<OwnedGear>();
    for (var one : drawn) {
      numbered.add(
          GearForTests.piece(
              MASK,
              "piece " + numbered.size(),
              one.marked().orElse(null),
              one.place(),
              one.life(),
              one.outOfUse()));
    }
    return numbered;
  }

  @Provide
  Arbitrary<List<OwnedGear>> owned() {
    var lives = Combinators.combine(days().optional(0.6), days().optional(0.3)).as(GearLife::new);
    return Combinators.combine(
            Arbitraries.of(CLASSES).injectNull(0.2),
            Arbitraries.of("", "hook 3"),
            lives,
            Arbitraries.of(true, false, false, false))
        .as(
            (marked, place, life, failed) ->
                GearForTests.piece(MASK, "any", marked, place, life, failed))
        .list()
        .ofMaxSize(6);
  }

  @Provide
  Arbitrary<List<String>> leasts() {
    return Arbitraries.of(CLASSES).list().ofMaxSize(3);
  }

  @Provide
  Arbitrary<LocalDate> days() {
    return Arbitraries.integers().between(-3, 3).map(days -> TODAY.plusDays(days));
  }
}
