package org.proofcut.web.handbook;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.proofcut.core.safety.Harm;

/**
 * What is looked for among the rules.
 *
 * @param words in small letters, all of which a rule must speak of
 * @param cut the one harm of one cut, where that is asked for
 * @param machine the one machine, as content writes it, where neither cut nor harm is asked for;
 *     empty for all of them
 */
record Sought(List<String> words, Optional<Cut> cut, String machine) {

  /** One harm of one way of cutting. */
  record Cut(String machine, String operation, Harm harm) {}

  /**
   * As the address says it.
   *
   * @param words with spaces between; none finds all
   * @param harm as content writes it; another word asks for no cut
   */
  static Sought of(String words, String machine, String operation, String harm) {
    return new Sought(
        Arrays.stream(words.strip().toLowerCase(Locale.ROOT).split("\\s+")).toList(),
        Arrays.stream(Harm.values())
            .filter(one -> id(one).equals(harm))
            .filter(one -> !machine.isEmpty() && !operation.isEmpty())
            .map(one -> new Cut(machine, operation, one))
            .findFirst(),
        operation.isEmpty() && harm.isEmpty() ? machine : "");
  }

  /** A harm as content and addresses write it. */
  static String id(Harm harm) {
    return harm.name().toLowerCase(Locale.ROOT);
  }
}
