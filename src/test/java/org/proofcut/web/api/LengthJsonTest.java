package org.proofcut.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;

class LengthJsonTest {

  private static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");

  @Test
  void plain_fractionOfAnInch_isExactInBothUnits() {
    var length = LengthJson.plain(Length.of("23/32 in"), LengthUnit.MILLIMETRE);
    assertEquals(
        new LengthJson.Plain("18.25625", "0.71875", true, "18.26 mm", "mm", "-0.00375 mm"), length);
  }

  @Test
  void plain_millimetres_sayThatInchesHaveNoEnd() {
    var length = LengthJson.plain(Length.of("18.25 mm"), LengthUnit.INCH);
    assertEquals("18.25", length.mm());
    assertEquals("0.718503937", length.in());
    assertFalse(length.inIsExact());
    assertEquals("0.719 in", length.shown());
  }

  @Property
  void plain_inches_areExactWhereTheySaySo(
      @ForAll @LongRange(min = -9_000_000_000_000_000L, max = 9_000_000_000_000_000L)
          long picometres) {
    var length = LengthJson.plain(new Length(picometres), LengthUnit.MILLIMETRE);
    var back = new BigDecimal(length.in()).multiply(MM_PER_INCH);
    assertEquals(length.inIsExact(), back.compareTo(new BigDecimal(length.mm())) == 0);
  }

  @Property
  void plain_wholeParts_ofAnInchAreExact(@ForAll @LongRange(min = 0, max = 100_000) long parts) {
    assertTrue(LengthJson.plain(Length.ofInches(parts, 128), LengthUnit.INCH).inIsExact());
  }

  @Test
  void figure_computed_carriesItsLines() {
    var width = Worked.entered("case width", Length.of("620 mm"));
    var side = Worked.measured("side", Length.of("17.725 mm"));
    var inside =
        Worked.called("inside")
            .by("case width − side − side")
            .with(width)
            .with(side)
            .is(Length.of("584.55 mm"));
    var figure = LengthJson.figure(inside, LengthUnit.MILLIMETRE);
    assertEquals(3, figure.working().size());
    assertEquals("584.55 mm", figure.working().get(2).result());
    assertEquals("follows from geometry (geometry)", figure.source());
  }
}
