package org.proofcut.core.safety;

/** The ways in which a step can hurt or spoil. Every rule speaks of one of them. */
public enum Harm {
  CUT("cut by the cutter"),
  THROWN("struck by what is thrown"),
  CAUGHT("caught and drawn in"),
  STRUCK("struck, crushed or pierced"),
  STRAIN("strained by lifting and holding"),
  NOISE("noise"),
  DUST("dust"),
  VAPOUR("vapour, and what touches the skin"),
  FIRE("fire and heat"),
  POWER("a start that nobody meant, or a shock"),
  SPOILT("work or tool spoilt");

  private final String words;

  Harm(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
