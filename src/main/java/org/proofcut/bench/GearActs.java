package org.proofcut.bench;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.storage.Aged;
import org.proofcut.core.storage.Due;
import org.proofcut.core.storage.GearAct;
import org.proofcut.core.storage.GearEntry;
import org.proofcut.logbook.Logbook;
import org.proofcut.logbook.ShopItem;
import org.proofcut.logbook.StorageLog;

/** What is done with gear: who has it, whether it was good when it was looked at. */
@ApplicationScoped
class GearActs {

  private static final int LONGEST = 80;

  private final StorageLog storage;
  private final Logbook logbook;
  private final ThingDesk things;

  GearActs(StorageLog storage, Logbook logbook, ThingDesk things) {
    this.storage = storage;
    this.logbook = logbook;
    this.things = things;
  }

  /** The record of a thing. */
  List<GearEntry> of(String thing) {
    return storage.acts().stream().filter(entry -> entry.thing().equals(thing)).toList();
  }

  /** Whether an act with this id was recorded. */
  boolean has(String entryId) {
    return storage.acts().stream().anyMatch(entry -> entry.id().equals(entryId));
  }

  /** Why an act can't be taken now; empty where it can. */
  Optional<Problem> refuse(String thing, GearAct act) {
    var aged = things.aged().stream().filter(one -> one.id().equals(thing)).findFirst();
    if (aged.isEmpty()) {
      return Optional.of(
          Problem.stops(
              "thing",
              "There is no such thing among gear and safety kit",
              "a thing that the shop's page lists",
              "Look at the list of the shop"));
    }
    return refuse(aged.get(), act);
  }

  private Optional<Problem> refuse(Aged piece, GearAct act) {
    if (act instanceof GearAct.TakenOut out) {
      return unreadable("who", out.who(), true).or(() -> takenOut(piece));
    }
    if (act instanceof GearAct.PutBack back) {
      return unreadable("who", back.who(), false)
          .or(
              () ->
                  refuse(
                      piece.state().with().isEmpty(),
                      "It is not out",
                      "a thing that somebody has",
                      "Look at it again: it may have been put back already"));
    }
    if (act instanceof GearAct.LookedAt looked) {
      return unreadable("note", looked.note(), false).or(() -> lookedAt(piece, looked));
    }
    if (act instanceof GearAct.Mended mended) {
      return unreadable("note", mended.note(), false)
          .or(
              () ->
                  refuse(
                      !hasFailed(piece),
                      "It has not failed",
                      "a thing that is out of use",
                      "Look at it again: it may have been mended already"));
    }
    var replaced = (GearAct.Replaced) act;
    return unreadable("note", replaced.note(), false)
        .or(
            () ->
                refuse(
                    replaced.goodUntil().filter(things.today()::isAfter).isPresent(),
                    "The new one is over already",
                    "a last day that has not passed",
                    "Take another one, or look at its date again"));
  }

  private static boolean hasFailed(Aged piece) {
    return piece.outOfUse() || piece.state().failed().isPresent();
  }

  private Optional<Problem> takenOut(Aged piece) {
    return piece
        .state()
        .with()
        .map(
            who ->
                Problem.stops(
                    "thing",
                    who + " has it",
                    "a thing that is in its place",
                    "Ask " + who + ", or put it back first"))
        .or(
            () ->
                refuse(
                    hasFailed(piece) || piece.life().overOn(things.today()).isPresent(),
                    "It is out of use",
                    "a thing that is good",
                    "Take another one, or have it mended, looked at or replaced first"));
  }

  private Optional<Problem> lookedAt(Aged piece, GearAct.LookedAt looked) {
    if (looked.ageing().equals(Due.MARKED)) {
      return refuse(
          looked.good() && looked.next().filter(things.today()::isBefore).isEmpty(),
          "It says no day by which it is to be looked at again",
          "a day after today",
          "Enter the next day as it is marked on the piece");
    }
    var ageing = piece.ages().stream().filter(one -> one.id().equals(looked.ageing())).findFirst();
    if (ageing.isEmpty()) {
      return refuse(
          true,
          "Nothing of it falls due by that name",
          "what the list of what is due says of it",
          "Look at the list again");
    }
    return refuse(
        ageing.get().ends() && looked.good(),
        "It is over with time, however good it looks",
        "that it was replaced",
        "Replace it, and record that");
  }

  private static Optional<Problem> refuse(
      boolean refused, String what, String allowed, String doThis) {
    return refused ? Optional.of(Problem.stops("act", what, allowed, doThis)) : Optional.empty();
  }

  private static Optional<Problem> unreadable(String field, String text, boolean needed) {
    boolean bad =
        text.length() > LONGEST
            || (needed && text.isBlank())
            || text.chars().anyMatch(Character::isISOControl);
    return bad
        ? Optional.of(
            Problem.stops(
                field,
                text.isBlank() ? "Nothing was entered" : "That is no line of text",
                (needed ? "1" : "0") + " to " + LONGEST + " characters in one line",
                text.isBlank() ? "Say who" : "Say it in one line, and shorter"))
        : Optional.empty();
  }

  /**
   * Adds an act to the record, with what it changes of the piece as typed.
   *
   * @return whether other gear is offered from now on
   */
  boolean record(String entryId, String thing, GearAct act) {
    var today = things.today();
    storage.append(new GearEntry(entryId, thing, today, act));
    var changes = changes(act, today);
    if (!changes.isEmpty()) {
      logbook.shop().stream()
          .filter(item -> item.id().equals(thing))
          .findFirst()
          .ifPresent(item -> logbook.keep(changed(item, changes)));
    }
    return !(act instanceof GearAct.TakenOut) && !(act instanceof GearAct.PutBack);
  }

  private static Map<String, String> changes(GearAct act, LocalDate today) {
    if (act instanceof GearAct.LookedAt looked && looked.good() && looked.next().isPresent()) {
      return Map.of("inspect-by", looked.next().get().toString());
    }
    if (act instanceof GearAct.Mended) {
      return Map.of("out-of-use", "no");
    }
    if (act instanceof GearAct.Replaced replaced) {
      return Map.of(
          "opened",
          today.toString(),
          "good-until",
          replaced.goodUntil().map(LocalDate::toString).orElse(""),
          "inspect-by",
          "",
          "out-of-use",
          "no");
    }
    return Map.of();
  }

  private static ShopItem changed(ShopItem item, Map<String, String> changes) {
    var typed = new LinkedHashMap<>(item.typed());
    typed.putAll(changes);
    return new ShopItem(item.id(), item.shelf(), item.kind(), typed);
  }
}
