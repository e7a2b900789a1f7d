package org.proofcut.web.storage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.DateText;
import org.proofcut.core.storage.Due;
import org.proofcut.core.storage.GearAct;

/**
 * What was typed of an act on a thing, and what of it is missing or can't be read. Whether the act
 * can be taken, and its words kept, the desk says: {@link #at}.
 */
final class ActTyped {

  private final Map<String, String> typed;
  private final List<Problem> problems = new ArrayList<>();

  ActTyped(Map<String, String> typed) {
    this.typed = typed;
  }

  List<Problem> problems() {
    return List.copyOf(problems);
  }

  GearAct takenOut() {
    return new GearAct.TakenOut(who());
  }

  GearAct putBack() {
    return new GearAct.PutBack(who());
  }

  GearAct lookedAt() {
    var what = text(ThingView.AGEING);
    if (what.isEmpty()) {
      empty(ThingView.AGEING, "what was looked at", "Choose it");
    }
    var good = text(ThingView.GOOD);
    if (!good.equals("yes") && !good.equals("no")) {
      empty(ThingView.GOOD, "good, or failed", "Look at it, then say what you found");
    }
    return new GearAct.LookedAt(
        what, good.equals("yes"), text(ThingView.LOOK_NOTE), day(ThingView.NEXT));
  }

  GearAct mended() {
    return new GearAct.Mended(text(ThingView.MENDED_NOTE));
  }

  GearAct replaced() {
    return new GearAct.Replaced(text(ThingView.REPLACED_NOTE), day(ThingView.GOOD_UNTIL));
  }

  private String who() {
    var who = text(ThingView.WHO);
    if (who.isEmpty()) {
      empty(ThingView.WHO, "the name of somebody", "Say who");
    }
    return who;
  }

  private void empty(String field, String allowed, String doThis) {
    problems.add(Problem.stops(field, "Nothing was entered", allowed, doThis));
  }

  private String text(String field) {
    return typed.getOrDefault(field, "").strip();
  }

  private Optional<LocalDate> day(String field) {
    var text = text(field);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    var day = DateText.read(text);
    if (day.isEmpty()) {
      problems.add(
          Problem.stops(
              field,
              "That is no day",
              "a day such as 3 Nov 2027 or 2027-11-03",
              "Type it as it is marked, or leave it empty"));
    }
    return day;
  }

  /** What the desk found wrong with an act, at the field that it is about. */
  static Problem at(GearAct act, Problem wrong) {
    return at(field(act, wrong.where()), wrong);
  }

  static Problem at(String field, Problem wrong) {
    return new Problem(field, wrong.what(), wrong.allowed(), wrong.doThis(), wrong.force());
  }

  /** Empty where it is about the thing as a whole. */
  private static String field(GearAct act, String where) {
    return switch (where) {
      case "who" -> ThingView.WHO;
      case "note" -> note(act);
      case "act" -> about(act);
      default -> "";
    };
  }

  private static String note(GearAct act) {
    return act instanceof GearAct.LookedAt
        ? ThingView.LOOK_NOTE
        : act instanceof GearAct.Mended ? ThingView.MENDED_NOTE : ThingView.REPLACED_NOTE;
  }

  private static String about(GearAct act) {
    if (act instanceof GearAct.LookedAt looked) {
      return looked.ageing().equals(Due.MARKED) ? ThingView.NEXT : ThingView.AGEING;
    }
    return act instanceof GearAct.Replaced ? ThingView.GOOD_UNTIL : "";
  }
}
