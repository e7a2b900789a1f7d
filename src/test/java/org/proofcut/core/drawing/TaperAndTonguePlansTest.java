package org.proofcut.core.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.core.boring.HolesForTests;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.intake.CutForm;
import org.proofcut.core.intake.CutForms;
import org.proofcut.core.intake.CutsTyped;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.method.Methods;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.setup.Conditions;
import org.proofcut.core.setup.ShopsForTests;

/** What drawings of tapers and tongues say, by which they are read without being seen. */
class TaperAndTonguePlansTest {

  private static Operation typed(Map<String, String> fields, String kind) {
    var form =
        CutForms.all(CasesForTests.FIT, HolesForTests.LIMITS).stream()
            .filter(one -> one.kind().equals(kind))
            .findFirst()
            .orElseThrow();
    var wanted =
        form.read(CutForm.filledIn(fields, LengthUnit.MILLIMETRE), CutsTyped.SHOP)
            .value()
            .orElseThrow();
    var conditions =
        new Conditions(ShopsForTests.LIMITS, CutsTyped.SHOP.aids(), LengthUnit.MILLIMETRE);
    return wanted.cut().by(new Methods(wanted.shop(), conditions));
  }

  private static String plan(Operation operation, int width) {
    return MachinePlan.of(operation, operation.setup().orElseThrow(), LengthUnit.MILLIMETRE, width)
        .words();
  }

  private static String section(Operation operation, int width) {
    return CutSection.of(operation, operation.setup().orElseThrow(), LengthUnit.MILLIMETRE, width)
        .words();
  }

  @ParameterizedTest
  @ValueSource(ints = {350, 600})
  void taper_liesOnTheCarrier_wasteAwayFromTheFence_wideEndFirst(int width) {
    var words = plan(typed(CutsTyped.with("taper"), "taper"), width);
    assertTrue(words.contains("The fence is on the right, the carrier's straight edge"), words);
    assertTrue(words.contains("straight edge touches the heel at the narrow end"), words);
    assertTrue(words.contains("waste is on the left of the blade, away from the fence"), words);
    assertTrue(words.contains("wide end leads"), words);
    assertTrue(words.contains("the guard covers the blade"), words);
    assertFalse(words.contains("Turned over"), words);
  }

  @Test
  void secondEdgeOfATaper_isTurnedOver_onTheEdgeCutFirst() {
    var words = plan(typed(CutsTyped.with("taper", "edge", "second"), "taper"), 600);
    assertTrue(words.contains("Turned over"), words);
    assertTrue(words.contains("edge cut first touches the heel"), words);
  }

  /** On a narrow carrier the figures would lie over the fence. */
  @ParameterizedTest
  @CsvSource({"250, false", "95, true"})
  void figures_onANarrowCarrier_areSaidBelow(String carrier, boolean said) {
    var operation = typed(CutsTyped.with("taper", "carrier", carrier), "taper");
    var picture =
        MachinePlan.of(operation, operation.setup().orElseThrow(), LengthUnit.MILLIMETRE, 600);
    assertEquals(said, picture.svg().contains("wide; heel"));
  }

  @Test
  void sectionOfATaper_addsUpTheBladesHeight() {
    var words = section(typed(CutsTyped.with("taper"), "taper"), 600);
    assertTrue(
        words.contains("Blade 47 mm high: carrier 12 mm, thickest stock 30.2 mm, and 4.8 mm"),
        words);
  }

  @Test
  void tongue_isCutFromBothFaces_atEachHeight() {
    var operation = typed(CutsTyped.with("tongue-routed"), "tongue-routed");
    var words = plan(operation, 600);
    assertTrue(words.contains("all pieces marked face down, then other face down"), words);
    assertTrue(words.contains("Ends first, each with scrap behind it"), words);
    var across = section(operation, 350);
    assertTrue(across.contains("the tongue 6.03 mm thick, 9 mm long"), across);
  }
}
