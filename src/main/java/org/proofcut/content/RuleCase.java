package org.proofcut.content;

import java.util.List;
import java.util.Map;
import org.proofcut.content.yaml.Located;
import org.proofcut.content.yaml.Written;
import org.proofcut.core.evidence.AtLeastOne;
import org.proofcut.core.safety.Fact;

/**
 * A case that shows what a rule means.
 *
 * @param name a sentence that states the behaviour
 * @param given the facts that matter; the others are as harmless as they can be
 */
record RuleCase(String rule, String name, Map<Fact, Object> given, Then then) {

  enum Then {
    FIRES,
    QUIET
  }

  /** The cases of one rule as their file says them. */
  record File(@AtLeastOne List<Entry> cases) {}

  record Entry(Located<String> name, Map<Fact, Written> given, Then then) {}
}
