package org.proofcut.core.intake;

import static org.proofcut.core.intake.Field.choice;
import static org.proofcut.core.intake.Field.count;
import static org.proofcut.core.intake.Field.length;
import static org.proofcut.core.intake.Field.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.storage.Fitting;
import org.proofcut.core.storage.Size;

/**
 * The fields of one thing that a cabinet is fitted out with: {@code fitting-3-kind}, and what that
 * kind asks for.
 */
final class FittingFields {

  /** What there is. */
  enum Kind {
    SHELF(Fitting.Shelf.class, "shelf", "shelf"),
    RAIL(Fitting.Rail.class, "row of hooks on the back", "hooks"),
    DRAWER(Fitting.Drawer.class, "drawer", "drawer"),
    BOX(Fitting.LidBox.class, "box with a lid, on a shelf", "lidded box"),
    DOOR_RAIL(Fitting.DoorRail.class, "row of hooks on a door", "hooks"),
    WALL(Fitting.Wall.class, "hooks in sight, on the wall or on the outside", "hooks outside");

    private final Class<? extends Fitting> type;
    private final String words;
    private final String usualName;

    Kind(Class<? extends Fitting> type, String words, String usualName) {
      this.type = type;
      this.words = words;
      this.usualName = usualName;
    }

    String usualName() {
      return usualName;
    }

    String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Optional<Kind> of(String word) {
      return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
    }

    static Kind of(Fitting fitting) {
      return Arrays.stream(values())
          .filter(kind -> kind.type.isInstance(fitting))
          .findFirst()
          .orElseThrow();
    }
  }

  /** What a box stands on where it stands on no shelf. */
  static final String BOTTOM = "bottom";

  private static final int MOST_NUMBER = 9;
  private static final Band HEIGHTS = CutFields.band("0 mm", "4000 mm");
  private static final Band SIZES = CutFields.band("1 mm", "4000 mm");
  private static final Band BOARDS = CutFields.band("3 mm", "100 mm");
  private static final Amount LEAST = new Amount(new BigDecimal("0.1"), "kg");
  private static final Amount MOST = new Amount(new BigDecimal("500"), "kg");

  private static final String ABOVE_BOTTOM = "above the inner face of the bottom";

  private final String id;
  private final Field kind;
  private final Field name;
  private final Field bay;
  private final Field door;
  private final Field on;
  private final Field thickness;
  private final Field shelfDepth;
  private final Field load;
  private final Field each;

  /**
   * @param shelves that a box may stand on, by id
   */
  FittingFields(int number, List<Field.Choice> shelves) {
    id = id(number);
    var faces = new ArrayList<>(shelves);
    faces.add(0, new Field.Choice(BOTTOM, "the bottom"));
    kind =
        choice(
                id + "-kind",
                "Fitting " + number,
                Arrays.stream(Kind.values())
                    .map(one -> new Field.Choice(one.word(), one.words))
                    .toList())
            .mayStayEmpty();
    name =
        text(id + "-name", "Its name", "as labels call it; leave empty for the usual one")
            .mayStayEmpty();
    bay =
        count(id + "-bay", "In bay", "counted from the left; leave empty for bay 1").mayStayEmpty();
    door =
        count(id + "-door", "On door", "counted from the left; leave empty for door 1")
            .mayStayEmpty();
    on = choice(id + "-on", "It stands on", faces);
    thickness = length(id + "-thickness", "Thickness", "of its board");
    shelfDepth =
        size("depth", "Depth", "from the back to its front edge; leave empty for that of the bays")
            .mayStayEmpty();
    load = text(id + "-load", "It carries", "in all, such as 15 kg");
    each = text(id + "-each", "Each hook carries", "as its maker says, such as 5 kg");
  }

  static String id(int number) {
    return "fitting-" + number;
  }

  Field kind() {
    return kind;
  }

  private Field size(String measure, String label, String hint) {
    return length(id + "-" + measure, label, hint);
  }

  private Field at(String label, String hint) {
    return size("at", label, hint);
  }

  private List<Field> outer() {
    return List.of(
        size("width", "Width", "outside, from left to right"),
        size("height", "Height", "outside, with its lid"),
        size("depth", "Depth", "outside, from back to front"));
  }

  private List<Field> inner() {
    return List.of(
        size("inner-width", "Width inside", "clear, from left to right"),
        size("inner-height", "Height inside", "clear, from its bottom up"),
        size("inner-depth", "Depth inside", "clear, from back to front"));
  }

  private Field hooksAt() {
    return at("Height of the hooks", "to where things hang, " + ABOVE_BOTTOM);
  }

  /** What a kind asks for, after the kind itself. */
  List<Field> of(Kind asked) {
    var fields = new ArrayList<Field>();
    fields.add(name);
    switch (asked) {
      case SHELF -> fields.addAll(List.of(bay, shelfAt(), thickness, shelfDepth, load));
      case RAIL -> fields.addAll(List.of(bay, hooksAt(), load, each));
      case DRAWER -> {
        fields.addAll(List.of(bay, drawerAt(), front()));
        fields.addAll(inner());
        fields.add(load);
      }
      case BOX -> {
        fields.addAll(List.of(bay, on));
        fields.addAll(outer());
        fields.addAll(inner());
        fields.add(load);
      }
      case DOOR_RAIL -> fields.addAll(List.of(door, hooksAt(), deepest(), load, each));
      case WALL -> fields.addAll(List.of(wallAt(), wallWide(), drop(), wallDeep(), load, each));
    }
    return fields;
  }

  private Field shelfAt() {
    return at("Height of its face", "that things stand on, " + ABOVE_BOTTOM);
  }

  private Field drawerAt() {
    return at("Height of its lowest edge", ABOVE_BOTTOM + "; 0 where it lies on it");
  }

  private Field front() {
    return size("height", "Height of its front", "that nothing else can take up");
  }

  private Field deepest() {
    return size("depth", "Deepest that may hang there", "from the face of the door inward");
  }

  private Field wallAt() {
    return at("Height of the hooks", "to where things hang, above the floor");
  }

  private Field wallWide() {
    return size("width", "Free width", "for all that hangs there");
  }

  private Field drop() {
    return size("drop", "Free below the hooks", "down to the next thing");
  }

  private Field wallDeep() {
    return size("depth", "Free before the wall", "out to where one walks");
  }

  /** All that any kind asks for. */
  List<Field> all() {
    var all = new LinkedHashMap<String, Field>();
    all.put(kind.name(), kind);
    for (var one : Kind.values()) {
      of(one).forEach(field -> all.putIfAbsent(field.name(), field));
    }
    return List.copyOf(all.values());
  }

  /** Whether anything was typed here. */
  boolean isThere(FormReader form) {
    return all().stream().anyMatch(field -> !form.isBlank(field.name()));
  }

  /** Its kind, if one was chosen; that none was is a problem. */
  Optional<Kind> kind(FormReader form) {
    if (form.isBlank(kind.name())) {
      form.problem(kind, "Nothing was chosen", "a kind of fitting, or nothing in its fields");
      return Optional.empty();
    }
    return Kind.of(form.choice(kind));
  }

  /**
   * What was typed.
   *
   * @param usualName where it was given none
   * @param uprightDeep depth of a shelf that says none
   */
  Fitting read(Kind asked, FormReader form, String usualName, Length uprightDeep) {
    var called = form.text(name);
    var named = called.isEmpty() ? usualName : called;
    return switch (asked) {
      case SHELF ->
          new Fitting.Shelf(
              id,
              named,
              bay(form),
              form.length(shelfAt(), HEIGHTS),
              form.length(thickness, BOARDS),
              form.optionalLength(shelfDepth, SIZES).orElse(uprightDeep),
              carried(load, form));
      case RAIL ->
          new Fitting.Rail(
              id,
              named,
              bay(form),
              form.length(hooksAt(), SIZES),
              carried(load, form),
              carried(each, form));
      case DRAWER ->
          new Fitting.Drawer(
              id,
              named,
              bay(form),
              form.length(drawerAt(), HEIGHTS),
              form.length(front(), SIZES),
              size(inner(), form),
              carried(load, form));
      case BOX ->
          new Fitting.LidBox(
              id,
              named,
              bay(form),
              Optional.of(form.choice(on)).filter(one -> !one.equals(BOTTOM)).orElse(""),
              size(outer(), form),
              size(inner(), form),
              carried(load, form));
      case DOOR_RAIL ->
          new Fitting.DoorRail(
              id,
              named,
              form.optionalCount(door, 1, MOST_NUMBER).orElse(1),
              form.length(hooksAt(), SIZES),
              form.length(deepest(), SIZES),
              carried(load, form),
              carried(each, form));
      case WALL ->
          new Fitting.Wall(
              id,
              named,
              form.length(wallAt(), SIZES),
              form.length(wallWide(), SIZES),
              form.length(drop(), SIZES),
              form.length(wallDeep(), SIZES),
              carried(load, form),
              carried(each, form));
    };
  }

  private int bay(FormReader form) {
    return form.optionalCount(bay, 1, MOST_NUMBER).orElse(1);
  }

  private static Size size(List<Field> fields, FormReader form) {
    return new Size(
        form.length(fields.get(0), SIZES),
        form.length(fields.get(1), SIZES),
        form.length(fields.get(2), SIZES));
  }

  /** What carries is reckoned a gram too weak rather than too strong. */
  static int carried(Field field, FormReader form) {
    return KeptForm.grams(form.weight(field, LEAST, MOST), RoundingMode.DOWN);
  }
}
