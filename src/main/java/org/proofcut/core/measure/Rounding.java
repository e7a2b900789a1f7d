package org.proofcut.core.measure;

/**
 * Which way a length that does not fall on a step is moved onto one. Always said, never implied.
 */
public enum Rounding {
  /** To the next step toward minus infinity: the smaller length. */
  DOWN,
  /** To the next step toward plus infinity: the larger length. */
  UP,
  /** To the nearest step; exactly half way goes up. */
  NEAREST
}
