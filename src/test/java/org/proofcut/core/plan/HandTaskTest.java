package org.proofcut.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.proofcut.content.Content;
import org.proofcut.core.casework.CaseLimits;
import org.proofcut.core.checklist.Item;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.intake.HandForm;
import org.proofcut.core.intake.HandForms;
import org.proofcut.core.intake.HandTyped;
import org.proofcut.core.operation.OperationLimits;
import org.proofcut.core.safety.Check.Pause;
import org.proofcut.core.safety.Finding;
import org.proofcut.core.shop.OwnedGear;
import org.proofcut.core.shop.Shop;
import org.proofcut.core.weight.Densities;

/** What the rules of the house say of work by hand. */
class HandTaskTest {

  private static final Content CONTENT = Content.bundled();

  private static final Planner PLANNER =
      new Planner(
          new Book(
              CONTENT.limits(CaseLimits.class),
              CONTENT.limits(FitLimits.class),
              CONTENT.setupLimits(),
              CONTENT.limits(OperationLimits.class),
              CONTENT.rulebook(),
              CONTENT.wording()));

  private static final List<HandForm> FORMS =
      HandForms.all(CONTENT.liquids(), CONTENT.limits(Densities.class));

  private static Shop shop(String region, List<String> aids, OwnedGear... gear) {
    return new Shop("hut", region, List.of(), List.of(), List.of(gear), aids);
  }

  private static final Shop BARE = shop(Shop.ELSEWHERE, List.of());

  private static OperationSheet sheet(Shop shop, String kind, String... changed) {
    var form = FORMS.stream().filter(one -> one.kind().equals(kind)).findFirst().orElseThrow();
    var task = form.read(HandTyped.with(kind, changed), shop).value().orElseThrow();
    return PLANNER.plan(task, shop).sheet();
  }

  private static List<String> rules(OperationSheet sheet) {
    return sheet.findings().stream().map(Finding::rule).toList();
  }

  private static List<String> gear(OperationSheet sheet) {
    return sheet.checklist().items().stream()
        .filter(Item.Gear.class::isInstance)
        .map(Item.Gear.class::cast)
        .map(Item.Gear::kind)
        .toList();
  }

  /** Every kind, with every answer of every choice that it asks. */
  static Stream<OperationSheet> everything() {
    return FORMS.stream()
        .flatMap(
            form ->
                Stream.of(BARE, shop("us-washington", List.of("eye-wash", "extinguisher")))
                    .flatMap(
                        shop ->
                            form.fields(shop).stream()
                                .flatMap(
                                    field ->
                                        field.choices().stream()
                                            .map(
                                                choice ->
                                                    HandTyped.with(
                                                        form.kind(), field.name(), choice.value())))
                                .flatMap(typed -> form.read(typed, shop).value().stream())
                                .map(task -> PLANNER.plan(task, shop).sheet())));
  }

  @ParameterizedTest
  @MethodSource("everything")
  void sheet_whateverIsChosen_isJudgedWhollyAndGravestFirst(OperationSheet sheet) {
    assertFalse(sheet.findings().isEmpty(), "nothing can hurt?");
    assertTrue(
        sheet.findings().stream().allMatch(finding -> finding.harm().isPresent()),
        "could not be judged: " + sheet.findings());
    var sorted = sheet.findings().stream().sorted(Finding.GRAVEST_FIRST).toList();
    assertEquals(
        sorted.stream().map(Finding::word).toList(),
        sheet.findings().stream().map(Finding::word).toList());
    for (var pause : Pause.values()) {
      assertTrue(sheet.checklist().at(pause).size() <= 9, pause + " " + sheet.checklist());
    }
    assertFalse(sheet.checklist().at(Pause.LEAVE_SAFE).isEmpty());
    assertFalse(sheet.needsProof());
  }

  @Test
  void carry_gloves_areWantedThere_andOffWhenItIsLeft() {
    var sheet = sheet(BARE, "carry");
    assertTrue(gear(sheet).containsAll(List.of("gloves", "safety-shoes")), gear(sheet).toString());
    assertTrue(
        sheet.checklist().at(Pause.LEAVE_SAFE).stream()
            .map(Item.Look.class::cast)
            .anyMatch(look -> look.ask().contains("gloves") && look.answer().startsWith("Off")));
  }

  @Test
  void carry_wholeSheetAloneOnStairs_isStopped() {
    assertTrue(sheet(BARE, "carry", "stairs", "yes").isStopped());
    assertFalse(sheet(BARE, "carry", "stairs", "yes", "people", "two").isStopped());
    assertFalse(sheet(BARE, "carry").isStopped());
  }

  @Test
  void gear_isPutOnInTheOrderOfStrapsAndSeals_withItsPlace() {
    var mask = new OwnedGear("1", "vapour-mask", "my mask", "A2", "box 4");
    var sheet = sheet(shop(Shop.ELSEWHERE, List.of(), mask), "finish");
    assertEquals(List.of("vapour-mask", "eye-protection", "chemical-gloves"), gear(sheet));
    var first = (Item.Gear) sheet.checklist().item("gear:vapour-mask:on").orElseThrow();
    assertEquals("my mask", first.name());
    assertEquals("box 4", first.place());
    var second = (Item.Gear) sheet.checklist().item("gear:eye-protection:on").orElseThrow();
    assertFalse(second.atHand());
  }

  @ParameterizedTest
  @CsvSource({
    "kind:drying-oil, oily-rags-heat, true",
    "kind:solvent-lacquer, oily-rags-heat, false",
    "kind:solvent-lacquer, vapour-takes-fire, true",
    "kind:water-based-lacquer, vapour-takes-fire, false",
    "kind:water-based-lacquer, vapour-breathed, false",
    "kind:solvent-lacquer, vapour-breathed, true",
    "kind:isocyanate-lacquer, isocyanate-breathed, true",
    "kind:shellac, finish-in-a-wet-room, true",
    "kind:oil-varnish, finish-in-a-wet-room, false"
  })
  void finish_byKind_bringsUpItsRules(String kind, String rule, boolean fires) {
    assertEquals(
        fires, rules(sheet(BARE, "finish", "finish", kind, "wet-room", "yes")).contains(rule));
  }

  @Test
  void finish_isocyanateSprayed_isStoppedOutdoorsToo() {
    assertTrue(
        sheet(
                BARE,
                "finish",
                "finish",
                "kind:isocyanate-lacquer",
                "applied",
                "sprayed",
                "where",
                "outdoors")
            .isStopped());
  }

  @Test
  void fasten_epoxy_asksForEyeWashAndGlovesOfAnotherKindThanForCarrying() {
    var sheet = sheet(BARE, "fasten");
    assertTrue(
        rules(sheet).containsAll(List.of("liquid-burns", "no-eye-wash", "liquid-sensitises")));
    assertTrue(gear(sheet).contains("chemical-gloves"));
    assertFalse(gear(sheet).contains("gloves"));
    assertFalse(
        rules(sheet(shop(Shop.ELSEWHERE, List.of("eye-wash")), "fasten")).contains("no-eye-wash"));
    assertEquals(Collections.emptyList(), gear(sheet(BARE, "dry-fit")));
  }
}
