package org.proofcut.core.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Map;

/**
 * Text with numbers in it, read from the left as a person wrote it.
 *
 * <pre>
 * number   = decimal | fraction | whole ( " " | "-" ) fraction | whole vulgar | vulgar
 * decimal  = [digits] ( "." | "," ) digits | digits      one mark only; the decimal mark
 * fraction = digits "/" digits                       less than 1 behind a whole number
 * vulgar   = ½ ¼ ¾ ⅛ ⅜ ⅝ ⅞
 * </pre>
 *
 * Look-alikes of marks and quotes count as the plain ones. Nothing is ever stripped to make text
 * fit, and nothing is computed.
 */
abstract class NumberText {

  static final int LONGEST = 40;

  private static final Map<Character, Ratio> VULGAR =
      Map.of(
          '½', Ratio.of(1, 2),
          '¼', Ratio.of(1, 4),
          '¾', Ratio.of(3, 4),
          '⅛', Ratio.of(1, 8),
          '⅜', Ratio.of(3, 8),
          '⅝', Ratio.of(5, 8),
          '⅞', Ratio.of(7, 8));

  private final String original;
  private final boolean commaMayPartThousands;
  final String text;
  int at;

  /**
   * @param commaMayPartThousands whether numbers may be so large that {@code 1,234} is unclear
   */
  NumberText(String original, boolean commaMayPartThousands) {
    this.original = original;
    this.commaMayPartThousands = commaMayPartThousands;
    this.text = normalised(original);
  }

  /** What is wrong where reading stands. */
  abstract IllegalArgumentException fault(String reason);

  final String original() {
    return original;
  }

  /** One character for one, so that positions still point into what was typed. */
  private static String normalised(String text) {
    var out = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      out.append(normalised(text.charAt(i)));
    }
    return out.toString();
  }

  private static char normalised(char c) {
    return switch (c) {
      case '″', '”', '“' -> '"';
      case '′', '’', '‘', '´' -> '\'';
      case '−', '–', '\u2010', '\u2011' -> '-';
      case '⁄', '∕' -> '/';
      case 'º', '˚' -> '°';
      case '\t' -> ' ';
      // Only plain letters: lower case of others may be longer, or turn İ into i.
      default -> Character.isSpaceChar(c) ? ' ' : 'A' <= c && c <= 'Z' ? (char) (c + 32) : c;
    };
  }

  /** A number as an exact fraction. */
  record Ratio(BigInteger numerator, BigInteger denominator) {

    static Ratio of(long numerator, long denominator) {
      return new Ratio(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
    }

    Ratio plus(Ratio other) {
      return new Ratio(
          numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
          denominator.multiply(other.denominator));
    }
  }

  /** So many of a unit, which must come out whole. */
  BigInteger exactly(Ratio number, BigInteger unit, int start, String notExact) {
    var both = number.numerator.multiply(unit).divideAndRemainder(number.denominator);
    if (both[1].signum() != 0) {
      at = start;
      throw fault(notExact);
    }
    return both[0];
  }

  final Ratio number() {
    int start = at;
    if (VULGAR.containsKey(peek())) {
      return VULGAR.get(next());
    }
    if (peek() == '.' || peek() == ',') {
      return decimal("0", start);
    }
    var whole = digits("A number was expected here");
    if (peek() == '/') {
      return fraction(whole);
    }
    if (peek() == '.' || peek() == ',') {
      return decimal(whole, start);
    }
    var number = new Ratio(new BigInteger(whole), BigInteger.ONE);
    if (VULGAR.containsKey(peek())) {
      return number.plus(VULGAR.get(next()));
    }
    int after = at;
    skipSpaces();
    boolean spaced = at > after;
    boolean joined = take('-') ? !spaced && peek() != ' ' : spaced;
    if (!joined && at > after) {
      at = after;
      throw fault("A minus between two numbers is not worked out. Write for example 1 1/2");
    }
    if (joined && VULGAR.containsKey(peek())) {
      return number.plus(VULGAR.get(next()));
    }
    if (joined && asciiDigit(peek())) {
      int second = at;
      var numerator = digits("A number was expected here");
      if (peek() == '/') {
        var fraction = fraction(numerator);
        if (fraction.numerator.compareTo(fraction.denominator) < 0) {
          return number.plus(fraction);
        }
        at = second;
        throw fault("A fraction behind a whole number must be less than 1");
      }
      at = second;
      throw fault("Two numbers stand side by side. Write for example 1 1/2 or 18.25");
    }
    at = after;
    return number;
  }

  private Ratio fraction(String numerator) {
    at++;
    int start = at;
    var denominator = new BigInteger(digits("The lower half of the fraction is missing"));
    if (denominator.signum() == 0) {
      at = start;
      throw fault("A fraction cannot have 0 below its line");
    }
    return new Ratio(new BigInteger(numerator), denominator);
  }

  private Ratio decimal(String whole, int start) {
    char mark = next();
    var decimals = digits("Decimals are missing behind the mark");
    if (peek() == '.' || peek() == ',') {
      at = start;
      throw fault("Two marks in one number. Write it without a thousands mark, as 1234.5");
    }
    if (mark == ',' && commaMayPartThousands && decimals.length() == 3 && !whole.matches("0+")) {
      at = start;
      throw fault(
          "It is not clear what the comma means. Write "
              + shown(whole + "." + decimals)
              + " or "
              + shown(whole + decimals));
    }
    var value = new BigDecimal(whole + "." + decimals);
    return new Ratio(value.unscaledValue(), BigInteger.TEN.pow(value.scale()));
  }

  final String digits(String otherwise) {
    int start = at;
    while (at < text.length() && asciiDigit(text.charAt(at))) {
      at++;
    }
    if (at == start) {
      throw fault(otherwise);
    }
    return text.substring(start, at);
  }

  static boolean asciiDigit(char c) {
    return c >= '0' && c <= '9';
  }

  final char peek() {
    return at < text.length() ? text.charAt(at) : '\0';
  }

  final char next() {
    return text.charAt(at++);
  }

  final boolean take(char c) {
    if (peek() == c) {
      at++;
      return true;
    }
    return false;
  }

  final void skipSpaces() {
    while (peek() == ' ') {
      at++;
    }
  }

  static String shown(String part) {
    return beginning(part, 16);
  }

  /** Never cuts a character that takes two places: half of one cannot be printed. */
  static String beginning(String part, int longest) {
    if (part.length() <= longest) {
      return part;
    }
    int end = Character.isHighSurrogate(part.charAt(longest - 1)) ? longest - 1 : longest;
    return part.substring(0, end) + "…";
  }
}
