package org.proofcut.core.measure;

/**
 * All lengths from one to another, both ends included.
 *
 * @param least the smallest that is in the band
 * @param most the largest; never smaller than {@code least}
 */
public record Band(Length least, Length most) {

  public Band {
    if (most.isLessThan(least)) {
      throw new IllegalArgumentException("a band from " + least + " to " + most + " is empty");
    }
  }

  /** The band that reaches the same way to both sides of a target. */
  public static Band around(Length target, Length toEachSide) {
    return new Band(target.minus(toEachSide), target.plus(toEachSide));
  }

  public boolean contains(Length length) {
    return least.isAtMost(length) && length.isAtMost(most);
  }

  /** Half way between both ends, rounded up to a whole picometre. */
  public Length middle() {
    return least.plus(most).half();
  }

  /** How far the ends lie apart. */
  public Length extent() {
    return most.minus(least);
  }

  /** Both ends moved the same way. */
  public Band movedBy(Length by) {
    return new Band(least.plus(by), most.plus(by));
  }
}
