package org.proofcut.core.intake;

import static org.proofcut.core.intake.CabinetFields.BACK;
import static org.proofcut.core.intake.CabinetFields.BAYS;
import static org.proofcut.core.intake.CabinetFields.BEFORE;
import static org.proofcut.core.intake.CabinetFields.DEEP;
import static org.proofcut.core.intake.CabinetFields.DOOR;
import static org.proofcut.core.intake.CabinetFields.DOORS;
import static org.proofcut.core.intake.CabinetFields.DRY;
import static org.proofcut.core.intake.CabinetFields.HIGH;
import static org.proofcut.core.intake.CabinetFields.HUNG;
import static org.proofcut.core.intake.CabinetFields.LEFT_DOOR;
import static org.proofcut.core.intake.CabinetFields.NAME;
import static org.proofcut.core.intake.CabinetFields.RAISED;
import static org.proofcut.core.intake.CabinetFields.SHELF_LOAD;
import static org.proofcut.core.intake.CabinetFields.SIDE;
import static org.proofcut.core.intake.CabinetFields.UPRIGHT;
import static org.proofcut.core.intake.CabinetFields.UPRIGHT_DEPTH;
import static org.proofcut.core.intake.CabinetFields.WIDE;
import static org.proofcut.core.intake.CabinetFields.bay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

  private static final Band INSIDE = CutFields.band("50 mm", "4000 mm");
  private static final Band HEIGHTS = CutFields.band("0 mm", "2500 mm");
  private static final Band BOARDS = CutFields.band("3 mm", "100 mm");

  private final String id;
  private final Optional<Cabinet> made;
  private final LengthUnit unit;
  private final FormReader form;
  private final List<Field.Choice> faces;

  private CabinetForm(String id, Map<String, String> typed, Optional<Cabinet> made) {
    this.id = id;
    this.made = made;
    this.unit = JobForm.unit(typed);
    this.form = new FormReader(typed, unit);
    this.faces = CabinetFields.faces(typed, made);
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
    return CabinetFields.groups(typed, made);
  }

  /** Every field that the form can have. */
  public static List<Field> fields() {
    return CabinetFields.all();
  }

  /** What was typed into fields of this form, and the job that it names; nothing empty. */
  public static Map<String, String> filledIn(Map<String, String> typed) {
    var filled = new LinkedHashMap<String, String>();
    Stream.concat(fields().stream().map(Field::name), Stream.of(JOB))
        .filter(name -> !typed.getOrDefault(name, "").isBlank())
        .forEach(name -> filled.put(name, typed.get(name)));
    return filled;
  }

  /**
   * What would be typed for a cabinet that was measured.
   *
   * @param unit of bare numbers; all that is written has a unit with it
   */
  public static Map<String, String> typed(Cabinet cabinet, LengthUnit unit) {
    return CabinetWritten.measured(cabinet, unit);
  }

  /**
   * What would be typed for a cabinet that is the case of a job, beyond what follows from its
   * design.
   *
   * @param made the case before doors and hooks
   * @param shelfGrams what each of its shelves carries
   */
  public static Map<String, String> typed(
      Cabinet cabinet, LengthUnit unit, String job, Cabinet made, int shelfGrams) {
    return CabinetWritten.ofJob(cabinet, unit, job, made, shelfGrams);
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
    var asked = Stream.concat(Stream.of(WIDE, UPRIGHT), CabinetFields.bays(count).stream());
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
}
