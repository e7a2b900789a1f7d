package org.proofcut.core.exposure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/**
 * An opening that air is drawn through: a round duct or port, or a hood with a rectangular mouth.
 * {@code airflow = velocity × area}.
 */
public sealed interface Hood {

  /** A duct, a hose or the port of a machine. */
  record Round(Worked<Length> diameter) implements Hood {

    public Round {
      requirePositive(diameter);
    }

    @Override
    public Worked<Amount> area() {
      var d = diameter.value().inMillimetres();
      return Worked.called("area of the opening")
          .by("π ÷ 4 × diameter²")
          .with("diameter", diameter)
          .is(
              new Amount(
                  AirFigures.PI
                      .multiply(d)
                      .multiply(d)
                      .divide(AirFigures.FOUR, AirFigures.DIGITS)
                      .setScale(2, RoundingMode.CEILING),
                  "mm²"));
    }

    @Override
    public BigDecimal exactArea() {
      var d = diameter.value().inMillimetres();
      return AirFigures.PI.multiply(d).multiply(d).divide(AirFigures.FOUR, AirFigures.DIGITS);
    }
  }

  /** The mouth of a hood. */
  record Rectangular(Worked<Length> width, Worked<Length> height) implements Hood {

    public Rectangular {
      requirePositive(width);
      requirePositive(height);
    }

    @Override
    public Worked<Amount> area() {
      return Worked.called("area of the opening")
          .by("width × height")
          .with("width", width)
          .with("height", height)
          .is(new Amount(exactArea().setScale(2, RoundingMode.CEILING), "mm²"));
    }

    @Override
    public BigDecimal exactArea() {
      return width.value().inMillimetres().multiply(height.value().inMillimetres());
    }
  }

  /** Cubic metres an hour, as printed. */
  String METRIC = "m³/h";

  /** Cubic feet a minute, as printed. */
  String INCH = "ft³/min";

  /** As shown, rounded up in the second place. */
  Worked<Amount> area();

  /** In mm², before any rounding. */
  BigDecimal exactArea();

  /**
   * How much air must go through it.
   *
   * @param velocity in m/s
   * @param unit {@code m³/h} or {@code ft³/min}
   * @return to a whole unit upward
   */
  default Worked<Amount> needed(Worked<Amount> velocity, String unit) {
    return Worked.called("airflow that is needed")
        .by("velocity × area, rounded up")
        .with("velocity", velocity)
        .with("area", area())
        .is(
            new Amount(
                in(
                        unit,
                        metresASecond(velocity)
                            .multiply(exactArea())
                            .multiply(AirFigures.CUBIC_METRES_AN_HOUR))
                    .setScale(0, RoundingMode.CEILING),
                unit));
  }

  /**
   * How fast the air of an extractor goes through it.
   *
   * @param airflow in {@code m³/h} or {@code ft³/min}
   * @return in m/s, to a tenth downward
   */
  default Worked<Amount> velocity(Worked<Amount> airflow) {
    return Worked.called("velocity at the opening")
        .by("airflow ÷ area, rounded down")
        .with("airflow", airflow)
        .with("area", area())
        .is(new Amount(exactVelocity(airflow).setScale(1, RoundingMode.FLOOR), "m/s"));
  }

  /** Whether so much air is enough for such a velocity, judged without rounding. */
  default boolean isEnough(Worked<Amount> airflow, Worked<Amount> velocity) {
    return metric(airflow)
            .compareTo(
                metresASecond(velocity)
                    .multiply(exactArea())
                    .multiply(AirFigures.CUBIC_METRES_AN_HOUR))
        >= 0;
  }

  private BigDecimal exactVelocity(Worked<Amount> airflow) {
    return metric(airflow)
        .divide(exactArea().multiply(AirFigures.CUBIC_METRES_AN_HOUR), AirFigures.DIGITS);
  }

  private static BigDecimal in(String unit, BigDecimal cubicMetresAnHour) {
    return switch (unit) {
      case METRIC -> cubicMetresAnHour;
      case INCH -> cubicMetresAnHour.divide(AirFigures.CUBIC_FOOT_A_MINUTE, AirFigures.DIGITS);
      default -> throw new IllegalArgumentException(unit + " is no airflow");
    };
  }

  private static BigDecimal metric(Worked<Amount> airflow) {
    var amount = airflow.value();
    return switch (amount.unit()) {
      case METRIC -> amount.value();
      case INCH -> amount.value().multiply(AirFigures.CUBIC_FOOT_A_MINUTE);
      default -> throw new IllegalArgumentException(amount + " is no airflow");
    };
  }

  private static BigDecimal metresASecond(Worked<Amount> velocity) {
    if (!velocity.value().unit().equals("m/s")) {
      throw new IllegalArgumentException(velocity.value() + " is no velocity in m/s");
    }
    return velocity.value().value();
  }

  private static void requirePositive(Worked<Length> size) {
    if (!size.value().isPositive()) {
      throw new IllegalArgumentException(size.name() + " is no opening: " + size.value());
    }
  }
}
