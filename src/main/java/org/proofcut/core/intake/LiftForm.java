package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.band;
import static org.proofcut.core.intake.Field.angle;
import static org.proofcut.core.intake.Field.choice;
import static org.proofcut.core.intake.Field.length;
import static org.proofcut.core.intake.Field.text;
import static org.proofcut.core.intake.Field.yesNo;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.Lift;
import org.proofcut.core.exposure.Lift.NotCovered;
import org.proofcut.core.exposure.LiftLimits;
import org.proofcut.core.exposure.LiftTable.Grip;
import org.proofcut.core.exposure.LiftTable.Span;
import org.proofcut.core.exposure.LiftTask;
import org.proofcut.core.exposure.LiftTask.Reach;
import org.proofcut.core.exposure.WeightUnit;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.weight.PartAtTheSaw;

/**
 * The form of one lift. Whether the lifting equation was made for it is asked in so many questions,
 * and none is answered beforehand: a question that is left open gives no figure.
 */
public final class LiftForm {

  private static final Field WEIGHT =
      text(
          "weight",
          "What it weighs",
          "with kg or lb; on a bathroom scale: you with it, less you without it");
  private static final Field LONG = length("long", "Longest side", "of the piece as it is lifted");
  private static final Field DEEP =
      length("deep", "Size outward", "of the piece, from your body outward as you hold it");
  private static final Field GRIP =
      choice(
              "grip",
              "How it can be held",
              Arrays.stream(Grip.values()).map(one -> choiceOf(one, one.words())).toList())
          .hinted("a panel without handles is poor");

  private static final Field OUT =
      length(
          "out",
          "Hands out, at the start",
          "along the floor, from the middle between the ankles to below the hands");
  private static final Field FROM =
      length("from", "Hands high, at the start", "from the floor to the hands as they take hold");
  private static final Field TURN =
      angle("turn", "Turned, at the start", "0 straight ahead; 90 at your side, feet not moved");

  private static final Field TO =
      length("to", "Hands high, at the end", "from the floor to the hands as they let go");
  private static final Field CARE =
      yesNo("care", "Must it be put down with care?")
          .hinted("laid down slowly or held in place, as on a saw table; not simply let go");
  private static final Field END_OUT =
      length(
              "end-out",
              "Hands out, at the end",
              "measured as at the start; asked only where it is put down with care")
          .mayStayEmpty();
  private static final Field END_TURN =
      angle("end-turn", "Turned, at the end", "asked only where it is put down with care")
          .mayStayEmpty();

  private static final Field OFTEN =
      text(
          "often",
          "Lifts in a minute",
          "counted over a quarter of an hour; 0.2 is once in five minutes, which seldomer ones"
              + " count as");
  private static final Field SPAN =
      choice(
              "span",
              "How long a day",
              Arrays.stream(Span.values()).map(one -> choiceOf(one, one.words())).toList())
          .hinted("with light work after it: 1.2 times as long after an hour, 0.3 times after two");

  private static final Amount LEAST = new Amount(new BigDecimal("0.1"), "kg");
  private static final Amount MOST = new Amount(new BigDecimal("500"), "kg");
  private static final Band REACHES = band("0 mm", "2000 mm");
  private static final Band HEIGHTS = band("0 mm", "2500 mm");
  private static final Band SIZES = band("1 mm", "6000 mm");
  private static final BigDecimal SELDOMEST = new BigDecimal("0.01");
  private static final BigDecimal OFTENEST = new BigDecimal("60");

  private LiftForm() {}

  /** The fields, in the order they are asked. */
  public static List<CutForm.Group> groups() {
    return List.of(
        new CutForm.Group("What is lifted", List.of(JobForm.UNIT, WEIGHT, LONG, DEEP, GRIP)),
        new CutForm.Group("Where it is taken up", List.of(OUT, FROM, TURN)),
        new CutForm.Group("Where it is put down", List.of(TO, CARE, END_OUT, END_TURN)),
        new CutForm.Group("How often", List.of(OFTEN, SPAN)),
        new CutForm.Group(
            "How it is lifted", Arrays.stream(NotCovered.values()).map(LiftForm::asked).toList()));
  }

  /** All fields. */
  public static List<Field> fields() {
    return groups().stream().flatMap(group -> group.fields().stream()).toList();
  }

  /** A part laid on the saw table, as it would be typed; how it is lifted is still asked. */
  public static Map<String, String> typed(PartAtTheSaw at, LengthUnit unit) {
    var lift = at.lift();
    var typed = new LinkedHashMap<String, String>();
    typed.put(JobForm.UNIT.name(), unit.symbol());
    typed.put(
        WEIGHT.name(),
        WeightUnit.beside(unit).amount(at.weight().most().value(), 1, RoundingMode.UP).text());
    typed.put(LONG.name(), PartAtTheSaw.longest(at.part()).toString());
    typed.put(DEEP.name(), PartAtTheSaw.deep(at.part()).toString());
    typed.put(GRIP.name(), word(lift.grip()));
    typed.put(OUT.name(), lift.from().out().value().toString());
    typed.put(FROM.name(), lift.fromHigh().value().toString());
    typed.put(TURN.name(), "0");
    typed.put(TO.name(), lift.toHigh().value().toString());
    typed.put(CARE.name(), "yes");
    typed.put(END_OUT.name(), lift.from().out().value().toString());
    typed.put(END_TURN.name(), "0");
    typed.put(OFTEN.name(), lift.often().value().toPlainString());
    typed.put(SPAN.name(), word(lift.span()));
    return typed;
  }

  /** The lift that was typed, or what is wrong with it. */
  public static Read<LiftTask> read(Map<String, String> typed, LiftLimits limits) {
    var form = new FormReader(typed, JobForm.unit(typed));
    form.choice(JobForm.UNIT);
    var weight = Worked.entered("weight", form.weight(WEIGHT, LEAST, MOST));
    var longest = form.length(LONG, SIZES);
    var deep = form.length(DEEP, SIZES);
    var grip = chosen(Grip.values(), form.choice(GRIP));
    var from = reach(form, OUT, TURN);
    var fromHigh = Worked.entered("height of the hands at the start", form.length(FROM, HEIGHTS));
    var toHigh = Worked.entered("height of the hands at the end", form.length(TO, HEIGHTS));
    Optional<Reach> placed =
        form.yes(CARE) ? Optional.of(reach(form, END_OUT, END_TURN)) : Optional.empty();
    var often = Worked.entered("lifts in a minute", form.number(OFTEN, SELDOMEST, OFTENEST));
    var span = chosen(Span.values(), form.choice(SPAN));
    var notCovered = new ArrayList<NotCovered>();
    for (var one : NotCovered.values()) {
      boolean tooLarge = one == NotCovered.UNSTABLE && limits.isTooLarge(longest, deep);
      if (form.yes(asked(one)) || tooLarge) {
        notCovered.add(one);
      }
    }
    return form.result(
        () -> new LiftTask(weight, from, fromHigh, placed, toHigh, often, span, grip, notCovered));
  }

  /** Whether both sizes can be read and are more than one person holds steady. */
  public static boolean isTooLarge(Map<String, String> typed, LiftLimits limits) {
    var form = new FormReader(typed, JobForm.unit(typed));
    var longest = form.optionalLength(LONG, SIZES);
    var deep = form.optionalLength(DEEP, SIZES);
    return longest.isPresent() && deep.isPresent() && limits.isTooLarge(longest.get(), deep.get());
  }

  /** How far out the hands are, where that was not measured and size and height were. */
  public static Optional<Worked<Length>> estimatedOut(Map<String, String> typed) {
    var unit = JobForm.unit(typed);
    var form = new FormReader(typed, unit);
    var deep = form.optionalLength(DEEP, SIZES);
    var high = form.optionalLength(FROM, HEIGHTS);
    if (!form.isBlank(OUT.name()) || deep.isEmpty() || high.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        Lift.estimatedOut(
            Worked.entered("how deep the load is", deep.get()),
            Worked.entered("height of the hands", high.get()),
            unit));
  }

  private static Reach reach(FormReader form, Field out, Field turn) {
    return new Reach(
        Worked.entered("how far out the hands are", form.length(out, REACHES)),
        Worked.entered("turn", form.angle(turn, Angle.ZERO, Angle.STRAIGHT)));
  }

  /** The question by which it is found whether the equation was made for this. */
  private static Field asked(NotCovered one) {
    var name = word(one);
    return switch (one) {
      case ONE_HAND -> yesNo(name, "One hand?").hinted("while the other hand holds something else");
      case LONG_DAY -> yesNo(name, "Over eight hours?").hinted("of lifting in the day, all told");
      case NOT_STANDING ->
          yesNo(name, "Sitting or kneeling?").hinted("or squatting while it is lifted");
      case CONFINED ->
          yesNo(name, "No room to stand freely?")
              .hinted("under a low roof, or with something between feet and load");
      case UNSTABLE ->
          yesNo(name, "Does it bend or shift?")
              .hinted("a whole sheet, a limp panel, a box whose contents slide, or wind on it");
      case CARRIED ->
          yesNo(name, "Carried, pushed or pulled?").hinted("more than a step or two with it");
      case SLIPPERY ->
          yesNo(name, "Slippery floor?").hinted("wet, or dust on a smooth floor; worn soles");
      case FAST ->
          yesNo(name, "Fast?").hinted("with a jerk; about 75 cm or 30 in a second, or faster");
      case HOT_OR_COLD ->
          yesNo(name, "Hot or cold?").hinted("below 19 °C or above 26 °C; 66 to 79 °F is covered");
    };
  }

  private static Field.Choice choiceOf(Enum<?> one, String words) {
    return new Field.Choice(word(one), words);
  }

  private static String word(Enum<?> one) {
    return one.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static <E extends Enum<E>> E chosen(E[] all, String word) {
    return Arrays.stream(all).filter(one -> word(one).equals(word)).findFirst().orElse(all[0]);
  }
}
