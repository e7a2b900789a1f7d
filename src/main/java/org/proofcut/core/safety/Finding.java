package org.proofcut.core.safety;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Citation;

/**
 * What one rule says of one step.
 *
 * @param rule id of the rule
 * @param effect whether it stops the step or cautions
 * @param word signal word, from severity and likelihood
 * @param hazard what can hurt and why, neutral
 * @param controls what to do, the strongest control first
 * @param gear gear required or forbidden
 * @param checks what to look at, and at which pause
 * @param because the source
 * @param sourceSays what the source says, in our words; empty where the trade says it
 * @param seen the facts and limits that made it fire, as {@code name} and value
 * @param harm how it hurts; empty where nothing could be judged
 * @param at the pause at which it matters most, where the rule says so
 * @param law whether what it stands on is the law where the shop stands
 * @param gearLaw the law there that asks for the gear itself: no reason sets that gear aside
 */
public record Finding(
    String rule,
    Effect effect,
    SignalWord word,
    String hazard,
    List<Control> controls,
    List<GearNeed> gear,
    List<Check> checks,
    Citation because,
    String sourceSays,
    List<Seen> seen,
    Optional<Harm> harm,
    Optional<Check.Pause> at,
    Optional<Boolean> law,
    Optional<Citation> gearLaw) {

  public enum Effect {
    /** The step must not be done so. */
    STOP,
    CAUTION
  }

  /** The gravest first: stops, then by signal word. */
  public static final Comparator<Finding> GRAVEST_FIRST =
      Comparator.comparing(Finding::effect).thenComparing(Finding::word);

  /**
   * One fact or limit that a condition looked at.
   *
   * @param own what the shop has of its own there, such as {@code this shop: 4 mm instead of 6 mm};
   *     empty for a fact, and for a limit that came with the program
   */
  public record Seen(String name, Object value, Optional<String> own) {

    public Seen(String name, Object value) {
      this(name, value, Optional.empty());
    }
  }

  public Finding {
    controls = List.copyOf(controls);
    gear = List.copyOf(gear);
    checks = List.copyOf(checks);
    seen = List.copyOf(seen);
  }

  /** The pause at which it matters most: as the rule says, else where its first check is asked. */
  public Check.Pause matters() {
    return at.or(() -> checks.stream().map(Check::pause).findFirst())
        .orElseGet(() -> gear.isEmpty() ? byHarm() : Check.Pause.BEFORE_POWER);
  }

  /** What comes with the running cutter is for the moment before it runs through wood. */
  private Check.Pause byHarm() {
    return harm.map(
            one ->
                switch (one) {
                  case CUT, THROWN, CAUGHT -> Check.Pause.PROOF;
                  case NOISE, DUST -> Check.Pause.BEFORE_POWER;
                  case POWER, STRUCK, STRAIN, SPOILT -> Check.Pause.SET;
                  case VAPOUR, FIRE -> Check.Pause.LEAVE_SAFE;
                })
        .orElse(Check.Pause.SET);
  }

  /** Whether no reason of a person can set it aside. */
  public boolean restsOnLaw() {
    return law.orElse(false);
  }
}
