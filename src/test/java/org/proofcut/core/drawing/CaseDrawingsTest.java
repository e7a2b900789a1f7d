package org.proofcut.core.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.casework.CasesForTests.mm;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.proofcut.core.casework.Case;
import org.proofcut.core.casework.CaseDesign;
import org.proofcut.core.casework.CaseDesign.Joinery;
import org.proofcut.core.casework.CaseDesign.Outside;
import org.proofcut.core.casework.CaseDesign.Plinth;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.casework.Casework;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;

class CaseDrawingsTest {

  private static final int[] WIDTHS = {600, 350};

  @Test
  void elevation_cupboard_bottomAndShelfLieAtTheirHeights() {
    var seen =
        Seen.in(CaseElevation.of(made(CasesForTests.cupboard()), LengthUnit.MILLIMETRE, 600));
    var outline = seen.boxes().get(0);
    double perMm = outline.height() / 900;
    assertEquals(600 * perMm, outline.width(), 0.01);
    for (double height : new double[] {100, 480}) {
      assertTrue(
          seen.boxes().stream()
              .anyMatch(
                  box ->
                      Math.abs(box.bottom() - (outline.bottom() - height * perMm)) < 0.01
                          && Math.abs(box.height() - 17.72 * perMm) < 0.01
                          // Wood left in each side: 17.72 − 6.
                          && Math.abs(box.left() - outline.left() - 11.72 * perMm) < 0.01),
          height + " not among " + seen.boxes());
    }
  }

  @Test
  void section_cupboard_plinthIsSetBackAndShelvesEndAtTheBack() {
    var seen = Seen.in(CaseSection.of(made(CasesForTests.cupboard()), LengthUnit.MILLIMETRE, 600));
    var outline = seen.boxes().get(0);
    double perMm = outline.height() / 900;
    assertTrue(
        seen.boxes().stream()
            .anyMatch(
                box ->
                    Math.abs(box.left() - outline.left() - 40 * perMm) < 0.01
                        && Math.abs(box.height() - 100 * perMm) < 0.01));
    // 400 deep, thickest back 5.66.
    assertTrue(
        seen.boxes().stream().anyMatch(box -> Math.abs(box.width() - (400 - 5.66) * perMm) < 0.01));
  }

  @Test
  void words_cupboard_sayEveryHeight() {
    var words =
        CaseElevation.of(made(CasesForTests.cupboard()), LengthUnit.MILLIMETRE, 600).words();
    assertTrue(words.contains("underside of the bottom 100 mm"), words);
    assertTrue(words.contains("underside of shelf 1 480 mm"), words);
  }

  @Property(tries = 400)
  void bothDrawings_anyDesign_areLegible(
      @ForAll("sizes") Length width,
      @ForAll("sizes") Length height,
      @ForAll("sizes") Length depth,
      @ForAll("places") Length plinth,
      @ForAll("places") Length setBack,
      @ForAll("places") Length joint,
      @ForAll("shelves") List<Length> shelves,
      @ForAll LengthUnit unit) {
    var good = CasesForTests.cupboard();
    var design =
        new CaseDesign(
            "odd",
            unit,
            new Outside(width, height, depth),
            good.sheets(),
            new Joinery(joint, joint, joint, joint, joint),
            new Plinth(plinth, setBack),
            shelves);
    var odd = made(design);
    for (int wide : WIDTHS) {
      Seen.in(CaseElevation.of(odd, unit, wide)).isLegible("elevation of " + design);
      Seen.in(CaseSection.of(odd, unit, wide)).isLegible("section of " + design);
    }
  }

  @Provide
  Arbitrary<Length> sizes() {
    return Arbitraries.oneOf(
        Arbitraries.longs().between(100, 3000).map(CasesForTests::mm),
        Arbitraries.of(Length.ZERO, mm(-5), new Length(1), mm(1), mm(100_000), mm(1_000_000_000)));
  }

  @Provide
  Arbitrary<Length> places() {
    return Arbitraries.oneOf(
        Arbitraries.longs().between(-50, 1200).map(CasesForTests::mm),
        Arbitraries.of(Length.ZERO, mm(-1_000_000_000), mm(1_000_000_000)));
  }

  @Provide
  Arbitrary<List<Length>> shelves() {
    return places().list().ofMaxSize(12);
  }

  private static Case made(CaseDesign design) {
    return Casework.derive(design, CasesForTests.CASE, CasesForTests.FIT);
  }
}
