package org.proofcut.core.part;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Against parts really turned: every one of the 24 ways that a block can lie on a table. */
class LieTest {

  /** Directions in numbers, written down apart from {@link Axis}. */
  private static final Map<Axis, int[]> VECTORS =
      Map.of(
          Axis.PLUS_X, new int[] {1, 0, 0},
          Axis.MINUS_X, new int[] {-1, 0, 0},
          Axis.PLUS_Y, new int[] {0, 1, 0},
          Axis.MINUS_Y, new int[] {0, -1, 0},
          Axis.PLUS_Z, new int[] {0, 0, 1},
          Axis.MINUS_Z, new int[] {0, 0, -1});

  /** Where the inside or upper face of each part looks in the case: x right, y rear, z up. */
  private static final Map<PartRole, int[]> FACES =
      Map.of(
          PartRole.LEFT_SIDE, new int[] {1, 0, 0},
          PartRole.RIGHT_SIDE, new int[] {-1, 0, 0},
          PartRole.TOP, new int[] {0, 0, -1},
          PartRole.BOTTOM, new int[] {0, 0, 1},
          PartRole.SHELF, new int[] {0, 0, 1},
          PartRole.BACK, new int[] {0, -1, 0},
          PartRole.PLINTH, new int[] {0, -1, 0});

  private static final Map<Edge, int[]> EDGES =
      Map.of(
          Edge.FRONT, new int[] {0, -1, 0},
          Edge.REAR, new int[] {0, 1, 0},
          Edge.TOP_END, new int[] {0, 0, 1},
          Edge.LOWER_END, new int[] {0, 0, -1},
          Edge.LEFT_END, new int[] {-1, 0, 0},
          Edge.RIGHT_END, new int[] {1, 0, 0});

  @Test
  void anyLie_isWhereATurnedPartHasItsEdges() {
    int checked = 0;
    for (var role : PartRole.values()) {
      for (var guided : EDGES.keySet()) {
        if (dot(FACES.get(role), EDGES.get(guided)) != 0) {
          assertThrows(
              IllegalArgumentException.class,
              () -> new Lie(role, Axis.MINUS_Z, guided, Axis.PLUS_Y));
          continue;
        }
        for (var turn : turns()) {
          var lie =
              new Lie(role, looks(turn, FACES.get(role)), guided, looks(turn, EDGES.get(guided)));
          for (var edge : EDGES.keySet()) {
            if (dot(FACES.get(role), EDGES.get(edge)) == 0) {
              assertEquals(edge, lie.edgeTowards(looks(turn, EDGES.get(edge))), lie.toString());
              checked++;
            }
          }
        }
      }
    }
    // 7 parts × 4 edges that can ride × 24 ways to lie × 4 edges to find
    assertEquals(7 * 4 * 24 * 4, checked);
  }

  @Test
  void faces_areNoEdges() {
    var lie = new Lie(PartRole.LEFT_SIDE, Axis.MINUS_Z, Edge.LOWER_END, Axis.PLUS_Y);
    assertThrows(IllegalArgumentException.class, () -> lie.edgeTowards(Axis.PLUS_Z));
  }

  @Test
  void mirrorPair_onOneFence_leadsWithOppositeEdges() {
    var left = new Lie(PartRole.LEFT_SIDE, Axis.MINUS_Z, Edge.LOWER_END, Axis.PLUS_Y);
    var right = new Lie(PartRole.RIGHT_SIDE, Axis.MINUS_Z, Edge.LOWER_END, Axis.PLUS_Y);
    assertEquals(Edge.FRONT, left.edgeTowards(Axis.MINUS_X));
    assertEquals(Edge.REAR, right.edgeTowards(Axis.MINUS_X));
  }

  @Test
  void turns_are24_andKeepRightHandsRight() {
    assertEquals(24, turns().size());
    for (var turn : turns()) {
      assertArrayEquals(
          times(turn, new int[] {0, 0, 1}),
          cross(times(turn, new int[] {1, 0, 0}), times(turn, new int[] {0, 1, 0})));
    }
  }

  /** Every turn of a block, found by quarter turns about x and about z, over and over. */
  private static List<int[][]> turns() {
    int[][] aboutX = {{1, 0, 0}, {0, 0, -1}, {0, 1, 0}};
    int[][] aboutZ = {{0, -1, 0}, {1, 0, 0}, {0, 0, 1}};
    var found = new ArrayList<int[][]>();
    found.add(new int[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}});
    for (int i = 0; i < found.size(); i++) {
      for (var quarter : List.of(aboutX, aboutZ)) {
        var next = times(quarter, found.get(i));
        if (found.stream().noneMatch(one -> Arrays.deepEquals(one, next))) {
          found.add(next);
        }
      }
    }
    return found;
  }

  private static Axis looks(int[][] turn, int[] direction) {
    var turned = times(turn, direction);
    return VECTORS.entrySet().stream()
        .filter(entry -> Arrays.equals(entry.getValue(), turned))
        .findFirst()
        .orElseThrow()
        .getKey();
  }

  private static int[] times(int[][] matrix, int[] vector) {
    return new int[] {
      dot(matrix[0], vector), dot(matrix[1], vector), dot(matrix[2], vector),
    };
  }

  private static int[][] times(int[][] a, int[][] b) {
    var product = new int[3][3];
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 3; column++) {
        product[row][column] = dot(a[row], new int[] {b[0][column], b[1][column], b[2][column]});
      }
    }
    return product;
  }

  private static int[] cross(int[] a, int[] b) {
    return new int[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0],
    };
  }

  private static int dot(int[] a, int[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }
}
