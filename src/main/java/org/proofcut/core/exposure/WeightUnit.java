package org.proofcut.core.exposure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.measure.LengthUnit;

/** The two units that weights are written in; the pound is exactly 0.45359237 kg. */
public enum WeightUnit {
  KILOGRAM("kg", "1"),
  /** International avoirdupois pound (NIST SP 811, from memory). */
  POUND("lb", "0.45359237");

  private static final MathContext DIGITS = new MathContext(30);

  private final String symbol;
  private final BigDecimal kilograms;

  WeightUnit(String symbol, String kilograms) {
    this.symbol = symbol;
    this.kilograms = new BigDecimal(kilograms);
  }

  /** As printed behind a number. */
  public String symbol() {
    return symbol;
  }

  /** The unit of weight that a job in this unit of length is worked in. */
  public static WeightUnit beside(LengthUnit unit) {
    return unit == LengthUnit.INCH ? POUND : KILOGRAM;
  }

  /**
   * A weight as a number of this unit, to thirty digits.
   *
   * @throws IllegalArgumentException if it is no weight
   */
  public BigDecimal of(Amount weight) {
    var in = unitOf(weight);
    return in == this
        ? weight.value()
        : weight.value().multiply(in.kilograms).divide(kilograms, DIGITS);
  }

  /** The same weight in this unit, to so many decimals. */
  public Amount amount(Amount weight, int decimals, RoundingMode rounding) {
    return new Amount(of(weight).setScale(decimals, rounding), symbol);
  }

  private static WeightUnit unitOf(Amount weight) {
    for (var unit : values()) {
      if (unit.symbol.equals(weight.unit())) {
        return unit;
      }
    }
    throw new IllegalArgumentException(weight + " is no weight");
  }
}
