package org.proofcut.core.part;

/** The edges and ends of a part, named by where they are in the finished case. */
public enum Edge {
  FRONT("front edge", Axis.MINUS_Y),
  REAR("rear edge", Axis.PLUS_Y),
  TOP_END("top end", Axis.PLUS_Z),
  LOWER_END("lower end", Axis.MINUS_Z),
  LEFT_END("left end", Axis.MINUS_X),
  RIGHT_END("right end", Axis.PLUS_X);

  private final String words;
  private final Axis towards;

  Edge(String words, Axis towards) {
    this.words = words;
    this.towards = towards;
  }

  public String words() {
    return words;
  }

  /** Which way it lies in the case. */
  public Axis towards() {
    return towards;
  }

  /** The edge that lies that way in the case. */
  public static Edge towards(Axis axis) {
    for (var edge : values()) {
      if (edge.towards == axis) {
        return edge;
      }
    }
    throw new AssertionError(axis);
  }
}
