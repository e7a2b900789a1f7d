package org.proofcut.core.casework;

/** A stretch along one axis, in picometres, open at both ends: touching is not overlapping. */
record Interval(long from, long to) {

  boolean isEmpty() {
    return to <= from;
  }

  boolean overlaps(Interval other) {
    return from < other.to && other.from < to;
  }

  Interval grownBy(long each) {
    return new Interval(from - each, to + each);
  }

  /** The first so much of this. */
  Interval first(long size) {
    return new Interval(from, from + size);
  }

  /** The last so much of this. */
  Interval last(long size) {
    return new Interval(to - size, to);
  }

  /** A stretch of this size that begins so far into this one. */
  Interval from(long distance, long size) {
    return new Interval(from + distance, from + distance + size);
  }

  Interval intersect(Interval other) {
    return new Interval(Math.max(from, other.from), Math.min(to, other.to));
  }
}
