package org.proofcut.core.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.casework.CasesForTests.FIT;

import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.readings.Readings;

/** Limits of common practice: 0.05, 0.10, 0.25 and 0.30 mm of room; 0.20 mm proud. */
class FitTest {

  private static final Worked<Length> FLUSH = Worked.entered("set-in", Length.ZERO);

  @ParameterizedTest
  @CsvSource({
    "-0.001 mm, WILL_NOT_ENTER",
    "0 mm, MALLET",
    "0.049 mm, MALLET",
    "0.05 mm, SNUG",
    "0.099 mm, SNUG",
    "0.10 mm, RIGHT",
    "0.25 mm, RIGHT",
    "0.251 mm, SCREWED_ONLY",
    "0.30 mm, SCREWED_ONLY",
    "0.301 mm, LOOSE"
  })
  void tightness_atAndBesideEachLimit(String room, Tightness expected) {
    assertEquals(expected, Tightness.of(Length.of(room), FIT));
  }

  @Nested
  class Slots {

    @Test
    void slot_isJudgedAtBothEndsOfTheReadings() {
      var slot = SlotFit.of(readings("17.66 mm", "17.78 mm", "17.70 mm"), FIT);
      // (17.66 + 17.78) ÷ 2 + 0.15
      assertEquals(Length.of("17.87 mm"), slot.target().value());
      // 17.78 + 0.05 to 17.66 + 0.25
      assertEquals(Optional.of(band("17.83 mm", "17.91 mm")), slot.accepted());
    }

    @Test
    void room_isNarrowestWithTheThickest_widestWithTheThinnest() {
      var slot = SlotFit.of(readings("17.66 mm", "17.78 mm"), FIT);
      assertEquals(band("0.05 mm", "0.25 mm"), slot.room(band("17.83 mm", "17.91 mm")));
      assertEquals(band("0.04 mm", "0.26 mm"), slot.room(band("17.82 mm", "17.92 mm")));
    }

    @Test
    void spread_ofExactlyTheWindow_leavesOneWidth_more_leavesNone() {
      assertEquals(Length.of("0.2 mm"), SlotFit.mostSpread(FIT));
      var justServes = SlotFit.of(readings("17.50 mm", "17.70 mm"), FIT);
      assertEquals(Optional.of(band("17.75 mm", "17.75 mm")), justServes.accepted());
      assertEquals(Length.of("17.75 mm"), justServes.target().value());
      assertTrue(SlotFit.of(readings("17.50 mm", "17.701 mm"), FIT).accepted().isEmpty());
    }

    @Test
    void target_liesInWhatIsAccepted_inInchesToo() {
      var slot = SlotFit.of(readings("0.703 in", "0.705 in"), FIT);
      // 0.704 in = 17.8816 mm, and 0.15 mm
      assertEquals(Length.of("18.0316 mm"), slot.target().value());
      assertTrue(slot.accepted().orElseThrow().contains(slot.target().value()));
    }
  }

  @Nested
  class Rabbets {

    @Test
    void rabbet_leavesTheCutPartFlushOrALittleProud() {
      var flush = FlushFit.of(readings("5.60 mm", "5.66 mm"), FLUSH, FIT);
      // 5.66 to 5.60 + 0.20; aimed half way
      assertEquals(Optional.of(band("5.66 mm", "5.80 mm")), flush.accepted());
      assertEquals(Length.of("5.73 mm"), flush.target().value());
    }

    @Test
    void setIn_movesBothEndsAndTheTarget() {
      var setIn = Worked.entered("set-in", Length.of("2 mm"));
      var flush = FlushFit.of(readings("5.60 mm", "5.66 mm"), setIn, FIT);
      assertEquals(Optional.of(band("7.66 mm", "7.80 mm")), flush.accepted());
      assertEquals(Length.of("7.73 mm"), flush.target().value());
    }

    @Test
    void spread_ofExactlyMostProud_leavesOneWidth_more_leavesNone() {
      var justServes = FlushFit.of(readings("17.50 mm", "17.70 mm"), FLUSH, FIT);
      assertEquals(Optional.of(band("17.70 mm", "17.70 mm")), justServes.accepted());
      assertEquals(Length.of("17.70 mm"), justServes.target().value());
      assertTrue(FlushFit.of(readings("17.50 mm", "17.701 mm"), FLUSH, FIT).accepted().isEmpty());
    }
  }

  private static Readings readings(String... all) {
    return new Readings("sheet", Stream.of(all).map(Length::of).toList());
  }

  private static Band band(String least, String most) {
    return new Band(Length.of(least), Length.of(most));
  }
}
