package org.proofcut.core.intake;

import static org.proofcut.core.intake.Field.choice;
import static org.proofcut.core.intake.Field.length;
import static org.proofcut.core.intake.Field.text;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.DustAsked;
import org.proofcut.core.exposure.DustBook;
import org.proofcut.core.exposure.Hood;
import org.proofcut.core.exposure.Wood;
import org.proofcut.core.intake.Field.Choice;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;

/** What is cut where, and what draws its dust off. */
public final class DustForm {

  /** Most woods at once, beside those of a job. */
  static final int MOST_WOODS = 3;

  private static final String NONE = "none";

  private static final Band OPENINGS = new Band(Length.of("10 mm"), Length.of("2000 mm"));
  private static final BigDecimal LEAST_AIR = BigDecimal.ONE;
  private static final BigDecimal MOST_AIR = BigDecimal.valueOf(100_000);
  private static final String DUST = "mg/m³";
  private static final BigDecimal LEAST_DUST = new BigDecimal("0.01");
  private static final BigDecimal MOST_DUST = BigDecimal.valueOf(1000);

  private static final Field EXTRACTION =
      choice(
          "extraction",
          "What draws the dust off",
          List.of(new Choice(NONE, "Nothing"), new Choice("extractor", "An extractor")));

  private static final Field AIRFLOW =
      text("airflow", "Its airflow", "such as 600 m3/h or 350 ft3/min; empty where nobody knows")
          .mayStayEmpty();

  private static final Field DIAMETER =
      length("diameter", "Duct or port, diameter", "empty for the usual one of such a machine")
          .mayStayEmpty();

  private static final Field MOUTH_WIDTH =
      length("mouth-width", "Or mouth of a hood, width", "where a hood stands off the cutter")
          .mayStayEmpty();

  private static final Field MOUTH_HEIGHT =
      length("mouth-height", "And height", "of the same mouth").mayStayEmpty();

  private static final Field LEVEL =
      text("level", "Dust that was measured", "at the collar, in mg/m3; empty where nothing was")
          .mayStayEmpty();

  private static final Pattern NUMBER_AND_UNIT =
      Pattern.compile("([0-9]{1,6}(?:[.,][0-9]{1,2})?)\\s*([^0-9.,\\s].*)?");

  private final FormReader form;
  private final DustBook book;

  private DustForm(Map<String, String> typed, DustBook book, LengthUnit unit) {
    this.form = new FormReader(typed, unit);
    this.book = book;
  }

  /** Fields under one heading. */
  public record Group(String id, String title, List<Field> fields) {}

  /**
   * The form.
   *
   * @param ofAJob whether a job tells its woods already, so that none needs to be chosen
   */
  public static List<Group> groups(DustBook book, boolean ofAJob) {
    return List.of(
        new Group("cut", "What is cut, and where", cut(book, ofAJob)),
        new Group(
            "air",
            "What draws it off",
            List.of(EXTRACTION, AIRFLOW, DIAMETER, MOUTH_WIDTH, MOUTH_HEIGHT)),
        new Group("level", "What hangs in the air", List.of(LEVEL)));
  }

  /** All its fields. */
  public static List<Field> fields(DustBook book, boolean ofAJob) {
    return groups(book, ofAJob).stream().flatMap(group -> group.fields().stream()).toList();
  }

  private static List<Field> cut(DustBook book, boolean ofAJob) {
    var fields = new ArrayList<Field>();
    for (int i = 1; i <= MOST_WOODS; i++) {
      fields.add(wood(i, book, ofAJob));
    }
    fields.add(machine(book));
    return fields;
  }

  private static Field wood(int number, DustBook book, boolean ofAJob) {
    var woods = book.woods().values().stream().map(wood -> new Choice(wood.id(), wood.name()));
    boolean needed = number == 1 && !ofAJob;
    var field =
        choice(
            "wood-" + number,
            number == 1 ? "Wood or board" : "And another",
            (needed ? woods : Stream.concat(Stream.of(new Choice(NONE, "no other")), woods))
                .toList());
    return needed ? field : field.mayStayEmpty();
  }

  private static Field machine(DustBook book) {
    return choice(
        "machine",
        "Machine",
        book.machines().values().stream()
            .map(machine -> new Choice(machine.id(), machine.name()))
            .toList());
  }

  /**
   * What was typed, or everything that is wrong with it.
   *
   * @param ofJob the woods of a job that come on top; none where no job was named
   * @param unit that bare numbers are in: inches make bare airflow cubic feet a minute
   */
  public static Read<DustAsked> read(
      Map<String, String> typed, DustBook book, List<Wood> ofJob, LengthUnit unit) {
    return new DustForm(typed, book, unit).read(ofJob, unit);
  }

  private Read<DustAsked> read(List<Wood> ofJob, LengthUnit unit) {
    var woods = new LinkedHashSet<>(ofJob);
    for (int i = 1; i <= MOST_WOODS; i++) {
      var chosen = form.choice(wood(i, book, !ofJob.isEmpty()));
      Optional.ofNullable(book.woods().get(chosen)).ifPresent(woods::add);
    }
    var machine = form.choice(machine(book));
    boolean drawn = form.choice(EXTRACTION).equals("extractor");
    var airflow = airflow(unit);
    var hood = hood();
    var level = level();
    return form.result(
        () ->
            new DustAsked(
                List.copyOf(woods),
                machine,
                hood,
                drawn,
                drawn ? airflow : Optional.empty(),
                level));
  }

  private Optional<Hood> hood() {
    var diameter = form.optionalLength(DIAMETER, OPENINGS);
    var width = form.optionalLength(MOUTH_WIDTH, OPENINGS);
    var height = form.optionalLength(MOUTH_HEIGHT, OPENINGS);
    boolean round = !form.isBlank(DIAMETER.name());
    boolean wide = !form.isBlank(MOUTH_WIDTH.name());
    boolean high = !form.isBlank(MOUTH_HEIGHT.name());
    if (round && (wide || high)) {
      form.problem(DIAMETER, "A duct and a mouth were entered", "one of the two; empty the other");
    } else if (wide != high) {
      form.problem(
          wide ? MOUTH_HEIGHT : MOUTH_WIDTH, "Nothing was entered", "both sizes of the mouth");
    }
    if (diameter.isPresent()) {
      return Optional.of(new Hood.Round(Worked.entered("diameter of the opening", diameter.get())));
    }
    return width.isPresent() && height.isPresent()
        ? Optional.of(
            new Hood.Rectangular(
                Worked.entered("width of the mouth", width.get()),
                Worked.entered("height of the mouth", height.get())))
        : Optional.empty();
  }

  private Optional<Worked<Amount>> airflow(LengthUnit unit) {
    var bare = unit == LengthUnit.INCH ? Hood.INCH : Hood.METRIC;
    return amount(AIRFLOW, LEAST_AIR, MOST_AIR, "1 to 100000 m3/h or ft3/min, such as 600 m3/h")
        .map(read -> new Amount(read.value(), read.unit().isEmpty() ? bare : read.unit()))
        .map(amount -> Worked.entered("airflow of the extractor", amount));
  }

  private Optional<Worked<Amount>> level() {
    return amount(LEVEL, LEAST_DUST, MOST_DUST, "0.01 to 1000 mg/m3, such as 2.4")
        .map(read -> Worked.measured("dust that was measured", new Amount(read.value(), DUST)));
  }

  /** Its unit is empty where none was typed. */
  private Optional<Amount> amount(Field field, BigDecimal least, BigDecimal most, String allowed) {
    var text = form.raw(field.name()).strip();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    var found = NUMBER_AND_UNIT.matcher(text);
    var unit = found.matches() ? unit(field, found) : Optional.<String>empty();
    if (unit.isEmpty()) {
      form.problem(field, "\"" + FormReader.shortened(text) + "\" can't be read", allowed);
      return Optional.empty();
    }
    var number = new BigDecimal(found.group(1).replace(',', '.'));
    if (number.compareTo(least) < 0 || number.compareTo(most) > 0) {
      form.problem(field, "That is " + number.toPlainString(), allowed);
      return Optional.empty();
    }
    return Optional.of(new Amount(number, unit.get()));
  }

  /** As it is printed; empty if it is none for this field. */
  private static Optional<String> unit(Field field, Matcher found) {
    if (found.group(2) == null) {
      return Optional.of("");
    }
    var unit = found.group(2).strip().toLowerCase(Locale.ROOT).replace("³", "3");
    if (field.equals(LEVEL)) {
      return unit.equals("mg/m3") ? Optional.of(DUST) : Optional.empty();
    }
    return switch (unit) {
      case "m3/h" -> Optional.of(Hood.METRIC);
      case "ft3/min", "cfm" -> Optional.of(Hood.INCH);
      default -> Optional.empty();
    };
  }
}
