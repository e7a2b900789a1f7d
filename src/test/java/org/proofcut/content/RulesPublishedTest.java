package org.proofcut.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.measure.Length;
import org.proofcut.core.safety.Control;
import org.proofcut.core.safety.Finding;
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

  /**
   * What stands beside the first ground of a rule. Found in print: compressed air at <a
   * href="https://www.osha.gov/laws-regs/regulations/standardnumber/1910/1910.242">29 CFR
   * 1910.242(b)</a>; fence and smallest blade at <a
   * href="https://www.hse.gov.uk/woodworking/ripsaw.htm">HSE, circular rip saws</a>; jointers at <a
   * href="https://app.leg.wa.gov/WAC/default.aspx?cite=296-78-635">WAC 296-78-635</a>; planers at
   * <a href="https://app.leg.wa.gov/WAC/default.aspx?cite=296-78-620">WAC 296-78-620</a>; machines
   * that stay in one place, and their controls, at <a
   * href="http://lni.wa.gov/wisha/rules/machinesafety/HTML/296-806-200-2.htm">WAC 296-806-200</a>;
   * dull saws and combs at <a
   * href="http://lni.wa.gov/WISHA/Rules/machinesafety/HTML/296-806-480-2.htm">WAC 296-806-480</a>;
   * the push stick in OSHA's eTool on woodworking. In a secondary copy: 29 CFR 1910.213(a)(1),
   * (a)(6), (a)(7), (a)(9) and (a)(11); 10 s and 300 mm of HSE's sheet WIS16; 75 ft to an
   * extinguisher. From memory: 29 CFR 1910.213(c)(2), (c)(3) and (n)(1), 1910.157(d)(2), the
   * regulations of PUWER 1998, Annex I 2.8 of Directive 2009/104/EC.
   */
  @ParameterizedTest
  @CsvSource({
    "dust-blown-about, less than 30 psi, 29 CFR 1910.242",
    "fire-before-the-door, at most 75 ft (22.9 m), 29 CFR 1910.157",
    "fence-behind-the-teeth, no more than 18 mm, rip saw",
    "blade-too-small-for-the-saw, at least 60 % of the diameter, rip saw",
    "runs-on-after-stop, within 10 s of the stop, Information Sheet 16",
    "hand-meets-blade, no closer than 300 mm, Information Sheet 16",
    "hand-meets-blade, Push sticks are there for small work, '29 CFR 1910.213, Woodworking machinery requirements, (s)(9)'",
    "no-push-stick, Push sticks are there for small work, '(s)(9)'",
    "saw-without-riving-knife, within 8 mm of the blade, rip saw",
    "knives-stand-out, at most 1/8 in out of the head, 'WAC 296-78-635, on jointers, (2) and (3)'",
    "knives-uncovered, before and behind the fence, 'WAC 296-78-635, on jointers, (1)'",
    "planer-head-open, covered by a solid metal guard, 'WAC 296-78-620, on planers, (1)'",
    "planer-head-open, covered by a metal guard, '(n)(1), from memory'",
    "drawn-in-by-the-rollers, Feed rolls are guarded, 'WAC 296-78-620, on planers, (4)'",
    "machine-tips-or-walks, neither tip nor walk, '20002'",
    "machine-tips-or-walks, made steady by clamping, 'regulation 20, from memory'",
    "machine-shakes, does not shake noticeably, '(a)(1)'",
    "frame-not-earthed, above 90 V to ground, '(a)(11)'",
    "belt-takes-fingers, Belts, '(a)(9)'",
    "kickback-at-the-saw, stays parallel to the blade, '(a)(6)'",
    "kickback-at-the-saw, a spreader and fingers against kickback, 'from memory'",
    "fence-with-gauge, grooves that keep it true, '(a)(7)'",
    "blind-cut-held-by-hand, a comb (featherboard) or a jig, '48002'",
    "blade-burns-the-wood, a dull saw is taken out of service, '48006'",
    "switch-out-of-reach, reached from where one works, '20008'",
    "switch-out-of-reach, a stop control, 'regulations 15 and 16, from memory'",
    "cutter-change-live, cut off from its power, 'regulation 19, from memory'",
    "cut-in-your-own-shadow, Light is good enough, 'regulation 21, from memory'",
    "chips-in-the-eye, thrown out of work equipment, 'regulation 12, from memory'",
    "saw-without-guard, Nobody can reach a dangerous part, 'regulation 11, from memory'",
    "saw-without-guard, Moving parts that could be touched have guards, '2.8, from memory'"
  })
  void ground_beside_saysWhatIsPrinted_andNamesItsPlace(String id, String printed, String place) {
    var grounds =
        rule(id).grounds().stream()
            .filter(ground -> ground.citation().text().contains(place))
            .toList();
    assertTrue(
        grounds.stream()
            .anyMatch(
                ground ->
                    ground
                        .says()
                        .toLowerCase(Locale.ROOT)
                        .contains(printed.toLowerCase(Locale.ROOT))),
        grounds::toString);
  }

  /** What stops by law, and where: 29 CFR 1910.213 and its mirror, PUWER 1998, 2009/104/EC. */
  @ParameterizedTest
  @CsvSource({
    "saw-without-guard, us us-washington gb eu",
    "saw-without-riving-knife, us us-washington",
    "no-push-stick, us us-washington",
    "blind-cut-held-by-hand, us us-washington",
    "knives-uncovered, us us-washington gb eu",
    "no-push-block, us us-washington",
    "planer-head-open, us us-washington gb eu",
    "mitre-saw-without-guard, gb eu",
    "track-saw-without-cover, gb eu",
    "planer-without-fingers, ''",
    "short-work-at-the-saw, ''"
  })
  void stop_restsOnLaw_whereTheLawBinds(String id, String regions) {
    var bound =
        Content.bundled().regions().keySet().stream()
            .filter(region -> rule(id).grounds().stream().anyMatch(one -> one.isLawIn(region)))
            .collect(Collectors.joining(" "));
    assertEquals(regions, bound);
    assertEquals(Finding.Effect.STOP, rule(id).effect());
  }

  /**
   * A blade of 150 mm is the smallest for a saw that takes 250 mm: the example of <a
   * href="https://www.hse.gov.uk/woodworking/ripsaw.htm">HSE, circular rip saws</a>.
   */
  @Test
  void smallestBlade_asShareOfTheLargest_isAsPrinted() {
    var limits = Content.bundled().rulebook().vocabulary().limits();
    var parts = (Long) limits.get("blade_parts").value();
    var of = (Long) limits.get("blade_of_parts").value();
    assertEquals(150 * of, 250 * parts);
  }

  /** The figures to set are no laxer than the print that stands beside them. */
  @Test
  void figures_toSet_areNoLaxerThanPrinted() {
    assertTrue(action("fence-behind-the-teeth").contains("at most 18 mm"));
    assertTrue(action("blade-too-small-for-the-saw").contains("at least 60 %"));
    // 2 bar are 29.0 psi.
    assertTrue(action("dust-blown-about").contains("Below 2 bar (30 psi)"));
    assertTrue(action("runs-on-after-stop").contains("more than 10 s"));
  }

  private static String action(String id) {
    return rule(id).controls().stream().map(Control::action).collect(Collectors.joining(" "));
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
