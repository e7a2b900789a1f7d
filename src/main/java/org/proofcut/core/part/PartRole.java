package org.proofcut.core.part;

/** What a part is in a case, and which way its inside face looks. */
public enum PartRole {
  LEFT_SIDE(Axis.PLUS_X),
  RIGHT_SIDE(Axis.MINUS_X),
  TOP(Axis.MINUS_Z),
  BOTTOM(Axis.PLUS_Z),
  SHELF(Axis.PLUS_Z),
  BACK(Axis.MINUS_Y),
  PLINTH(Axis.MINUS_Y);

  private final Axis namedFace;

  PartRole(Axis namedFace) {
    this.namedFace = namedFace;
  }

  /**
   * The face that housings are cut in, or that is seen: the inside of sides, top and back, the
   * upper face of bottom and shelves, the front of the plinth.
   */
  public Axis namedFace() {
    return namedFace;
  }

  /** What that face is called. */
  public String namedFaceWords() {
    return switch (this) {
      case LEFT_SIDE, RIGHT_SIDE, TOP, BACK -> "inside face";
      case BOTTOM, SHELF -> "upper face";
      case PLINTH -> "front face";
    };
  }
}
