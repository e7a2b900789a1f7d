package org.proofcut.core.intake;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.regex.Pattern;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.exposure.WeightUnit;
import org.proofcut.core.measure.LengthUnit;

/**
 * A weight as people write it: {@code 18 kg}, {@code 18,5}, {@code 40 lb}, {@code 350 g}. A bare
 * number is in kg where lengths are in millimetres, in lb where they are in inches. What could mean
 * two weights ({@code 1,234}) is refused.
 */
final class WeightText {

  /** Thrown for text that is no weight; its message says what is wrong. */
  static final class Unreadable extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    Unreadable(String message) {
      super(message);
    }
  }

  static final String EXAMPLES = "18 kg, 18.5, 40 lb";

  private static final int LONGEST = 20;
  private static final Pattern NUMBER = Pattern.compile("([0-9]{1,6})(?:([.,])([0-9]{1,3}))?");
  private static final Pattern WEIGHT =
      Pattern.compile("([0-9.,]+) *(kg|g|lbs?|)", Pattern.CASE_INSENSITIVE);

  private WeightText() {}

  static Amount parse(String typed, LengthUnit bareUnit) {
    var text = typed.strip().replace('\u00a0', ' ').replace('\u202f', ' ');
    var found = WEIGHT.matcher(text);
    if (text.length() > LONGEST || !found.matches()) {
      throw new Unreadable("that is no weight");
    }
    var number = number(found.group(1));
    return switch (found.group(2).toLowerCase(Locale.ROOT)) {
      case "kg" -> new Amount(number, WeightUnit.KILOGRAM.symbol());
      case "g" -> new Amount(number.movePointLeft(3), WeightUnit.KILOGRAM.symbol());
      case "lb", "lbs" -> new Amount(number, WeightUnit.POUND.symbol());
      default -> new Amount(number, WeightUnit.beside(bareUnit).symbol());
    };
  }

  /** A number without a unit, with a point or a comma before its decimals. */
  static BigDecimal number(String typed) {
    var found = NUMBER.matcher(typed.strip());
    if (!found.matches()) {
      throw new Unreadable("that is no number");
    }
    var decimals = found.group(3) == null ? "" : found.group(3);
    if (",".equals(found.group(2)) && decimals.length() == 3 && !found.group(1).matches("0+")) {
      throw new Unreadable("it is not clear what the comma means");
    }
    return new BigDecimal(found.group(1) + (decimals.isEmpty() ? "" : "." + decimals));
  }
}
