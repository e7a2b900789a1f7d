package org.proofcut.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.EnumMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.safety.Fact;
import org.proofcut.core.safety.Finding;

/** Figures that rules of work by hand carry, against the print that they name where the shop is. */
class HandRulesPublishedTest {

  /**
   * Found in print: daily disposal in a letter of OSHA of 23 May 2000 on 1910.106; the listed
   * container at WAC 51-54A-3304; compressed air at 29 CFR 1910.242(b); limits of dust at HSE, wood
   * dust. In a secondary copy: 50 ft, of NFPA 10. From memory: the paragraphs of 29 CFR 1910.107,
   * .151, .157 and .1200.
   */
  @ParameterizedTest
  @CsvSource({
    "oily-rags-heat, us, covered metal receptacles and disposed of daily, 1910.106, true",
    "oily-rags-heat, us-washington, listed disposal container, WAC 51-54A-3304, true",
    "oily-rags-heat, gb, '', common practice, false",
    "no-eye-wash, us, quick drenching, 1910.151, true",
    "no-eye-wash, gb, quick drenching, 1910.151, false",
    "no-extinguisher, us, at most 50 ft, 1910.157, true",
    "air-jet-drives-chips, us, less than 30 psi, 1910.242, true",
    "air-jet-drives-chips, gb, '', common practice, false",
    "data-sheet-missing, us, in 16 sections, 1910.1200, true",
    "mist-breathed, us, 100 ft/min, 1910.107, true",
    "vapour-breathed, us, not by smell, 1910.134, true",
    "sanding-dust-breathed, gb, 3 mg/m3 of hardwood, wood, false",
    "sheet-carried-alone, us, no number for carrying, NIOSH, false",
  })
  void rule_whereTheShopStands_saysThePrintedFigure(
      String id, String region, String printed, String source, boolean law) {
    var finding = finding(id, region);
    assertTrue(finding.sourceSays().contains(printed), finding.sourceSays());
    assertTrue(finding.because().text().contains(source), finding.because().text());
    assertEquals(law, finding.restsOnLaw());
  }

  /**
   * The filter values of HSE at elbow height, close to the body, are 25 kg and 16 kg, in a
   * secondary copy; who carries is not known, so the lower one counts.
   */
  @Test
  void load_carriedAlone_isTheLowerFilterValue() {
    var limit = Content.bundled().rulebook().vocabulary().limits().get("load_carried_alone");
    assertEquals(new Amount(new BigDecimal("16"), "kg"), limit.value());
    assertTrue(limit.because().text().contains("risk filters"), limit.because().text());
  }

  /** As its first case that fires has it, but there. */
  private static Finding finding(String id, String region) {
    var content = Content.bundled();
    var rule =
        content.rulebook().rules().stream()
            .filter(one -> one.id().equals(id))
            .findFirst()
            .orElseThrow();
    var fires =
        content.cases().stream()
            .filter(one -> one.rule().equals(id) && one.then() == RuleCase.Then.FIRES)
            .findFirst()
            .orElseThrow();
    var given = new EnumMap<>(fires.given());
    given.put(Fact.REGION, region);
    return content.rulebook().judge(NeutralStep.of(rule, given)).stream()
        .filter(one -> one.rule().equals(id))
        .findFirst()
        .orElseThrow();
  }
}
