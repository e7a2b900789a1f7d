package org.proofcut.content;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.measure.Length;
import org.proofcut.rulebook.Rule;

/** Figures that rules carry, against the print that they name. */
class RulesPublishedTest {

  /**
   * Found in print: push stick, riving knife and take-off table at <a
   * href="https://www.hse.gov.uk/woodworking/ripsaw.htm">HSE, circular rip saws</a>; the guard at
   * <a href="https://apps.leg.wa.gov/wac/default.aspx?cite=296-806-48012">WAC
   * 296-806-48012(4)(b)</a>; dust at <a href="http://hse.gov.uk/woodworking/wooddust.htm">HSE, wood
   * dust</a>; jointers at <a href="https://app.leg.wa.gov/WAC/default.aspx?cite=296-78-635">WAC
   * 296-78-635</a> and in OSHA's eTool on woodworking. From memory: 85 dBA, 29 CFR 1910.95(c)(1).
   */
  @ParameterizedTest
  @CsvSource({
    "hand-meets-blade, at least 450 mm, rip saw",
    "hand-meets-blade, last 300 mm, rip saw",
    "no-push-stick, at least 450 mm, rip saw",
    "kickback-at-the-saw, within 8 mm of the blade, rip saw",
    "kickback-at-the-saw, thicker than its plate and thinner than its kerf, rip saw",
    "long-panel-drops, at least 1200 mm, rip saw",
    "guard-lifted, within 1/4 in, WAC 296-806-480",
    "dust-not-extracted, 3 mg/m3 of hardwood, dust",
    "fine-dust, 5 mg/m3 of softwood, dust",
    "noise-at-the-machine, 85 dBA over eight hours, 29 CFR 1910.95",
    "knives-stand-out, at most 1/8 in out of the head, 29 CFR 1910.213",
    "knives-stand-out, opening at most 2 1/2 in, 29 CFR 1910.213",
    "guard-stays-open, keeps to the stock, 29 CFR 1910.213",
    "no-push-block, Push sticks are provided and used, WAC 296-78-635"
  })
  void rule_saysThePrintedFigure_andNamesItsSource(String id, String printed, String source) {
    var rule = rule(id);
    assertTrue(rule.sourceSays().contains(printed), rule.sourceSays());
    assertTrue(rule.because().text().contains(source), rule.because().text());
  }

  /** The check at the machine asks for no more room than the 1/4 in, 6.35 mm, of the same place. */
  @Test
  void guard_checkedAtTheSaw_isNoFartherThanPrinted() {
    var asked =
        rule("guard-lifted").checks().stream()
            .map(check -> check.answer())
            .filter(answer -> answer.contains("mm"))
            .findFirst()
            .orElseThrow();
    var room = Length.of(asked.replaceFirst(".*within ([0-9.]+ mm).*", "$1"));
    assertTrue(room.isAtMost(Length.of("1/4 in")), asked);
  }

  private static Rule rule(String id) {
    return Content.bundled().rulebook().rules().stream()
        .filter(rule -> rule.id().equals(id))
        .findFirst()
        .orElseThrow();
  }
}
