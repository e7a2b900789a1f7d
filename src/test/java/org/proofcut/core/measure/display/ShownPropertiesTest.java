package org.proofcut.core.measure.display;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.proofcut.core.measure.Length;

/** What holds for every length that is shown. */
class ShownPropertiesTest {

  @Property
  void show_anyLength_readBackWithItsLeftoverIsExact(
      @ForAll @LongRange(min = -90_000_000_000_000L, max = 90_000_000_000_000L) long picometres,
      @ForAll Scale scale) {
    var length = new Length(picometres);
    var shown = scale.show(length);
    assertEquals(length, Length.of(shown.text()).plus(shown.leftover()));
    assertTrue(shown.leftover().abs().times(2).isAtMost(scale.step()));
  }
}
