package org.proofcut.core.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.proofcut.content.Content;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.operation.HandTask;
import org.proofcut.core.shop.Liquid;
import org.proofcut.core.shop.Shop;
import org.proofcut.core.weight.Densities;

class HandFormsTest {

  private static final Content CONTENT = Content.bundled();

  private static final Liquid VARNISH =
      new Liquid(
          "tin-7",
          CONTENT.liquids().get("oil-varnish"),
          "varnish of the blue tin",
          Optional.empty(),
          Optional.empty(),
          true,
          "folder",
          "");

  private static final Shop SHOP =
      new Shop(
          "hut",
          Shop.ELSEWHERE,
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          false,
          List.of(VARNISH),
          List.of());

  static List<HandForm> forms() {
    return HandForms.all(CONTENT.liquids(), CONTENT.limits(Densities.class));
  }

  private static HandForm form(String kind) {
    return forms().stream().filter(form -> form.kind().equals(kind)).findFirst().orElseThrow();
  }

  private static HandTask task(String kind, String... changed) {
    return form(kind).read(HandTyped.with(kind, changed), SHOP).value().orElseThrow();
  }

  private static List<String> wrong(String kind, String... changed) {
    return form(kind).read(HandTyped.with(kind, changed), SHOP).problems().stream()
        .map(Problem::where)
        .toList();
  }

  @Test
  void examples_areOneForEachKind() {
    assertEquals(
        HandTyped.byKind().keySet().stream().toList(),
        forms().stream().map(HandForm::kind).toList());
  }

  @ParameterizedTest
  @MethodSource("forms")
  void read_example_isATaskOfItsKind(HandForm form) {
    assertEquals(form.kind(), task(form.kind()).kind().id());
  }

  /** 2440 · 1220 · 18 mm at 750 kg/m³ are 40.187 kg. */
  @Test
  void carry_weighsTheHeavyEnd_inTheUnitChosen() {
    assertEquals("40.2 kg", task("carry").figures().get(0).value().toString());
    var inches = task("carry", "unit", "in", "length", "96", "width", "48", "thickness", "18 mm");
    // 96 · 48 in · 18 mm · 750 kg/m³ = 40.134 kg = 88.48 lb
    assertEquals("88.5 lb", inches.figures().get(0).value().toString());
  }

  @Test
  void carry_longestSide_isWhicheverIsLonger() {
    var carry = (HandTask.Carry) task("carry", "length", "300", "width", "900");
    assertEquals("900 mm", carry.longest().toString());
  }

  @Test
  void finish_ownTin_isFoundByItsId() {
    assertEquals(Optional.of(VARNISH), task("finish", "finish", "tin-7").liquid());
    assertTrue(wrong("fasten", "glue", "tin-7").contains("glue"), "a varnish is no glue");
    assertTrue(wrong("finish", "finish", "kind:epoxy").contains("finish"));
  }

  @Test
  void cleanUp_ragsWetWithNothing_areAskedAbout() {
    assertEquals(List.of("liquid"), wrong("clean-up", "liquid", "none"));
    assertEquals(List.of("liquid"), wrong("clean-up", "what", "solvent", "liquid", "none"));
    assertEquals(List.of(), wrong("clean-up", "what", "dust", "liquid", "none"));
    assertEquals(Optional.empty(), task("clean-up", "what", "dust").liquid());
  }

  @Test
  void sand_byHand_hasNoExtractor() {
    var sand = (HandTask.Sand) task("sand", "by", "hand", "extracted", "yes");
    assertEquals(false, sand.extracted());
  }
}
