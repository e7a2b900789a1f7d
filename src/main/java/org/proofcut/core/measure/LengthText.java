package org.proofcut.core.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Map;

/**
 * Reads a length from what a person wrote.
 *
 * <pre>
 * length   = [sign] feet [inches] | [sign] number [unit]
 * feet     = number ( "'" | "ft" ) ["-"]
 * inches   = number [ '"' | "in" ]
 * number   = decimal | fraction | whole ( " " | "-" ) fraction | whole vulgar | vulgar
 * decimal  = [digits] ( "." | "," ) digits | digits      one mark only; the decimal mark
 * fraction = digits "/" digits                       less than 1 behind a whole number
 * vulgar   = ½ ¼ ¾ ⅛ ⅜ ⅝ ⅞
 * unit     = mm | cm | m | in | inch | " | ft | foot | '     and their look-alikes ″ ” ′ ’
 * </pre>
 *
 * An abbreviation may end in a point ({@code 5 in.}). Nothing is ever stripped to make text fit:
 * {@code 1,234.5} is refused, and so is {@code 1,234}, which means one thing in one country and a
 * thousand times as much in another. Nothing is computed either: {@code 1 - 1/2} is refused.
 */
final class LengthText {

  private static final int LONGEST = 40;

  /** Longest length that text may give: a hundred metres is beyond any shop. */
  private static final Length FARTHEST = Length.ofMillimetres(100_000);

  private static final Map<Character, Ratio> VULGAR =
      Map.of(
          '½', Ratio.of(1, 2),
          '¼', Ratio.of(1, 4),
          '¾', Ratio.of(3, 4),
          '⅛', Ratio.of(1, 8),
          '⅜', Ratio.of(3, 8),
          '⅝', Ratio.of(5, 8),
          '⅞', Ratio.of(7, 8));

  private static final BigInteger MM = BigInteger.valueOf(LengthUnit.MILLIMETRE.picometres());
  private static final BigInteger INCH = BigInteger.valueOf(LengthUnit.INCH.picometres());
  private static final BigInteger FOOT = INCH.multiply(BigInteger.valueOf(12));

  private final String original;
  private final String text;
  private int at;

  private LengthText(String original) {
    this.original = original;
    this.text = normalised(original);
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
      case '\t' -> ' ';
      // Only plain letters: lower case of others may be longer, or turn İ into i.
      default -> Character.isSpaceChar(c) ? ' ' : 'A' <= c && c <= 'Z' ? (char) (c + 32) : c;
    };
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
      total = exactly(first, BigInteger.valueOf(bareUnit.picometres()), start);
    } else {
      total = exactly(first, unit, start);
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
        total = total.add(exactly(inches, INCH, start));
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

  /** A number as an exact fraction. */
  private record Ratio(BigInteger numerator, BigInteger denominator) {

    static Ratio of(long numerator, long denominator) {
      return new Ratio(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
    }

    Ratio plus(Ratio other) {
      return new Ratio(
          numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
          denominator.multiply(other.denominator));
    }
  }

  private BigInteger exactly(Ratio number, BigInteger unit, int start) {
    var both = number.numerator.multiply(unit).divideAndRemainder(number.denominator);
    if (both[1].signum() != 0) {
      at = start;
      throw fault("That cannot be kept exactly. Use halves, quarters … 128ths, or fewer decimals");
    }
    return both[0];
  }

  private Ratio number() {
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
    if (mark == ',' && decimals.length() == 3 && !whole.matches("0+")) {
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

  private String digits(String otherwise) {
    int start = at;
    while (at < text.length() && asciiDigit(text.charAt(at))) {
      at++;
    }
    if (at == start) {
      throw fault(otherwise);
    }
    return text.substring(start, at);
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

  private static boolean asciiDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private char peek() {
    return at < text.length() ? text.charAt(at) : '\0';
  }

  private char next() {
    return text.charAt(at++);
  }

  private boolean take(char c) {
    if (peek() == c) {
      at++;
      return true;
    }
    return false;
  }

  private void skipSpaces() {
    while (peek() == ' ') {
      at++;
    }
  }

  private static String shown(String part) {
    return beginning(part, 16);
  }

  /** Never cuts a character that takes two places: half of one cannot be printed. */
  private static String beginning(String part, int longest) {
    if (part.length() <= longest) {
      return part;
    }
    int end = Character.isHighSurrogate(part.charAt(longest - 1)) ? longest - 1 : longest;
    return part.substring(0, end) + "…";
  }

  private LengthFormatException fault(String reason) {
    return new LengthFormatException(original, at, reason);
  }
}
