package org.proofcut.content;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.proofcut.core.safety.Fact;

/** {@code content/facts.yaml} and {@link Fact} say the same. */
class FactsMatchTest {

  private final Content content = Content.bundled();

  @Test
  void facts_inContent_areThoseInTheCode() {
    assertEquals(Set.copyOf(Arrays.asList(Fact.values())), content.facts().keySet());
  }

  @Test
  void facts_each_haveTheTypeOfTheCode() {
    for (var fact : Fact.values()) {
      var entry = content.facts().get(fact);
      assertEquals(fact.type(), entry.type(), fact.id());
      assertEquals(fact.isOptional(), entry.optional(), fact.id());
    }
  }

  @Test
  void facts_numbers_haveAUnit() {
    var numbers =
        List.of(
            Fact.Type.COUNT, Fact.Type.SPEED, Fact.Type.LENGTH, Fact.Type.WEIGHT, Fact.Type.LEVEL);
    content
        .facts()
        .forEach(
            (fact, entry) ->
                assertEquals(numbers.contains(fact.type()), entry.unit().isPresent(), fact.id()));
  }
}
