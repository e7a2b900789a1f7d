package org.proofcut.core.checklist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.safety.Check.Pause;
import org.proofcut.core.safety.Finding;
import org.proofcut.core.safety.Finding.Effect;
import org.proofcut.core.safety.Harm;
import org.proofcut.core.safety.SignalWord;

class PauseCautionsTest {

  @Test
  void at_pause_showsWhatMattersThereBeforeWhatIsGraverElsewhere() {
    var here = finding("here", Effect.CAUTION, SignalWord.CAUTION, Pause.BEFORE_POWER);
    var elsewhere = finding("elsewhere", Effect.CAUTION, SignalWord.WARNING, Pause.SET);
    assertEquals(List.of("here", "elsewhere"), open(Pause.BEFORE_POWER, elsewhere, here));
  }

  @Test
  void at_anyPause_showsDangerFirst() {
    var here = finding("here", Effect.CAUTION, SignalWord.WARNING, Pause.SET);
    var danger = finding("danger", Effect.CAUTION, SignalWord.DANGER, Pause.PROOF);
    assertEquals(List.of("danger", "here"), open(Pause.SET, here, danger));
  }

  @Test
  void at_equallyGrave_showsWhatIsNewFirst() {
    var heard = finding("heard", Effect.CAUTION, SignalWord.WARNING, Pause.SET);
    var isNew = finding("new", Effect.CAUTION, SignalWord.WARNING, Pause.SET);
    assertEquals(
        List.of("new", "heard"),
        rules(PauseCautions.at(Pause.SET, List.of(heard, isNew), Set.of("heard"), 0).open()));
  }

  /** The promise of nine, by counting; and nothing that a rule says gets lost. */
  @Property
  void at_whateverTheRulesSay_isNineThingsAtMostAndLosesNothing(
      @ForAll("findings") List<Finding> findings,
      @ForAll Pause now,
      @ForAll @IntRange(max = Checklist.MOST) int asked) {
    var cautions = PauseCautions.at(now, findings, Set.of(), asked);
    assertTrue(cautions.open().size() + asked <= PauseCautions.THINGS);

    var shown = new ArrayList<>(cautions.open());
    cautions.later().forEach((pause, later) -> shown.addAll(later));
    var said = new ArrayList<>(findings);
    said.removeIf(finding -> finding.effect() == Effect.STOP);
    assertEquals(said.size(), shown.size());
    assertEquals(new HashSet<>(said), new HashSet<>(shown));

    if (!said.isEmpty()) {
      assertTrue(!cautions.open().isEmpty(), "one caution at least stands open");
    }
    // What stands one tap away at this pause is never graver than what stands open of it.
    for (var later : cautions.later().getOrDefault(now, List.of())) {
      for (var open : cautions.open()) {
        assertTrue(open.word().compareTo(later.word()) <= 0, open + " before " + later);
      }
    }
  }

  @Provide
  Arbitrary<List<Finding>> findings() {
    return Combinators.combine(
            Arbitraries.integers().between(0, 1_000_000),
            Arbitraries.of(Effect.class),
            Arbitraries.of(SignalWord.class),
            Arbitraries.of(Pause.class))
        .as((id, effect, word, at) -> finding("rule-" + id, effect, word, at))
        .list()
        .ofMaxSize(40);
  }

  private static List<String> open(Pause now, Finding... findings) {
    return rules(PauseCautions.at(now, List.of(findings), Set.of(), 0).open());
  }

  private static List<String> rules(List<Finding> findings) {
    return findings.stream().map(Finding::rule).toList();
  }

  static Finding finding(String rule, Effect effect, SignalWord word, Pause at) {
    return new Finding(
        rule,
        effect,
        word,
        "It hurts.",
        List.of(),
        List.of(),
        List.of(),
        Citation.COMMON_PRACTICE,
        "",
        List.of(),
        Optional.of(Harm.CUT),
        Optional.of(at),
        Optional.of(false),
        Optional.empty());
  }
}
