package org.proofcut.core.checklist;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.safety.Check.Pause;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.shop.GearKind;
import org.proofcut.core.shop.GearOffer;

/**
 * One thing to confirm. Each kind says what confirming it means.
 *
 * <p>The id is stable for the operation: the record refers to it.
 */
public sealed interface Item {

  String id();

  Pause pause();

  /** A figure to set; confirmed by reading it back. */
  record Figure(Setting.Role role) implements Item {
    @Override
    public String id() {
      return "figure:" + role.name().toLowerCase(java.util.Locale.ROOT);
    }

    @Override
    public Pause pause() {
      return Pause.SET;
    }
  }

  /**
   * Something to look at or touch; confirmed by its answer.
   *
   * @param aids what the shop has of the work aids that are looked for, to be judged on the day:
   *     any of them will do; empty where none is looked for
   */
  record Look(String id, Pause pause, String ask, String answer, Optional<List<GearOffer>> aids)
      implements Item {

    public Look {
      aids = aids.map(List::copyOf);
    }

    /** Something to look at that is no work aid. */
    public Look(String id, Pause pause, String ask, String answer) {
      this(id, pause, ask, answer, Optional.empty());
    }

    /** Whether what is looked for can be there on a day. */
    public boolean isAtHand(LocalDate day) {
      return aids.map(all -> all.stream().anyMatch(offer -> offer.best(day).isPresent()))
          .orElse(true);
    }

    /** Why each piece that is owned is not used on a day, and of which kind there is none. */
    public List<String> refused(LocalDate day) {
      return aids.stream()
          .flatMap(List::stream)
          .flatMap(
              offer ->
                  offer.pieces().isEmpty()
                      ? Stream.of(offer.name() + ": none in the shop")
                      : offer.refused(day).stream())
          .toList();
    }
  }

  /**
   * Protective gear to put on or take off; confirmed by its answer.
   *
   * @param kind id of the kind of gear
   * @param name what the maker calls the piece at hand, or the kind where there is none
   * @param place where it lives; empty where unknown
   * @param atHand whether the shop owns one, whatever the day; always true where it is to be taken
   *     off
   * @param offer what the shop has of it, to be judged on the day; empty where it is to be taken
   *     off and in what was kept before classes were known
   * @param law what it rests on, where that is the law where the shop stands: then no reason sets
   *     it aside
   * @param why why it is off although another rule wants it on
   */
  record Gear(
      String kind,
      boolean on,
      String name,
      String place,
      boolean atHand,
      String ask,
      String answer,
      Optional<GearOffer> offer,
      Optional<Citation> law,
      Optional<String> why)
      implements Item {

    /** Gear to put on, of what is offered. */
    public static Gear toPutOn(GearKind kind, GearOffer offer, Optional<Citation> law) {
      return new Gear(
              kind.id(),
              true,
              kind.name(),
              "",
              false,
              kind.on().ask(),
              kind.on().answer(),
              Optional.empty(),
              law,
              Optional.empty())
          .of(offer);
    }

    private Gear of(GearOffer offered) {
      var fit = offered.fit();
      return new Gear(
          kind,
          on,
          fit.map(GearOffer.Piece::name).orElse(offered.name()),
          fit.map(GearOffer.Piece::place).orElse(""),
          fit.isPresent(),
          ask,
          answer,
          Optional.of(offered),
          law,
          why);
    }

    /**
     * Held to more than the rules of the step ask for; unchanged where it is to be taken off.
     *
     * @param needed what is to be marked on it
     * @param refused why pieces are not enough, by their ids
     */
    public Gear heldTo(String needed, Map<String, String> refused) {
      return offer.map(one -> of(one.heldTo(needed, refused))).orElse(this);
    }

    /**
     * The piece to take on a day; empty where nothing meets the need.
     *
     * @param out ids of pieces that somebody has
     */
    public Optional<GearOffer.Piece> piece(LocalDate day, Set<String> out) {
      return offer.flatMap(one -> one.best(day, out));
    }

    /** Whether it can be put on, or taken off, on a day. */
    public boolean isAtHand(LocalDate day) {
      return offer.map(one -> one.best(day).isPresent()).orElse(atHand);
    }

    /** That piece by its name; the kind, where nothing meets the need. */
    public String called(LocalDate day, Set<String> out) {
      return piece(day, out).map(GearOffer.Piece::name).orElseGet(this::kindName);
    }

    /** What the kind is called. */
    public String kindName() {
      return offer.map(GearOffer::name).orElse(name);
    }

    /** The kind with the marks that are needed. */
    public String wanted() {
      return offer.map(GearOffer::wanted).orElse(name);
    }

    @Override
    public String id() {
      return "gear:" + kind + (on ? ":on" : ":off");
    }

    @Override
    public Pause pause() {
      return Pause.BEFORE_POWER;
    }
  }
}
