package org.proofcut.core.measure;

import java.math.BigInteger;

/**
 * Reads an angle from what a person wrote.
 *
 * <pre>
 * angle    = [sign] number [degree] | [sign] digits degree minutes [seconds]
 * minutes  = number "'"                                less than 60
 * seconds  = number '"'                                less than 60
 * degree   = ° | deg | degree | degrees
 * number   as {@link NumberText} reads it
 * </pre>
 *
 * A comma is a decimal mark, as no angle has thousands.
 */
final class AngleText extends NumberText {

  private static final String NOT_EXACT =
      "That cannot be kept exactly. Use up to four decimals, or halves, thirds … 64ths";

  /** Once round is as far as anything turns here. */
  private static final BigInteger FARTHEST = BigInteger.valueOf(360 * Angle.PER_DEGREE);

  private static final BigInteger DEGREE = BigInteger.valueOf(Angle.PER_DEGREE);
  private static final BigInteger MINUTE = BigInteger.valueOf(Angle.PER_DEGREE / 60);
  private static final BigInteger SECOND = BigInteger.valueOf(Angle.PER_DEGREE / 3600);

  private AngleText(String original) {
    super(original, false);
  }

  static Angle parse(String text) {
    if (text == null || text.isBlank()) {
      throw new AngleFormatException("", 0, "Nothing was entered. Write an angle in degrees");
    }
    if (text.length() > LONGEST) {
      throw new AngleFormatException(
          beginning(text, LONGEST), LONGEST, "That is too long for an angle");
    }
    return new AngleText(text).read();
  }

  private Angle read() {
    skipSpaces();
    boolean negative = take('-');
    if (!negative) {
      take('+');
    }
    skipSpaces();
    int start = at;
    var first = number();
    var total = exactly(first, DEGREE, start, NOT_EXACT);
    skipSpaces();
    if (degree()) {
      skipSpaces();
      if (at < text.length()) {
        if (!first.denominator().equals(BigInteger.ONE)) {
          throw fault("Minutes stand only behind whole degrees");
        }
        total = total.add(sixtieths('\'', MINUTE, "minutes"));
        skipSpaces();
        if (at < text.length()) {
          total = total.add(sixtieths('"', SECOND, "seconds"));
        }
      }
    }
    skipSpaces();
    if (at < text.length()) {
      throw fault("\"" + shown(text.substring(at)) + "\" was not expected here");
    }
    if (total.compareTo(FARTHEST) > 0) {
      at = 0;
      throw fault("That is more than once round. Write an angle up to 360°");
    }
    var angle = new Angle(total.longValueExact());
    return negative ? angle.negated() : angle;
  }

  private BigInteger sixtieths(char mark, BigInteger unit, String name) {
    int start = at;
    var number = number();
    if (number.numerator().compareTo(number.denominator().multiply(BigInteger.valueOf(60))) >= 0) {
      at = start;
      throw fault("There are at most 59 " + name);
    }
    skipSpaces();
    if (!take(mark)) {
      throw fault("The mark of the " + name + " is missing. Write for example 31° 37' 12\"");
    }
    return exactly(number, unit, start, NOT_EXACT);
  }

  private boolean degree() {
    if (take('°')) {
      return true;
    }
    int start = at;
    while (at < text.length() && Character.isLetter(text.charAt(at))) {
      at++;
    }
    var word = text.substring(start, at);
    return switch (word) {
      case "" -> false;
      case "deg", "degree", "degrees" -> {
        take('.');
        yield true;
      }
      default -> {
        at = start;
        throw fault("\"" + shown(word) + "\" is no unit of angle. Use degrees, as 22.5°");
      }
    };
  }

  @Override
  AngleFormatException fault(String reason) {
    return new AngleFormatException(original(), at, reason);
  }
}
