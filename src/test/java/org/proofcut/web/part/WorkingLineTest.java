package org.proofcut.web.part;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.display.Scale;

class WorkingLineTest {

  @Test
  void of_widthBetweenTheSides_saysEachLineWithItsSource() {
    var width = Worked.entered("case width", Length.of("600 mm"));
    var side = Worked.measured("side", Length.of("17.72 mm"));
    var inside =
        Worked.called("width between the sides")
            .by("case width − two sides")
            .with(width)
            .with("sides", side)
            .is(Length.of("564.56 mm"));
    assertEquals(
        List.of(
            new WorkingLine("case width", "", List.of(), "600 mm", "entered"),
            new WorkingLine("side", "", List.of(), "17.7 mm (exactly 17.72 mm)", "measured"),
            new WorkingLine(
                "width between the sides",
                "case width − two sides",
                List.of(
                    new WorkingLine.Put("case width", "600 mm"),
                    new WorkingLine.Put("sides", "17.7 mm (exactly 17.72 mm)")),
                "564.6 mm (exactly 564.56 mm)",
                "follows from geometry (geometry)")),
        WorkingLine.of(inside, Scale.TENTH_MILLIMETRE));
  }

  @Test
  void of_severalReadings_writesEach() {
    var readings = Worked.measured("readings", List.of(Length.of("17.7 mm"), Length.of("17.8 mm")));
    assertEquals(
        "17.70 mm, 17.80 mm", WorkingLine.of(readings, Scale.HUNDREDTH_MILLIMETRE).get(0).result());
  }

  @Test
  void of_aTime_writesMinutesAndSeconds() {
    var time = Worked.measured("time", Duration.ofSeconds(3_725));
    assertEquals("62 min 5 s", WorkingLine.of(time, Scale.TENTH_MILLIMETRE).get(0).result());
  }
}
