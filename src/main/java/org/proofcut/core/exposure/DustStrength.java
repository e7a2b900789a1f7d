package org.proofcut.core.exposure;

import java.util.Locale;

/**
 * How much fine dust a machine makes, from least to most. An order and no amount: how many
 * milligrams hang in the air of a shop only a measurement tells.
 */
public enum DustStrength {
  /** Chips and shavings; little that hangs in the air. */
  LITTLE("little"),
  SOME("some"),
  MUCH("much"),
  MOST("the most");

  private final String words;

  DustStrength(String words) {
    this.words = words;
  }

  /** Before "fine dust": {@code the most}. */
  public String words() {
    return words;
  }

  /** As content and conditions write it. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** One step more, where there is one. */
  DustStrength oneMore() {
    return values()[Math.min(ordinal() + 1, values().length - 1)];
  }

  public boolean isAtLeast(DustStrength other) {
    return compareTo(other) >= 0;
  }
}
