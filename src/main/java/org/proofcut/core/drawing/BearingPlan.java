package org.proofcut.core.drawing;

import java.util.ArrayList;
import java.util.List;
import org.proofcut.core.drawing.Drawing.Anchor;
import org.proofcut.core.drawing.Drawing.Fill;
import org.proofcut.core.drawing.Drawing.Line;
import org.proofcut.core.drawing.Drawing.Turn;
import org.proofcut.core.drawing.Drawing.Type;
import org.proofcut.core.drawing.PlanSheet.Column;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.setup.Feed;
import org.proofcut.core.setup.Guide;
import org.proofcut.core.setup.Setup;

/**
 * A cut that the edge itself leads, from above: which way round, and where it begins. No figure of
 * it lies in this plane, so it is not to scale.
 */
final class BearingPlan {

  private static final int CUTTER = 16;
  private static final int TURNING = 32;

  private final Setup setup;
  private final PlanWords words;
  private final PlanSheet sheet;
  private final Drawing plan;

  private BearingPlan(Operation operation, Setup setup, LengthUnit unit, int width) {
    this.setup = setup;
    this.words = new PlanWords(operation, setup, unit);
    this.sheet = new PlanSheet(width, words.all(layout(), notes()));
    this.plan = sheet.drawing();
  }

  static Picture of(Operation operation, Setup setup, LengthUnit unit, int width) {
    return new BearingPlan(operation, setup, unit, width).drawn();
  }

  private Picture drawn() {
    if (setup.guide() == Guide.BEARING_WITH_PIN) {
      atThePin();
    } else if (setup.feed() == Feed.CLOCKWISE_INSIDE) {
      insideAnOpening();
    } else {
      roundThePiece();
    }
    notes().forEach(sheet::note);
    return sheet.picture();
  }

  /** Along the lower edge to the right, up, back along the upper edge, down. */
  private void roundThePiece() {
    sheet.head("From above: round the piece.");
    long top = sheet.top() + 70;
    long left = 80;
    long right = sheet.width() - 80L;
    long bottom = top + 210;
    plan.box(plan.px(left, top), plan.px(right, bottom), Fill.WOOD, Line.PLAIN);
    cutter((left + right) / 2 - 40, bottom + CUTTER, Turn.CLOCKWISE);
    plan.feed(plan.px((left + right) / 2 + 20, bottom + 26), plan.px(right, bottom + 26));
    plan.feed(plan.px(right + 34, bottom - 20), plan.px(right + 34, top + 20));
    plan.feed(plan.px(right - 20, top - 34), plan.px(left + 20, top - 34));
    plan.feed(plan.px(left - 34, top + 20), plan.px(left - 34, bottom - 20));
    sheet.say(
        new Column(left + 12, right - 12, bottom - 66, bottom, Anchor.START),
        "begin in the middle of an edge",
        Type.NOTE);
    sheet.say(
        new Column(left + 12, right - 12, top + 10, top + 80, Anchor.START),
        "wood on your left as you push",
        Type.STRESS);
    sheet.field(new Length(1), 8, 0, 8, bottom + 70 - sheet.top());
  }

  private void insideAnOpening() {
    sheet.head("From above: round the opening.");
    long top = sheet.top() + 10;
    long bottom = top + 330;
    plan.box(plan.px(10, top), plan.px(sheet.width() - 10L, bottom), Fill.WOOD, Line.PLAIN);
    long left = 66;
    long right = sheet.width() - 66L;
    long from = top + 60;
    long to = bottom - 60;
    plan.box(plan.px(left, from), plan.px(right, to), Fill.SHEET, Line.PLAIN);
    cutter((left + right) / 2 + 40, to - CUTTER, Turn.CLOCKWISE);
    plan.feed(plan.px((left + right) / 2 - 20, to - 26), plan.px(left + 50, to - 26));
    plan.feed(plan.px(left + 26, to - 40), plan.px(left + 26, from + 40));
    plan.feed(plan.px(left + 50, from + 26), plan.px(right - 50, from + 26));
    plan.feed(plan.px(right - 26, from + 40), plan.px(right - 26, to - 40));
    sheet.say(
        new Column(left + 60, right - 60, from + 56, to - 60, Anchor.START),
        "wood on your left as you push",
        Type.STRESS);
    sheet.field(new Length(1), 8, 0, 8, bottom + 6 - sheet.top());
  }

  /** The work lies toward the person, swings in from the pin and moves left. */
  private void atThePin() {
    sheet.head("From above; you stand at the bottom.");
    long top = sheet.top() + 84;
    long middle = sheet.width() / 2;
    long left = 40;
    long right = sheet.width() - 40L;
    plan.outline(
        Fill.WOOD,
        Line.PLAIN,
        plan.px(left, top + 40),
        plan.px(middle - 90, top + 8),
        plan.px(middle, top),
        plan.px(middle + 90, top + 8),
        plan.px(right, top + 40),
        plan.px(right, top + 170),
        plan.px(left, top + 170));
    cutter(middle, top - CUTTER, Turn.COUNTER_CLOCKWISE);
    plan.circle(plan.px(middle + 104, top - 2), 12_000, Fill.MACHINE, Line.PLAIN);
    sheet.say(
        new Column(middle + 84, sheet.width() - 8L, top - 50, top - 14, Anchor.START),
        "pin",
        Type.NOTE);
    sheet.say(
        new Column(left + 12, right - 12, top + 60, top + 120, Anchor.START),
        "work lies between you and the cutter",
        Type.NOTE);
    plan.feed(plan.px(right - 20, top + 200), plan.px(left + 20, top + 200));
    sheet.field(new Length(1), 8, 0, 8, top + 226 - sheet.top());
  }

  private void cutter(long x, long y, Turn turn) {
    plan.circle(plan.px(x, y), CUTTER * 1000L, Fill.INK, Line.NONE);
    plan.turning(plan.px(x, y), TURNING, turn);
  }

  private List<String> notes() {
    var notes = new ArrayList<String>();
    notes.add(setup.feed().words() + ".");
    notes.add("The piece lies " + words.face() + ".");
    notes.addAll(words.breakouts());
    notes.addAll(words.passes());
    notes.add("Not to scale: no figure is set in this plane.");
    return notes;
  }

  private String layout() {
    if (setup.guide() == Guide.BEARING_WITH_PIN) {
      return "The fence is off. The work lies between you and the cutter, which turns"
          + " counter-clockwise; the starting pin stands on its right. The work is laid against the"
          + " pin, swung in until its edge meets the bearing, and moved from right to left.";
    }
    return setup.feed() == Feed.CLOCKWISE_INSIDE
        ? "The router stands over the opening and moves clockwise round it, the bearing on its"
            + " edge; the cutter turns clockwise."
        : "The router moves counter-clockwise round the piece, the bearing on its edge, begun in"
            + " the middle of an edge; the cutter turns clockwise.";
  }
}
