package org.proofcut.core.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.proofcut.core.boring.HolesForTests;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.intake.CutForm;
import org.proofcut.core.intake.CutForms;
import org.proofcut.core.intake.CutsTyped;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.plan.PlansForTests;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.setup.ShopsForTests;

class DrillPlanTest {

  static List<String> bored() {
    return List.of("screw-hole", "hinge-cup", "shelf-pins", "dowels", "pocket-holes");
  }

  private static Optional<Operation> operation(String kind, String machine, String... otherwise) {
    var form =
        CutForms.all(CasesForTests.FIT, HolesForTests.LIMITS).stream()
            .filter(one -> one.kind().equals(kind))
            .findFirst()
            .orElseThrow();
    var typed = CutsTyped.with(kind, otherwise);
    // A pocket has its jig and its drill.
    typed.put("machine", kind.startsWith("pocket") ? CutForm.ANY : machine);
    var wanted =
        form.read(CutForm.filledIn(typed, LengthUnit.MILLIMETRE), ShopsForTests.shop())
            .value()
            .orElseThrow();
    var operation =
        PlansForTests.planner()
            .plan(wanted.cut(), wanted.shop(), wanted.unit())
            .sheet()
            .operation();
    return operation.setup().isPresent() ? Optional.of(operation) : Optional.empty();
  }

  private static Setup setup(Operation operation) {
    return operation.setup().orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("bored")
  void planAndSection_everyUnitAndWidth_areLegible(String kind) {
    var drawn = new ArrayList<Operation>();
    for (var machine : List.of("press", "drill")) {
      operation(kind, machine).ifPresent(drawn::add);
    }
    assertTrue(!drawn.isEmpty(), kind);
    for (var operation : drawn) {
      for (var unit : LengthUnit.values()) {
        for (int width : new int[] {600, 350}) {
          var what = kind + " " + unit + " " + width;
          Seen.in(MachinePlan.of(operation, setup(operation), unit, width)).isLegible(what);
          Seen.in(CutSection.of(operation, setup(operation), unit, width)).isLegible(what);
        }
      }
    }
  }

  @Test
  void variants_areLegible() {
    for (var operation :
        List.of(
            operation("screw-hole", "press", "bore", "countersink", "head", "8.4"),
            operation("screw-hole", "drill", "bore", "clearance"),
            operation("shelf-pins", "press", "row", "rear"),
            operation("dowels", "press", "part", "end"))) {
      for (int width : new int[] {600, 350}) {
        var one = operation.orElseThrow();
        Seen.in(MachinePlan.of(one, setup(one), LengthUnit.MILLIMETRE, width))
            .isLegible(one.title());
        Seen.in(CutSection.of(one, setup(one), LengthUnit.MILLIMETRE, width))
            .isLegible(one.title());
      }
    }
  }

  /** Two cups of 35 mm, 520 mm apart: as many radii in the picture as in the door. */
  @Test
  void holes_unbrokenRow_standToScale() {
    var operation = operation("hinge-cup", "press").orElseThrow();
    var picture = MachinePlan.of(operation, setup(operation), LengthUnit.MILLIMETRE, 600);
    var circles = Seen.in(picture).circles();
    // The chuck about the first hole, then both holes.
    assertEquals(3, circles.size());
    assertEquals(circles.get(0).x(), circles.get(1).x());
    assertTrue(circles.get(0).r() > circles.get(1).r());
    double apart = Math.abs(circles.get(2).x() - circles.get(1).x());
    assertEquals(520 / 17.5, apart / circles.get(1).r(), 0.1);
    assertEquals(circles.get(1).y(), circles.get(2).y());
  }

  @Test
  void longRow_isBroken_andSaysHowManyHolesThereAre() {
    var operation = operation("shelf-pins", "press").orElseThrow();
    var picture = MachinePlan.of(operation, setup(operation), LengthUnit.MILLIMETRE, 600);
    var row = ((CutAsked.Bored) setup(operation).asked()).row();
    assertTrue(Seen.in(picture).circles().size() < row.along().size());
    assertTrue(picture.words().contains(row.along().size() + " holes"), picture.words());
  }

  /** The rear row is laid off with the lower end of the left side on the right. */
  @Test
  void sides_areMirrorImages_aboutTheirLowerEnds() {
    for (var row : List.of("front", "rear")) {
      var operation = operation("shelf-pins", "press", "row", row).orElseThrow();
      var ends =
          operation.parts().stream()
              .map(part -> part.handling().orElseThrow().end().orElseThrow())
              .toList();
      var left = "lower end on your left";
      var right = "lower end on your right";
      assertEquals(row.equals("front") ? List.of(left, right) : List.of(right, left), ends);
    }
  }
}
