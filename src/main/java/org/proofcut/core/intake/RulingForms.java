package org.proofcut.core.intake;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.habit.Ruling;
import org.proofcut.core.habit.Ruling.About;
import org.proofcut.core.habit.Trait;
import org.proofcut.core.habit.Trait.ScaleOffset;
import org.proofcut.core.intake.Field.Choice;
import org.proofcut.core.measure.LengthUnit;

/** What the maker says of something that proof cuts have taught. */
public final class RulingForms {

  private static final String CUTTER = "cutter";
  private static final String SCALE = "scale";
  private static final String OTHER = "other";

  /** Why it is not used. */
  public static final Field WHY_ASIDE =
      Field.text("because", "Why", "in a few words, such as: the fence goes for repair");

  /** Why a proof does not count. */
  public static final Field WHY_LEFT_OUT =
      Field.text("because", "What was wrong with it", "").mayStayEmpty();

  /** What was changed, where none of the choices says it. */
  public static final Field WHY_AFRESH =
      Field.text(
              "because", "In a few words", "such as: fence face planed. Needed for something else")
          .mayStayEmpty();

  private RulingForms() {}

  /** What may have been changed, so that earlier proofs say nothing any more. */
  public static Field changed(Trait trait) {
    var choices = new ArrayList<Choice>();
    choices.add(new Choice(CUTTER, "The cutter was sharpened or replaced"));
    if (trait instanceof ScaleOffset scale) {
      choices.add(new Choice(SCALE, "Set anew: " + scale.datum().words()));
    }
    choices.add(new Choice(OTHER, "Something else"));
    return Field.choice("changed", "What was changed", choices);
  }

  /** A proof that was asked about is right, or one that was left out counts after all. */
  public static Read<Ruling> accepted(Trait trait, String proof, Instant at) {
    return new Read<>(Optional.of(new Ruling.Accepted(proof, trait, at)), List.of());
  }

  public static Read<Ruling> leftOut(
      Trait trait, String proof, Map<String, String> typed, Instant at) {
    var form = reader(typed);
    var because = form.text(WHY_LEFT_OUT);
    return form.result(
        () ->
            new Ruling.LeftOut(
                proof, trait, because.isEmpty() ? "the maker left it out" : because, at));
  }

  public static Read<Ruling> setAside(Trait trait, Map<String, String> typed, Instant at) {
    var form = reader(typed);
    var because = form.text(WHY_ASIDE);
    return form.result(() -> new Ruling.SetAside(trait, because, at));
  }

  public static Read<Ruling> takenUp(Trait trait, Instant at) {
    return new Read<>(Optional.of(new Ruling.TakenUp(trait, at)), List.of());
  }

  public static Read<Ruling> startedAfresh(Trait trait, Map<String, String> typed, Instant at) {
    var form = reader(typed);
    var changed = form.choice(changed(trait));
    var said = form.text(WHY_AFRESH);
    if (changed.equals(OTHER) && said.isEmpty()) {
      form.problem(WHY_AFRESH, "Nothing was entered", "what was changed, in a few words");
    }
    return form.result(
        () ->
            new Ruling.StartedAfresh(
                about(trait, changed), said.isEmpty() ? words(changed) : said, at));
  }

  private static About about(Trait trait, String changed) {
    if (changed.equals(CUTTER)) {
      return new About.Cutter(trait.cutter());
    }
    if (changed.equals(SCALE) && trait instanceof ScaleOffset scale) {
      return new About.Scale(scale.machine(), scale.datum());
    }
    return new About.Only(trait);
  }

  private static String words(String changed) {
    return changed.equals(CUTTER) ? "cutter sharpened or replaced" : "scale set anew";
  }

  /** No length is asked. */
  private static FormReader reader(Map<String, String> typed) {
    return new FormReader(typed, LengthUnit.MILLIMETRE);
  }
}
