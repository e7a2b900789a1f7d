package org.proofcut.core.measure;

import java.math.BigInteger;

/**
 * Reads a length from what a person wrote.
 *
 * <pre>
 * length   = [sign] feet [inches] | [sign] number [unit]
 * feet     = number ( "'" | "ft" ) ["-"]
 * inches   = number [ '"' | "in" ]
 * number   as {@link NumberText} reads it
 * unit     = mm | cm | m | in | inch | " | ft | foot | '     and their look-alikes ″ ” ′ ’
 * </pre>
 *
 * An abbreviation may end in a point ({@code 5 in.}). Nothing is ever stripped to make text fit:
 * {@code 1,234.5} is refused, and so is {@code 1,234}, which means one thing in one country and a
 * thousand times as much in another. Nothing is computed either: {@code 1 - 1/2} is refused.
 */
final class LengthText extends NumberText {

  /** Longest length that text may give: a hundred metres is beyond any shop. */
  private static final Length FARTHEST = Length.ofMillimetres(100_000);

  private static final String NOT_EXACT =
      "That cannot be kept exactly. Use halves, quarters … 128ths, or fewer decimals";

  private static final BigInteger MM = BigInteger.valueOf(LengthUnit.MILLIMETRE.picometres());
  private static final BigInteger INCH = BigInteger.valueOf(LengthUnit.INCH.picometres());
  private static final BigInteger FOOT = INCH.multiply(BigInteger.valueOf(12));

  private LengthText(String original) {
    super(original, true);
  }

  static Length parse(String text, LengthUnit bareUnit) {
    if (text == null || text.isBlank()) {
      throw new LengthFormatException("", 0, "Nothing was entered. Write a length");
    }
    if (text.length() > LONGEST) {
      throw new LengthFormatException(
          beginning(text, LONGEST), LONGEST, "That is too long for a length");
    }
    return new LengthText(text).read(bareUnit);
  }

  static Length parseWithUnit(String text) {
    return parse(text, null);
  }

  private Length read(LengthUnit bareUnit) {
    skipSpaces();
    boolean negative = take('-');
    if (!negative) {
      take('+');
    }
    skipSpaces();
    int start = at;
    var first = number();
    skipSpaces();
    var unit = unit();
    BigInteger total;
    if (unit == null) {
      if (bareUnit == null) {
        throw fault("The unit is missing. Write mm or in behind the number");
      }
      total = exactly(first, BigInteger.valueOf(bareUnit.picometres()), start, NOT_EXACT);
    } else {
      total = exactly(first, unit, start, NOT_EXACT);
      skipSpaces();
      if (unit.equals(FOOT) && at < text.length()) {
        take('-');
        skipSpaces();
        start = at;
        var inches = number();
        skipSpaces();
        int before = at;
        var second = unit();
        if (second != null && !second.equals(INCH)) {
          at = before;
          throw fault("After feet come inches. Write for example 3' 6 1/2\"");
        }
        total = total.add(exactly(inches, INCH, start, NOT_EXACT));
      }
    }
    skipSpaces();
    if (at < text.length()) {
      throw fault("\"" + shown(text.substring(at)) + "\" was not expected here");
    }
    if (total.compareTo(BigInteger.valueOf(FARTHEST.picometres())) > 0) {
      at = 0;
      throw fault("That is more than 100 m. Write the length in mm or in");
    }
    var length = new Length(total.longValueExact());
    return negative ? length.negated() : length;
  }

  private BigInteger unit() {
    int start = at;
    if (take('"')) {
      return INCH;
    }
    if (take('\'')) {
      return take('\'') ? INCH : FOOT;
    }
    while (at < text.length() && Character.isLetter(text.charAt(at))) {
      at++;
    }
    var word = text.substring(start, at);
    // A point closes an abbreviation ("in."); it belongs to the unit.
    if (!word.isEmpty() && peek() == '.') {
      at++;
      if (asciiDigit(peek())) {
        at--;
        throw fault("It is not clear what the point means. Write for example 3 ft 6 in");
      }
    }
    return switch (word) {
      case "" -> null;
      case "mm" -> MM;
      case "cm" -> MM.multiply(BigInteger.TEN);
      case "m" -> MM.multiply(BigInteger.valueOf(1000));
      case "in", "inch", "inches" -> INCH;
      case "ft", "foot", "feet" -> FOOT;
      default -> {
        at = start;
        throw fault("\"" + shown(word) + "\" is no unit of length. Use mm, cm, m, in or ft");
      }
    };
  }

  @Override
  LengthFormatException fault(String reason) {
    return new LengthFormatException(original(), at, reason);
  }
}
