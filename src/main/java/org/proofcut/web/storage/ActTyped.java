package org.proofcut.web.storage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.DateText;
import org.proofcut.core.storage.GearAct;

/** What was typed of an act on a thing, and what is wrong with it. */
final class ActTyped {

  /** As much as stands on one line of a record (our own choice). */
  private static final int LONGEST = 200;

  private static final int LONGEST_NAME = 60;

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
    var what = text(ThingView.AGEING, LONGEST);
    if (what.isEmpty()) {
      empty(ThingView.AGEING, "what was looked at", "Choose it");
    }
    var good = text(ThingView.GOOD, LONGEST);
    if (!good.equals("yes") && !good.equals("no")) {
      empty(ThingView.GOOD, "good, or failed", "Look at it, then say what you found");
    }
    return new GearAct.LookedAt(
        what, good.equals("yes"), text(ThingView.LOOK_NOTE, LONGEST), day(ThingView.NEXT));
  }

  GearAct mended() {
    return new GearAct.Mended(text(ThingView.MENDED_NOTE, LONGEST));
  }

  GearAct replaced() {
    return new GearAct.Replaced(text(ThingView.REPLACED_NOTE, LONGEST), day(ThingView.GOOD_UNTIL));
  }

  private String who() {
    var who = text(ThingView.WHO, LONGEST_NAME);
    if (who.isEmpty() && problems.isEmpty()) {
      empty(ThingView.WHO, "the name of somebody", "Say who");
    }
    return who;
  }

  private void empty(String field, String allowed, String doThis) {
    problems.add(Problem.stops(field, "Nothing was entered", allowed, doThis));
  }

  private String text(String field, int longest) {
    var text = typed.getOrDefault(field, "").strip();
    if (text.length() > longest) {
      problems.add(
          Problem.stops(
              field,
              "That is %d letters long".formatted(text.length()),
              "at most " + longest + " letters",
              "Say it in one line"));
    } else if (text.codePoints().anyMatch(ActTyped::isNoLetter)) {
      problems.add(
          Problem.stops(
              field,
              "There is something in it that can't be written down",
              "letters, figures and signs, in one line",
              "Type it again"));
    }
    return text;
  }

  private static boolean isNoLetter(int letter) {
    return Character.isISOControl(letter) || Character.getType(letter) == Character.SURROGATE;
  }

  private Optional<LocalDate> day(String field) {
    var text = typed.getOrDefault(field, "").strip();
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
}
