package org.proofcut.core.exposure;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;

/**
 * The two tables of the lifting equation. Table 5 is as printed at the rows that its test names;
 * its other rows, and the grips good and poor of Table 7, are from memory.
 */
public final class LiftTable {

  /** How long a day the lifting goes on. */
  public enum Span {
    /** Up to one hour, and 1.2 times as long of light work after it. */
    ONE_HOUR("up to one hour"),
    /** Up to two hours, and 0.3 times as long of light work after it. */
    TWO_HOURS("up to two hours"),
    EIGHT_HOURS("up to eight hours");

    private final String words;

    Span(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** How the load can be held. */
  public enum Grip {
    /** Handles, or a shape that the hand closes round. */
    GOOD("handles, or hands that close round it"),
    /** Fingers bent by a right angle under it. */
    FAIR("fingers under its edge"),
    POOR("nothing to hold: large, smooth or sagging");

    private final String words;

    Grip(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** One row: lifts in a minute, then for each span the multiplier low down and from 75 cm on. */
  private record Row(BigDecimal often, List<BigDecimal> multipliers) {

    private static Row of(String often, String... multipliers) {
      return new Row(
          new BigDecimal(often), Arrays.stream(multipliers).map(BigDecimal::new).toList());
    }
  }

  private static final List<Row> FREQUENCY =
      List.of(
          Row.of("0.2", "1.00", "1.00", ".95", ".95", ".85", ".85"),
          Row.of("0.5", ".97", ".97", ".92", ".92", ".81", ".81"),
          Row.of("1", ".94", ".94", ".88", ".88", ".75", ".75"),
          Row.of("2", ".91", ".91", ".84", ".84", ".65", ".65"),
          Row.of("3", ".88", ".88", ".79", ".79", ".55", ".55"),
          Row.of("4", ".84", ".84", ".72", ".72", ".45", ".45"),
          Row.of("5", ".80", ".80", ".60", ".60", ".35", ".35"),
          Row.of("6", ".75", ".75", ".50", ".50", ".27", ".27"),
          Row.of("7", ".70", ".70", ".42", ".42", ".22", ".22"),
          Row.of("8", ".60", ".60", ".35", ".35", ".18", ".18"),
          Row.of("9", ".52", ".52", ".30", ".30", ".00", ".15"),
          Row.of("10", ".45", ".45", ".26", ".26", ".00", ".13"),
          Row.of("11", ".41", ".41", ".00", ".23", ".00", ".00"),
          Row.of("12", ".37", ".37", ".00", ".21", ".00", ".00"),
          Row.of("13", ".00", ".34", ".00", ".00", ".00", ".00"),
          Row.of("14", ".00", ".31", ".00", ".00", ".00", ".00"),
          Row.of("15", ".00", ".28", ".00", ".00", ".00", ".00"));

  private LiftTable() {}

  /**
   * Table 5. Between two rows the one that is lifted more often: our own choice, on the safe side.
   *
   * @param low whether the hands are below 75 cm
   */
  static BigDecimal frequency(BigDecimal often, Span span, boolean low) {
    int column = 2 * span.ordinal() + (low ? 0 : 1);
    return FREQUENCY.stream()
        .filter(row -> row.often().compareTo(often) >= 0)
        .findFirst()
        .map(row -> row.multipliers().get(column))
        .orElse(BigDecimal.ZERO);
  }

  /** Table 7. */
  static BigDecimal grip(Grip grip, boolean low) {
    return switch (grip) {
      case GOOD -> BigDecimal.ONE;
      case FAIR -> low ? new BigDecimal("0.95") : BigDecimal.ONE;
      case POOR -> new BigDecimal("0.90");
    };
  }
}
