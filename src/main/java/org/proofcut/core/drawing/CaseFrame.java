package org.proofcut.core.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.casework.Case;
import org.proofcut.core.drawing.Drawing.Anchor;
import org.proofcut.core.drawing.Drawing.Fill;
import org.proofcut.core.drawing.Drawing.Line;
import org.proofcut.core.drawing.Drawing.Point;
import org.proofcut.core.drawing.Drawing.Type;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.part.Housing;

/**
 * What a front elevation and a side section of a case have in common: the outer size and the
 * heights from the floor. It draws any design, also one that can't be built: what lies outside the
 * case is left out of the drawing and told below it.
 */
final class CaseFrame {

  /** Over and under this a case has no shape that could be drawn. */
  private static final Length SMALLEST = Length.ofMillimetres(1);

  private static final Length LARGEST = Length.ofMillimetres(100_000);

  /** A case more than this many times as high as it is wide, or the other way, shows nothing. */
  private static final int SLIMMEST = 40;

  private static final int TALLEST = 460;

  private final Case design;
  private final Scale scale;
  private final PlanSheet sheet;
  private final Length across;
  private final Length height;
  private final List<String> outside = new ArrayList<>();

  CaseFrame(Case design, LengthUnit unit, int width, Length across, String words) {
    this.design = design;
    this.scale = Scale.rule(unit);
    this.sheet = new PlanSheet(width, words);
    this.across = across;
    this.height = design.design().outside().height();
  }

  static String size(Case design, LengthUnit unit) {
    var scale = Scale.rule(unit);
    var outside = design.design().outside();
    return design.design().name()
        + ": "
        + scale.show(outside.width())
        + " wide, "
        + scale.show(outside.height())
        + " high, "
        + scale.show(outside.depth())
        + " deep.";
  }

  /** Heights from the floor in words: plinth, then shelves. */
  static String heights(Case design, LengthUnit unit) {
    var scale = Scale.rule(unit);
    var words =
        new StringBuilder(
            "From the floor to the underside of the bottom "
                + scale.show(design.design().plinth().height())
                + ".");
    int number = 1;
    for (var shelf : design.design().shelves()) {
      words.append(" To the underside of shelf " + number++ + " " + scale.show(shelf) + ".");
    }
    return words.toString();
  }

  /** Whether the outer size has a shape; if not, the sheet only says so. */
  boolean canBeDrawn() {
    return within(across)
        && within(height)
        && across.isAtMost(height.times(SLIMMEST))
        && height.isAtMost(across.times(SLIMMEST));
  }

  private static boolean within(Length size) {
    return size.isAtLeast(SMALLEST) && size.isAtMost(LARGEST);
  }

  Picture withoutDrawing() {
    sheet.head("No drawing: the outer size has no shape.");
    return sheet.picture();
  }

  PlanSheet sheet() {
    return sheet;
  }

  /** Lays out the outer size with its dimensions. */
  void begin(String head) {
    var figure = scale.show(height).number();
    // On a phone a long figure beside the case would leave no room for the case.
    boolean beside = !sheet.narrow();
    sheet.head(beside ? head : head + " Height " + figure + ".");
    long left = beside ? sheet.drawing().widthOf(figure, Type.FIGURE) + 50 : 34;
    long right = widestMark() + 44;
    long room = sheet.width() - left - right;
    var pixel = new Length(across.picometres() / room + 1);
    pixel = pixel.max(new Length(height.picometres() / TALLEST + 1));
    sheet.field(pixel, left, 54, right, height.dividedBy(pixel, Rounding.UP) + 8);
    var plan = sheet.drawing();
    var corner = plan.at(Length.ZERO, Length.ZERO);
    var far = at(across, Length.ZERO);
    var over = corner.up(14);
    var width = scale.show(across).number();
    long span = far.xThousandths() - corner.xThousandths();
    plan.span(over, new Point(far.xThousandths(), over.yThousandths()));
    long half = plan.widthOf(width, Type.FIGURE) / 2;
    long middle = corner.xThousandths() / 1000 + span / 2000;
    middle = Math.max(8 + half, Math.min(middle, sheet.width() - 8 - half));
    plan.text(
        new Point(middle * 1000, over.up(12).yThousandths()), width, Type.FIGURE, Anchor.MIDDLE);
    var side = corner.left(18);
    plan.span(side, new Point(side.xThousandths(), far.yThousandths()));
    long base = (corner.yThousandths() + far.yThousandths()) / 2000 + plan.pixels(Type.FIGURE) / 3;
    if (beside) {
      plan.text(plan.px(side.xThousandths() / 1000 - 12, base), figure, Type.FIGURE, Anchor.END);
    }
  }

  private long widestMark() {
    return marks().stream()
        .filter(this::liesInside)
        .mapToLong(mark -> sheet.drawing().widthOf(scale.show(mark).number(), Type.STRESS))
        .max()
        .orElse(0);
  }

  private boolean liesInside(Length mark) {
    return !mark.isNegative() && mark.isAtMost(height);
  }

  private List<Length> marks() {
    var marks = new ArrayList<Length>();
    marks.add(design.design().plinth().height());
    marks.addAll(design.design().shelves());
    return marks;
  }

  /** A place so far from the left and so far above the floor. */
  Point at(Length right, Length up) {
    return sheet.drawing().at(right, height.minus(up));
  }

  /** A board between these places; nothing of it is drawn outside the case. */
  void board(Length left, Length right, Length from, Length to, Fill fill, Line line) {
    var one = clip(left, across);
    var other = clip(right, across);
    var low = clip(from, height);
    var high = clip(to, height);
    if (one.isLessThan(other) && low.isLessThan(high)) {
      sheet.drawing().box(at(one, low), at(other, high), fill, line);
    }
  }

  private static Length clip(Length place, Length most) {
    return place.max(Length.ZERO).min(most);
  }

  /** The heights of plinth and shelves at the right, moved apart where they would touch. */
  void heights() {
    var plan = sheet.drawing();
    long pitch = plan.pixels(Type.STRESS) * 5 / 4;
    long x = at(across, Length.ZERO).xThousandths() / 1000;
    var sorted = marks().stream().sorted().toList();
    long y = at(Length.ZERO, Length.ZERO).yThousandths() / 1000 + pitch / 2;
    for (var mark : sorted) {
      if (!liesInside(mark)) {
        outside.add(scale.show(mark).text());
        continue;
      }
      var at = at(across, mark);
      long wanted = at.yThousandths() / 1000 + plan.pixels(Type.STRESS) / 3;
      y = Math.min(wanted, y - pitch);
      if (y < sheet.top() + pitch) {
        outside.add(scale.show(mark).text());
        continue;
      }
      plan.line(Line.THIN, at, at.right(14), plan.px(x + 30, y - plan.pixels(Type.STRESS) / 3));
      plan.text(plan.px(x + 36, y), scale.show(mark).number(), Type.STRESS, Anchor.START);
    }
  }

  Picture done(String... notes) {
    for (var note : notes) {
      sheet.note(note);
    }
    if (!outside.isEmpty()) {
      sheet.note(
          "Not in the drawing, for want of room or outside the case: "
              + String.join(", ", outside)
              + ".");
    }
    if (!design.problems().isEmpty()) {
      sheet.note("Drawn as entered; the design has problems, told beside it.");
    }
    return sheet.picture();
  }

  Length thickness(String partId) {
    return design.parts().stream()
        .filter(part -> part.id().equals(partId))
        .map(part -> part.sheet().thickness().mean().value())
        .findFirst()
        .orElse(Length.ZERO);
  }

  /** How deep the housing with this id is, where there is one. */
  Length housed(String id) {
    return housing(id).map(one -> one.depth().value()).orElse(Length.ZERO);
  }

  Length housingWidth(String id) {
    return housing(id).map(one -> one.width().value()).orElse(Length.ZERO);
  }

  private Optional<Housing> housing(String id) {
    return design.housings().stream().filter(one -> one.id().equals(id)).findFirst();
  }
}
