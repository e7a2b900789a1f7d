package org.proofcut.core.shop;

/** A side of a machine, as the person who stands before it sees it. */
public enum Side {
  LEFT("left"),
  RIGHT("right");

  private final String words;

  Side(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  public Side opposite() {
    return this == LEFT ? RIGHT : LEFT;
  }
}
