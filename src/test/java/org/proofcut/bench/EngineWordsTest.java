package org.proofcut.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.proofcut.content.Content;
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
