package org.proofcut.core.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.proofcut.core.shop.GearForTests.TODAY;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class GearLifeTest {

  @Test
  void overOn_eachDayNamed_stillCounts() {
    var life = new GearLife(Optional.of(TODAY), Optional.of(TODAY.plusDays(1)));
    assertEquals(Optional.empty(), life.overOn(TODAY));
    assertEquals(Optional.of("was good until 10 May 2026"), life.overOn(TODAY.plusDays(1)));
    var looked = new GearLife(Optional.empty(), Optional.of(TODAY));
    assertEquals(Optional.empty(), looked.overOn(TODAY));
    assertEquals(
        Optional.of("was to be looked at by 10 May 2026"), looked.overOn(TODAY.plusDays(1)));
  }

  @Test
  void soonAfter_thirtyDays_isSoon_oneMoreIsNot_andWhatIsOverIsNot() {
    var life = new GearLife(Optional.of(TODAY.plusDays(30)), Optional.empty());
    assertEquals(Optional.of("good until 9 June 2026"), life.soonAfter(TODAY));
    assertEquals(Optional.empty(), life.soonAfter(TODAY.minusDays(1)));
    assertEquals(Optional.empty(), life.soonAfter(TODAY.plusDays(31)));
    var both = new GearLife(Optional.of(LocalDate.of(2040, 1, 1)), Optional.of(TODAY.plusDays(30)));
    assertEquals(Optional.of("to be looked at by 9 June 2026"), both.soonAfter(TODAY));
  }
}
