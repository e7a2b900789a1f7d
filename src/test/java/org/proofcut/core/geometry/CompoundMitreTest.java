package org.proofcut.core.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.geometry.Sizes.degrees;
import static org.proofcut.core.geometry.Sizes.radians;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Angle;

/**
 * Judged in space by vectors alone: the saw's blade is turned and tilted, the piece is cut, both
 * pieces are stood at their lean along the two walls, and the planes of their ends must be one.
 */
class CompoundMitreTest {

  private static final Worked<Angle> SQUARE = degrees("90");

  @Property(tries = 10_000)
  void ends_stoodInTheCorner_meetInThePlaneThatHalvesIt(
      @ForAll("corners") Worked<Angle> corner, @ForAll("leans") Worked<Angle> lean) {
    var cut = new CompoundMitre(Corner.of(corner), lean);
    double off =
        degreesOff(radians(corner), radians(lean), radians(cut.mitre()), radians(cut.bevel()));
    // Both figures are rounded to a thousandth of a degree.
    assertTrue(off < 0.002, corner.value() + " at " + lean.value() + " is off by " + off + "°");
  }

  /** The judge has to see what may go wrong: the wrong lean, swapped figures, the wrong half. */
  @Property
  void judge_seesFaults(
      @ForAll("fairCorners") Worked<Angle> corner, @ForAll("fairLeans") Worked<Angle> lean) {
    double c = radians(corner);
    double s = radians(lean);
    var cut = new CompoundMitre(Corner.of(corner), lean);
    double mitre = radians(cut.mitre());
    double bevel = radians(cut.bevel());
    var fromCeiling = new CompoundMitre(Corner.of(corner), complement(lean));
    assertTrue(degreesOff(c, s, radians(fromCeiling.mitre()), radians(fromCeiling.bevel())) > 1);
    assertTrue(degreesOff(c, s, -mitre, bevel) > 1);
    assertTrue(degreesOff(c, s, mitre, -bevel) > 1);
    assertTrue(degreesOff(c, s, mitre + Math.toRadians(0.1), bevel) > 0.02);
    assertTrue(degreesOff(c, s, mitre, bevel + Math.toRadians(0.1)) > 0.02);
  }

  private static Worked<Angle> complement(Worked<Angle> lean) {
    return Worked.entered("lean from the ceiling", Angle.RIGHT.minus(lean.value()));
  }

  /** How far the ends' planes are from each other and from the plane that halves the corner. */
  private static double degreesOff(double corner, double lean, double mitre, double bevel) {
    // From the corner one wall runs along x, the other at the corner's angle to it.
    double[] firstWall = {1, 0, 0};
    double[] secondWall = {Math.cos(corner), Math.sin(corner), 0};
    double[] intoRoom = {0, 1, 0};
    double[] intoRoomToo = {Math.sin(corner), -Math.cos(corner), 0};
    var first = endPlane(intoRoom, lean, mitre, -bevel);
    var second = endPlane(intoRoomToo, lean, -mitre, bevel);
    var halving =
        cross(
            new double[] {0, 0, 1},
            new double[] {firstWall[0] + secondWall[0], firstWall[1] + secondWall[1], 0});
    return Math.max(between(first, second), between(first, halving));
  }

  /**
   * What stands square on the end's plane, with the piece in its place.
   *
   * @param intoRoom square on the wall
   * @param turned the blade about the upright, positive one way
   * @param tilted the blade about the line it cuts along
   */
  private static double[] endPlane(double[] intoRoom, double lean, double turned, double tilted) {
    // At the saw: x along the fence, y across the table, z up; an upright blade cuts square to x.
    double[] blade = {1, 0, 0};
    blade = turn(blade, new double[] {0, 1, 0}, tilted);
    blade = turn(blade, new double[] {0, 0, 1}, turned);
    // In its place: y goes up the face, which leans into the room, and z out of the face.
    double[] up = {0, 0, 1};
    double[] y = add(scaled(intoRoom, Math.sin(lean)), scaled(up, Math.cos(lean)));
    double[] z = add(scaled(intoRoom, Math.cos(lean)), scaled(up, -Math.sin(lean)));
    double[] x = cross(y, z);
    return add(add(scaled(x, blade[0]), scaled(y, blade[1])), scaled(z, blade[2]));
  }

  /** Rodrigues' rotation about an axis of length one. */
  private static double[] turn(double[] v, double[] axis, double by) {
    return add(
        add(scaled(v, Math.cos(by)), scaled(cross(axis, v), Math.sin(by))),
        scaled(axis, dot(axis, v) * (1 - Math.cos(by))));
  }

  /** Between the planes that these stand square on; which way they point does not matter. */
  private static double between(double[] one, double[] other) {
    var across = cross(one, other);
    return Math.toDegrees(Math.atan2(Math.sqrt(dot(across, across)), Math.abs(dot(one, other))));
  }

  private static double[] add(double[] one, double[] other) {
    return new double[] {one[0] + other[0], one[1] + other[1], one[2] + other[2]};
  }

  private static double[] scaled(double[] v, double by) {
    return new double[] {v[0] * by, v[1] * by, v[2] * by};
  }

  private static double dot(double[] one, double[] other) {
    return one[0] * other[0] + one[1] * other[1] + one[2] * other[2];
  }

  private static double[] cross(double[] one, double[] other) {
    return new double[] {
      one[1] * other[2] - one[2] * other[1],
      one[2] * other[0] - one[0] * other[2],
      one[0] * other[1] - one[1] * other[0]
    };
  }

  @Provide
  Arbitrary<Worked<Angle>> corners() {
    return Sizes.thousandths(5_000, 175_000);
  }

  @Provide
  Arbitrary<Worked<Angle>> leans() {
    return Sizes.thousandths(0, 90_000);
  }

  @Provide
  Arbitrary<Worked<Angle>> fairCorners() {
    return Sizes.thousandths(60_000, 150_000);
  }

  /** Not near 45°, where wall and ceiling are alike. */
  @Provide
  Arbitrary<Worked<Angle>> fairLeans() {
    return Sizes.thousandths(15_000, 40_000);
  }

  @Test
  void upright_isAllBevel_andLying_allMitre() {
    var upright = new CompoundMitre(Corner.of(SQUARE), degrees("0"));
    assertEquals(Angle.ZERO, upright.mitre().value());
    assertEquals("45°", upright.bevel().value().toString());
    var lying = new CompoundMitre(Corner.of(SQUARE), degrees("90"));
    assertEquals("45°", lying.mitre().value().toString());
    assertEquals(Angle.ZERO, lying.bevel().value());
    assertEquals("45°", lying.mitreStanding().value().toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"-0.001", "90.001", "180"})
  void angleThatIsNoLean_isAProblem_andNeverACut(String angle) {
    assertEquals("lean", CompoundMitre.problems(Angle.parse(angle)).get(0).where());
    var corner = Corner.of(SQUARE);
    assertThrows(IllegalArgumentException.class, () -> new CompoundMitre(corner, degrees(angle)));
  }

  @Test
  void endsOfTheRange_areLeans() {
    assertEquals(List.of(), CompoundMitre.problems(Angle.ZERO));
    assertEquals(List.of(), CompoundMitre.problems(Angle.RIGHT));
  }
}
