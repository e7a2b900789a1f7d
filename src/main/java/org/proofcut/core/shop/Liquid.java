package org.proofcut.core.shop;

import java.math.BigDecimal;
import java.util.Optional;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.FlammableCategory;

/**
 * A glue, finish or solvent that is at hand.
 *
 * @param name what stands on the tin
 * @param flash its flash point, in °C or °F, from section 9 of its safety data sheet
 * @param boils where it boils, from the same place
 * @param dataSheetOnFile whether its safety data sheet is kept in the shop
 * @param dataSheetPlace where; empty where unknown
 * @param opened when it was opened, as the maker wrote it; empty where unknown
 */
public record Liquid(
    String id,
    LiquidKind kind,
    String name,
    Optional<Amount> flash,
    Optional<Amount> boils,
    boolean dataSheetOnFile,
    String dataSheetPlace,
    String opened) {

  private static final Citation DATA_SHEET =
      new Citation(Citation.Kind.DATA_SHEET, "its safety data sheet", "section 9");

  /** Where a liquid boils that is worth telling from one that boils later. */
  private static final Worked<Amount> BOILS_EARLY =
      Worked.given(
          "boiling point, not entered, so taken as low",
          new Amount(new BigDecimal("95"), "°F"),
          Citation.OWN_CHOICE);

  /** Any of its kind: nothing is known of it but that. */
  public static Liquid any(LiquidKind kind) {
    return new Liquid(
        kind.id(), kind, kind.name(), Optional.empty(), Optional.empty(), false, "", "");
  }

  /** How easily it takes fire: by its flash point, or by its kind where none is entered. */
  public Worked<FlammableCategory> category() {
    if (flash.isEmpty()) {
      return Worked.given(
          "how easily this kind takes fire, flash point not entered",
          kind.untilKnown(),
          kind.because());
    }
    var flashPoint = Worked.given("flash point", flash.get(), DATA_SHEET);
    var boilingPoint =
        boils.map(at -> Worked.given("boiling point", at, DATA_SHEET)).orElse(BOILS_EARLY);
    return Worked.called("how easily it takes fire")
        .by("category by flash point and boiling point")
        .with("flash point", flashPoint)
        .with("boiling point", boilingPoint)
        .from(FlammableCategory.SOURCE)
        .is(FlammableCategory.of(flashPoint.value(), boilingPoint.value()));
  }
}
