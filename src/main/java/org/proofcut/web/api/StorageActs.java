package org.proofcut.web.api;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.proofcut.core.intake.DateText;
import org.proofcut.core.storage.GearAct;

/** Acts on gear as they are sent: a word, and what goes with it. */
final class StorageActs {

  static final String GOOD = "good";
  static final String FAILED = "failed";

  private static final int LONGEST_TEXT = 80;
  private static final int LONGEST_ID = 100;

  private static final Map<Class<? extends GearAct>, String> WORDS =
      Map.of(
          GearAct.TakenOut.class, "taken-out",
          GearAct.PutBack.class, "put-back",
          GearAct.LookedAt.class, "looked-at",
          GearAct.Mended.class, "mended",
          GearAct.Replaced.class, "replaced");

  /** What goes with each word, beside its id. */
  private static final Map<String, List<String>> FIELDS =
      Map.of(
          "taken-out", List.of("who"),
          "put-back", List.of("who"),
          "looked-at", List.of("ageing", "result", "note", "next"),
          "mended", List.of("note"),
          "replaced", List.of("note", "goodUntil"));

  private StorageActs() {}

  /**
   * An act as it was sent.
   *
   * @param id made where the act happened
   */
  record Sent(String id, GearAct act) {}

  static String word(GearAct act) {
    return WORDS.get(act.getClass());
  }

  /** Reads an act; ends the request where it can't be read. */
  static Sent read(byte[] sent) {
    var body = Body.of(sent);
    var id = body.text("id", LONGEST_ID);
    var word = body.word("act", FIELDS.keySet());
    if (!word.isEmpty()) {
      body.only(
          Stream.concat(Stream.of("id", "act"), FIELDS.get(word).stream()).toArray(String[]::new));
    }
    var act =
        switch (word) {
          case "taken-out" -> new GearAct.TakenOut(body.text("who", LONGEST_TEXT));
          case "put-back" -> new GearAct.PutBack(optional(body, "who"));
          case "looked-at" ->
              new GearAct.LookedAt(
                  body.text("ageing", LONGEST_TEXT),
                  body.word("result", Set.of(GOOD, FAILED)).equals(GOOD),
                  optional(body, "note"),
                  day(body, "next"));
          case "replaced" -> new GearAct.Replaced(optional(body, "note"), day(body, "goodUntil"));
          default -> new GearAct.Mended(optional(body, "note"));
        };
    body.check();
    return new Sent(id, act);
  }

  private static String optional(Body body, String field) {
    return body.has(field) ? body.text(field, LONGEST_TEXT) : "";
  }

  private static Optional<LocalDate> day(Body body, String field) {
    if (!body.has(field)) {
      return Optional.empty();
    }
    // As the shop's form reads it: it is kept there, and has to be read again.
    var text = body.text(field, LONGEST_TEXT);
    var day = DateText.read(text);
    if (day.isEmpty() && !text.isEmpty()) {
      body.wrong(body.at(field), "That is no such day", DateText.ALLOWED, "Send it as 2027-11-03");
    }
    return day;
  }
}
