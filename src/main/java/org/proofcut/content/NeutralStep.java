package org.proofcut.content;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.proofcut.core.safety.Fact;
import org.proofcut.core.safety.StepFacts;
import org.proofcut.rulebook.Rule;

/** A step in which nothing is dangerous but what a case says. Optional facts are left out. */
final class NeutralStep {

  private static final Map<Fact, Object> NEUTRAL = new EnumMap<>(Fact.class);

  static {
    NEUTRAL.put(Fact.GUIDE, "none");
    NEUTRAL.put(Fact.THROUGH_CUT, false);
    NEUTRAL.put(Fact.REGION, "elsewhere");
    NEUTRAL.put(Fact.MATERIALS, List.of());
    NEUTRAL.put(Fact.PARTS, 1L);
    NEUTRAL.put(Fact.USES_STRIP, false);
    NEUTRAL.put(Fact.CUTTER_MARKED, true);
    NEUTRAL.put(Fact.MACHINE_HAS_GUARD, true);
    NEUTRAL.put(Fact.MACHINE_HAS_RIVING_KNIFE, true);
    NEUTRAL.put(Fact.MACHINE_HAS_EXTRACTION, true);
    NEUTRAL.put(Fact.AIDS_AT_HAND, List.of("push-stick", "push-block", "featherboard", "sled"));
    NEUTRAL.put(Fact.GEAR_AT_HAND, List.of());
    NEUTRAL.put(Fact.STACKED_CUTTER, false);
    NEUTRAL.put(Fact.CUTTER_HAS_BEARING, false);
    NEUTRAL.put(Fact.INSIDE_OPENING, false);
    NEUTRAL.put(Fact.GLUE, false);
    NEUTRAL.put(Fact.SCREWS, false);
  }

  private NeutralStep() {}

  /** The step of a case: what it gives, else the rule's own scope, else what is harmless. */
  static StepFacts of(Rule rule, Map<Fact, Object> given) {
    var step = StepFacts.builder();
    step.with(Fact.OPERATION, rule.operations().isEmpty() ? "dado" : rule.operations().get(0));
    step.with(Fact.MACHINE, rule.machines().isEmpty() ? "none" : rule.machines().get(0));
    NEUTRAL.forEach(step::with);
    if (!rule.regions().isEmpty()) {
      step.with(Fact.REGION, rule.regions().get(0));
    }
    given.forEach(step::with);
    return step.build();
  }
}
