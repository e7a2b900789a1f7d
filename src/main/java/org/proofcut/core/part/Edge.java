package org.proofcut.core.part;

import java.util.Optional;

/**
 * The edges and ends of a part, named by where they are in the finished case; those of a piece that
 * belongs to no case by where they are at the machine.
 */
public enum Edge {
  FRONT("front edge", Axis.MINUS_Y),
  REAR("rear edge", Axis.PLUS_Y),
  TOP_END("top end", Axis.PLUS_Z),
  LOWER_END("lower end", Axis.MINUS_Z),
  LEFT_END("left end", Axis.MINUS_X),
  RIGHT_END("right end", Axis.PLUS_X),
  REFERENCE("reference edge"),
  MARKED_FACE("marked face"),
  OPPOSITE("opposite edge"),
  /** Of a piece whose ends are cut at an angle. */
  LONG("long edge"),
  /** Of a piece that narrows: the edge that lies against the carrier's stops, and both ends. */
  STRAIGHT("straight edge"),
  CUT_FIRST("edge cut first"),
  WIDE_END("wide end"),
  NARROW_END("narrow end"),
  LEADING("leading edge"),
  TRAILING("trailing edge"),
  REFERENCE_END("reference end"),
  FAR_END("far end"),
  JOINED_END("end that is joined"),
  /** Of a board, what lies or stands on a guide that is no fence. */
  FLAT_FACE("flat face");

  private final String words;
  private final Optional<Axis> towards;

  Edge(String words, Axis towards) {
    this.words = words;
    this.towards = Optional.of(towards);
  }

  Edge(String words) {
    this.words = words;
    this.towards = Optional.empty();
  }

  public String words() {
    return words;
  }

  /**
   * Which way it lies in the case.
   *
   * @throws java.util.NoSuchElementException if its piece belongs to no case
   */
  public Axis towards() {
    return towards.orElseThrow();
  }

  /** The edge that lies that way in the case. */
  public static Edge towards(Axis axis) {
    for (var edge : values()) {
      if (edge.towards.equals(Optional.of(axis))) {
        return edge;
      }
    }
    throw new AssertionError(axis);
  }
}
