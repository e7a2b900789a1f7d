package org.proofcut.rulebook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.safety.Fact;
import org.proofcut.core.safety.StepFacts;

/**
 * What a condition may say.
 *
 * @param words the words a text fact may have; a fact that is not in it has no closed list
 * @param alwaysOn the machines and operations in which an optional fact must be there all the same
 * @param limits by id
 */
public record Vocabulary(
    Map<Fact, List<String>> words, Map<Fact, List<String>> alwaysOn, Map<String, Limit> limits) {

  public Vocabulary {
    words = Map.copyOf(words);
    alwaysOn = Map.copyOf(alwaysOn);
    limits = Map.copyOf(limits);
  }

  /** Whether a rule for these machines and these operations can count on a fact. */
  boolean isAlwaysThere(Fact fact, List<String> machines, List<String> operations) {
    var always = alwaysOn.getOrDefault(fact, List.of());
    return !fact.isOptional()
        || (!machines.isEmpty() && always.containsAll(machines))
        || (!operations.isEmpty() && always.containsAll(operations));
  }

  /** A word of the step that no rule can know, because it is on no list. */
  Optional<String> strangeWord(StepFacts facts) {
    for (var fact : Fact.values()) {
      var known = words.get(fact);
      var value = facts.value(fact).orElse(List.of());
      var said = value instanceof List<?> list ? list : List.of(value);
      for (var word : said) {
        if (known != null && !known.contains(word)) {
          return Optional.of(fact.id() + " \"" + word + "\"");
        }
      }
    }
    return Optional.empty();
  }
}
