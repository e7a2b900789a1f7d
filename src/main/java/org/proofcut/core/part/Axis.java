package org.proofcut.core.part;

/**
 * A direction along one of three axes at right angles. In the case: x to the right, y to the rear,
 * z up. At a machine: x to your right, y away from you, z up.
 */
public enum Axis {
  PLUS_X(1, 0, 0),
  MINUS_X(-1, 0, 0),
  PLUS_Y(0, 1, 0),
  MINUS_Y(0, -1, 0),
  PLUS_Z(0, 0, 1),
  MINUS_Z(0, 0, -1);

  private final int x;
  private final int y;
  private final int z;

  Axis(int x, int y, int z) {
    this.x = x;
    this.y = y;
    this.z = z;
  }

  /** The other way along the same axis. */
  public Axis opposite() {
    return of(-x, -y, -z);
  }

  /**
   * The third direction of a right-handed trio.
   *
   * @throws IllegalArgumentException if both lie along one axis
   */
  public Axis cross(Axis other) {
    return of(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
  }

  /** 1 along, −1 against, 0 at right angles. */
  public int dot(Axis other) {
    return x * other.x + y * other.y + z * other.z;
  }

  private static Axis of(int x, int y, int z) {
    for (var axis : values()) {
      if (axis.x == x && axis.y == y && axis.z == z) {
        return axis;
      }
    }
    throw new IllegalArgumentException("two directions along one axis span no third");
  }
}
