package org.proofcut.core.stock;

/** What a sheet or board is made of, as far as the cut and its dust depend on it. */
public enum Material {
  PLYWOOD("plywood"),
  MDF("MDF"),
  PARTICLEBOARD("particleboard"),
  HARDBOARD("hardboard"),
  HARDWOOD("solid hardwood"),
  SOFTWOOD("solid softwood");

  private final String words;

  Material(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  /** As content and conditions write it. */
  public String id() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
