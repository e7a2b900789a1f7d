package org.proofcut.core.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DateTextTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2027-11-03",
        "2027-11-3",
        "3.11.2027",
        "03.11.2027",
        "3. 11. 2027",
        "3 November 2027",
        "3 nov 2027",
        "3. Nov. 2027",
        "  2027-11-03 "
      })
  void read_asPeopleWriteIt_isThatDay(String typed) {
    assertEquals(Optional.of(LocalDate.of(2027, 11, 3)), DateText.read(typed));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "3/11/2027",
        "13/11/2027",
        "3-11-2027",
        "3.11.27",
        "11.2027",
        "2027",
        "2027-11",
        "2027-13-01",
        "2027-02-30",
        "31.4.2027",
        "0.1.2027",
        "1999-12-31",
        "2100-01-01",
        "3 Novem 2027",
        "November 3, 2027",
        "tomorrow",
        "٣.11.2027",
        ""
      })
  void read_whatMightBeAnotherDay_isRefused(String typed) {
    assertEquals(Optional.empty(), DateText.read(typed));
  }

  @Test
  void read_leapDay_isReadInALeapYearAlone() {
    assertEquals(Optional.of(LocalDate.of(2028, 2, 29)), DateText.read("29.2.2028"));
    assertEquals(Optional.empty(), DateText.read("29.2.2027"));
  }

  @Property
  void everyDay_inEachWayOfWriting_isReadBack(@ForAll @IntRange(min = 0, max = 36_524) int days) {
    var day = LocalDate.of(2000, 1, 1).plusDays(days);
    assertEquals(Optional.of(day), DateText.read(day.toString()));
    assertEquals(Optional.of(day), DateText.read(DateText.said(day)));
    assertEquals(
        Optional.of(day),
        DateText.read(day.getDayOfMonth() + "." + day.getMonthValue() + "." + day.getYear()));
  }
}
