package org.proofcut.core.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.measure.Length;

class StepFactsTest {

  @Test
  void build_withAllRequiredFacts_tellsThemAndLeavesTheRestEmpty() {
    var facts = allRequired().with(Fact.CUT_DEPTH, Length.of("6 mm")).build();
    assertEquals(Optional.of(Length.of("6 mm")), facts.value(Fact.CUT_DEPTH));
    assertEquals(Optional.of(2L), facts.value(Fact.PARTS));
    assertTrue(facts.value(Fact.PASSES).isEmpty());
  }

  @Test
  void build_requiredFactMissing_isRefusedByName() {
    for (var missing : Fact.values()) {
      if (!missing.isOptional()) {
        var builder = StepFacts.builder();
        for (var fact : Fact.values()) {
          if (!fact.isOptional() && fact != missing) {
            builder.with(fact, anyValue(fact));
          }
        }
        var refusal = assertThrows(IllegalStateException.class, builder::build);
        assertTrue(refusal.getMessage().contains(missing.id()));
      }
    }
  }

  @Test
  void with_wrongType_isRefused() {
    var builder = StepFacts.builder();
    assertThrows(IllegalArgumentException.class, () -> builder.with(Fact.GLUE, "yes"));
    assertThrows(IllegalArgumentException.class, () -> builder.with(Fact.PARTS, Length.ZERO));
    assertThrows(IllegalArgumentException.class, () -> builder.with(Fact.CUT_DEPTH, 6));
  }

  private static StepFacts.Builder allRequired() {
    var builder = StepFacts.builder();
    for (var fact : Fact.values()) {
      if (!fact.isOptional()) {
        builder.with(fact, anyValue(fact));
      }
    }
    return builder;
  }

  private static Object anyValue(Fact fact) {
    return switch (fact.type()) {
      case TEXT -> "rip";
      case TEXTS -> List.of("plywood");
      case YES_NO -> true;
      case COUNT, SPEED -> 2L;
      case LENGTH -> Length.of("18 mm");
      case WEIGHT -> new Amount(BigDecimal.TEN, "kg");
      case LEVEL -> new Amount(BigDecimal.valueOf(85), "dBA");
    };
  }
}
