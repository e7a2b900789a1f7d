package org.proofcut.core.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;

/** What holds for the weight of every flat piece, reckoned again in whole millimetres. */
class DensitiesPropertiesTest {

  private static final BigDecimal POUND = new BigDecimal("0.45359237");

  private static Worked<Integer> density(int kilograms) {
    return Worked.given("density", kilograms, Citation.COMMON_PRACTICE);
  }

  private static Worked<Length> millimetres(int size) {
    return Worked.entered("size", Length.ofMillimetres(size));
  }

  private static Worked<Amount> weight(
      Material material, int density, int length, int width, int thickness, LengthUnit unit) {
    var one = density(1);
    var told = density(density);
    var all =
        new Densities(
            material == Material.PLYWOOD ? told : one,
            material == Material.MDF ? told : one,
            material == Material.PARTICLEBOARD ? told : one,
            material == Material.HARDBOARD ? told : one,
            material == Material.HARDWOOD ? told : one,
            material == Material.SOFTWOOD ? told : one);
    return all.weight(
        material, millimetres(length), millimetres(width), millimetres(thickness), unit);
  }

  @Property
  void weight_anyPiece_isTheWholeNumberOfTenthsJustAbove(
      @ForAll Material material,
      @ForAll @IntRange(min = 1, max = 2000) int density,
      @ForAll @IntRange(min = 1, max = 4000) int length,
      @ForAll @IntRange(min = 1, max = 4000) int width,
      @ForAll @IntRange(min = 2, max = 120) int thickness) {
    var product =
        BigInteger.valueOf(length)
            .multiply(BigInteger.valueOf(width))
            .multiply(BigInteger.valueOf(thickness))
            .multiply(BigInteger.valueOf(density));
    // A cubic metre is 10⁹ mm³: tenths of a kilogram are the product over 10⁸.
    var whole = product.divideAndRemainder(BigInteger.TEN.pow(8));
    var tenths = whole[0].add(whole[1].signum() == 0 ? BigInteger.ZERO : BigInteger.ONE);
    var found = weight(material, density, length, width, thickness, LengthUnit.MILLIMETRE).value();
    assertEquals("kg", found.unit());
    assertEquals(new BigDecimal(tenths, 1), found.value());
  }

  @Property
  void weight_inPounds_isNeverLessThanInKilograms_norATenthOfAPoundMore(
      @ForAll Material material,
      @ForAll @IntRange(min = 1, max = 2000) int density,
      @ForAll @IntRange(min = 1, max = 4000) int length,
      @ForAll @IntRange(min = 1, max = 4000) int width,
      @ForAll @IntRange(min = 2, max = 120) int thickness) {
    var exactly =
        BigDecimal.valueOf((long) length * width * thickness, 9)
            .multiply(BigDecimal.valueOf(density));
    var found = weight(material, density, length, width, thickness, LengthUnit.INCH).value();
    assertEquals("lb", found.unit());
    assertTrue(found.value().multiply(POUND).compareTo(exactly) >= 0, found.toString());
    var less = found.value().subtract(new BigDecimal("0.1"));
    assertTrue(less.multiply(POUND).compareTo(exactly) < 0, found.toString());
  }
}
