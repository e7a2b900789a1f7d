package org.proofcut.core.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Signal words as ANSI Z535.4 defines them (2007 text, found in a secondary copy): danger will
 * cause death or serious injury, warning could; caution could cause minor or moderate injury;
 * notice is not about injury.
 */
class SignalWordPublishedTest {

  @ParameterizedTest
  @CsvSource({
    "KILL_OR_MAIM, WILL, DANGER",
    "KILL_OR_MAIM, COULD, WARNING",
    "MINOR_OR_MODERATE, COULD, CAUTION",
    "THINGS_ONLY, COULD, NOTICE",
    "THINGS_ONLY, WILL, NOTICE"
  })
  void of_severityAndLikelihood_isTheDefinedWord(
      SignalWord.Severity severity, SignalWord.Likelihood likelihood, SignalWord expected) {
    assertEquals(expected, SignalWord.of(severity, likelihood));
  }

  @Test
  void order_ofTheWords_isByGravity() {
    assertTrue(SignalWord.DANGER.compareTo(SignalWord.WARNING) < 0);
    assertTrue(SignalWord.WARNING.compareTo(SignalWord.CAUTION) < 0);
    assertTrue(SignalWord.CAUTION.compareTo(SignalWord.NOTICE) < 0);
  }
}
