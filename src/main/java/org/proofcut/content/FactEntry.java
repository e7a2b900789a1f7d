package org.proofcut.content;

import java.util.List;
import java.util.Optional;
import org.proofcut.content.yaml.Located;
import org.proofcut.core.safety.Fact;

/**
 * A fact as {@code facts.yaml} tells it to whoever writes rules.
 *
 * @param unit what is counted, or how it is measured; empty for words
 * @param says one sentence
 * @param suppliedBy the room that knows it
 * @param words all that it can say, if that is a closed list
 * @param optional whether a step may be without it
 * @param alwaysOn machines and operations with which a step must say it all the same
 * @param noRuleYet why no rule asks for it; empty if one does
 */
public record FactEntry(
    Fact.Type type,
    Optional<String> unit,
    String says,
    String suppliedBy,
    List<String> words,
    boolean optional,
    List<Located<String>> alwaysOn,
    Optional<String> noRuleYet) {}
