package org.proofcut.core.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.shop.GearForTests;
import org.proofcut.core.shop.GearLife;
import org.proofcut.core.storage.KeptAs;
import org.proofcut.core.storage.OwnedKit;
import org.proofcut.core.storage.Posture;
import org.proofcut.core.storage.Size;
import org.proofcut.core.storage.Soil;
import org.proofcut.core.storage.ThingKind;
import org.proofcut.core.storage.Use;

class KeptFormTest {

  private static final ThingKind HALF = kind("half-mask", Optional.of("mask"));
  private static final ThingKind PAPER = kind("paper-masks", Optional.of("mask"));
  private static final ThingKind AID = kind("first-aid-kit", Optional.empty());
  private static final List<Field.Choice> CABINETS =
      List.of(new Field.Choice("c1", "gear cabinet"), new Field.Choice("c2", "by the bench"));
  private static final KeptForm MASKS = KeptForm.among(List.of(HALF, PAPER), CABINETS);

  private static final Map<String, String> ALL =
      Map.of(
          "kept-kind", "paper-masks",
          "kept-width", "130 mm",
          "kept-height", "15 cm",
          "kept-depth", "4 in",
          "kept-weight", "80.5 g",
          "kept-boxed", "yes",
          "kept-use", "every-day",
          "kept-users", "Ilse,  Tomo",
          "kept-in", "c2");

  private static ThingKind kind(String id, Optional<String> gear) {
    return new ThingKind(
        id,
        id.replace('-', ' '),
        gear,
        new Size(mm(100), mm(90), mm(80)),
        new Size(mm(200), mm(190), mm(180)),
        100,
        900,
        List.of(Posture.STANDING),
        List.of(),
        Soil.CLEAN,
        Use.SELDOM,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Citation.OWN_CHOICE);
  }

  private static Length mm(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  @Test
  void all_isReadAsTyped_weightsRoundedUp() {
    assertEquals(
        new KeptAs(
            Optional.of("paper-masks"),
            Optional.of(mm(130)),
            Optional.of(mm(150)),
            Optional.of(Length.of("101.6 mm")),
            Optional.of(81),
            true,
            Optional.of(Use.EVERY_DAY),
            Set.of("Ilse", "Tomo"),
            Optional.of("c2")),
        MASKS.kept(ALL, LengthUnit.MILLIMETRE));
  }

  @Test
  void nothing_takesTheGreatestOfItsKind_andSaysSo() {
    var kept = MASKS.kept(Map.of("name", "half mask"), LengthUnit.MILLIMETRE);
    var thing = kept.thing("id", "half mask", HALF);
    assertEquals(HALF.most(), thing.size());
    assertEquals(900, thing.grams());
    assertEquals(Use.SELDOM, thing.use());
    assertEquals(List.of("width", "height", "depth", "weight"), kept.assumed());
    assertEquals(
        List.of("depth"),
        MASKS
            .kept(
                Map.of("kept-width", "1 in", "kept-height", "1 in", "kept-weight", "1 lb"),
                LengthUnit.INCH)
            .assumed());
  }

  @Test
  void bareNumbers_takeTheUnitOfThePiece() {
    var inches = MASKS.kept(Map.of("kept-width", "5", "kept-weight", "1"), LengthUnit.INCH);
    assertEquals(Optional.of(Length.of("127 mm")), inches.wide());
    assertEquals(Optional.of(454), inches.grams());
  }

  /** The cabinet was taken out, content knows the kind no longer: the piece stays in the shop. */
  @Test
  void whatCanNotBeReadAnyMore_countsAsNotSaid() {
    var typed = new HashMap<>(ALL);
    typed.put("kept-in", "c3");
    typed.put("kept-kind", "gone");
    var kept = MASKS.kept(typed, LengthUnit.MILLIMETRE);
    assertEquals(Optional.empty(), kept.cabinet());
    assertEquals(Optional.empty(), kept.kind());
    assertEquals(Optional.of(mm(130)), kept.wide());
  }

  @Test
  void rubbish_inAnyField_isToldAtThatField_asThePieceIsKept() {
    var form = ShopForms.gear(GearForTests.MASK, MASKS);
    for (var field : MASKS.fields()) {
      var typed = new HashMap<>(ALL);
      typed.put("name", "mask");
      assertTrue(form.read("id", typed, LengthUnit.MILLIMETRE).value().isPresent());
      typed.put(field.name(), field.name().equals("kept-users") ? "a\u0007b" : "rubbish");
      var wrong = form.read("id", typed, LengthUnit.MILLIMETRE).problems();
      assertEquals(List.of(field.name()), wrong.stream().map(Problem::where).toList());
    }
  }

  @Test
  void kindIsAsked_onlyWhereThereAreSeveral() {
    var names = KeptForm.among(List.of(HALF), CABINETS).fields().stream().map(Field::name);
    assertTrue(names.noneMatch("kept-kind"::equals));
    assertEquals("kept-kind", MASKS.fields().get(0).name());
  }

  /** As every piece was kept before this was asked. */
  @Test
  void oldPiece_isReadByBothForms() {
    var typed = Map.of("name", "half mask", "rating", "P3", "place", "box 2", "unit", "mm");
    assertEquals(
        ShopForms.gear(GearForTests.MASK).read("id", typed, LengthUnit.MILLIMETRE),
        ShopForms.gear(GearForTests.MASK, MASKS).read("id", typed, LengthUnit.MILLIMETRE));
  }

  @Test
  void kit_isReadWithItsDays() {
    var form = ShopForms.kit(AID, KeptForm.known(CABINETS));
    var typed = new HashMap<>(Map.of("name", "large kit", "good-until", "2027-11-03"));
    typed.put("opened", "2026-01-02");
    typed.put("inspect-by", "2026-12-01");
    typed.put("out-of-use", "yes");
    var kit = form.read("id", typed, LengthUnit.MILLIMETRE).value().orElseThrow();
    assertEquals(
        new OwnedKit(
            "id",
            "first-aid-kit",
            "large kit",
            Optional.of(LocalDate.of(2026, 1, 2)),
            new GearLife(
                Optional.of(LocalDate.of(2027, 11, 3)), Optional.of(LocalDate.of(2026, 12, 1))),
            true),
        kit);
    assertEquals(Optional.of("out of use"), kit.idleOn(LocalDate.of(2026, 2, 1)));
    for (var field : form.fields()) {
      var broken = new HashMap<>(typed);
      broken.put(
          field.name(),
          List.of("name", "kept-users").contains(field.name()) ? "\u0007" : "rubbish");
      var wrong = form.read("id", broken, LengthUnit.MILLIMETRE).problems();
      assertEquals(List.of(field.name()), wrong.stream().map(Problem::where).toList());
    }
  }
}
