package org.proofcut.core.casework;

import java.util.List;
import java.util.stream.Stream;
import org.proofcut.core.casework.CaseDesign.Joinery;
import org.proofcut.core.casework.CaseDesign.Outside;
import org.proofcut.core.casework.CaseDesign.Plinth;
import org.proofcut.core.casework.CaseDesign.Sheets;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.readings.Readings;
import org.proofcut.core.stock.Material;
import org.proofcut.core.stock.Sheet;

/** A wall cupboard for glaze jars, and the limits it is judged by. */
public final class CasesForTests {

  public static final FitLimits FIT =
      new FitLimits(
          limit("least room", "0.05 mm"),
          limit("right from", "0.10 mm"),
          limit("most room", "0.25 mm"),
          limit("most room screwed", "0.30 mm"),
          limit("room to aim at", "0.15 mm"),
          limit("most proud", "0.20 mm"));

  public static final CaseLimits CASE =
      new CaseLimits(
          limit("ease of the back", "1 mm"),
          Worked.given("fewest readings", 4, Citation.COMMON_PRACTICE),
          limit("least wood between housings", "20 mm"),
          limit("smallest side", "100 mm"),
          limit("largest side", "3000 mm"));

  public static final Sheet BIRCH = sheet("birch", "17.70 mm", "17.66 mm", "17.74 mm", "17.78 mm");
  public static final Sheet THIN = sheet("thin", "5.60 mm", "5.62 mm", "5.66 mm", "5.64 mm");

  private CasesForTests() {}

  /** 600 × 900 × 400, one shelf, all from birch but the back. */
  public static CaseDesign cupboard() {
    return new CaseDesign(
        "Glaze cupboard",
        LengthUnit.MILLIMETRE,
        new Outside(mm(600), mm(900), mm(400)),
        new Sheets(BIRCH, BIRCH, BIRCH, BIRCH, BIRCH, THIN, BIRCH),
        new Joinery(mm(6), mm(6), mm(6), mm(6), Length.ZERO),
        new Plinth(mm(100), mm(40)),
        List.of(mm(480)));
  }

  public static Sheet sheet(String id, String... readings) {
    return new Sheet(
        id,
        id + " sheet",
        Material.PLYWOOD,
        mm(2440),
        mm(1220),
        new Readings(id + " sheet", Stream.of(readings).map(Length::of).toList()));
  }

  public static Length mm(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  static Worked<Length> limit(String name, String value) {
    return Worked.given(name, Length.of(value), Citation.COMMON_PRACTICE);
  }
}
