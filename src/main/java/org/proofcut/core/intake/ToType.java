package org.proofcut.core.intake;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Stream;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.exposure.WeightUnit;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;

/**
 * What to type into a field, as the last sentence of what is wrong there, with an example that the
 * field takes: in its unit and within its range.
 */
final class ToType {

  /** Where a range begins at nothing, examples begin at this part of its end. */
  private static final int PART = 100;

  private static final Length SIXTEENTH = Length.ofInches(1, 16);
  private static final Length SIXTY_FOURTH = Length.ofInches(1, 64);
  private static final Length THOUSANDTH = Length.ofInches(1, 1000);

  private static final List<Angle> ANGLES =
      Stream.of("45", "22.5", "2", "0.5").map(Angle::parse).toList();
  private static final List<String> WEIGHTS = List.of("18", "1.5", "0.3", "0.05");

  private ToType() {}

  /** A length within a band. */
  static String length(Band allowed, LengthUnit unit) {
    return "Type it with its unit, such as %s; a number alone is in %s"
        .formatted(LengthTyped.of(example(allowed, unit), unit), words(unit));
  }

  /** A length, where what is right is said by others. */
  static String length(LengthUnit unit) {
    return "Type it with its unit; a number alone is in " + words(unit);
  }

  private static String words(LengthUnit unit) {
    return unit == LengthUnit.INCH ? "inches" : "millimetres";
  }

  /**
   * A round length that is as many times the least as the most is of it: of a band from 3 mm to 100
   * mm, 15 mm; its least where no round one is in it.
   */
  static Length example(Band allowed, LengthUnit unit) {
    var most = BigInteger.valueOf(allowed.most().picometres());
    var least =
        allowed.least().isPositive()
            ? BigInteger.valueOf(allowed.least().picometres())
            : most.divide(BigInteger.valueOf(PART));
    var middle = new Length(least.multiply(most).max(BigInteger.ZERO).sqrt().longValueExact());
    var round =
        middle.roundedTo(unit == LengthUnit.INCH ? step(middle) : half(middle), Rounding.NEAREST);
    return allowed.contains(round) ? round : allowed.least();
  }

  /** Five of what is written a digit behind its first. */
  private static Length half(Length middle) {
    long digit = 1;
    while (digit <= middle.picometres() / 100) {
      digit *= 10;
    }
    return new Length(digit * 5);
  }

  private static Length step(Length middle) {
    if (middle.isAtLeast(Length.ofInches(2, 1))) {
      return Length.ofInches(1, 2);
    }
    return middle.isAtLeast(Length.ofInches(1, 4))
        ? SIXTEENTH
        : middle.isAtLeast(SIXTEENTH) ? SIXTY_FOURTH : THOUSANDTH;
  }

  /** An angle from one to another. */
  static String angle(Angle least, Angle most) {
    var example =
        ANGLES.stream()
            .filter(one -> !one.isLessThan(least) && !one.isGreaterThan(most))
            .findFirst()
            .orElse(most);
    return "Type it in degrees, such as " + example;
  }

  /** A weight from one to another. */
  static String weight(Amount least, Amount most, LengthUnit unit) {
    var in = WeightUnit.beside(unit);
    var example =
        WEIGHTS.stream()
            .map(BigDecimal::new)
            .filter(one -> one.compareTo(in.of(least)) >= 0 && one.compareTo(in.of(most)) <= 0)
            .findFirst()
            .map(one -> new Amount(one, in.symbol()))
            .orElse(least);
    return "Type it with its unit, such as %s; a number alone is in %s"
        .formatted(example, in.symbol());
  }

  /** A number from one to another, with as many decimals as they have. */
  static String number(BigDecimal least, BigDecimal most) {
    var middle = least.add(most).divide(BigDecimal.valueOf(2), 0, RoundingMode.DOWN);
    return "Type the number alone, such as " + middle.max(least).min(most).toPlainString();
  }

  static String number(int least, int most) {
    return number(BigDecimal.valueOf(least), BigDecimal.valueOf(most));
  }

  /** A day; with its month as a word it can't be another one. */
  static String day() {
    return "Type the month as a word, such as 3 November 2027";
  }

  /** The speeds of a machine. */
  static String speeds() {
    return "Type each mark with its speed, the slowest first, such as 1: 8000, 2: 12000";
  }

  /** Several of a thickness. */
  static String layers(LengthUnit unit) {
    return "Type each thickness with how many there are, such as "
        + (unit == LengthUnit.INCH ? "1/8 in x 3, 1/16 in x 1" : "3.2 mm x 3, 1.6 mm x 1");
  }

  /** Words, where there are none. */
  static String words(Field field) {
    return "Type it in a few words"
        + (field.hint().startsWith("such as ") ? ", " + field.hint() : "");
  }

  /**
   * What to do about something that is wrong beside other fields, or in a way of its own.
   *
   * @param blank whether nothing was typed
   */
  static String instead(Field field, boolean blank, LengthUnit unit) {
    return switch (field.entry()) {
      case CHOICE, YES_NO -> choose(field);
      case LENGTH -> blank ? length(unit) : "Change it, or what it does not go with";
      case ANGLE, COUNT, DATE ->
          blank ? "Type what is asked for" : "Change it, or what it does not go with";
      case TEXT, NUMBER, SPEEDS -> blank ? "Type what is asked for" : "Type it that way";
    };
  }

  static String choose(Field field) {
    return field.choices().isEmpty()
        ? "Enter one first, then choose it here"
        : "Choose one of them";
  }
}
