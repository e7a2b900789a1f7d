package org.proofcut.core.exposure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How much a hearing protector takes off in a laboratory, as marked on it.
 *
 * @param kind by which method it was rated
 * @param decibels as marked
 */
public record HearingRating(Kind kind, int decibels) {

  /** How such a thing is written. */
  public static final String EXAMPLES = "NRR 25, or SNR 32";

  /** By what a protector was rated; both are taken off a level in dBC. */
  public enum Kind {
    /** Noise reduction rating, of the United States. */
    NRR(33),
    /** Single number rating, of ISO 4869-2 (from memory). */
    SNR(39);

    /**
     * Highest that is found on the market: the first in a secondary copy, the other from memory.
     */
    private final int most;

    Kind(int most) {
      this.most = most;
    }
  }

  private static final int LEAST = 1;
  private static final int MOST = 45;

  /** A range, a fraction or a decimal is none of the two ratings. */
  private static final Pattern MARK =
      Pattern.compile(
          "\\b(?<kind>NRR|SNR)\\s*[:=]?\\s*(?<decibels>\\d{1,3})(?!\\d|\\s*[-–/.,]\\s*\\d)"
              + "\\s*(?:dB\\b)?",
          Pattern.CASE_INSENSITIVE);

  /** The number first is understood only where nothing else is said. */
  private static final Pattern NUMBER_FIRST =
      Pattern.compile(
          "\\s*(?<decibels>\\d{1,3})\\s*(?:dB\\s*)?(?<kind>NRR|SNR)\\s*", Pattern.CASE_INSENSITIVE);

  private static final Pattern KIND =
      Pattern.compile("\\b(?:NRR|SNR)(?=\\b|\\d)", Pattern.CASE_INSENSITIVE);

  public HearingRating {
    if (decibels < LEAST || decibels > MOST) {
      throw new IllegalArgumentException(decibels + " dB is no rating of a hearing protector");
    }
  }

  /**
   * The ratings that are marked on a protector, at most one of each kind, in the order written.
   * Nothing is guessed: a number without its kind, a kind with two numbers, or a number that no
   * protector reaches gives none at all.
   */
  public static List<HearingRating> read(String text) {
    var ratings = new ArrayList<HearingRating>();
    var whole = NUMBER_FIRST.matcher(text);
    var mark = whole.matches() ? whole.reset() : MARK.matcher(text);
    while (mark.find()) {
      int decibels = Integer.parseInt(mark.group("decibels"));
      var kind = Kind.valueOf(mark.group("kind").toUpperCase(Locale.ROOT));
      if (decibels < LEAST
          || decibels > MOST
          || ratings.stream().anyMatch(rating -> rating.kind == kind)) {
        return List.of();
      }
      ratings.add(new HearingRating(kind, decibels));
    }
    // A kind that stands there without a number of its own makes all of it unclear.
    return KIND.matcher(text).results().count() == ratings.size() ? ratings : List.of();
  }

  /** Every rating of a kind that a protector is marked with, the least first. */
  public static Stream<HearingRating> all(Kind kind) {
    return IntStream.rangeClosed(LEAST, kind.most)
        .mapToObj(decibels -> new HearingRating(kind, decibels));
  }

  /** As marked: {@code SNR 32}. */
  public String text() {
    return kind + " " + decibels;
  }
}
