package org.proofcut.core.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.shop.GearLife;

class AsAidTest {

  private static final AsAid PUSH_STICK =
      new AsAid("push-stick", Optional.of(Length.of("450 mm")), Citation.OWN_CHOICE);

  private static final OwnedKit STICK =
      new OwnedKit("stick", "push-stick", "ash stick", Optional.empty(), GearLife.UNDATED, false);

  @Nested
  class Of {

    /** However it is kept, its longest size is its length. */
    @ParameterizedTest
    @CsvSource({"70 mm, 450 mm, 20 mm", "450 mm, 70 mm, 20 mm", "20 mm, 70 mm, 450.1 mm"})
    void of_longEnough_counts(String wide, String high, String deep) {
      assertEquals(Optional.empty(), unfit(kept(wide, high, deep), LengthUnit.MILLIMETRE));
    }

    @Test
    void of_shorter_saysHowLongItIs_andWhatIsNeeded_inTheUnitOfTheShop() {
      var shorter = kept("70 mm", "449.5 mm", "20 mm");
      assertEquals(
          Optional.of("449.5 mm long; needed: 450 mm"), unfit(shorter, LengthUnit.MILLIMETRE));
      assertEquals(
          Optional.of("12 in long; needed: 17 23/32 in"),
          unfit(kept("1 in", "12 in", "1/2 in"), LengthUnit.INCH));
    }

    /** Whatever was not measured may be what is too short. */
    @Test
    void of_notMeasured_isNotTakenForLongEnough() {
      assertEquals(
          Optional.of("its length is not entered; needed: 450 mm"),
          unfit(kept("70 mm", null, "20 mm"), LengthUnit.MILLIMETRE));
      assertEquals(
          Optional.empty(),
          unfit(kept(null, "450 mm", null), LengthUnit.MILLIMETRE),
          "it is known");
    }

    @Test
    void of_whereAnyLengthWillDo_counts() {
      var any = new AsAid("push-block", Optional.empty(), Citation.OWN_CHOICE);
      assertEquals(
          Optional.empty(),
          any.of(STICK, "", Optional.empty(), kept(null, null, null), LengthUnit.INCH).unfit());
    }

    @Test
    void of_idle_saysThatFirst_andKeepsItsPlace() {
      var idle = Optional.of("out of use");
      var aid = PUSH_STICK.of(STICK, "hook 1", idle, kept(null, null, null), LengthUnit.INCH);
      assertEquals(idle, aid.unfit());
      assertEquals("hook 1", aid.place());
      assertEquals("push-stick", aid.kind());
      assertEquals("ash stick", aid.name());
    }
  }

  private static Optional<String> unfit(KeptAs kept, LengthUnit unit) {
    return PUSH_STICK.of(STICK, "", Optional.empty(), kept, unit).unfit();
  }

  private static KeptAs kept(String wide, String high, String deep) {
    return new KeptAs(
        Optional.empty(),
        length(wide),
        length(high),
        length(deep),
        Optional.empty(),
        false,
        Optional.empty(),
        Set.of(),
        Optional.empty());
  }

  private static Optional<Length> length(String text) {
    return Optional.ofNullable(text).map(Length::of);
  }
}
