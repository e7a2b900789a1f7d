package org.proofcut.core.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.shop.GearForTests;
import org.proofcut.core.shop.GearKind;
import org.proofcut.core.shop.GearLife;
import org.proofcut.core.shop.OwnedGear;
import org.proofcut.core.shop.OwnedGear.Rated;

class GearFormTest {

  /** As every piece was kept before there were classes and days. */
  @Test
  void oldPiece_isReadWithItsWordsAndNothingElse() {
    var typed = Map.of("name", "half mask", "rating", "P3", "place", "box 2", "unit", "mm");
    var read = read(GearForTests.MASK, typed).value().orElseThrow();
    assertEquals(new OwnedGear("id", "mask", "half mask", "P3", "box 2"), read);
  }

  @Test
  void everyField_isRead() {
    var typed = new HashMap<>(Map.of("name", "half mask", "class", "three", "place", "box 2"));
    typed.put("good-until", "3.11.2027");
    typed.put("inspect-by", "2027-05-01");
    typed.put("opened", "3 Nov 2026");
    typed.put("out-of-use", "yes");
    var read = read(GearForTests.MASK, typed).value().orElseThrow();
    assertEquals(Optional.of("three"), read.marked());
    assertEquals(
        new GearLife(Optional.of(LocalDate.of(2027, 11, 3)), Optional.of(LocalDate.of(2027, 5, 1))),
        read.life());
    assertEquals(Optional.of(LocalDate.of(2026, 11, 3)), read.opened());
    assertTrue(read.outOfUse());
  }

  @Test
  void classThatIsNotKnown_isNone_oneOfAnotherKindIsNoChoice() {
    var unknown = Map.of("name", "mask", "class", "unknown");
    assertEquals(Optional.empty(), read(GearForTests.MASK, unknown).value().orElseThrow().marked());
    assertEquals(
        List.of("class"), wrong(GearForTests.MASK, Map.of("name", "mask", "class", "handling")));
  }

  @Test
  void muffs_haveAFigureWithItsScale_orNeither() {
    var both = Map.of("name", "muffs", "decibels", "30", "scale", "SNR");
    var read = read(GearForTests.MUFFS, both).value().orElseThrow();
    assertEquals(Optional.of(new Rated(Rated.Scale.SNR, 30)), read.rated());
    assertEquals(
        List.of("scale"), wrong(GearForTests.MUFFS, Map.of("name", "muffs", "decibels", "30")));
    assertEquals(
        List.of("decibels"), wrong(GearForTests.MUFFS, Map.of("name", "muffs", "scale", "NRR")));
    assertEquals(
        List.of("decibels"),
        wrong(GearForTests.MUFFS, Map.of("name", "muffs", "scale", "NRR", "decibels", "51")));
    assertEquals(
        Optional.empty(),
        read(GearForTests.MUFFS, Map.of("name", "muffs")).value().orElseThrow().rated());
  }

  @Test
  void days_thatMightBeOthers_orRunBackwards_areRefusedAtTheirFields() {
    assertEquals(
        List.of("good-until"),
        wrong(GearForTests.MASK, Map.of("name", "mask", "good-until", "3/11/2027")));
    assertEquals(
        List.of("good-until"),
        wrong(
            GearForTests.MASK,
            Map.of("name", "mask", "good-until", "2026-11-02", "opened", "2026-11-03")));
    assertEquals(
        List.of(),
        wrong(
            GearForTests.MASK,
            Map.of("name", "mask", "good-until", "2026-11-03", "opened", "2026-11-03")));
  }

  private static Read<OwnedGear> read(GearKind kind, Map<String, String> typed) {
    return ShopForms.gear(kind).read("id", typed, LengthUnit.MILLIMETRE);
  }

  private static List<String> wrong(GearKind kind, Map<String, String> typed) {
    return read(kind, typed).problems().stream().map(Problem::where).toList();
  }
}
