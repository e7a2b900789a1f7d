package org.proofcut.core.casework;

import static org.proofcut.core.part.PartRole.BACK;
import static org.proofcut.core.part.PartRole.BOTTOM;
import static org.proofcut.core.part.PartRole.LEFT_SIDE;
import static org.proofcut.core.part.PartRole.PLINTH;
import static org.proofcut.core.part.PartRole.RIGHT_SIDE;
import static org.proofcut.core.part.PartRole.SHELF;
import static org.proofcut.core.part.PartRole.TOP;

import java.util.ArrayList;
import java.util.List;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.fit.SlotFit;
import org.proofcut.core.measure.Length;
import org.proofcut.core.part.Edge;
import org.proofcut.core.part.Housing;
import org.proofcut.core.part.Part;
import org.proofcut.core.part.PartRole;

/**
 * Works out the parts of a case. Lengths use the mean thickness of a sheet, rabbet widths its
 * thickest reading, slots both ends.
 *
 * <p>A part housed at both ends is as long as the case is wide, less the wood that is left behind
 * its housing on either side.
 */
public final class Casework {

  private final CaseDesign design;
  private final CaseLimits limits;
  private final FitLimits fit;
  private final ProvenDepths proven;

  private final List<Part> parts = new ArrayList<>();
  private final List<Housing> housings = new ArrayList<>();

  private final Worked<Length> width;
  private final Worked<Length> height;
  private final Worked<Length> depth;
  private final Worked<Length> plinthHeight;

  private Casework(CaseDesign design, CaseLimits limits, FitLimits fit, ProvenDepths proven) {
    this.design = design;
    this.limits = limits;
    this.fit = fit;
    this.proven = proven;
    this.width = Worked.entered("width of the case", design.outside().width());
    this.height = Worked.entered("height of the case", design.outside().height());
    this.depth = Worked.entered("depth of the case", design.outside().depth());
    this.plinthHeight = Worked.entered("height of the plinth", design.plinth().height());
  }

  /** The parts of a case as designed, before anything is cut. */
  public static Case derive(CaseDesign design, CaseLimits limits, FitLimits fit) {
    return derive(design, limits, fit, ProvenDepths.NONE);
  }

  /** The parts of a case whose housings have the depths that were proven. */
  public static Case derive(
      CaseDesign design, CaseLimits limits, FitLimits fit, ProvenDepths proven) {
    var work = new Casework(design, limits, fit, proven);
    work.sides();
    work.top();
    work.bottom();
    work.shelves();
    work.back();
    work.plinth();
    var problems = DesignCheck.of(design, limits, fit, work.parts, work.housings);
    return new Case(design, work.parts, work.housings, problems);
  }

  private void sides() {
    for (var side : List.of(LEFT_SIDE, RIGHT_SIDE)) {
      add(side, id(side), height.as("length of the " + name(side)), depth.as("its depth"));
    }
  }

  private void top() {
    var covering = design.sheets().top().thickness();
    var flush = Worked.entered("set-in of the top", Length.ZERO);
    var rabbet =
        covering.maximum().as("width of the rabbet for the top: the thickest reading of its sheet");
    for (var side : List.of(LEFT_SIDE, RIGHT_SIDE)) {
      house(
          Housing.Kind.END_RABBET,
          side,
          id(TOP),
          rabbet,
          Worked.entered("depth of the rabbet for the top", design.joinery().topRabbet()),
          Edge.TOP_END,
          flush.as("distance from the top end"));
    }
    add(TOP, id(TOP), housedLength("top", id(TOP)), depth.as("depth of the top"));
  }

  private void bottom() {
    dado(
        id(BOTTOM),
        BOTTOM,
        Worked.entered("depth of the dado for the bottom", design.joinery().bottomDado()),
        plinthHeight.as("from the lower end to the dado for the bottom: height of the plinth"));
    add(BOTTOM, id(BOTTOM), housedLength("bottom", id(BOTTOM)), insideDepth("bottom"));
  }

  private void shelves() {
    for (int i = 0; i < design.shelves().size(); i++) {
      var id = shelfId(i);
      dado(
          id,
          SHELF,
          Worked.entered("depth of the dados for shelves", design.joinery().shelfDado()),
          Worked.entered("from the lower end to " + shelfName(i), design.shelves().get(i)));
      add(SHELF, id, shelfName(i), housedLength(shelfName(i), id), insideDepth(shelfName(i)));
    }
  }

  private void dado(
      String entering, PartRole role, Worked<Length> dadoDepth, Worked<Length> distance) {
    var slot = SlotFit.of(design.sheets().of(role).thickness(), fit);
    for (var side : List.of(LEFT_SIDE, RIGHT_SIDE)) {
      house(Housing.Kind.DADO, side, entering, slot.target(), dadoDepth, Edge.LOWER_END, distance);
    }
  }

  private void back() {
    var rabbetDepth =
        Worked.entered("depth of the rabbet for the back", design.joinery().backRabbet());
    var atEdge = Worked.entered("distance from the rear edge", Length.ZERO);
    for (var part : List.of(LEFT_SIDE, RIGHT_SIDE, TOP)) {
      house(
          Housing.Kind.EDGE_RABBET,
          part,
          id(BACK),
          backRabbetWidth(),
          rabbetDepth,
          Edge.REAR,
          atEdge);
    }
    var left = woodLeft(LEFT_SIDE, id(BACK));
    var right = woodLeft(RIGHT_SIDE, id(BACK));
    var backWidth =
        Worked.called("width of the back")
            .by("case width − wood left at the left − wood left at the right − ease")
            .with("case width", width)
            .with("wood left at the left", left)
            .with("wood left at the right", right)
            .with("ease", limits.backEase())
            .is(
                width
                    .value()
                    .minus(left.value())
                    .minus(right.value())
                    .minus(limits.backEase().value()));
    var topRabbet = housing(LEFT_SIDE, id(TOP)).width();
    var inTop = housing(TOP, id(BACK)).depth();
    var backHeight =
        Worked.called("height of the back")
            .by(
                "case height − rabbet for the top + depth of the back's rabbet in the top"
                    + " − height of the plinth − ease")
            .with("case height", height)
            .with("rabbet for the top", topRabbet)
            .with("depth of the back's rabbet in the top", inTop)
            .with("height of the plinth", plinthHeight)
            .with("ease", limits.backEase())
            .is(
                height
                    .value()
                    .minus(topRabbet.value())
                    .plus(inTop.value())
                    .minus(plinthHeight.value())
                    .minus(limits.backEase().value()));
    add(BACK, id(BACK), backHeight, backWidth);
  }

  private void plinth() {
    var left = thickness(LEFT_SIDE);
    var right = thickness(RIGHT_SIDE);
    var length =
        Worked.called("length of the plinth")
            .by("case width − left side − right side")
            .with("case width", width)
            .with("left side", left)
            .with("right side", right)
            .is(width.value().minus(left.value()).minus(right.value()));
    add(PLINTH, id(PLINTH), length, plinthHeight.as("height of the plinth"));
  }

  /** As long as the case is wide, less the wood left behind the housing on either side. */
  private Worked<Length> housedLength(String name, String entering) {
    var left = woodLeft(LEFT_SIDE, entering);
    var right = woodLeft(RIGHT_SIDE, entering);
    return Worked.called("length of the " + name)
        .by("case width − wood left at the left − wood left at the right")
        .with("case width", width)
        .with("wood left at the left", left)
        .with("wood left at the right", right)
        .is(width.value().minus(left.value()).minus(right.value()));
  }

  private Worked<Length> woodLeft(PartRole side, String entering) {
    var thickness = thickness(side);
    var depthOfHousing = housing(side, entering).depth();
    return Worked.called("wood left in the " + name(side) + " behind the " + entering)
        .by("thickness − depth of the housing")
        .with("thickness", thickness)
        .with("depth of the housing", depthOfHousing)
        .is(thickness.value().minus(depthOfHousing.value()));
  }

  private Worked<Length> insideDepth(String name) {
    var rabbet = backRabbetWidth();
    return Worked.called("depth of the " + name)
        .by("case depth − width of the rabbet for the back")
        .with("case depth", depth)
        .with("width of the rabbet for the back", rabbet)
        .is(depth.value().minus(rabbet.value()));
  }

  private Worked<Length> backRabbetWidth() {
    var thickest = design.sheets().back().thickness().maximum();
    var setIn = Worked.entered("set-in of the back", design.joinery().backSetIn());
    return Worked.called("width of the rabbet for the back")
        .by("thickest back + set-in")
        .with("thickest back", thickest)
        .with("set-in", setIn)
        .is(thickest.value().plus(setIn.value()));
  }

  private Worked<Length> thickness(PartRole role) {
    return design.sheets().of(role).thickness().mean().as("mean thickness of the " + name(role));
  }

  private void house(
      Housing.Kind kind,
      PartRole cut,
      String entering,
      Worked<Length> housingWidth,
      Worked<Length> designedDepth,
      Edge reference,
      Worked<Length> distance) {
    var id = id(cut) + ":" + entering;
    var finalDepth = proven.orElse(id, designedDepth);
    housings.add(
        new Housing(id, kind, id(cut), entering, housingWidth, finalDepth, reference, distance));
  }

  private Housing housing(PartRole cut, String entering) {
    var id = id(cut) + ":" + entering;
    return housings.stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
  }

  private void add(PartRole role, String id, Worked<Length> length, Worked<Length> partWidth) {
    add(role, id, name(role), length, partWidth);
  }

  private void add(
      PartRole role, String id, String name, Worked<Length> length, Worked<Length> partWidth) {
    parts.add(new Part(id, name, role, design.sheets().of(role), length, partWidth));
  }

  private static String id(PartRole role) {
    return switch (role) {
      case LEFT_SIDE -> "left-side";
      case RIGHT_SIDE -> "right-side";
      case TOP -> "top";
      case BOTTOM -> "bottom";
      case SHELF -> "shelf";
      case BACK -> "back";
      case PLINTH -> "plinth";
    };
  }

  private static String name(PartRole role) {
    return id(role).replace('-', ' ');
  }

  private static String shelfId(int index) {
    return "shelf-" + (index + 1);
  }

  private static String shelfName(int index) {
    return "shelf " + (index + 1);
  }
}
