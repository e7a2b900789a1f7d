package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.band;
import static org.proofcut.core.intake.Field.count;
import static org.proofcut.core.intake.Field.length;
import static org.proofcut.core.intake.Field.speeds;
import static org.proofcut.core.intake.Field.text;
import static org.proofcut.core.intake.Field.yesNo;

import org.proofcut.core.measure.Band;

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

  private MachineFields() {}

  /** What it is called, for example so. */
  static Field name(String example) {
    return text("name", "Name", "what you call it, such as \"" + example + "\"");
  }
}
