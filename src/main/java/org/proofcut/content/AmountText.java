package org.proofcut.content;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.safety.Fact;

/**
 * A weight or a level as content writes it: {@code 25 kg}, {@code 51 lb}, {@code 85 dBA}; and what
 * is in the air: {@code 3 mg/m3}.
 */
final class AmountText {

  static final String WEIGHT = "a weight with its unit, such as 25 kg or 51 lb";
  static final String LEVEL = "a level with its unit, such as 85 dBA";

  private static final Pattern AMOUNT =
      Pattern.compile("(\\d{1,6}(?:\\.\\d{1,3})?) (?:(kg|g|lb)|(dBA))");

  static final String IN_AIR = "an amount with its unit, such as 3 mg/m3, 0.75 ppm or 20 m/s";

  private static final Pattern OF_AIR =
      Pattern.compile("(\\d{1,6}(?:\\.\\d{1,3})?) (mg/m3|ppm|m/s)");

  static final String ANY =
      "an amount with its unit, such as 25 kg, 85 dBA, 3 mg/m3, 0.75 ppm or 20 m/s";

  static final String NUMBER = "a number, such as 0.63";

  private AmountText() {}

  /**
   * A number without a unit. No exponent: written out, a short one can be longer than memory.
   *
   * @throws IllegalArgumentException if the text is no such number
   */
  static BigDecimal number(String text) {
    if (!text.matches("\\d{1,6}(\\.\\d{1,6})?")) {
      throw new IllegalArgumentException(text);
    }
    return new BigDecimal(text);
  }

  /**
   * What may hang in the air, or how fast it goes.
   *
   * @throws IllegalArgumentException if the text is no such amount
   */
  private static Amount ofAir(String text) {
    var found = OF_AIR.matcher(text);
    if (!found.matches()) {
      throw new IllegalArgumentException(text);
    }
    return new Amount(new BigDecimal(found.group(1)), found.group(2).replace("m3", "m³"));
  }

  /** What it measures; empty if it is no amount. */
  static Optional<Fact.Type> type(String text) {
    var found = AMOUNT.matcher(text);
    if (!found.matches()) {
      return Optional.empty();
    }
    return Optional.of(found.group(2) == null ? Fact.Type.LEVEL : Fact.Type.WEIGHT);
  }

  /**
   * Whatever it measures.
   *
   * @throws IllegalArgumentException if the text is no amount
   */
  static Amount read(String text) {
    if (OF_AIR.matcher(text).matches()) {
      return ofAir(text);
    }
    return read(type(text).orElseThrow(() -> new IllegalArgumentException(text)), text);
  }

  /**
   * @throws IllegalArgumentException if the text is no amount of this type
   */
  static Amount read(Fact.Type type, String text) {
    if (!type(text).equals(Optional.of(type))) {
      throw new IllegalArgumentException(text);
    }
    int space = text.indexOf(' ');
    return new Amount(new BigDecimal(text.substring(0, space)), text.substring(space + 1));
  }
}
