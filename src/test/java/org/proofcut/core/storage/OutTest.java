package org.proofcut.core.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OutTest {

  private static final LocalDate TODAY = LocalDate.of(2027, 1, 1);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2027-01-01 | with Ash, since today",
        "2026-12-31 | with Ash, since yesterday",
        "2026-12-30 | with Ash, since 30 December 2026"
      })
  void words_sayTheDay_asOneDoes(LocalDate since, String words) {
    assertEquals(words, new Out("Ash", since).words(TODAY));
  }

  @Test
  void words_inTheSameYear_leaveItOut() {
    assertEquals(
        "with Ash, since 24 November",
        new Out("Ash", LocalDate.of(2027, 11, 24)).words(LocalDate.of(2027, 11, 26)));
  }

  @Test
  void isFromBefore_fromTheNextDayOn() {
    assertFalse(new Out("Ash", TODAY).isFromBefore(TODAY));
    assertTrue(new Out("Ash", TODAY.minusDays(1)).isFromBefore(TODAY));
  }

  /** Looking at it while somebody has it does not make it come back, nor begin anew. */
  @Test
  void state_isOutSinceItWasTaken_untilItIsPutBackOrReplaced() {
    var taken = entry(1, new GearAct.TakenOut("Ash"));
    var looked = entry(2, new GearAct.LookedAt("look", true, "", Optional.empty()));
    var out = Optional.of(new Out("Ash", TODAY.plusDays(1)));
    assertEquals(out, out(taken));
    assertEquals(out, out(taken, looked));
    assertEquals(out, out(taken, entry(2, new GearAct.Mended(""))));
    assertEquals(Optional.empty(), out(taken, looked, entry(3, new GearAct.PutBack("Rowan"))));
    assertEquals(
        Optional.empty(), out(taken, entry(2, new GearAct.Replaced("", Optional.empty()))));
  }

  private static Optional<Out> out(GearEntry... entries) {
    return GearState.of(List.of(entries)).get("muffs").out();
  }

  private static GearEntry entry(int day, GearAct act) {
    return new GearEntry("entry-" + day, "muffs", TODAY.plusDays(day), act);
  }
}
