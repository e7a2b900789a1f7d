package org.proofcut.core.run;

import java.util.Optional;
import org.proofcut.core.checklist.Item;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthFormatException;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.proof.Verdict;
import org.proofcut.core.proof.Verdict.Outcome;
import org.proofcut.core.safety.Check.Pause;

/**
 * Whether an act may be taken where the work on a sheet stands now.
 *
 * @param unit in which lengths are told
 */
public record Permission(SheetProgress progress, LengthUnit unit) {

  private static final int LONGEST_REASON = 400;
  private static final Length LEAST_SLIP = Length.ofMicrometres(25_000);

  /** Why the act may not be taken; empty when it may. */
  public Optional<Problem> refuse(Act act) {
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
      return answer(confirmed.item(), confirmed.answer(), "answer");
    }
    if (act instanceof Act.WentWithout without) {
      return answer(without.item(), without.reason(), "reason");
    }
    if (act instanceof Act.ReadingTaken reading) {
      return reading(reading);
    }
    if (act instanceof Act.ReadingsDropped dropped) {
      return at(Stage.PROOF, "Readings are taken at the proof cut")
          .or(() -> sameAttempt(dropped.attempt()));
    }
    if (act instanceof Act.Corrected corrected) {
      return corrected(corrected);
    }
    if (act instanceof Act.Overridden override) {
      return words(override.reason(), "reason")
          .or(() -> at(Stage.PROOF, "A proof is passed over at the proof cut"));
    }
    if (act instanceof Act.ReadAgain again) {
      return readAgain(again);
    }
    if (act instanceof Act.Disturbed disturbed) {
      return words(disturbed.what(), "what");
    }
    if (act instanceof Act.PartCut part) {
      return at(Stage.CUT, "The real cut is not open").or(() -> part(part.part()));
    }
    if (act instanceof Act.PartNotCut part) {
      return part(part.part());
    }
    if (act instanceof Act.SignedOff) {
      return signedOff();
    }
    return Optional.empty();
  }

  private Optional<Problem> answer(String id, String words, String field) {
    var item = progress.sheet().checklist().item(id);
    if (item.isEmpty()) {
      return no(
          field,
          "There is nothing called \"" + shortened(id) + "\" on this sheet",
          "an item of this sheet",
          "Open the sheet again");
    }
    return words(words, field)
        .or(() -> inOrder(item.get()))
        .or(
            () ->
                field.equals("reason")
                    ? without(item.get())
                    : notAtHand(item.get()).or(() -> readBack(item.get(), words)));
  }

  /** What nobody has can't be on. */
  private Optional<Problem> notAtHand(Item item) {
    if (item instanceof Item.Look look && !look.isAtHand(progress.today())) {
      return no(
          "answer",
          "There is none that will do: " + String.join("; ", look.refused(progress.today())),
          "one that may be used",
          "Get one and enter it in the shop, or record what is there instead");
    }
    if (!(item instanceof Item.Gear gear) || !gear.on() || gear.isAtHand(progress.today())) {
      return Optional.empty();
    }
    var refused =
        gear.offer()
            .map(offer -> String.join("; ", offer.refused(progress.today())))
            .filter(words -> !words.isEmpty())
            .map(words -> ". " + words)
            .orElse("");
    return no(
        "answer",
        "Nothing in the shop meets this: " + gear.wanted() + refused,
        gear.wanted() + ", in date and in use",
        gear.law().isPresent()
            ? "Get it and enter it in the shop"
            : "Get it and enter it in the shop, or record why you work without");
  }

  /** A figure is confirmed by reading it back: what was read has to be what is set. */
  private Optional<Problem> readBack(Item item, String words) {
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
    if (read.minus(setting.read().value()).abs().isAtMost(setting.step())) {
      return Optional.empty();
    }
    var scale = setting.scale(unit);
    var set = scale.show(setting.read().value()).text();
    return no(
        "answer",
        setting.role().words() + " was read as " + scale.show(read).text(),
        set + ", or one step of " + scale.show(setting.step()).text() + " beside it",
        "Set it to " + set + ", read it again and enter what you read");
  }

  /** Going without is recorded; wearing what is forbidden, or leaving off what law asks, is not. */
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
    if (item instanceof Item.Gear gear && gear.law().isPresent()) {
      return no(
          "reason",
          "This rests on law where the shop stands: "
              + gear.law().get().text()
              + ". It is written for employers; here it is kept to all the same, and no reason"
              + " sets it aside",
          gear.wanted(),
          "Wear it; where nothing in the shop meets it, get it and enter it in the shop");
    }
    return Optional.empty();
  }

  /** Gear and what comes before power are confirmed when the machine is set, not before. */
  private Optional<Problem> inOrder(Item item) {
    var stage = progress.stage();
    boolean early =
        switch (item.pause()) {
          case SET -> false;
          case MACHINE -> stage == Stage.SET;
          case BEFORE_POWER -> stage == Stage.SET || stage == Stage.MACHINE;
          case PROOF -> stage == Stage.SET || stage == Stage.MACHINE || stage == Stage.BEFORE_POWER;
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

  private Optional<Problem> reading(Act.ReadingTaken reading) {
    return at(Stage.PROOF, "Readings are taken at the proof cut")
        .or(() -> sameAttempt(reading.attempt()))
        .or(
            () ->
                progress.verdicts().stream()
                    .filter(verdict -> verdict.outcome() == Outcome.MORE_READINGS)
                    .map(Verdict::measure)
                    .filter(measure -> measure.dimension() == reading.dimension())
                    .findFirst()
                    .map(
                        measure ->
                            slip(reading.found(), measure.target().value(), Scale.caliper(unit)))
                    .orElseGet(
                        () ->
                            no(
                                "found",
                                "All readings of this measure are taken",
                                "the next measure that is asked",
                                "Go on with the verdict")));
  }

  private Optional<Problem> readAgain(Act.ReadAgain again) {
    if (!(progress.proof() instanceof ProofState.ReadAgainFirst)) {
      return no(
          "found",
          "Nothing has to be read again",
          "a proof of an earlier day",
          "Go on with the sheet");
    }
    return progress
        .setup()
        .flatMap(setup -> setup.settings().stream().findFirst())
        .flatMap(first -> slip(again.found(), first.read().value(), first.scale(unit)));
  }

  /**
   * A reading so far from what it should be that it is a slip of the hand or of the place measured:
   * half as much again, and 25 mm at least (our choice). A cut that is really so far off is not
   * measured but set up anew.
   */
  private static Optional<Problem> slip(Length found, Length shouldBe, Scale scale) {
    if (found.minus(shouldBe).abs().isAtMost(LEAST_SLIP.max(shouldBe.half()))) {
      return Optional.empty();
    }
    var right = scale.show(shouldBe).text();
    return no(
        "found",
        scale.show(found).text() + " is far from " + right,
        "a reading somewhere near " + right,
        "Look where it is measured and key it in again");
  }

  private Optional<Problem> sameAttempt(int attempt) {
    return attempt == progress.attempt()
        ? Optional.empty()
        : no(
            "found",
            "That reading belongs to an earlier proof cut",
            "readings of the last proof cut",
            "Measure the last proof cut and enter its reading");
  }

  private Optional<Problem> corrected(Act.Corrected asked) {
    // A whole proof cut that is off: what is half measured is measured first.
    boolean something =
        progress.verdicts().stream().anyMatch(Permission::isOff)
            && progress.verdicts().stream()
                .noneMatch(
                    verdict ->
                        verdict.outcome() == Outcome.MORE_READINGS && !verdict.found().isEmpty());
    return something && asked.equals(progress.corrections())
        ? at(Stage.PROOF, "Settings are corrected at the proof cut")
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

  private Optional<Problem> signedOff() {
    boolean open = !progress.open(Pause.LEAVE_SAFE).isEmpty();
    return at(Stage.LEAVE_SAFE, "Parts are still to be cut")
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

  private Optional<Problem> part(String part) {
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

  private Optional<Problem> at(Stage stage, String otherwise) {
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
