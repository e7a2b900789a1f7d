package org.proofcut.core.casework;

import static org.proofcut.core.evidence.Problem.stops;
import static org.proofcut.core.evidence.Problem.warns;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.fit.FlushFit;
import org.proofcut.core.fit.SlotFit;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.part.Housing;
import org.proofcut.core.part.Part;
import org.proofcut.core.part.PartRole;
import org.proofcut.core.stock.Sheet;

/**
 * What is wrong with a design, each with what to do. {@code where} names the field of the design: a
 * size ({@code width}), a depth ({@code bottom-dado}), a shelf ({@code shelf-2}) or a sheet ({@code
 * sheet:birch-18}).
 *
 * <p>Depth of a housing (common practice): a quarter to a half of the thickness is fine, up to two
 * thirds is weak, more is refused. Ratios are judged without division.
 */
final class DesignCheck {

  private final CaseDesign design;
  private final CaseLimits limits;
  private final FitLimits fit;
  private final List<Part> parts;
  private final List<Housing> housings;
  private final List<Problem> problems = new ArrayList<>();

  private DesignCheck(
      CaseDesign design,
      CaseLimits limits,
      FitLimits fit,
      List<Part> parts,
      List<Housing> housings) {
    this.design = design;
    this.limits = limits;
    this.fit = fit;
    this.parts = parts;
    this.housings = housings;
  }

  static List<Problem> of(
      CaseDesign design,
      CaseLimits limits,
      FitLimits fit,
      List<Part> parts,
      List<Housing> housings) {
    var check = new DesignCheck(design, limits, fit, parts, housings);
    check.outside();
    check.sheets();
    check.depths();
    check.corners();
    check.heights();
    check.sizes();
    return check.problems;
  }

  private void outside() {
    outside("width", design.outside().width());
    outside("height", design.outside().height());
    outside("depth", design.outside().depth());
  }

  private void outside(String field, Length size) {
    var least = limits.smallestSide().value();
    var most = limits.largestSide().value();
    if (size.isLessThan(least) || size.isGreaterThan(most)) {
      problems.add(
          stops(
              field,
              "The " + field + " of the case is " + shown(size),
              shown(least) + " to " + shown(most),
              "Enter the outer " + field + " of the finished case"));
    }
  }

  private void sheets() {
    for (var entry : usesOfSheets().entrySet()) {
      var sheet = entry.getKey();
      var where = "sheet:" + sheet.id();
      var readings = sheet.thickness();
      int wanted = limits.leastReadings().value();
      if (readings.all().size() < wanted) {
        problems.add(
            warns(
                where,
                sheet.name() + " has " + readings.all().size() + " caliper reading(s)",
                wanted + " or more, near the corners",
                "Measure " + (wanted - readings.all().size()) + " more and enter them"));
      }
      for (var role : entry.getValue()) {
        var noWidthServes =
            switch (role) {
              case BOTTOM, SHELF -> SlotFit.of(readings, fit).accepted().isEmpty();
              case TOP -> noRabbetServes(sheet, Length.ZERO);
              case BACK -> noRabbetServes(sheet, design.joinery().backSetIn());
              case LEFT_SIDE, RIGHT_SIDE, PLINTH -> false;
            };
        if (noWidthServes) {
          problems.add(tooUneven(where, sheet, role));
        }
      }
    }
  }

  private boolean noRabbetServes(Sheet sheet, Length setIn) {
    return FlushFit.of(sheet.thickness(), Worked.entered("set-in", setIn), fit)
        .accepted()
        .isEmpty();
  }

  private Problem tooUneven(String where, Sheet sheet, PartRole role) {
    return stops(
        where,
        sheet.name()
            + " varies by "
            + caliper(sheet.thickness().spread().value())
            + ", too much for the "
            + role.name().toLowerCase(java.util.Locale.ROOT)
            + ": no single width of housing serves both its ends",
        "at most " + caliper(SlotFit.mostSpread(fit)) + " from thinnest to thickest",
        "Measure again; if it stands, choose another sheet, or sort the parts by thickness");
  }

  private void depths() {
    for (var housing : housings) {
      var part = part(housing.cut());
      var thinnest = part.sheet().thickness().minimum().value();
      var depth = housing.depth().value();
      var field = fieldOf(housing);
      var what =
          "The "
              + field.replace('-', ' ')
              + " is "
              + shown(depth)
              + " deep in the "
              + part.name()
              + ", "
              + caliper(thinnest)
              + " at its thinnest";
      var allowed =
          "a quarter to a half of the thickness: "
              + shown(thinnest.half().half())
              + " to "
              + shown(thinnest.half());
      if (!depth.isPositive()) {
        problems.add(stops(field, what, allowed, "Enter how deep it goes"));
      } else if (depth.times(3).isGreaterThan(thinnest.times(2))) {
        problems.add(
            stops(field, what + ": too little wood is left", allowed, "Make it shallower"));
      } else if (depth.times(2).isGreaterThan(thinnest)) {
        problems.add(
            warns(
                field, what + ": the wood left is weak", allowed, "Make it shallower if you can"));
      } else if (depth.times(4).isLessThan(thinnest)) {
        problems.add(
            warns(field, what + ": little to hold on to", allowed, "Make it deeper if you can"));
      }
    }
  }

  /** The upper rear corner closes only where both rabbets are equally deep. */
  private void corners() {
    var joinery = design.joinery();
    if (!joinery.backRabbet().equals(joinery.topRabbet())) {
      problems.add(
          warns(
              "back-rabbet",
              "The rabbet for the back is "
                  + shown(joinery.backRabbet())
                  + " deep, the one for the top "
                  + shown(joinery.topRabbet())
                  + ": a small hole stays at each upper rear corner",
              "both the same",
              "Make the rabbet for the back " + shown(joinery.topRabbet()) + " deep"));
    }
    notch("bottom-dado", joinery.bottomDado());
    if (!design.shelves().isEmpty()) {
      notch("shelf-dado", joinery.shelfDado());
    }
  }

  private void notch(String field, Length dado) {
    var back = design.joinery().backRabbet();
    if (dado.isGreaterThan(back)) {
      problems.add(
          warns(
              field,
              "The "
                  + field.replace('-', ' ')
                  + " is deeper than the rabbet for the back: a notch shows from behind",
              "at most " + shown(back),
              "Make the rabbet for the back as deep, or the dado shallower"));
    }
  }

  /** Housings of one side from the floor up: none may touch the next or an end. */
  private void heights() {
    record Level(String field, String name, Length from, Length to) {}
    var least = limits.leastBetweenHousings().value();
    var levels = new ArrayList<Level>();
    for (var housing : housings) {
      if (housing.cut().equals("left-side") && housing.kind() == Housing.Kind.DADO) {
        var from = housing.distance().value();
        levels.add(
            new Level(
                housing.entering().equals("bottom") ? "plinth-height" : housing.entering(),
                part(housing.entering()).name(),
                from,
                from.plus(housing.width().value())));
      }
    }
    levels.sort(Comparator.comparing(Level::from));
    var floor = new Level("", "lower end of the sides", Length.ZERO, Length.ZERO);
    var topRabbet = housing("left-side:top").width().value();
    var ceiling =
        new Level("", "top", design.outside().height().minus(topRabbet), design.outside().height());
    levels.add(ceiling);
    var below = floor;
    for (var level : levels) {
      var between = level.from().minus(below.to());
      if (between.isLessThan(least)) {
        var field = level.field().isEmpty() ? below.field() : level.field();
        problems.add(
            stops(
                field.isEmpty() ? "height" : field,
                "Between the "
                    + below.name()
                    + " and the "
                    + level.name()
                    + (between.isNegative()
                        ? " the housings overlap by " + shown(between.negated())
                        : " only " + shown(between) + " of wood is left"),
                "at least " + shown(least),
                "Move the " + (level.field().isEmpty() ? below.name() : level.name())));
      }
      below = level;
    }
  }

  private void sizes() {
    var setBack = design.plinth().setBack();
    var inside = design.outside().depth().minus(housing("left-side:back").width().value());
    var plinthRoom = inside.minus(design.sheets().plinth().thickness().maximum().value());
    if (setBack.isNegative() || setBack.isGreaterThan(plinthRoom)) {
      problems.add(
          stops(
              "plinth-set-back",
              "The plinth is set back by " + shown(setBack),
              "0 to " + shown(plinthRoom.max(Length.ZERO)),
              "Enter how far the plinth stands behind the front edges"));
    }
    if (design.joinery().backSetIn().isNegative()) {
      problems.add(
          stops(
              "back-set-in",
              "The back is set in by " + shown(design.joinery().backSetIn()),
              "0 or more",
              "Enter 0 for a back flush with the rear edges"));
    }
    for (var part : parts) {
      if (!part.length().value().isPositive() || !part.width().value().isPositive()) {
        problems.add(
            stops(
                part.role() == PartRole.BACK ? "height" : "width",
                "Nothing is left for the " + part.name(),
                "a case larger than its own parts",
                "Enter a larger case or thinner sheets"));
      } else if (!fitsOn(part)) {
        problems.add(
            stops(
                "sheet:" + part.sheet().id(),
                "The "
                    + part.name()
                    + " is "
                    + shown(part.length().value())
                    + " × "
                    + shown(part.width().value())
                    + ", "
                    + part.sheet().name()
                    + " is "
                    + shown(part.sheet().length())
                    + " × "
                    + shown(part.sheet().width()),
                "a sheet at least as large as the part, grain along its length",
                "Choose a larger sheet for the " + part.name() + " or make the case smaller"));
      }
    }
  }

  private static boolean fitsOn(Part part) {
    return part.length().value().isAtMost(part.sheet().length())
        && part.width().value().isAtMost(part.sheet().width());
  }

  private Map<Sheet, List<PartRole>> usesOfSheets() {
    var uses = new LinkedHashMap<Sheet, List<PartRole>>();
    for (var part : parts) {
      var roles = uses.computeIfAbsent(part.sheet(), sheet -> new ArrayList<>());
      if (!roles.contains(part.role())) {
        roles.add(part.role());
      }
    }
    return uses;
  }

  private static String fieldOf(Housing housing) {
    return switch (housing.kind()) {
      case END_RABBET -> "top-rabbet";
      case EDGE_RABBET -> "back-rabbet";
      case DADO -> housing.entering().equals("bottom") ? "bottom-dado" : "shelf-dado";
    };
  }

  private Part part(String id) {
    return parts.stream().filter(part -> part.id().equals(id)).findFirst().orElseThrow();
  }

  private Housing housing(String id) {
    return housings.stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
  }

  private String shown(Length length) {
    return Scale.rule(design.unit()).show(length).text();
  }

  private String caliper(Length length) {
    return Scale.caliper(design.unit()).show(length).text();
  }
}
