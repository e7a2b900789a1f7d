package org.proofcut.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.proofcut.content.Content;
import org.proofcut.core.exposure.DustEffect;
import org.proofcut.core.exposure.DustStrength;
import org.proofcut.core.intake.ItemForm;
import org.proofcut.core.intake.ShopForms;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.safety.Fact;
import org.proofcut.core.setup.Guide;
import org.proofcut.core.stock.Material;

/** What a condition may compare a fact with is exactly what the engine says. */
class EngineWordsTest {

  @Test
  void operations_areThoseOfTheEngine() {
    assertEquals(words(OperationKind.values(), OperationKind::id), said(Fact.OPERATION));
  }

  @Test
  void machines_areThoseOfTheShop() {
    var kinds = ShopForms.MACHINES.stream().map(ItemForm::kind);
    assertEquals(withNone(kinds), said(Fact.MACHINE));
  }

  @Test
  void guides_areThoseOfTheSetUps() {
    assertEquals(withNone(Arrays.stream(Guide.values()).map(Guide::id)), said(Fact.GUIDE));
  }

  @Test
  void materials_areThoseOfTheStock() {
    assertEquals(words(Material.values(), Material::id), said(Fact.MATERIALS));
  }

  @Test
  void dust_isThatOfTheCore() {
    assertEquals(words(DustEffect.values(), DustEffect::id), said(Fact.DUST_EFFECTS));
    assertEquals(words(DustStrength.values(), DustStrength::id), said(Fact.DUST_STRENGTH));
  }

  /** A sheet whose wood nobody named has one all the same, and every machine makes some dust. */
  @Test
  void dust_isKnownOfEveryMaterialAndMachine() {
    var dust = Content.bundled().dust();
    for (var material : Material.values()) {
      assertTrue(dust.wood(Optional.empty(), material.id()).isPresent(), material.id());
    }
    for (var machine : ShopForms.MACHINES) {
      assertTrue(dust.machines().containsKey(machine.kind()), machine.kind());
    }
  }

  private static Set<String> said(Fact fact) {
    return new TreeSet<>(Content.bundled().facts().get(fact).words());
  }

  private static <T> Set<String> words(T[] values, Function<T, String> id) {
    return Arrays.stream(values).map(id).collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> withNone(Stream<String> words) {
    return Stream.concat(words, Stream.of("none")).collect(Collectors.toCollection(TreeSet::new));
  }
}
