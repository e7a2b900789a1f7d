package org.proofcut.core.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.exposure.DayAsked;

class NoiseFormTest {

  private static final int SHEETS = 4;

  @Test
  void read_nothing_isTheDayAsPlanned() {
    assertEquals(Optional.of(DayAsked.AS_PLANNED), NoiseForm.read(Map.of(), SHEETS).value());
    var empty = new HashMap<String, String>();
    NoiseForm.fields(SHEETS).forEach(field -> empty.put(field.name(), ""));
    assertEquals(Optional.of(DayAsked.AS_PLANNED), NoiseForm.read(empty, SHEETS).value());
  }

  @Test
  void read_everything_isUnderstood() {
    var day =
        NoiseForm.read(
                Map.of(
                    "done-2", "no",
                    "minutes-3", "12,5",
                    "other-2-what", "sanding",
                    "other-2-level", "91.5",
                    "other-2-minutes", "45",
                    "protector", "NRR 25",
                    "second", "SNR 30",
                    "c-over-a", "-2"),
                SHEETS)
            .value()
            .orElseThrow();
    assertEquals(Set.of(2), day.leftOut());
    assertEquals(Set.of(3), day.times().keySet());
    assertEquals(Duration.ofSeconds(750), day.times().get(3).value());
    assertEquals("sanding", day.others().get(0).what());
    assertEquals("91.5 dBA", day.others().get(0).level().value().text());
    assertEquals(Duration.ofMinutes(45), day.others().get(0).time().value());
    assertEquals("NRR 25", day.tried().orElseThrow().text());
    assertEquals("SNR 30", day.second().orElseThrow().text());
    assertEquals(-2, day.dbcOverDba().orElseThrow().value());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "done-1          | maybe",
        "minutes-1       | -1",
        "minutes-1       | 960.1",
        "minutes-1       | ten",
        "other-1-level   | 39.9",
        "other-1-level   | 140.1",
        "other-1-minutes | 5:30",
        "protector       | 25",
        "protector       | NRR 25, SNR 30",
        "second          | muffs",
        "c-over-a        | 2.5",
        "c-over-a        | 21",
      })
  void read_whatCantBeUnderstood_isToldAtItsField(String field, String text) {
    var typed =
        new HashMap<>(Map.of("other-1-what", "a", "other-1-level", "90", "other-1-minutes", "10"));
    typed.put(field, text);
    var read = NoiseForm.read(typed, SHEETS);
    assertEquals(Optional.empty(), read.value());
    assertEquals(List.of(field), read.problems().stream().map(Problem::where).toList());
  }

  @Test
  void other_halfEntered_asksForTheRest() {
    assertEquals(List.of("other-1-minutes"), wrong(Map.of("other-1-level", "95")));
    assertEquals(List.of("other-1-level"), wrong(Map.of("other-1-minutes", "5")));
    assertEquals(
        List.of("other-3-level", "other-3-minutes"), wrong(Map.of("other-3-what", "sanding")));
  }

  @Test
  void minutes_ofMoreThanADay_areRefused() {
    assertEquals(List.of(), wrong(Map.of("minutes-1", "960", "minutes-2", "480")));
    assertEquals(List.of("minutes-1"), wrong(Map.of("minutes-1", "960", "minutes-2", "480.1")));
    assertEquals(
        List.of(), wrong(Map.of("minutes-1", "960", "minutes-2", "480.1", "done-1", "no")));
  }

  @Test
  void fields_haveNamesOfTheirOwn() {
    var names = NoiseForm.fields(20).stream().map(Field::name).toList();
    assertEquals(names.size(), Set.copyOf(names).size());
    assertTrue(names.size() > 40);
  }

  private static List<String> wrong(Map<String, String> typed) {
    return NoiseForm.read(typed, SHEETS).problems().stream().map(Problem::where).toList();
  }
}
