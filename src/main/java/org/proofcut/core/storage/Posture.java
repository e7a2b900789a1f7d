package org.proofcut.core.storage;

/** How a thing is kept. */
public enum Posture {
  HANGING("hanging"),
  STANDING("standing"),
  LYING("lying");

  private final String words;

  Posture(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
