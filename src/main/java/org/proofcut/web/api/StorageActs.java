package org.proofcut.web.api;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
    var body =
        Body.of(sent).only("id", "act", "who", "ageing", "result", "note", "next", "goodUntil");
    var id = body.text("id", LONGEST_ID);
    var word = body.word("act", Set.copyOf(WORDS.values()));
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
    try {
      return Optional.of(LocalDate.parse(body.text(field, LONGEST_TEXT)));
    } catch (DateTimeException e) {
      body.wrong(body.at(field), "That is no day", "a day such as 2027-11-03", "Send it so");
      return Optional.empty();
    }
  }
}
