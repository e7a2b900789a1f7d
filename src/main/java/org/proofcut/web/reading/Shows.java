package org.proofcut.web.reading;

import org.proofcut.core.drawing.Picture;
import org.proofcut.core.drawing.RulePicture;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.measure.display.Shown;
import org.proofcut.core.setup.Measure;
import org.proofcut.core.setup.Setting;

/** How lengths are written on a sheet, in the unit of the job. */
public record Shows(LengthUnit unit) {

  public Scale caliper() {
    return Scale.caliper(unit);
  }

  public Shown figure(Setting setting) {
    return setting.scale(unit).show(setting.read().value());
  }

  /** A piece of rule, where a rule makes the setting. */
  public Picture rule(Setting setting) {
    return setting.isSetByRule() ? RulePicture.at(setting.read().value(), unit) : null;
  }

  public String text(Length length) {
    return Scale.rule(unit).show(length).text();
  }

  public String fine(Length length) {
    return caliper().show(length).text();
  }

  /** What rounding left over, where it can be told; null where the figure is exact. */
  public String leftover(Shown shown) {
    if (shown.isExact()) {
      return null;
    }
    var by = caliper().show(shown.leftover().abs());
    if (by.leftover().abs().equals(shown.leftover().abs())) {
      return null;
    }
    return shown.leftover().isPositive()
        ? by.text() + " more than this reads"
        : by.text() + " less than this reads";
  }

  /** The question by which a figure is read back. */
  public static String readBack(Setting.Role role) {
    return switch (role) {
      case FENCE -> "What do you read at the fence?";
      case STRIP -> "What does the caliper say of the strip?";
      case SHIM -> "What does the caliper say of the shim?";
      case OPENING_LENGTH, OPENING_WIDTH -> "What does the caliper say of the opening?";
      case HEIGHT -> "What do you read for the height?";
      case DEPTH -> "What do you read for the depth?";
      case STOP -> "What do you read at the stop?";
      case STOP_OFFSET -> "How much farther out does the side stop stand?";
      case STOPS_APART -> "What do you read from the heel to the side stop?";
      case STRAIGHTEDGE -> "What do you read at the straightedge?";
      case MARK -> "What do you read at the mark?";
      case LINE -> "What do you read from the edge to the line?";
      case COLLAR -> "What do you read from the tip to the collar?";
    };
  }

  public static String dimension(Measure.Dimension dimension) {
    return switch (dimension) {
      case WIDTH -> "Width of the cut";
      case DEPTH -> "Depth of the cut";
      case DISTANCE -> "Distance from the reference edge";
      case SIZE -> "Size of the piece";
      case DIAMETER -> "Diameter of the hole";
      case FROM_END -> "Distance from the reference end";
      case RUN_ACROSS -> "Run of the cut across the width";
      case RUN_THROUGH -> "Run of the cut through the thickness";
      case RUN_ALONG -> "Run of the edge along the piece";
    };
  }
}
