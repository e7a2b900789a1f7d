package org.proofcut.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.NoiseLaw;
import org.proofcut.core.exposure.NoiseRule;
import org.proofcut.core.exposure.Stay;

/**
 * The laws of noise as content has them, against print.
 *
 * <p>29 CFR 1910.95 of the United States: (c)(1), 85 dBA over eight hours or half the dose, found
 * in a secondary copy, its number from memory; (b)(1) with Table G-16, 90 dBA for eight hours and
 * 115 dBA at most, found in secondary copies; (j)(2) and (j)(3), 90 and 85 dBA under a protector,
 * found in a secondary copy. Great Britain and the European Union, 80, 85 and 87 dB(A): Control of
 * Noise at Work Regulations 2005 and Directive 2003/10/EC, found in secondary copies, numbers of
 * regulations and articles from memory. NIOSH 98-126: 85 dBA over eight hours, Table 1-1, found in
 * a secondary copy.
 */
class NoiseLawsPublishedTest {

  private final NoiseContent noise = Content.bundled().noise();

  @ParameterizedTest
  @CsvSource({
    "us, 85, false",
    "us, 90, true",
    "us-washington, 85, false",
    "us-washington, 90, true",
    "gb, 80, false",
    "gb, 85, false",
    "gb, 87, true",
    "eu, 80, false",
    "eu, 85, false",
    "eu, 87, true",
    "elsewhere, 85, false"
  })
  void step_standsAsPrinted_andIsReachedThereAndNotBefore(
      String region, BigDecimal printed, boolean above) {
    var step =
        noise.lawIn(region).steps().stream()
            .filter(one -> one.at().value().compareTo(printed) == 0)
            .findFirst()
            .orElseThrow();
    var hundredth = new BigDecimal("0.01");
    assertFalse(step.isReached(dba(printed.subtract(hundredth))));
    assertEquals(!above, step.isReached(dba(printed)));
    assertTrue(step.isReached(dba(printed.add(hundredth))));
  }

  /** Eight hours at the action level are half the dose, at the limit the whole. */
  @ParameterizedTest
  @CsvSource({"85, 50.00", "90, 100.00"})
  void stepsOfTheUnitedStates_areTheDosesThatTheyAreCalled(String level, String dose) {
    var day = new Stay(Worked.entered("level", dba(new BigDecimal(level))), hours(8));
    assertEquals(new BigDecimal(dose), NoiseRule.PERMITTED_US.dose(List.of(day)).value().value());
  }

  @Test
  void underAProtector_unitedStates_leavesNinetyAndBetterEightyFive() {
    var law = noise.lawIn("us");
    assertEquals(dba(new BigDecimal("90")), law.mayBeLeft().at());
    assertEquals(dba(new BigDecimal("85")), law.better().at());
    assertEquals(dba(new BigDecimal("115")), law.ceiling().orElseThrow().at());
  }

  @Test
  void laws_areLawOnlyWhereTheyBind() {
    for (var region : List.of("us", "us-washington", "gb", "eu")) {
      for (var step : noise.lawIn(region).steps()) {
        assertEquals(Citation.Kind.LAW, step.because().kind(), region + " " + step.name());
      }
    }
    assertTrue(
        noise.lawIn("elsewhere").steps().stream()
            .map(NoiseLaw.Step::because)
            .noneMatch(because -> because.kind() == Citation.Kind.LAW));
  }

  private static Worked<Duration> hours(int hours) {
    return Worked.entered("time", Duration.ofHours(hours));
  }

  private static Amount dba(BigDecimal value) {
    return new Amount(value, "dBA");
  }
}
