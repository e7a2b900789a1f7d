package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.band;
import static org.proofcut.core.intake.Field.choice;
import static org.proofcut.core.intake.Field.length;
import static org.proofcut.core.intake.Field.speeds;
import static org.proofcut.core.intake.Field.yesNo;
import static org.proofcut.core.intake.MachineFields.DIAMETER;
import static org.proofcut.core.intake.MachineFields.EDGES;
import static org.proofcut.core.intake.MachineFields.EXTRACTION;
import static org.proofcut.core.intake.MachineFields.FENCE_STEP;
import static org.proofcut.core.intake.MachineFields.STEPS;
import static org.proofcut.core.intake.MachineFields.TOP_SPEED;

import java.util.Arrays;
import java.util.List;
import org.proofcut.core.measure.Band;
import org.proofcut.core.shop.Bit;
import org.proofcut.core.shop.DrillPress;
import org.proofcut.core.shop.HandDrill;

/** The forms of drills and bits. */
final class DrillForms {

  private static final Band BITS = band("0.5 mm", "80 mm");

  private static final Field NAME = MachineFields.name("drill press in the corner");
  private static final Field BIT_NAME = MachineFields.name("8 mm, with a centre point");
  private static final Field SPEEDS =
      speeds("speeds", "Speeds", "each step of belt or dial with its revolutions a minute");
  private static final Field FENCE_REACH =
      length(
          "fence-reach",
          "Fence reach",
          "from the centre of the bit back to the fence at its farthest");
  private static final Field STOP_REACH =
      length(
          "stop-reach",
          "Stop on the fence: farthest",
          "from the centre of the bit; 0 if there is no stop");
  private static final Field TRAVEL =
      length("travel", "Stroke", "how far it goes down in one pull");
  private static final Field UNDER_CHUCK =
      length("under-chuck", "Table to chuck", "with the table at its lowest");
  private static final Field DEPTH_STEP =
      length("depth-step", "Depth stop: smallest step", "smallest change you can set and read");
  private static final Field COLLAR_STEP =
      length("collar-step", "Stop collar: smallest step", "smallest change you can set");
  private static final Field GUIDE_HEIGHT =
      length(
          "guide-height",
          "Height of the drill guide",
          "of a guide that is clamped on the work and keeps the bit square; 0 if there is none");
  private static final Field LARGEST_BIT =
      length("largest-bit", "Largest bit", "largest diameter that it turns in wood");
  private static final Field GUARD = yesNo("guard", "Has a guard over the chuck");

  private static final Field KIND =
      choice(
          "bit-kind",
          "Kind of bit",
          Arrays.stream(Bit.Kind.values())
              .map(kind -> new Field.Choice(kind.id(), kind.words()))
              .toList());
  private static final Field LENGTH =
      length("length", "Length that bores", "from the outer edges up to the chuck");
  private static final Field POINT =
      length(
          "point",
          "Point",
          "how far spur, point, cone or nose stands out beyond the outer edges; 0 if nothing does");

  private DrillForms() {}

  static ItemForm<DrillPress> drillPress() {
    return new ItemForm<>(
        "drill-press",
        "Drill press",
        List.of(
            NAME,
            SPEEDS,
            FENCE_REACH,
            FENCE_STEP,
            STOP_REACH,
            TRAVEL,
            UNDER_CHUCK,
            DEPTH_STEP,
            LARGEST_BIT,
            GUARD,
            EXTRACTION),
        (id, form) -> {
          var name = form.text(NAME);
          var speeds = SeveralIn.speeds(form, SPEEDS);
          var fence = form.length(FENCE_REACH, band("10 mm", "1000 mm"));
          var fenceStep = form.length(FENCE_STEP, STEPS);
          var stop = form.length(STOP_REACH, band("0 mm", "3000 mm"));
          var travel = form.length(TRAVEL, band("10 mm", "300 mm"));
          var underChuck = form.length(UNDER_CHUCK, band("50 mm", "2000 mm"));
          var depthStep = form.length(DEPTH_STEP, STEPS);
          var largest = form.length(LARGEST_BIT, BITS);
          boolean guard = form.yes(GUARD);
          boolean extraction = form.yes(EXTRACTION);
          return form.result(
              () ->
                  new DrillPress(
                      id,
                      name,
                      speeds,
                      fence,
                      fenceStep,
                      stop,
                      travel,
                      underChuck,
                      depthStep,
                      largest,
                      guard,
                      extraction));
        });
  }

  static ItemForm<HandDrill> handDrill() {
    return new ItemForm<>(
        "hand-drill",
        "Drill in the hands",
        List.of(NAME, SPEEDS, COLLAR_STEP, GUIDE_HEIGHT, LARGEST_BIT, EXTRACTION),
        (id, form) -> {
          var name = form.text(NAME);
          var speeds = SeveralIn.speeds(form, SPEEDS);
          var step = form.length(COLLAR_STEP, STEPS);
          var guide = form.length(GUIDE_HEIGHT, band("0 mm", "120 mm"));
          var largest = form.length(LARGEST_BIT, BITS);
          boolean extraction = form.yes(EXTRACTION);
          return form.result(
              () -> new HandDrill(id, name, speeds, step, guide, largest, extraction));
        });
  }

  static ItemForm<Bit> bit() {
    return new ItemForm<>(
        "bit",
        "Bit for a drill",
        List.of(BIT_NAME, KIND, DIAMETER, LENGTH, POINT, EDGES, TOP_SPEED),
        (id, form) -> {
          var name = form.text(BIT_NAME);
          var chosen = form.choice(KIND);
          var diameter = form.length(DIAMETER, BITS);
          var length = form.length(LENGTH, band("2 mm", "400 mm"));
          var point = form.length(POINT, band("0 mm", "60 mm"));
          int edges = form.count(EDGES, 1, 8);
          var top = form.optionalCount(TOP_SPEED, 100, 60_000);
          return form.result(
              () -> new Bit(id, name, kind(chosen), diameter, length, point, edges, top));
        });
  }

  private static Bit.Kind kind(String id) {
    return Arrays.stream(Bit.Kind.values())
        .filter(kind -> kind.id().equals(id))
        .findFirst()
        .orElseThrow();
  }
}
