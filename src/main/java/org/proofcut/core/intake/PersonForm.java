package org.proofcut.core.intake;

import static org.proofcut.core.intake.Field.length;
import static org.proofcut.core.intake.Field.text;
import static org.proofcut.core.intake.Field.yesNo;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.storage.Person;

/**
 * The form of somebody who takes things out. Heights that were not measured are estimated from the
 * height of the body.
 */
public final class PersonForm {

  /**
   * What was typed.
   *
   * @param estimated the heights that were not measured, each with where it comes from
   */
  public record Measured(Person person, List<Worked<Length>> estimated) {

    public Measured {
      estimated = List.copyOf(estimated);
    }
  }

  private static final Citation SEGMENTS =
      new Citation(
          Citation.Kind.HANDBOOK,
          "R. Drillis and R. Contini, Body segment parameters, 1966",
          "lengths as parts of the height of the body, from memory");

  private static final Field NAME = text("name", "Name", "as it stands on labels");
  private static final Field SEATED = yesNo("seated", "Reaches from a chair?").mayStayEmpty();
  private static final Field BODY =
      length(
              "body",
              "Height of the body",
              "in shoes; whatever is not measured is estimated from it")
          .mayStayEmpty();

  /** One height, and what part of the body's it usually is. */
  private enum Height {
    KNUCKLE("knuckle", "Knuckle", "from the floor to the knuckles of the hanging hand", "0.43"),
    ELBOW("elbow", "Elbow", "from the floor to the elbow of the hanging arm", "0.63"),
    SHOULDER("shoulder", "Shoulder", "from the floor to the top of the shoulder", "0.818"),
    HIGHEST("highest", "Highest grip", "from the floor to a bar that you can just grip", "1.2");

    private final Field field;
    private final String words;
    private final BigDecimal part;

    Height(String name, String label, String hint, String part) {
      this.field = length(name, label, hint + "; leave empty to have it estimated").mayStayEmpty();
      this.words = "height of the " + label.toLowerCase(java.util.Locale.ROOT);
      this.part = new BigDecimal(part);
    }

    /** Elbow and shoulder are measured by others; where the hand is we settled on. */
    private Citation source() {
      return this == ELBOW || this == SHOULDER ? SEGMENTS : Citation.OWN_CHOICE;
    }
  }

  /** What is over the seat of the height of the body is so much of it. */
  private static final Worked<BigDecimal> SITTING =
      Worked.given("sitting height, as a part of the body's", new BigDecimal("0.52"), SEGMENTS);

  private static final Worked<Length> SEAT =
      Worked.given("height of a chair's seat", Length.ofMillimetres(480), Citation.OWN_CHOICE);

  private static final Band BODIES = CutFields.band("900 mm", "2300 mm");
  private static final Band HEIGHTS = CutFields.band("200 mm", "2800 mm");

  private PersonForm() {}

  /** The fields, in the order they are asked. */
  public static List<Field> fields() {
    var fields = new ArrayList<>(List.of(NAME, SEATED, BODY));
    for (var height : Height.values()) {
      fields.add(height.field);
    }
    return fields;
  }

  /** The person that was typed, or what is wrong with that. */
  public static Read<Measured> read(Map<String, String> typed, LengthUnit unit) {
    var form = new FormReader(typed, unit);
    var name = form.text(NAME);
    if (name.contains(",")) {
      form.problem(NAME, "There is a comma in it", "a name without one: commas part names");
    }
    boolean seated = form.yes(SEATED);
    var body = form.optionalLength(BODY, BODIES);
    var estimated = new ArrayList<Worked<Length>>();
    var heights = new ArrayList<Length>();
    for (var height : Height.values()) {
      heights.add(height(height, body, seated, form, estimated));
    }
    inOrder(heights, form);
    return form.result(
        () ->
            new Measured(
                new Person(
                    name, heights.get(0), heights.get(1), heights.get(2), heights.get(3), seated),
                estimated));
  }

  private static Length height(
      Height height,
      Optional<Length> body,
      boolean seated,
      FormReader form,
      List<Worked<Length>> estimated) {
    if (!form.isBlank(height.field.name())) {
      return form.length(height.field, HEIGHTS);
    }
    if (body.isEmpty()) {
      if (form.isSound(BODY)) {
        form.problem(
            height.field, "Nothing was entered", "this height, or the height of the body above");
      }
      return HEIGHTS.least();
    }
    var worked = seated ? fromChair(height, body.get()) : standing(height, body.get());
    estimated.add(worked);
    return worked.value();
  }

  private static Worked<Length> standing(Height height, Length body) {
    return Worked.called(height.words)
        .by("height of the body × its part of it")
        .with("height of the body", Worked.entered("height of the body", body))
        .with(
            "its part of it",
            Worked.given(height.words + ", as a part of the body's", height.part, height.source()))
        .from(height.source())
        .is(body.times(height.part, Length.ofMillimetres(1), Rounding.DOWN));
  }

  /**
   * Whoever sits is lower by the same at every height: by what is under the seat, less the seat.
   */
  private static Worked<Length> fromChair(Height height, Length body) {
    var standing = standing(height, body).as(height.words + ", standing");
    var over = body.times(SITTING.value(), Length.ofMillimetres(1), Rounding.UP);
    var lower = body.minus(over).minus(SEAT.value()).max(Length.ZERO);
    return Worked.called(height.words + ", from a chair")
        .by("standing − (height of the body − sitting height − seat)")
        .with("standing", standing)
        .with("height of the body", Worked.entered("height of the body", body))
        .with(
            "sitting height",
            Worked.called("sitting height")
                .by("height of the body × part")
                .with("part", SITTING)
                .from(SEGMENTS)
                .is(over))
        .with("seat", SEAT)
        .is(standing.value().minus(lower));
  }

  private static void inOrder(List<Length> heights, FormReader form) {
    var all = Height.values();
    for (int i = 1; i < all.length; i++) {
      if (form.isSound(BODY, all[i - 1].field, all[i].field)
          && !heights.get(i).isGreaterThan(heights.get(i - 1))) {
        form.problem(
            all[i].field,
            "That is " + form.shown(heights.get(i)) + ", no higher than the " + all[i - 1].words,
            "knuckle, elbow, shoulder and highest grip, each higher than the one before");
      }
    }
  }
}
