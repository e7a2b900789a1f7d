package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.band;
import static org.proofcut.core.intake.Field.angle;
import static org.proofcut.core.intake.Field.choice;
import static org.proofcut.core.intake.Field.count;
import static org.proofcut.core.intake.Field.length;
import static org.proofcut.core.intake.Field.speeds;
import static org.proofcut.core.intake.Field.text;
import static org.proofcut.core.intake.Field.yesNo;
import static org.proofcut.core.intake.MachineFields.DEPTH_STEP;
import static org.proofcut.core.intake.MachineFields.DIAMETER;
import static org.proofcut.core.intake.MachineFields.EDGES;
import static org.proofcut.core.intake.MachineFields.EXTRACTION;
import static org.proofcut.core.intake.MachineFields.FENCE_STEP;
import static org.proofcut.core.intake.MachineFields.GUARD;
import static org.proofcut.core.intake.MachineFields.HEIGHT_STEP;
import static org.proofcut.core.intake.MachineFields.REACHES;
import static org.proofcut.core.intake.MachineFields.REACHES_OR_NONE;
import static org.proofcut.core.intake.MachineFields.STEPS;
import static org.proofcut.core.intake.MachineFields.TOP_SPEED;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.shop.MitreSaw;
import org.proofcut.core.shop.SawBlade;
import org.proofcut.core.shop.Side;
import org.proofcut.core.shop.StackedCutter;
import org.proofcut.core.shop.TableSaw;
import org.proofcut.core.shop.TableSaw.BlindCuts;
import org.proofcut.core.shop.Tilt;
import org.proofcut.core.shop.TrackSaw;

/** The forms of saws and their blades. */
final class SawForms {

  private static final Field NAME = MachineFields.name("table saw");

  private static final Field BLADE_NAME = MachineFields.name("rip blade, 24 teeth");

  private static final Band BLADES = band("80 mm", "450 mm");

  private static final Band HEIGHTS = band("5 mm", "200 mm");

  private static final Field SPEED =
      speeds("speeds", "Speed", "revolutions a minute, from the plate on the machine");

  private static final Field KNIFE = yesNo("riving-knife", "Has a riving knife");

  private static final Field SMALLEST_BLADE =
      length("smallest-blade", "Smallest blade", "diameter, from the machine's manual");

  private static final Field LARGEST_BLADE =
      length("largest-blade", "Largest blade", "diameter, from the machine's manual");

  private static final Field SAW_REACH =
      length("fence-reach", "Fence reach", "widest that the fence stands from the blade");

  private static final Field SAW_HEIGHT =
      length("greatest-height", "Greatest height of the blade", "above the table");

  private static final Field SLED_REACH =
      length("sled-stop-reach", "Sled: longest to the stop", "0 if there is no sled");

  private static final Field SLED_DEPTH =
      length("sled-depth", "Sled: widest work", "0 if there is no sled");

  private static final Field KNIFE_STAYS =
      yesNo("knife-stays", "Riving knife stands below the top tooth: it can stay in a blind cut")
          .mayStayEmpty();

  private static final Field STACK_ALLOWED =
      yesNo(
              "stack-allowed",
              "A stacked cutter is allowed by the saw's manual, its guarding and local rule")
          .mayStayEmpty();

  private static final Field WIDEST_STACK =
      length(
              "widest-stack",
              "Widest stacked cutter",
              "from the manual: the arbor's nut is fully on; leave empty if none is allowed")
          .mayStayEmpty();

  private static final Field TRACK_LENGTH =
      length("track-length", "Length of the track", "longest cut, with tracks joined");

  private static final Field TRACK_DEPTH =
      length("greatest-depth", "Greatest depth of cut", "on the track");

  private static final Angle ANGLE_STEP = Angle.parse("0.01");

  private static final Map<String, List<Side>> SIDES =
      Map.of(
          "left", List.of(Side.LEFT),
          "right", List.of(Side.RIGHT),
          "both", List.of(Side.LEFT, Side.RIGHT));

  private static final Field LEANS =
      choice(
              "leans",
              "The blade's upper edge tilts to",
              List.of(new Field.Choice("left", "the left"), new Field.Choice("right", "the right")))
          .mayStayEmpty();

  private static final Field GAUGE_REACH =
      length(
              "gauge-stop-reach",
              "Mitre gauge: longest to the stop",
              "on its facing; leave empty if there is no gauge or no stop on it")
          .mayStayEmpty();

  private static final Field GAUGE_WIDTH =
      length(
              "gauge-widest-work",
              "Mitre gauge: widest work",
              "from its facing to the front of the blade, with the gauge's bar well in its slot")
          .mayStayEmpty();

  private static final Field LEFT_REACH =
      length(
              "left-reach",
              "Fence reach on the left of the blade",
              "leave empty if it can't stand there")
          .mayStayEmpty();

  private static final Field GREATEST_MITRE =
      angle("greatest-mitre", "Greatest mitre", "how far it turns from a square cut, each way");

  private static final Field MITRE_STEP =
      angle("mitre-step", "Mitre: smallest step", "smallest change you can set and read");

  private static final Field TILTS =
      choice(
          "tilts",
          "The blade's upper edge tilts to",
          List.of(
              new Field.Choice("none", "neither side"),
              new Field.Choice("left", "the left"),
              new Field.Choice("right", "the right"),
              new Field.Choice("both", "both sides")));

  private static final Field GREATEST_BEVEL =
      angle("greatest-bevel", "Greatest tilt", "from upright; leave empty if it does not tilt")
          .mayStayEmpty();

  private static final Field BEVEL_STEP =
      angle("bevel-step", "Tilt: smallest step", "smallest change you can set and read")
          .mayStayEmpty();

  private static final Field CUT_WIDTH =
      length("cut-width", "Widest board", "that it cuts square, from the manual");

  private static final Field CUT_HEIGHT =
      length("cut-height", "Highest work", "with the blade upright, from the manual");

  private static final Field TILTED_HEIGHT =
      length(
              "tilted-height",
              "Highest work, blade tilted",
              "all the way, to the side that takes less; leave empty if it does not tilt")
          .mayStayEmpty();

  private static final Field STOP_REACH =
      length("stop-reach", "Longest to the stop", "along the fence; 0 if there is no stop");

  private static final Field STOP_STEP =
      length("stop-step", "Stop: smallest step", "smallest change you can set and read");

  private static final Field KERF = length("kerf", "Kerf", "width of the cut it leaves");

  private static final Field OUTER_KERF =
      length(
          "outer-kerf", "Kerf of each outer blade", "width of the cut that one of the two leaves");

  private static final Field OUTER_TEETH = count("edges", "Teeth of each outer blade", "how many");

  private static final Field CHIPPERS =
      text(
          "chippers",
          "Chippers",
          "what each adds to the width, and how many there are: 3.2 mm x 3, 1.6 mm x 1");

  private static final Field SHIMS =
      text("shims", "Shims", "thickness and how many: 0.1 mm x 4; leave empty if there are none")
          .mayStayEmpty();

  private SawForms() {}

  static ItemForm<TableSaw> tableSaw() {
    return new ItemForm<>(
        "table-saw",
        "Table saw",
        List.of(
            NAME,
            SPEED,
            SAW_REACH,
            FENCE_STEP,
            HEIGHT_STEP,
            SAW_HEIGHT,
            SMALLEST_BLADE,
            LARGEST_BLADE,
            SLED_REACH,
            SLED_DEPTH,
            GUARD,
            KNIFE,
            KNIFE_STAYS,
            EXTRACTION,
            STACK_ALLOWED,
            WIDEST_STACK,
            LEANS,
            GREATEST_BEVEL,
            BEVEL_STEP,
            LEFT_REACH,
            GAUGE_REACH,
            GAUGE_WIDTH),
        (id, form) -> {
          var name = form.text(NAME);
          var speeds = SeveralIn.speeds(form, SPEED);
          var reach = form.length(SAW_REACH, REACHES);
          var fenceStep = form.length(FENCE_STEP, STEPS);
          var heightStep = form.length(HEIGHT_STEP, STEPS);
          var height = form.length(SAW_HEIGHT, HEIGHTS);
          var blades = blades(form);
          var sledReach = form.length(SLED_REACH, REACHES_OR_NONE);
          var sledDepth = form.length(SLED_DEPTH, REACHES_OR_NONE);
          boolean guard = form.yes(GUARD);
          boolean knife = form.yes(KNIFE);
          boolean extraction = form.yes(EXTRACTION);
          var blind = new BlindCuts(form.yes(KNIFE_STAYS), widestStack(form));
          var tilt = tilt(form, form.choice(LEANS));
          var leftReach = form.optionalLength(LEFT_REACH, REACHES);
          var gauge = gauge(form);
          return form.result(
              () ->
                  new TableSaw(
                      id,
                      name,
                      speeds,
                      reach,
                      fenceStep,
                      heightStep,
                      height,
                      blades,
                      sledReach,
                      sledDepth,
                      guard,
                      knife,
                      extraction,
                      Optional.of(blind),
                      tilt,
                      leftReach,
                      gauge));
        });
  }

  /** Both of its figures, or neither. */
  private static Optional<TableSaw.Gauge> gauge(FormReader form) {
    var reach = form.optionalLength(GAUGE_REACH, REACHES);
    var widest = form.optionalLength(GAUGE_WIDTH, REACHES);
    boolean oneIsBlank = form.isBlank(GAUGE_REACH.name()) != form.isBlank(GAUGE_WIDTH.name());
    if (oneIsBlank) {
      form.problem(
          form.isBlank(GAUGE_REACH.name()) ? GAUGE_REACH : GAUGE_WIDTH,
          "Nothing was entered, and a mitre gauge is there",
          "measured at the saw; both left empty if there is no gauge");
    }
    return reach.flatMap(to -> widest.map(of -> new TableSaw.Gauge(to, of)));
  }

  /** Empty unless it is said to be allowed: what was kept before this was asked allows none. */
  private static Optional<Length> widestStack(FormReader form) {
    var widest = form.optionalLength(WIDEST_STACK, band("3 mm", "40 mm"));
    if (!form.yes(STACK_ALLOWED)) {
      return Optional.empty();
    }
    if (form.isBlank(WIDEST_STACK.name())) {
      form.problem(
          WIDEST_STACK,
          "Nothing was entered, and a stacked cutter is said to be allowed",
          "the width from the saw's manual");
    }
    return widest;
  }

  static ItemForm<TrackSaw> trackSaw() {
    return new ItemForm<>(
        "track-saw",
        "Track saw",
        List.of(
            NAME,
            SPEED,
            TRACK_LENGTH,
            DEPTH_STEP,
            TRACK_DEPTH,
            SMALLEST_BLADE,
            LARGEST_BLADE,
            GUARD,
            KNIFE,
            EXTRACTION,
            GREATEST_BEVEL,
            BEVEL_STEP),
        (id, form) -> {
          var name = form.text(NAME);
          var speeds = SeveralIn.speeds(form, SPEED);
          var track = form.length(TRACK_LENGTH, band("300 mm", "6000 mm"));
          var step = form.length(DEPTH_STEP, STEPS);
          var depth = form.length(TRACK_DEPTH, HEIGHTS);
          var blades = blades(form);
          boolean guard = form.yes(GUARD);
          boolean knife = form.yes(KNIFE);
          boolean extraction = form.yes(EXTRACTION);
          var tilt = tilt(form, form.isBlank(GREATEST_BEVEL.name()) ? "none" : "right");
          return form.result(
              () ->
                  new TrackSaw(
                      id,
                      name,
                      speeds,
                      track,
                      step,
                      depth,
                      blades,
                      guard,
                      knife,
                      extraction,
                      tilt));
        });
  }

  static ItemForm<MitreSaw> mitreSaw() {
    return new ItemForm<>(
        "mitre-saw",
        "Mitre saw",
        List.of(
            NAME,
            SPEED,
            GREATEST_MITRE,
            MITRE_STEP,
            TILTS,
            GREATEST_BEVEL,
            BEVEL_STEP,
            CUT_WIDTH,
            CUT_HEIGHT,
            TILTED_HEIGHT,
            STOP_REACH,
            STOP_STEP,
            SMALLEST_BLADE,
            LARGEST_BLADE,
            GUARD,
            EXTRACTION),
        (id, form) -> {
          var name = form.text(NAME);
          var speeds = SeveralIn.speeds(form, SPEED);
          var mitre = form.angle(GREATEST_MITRE, Angle.ZERO, Angle.ofDegrees(75));
          var mitreStep = form.angle(MITRE_STEP, ANGLE_STEP, Angle.ofDegrees(5));
          var tilt = tilt(form, form.choice(TILTS));
          var width = form.length(CUT_WIDTH, REACHES);
          var height = form.length(CUT_HEIGHT, HEIGHTS);
          var tilted = form.optionalLength(TILTED_HEIGHT, HEIGHTS);
          if (tilt.isPresent() && form.isBlank(TILTED_HEIGHT.name())) {
            form.problem(
                TILTED_HEIGHT, "Nothing was entered, and the blade tilts", "from the manual");
          }
          var reach = form.length(STOP_REACH, REACHES_OR_NONE);
          var stopStep = form.length(STOP_STEP, STEPS);
          var blades = blades(form);
          boolean guard = form.yes(GUARD);
          boolean extraction = form.yes(EXTRACTION);
          return form.result(
              () ->
                  new MitreSaw(
                      id,
                      name,
                      speeds,
                      mitre,
                      mitreStep,
                      tilt,
                      width,
                      height,
                      tilted.orElse(Length.ZERO),
                      reach,
                      stopStep,
                      blades,
                      guard,
                      extraction));
        });
  }

  static ItemForm<SawBlade> sawBlade() {
    return new ItemForm<>(
        "saw-blade",
        "Saw blade",
        List.of(BLADE_NAME, DIAMETER, KERF, EDGES, TOP_SPEED),
        (id, form) -> {
          var name = form.text(BLADE_NAME);
          var diameter = form.length(DIAMETER, BLADES);
          var kerf = form.length(KERF, band("0.8 mm", "8 mm"));
          int edges = form.count(EDGES, 4, 200);
          var top = form.optionalCount(TOP_SPEED, 1_000, 30_000);
          return form.result(() -> new SawBlade(id, name, diameter, kerf, edges, top));
        });
  }

  static ItemForm<StackedCutter> stackedCutter() {
    return new ItemForm<>(
        "stacked-cutter",
        "Stacked cutter for slots at the saw",
        List.of(BLADE_NAME, DIAMETER, OUTER_KERF, OUTER_TEETH, CHIPPERS, SHIMS, TOP_SPEED),
        (id, form) -> {
          var name = form.text(BLADE_NAME);
          var diameter = form.length(DIAMETER, BLADES);
          var kerf = form.length(OUTER_KERF, band("0.8 mm", "8 mm"));
          int teeth = form.count(OUTER_TEETH, 4, 200);
          var chippers = SeveralIn.layers(form, CHIPPERS, band("0.5 mm", "10 mm"));
          var shims = SeveralIn.layers(form, SHIMS, band("0.01 mm", "2 mm"));
          var top = form.optionalCount(TOP_SPEED, 1_000, 30_000);
          return form.result(
              () -> new StackedCutter(id, name, diameter, teeth, kerf, chippers, shims, top));
        });
  }

  /** Empty where it tilts to no side, or where that was not entered. */
  private static Optional<Tilt> tilt(FormReader form, String toward) {
    var greatest = form.optionalAngle(GREATEST_BEVEL, ANGLE_STEP, Angle.ofDegrees(60));
    var step = form.optionalAngle(BEVEL_STEP, ANGLE_STEP, Angle.ofDegrees(5));
    var sides = SIDES.getOrDefault(toward, List.of());
    if (sides.isEmpty()) {
      return Optional.empty();
    }
    for (var field : List.of(GREATEST_BEVEL, BEVEL_STEP)) {
      if (form.isBlank(field.name())) {
        form.problem(field, "Nothing was entered, and the blade tilts", "from the machine");
      }
    }
    return Optional.of(new Tilt(sides, greatest.orElse(ANGLE_STEP), step.orElse(ANGLE_STEP)));
  }

  private static Band blades(FormReader form) {
    var smallest = form.length(SMALLEST_BLADE, BLADES);
    var largest = form.length(LARGEST_BLADE, BLADES);
    if (largest.isLessThan(smallest)) {
      form.problem(
          LARGEST_BLADE, "it is smaller than the smallest blade", "at least the smallest blade");
      return new Band(largest, smallest);
    }
    return new Band(smallest, largest);
  }
}
