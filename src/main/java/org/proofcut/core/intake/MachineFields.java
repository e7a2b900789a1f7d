package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.band;
import static org.proofcut.core.intake.Field.count;
import static org.proofcut.core.intake.Field.length;
import static org.proofcut.core.intake.Field.number;
import static org.proofcut.core.intake.Field.speeds;
import static org.proofcut.core.intake.Field.text;
import static org.proofcut.core.intake.Field.yesNo;

import java.util.ArrayList;
import java.util.Optional;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.measure.Band;
import org.proofcut.core.shop.Machine;

/** Fields that machines and cutters of several kinds share. */
final class MachineFields {

  static final Band STEPS = band("0.001 mm", "2 mm");

  static final Band REACHES = band("10 mm", "4000 mm");

  static final Band REACHES_OR_NONE = band("0 mm", "4000 mm");

  static final Field SPEEDS =
      speeds("speeds", "Speeds", "each mark of the dial with its revolutions a minute");

  static final Field GUARD = yesNo("guard", "Has a guard over the cutter");

  static final Field EXTRACTION = yesNo("extraction", "Dust extraction is connected");

  static final Field FENCE_STEP =
      length("fence-step", "Fence: smallest step", "smallest change you can set and read");

  static final Field HEIGHT_STEP =
      length("height-step", "Height: smallest step", "smallest change you can set and read");

  static final Field DEPTH_STEP =
      length("depth-step", "Depth: smallest step", "smallest change you can set and read");

  static final Field TOP_SPEED =
      count(
              "top-speed",
              "Top speed marked on it",
              "revolutions a minute; leave empty if no mark can be read")
          .mayStayEmpty();

  static final Field EDGES = count("edges", "Cutting edges", "how many");

  static final Field DIAMETER = length("diameter", "Diameter", "as marked");

  /** Asked of every machine, and no part of it: nothing is set by how loud it is. */
  static final Field LEVEL =
      number(
              "level",
              "Level at your ear, measured",
              "in dBA, while it cuts, with the extractor on if one is connected; leave empty if never"
                  + " measured")
          .mayStayEmpty();

  private static final int QUIETEST = 40;

  private static final int LOUDEST = 140;

  private MachineFields() {}

  /** The form with the level asked at its end. */
  static <M extends Machine> ItemForm<M> withLevel(ItemForm<M> form) {
    var fields = new ArrayList<>(form.fields());
    fields.add(LEVEL);
    return new ItemForm<>(
        form.kind(),
        form.title(),
        fields,
        (id, typed) -> {
          level(typed);
          return form.maker().make(id, typed);
        });
  }

  /** The level that was measured; empty where none was. */
  static Optional<Amount> level(FormReader form) {
    return level(form, LEVEL);
  }

  /** A level in any field. */
  static Optional<Amount> level(FormReader form, Field field) {
    return form.optionalNumber(field, QUIETEST, LOUDEST).map(level -> new Amount(level, "dBA"));
  }

  /** What it is called, for example so. */
  static Field name(String example) {
    return text("name", "Name", "what you call it, such as \"" + example + "\"");
  }
}
