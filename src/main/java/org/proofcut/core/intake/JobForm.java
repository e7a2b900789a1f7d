package org.proofcut.core.intake;

import static org.proofcut.core.intake.Field.choice;
import static org.proofcut.core.intake.Field.length;
import static org.proofcut.core.intake.Field.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.proofcut.core.casework.CaseDesign;
import org.proofcut.core.casework.CaseDesign.Joinery;
import org.proofcut.core.casework.CaseDesign.Outside;
import org.proofcut.core.casework.CaseDesign.Plinth;
import org.proofcut.core.casework.CaseDesign.Sheets;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.Field.Choice;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.part.PartRole;
import org.proofcut.core.readings.Readings;
import org.proofcut.core.stock.Material;
import org.proofcut.core.stock.Sheet;

/**
 * The form of a job: a case, the sheets it comes from, and their caliper readings.
 *
 * <p>A sheet whose fields are all empty is not there; nor is an empty shelf.
 */
public final class JobForm {

  /** Most sheets that a job takes. */
  public static final int MOST_SHEETS = 6;

  /** Most readings of a sheet. */
  public static final int MOST_READINGS = 8;

  /** Most shelves of a case. */
  public static final int MOST_SHELVES = 8;

  public static final Field NAME = text("name", "Name of the job", "such as \"seed cupboard\"");

  static final List<Choice> UNITS =
      List.of(new Choice("mm", "millimetres"), new Choice("in", "inches"));

  public static final Field UNIT = choice("unit", "A number without a unit is in", UNITS);
  public static final Field WIDTH = length("width", "Width", "outer width, over both sides");
  public static final Field HEIGHT = length("height", "Height", "from the floor to the top face");
  public static final Field DEPTH = length("depth", "Depth", "from the front edges to the rear");
  public static final Field TOP_RABBET =
      length("top-rabbet", "Rabbet for the top", "how deep it goes into the sides");
  public static final Field BOTTOM_DADO =
      length("bottom-dado", "Dado for the bottom", "how deep it goes into the sides");
  public static final Field SHELF_DADO =
      length("shelf-dado", "Dados for the shelves", "how deep they go into the sides");
  public static final Field BACK_RABBET =
      length("back-rabbet", "Rabbet for the back", "how deep it goes into sides and top");
  public static final Field BACK_SET_IN =
      length("back-set-in", "Back set in", "from the rear edges to the back; 0 for flush");
  public static final Field PLINTH_HEIGHT =
      length(
          "plinth-height", "Height of the plinth", "from the floor to the underside of the bottom");
  public static final Field PLINTH_SET_BACK =
      length("plinth-set-back", "Plinth set back", "behind the front edges; 0 for flush");

  private static final Band SIZES = band("1 mm", "6000 mm");
  private static final Band DEPTHS = band("0.1 mm", "100 mm");
  private static final Band OR_NONE = band("0 mm", "2000 mm");
  private static final Band THICKNESSES = band("1 mm", "100 mm");

  private final FormReader form;
  private final List<Integer> sheets;
  private final List<Integer> shelves;
  private final LengthUnit unit;

  private JobForm(Map<String, String> typed) {
    this.unit = unit(typed);
    this.form = new FormReader(typed, unit);
    this.sheets =
        IntStream.rangeClosed(1, MOST_SHEETS)
            .filter(i -> typed.keySet().stream().anyMatch(key -> isOfSheet(key, i, typed)))
            .boxed()
            .toList();
    this.shelves =
        IntStream.rangeClosed(1, MOST_SHELVES)
            .filter(i -> !form.isBlank("shelf-" + i))
            .boxed()
            .toList();
  }

  private static boolean isOfSheet(String key, int i, Map<String, String> typed) {
    // The material is a choice and always says something.
    return key.startsWith("sheet-" + i + "-")
        && !key.endsWith("-material")
        && !typed.get(key).isBlank();
  }

  /** The design that was typed, or everything that is wrong with it. */
  public static Read<CaseDesign> read(Map<String, String> typed) {
    return new JobForm(typed).read();
  }

  /** The unit that bare numbers take among these; millimetres where none was chosen. */
  public static LengthUnit unit(Map<String, String> typed) {
    return typed.getOrDefault(UNIT.name(), "").equals(LengthUnit.INCH.symbol())
        ? LengthUnit.INCH
        : LengthUnit.MILLIMETRE;
  }

  /** What was typed, with this unit where none was chosen. */
  public static Map<String, String> withUnit(Map<String, String> typed, LengthUnit unit) {
    var with = new LinkedHashMap<>(typed);
    with.putIfAbsent(UNIT.name(), unit.symbol());
    return with;
  }

  /**
   * The same problem with the field of the form as its place: a problem of a design speaks of its
   * second shelf, which may have been typed in the third field.
   */
  public static Problem atField(Problem problem, Map<String, String> typed) {
    var form = new JobForm(typed);
    var where = problem.where();
    if (where.matches("shelf-[0-9]+")) {
      int index = Integer.parseInt(where.substring("shelf-".length())) - 1;
      where = "shelf-" + form.shelves.get(index);
    } else if (where.startsWith("sheet:")) {
      where = where.substring("sheet:".length()) + "-reading-1";
    }
    return new Problem(where, problem.what(), problem.allowed(), problem.doThis(), problem.force());
  }

  /** The choice of sheet for a part. */
  public static Field sheetOf(PartRole role, Map<String, String> typed) {
    return sheetOf(role, new JobForm(typed).choices());
  }

  private static Field sheetOf(PartRole role, List<Choice> choices) {
    var words =
        switch (role) {
          case LEFT_SIDE -> "Left side";
          case RIGHT_SIDE -> "Right side";
          case TOP -> "Top";
          case BOTTOM -> "Bottom";
          case SHELF -> "Shelves";
          case BACK -> "Back";
          case PLINTH -> "Plinth";
        };
    var name = "from-" + role.name().toLowerCase(Locale.ROOT).replace('_', '-');
    return choice(name, words + " from", choices);
  }

  /** The fields of one sheet, without its readings. */
  public static List<Field> sheet(int number) {
    var stem = "sheet-" + number + "-";
    return List.of(
        text(
            stem + "name",
            "Name of sheet " + number,
            "what you call it, such as \"birch, from the rack\""),
        choice(
            stem + "material",
            "Made of",
            Arrays.stream(Material.values())
                .map(material -> new Choice(material.id(), material.words()))
                .toList()),
        length(stem + "length", "Length", "along the grain of its face"),
        length(stem + "width", "Width", "across the grain"),
        text(stem + "wood", "Its wood", "such as iroko; empty where you don't know")
            .mayStayEmpty());
  }

  /** The field of one caliper reading of a sheet. */
  public static Field reading(int sheet, int number) {
    return length(
            "sheet-" + sheet + "-reading-" + number,
            "Reading " + number,
            "by caliper, near a corner")
        .mayStayEmpty();
  }

  /** The field of one shelf. */
  public static Field shelf(int number) {
    return length("shelf-" + number, "Shelf " + number, "from the floor to its underside")
        .mayStayEmpty();
  }

  /** Every field that the form can have, whether it was sent or not. */
  public static List<Field> fields() {
    var fields = new ArrayList<>(List.of(NAME, UNIT, WIDTH, HEIGHT, DEPTH));
    for (int i = 1; i <= MOST_SHEETS; i++) {
      fields.addAll(sheet(i));
      for (int j = 1; j <= MOST_READINGS; j++) {
        fields.add(reading(i, j));
      }
    }
    for (var role : PartRole.values()) {
      fields.add(sheetOf(role, List.of()));
    }
    fields.addAll(
        List.of(
            TOP_RABBET,
            BOTTOM_DADO,
            SHELF_DADO,
            BACK_RABBET,
            BACK_SET_IN,
            PLINTH_HEIGHT,
            PLINTH_SET_BACK));
    for (int i = 1; i <= MOST_SHELVES; i++) {
      fields.add(shelf(i));
    }
    return fields;
  }

  /** What was typed into fields of this form: nothing else that was sent, and nothing empty. */
  public static Map<String, String> filledIn(Map<String, String> typed) {
    var filled = new LinkedHashMap<String, String>();
    for (var field : fields()) {
      var text = typed.getOrDefault(field.name(), "");
      if (!text.isBlank()) {
        filled.put(field.name(), text);
      }
    }
    return filled;
  }

  private Read<CaseDesign> read() {
    var name = form.text(NAME);
    form.choice(UNIT);
    var outside =
        new Outside(
            form.length(WIDTH, SIZES), form.length(HEIGHT, SIZES), form.length(DEPTH, SIZES));
    var joinery =
        new Joinery(
            form.length(TOP_RABBET, DEPTHS),
            form.length(BOTTOM_DADO, DEPTHS),
            form.length(SHELF_DADO, DEPTHS),
            form.length(BACK_RABBET, DEPTHS),
            form.length(BACK_SET_IN, OR_NONE));
    var plinth =
        new Plinth(form.length(PLINTH_HEIGHT, OR_NONE), form.length(PLINTH_SET_BACK, OR_NONE));
    var heights = new ArrayList<Length>();
    for (int i : shelves) {
      form.optionalLength(shelf(i), SIZES).ifPresent(heights::add);
    }
    var byNumber = new LinkedHashMap<String, Sheet>();
    for (int i : sheets) {
      var sheet = readSheet(i);
      if (sheet != null) {
        byNumber.put(Integer.toString(i), sheet);
      }
    }
    var chosen = new LinkedHashMap<PartRole, String>();
    for (var role : PartRole.values()) {
      chosen.put(role, form.choice(sheetOf(role, choices())));
    }
    return form.result(
        () ->
            new CaseDesign(
                name,
                unit,
                outside,
                new Sheets(
                    byNumber.get(chosen.get(PartRole.LEFT_SIDE)),
                    byNumber.get(chosen.get(PartRole.RIGHT_SIDE)),
                    byNumber.get(chosen.get(PartRole.TOP)),
                    byNumber.get(chosen.get(PartRole.BOTTOM)),
                    byNumber.get(chosen.get(PartRole.SHELF)),
                    byNumber.get(chosen.get(PartRole.BACK)),
                    byNumber.get(chosen.get(PartRole.PLINTH))),
                joinery,
                plinth,
                heights));
  }

  /** The sheet, or null where its readings are wrong; the problems are then noted. */
  private Sheet readSheet(int number) {
    var fields = sheet(number);
    var name = form.text(fields.get(0));
    var material = form.choice(fields.get(1));
    var sheetLength = form.length(fields.get(2), SIZES);
    var width = form.length(fields.get(3), SIZES);
    var wood = Optional.of(form.text(fields.get(4))).filter(text -> !text.isEmpty());
    var readings = new ArrayList<Length>();
    for (int i = 1; i <= MOST_READINGS; i++) {
      form.optionalLength(reading(number, i), THICKNESSES).ifPresent(readings::add);
    }
    if (readings.isEmpty()) {
      boolean nothing =
          IntStream.rangeClosed(1, MOST_READINGS)
              .allMatch(i -> form.isBlank("sheet-" + number + "-reading-" + i));
      if (nothing) {
        form.problem(
            reading(number, 1), "Nothing was entered", "four readings or more, near the corners");
      }
      return null;
    }
    return Arrays.stream(Material.values())
        .filter(one -> one.id().equals(material))
        .findFirst()
        .map(
            one ->
                new Sheet(
                    "sheet-" + number,
                    name,
                    one,
                    sheetLength,
                    width,
                    new Readings(name, readings),
                    wood))
        .orElse(null);
  }

  private List<Choice> choices() {
    return sheets.stream()
        .map(
            i -> {
              var name = form.raw("sheet-" + i + "-name").strip();
              var shown = name.length() > 40 ? name.substring(0, 40) + "…" : name;
              return new Choice(Integer.toString(i), i + (shown.isEmpty() ? "" : ": " + shown));
            })
        .toList();
  }

  private static Band band(String least, String most) {
    return new Band(Length.of(least), Length.of(most));
  }
}
