package org.proofcut.core.storage;

/** How often a thing is taken out. */
public enum Use {
  EVERY_DAY("every day", 10),
  OFTEN("often", 4),
  SELDOM("seldom", 1),
  /** Seldom or never, and then at once. */
  EMERGENCY("in an emergency", 10);

  private final String words;
  private final int weight;

  Use(String words, int weight) {
    this.words = words;
    this.weight = weight;
  }

  public String words() {
    return words;
  }

  /** How much a way to it counts beside those to others (our own choice). */
  public int weight() {
    return weight;
  }
}
