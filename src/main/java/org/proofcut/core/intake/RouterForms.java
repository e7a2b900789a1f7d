package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.band;
import static org.proofcut.core.intake.Field.length;
import static org.proofcut.core.intake.MachineFields.DEPTH_STEP;
import static org.proofcut.core.intake.MachineFields.DIAMETER;
import static org.proofcut.core.intake.MachineFields.EDGES;
import static org.proofcut.core.intake.MachineFields.EXTRACTION;
import static org.proofcut.core.intake.MachineFields.FENCE_STEP;
import static org.proofcut.core.intake.MachineFields.GUARD;
import static org.proofcut.core.intake.MachineFields.HEIGHT_STEP;
import static org.proofcut.core.intake.MachineFields.REACHES;
import static org.proofcut.core.intake.MachineFields.SPEEDS;
import static org.proofcut.core.intake.MachineFields.STEPS;
import static org.proofcut.core.intake.MachineFields.TOP_SPEED;

import java.util.Arrays;
import java.util.List;
import org.proofcut.core.measure.Band;
import org.proofcut.core.shop.BearingCutter;
import org.proofcut.core.shop.HandRouter;
import org.proofcut.core.shop.RouterTable;
import org.proofcut.core.shop.StraightCutter;

/** The forms of routers and their cutters. */
final class RouterForms {

  private static final Field NAME = MachineFields.name("router table by the window");

  private static final Field CUTTER_NAME = MachineFields.name("12 mm, two edges");

  private static final Field LARGEST_CUTTER =
      length("largest-cutter", "Largest cutter", "largest diameter that it takes");

  private static final Band CUTTERS = band("1 mm", "120 mm");

  private static final Field ROUTER_REACH =
      length("fence-reach", "Fence reach", "farthest from the cutter that the fence can stand");

  private static final Field BASE =
      length(
          "base-edge-to-centre",
          "Base edge to centre of the cutter",
          "measured at the point of the base that rides the straightedge");

  private static final Field CUTTING_LENGTH =
      length("cutting-length", "Cutting length", "length of the edges");

  private static final Field SHANK = length("shank", "Shank", "diameter, to fit the collet");

  private static final Field PROFILE =
      Field.choice(
          "profile",
          "Profile",
          Arrays.stream(BearingCutter.Profile.values())
              .map(one -> new Field.Choice(one.id(), one.words()))
              .toList());

  private static final Field BEARING =
      length("bearing", "Bearing", "outside diameter of the bearing at its end");

  private static final Field LARGEST_DIAMETER =
      length("diameter", "Largest diameter", "of the cutter, without the bearing");

  private RouterForms() {}

  static ItemForm<RouterTable> routerTable() {
    return new ItemForm<>(
        "router-table",
        "Router table",
        List.of(
            NAME, SPEEDS, ROUTER_REACH, FENCE_STEP, HEIGHT_STEP, LARGEST_CUTTER, GUARD, EXTRACTION),
        (id, form) -> {
          var name = form.text(NAME);
          var speeds = SeveralIn.speeds(form, SPEEDS);
          var reach = form.length(ROUTER_REACH, REACHES);
          var fenceStep = form.length(FENCE_STEP, STEPS);
          var heightStep = form.length(HEIGHT_STEP, STEPS);
          var largest = form.length(LARGEST_CUTTER, CUTTERS);
          boolean guard = form.yes(GUARD);
          boolean extraction = form.yes(EXTRACTION);
          return form.result(
              () ->
                  new RouterTable(
                      id, name, speeds, reach, fenceStep, heightStep, largest, guard, extraction));
        });
  }

  static ItemForm<HandRouter> handRouter() {
    return new ItemForm<>(
        "hand-held-router",
        "Hand-held router",
        List.of(NAME, SPEEDS, BASE, DEPTH_STEP, LARGEST_CUTTER, GUARD, EXTRACTION),
        (id, form) -> {
          var name = form.text(NAME);
          var speeds = SeveralIn.speeds(form, SPEEDS);
          var base = form.length(BASE, band("20 mm", "300 mm"));
          var step = form.length(DEPTH_STEP, STEPS);
          var largest = form.length(LARGEST_CUTTER, CUTTERS);
          boolean guard = form.yes(GUARD);
          boolean extraction = form.yes(EXTRACTION);
          return form.result(
              () -> new HandRouter(id, name, speeds, base, step, largest, guard, extraction));
        });
  }

  static ItemForm<StraightCutter> straightCutter() {
    return new ItemForm<>(
        "straight-cutter",
        "Straight router cutter",
        List.of(CUTTER_NAME, DIAMETER, CUTTING_LENGTH, EDGES, SHANK, TOP_SPEED),
        (id, form) -> {
          var name = form.text(CUTTER_NAME);
          var diameter = form.length(DIAMETER, CUTTERS);
          var length = form.length(CUTTING_LENGTH, band("2 mm", "120 mm"));
          int edges = form.count(EDGES, 1, 8);
          var shank = form.length(SHANK, band("3 mm", "20 mm"));
          var top = form.optionalCount(TOP_SPEED, 1_000, 60_000);
          return form.result(
              () -> new StraightCutter(id, name, diameter, length, edges, shank, top));
        });
  }

  static ItemForm<BearingCutter> bearingCutter() {
    return new ItemForm<>(
        "bearing-cutter",
        "Router cutter with a bearing",
        List.of(
            CUTTER_NAME,
            PROFILE,
            BEARING,
            LARGEST_DIAMETER,
            CUTTING_LENGTH,
            EDGES,
            SHANK,
            TOP_SPEED),
        (id, form) -> {
          var name = form.text(CUTTER_NAME);
          var profile = profile(form.choice(PROFILE));
          var bearing = form.length(BEARING, band("3 mm", "60 mm"));
          var diameter = form.length(LARGEST_DIAMETER, CUTTERS);
          boolean trims = profile == BearingCutter.Profile.FLUSH_TRIM;
          if (!trims && form.isSound(BEARING, LARGEST_DIAMETER) && !bearing.isLessThan(diameter)) {
            form.problem(
                LARGEST_DIAMETER,
                "It would not reach beyond its bearing",
                "more than " + form.shown(bearing));
          }
          var length = form.length(CUTTING_LENGTH, band("2 mm", "120 mm"));
          int edges = form.count(EDGES, 1, 8);
          var shank = form.length(SHANK, band("3 mm", "20 mm"));
          var top = form.optionalCount(TOP_SPEED, 1_000, 60_000);
          return form.result(
              () ->
                  new BearingCutter(
                      id, name, profile, bearing, diameter, length, edges, shank, top));
        });
  }

  static BearingCutter.Profile profile(String id) {
    return Arrays.stream(BearingCutter.Profile.values())
        .filter(one -> one.id().equals(id))
        .findFirst()
        .orElse(BearingCutter.Profile.ROUND_OVER);
  }
}
