package org.proofcut.core.geometry;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Length;

/** Sizes and angles as tests enter them, and as numbers for ways of their own to a result. */
public final class Sizes {

  private Sizes() {}

  public static Worked<Length> entered(String length) {
    return entered(Length.of(length));
  }

  public static Worked<Length> entered(Length length) {
    return Worked.entered("entered", length);
  }

  public static Worked<Angle> degrees(String angle) {
    return Worked.entered("entered", Angle.parse(angle));
  }

  /** Random lengths on hundredths of a millimetre. */
  public static Arbitrary<Worked<Length>> hundredths(int least, int most) {
    return Arbitraries.integers()
        .between(least, most)
        .map(count -> entered(Length.HUNDREDTH.times(count)));
  }

  /** Random angles on thousandths of a degree. */
  public static Arbitrary<Worked<Angle>> thousandths(int least, int most) {
    return Arbitraries.integers()
        .between(least, most)
        .map(count -> Worked.entered("entered", Angle.THOUSANDTH.times(count)));
  }

  public static double mm(Worked<Length> length) {
    return length.value().inMillimetres().doubleValue();
  }

  public static double degrees(Worked<Angle> angle) {
    return angle.value().hundredthsOfAnArcSecond() / 360_000.0;
  }

  public static double radians(Worked<Angle> angle) {
    return Math.toRadians(degrees(angle));
  }
}
