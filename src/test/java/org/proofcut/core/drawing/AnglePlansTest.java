package org.proofcut.core.drawing;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.geometry.Corner;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.method.Methods;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.operation.SingleCut;
import org.proofcut.core.readings.Readings;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.SawForTests;
import org.proofcut.core.setup.ShopsForTests;
import org.proofcut.core.setup.Work;
import org.proofcut.core.shop.Machine;
import org.proofcut.core.shop.Shop;
import org.proofcut.core.shop.Side;
import org.proofcut.core.shop.TableSaw;
import org.proofcut.core.shop.Tilt;
import org.proofcut.core.stock.Material;
import org.proofcut.core.stock.Sheet;

/** What drawings of cuts at an angle say, by which they are read without being seen. */
class AnglePlansTest {

  private static final Length LONG = Length.of("700 mm");
  private static final Length WIDE = Length.of("120 mm");
  private static final Readings THICK =
      new Readings("the piece", List.of(Length.of("18 mm"), Length.of("18.1 mm")));
  private static final Work WORK =
      new Work(new Band(LONG, LONG), new Band(WIDE, WIDE), THICK.ends());

  private static Operation operation(OperationKind kind, CutAsked asked, Machine machine) {
    var sheet = new Sheet("stock", "the piece", Material.HARDWOOD, Length.ZERO, Length.ZERO, THICK);
    var shop =
        new Shop(
            "one machine",
            List.of(machine),
            List.of(ShopsForTests.RIP_BLADE, ShopsForTests.TRACK_BLADE, ShopsForTests.MITRE_BLADE),
            List.of(),
            List.of());
    return new SingleCut(kind, "Cut at an angle", asked, sheet, Optional.empty())
        .by(new Methods(shop, ShopsForTests.CONDITIONS));
  }

  private static Operation rip(Machine machine) {
    var asked =
        new CutAsked.Bevel(
            Worked.entered("bevel", Angle.parse("30")), Worked.entered("width", WIDE), true, WORK);
    return operation(OperationKind.BEVEL_RIP, asked, machine);
  }

  private static Operation frame(Optional<Worked<Angle>> lean) {
    var asked =
        new CutAsked.Mitre(
            Worked.entered("length", LONG),
            Corner.ofSides(4),
            lean,
            Worked.entered("width", WIDE),
            WORK);
    return operation(OperationKind.MITRE, asked, ShopsForTests.MITRE);
  }

  private static TableSaw leaningRight() {
    return new SawForTests()
        .tilt(Optional.of(new Tilt(List.of(Side.RIGHT), Angle.ofDegrees(45), Angle.parse("0.1"))))
        .leftReach(Optional.of(Length.of("300 mm")))
        .made();
  }

  private static String plan(Operation operation, int width) {
    var setup = operation.setup().orElseThrow();
    return MachinePlan.of(operation, setup, LengthUnit.MILLIMETRE, width).words();
  }

  private static String section(Operation operation) {
    var setup = operation.setup().orElseThrow();
    return CutSection.of(operation, setup, LengthUnit.MILLIMETRE, 620).words();
  }

  @ParameterizedTest
  @ValueSource(ints = {360, 620})
  void tiltedRip_standsAtTheFenceThatTheBladeLeansFrom_guardDown(int width) {
    var left = plan(rip(ShopsForTests.SAW), width);
    assertTrue(left.contains("The fence is on the right"), left);
    assertTrue(left.contains("leans to the left, away from the fence"), left);
    assertTrue(left.contains("the guard covers the blade"), left);
    assertTrue(left.contains("Bevel: 30.0°"), left);
    assertFalse(left.contains("can't stay"), left);
    var right = plan(rip(leaningRight()), width);
    assertTrue(right.contains("The fence is on the left"), right);
    assertTrue(right.contains("leans to the right, away from the fence"), right);
  }

  @Test
  void sectionOfATiltedRip_saysBothFaces() {
    // 18.05 · tan 30° = 10.42.
    var words = section(rip(ShopsForTests.SAW));
    assertTrue(words.contains("tilted 30.0° from upright, its upper edge to the left"), words);
    assertTrue(words.contains("10.42 mm"), words);
  }

  @Test
  void tiltedCutAlongTheTrack_runsTheLengthOfThePiece() {
    var words = plan(rip(ShopsForTests.TRACK), 620);
    assertTrue(words.contains("good face up"), words);
    assertTrue(words.contains("Bevel: 30.0°"), words);
  }

  @ParameterizedTest
  @ValueSource(ints = {360, 620})
  void mitre_keepsThePieceOnTheStopsSide_andTheOffcutFree(int width) {
    var words = plan(frame(Optional.empty()), width);
    assertTrue(words.contains("kept lies against it on the left"), words);
    assertTrue(words.contains("the offcut lies free on the right"), words);
    assertTrue(words.contains("The front of the saw is turned to the left"), words);
    assertTrue(section(frame(Optional.empty())).contains("The blade stands upright"));
  }

  @Test
  void leaningMitre_keepsThePieceOnTheSideThatTheBladeLeansFrom() {
    var leaning = frame(Optional.of(Worked.entered("lean", Angle.parse("38"))));
    var words = plan(leaning, 620);
    assertTrue(words.contains("kept lies against it on the right"), words);
    assertTrue(words.contains("its mark under the blade"), words);
    assertTrue(section(leaning).contains("its upper edge to the left, away from the piece"));
  }
}
