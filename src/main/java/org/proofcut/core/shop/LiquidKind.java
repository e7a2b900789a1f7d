package org.proofcut.core.shop;

import java.util.List;
import java.util.Locale;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.exposure.FlammableCategory;

/**
 * A kind of glue, finish or solvent, and what it does by nature. From {@code
 * content/stock/liquids.yaml}; the safety data sheet of the very tin wins.
 *
 * @param untilKnown how easily it takes fire, as long as nobody has entered its flash point: what
 *     the worse ones of the kind do
 * @param heatsItself whether rags wet with it heat up by themselves
 * @param standsWet whether what is finished with it may stand in a wet room; true for what is no
 *     finish
 * @param harms what it does to a person
 */
public record LiquidKind(
    String id,
    String name,
    Use use,
    FlammableCategory untilKnown,
    boolean heatsItself,
    boolean standsWet,
    List<Harm> harms,
    Citation because) {

  /** What it is for. */
  public enum Use {
    GLUE,
    FINISH,
    SOLVENT
  }

  /** What it does to a person. */
  public enum Harm {
    /** Its vapour makes dizzy, and harms who breathes it for long. */
    VAPOUR,
    /** It irritates skin and eyes. */
    IRRITATES,
    /** Whoever has once become allergic to it stays so. */
    SENSITISES,
    /** It sets by isocyanate, which can bring asthma for life. */
    ISOCYANATE,
    /** It burns skin and eyes. */
    CORROSIVE;

    /** As content and conditions write it. */
    public String id() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public LiquidKind {
    harms = List.copyOf(harms);
  }
}
