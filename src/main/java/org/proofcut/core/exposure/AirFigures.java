package org.proofcut.core.exposure;

import java.math.BigDecimal;
import java.math.MathContext;

/** Figures that turn openings and velocities into airflow. */
final class AirFigures {

  /** 40 digits: no opening of a shop needs the tenth of them. */
  static final BigDecimal PI = new BigDecimal("3.141592653589793238462643383279502884197");

  static final BigDecimal FOUR = BigDecimal.valueOf(4);

  static final MathContext DIGITS = new MathContext(34);

  /** {@code 1 m/s × 1 mm² = 0.0036 m³/h}. */
  static final BigDecimal CUBIC_METRES_AN_HOUR = new BigDecimal("0.0036");

  /** {@code (0.3048 m)³ × 60 min/h}: what one ft³/min is in m³/h, exactly. */
  static final BigDecimal CUBIC_FOOT_A_MINUTE = new BigDecimal("1.69901079552");

  private AirFigures() {}
}
