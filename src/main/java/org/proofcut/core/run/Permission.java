package org.proofcut.core.run;

import java.util.Optional;
import org.proofcut.core.checklist.Item;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthFormatException;
import org.proofcut.core.proof.Verdict;
import org.proofcut.core.proof.Verdict.Outcome;
import org.proofcut.core.safety.Check.Pause;
import org.proofcut.core.setup.Measure;

/** Whether an act may be taken where the work stands now. */
public final class Permission {

  private static final int LONGEST_REASON = 400;

  private Permission() {}

  /** Why the act may not be taken; empty when it may. */
  public static Optional<Problem> refuse(SheetProgress progress, Act act) {
    if (progress.stage() == Stage.LOCKED) {
      return no(
          "sheet",
          progress.lockedBecause(),
          "the sheet that is open",
          "Finish and sign off the sheets before this one");
    }
    if (progress.isDone()) {
      return no(
          "sheet",
          "This sheet is signed off",
          "acts on a sheet that is open",
          "Open the next sheet");
    }
    if (act instanceof Act.Confirmed confirmed) {
      return answer(progress, confirmed.item(), confirmed.answer(), "answer");
    }
    if (act instanceof Act.WentWithout without) {
      return answer(progress, without.item(), without.reason(), "reason");
    }
    if (act instanceof Act.ReadingTaken reading) {
      return reading(progress, reading);
    }
    if (act instanceof Act.ReadingsDropped dropped) {
      return at(progress, Stage.PROOF, "Readings are taken at the proof cut")
          .or(() -> sameAttempt(progress, dropped.attempt()));
    }
    if (act instanceof Act.Corrected) {
      return corrected(progress);
    }
    if (act instanceof Act.Overridden override) {
      return words(override.reason(), "reason")
          .or(() -> at(progress, Stage.PROOF, "A proof is passed over at the proof cut"));
    }
    if (act instanceof Act.ReadAgain) {
      return progress.proof() instanceof ProofState.ReadAgainFirst
          ? Optional.empty()
          : no(
              "found",
              "Nothing has to be read again",
              "a proof of an earlier day",
              "Go on with the sheet");
    }
    if (act instanceof Act.Disturbed disturbed) {
      return words(disturbed.what(), "what");
    }
    if (act instanceof Act.PartCut part) {
      return at(progress, Stage.CUT, "The real cut is not open")
          .or(() -> part(progress, part.part()));
    }
    if (act instanceof Act.PartNotCut part) {
      return part(progress, part.part());
    }
    if (act instanceof Act.SignedOff) {
      return signedOff(progress);
    }
    return Optional.empty();
  }

  private static Optional<Problem> answer(
      SheetProgress progress, String id, String words, String field) {
    var item = progress.sheet().checklist().item(id);
    if (item.isEmpty()) {
      return no(
          field,
          "There is nothing called \"" + shortened(id) + "\" on this sheet",
          "an item of this sheet",
          "Open the sheet again");
    }
    return words(words, field)
        .or(() -> inOrder(progress, item.get()))
        .or(
            () ->
                field.equals("reason")
                    ? without(item.get())
                    : readBack(progress, item.get(), words));
  }

  /** A figure is confirmed by reading it back: what was read has to be what is set. */
  private static Optional<Problem> readBack(SheetProgress progress, Item item, String words) {
    if (!(item instanceof Item.Figure figure)) {
      return Optional.empty();
    }
    var setting = progress.setup().flatMap(setup -> setup.setting(figure.role())).orElseThrow();
    Length read;
    try {
      read = Length.of(words);
    } catch (LengthFormatException e) {
      return no("answer", e.reason(), LengthFormatException.EXAMPLES, "Read it and enter it again");
    }
    boolean right = read.minus(setting.set().value()).abs().isAtMost(setting.step());
    return right
        ? Optional.empty()
        : no(
            "answer",
            setting.role().words() + " was read as " + read,
            setting.set().value() + ", or one step of " + setting.step() + " beside it",
            "Set it to " + setting.set().value() + ", read it again and enter what you read");
  }

  /** Going without is recorded, never a dead end; wearing what is forbidden is. */
  private static Optional<Problem> without(Item item) {
    if (item instanceof Item.Figure) {
      return no("reason", "A figure can't be left out", "the figure as read", "Set it and read it");
    }
    if (item instanceof Item.Gear gear && !gear.on()) {
      return no(
          "reason",
          gear.name() + " must be off here, whatever the reason",
          gear.answer(),
          "Take them off");
    }
    return Optional.empty();
  }

  /** Gear and what comes before power are confirmed when the machine is set, not before. */
  private static Optional<Problem> inOrder(SheetProgress progress, Item item) {
    var stage = progress.stage();
    boolean early =
        switch (item.pause()) {
          case SET -> false;
          case BEFORE_POWER -> stage == Stage.SET;
          case PROOF -> stage == Stage.SET || stage == Stage.BEFORE_POWER;
          case LEAVE_SAFE -> stage != Stage.LEAVE_SAFE;
        };
    if (early) {
      return no(
          "item",
          "That comes later: something before it is still open",
          "the items in their order",
          "Go on with the first open item");
    }
    return Optional.empty();
  }

  private static Optional<Problem> reading(SheetProgress progress, Act.ReadingTaken reading) {
    return at(progress, Stage.PROOF, "Readings are taken at the proof cut")
        .or(() -> sameAttempt(progress, reading.attempt()))
        .or(
            () -> {
              var wants =
                  progress.verdicts().stream()
                      .filter(verdict -> verdict.outcome() == Outcome.MORE_READINGS)
                      .map(Verdict::measure)
                      .map(Measure::dimension)
                      .anyMatch(reading.dimension()::equals);
              return wants
                  ? Optional.empty()
                  : no(
                      "found",
                      "All readings of this measure are taken",
                      "the next measure that is asked",
                      "Go on with the verdict");
            });
  }

  private static Optional<Problem> sameAttempt(SheetProgress progress, int attempt) {
    return attempt == progress.attempt()
        ? Optional.empty()
        : no(
            "found",
            "That reading belongs to an earlier proof cut",
            "readings of the last proof cut",
            "Measure the last proof cut and enter its reading");
  }

  private static Optional<Problem> corrected(SheetProgress progress) {
    // A whole proof cut that is off: what is half measured is measured first.
    boolean something =
        progress.verdicts().stream().anyMatch(Permission::isOff)
            && progress.verdicts().stream()
                .noneMatch(
                    verdict ->
                        verdict.outcome() == Outcome.MORE_READINGS && !verdict.found().isEmpty());
    return something
        ? at(progress, Stage.PROOF, "Settings are corrected at the proof cut")
        : no(
            "found",
            "There is nothing to correct",
            "a proof cut that is off, with its readings complete",
            "Take the readings first");
  }

  private static boolean isOff(Verdict verdict) {
    return switch (verdict.outcome()) {
      case CHANGE, OTHER_CUTTER, UNEVEN -> true;
      case MORE_READINGS, PROVEN -> false;
    };
  }

  private static Optional<Problem> signedOff(SheetProgress progress) {
    boolean open = !progress.open(Pause.LEAVE_SAFE).isEmpty();
    return at(progress, Stage.LEAVE_SAFE, "Parts are still to be cut")
        .or(
            () ->
                open
                    ? no(
                        "item",
                        "The machine is not left safe yet",
                        "every item of this pause confirmed",
                        "Go on with the first open item")
                    : Optional.empty());
  }

  private static Optional<Problem> part(SheetProgress progress, String part) {
    boolean known =
        progress.sheet().operation().parts().stream().anyMatch(one -> one.id().equals(part));
    return known
        ? Optional.empty()
        : no(
            "part",
            "\"" + shortened(part) + "\" is not cut in this operation",
            "a part of this sheet",
            "Open the sheet again");
  }

  private static Optional<Problem> at(SheetProgress progress, Stage stage, String otherwise) {
    return progress.stage() == stage
        ? Optional.empty()
        : no(
            "sheet",
            otherwise,
            "acts in the order of the pauses",
            "Go on with the pause that is open");
  }

  private static Optional<Problem> words(String words, String field) {
    var text = words.strip();
    if (text.isEmpty() || text.length() > LONGEST_REASON) {
      return no(
          field,
          text.isEmpty() ? "Nothing was written" : "That is " + text.length() + " characters long",
          "1 to " + LONGEST_REASON + " characters",
          "Write it in a few words: the record keeps it");
    }
    return Optional.empty();
  }

  private static Optional<Problem> no(String where, String what, String allowed, String doThis) {
    return Optional.of(Problem.stops(where, what, allowed, doThis));
  }

  private static String shortened(String text) {
    return text.length() > 24 ? text.substring(0, 24) + "…" : text;
  }
}
