package org.proofcut.core.exposure;

import java.math.BigDecimal;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;

/**
 * How easily the vapour of a liquid takes fire, by the temperature at which it first does and that
 * at which it boils. The figures stand on its safety data sheet, in section 9.
 */
public enum FlammableCategory {
  /** Flash point below 73.4 °F (23 °C), boiling at 95 °F (35 °C) or less. */
  ONE("1", "danger"),
  /** Flash point below 73.4 °F, boiling above 95 °F. */
  TWO("2", "danger"),
  /** Flash point from 73.4 °F to 140 °F (60 °C). */
  THREE("3", "warning"),
  /** Flash point above 140 °F, to 199.4 °F (93 °C). */
  FOUR("4", "warning"),
  /** Above that: not flammable by this rule, though it burns. */
  NONE("none", "");

  /** Where the bounds stand. */
  public static final Citation SOURCE =
      new Citation(Citation.Kind.LAW, "29 CFR 1910.106, Flammable liquids", "(a)(19)");

  private static final BigDecimal EASY = new BigDecimal("73.4");
  private static final BigDecimal BOILS_EASILY = new BigDecimal("95");
  private static final BigDecimal HARD = new BigDecimal("140");
  private static final BigDecimal HARDEST = new BigDecimal("199.4");

  private final String words;
  private final String label;

  FlammableCategory(String words, String label) {
    this.words = words;
    this.label = label;
  }

  /** As printed on data sheets. */
  public String words() {
    return words;
  }

  /** As a page says it: {@code flammable, category 2}. */
  @Override
  public String toString() {
    return this == NONE ? "hard to set alight" : "flammable, category " + words;
  }

  /** The signal word on its label; empty where there is none. */
  public String label() {
    return label;
  }

  /**
   * The category of a liquid.
   *
   * @param flash its flash point, in °F or °C
   * @param boils where it boils, in °F or °C
   */
  public static FlammableCategory of(Amount flash, Amount boils) {
    var point = fahrenheit(flash);
    if (point.compareTo(EASY) < 0) {
      return fahrenheit(boils).compareTo(BOILS_EASILY) <= 0 ? ONE : TWO;
    }
    if (point.compareTo(HARD) <= 0) {
      return THREE;
    }
    return point.compareTo(HARDEST) <= 0 ? FOUR : NONE;
  }

  /** {@code °F = °C · 9 ÷ 5 + 32}, exactly. */
  private static BigDecimal fahrenheit(Amount temperature) {
    return switch (temperature.unit()) {
      case "°F" -> temperature.value();
      case "°C" -> temperature.value().multiply(new BigDecimal("1.8")).add(new BigDecimal("32"));
      default -> throw new IllegalArgumentException(temperature + " is no temperature");
    };
  }
}
