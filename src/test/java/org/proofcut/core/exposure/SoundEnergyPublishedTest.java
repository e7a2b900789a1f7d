package org.proofcut.core.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;

/** Energies that add up, as printed. */
class SoundEnergyPublishedTest {

  /**
   * A woodworkers' page on noise, found in a stored copy: two table saws of 100 dB each are 103 dB
   * together. To 0.1 dB upward that is 103.1.
   */
  @Test
  void twoOfTheSame_areThreeDecibelsMore() {
    assertEquals(new BigDecimal("103.1"), together("100", "100"));
  }

  /**
   * A page of an electronics engineer on generators, found in a stored copy: 106 dBA with one 6 dBA
   * lower are 106.97 dBA.
   */
  @Test
  void oneOfSixLess_addsNearlyOne() {
    assertEquals(new BigDecimal("107.0"), together("106", "100"));
  }

  /**
   * A page of an institute of sound on the British rules, found in a stored copy: for a working day
   * of eight hours the average level is the daily personal exposure.
   */
  @Test
  void dailyLevel_ofEightHours_isTheAverageLevel() {
    var stay = new Stay(dba("91.5"), Worked.entered("time", Duration.ofHours(8)));
    assertEquals(new BigDecimal("91.50"), SoundEnergy.dailyLevel(List.of(stay)).value().value());
  }

  private static BigDecimal together(String one, String other) {
    return SoundEnergy.together(dba(one), dba(other)).value().value();
  }

  private static Worked<Amount> dba(String level) {
    return Worked.measured("level", new Amount(new BigDecimal(level), "dBA"));
  }
}
