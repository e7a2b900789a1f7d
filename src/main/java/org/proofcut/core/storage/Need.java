package org.proofcut.core.storage;

/** What a thing must have, wherever it is kept. */
public enum Need {
  /** Behind a lid or in a bag: a filter goes on drawing in what is in the air. */
  SEALED("sealed from dust and vapour"),
  DRY("dry"),
  /** Upright only, whatever its sizes. */
  UPRIGHT("upright"),
  /** Nothing presses on it or pulls at it: rubber keeps the shape that it is kept in. */
  UNDEFORMED("with nothing pressing on it"),
  /** In sight, behind no door. */
  OPEN("in sight, behind no door"),
  /** Taken out with one move: behind nothing, under nothing. */
  AT_ONCE("at once, with nothing in the way"),
  /** Never in a cabinet at all. */
  ELSEWHERE("somewhere else");

  private final String words;

  Need(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
