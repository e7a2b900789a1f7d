package org.proofcut.core.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.LongRange;

/** What holds for every angle. The platform's own sines, found another way, are the judge. */
class AnglePropertiesTest {

  private static final long ONCE_ROUND = 360 * 360_000L;
  private static final long QUARTER = 90 * 360_000L;

  @Property
  void parse_ofToString_givesTheSameAngle(
      @ForAll @LongRange(min = -ONCE_ROUND, max = ONCE_ROUND) long units) {
    assertEquals(new Angle(units), Angle.parse(new Angle(units).toString()));
  }

  @Property(tries = 5_000)
  void parse_garbage_isAnAngleOrARefusalAndNothingElse(@ForAll("nearlyAngles") String text) {
    try {
      var angle = Angle.parse(text);
      assertTrue(Math.abs(angle.hundredthsOfAnArcSecond()) <= ONCE_ROUND, text);
      assertTrue(text.codePoints().anyMatch(c -> c >= '0' && c <= '9' || c == '½'), text);
    } catch (AngleFormatException refusal) {
      assertTrue(refusal.position() >= 0 && refusal.position() <= text.length());
    }
  }

  @Provide
  Arbitrary<String> nearlyAngles() {
    return Arbitraries.oneOf(
        Arbitraries.strings().withChars("0123456789  .,/-+'\"″′½°deg").ofMaxLength(14),
        Arbitraries.strings().ofMaxLength(60));
  }

  @Property
  void sineAndCosine_anyAngle_areThoseOfThePlatform(
      @ForAll @LongRange(min = -3 * ONCE_ROUND, max = 3 * ONCE_ROUND) long units) {
    var angle = new Angle(units);
    double radians = Math.toRadians(units / 360_000.0);
    assertEquals(Math.sin(radians), angle.sine().doubleValue(), 1e-13);
    assertEquals(Math.cos(radians), angle.cosine().doubleValue(), 1e-13);
    // Far finer than the platform can tell: on the circle to 33 decimals.
    var circle = angle.sine().pow(2).add(angle.cosine().pow(2)).subtract(BigDecimal.ONE).abs();
    assertTrue(circle.compareTo(BigDecimal.ONE.movePointLeft(33)) <= 0, circle::toPlainString);
  }

  @Property
  void ofTangentAndOfSine_undoTangentAndSine(
      @ForAll @LongRange(min = 0, max = QUARTER - 1) long units) {
    var angle = new Angle(units);
    var finest = new Angle(1);
    assertEquals(angle, Angle.ofTangent(angle.tangent(), finest, Rounding.NEAREST));
    assertEquals(angle, Angle.ofSine(angle.sine(), finest, Rounding.NEAREST));
  }

  @Property
  void ofTangent_anyRatio_isThatOfThePlatform(
      @ForAll @LongRange(min = 0, max = 1_000_000_000_000L) long millionths) {
    var tangent = BigDecimal.valueOf(millionths, 6);
    var angle = Angle.ofTangent(tangent, new Angle(1), Rounding.NEAREST);
    var degrees = Math.toDegrees(Math.atan(tangent.doubleValue()));
    assertEquals(degrees, angle.hundredthsOfAnArcSecond() / 360_000.0, 2e-6);
  }

  @Property
  void rootOf_anySquareAndItsNeighbours_isBracketed(
      @ForAll @LongRange(min = 1, max = 1_000_000_000_000L) long side,
      @ForAll @LongRange(min = 1, max = 1_000_000_000L) long step,
      @ForAll @LongRange(min = -1, max = 1) long beside) {
    var area = BigInteger.valueOf(side).pow(2).add(BigInteger.valueOf(beside));
    var down = Length.rootOf(area, new Length(step), Rounding.DOWN).picometres();
    var up = Length.rootOf(area, new Length(step), Rounding.UP).picometres();
    var nearest = Length.rootOf(area, new Length(step), Rounding.NEAREST).picometres();
    assertTrue(square(down).compareTo(area) <= 0 && area.compareTo(square(up)) <= 0);
    assertEquals(square(down).equals(area) ? 0 : step, up - down);
    // Against four times the area, so that the half way mark is whole.
    boolean nearerUp = square(down + up).compareTo(area.shiftLeft(2)) <= 0;
    assertEquals(nearerUp ? up : down, nearest);
  }

  @Property
  void times_aFactor_isTheDecimalProductRoundedOnce(
      @ForAll @LongRange(min = -1_000_000_000_000L, max = 1_000_000_000_000L) long picometres,
      @ForAll @LongRange(min = -5_000_000, max = 5_000_000) long millionths) {
    var factor = BigDecimal.valueOf(millionths, 6);
    var exact = BigDecimal.valueOf(picometres).multiply(factor);
    var step = new Length(10_000_000);
    var down = new Length(picometres).times(factor, step, Rounding.DOWN);
    var up = new Length(picometres).times(factor, step, Rounding.UP);
    assertTrue(BigDecimal.valueOf(down.picometres()).compareTo(exact) <= 0);
    assertTrue(BigDecimal.valueOf(up.picometres()).compareTo(exact) >= 0);
    assertTrue(up.minus(down).isAtMost(step));
  }

  private static BigInteger square(long side) {
    return BigInteger.valueOf(side).pow(2);
  }
}
