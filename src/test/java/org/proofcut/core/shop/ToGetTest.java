package org.proofcut.core.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.shop.GearForTests.MASK;
import static org.proofcut.core.shop.GearForTests.TODAY;
import static org.proofcut.core.shop.GearForTests.piece;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.proofcut.core.shop.ToGet.Wanted;

class ToGetTest {

  @Test
  void of_whatIsThere_isNothing() {
    assertEquals(List.of(), toGet(piece(MASK, "mask", "two", TODAY.plusDays(31))));
  }

  @Test
  void of_whatEndsWithinThirtyDays_saysItsLastDay() {
    var one = toGet(piece(MASK, "mask", "two", TODAY.plusDays(29))).get(0);
    assertEquals(Optional.of(TODAY.plusDays(29)), one.until());
    assertEquals(List.of(), toGet(piece(MASK, "mask", "two", TODAY.plusDays(30))));
  }

  @Test
  void of_twoThatEndSoon_lastsAsLongAsTheLater() {
    var one =
        toGet(
                piece(MASK, "first", "two", TODAY.plusDays(2)),
                piece(MASK, "second", "two", TODAY.plusDays(5)))
            .get(0);
    assertEquals(Optional.of(TODAY.plusDays(5)), one.until());
  }

  @Test
  void of_outOfDate_isMissingAndSaysWhy() {
    var one = toGet(piece(MASK, "mask", "two", TODAY.minusDays(1))).get(0);
    assertTrue(one.isMissing());
    assertEquals(List.of("mask: was good until 9 May 2026"), one.why());
  }

  @Test
  void of_sameNeedTwice_standsOnceWithBoth_missingBeforeSoon() {
    var soon = offer("one", piece(MASK, "weak", "one", TODAY.plusDays(3)));
    var missing = offer("two", piece(MASK, "weak", "one", TODAY.plusDays(3)));
    var all =
        ToGet.of(
            List.of(
                new Wanted("sheet 1", soon),
                new Wanted("sheet 2", missing),
                new Wanted("sheet 3", missing),
                new Wanted("sheet 3", missing)),
            TODAY);
    assertEquals(
        List.of("mask, mark two", "mask, mark one"), all.stream().map(ToGet::wanted).toList());
    assertEquals(List.of("sheet 2", "sheet 3"), all.get(0).forWhat());
  }

  private static List<ToGet> toGet(OwnedGear... owned) {
    return ToGet.of(List.of(new Wanted("sheet 1", offer("two", owned))), TODAY);
  }

  private static GearOffer offer(String least, OwnedGear... owned) {
    return GearOffer.of(MASK, List.of(least), List.of(owned), false);
  }
}
