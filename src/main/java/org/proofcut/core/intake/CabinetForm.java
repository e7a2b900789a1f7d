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
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.storage.Bay;
import org.proofcut.core.storage.Cabinet;
import org.proofcut.core.storage.CabinetCheck;
import org.proofcut.core.storage.Door;
import org.proofcut.core.storage.Fitting;
import org.proofcut.core.storage.Size;

/**
 * The form of a cabinet for gear: its frame, its bays, its doors and what it is fitted out with.
 * The frame and the shelves of one that is the case of a job follow its design; doors, hooks, boxes
 * and drawers are typed all the same.
 */
public final class CabinetForm {

  /** Most bays of a cabinet. */
  public static final int MOST_BAYS = 4;

  /** Most fittings of a cabinet. */
  public static final int MOST_FITTINGS = 24;

  /** Names the job whose case it is; empty for a cabinet that was measured. */
  public static final String JOB = "job";

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

  static final Field BAYS = count("bays", "Bays", "1 to " + MOST_BAYS + ", side by side");
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

  private static final Band INSIDE = CutFields.band("50 mm", "4000 mm");
  private static final Band HEIGHTS = CutFields.band("0 mm", "2500 mm");
  private static final Band BOARDS = CutFields.band("3 mm", "100 mm");

  private final String id;
  private final Map<String, String> typed;
  private final Optional<Cabinet> made;
  private final LengthUnit unit;
  private final FormReader form;
  private final List<Field.Choice> faces;

  private CabinetForm(String id, Map<String, String> typed, Optional<Cabinet> made) {
    this.id = id;
    this.typed = typed;
    this.made = made;
    this.unit = JobForm.unit(typed);
    this.form = new FormReader(typed, unit);
    this.faces = faces(typed, made);
  }

  /**
   * The cabinet that was typed, or everything that is wrong with it.
   *
   * @param made the case of the job that it names, before doors and hooks; empty where it names
   *     none
   */
  public static Read<Cabinet> read(String id, Map<String, String> typed, Optional<Cabinet> made) {
    return new CabinetForm(id, typed, made).read();
  }

  /** What each shelf of a job's case carries, in grams, if that was typed and can be read. */
  public static Optional<Integer> shelfGrams(Map<String, String> typed) {
    var form = new FormReader(typed, JobForm.unit(typed));
    int grams = FittingFields.carried(SHELF_LOAD, form);
    return form.result(() -> grams).value();
  }

  /** The fields as they are asked of what was typed so far. */
  public static List<CutForm.Group> groups(Map<String, String> typed, Optional<Cabinet> made) {
    return new CabinetForm("", typed, made).groups();
  }

  private List<CutForm.Group> groups() {
    var groups = new ArrayList<CutForm.Group>();
    groups.add(new CutForm.Group("The cabinet", frame(made.isPresent())));
    if (made.isEmpty()) {
      groups.add(new CutForm.Group("Bays", bays(bayCount())));
    }
    groups.add(new CutForm.Group("Doors", List.of(DOORS, DOOR, LEFT_DOOR)));
    int last = 0;
    for (int number = 1; number <= MOST_FITTINGS; number++) {
      last = fitting(number).isThere(form) ? number : last;
    }
    for (int number = 1; number <= Math.min(last + 1, MOST_FITTINGS); number++) {
      groups.add(new CutForm.Group("Fitting " + number, asked(fitting(number))));
    }
    return groups;
  }

  private List<Field> asked(FittingFields fitting) {
    return Stream.concat(
            Stream.of(fitting.kind()),
            FittingFields.Kind.of(form.raw(fitting.kind().name())).stream()
                .flatMap(kind -> fitting.of(kind).stream()))
        .toList();
  }

  private int bayCount() {
    var text = form.raw(BAYS.name()).strip();
    return text.matches("[1-" + MOST_BAYS + "]") ? Integer.parseInt(text) : 1;
  }

  private static List<Field> frame(boolean ofJob) {
    return ofJob
        ? List.of(NAME, JobForm.UNIT, HUNG, BEFORE, DRY, SHELF_LOAD)
        : List.of(NAME, JobForm.UNIT, WIDE, HIGH, DEEP, RAISED, BEFORE, BACK, SIDE, DRY);
  }

  private static List<Field> bays(int count) {
    var fields = new ArrayList<>(List.of(BAYS, UPRIGHT_DEPTH));
    if (count > 1) {
      fields.add(UPRIGHT);
      IntStream.rangeClosed(1, count).mapToObj(CabinetForm::bay).forEach(fields::add);
    }
    return fields;
  }

  static Field bay(int number) {
    return length("bay-" + number, "Bay " + number, "clear width; one bay may stay empty")
        .mayStayEmpty();
  }

  /** Every field that the form can have. */
  public static List<Field> fields() {
    var fields = new LinkedHashMap<String, Field>();
    Stream.of(frame(false), frame(true), bays(MOST_BAYS), List.of(DOORS, DOOR, LEFT_DOOR))
        .flatMap(List::stream)
        .forEach(field -> fields.put(field.name(), field));
    for (int number = 1; number <= MOST_FITTINGS; number++) {
      new FittingFields(number, List.of()).all().forEach(field -> fields.put(field.name(), field));
    }
    return List.copyOf(fields.values());
  }

  /** What was typed into fields of this form, and the job that it names; nothing empty. */
  public static Map<String, String> filledIn(Map<String, String> typed) {
    var filled = new LinkedHashMap<String, String>();
    Stream.concat(fields().stream().map(Field::name), Stream.of(JOB))
        .filter(name -> !typed.getOrDefault(name, "").isBlank())
        .forEach(name -> filled.put(name, typed.get(name)));
    return filled;
  }

  private static List<Field.Choice> faces(Map<String, String> typed, Optional<Cabinet> made) {
    var faces = new ArrayList<Field.Choice>();
    made.ifPresent(
        of ->
            of.fittings(Fitting.Shelf.class)
                .forEach(shelf -> faces.add(new Field.Choice(shelf.id(), shelf.name()))));
    for (int number = 1; number <= MOST_FITTINGS; number++) {
      var id = FittingFields.id(number);
      if (typed.getOrDefault(id + "-kind", "").equals(FittingFields.Kind.SHELF.word())) {
        var name = typed.getOrDefault(id + "-name", "").strip();
        faces.add(new Field.Choice(id, name.isEmpty() ? "fitting " + number : name));
      }
    }
    return faces;
  }

  private FittingFields fitting(int number) {
    return new FittingFields(number, faces);
  }

  private Read<Cabinet> read() {
    var name = form.text(NAME);
    form.choice(JobForm.UNIT);
    var cabinet = made.isPresent() ? ofJob(name, made.get()) : measured(name);
    var read = form.result(() -> cabinet);
    if (read.value().isEmpty()) {
      return read;
    }
    var cannot = CabinetCheck.problems(cabinet, unit);
    return cannot.isEmpty() ? read : new Read<>(Optional.empty(), cannot);
  }

  private Cabinet ofJob(String name, Cabinet of) {
    var hung = form.length(HUNG, HEIGHTS);
    var before = form.length(BEFORE, HEIGHTS);
    boolean dry = form.yes(DRY);
    FittingFields.carried(SHELF_LOAD, form);
    return new Cabinet(
        id,
        name,
        of.inside(),
        of.raised().plus(hung),
        before,
        of.back(),
        of.side(),
        of.uprightDeep(),
        dry,
        of.bays(),
        doors(of.inside().wide()),
        Stream.concat(of.fittings().stream(), fittings(1, of.uprightDeep()).stream()).toList());
  }

  private Cabinet measured(String name) {
    var inside =
        new Size(form.length(WIDE, INSIDE), form.length(HIGH, INSIDE), form.length(DEEP, INSIDE));
    var raised = form.length(RAISED, HEIGHTS);
    var before = form.length(BEFORE, HEIGHTS);
    var back = form.length(BACK, BOARDS);
    var side = form.length(SIDE, BOARDS);
    boolean dry = form.yes(DRY);
    var bays = bays(inside.wide());
    var uprightDeep = form.optionalLength(UPRIGHT_DEPTH, INSIDE).orElse(inside.deep());
    if (form.isSound(UPRIGHT_DEPTH, DEEP) && uprightDeep.isGreaterThan(inside.deep())) {
      form.problem(
          UPRIGHT_DEPTH,
          "That is " + form.shown(uprightDeep),
          "at most " + form.shown(inside.deep()) + ": so much the cabinet is deep inside");
    }
    return new Cabinet(
        id,
        name,
        inside,
        raised,
        before,
        back,
        side,
        uprightDeep,
        dry,
        bays,
        doors(inside.wide()),
        fittings(bays.size(), uprightDeep));
  }

  /**
   * Clear widths and uprights make up the width inside; one width that is empty is what is left.
   */
  private List<Bay> bays(Length wide) {
    int count = form.count(BAYS, 1, MOST_BAYS);
    if (count == 1) {
      return List.of(new Bay(1, new Band(Length.ZERO, wide)));
    }
    var upright = form.optionalLength(UPRIGHT, BOARDS);
    if (upright.isEmpty() && form.isBlank(UPRIGHT.name())) {
      form.problem(UPRIGHT, "Nothing was entered", "how thick the uprights between the bays are");
    }
    var left = wide.minus(upright.orElse(Length.ZERO).times(count - 1L));
    var widths = new ArrayList<Optional<Length>>();
    for (int number = 1; number <= count; number++) {
      widths.add(form.optionalLength(bay(number), INSIDE));
      left = left.minus(widths.get(number - 1).orElse(Length.ZERO));
    }
    var asked = Stream.concat(Stream.of(WIDE, UPRIGHT), bays(count).stream());
    return form.isSound(asked.toArray(Field[]::new))
        ? sideBySide(widths, left, upright.orElseThrow())
        : List.of(new Bay(1, new Band(Length.ZERO, wide)));
  }

  private List<Bay> sideBySide(List<Optional<Length>> widths, Length left, Length upright) {
    long open = widths.stream().filter(Optional::isEmpty).count();
    var last = bay(widths.size());
    if (open > 1) {
      form.problem(last, open + " bays are empty", "the clear width of each; one may stay empty");
    } else if (open == 1 && left.isLessThan(INSIDE.least())) {
      form.problem(
          last,
          "The others leave " + form.shown(left) + " for the bay that is empty",
          "bays and uprights that together are as wide as the cabinet inside");
    } else if (open == 0 && !left.isZero()) {
      form.problem(
          last,
          "Bays and uprights are "
              + form.shown(left.abs())
              + (left.isNegative() ? " wider" : " narrower")
              + " than the cabinet inside",
          "bays and uprights that together are as wide as the cabinet inside");
    }
    var bays = new ArrayList<Bay>();
    var from = Length.ZERO;
    for (var width : widths) {
      var to = from.plus(width.orElse(left.max(INSIDE.least())));
      bays.add(new Bay(bays.size() + 1, new Band(from, to)));
      from = to.plus(upright);
    }
    return bays;
  }

  private List<Door> doors(Length wide) {
    var chosen = form.choice(DOORS);
    if (!List.of("left", "right", "two").contains(chosen)) {
      return List.of();
    }
    var thick = form.length(DOOR, BOARDS);
    if (!chosen.equals("two")) {
      return List.of(new Door(1, new Band(Length.ZERO, wide), chosen.equals("left"), thick));
    }
    var middle = form.optionalLength(LEFT_DOOR, INSIDE).orElse(wide.half());
    if (form.isSound(LEFT_DOOR, WIDE) && middle.isAtLeast(wide)) {
      form.problem(
          LEFT_DOOR,
          "That is " + form.shown(middle),
          "less than " + form.shown(wide) + ": so much the cabinet is wide inside");
    }
    var split = middle.min(wide);
    return List.of(
        new Door(1, new Band(Length.ZERO, split), true, thick),
        new Door(2, new Band(split, wide), false, thick));
  }

  private List<Fitting> fittings(int bayCount, Length uprightDeep) {
    var there = new LinkedHashMap<Integer, FittingFields.Kind>();
    for (int number = 1; number <= MOST_FITTINGS; number++) {
      var fields = fitting(number);
      int at = number;
      if (fields.isThere(form)) {
        fields.kind(form).ifPresent(kind -> there.put(at, kind));
      }
    }
    var fittings = new ArrayList<Fitting>();
    there.forEach(
        (number, kind) ->
            fittings.add(
                fitting(number).read(kind, form, usualName(number, kind, there), uprightDeep)));
    return fittings;
  }

  /** "hooks"; where there are several of a kind, "hooks 2". */
  private String usualName(
      int number, FittingFields.Kind kind, Map<Integer, FittingFields.Kind> all) {
    var alike = all.keySet().stream().filter(one -> all.get(one) == kind).toList();
    boolean alone = alike.size() == 1 && (kind != FittingFields.Kind.SHELF || made.isEmpty());
    return alone ? kind.usualName() : kind.usualName() + " " + (alike.indexOf(number) + 1);
  }

  /**
   * What would be typed for a cabinet that was measured.
   *
   * @param unit of bare numbers; all that is written has its unit with it
   */
  public static Map<String, String> typed(Cabinet cabinet, LengthUnit unit) {
    var typed = begin(cabinet, unit);
    typed.put(WIDE.name(), cabinet.inside().wide().toString());
    typed.put(HIGH.name(), cabinet.inside().high().toString());
    typed.put(DEEP.name(), cabinet.inside().deep().toString());
    typed.put(RAISED.name(), cabinet.raised().toString());
    typed.put(BACK.name(), cabinet.back().toString());
    typed.put(SIDE.name(), cabinet.side().toString());
    typed.put(BAYS.name(), Integer.toString(cabinet.bays().size()));
    typed.put(UPRIGHT_DEPTH.name(), cabinet.uprightDeep().toString());
    if (cabinet.bays().size() > 1) {
      var gap = cabinet.bays().get(1).across().least().minus(cabinet.bays().get(0).across().most());
      typed.put(UPRIGHT.name(), gap.toString());
      cabinet.bays().forEach(bay -> typed.put(bay(bay.number()).name(), bay.width().toString()));
    }
    putFittings(cabinet.fittings(), typed);
    return typed;
  }

  /**
   * What would be typed for a cabinet that is the case of a job, beyond what follows from its
   * design.
   *
   * @param made the case before doors and hooks
   */
  public static Map<String, String> typed(
      Cabinet cabinet, LengthUnit unit, String job, Cabinet made, int shelfGrams) {
    var typed = begin(cabinet, unit);
    typed.put(JOB, job);
    typed.put(HUNG.name(), cabinet.raised().minus(made.raised()).toString());
    typed.put(SHELF_LOAD.name(), FittingFields.grams(shelfGrams));
    var ofCase = made.fittings().stream().map(Fitting::id).toList();
    putFittings(
        cabinet.fittings().stream().filter(one -> !ofCase.contains(one.id())).toList(), typed);
    return typed;
  }

  private static Map<String, String> begin(Cabinet cabinet, LengthUnit unit) {
    var typed = new LinkedHashMap<String, String>();
    typed.put(NAME.name(), cabinet.name());
    typed.put(JobForm.UNIT.name(), unit == LengthUnit.INCH ? "in" : "mm");
    typed.put(BEFORE.name(), cabinet.before().toString());
    typed.put(DRY.name(), cabinet.dry() ? "yes" : "no");
    var doors = cabinet.doors();
    typed.put(
        DOORS.name(),
        switch (doors.size()) {
          case 0 -> "none";
          case 1 -> doors.get(0).hingedLeft() ? "left" : "right";
          default -> "two";
        });
    if (!doors.isEmpty()) {
      typed.put(DOOR.name(), doors.get(0).thickness().toString());
    }
    if (doors.size() > 1) {
      typed.put(LEFT_DOOR.name(), doors.get(0).across().most().toString());
    }
    return typed;
  }

  /**
   * A fitting that has no number yet gets the first that is free.
   *
   * @throws java.util.NoSuchElementException if there are more than {@link #MOST_FITTINGS}
   */
  private static void putFittings(List<Fitting> fittings, Map<String, String> typed) {
    var ids = fittings.stream().map(Fitting::id).toList();
    var free =
        IntStream.rangeClosed(1, MOST_FITTINGS)
            .filter(number -> !ids.contains(FittingFields.id(number)))
            .iterator();
    for (var fitting : fittings) {
      int number =
          IntStream.rangeClosed(1, MOST_FITTINGS)
              .filter(one -> FittingFields.id(one).equals(fitting.id()))
              .findFirst()
              .orElseGet(() -> free.next());
      typed.putAll(new FittingFields(number, List.of()).typed(fitting));
    }
  }
}
