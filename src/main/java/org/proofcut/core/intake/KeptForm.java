package org.proofcut.core.intake;

import static org.proofcut.core.intake.Field.choice;
import static org.proofcut.core.intake.Field.length;
import static org.proofcut.core.intake.Field.text;
import static org.proofcut.core.intake.Field.yesNo;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.exposure.WeightUnit;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.storage.KeptAs;
import org.proofcut.core.storage.ThingKind;
import org.proofcut.core.storage.Use;

/**
 * The fields that say how a piece of the shop is kept. All of them may stay empty, as they are for
 * what was entered before they were asked.
 */
public final class KeptForm {

  private static final String USUAL = "leave empty for the greatest that one finds";
  private static final Field WIDE =
      length(
              "kept-width",
              "Width as it is kept",
              "from left to right, seen from the front; " + USUAL)
          .mayStayEmpty();
  private static final Field HIGH =
      length(
              "kept-height",
              "Height as it is kept",
              "from its lowest point to its top or its hook; " + USUAL)
          .mayStayEmpty();
  private static final Field DEEP =
      length("kept-depth", "Depth as it is kept", "from the back to its front; " + USUAL)
          .mayStayEmpty();
  private static final Field WEIGHT =
      text("kept-weight", "Weight", "with g, kg or lb; " + USUAL).mayStayEmpty();
  private static final Field BOXED =
      yesNo("kept-boxed", "In a closed box or bag of its own?").mayStayEmpty();
  private static final Field USE =
      choice(
              "kept-use",
              "How often it is taken out",
              Arrays.stream(Use.values())
                  .map(use -> new Field.Choice(word(use), use.words()))
                  .toList())
          .mayStayEmpty();
  private static final Field USERS =
      text(
              "kept-users",
              "Who uses it",
              "names with a comma between them; leave empty for everybody")
          .mayStayEmpty();

  private static final Band SIZES = CutFields.band("1 mm", "3000 mm");
  private static final Amount LIGHTEST = new Amount(new BigDecimal("0.001"), "kg");
  private static final Amount HEAVIEST = new Amount(new BigDecimal("200"), "kg");

  private final Optional<Field> kind;
  private final Field cabinet;

  private KeptForm(Optional<Field> kind, List<Field.Choice> cabinets) {
    this.kind = kind;
    this.cabinet =
        choice("kept-in", "Which cabinet it is kept in", cabinets)
            .hinted("leave empty for the first one")
            .mayStayEmpty();
  }

  /**
   * How a piece is kept whose kind of thing is still to be chosen.
   *
   * @param kinds that it can be, the usual one first
   * @param cabinets by id, with their names
   */
  public static KeptForm among(List<ThingKind> kinds, List<Field.Choice> cabinets) {
    var choices = kinds.stream().map(one -> new Field.Choice(one.id(), one.name())).toList();
    return new KeptForm(
        choices.size() < 2
            ? Optional.empty()
            : Optional.of(
                choice("kept-kind", "Kept as", choices)
                    .hinted("leave empty for the first one")
                    .mayStayEmpty()),
        cabinets);
  }

  /** How a piece is kept whose kind of thing is known. */
  public static KeptForm known(List<Field.Choice> cabinets) {
    return new KeptForm(Optional.empty(), cabinets);
  }

  public List<Field> fields() {
    var fields = new ArrayList<Field>();
    kind.ifPresent(fields::add);
    fields.addAll(List.of(WIDE, HIGH, DEEP, WEIGHT, BOXED, USE, USERS, cabinet));
    return fields;
  }

  /**
   * What was kept of a piece. What can't be read any more counts as if it had not been said: the
   * cabinet was taken out, or content knows the kind no longer.
   */
  public KeptAs kept(Map<String, String> typed, LengthUnit unit) {
    var form = new FormReader(typed, unit);
    var read = read(form);
    var wrong = form.result(() -> read).problems();
    if (wrong.isEmpty()) {
      return read;
    }
    var readable = new HashMap<>(typed);
    wrong.forEach(problem -> readable.remove(problem.where()));
    return read(new FormReader(readable, unit));
  }

  KeptAs read(FormReader form) {
    var chosen = kind.map(form::choice).filter(one -> !one.isEmpty());
    var wide = form.optionalLength(WIDE, SIZES);
    var high = form.optionalLength(HIGH, SIZES);
    var deep = form.optionalLength(DEEP, SIZES);
    var grams = form.optionalWeight(WEIGHT, LIGHTEST, HEAVIEST).map(KeptForm::gramsUp);
    boolean boxed = form.yes(BOXED);
    var use = use(form.choice(USE));
    var users = names(form.text(USERS));
    var in = Optional.of(form.choice(cabinet)).filter(one -> !one.isEmpty());
    return new KeptAs(chosen, wide, high, deep, grams, boxed, use, users, in);
  }

  private static Optional<Use> use(String chosen) {
    return Arrays.stream(Use.values()).filter(use -> word(use).equals(chosen)).findFirst();
  }

  private static Set<String> names(String text) {
    var names = new LinkedHashSet<String>();
    for (var name : text.split(",")) {
      if (!name.isBlank()) {
        names.add(name.strip());
      }
    }
    return names;
  }

  /** What is carried weighs a gram too much rather than too little. */
  static int gramsUp(Amount weight) {
    return grams(weight, RoundingMode.UP);
  }

  static int grams(Amount weight, RoundingMode rounding) {
    return WeightUnit.KILOGRAM.of(weight).movePointRight(3).setScale(0, rounding).intValueExact();
  }

  private static String word(Use use) {
    return use.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }
}
