package org.proofcut.core.intake;

import static org.proofcut.core.intake.Field.choice;
import static org.proofcut.core.intake.Field.count;
import static org.proofcut.core.intake.Field.length;
import static org.proofcut.core.intake.Field.text;
import static org.proofcut.core.intake.Field.yesNo;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.proofcut.core.storage.Cabinet;
import org.proofcut.core.storage.Fitting;

/** What the form of a cabinet asks: its frame, its bays, its doors, and each of its fittings. */
final class CabinetFields {

  static final Field NAME = text("name", "Name of the cabinet", "such as \"gear cabinet\"");
  static final Field WIDE = length("width", "Width inside", "between the sides");
  static final Field HIGH = length("height", "Height inside", "from bottom to top");
  static final Field DEEP = length("depth", "Depth inside", "from the back to the shut doors");
  static final Field RAISED =
      length("raised", "Floor to bottom", "from the floor to the inner face of its bottom");
  static final Field HUNG =
      length("hung", "Floor to case", "from the floor to its lower end; 0 where it stands there");
  static final Field BEFORE =
      length("before", "What stands before it", "how deep it is; 0 where nothing does");
  static final Field BACK = length("back", "Thickness of the back", "that hooks are screwed to");
  static final Field SIDE = length("side", "Thickness of the sides", "each");
  static final Field DRY = yesNo("dry", "Does it stay dry inside?");
  static final Field SHELF_LOAD =
      text("shelf-load", "Each of its shelves carries", "in all, such as 15 kg");

  static final Field BAYS =
      count("bays", "Bays", "1 to " + CabinetForm.MOST_BAYS + ", side by side");
  static final Field UPRIGHT =
      length("upright", "Thickness of the uprights", "between bays; empty where there are none")
          .mayStayEmpty();
  static final Field UPRIGHT_DEPTH =
      length(
              "upright-depth",
              "Depth of the bays",
              "from the back to the front edge of uprights and shelves; leave empty where that is"
                  + " the depth inside")
          .mayStayEmpty();

  static final Field DOORS =
      choice(
          "doors",
          "Doors",
          List.of(
              new Field.Choice("none", "none"),
              new Field.Choice("left", "one, hinged on the left"),
              new Field.Choice("right", "one, hinged on the right"),
              new Field.Choice("two", "two, hinged on the outside")));
  static final Field DOOR =
      length("door", "Thickness of the doors", "that hooks are screwed to").mayStayEmpty();
  static final Field LEFT_DOOR =
      length("left-door", "The left door shuts", "from the left side inside; half if left empty")
          .mayStayEmpty();

  private CabinetFields() {}

  /**
   * The fields as they are asked of what was typed so far.
   *
   * @param made the case of the job that it names; empty where it names none
   */
  static List<CutForm.Group> groups(Map<String, String> typed, Optional<Cabinet> made) {
    var form = new FormReader(typed, JobForm.unit(typed));
    var faces = faces(typed, made);
    var groups = new ArrayList<CutForm.Group>();
    groups.add(new CutForm.Group("The cabinet", frame(made.isPresent())));
    if (made.isEmpty()) {
      groups.add(new CutForm.Group("Bays", bays(bayCount(form))));
    }
    groups.add(new CutForm.Group("Doors", List.of(DOORS, DOOR, LEFT_DOOR)));
    int last = 0;
    for (int number = 1; number <= CabinetForm.MOST_FITTINGS; number++) {
      last = new FittingFields(number, faces).isThere(form) ? number : last;
    }
    for (int number = 1; number <= Math.min(last + 1, CabinetForm.MOST_FITTINGS); number++) {
      groups.add(
          new CutForm.Group("Fitting " + number, asked(new FittingFields(number, faces), form)));
    }
    return groups;
  }

  private static List<Field> asked(FittingFields fitting, FormReader form) {
    return Stream.concat(
            Stream.of(fitting.kind()),
            FittingFields.Kind.of(form.raw(fitting.kind().name())).stream()
                .flatMap(kind -> fitting.of(kind).stream()))
        .toList();
  }

  private static int bayCount(FormReader form) {
    var text = form.raw(BAYS.name()).strip();
    return text.matches("[1-" + CabinetForm.MOST_BAYS + "]") ? Integer.parseInt(text) : 1;
  }

  private static List<Field> frame(boolean ofJob) {
    return ofJob
        ? List.of(NAME, JobForm.UNIT, HUNG, BEFORE, DRY, SHELF_LOAD)
        : List.of(NAME, JobForm.UNIT, WIDE, HIGH, DEEP, RAISED, BEFORE, BACK, SIDE, DRY);
  }

  static List<Field> bays(int count) {
    var fields = new ArrayList<>(List.of(BAYS, UPRIGHT_DEPTH));
    if (count > 1) {
      fields.add(UPRIGHT);
      IntStream.rangeClosed(1, count).mapToObj(CabinetFields::bay).forEach(fields::add);
    }
    return fields;
  }

  static Field bay(int number) {
    return length("bay-" + number, "Bay " + number, "clear width; one bay may stay empty")
        .mayStayEmpty();
  }

  /** Every field that the form can have. */
  static List<Field> all() {
    var fields = new LinkedHashMap<String, Field>();
    Stream.of(
            frame(false), frame(true), bays(CabinetForm.MOST_BAYS), List.of(DOORS, DOOR, LEFT_DOOR))
        .flatMap(List::stream)
        .forEach(field -> fields.put(field.name(), field));
    for (int number = 1; number <= CabinetForm.MOST_FITTINGS; number++) {
      new FittingFields(number, List.of()).all().forEach(field -> fields.put(field.name(), field));
    }
    return List.copyOf(fields.values());
  }

  /** What a box may stand on: shelves of the case, and those that were typed. */
  static List<Field.Choice> faces(Map<String, String> typed, Optional<Cabinet> made) {
    var faces = new ArrayList<Field.Choice>();
    made.ifPresent(
        of ->
            of.fittings(Fitting.Shelf.class)
                .forEach(shelf -> faces.add(new Field.Choice(shelf.id(), shelf.name()))));
    for (int number = 1; number <= CabinetForm.MOST_FITTINGS; number++) {
      var id = FittingFields.id(number);
      if (typed.getOrDefault(id + "-kind", "").equals(FittingFields.Kind.SHELF.word())) {
        var name = typed.getOrDefault(id + "-name", "").strip();
        faces.add(new Field.Choice(id, name.isEmpty() ? "fitting " + number : name));
      }
    }
    return faces;
  }
}
