package org.proofcut.core.casework;

import java.util.ArrayList;
import java.util.List;

/** A block with its faces along the three axes. */
record Box(Interval x, Interval y, Interval z) {

  boolean isEmpty() {
    return x.isEmpty() || y.isEmpty() || z.isEmpty();
  }

  boolean overlaps(Box other) {
    return x.overlaps(other.x) && y.overlaps(other.y) && z.overlaps(other.z);
  }

  Box grownBy(long each) {
    return new Box(x.grownBy(each), y.grownBy(each), z.grownBy(each));
  }

  Box withX(Interval other) {
    return new Box(other, y, z);
  }

  Box withY(Interval other) {
    return new Box(x, other, z);
  }

  Box withZ(Interval other) {
    return new Box(x, y, other);
  }

  /** What is left of the blocks when another is cut away, as blocks that do not overlap. */
  static List<Box> subtract(List<Box> blocks, Box away) {
    var left = new ArrayList<Box>();
    for (var block : blocks) {
      if (!block.overlaps(away)) {
        if (!block.isEmpty()) {
          left.add(block);
        }
        continue;
      }
      var rest = block;
      // Two slabs off each axis in turn; what remains in the middle is what was cut away.
      keep(left, rest.withX(new Interval(rest.x.from(), away.x.from())));
      keep(left, rest.withX(new Interval(away.x.to(), rest.x.to())));
      rest = rest.withX(rest.x.intersect(away.x));
      keep(left, rest.withY(new Interval(rest.y.from(), away.y.from())));
      keep(left, rest.withY(new Interval(away.y.to(), rest.y.to())));
      rest = rest.withY(rest.y.intersect(away.y));
      keep(left, rest.withZ(new Interval(rest.z.from(), away.z.from())));
      keep(left, rest.withZ(new Interval(away.z.to(), rest.z.to())));
    }
    return left;
  }

  private static void keep(List<Box> left, Box box) {
    if (!box.isEmpty()) {
      left.add(box);
    }
  }
}
