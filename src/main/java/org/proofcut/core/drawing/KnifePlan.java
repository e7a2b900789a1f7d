package org.proofcut.core.drawing;

import org.proofcut.core.drawing.Drawing.Anchor;
import org.proofcut.core.drawing.Drawing.Fill;
import org.proofcut.core.drawing.Drawing.Line;
import org.proofcut.core.drawing.Drawing.Turn;
import org.proofcut.core.drawing.Drawing.Type;
import org.proofcut.core.drawing.PlanSheet.Column;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Setup;

/**
 * A board at a jointer or planer: from above, where the hands and the body are, and from the side,
 * where knives, grain and feed are. A pass is too thin and a board too long for one scale, so
 * neither is drawn to scale; the figures say what is what.
 */
final class KnifePlan {

  private static final int TABLE = 34;

  /** The field is used only for where its notes begin. */
  private static final Length ANY_SCALE = Length.ofMillimetres(1);

  /** How high a pass is drawn. */
  private static final int PASS = 18;

  private final Setup setup;
  private final PlanWords words;
  private final boolean jointer;
  private final boolean edge;
  private final String figure;

  /** The same with its unit. */
  private final String sized;

  private final int width;
  private final PlanSheet sheet;
  private final Drawing plan;

  private KnifePlan(Operation operation, Setup setup, LengthUnit unit, int width, boolean above) {
    this.setup = setup;
    this.words = new PlanWords(operation, setup, unit);
    this.jointer = setup.asked() instanceof CutAsked.Jointing;
    this.edge = setup.asked() instanceof CutAsked.Jointing jointing && jointing.edge();
    var setting = setup.settings().get(0);
    this.figure = words.figure(setting);
    this.sized = setting.scale(unit).show(setting.read().value()).text();
    this.width = width;
    this.sheet =
        new PlanSheet(
            width,
            above
                ? words.all(aboveLayout(), words.notes())
                : operation.title() + ", from the side. " + sideLayout());
    this.plan = sheet.drawing();
  }

  /** From above, with the person at the bottom. */
  static Picture fromAbove(Operation operation, Setup setup, LengthUnit unit, int width) {
    var drawn = new KnifePlan(operation, setup, unit, width, true);
    return drawn.jointer ? drawn.jointerFromAbove() : drawn.planerFromAbove();
  }

  /** From the side that the person at the machine sees, fed from right to left. */
  static Picture fromTheSide(Operation operation, Setup setup, LengthUnit unit, int width) {
    var drawn = new KnifePlan(operation, setup, unit, width, false);
    return drawn.jointer ? drawn.jointerFromTheSide() : drawn.planerFromTheSide();
  }

  // ---- from above ----------------------------------------------------------------------------

  private String aboveLayout() {
    return jointer
        ? "The fence is behind. The lower infeed table is on the right, the knives run across in the"
            + " middle, the higher outfeed table is on the left. "
            + (edge
                ? "The board stands on its hollow edge, its flat face to the fence. "
                : "The board lies on its hollow face, one edge to the fence. ")
            + "The guard covers the knives beside the board. Over the knives and behind the board is"
            + " hatched: no hand, and nobody, there."
        : "The planer stands across. The board goes in at the front and away from you. The strip in"
            + " line with it is hatched: keep clear, and stand beside it.";
  }

  private Picture jointerFromAbove() {
    sheet.head("From above; you stand at the bottom, beside the infeed table.");
    long top = sheet.top() + 8;
    long fence = top + 40;
    long board = edge ? 34 : 96;
    long near = fence + 170;
    long middle = width / 2;
    long opening = sheet.narrow() ? 40 : 56;
    plan.box(plan.px(8, top), plan.px(width - 8L, fence), Fill.MACHINE, Line.PLAIN);
    plan.box(plan.px(8, fence), plan.px(middle - opening / 2, near), Fill.NONE, Line.PLAIN);
    plan.box(
        plan.px(middle + opening / 2, fence), plan.px(width - 8L, near), Fill.NONE, Line.PLAIN);
    long leads = middle - (sheet.narrow() ? 70 : 120);
    long trails = width - (sheet.narrow() ? 58L : 96);
    plan.box(plan.px(leads, fence), plan.px(trails, fence + board), Fill.WOOD, Line.PLAIN);
    // No hand over the opening, nobody behind the board.
    plan.box(
        plan.px(middle - opening / 2, fence),
        plan.px(middle + opening / 2, fence + board),
        Fill.WASTE,
        Line.DASHED);
    plan.box(plan.px(trails, fence), plan.px(width - 8L, fence + board), Fill.WASTE, Line.DASHED);
    plan.box(
        plan.px(middle - opening / 2 - 8, fence + board + 4),
        plan.px(middle + opening / 2 + 8, near + 12),
        Fill.MACHINE,
        Line.PLAIN);
    sheet.field(ANY_SCALE, 8, near - sheet.top(), 8, 100);
    sheet.plate(new Column(0, width, top + 6, fence, Anchor.MIDDLE), "fence", Type.NOTE);
    long under = fence + (edge ? board : 0) + 8;
    sheet.note(words.notes().get(0));
    side(8, middle - opening / 2, edge ? under : fence + board + 8, near, "outfeed, higher");
    side(middle + opening / 2 + 8, width, edge ? under : fence + board + 8, near, "infeed, lower");
    plan.feed(plan.px(width - 30L, near + 40), plan.px(width - 150L, near + 40));
    var column = new Column(8, width - 170L, near + 24, near + 112, Anchor.START);
    sheet.sayOrNote(column, "guard closed", Type.NOTE);
    sheet.sayOrNote(column, "wide hatching: no hand, nobody", Type.STRESS);
    sheet.lower(12);
    notes();
    return sheet.picture();
  }

  private void side(long left, long right, long from, long to, String what) {
    sheet.sayOrNote(new Column(left + 10, right - 14, from, to, Anchor.START), what, Type.NOTE);
  }

  private Picture planerFromAbove() {
    sheet.head("From above; you stand at the bottom, beside the board's line.");
    long top = sheet.top() + 70;
    long bottom = top + 120;
    long half = sheet.narrow() ? 52 : 80;
    long middle = width / 2;
    long front = bottom + 130;
    plan.box(
        plan.px(middle - half, bottom),
        plan.px(middle + half, front + 70),
        Fill.WASTE,
        Line.DASHED);
    plan.box(
        plan.px(middle - half, top - 56), plan.px(middle + half, front), Fill.WOOD, Line.PLAIN);
    plan.box(
        plan.px(middle - half - 70, top),
        plan.px(middle + half + 70, bottom),
        Fill.MACHINE,
        Line.PLAIN);
    plan.line(
        Line.CHAIN, plan.px(middle - half - 60, top + 60), plan.px(middle + half + 60, top + 60));
    plan.feed(plan.px(30, front), plan.px(30, top + 10));
    sheet.field(ANY_SCALE, 8, front - sheet.top(), 8, 76);
    sheet.note(words.notes().get(0));
    sheet.plate(
        new Column(middle - half - 60, middle + half + 60, top + 12, top + 50, Anchor.MIDDLE),
        "knives above",
        Type.NOTE);
    sheet.plate(
        new Column(middle - half, middle + half, front + 20, front + 70, Anchor.MIDDLE),
        "keep clear",
        Type.STRESS);
    sheet.sayOrNote(
        new Column(middle + half + 14, width - 8L, front - 60, front + 70, Anchor.START),
        "stand here",
        Type.STRESS);
    sheet.sayOrNote(
        new Column(middle + half + 14, width - 8L, top - 56, top - 4, Anchor.START),
        "taken off here",
        Type.NOTE);
    notes();
    return sheet.picture();
  }

  private void notes() {
    words.notes().stream().skip(1).forEach(sheet::note);
    sheet.note("Not to scale.");
  }

  // ---- from the side -------------------------------------------------------------------------

  private String sideLayout() {
    return (jointer
            ? "The infeed table on the right stands "
                + sized
                + " lower than the outfeed table on the left, which is level with the top of the"
                + " knives' circle between them. The head turns clockwise, so that its knives run to"
                + " the right over the top. The board moves left. Its grain slopes down to the right,"
                + " toward its trailing end. "
            : "The head turns above the board, counter-clockwise, so that its knives run to the right"
                + " at the bottom. Rollers before and behind it draw the board to the left over the"
                + " bed. Its grain slopes up to the right, toward its trailing end. After the last"
                + " pass "
                + sized
                + " is left. ")
        + "Not to scale.";
  }

  private Picture jointerFromTheSide() {
    sheet.head("From the front: fed from right to left.");
    long middle = width / 2;
    long radius = sheet.narrow() ? 46 : 66;
    long high = 96;
    long level = sheet.top() + 84 + high;
    long lower = level + PASS;
    long leads = sheet.narrow() ? 30 : 70;
    long trails = width - (sheet.narrow() ? 74L : 120);
    plan.outline(
        Fill.WOOD,
        Line.PLAIN,
        plan.px(leads, level - high),
        plan.px(trails, level - high),
        plan.px(trails, lower),
        plan.px(middle + 8, lower),
        plan.px(middle, level),
        plan.px(leads, level));
    grain(leads, trails, level - high, level, true);
    plan.circle(plan.px(middle, level + radius), radius * 1000, Fill.SHEET, Line.THICK);
    plan.turning(plan.px(middle, level + radius), radius - 20, Turn.CLOCKWISE);
    long lip = radius * 3 / 4;
    plan.box(plan.px(8, level), plan.px(middle - lip, level + TABLE), Fill.MACHINE, Line.PLAIN);
    plan.box(
        plan.px(middle + lip, lower), plan.px(width - 8L, lower + TABLE), Fill.MACHINE, Line.PLAIN);
    plan.line(Line.THIN, plan.px(middle + radius, level), plan.px(width - 12L, level));
    plan.span(plan.px(width - 26L, level), plan.px(width - 26L, lower));
    plan.text(plan.px(width - 40L, level - 44), figure, Type.FIGURE, Anchor.MIDDLE);
    feedLeft(level - high - 34);
    long below = lower + TABLE + 8;
    long end = level + 2 * radius + 16;
    sheet.field(ANY_SCALE, 8, level - sheet.top(), 8, end - level);
    sheet.note(
        "Grain down toward the trailing end. Infeed table " + sized + " below outfeed table.");
    sheet.sayOrNote(
        new Column(8, middle - radius - 8, below, end, Anchor.START), "outfeed", Type.NOTE);
    sheet.sayOrNote(
        new Column(middle + radius + 8, width - 8L, below, end, Anchor.END), "infeed", Type.NOTE);
    sheet.note("The knives run against the feed, out of the lower face. Not to scale.");
    return sheet.picture();
  }

  private Picture planerFromTheSide() {
    sheet.head("From the side: fed from right to left.");
    long middle = width / 2;
    long radius = sheet.narrow() ? 40 : 56;
    long roller = 24;
    long away = sheet.narrow() ? 78 : 116;
    long high = 84;
    long face = sheet.top() + 70 + 2 * radius;
    long rough = face - PASS;
    long bed = face + high;
    long leads = sheet.narrow() ? 84 : 116;
    long trails = width - 24L;
    plan.outline(
        Fill.WOOD,
        Line.PLAIN,
        plan.px(leads, face),
        plan.px(middle, face),
        plan.px(middle + 8, rough),
        plan.px(trails, rough),
        plan.px(trails, bed),
        plan.px(leads, bed));
    grain(leads, trails, face, bed, false);
    plan.circle(plan.px(middle, face - radius), radius * 1000, Fill.SHEET, Line.THICK);
    plan.turning(plan.px(middle, face - radius), radius - 18, Turn.COUNTER_CLOCKWISE);
    plan.circle(plan.px(middle - away, face - roller), roller * 1000, Fill.SHEET, Line.PLAIN);
    plan.circle(plan.px(middle + away, rough - roller), roller * 1000, Fill.SHEET, Line.PLAIN);
    plan.box(plan.px(8, bed), plan.px(width - 8L, bed + TABLE), Fill.MACHINE, Line.PLAIN);
    plan.line(Line.THIN, plan.px(30, face), plan.px(leads, face));
    plan.span(plan.px(44, face), plan.px(44, bed));
    plan.plate(plan.px(44 + (sheet.narrow() ? 0 : 6), (face + bed) / 2), figure, Type.FIGURE);
    feedLeft(sheet.top() + 24);
    sheet.field(ANY_SCALE, 8, face - sheet.top(), 8, bed + TABLE - face);
    sheet.plate(new Column(0, width, bed + 4, bed + TABLE, Anchor.MIDDLE), "bed", Type.NOTE);
    sheet.note("Grain up toward the trailing end; last height " + sized + ".");
    sheet.note(
        "The knives run against the feed, out of the upper face; the rollers hold the board."
            + " Not to scale.");
    return sheet.picture();
  }

  /** Lines of the grain inside the board; the trailing end is on the right. */
  private void grain(long left, long right, long top, long bottom, boolean down) {
    long run = 70;
    for (long x = left + 10; x + run < right - 6; x += 44) {
      plan.line(
          Line.THIN,
          plan.px(x, down ? top + 12 : bottom - 12),
          plan.px(x + run, down ? bottom - 12 : top + 12));
    }
  }

  private void feedLeft(long y) {
    plan.feed(plan.px(width / 2 + 60L, y), plan.px(width / 2 - 60L, y));
  }
}
