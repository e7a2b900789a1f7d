package org.proofcut.core.evidence;

import java.util.Objects;

/**
 * Where a figure or a rule comes from.
 *
 * @param kind how far it binds
 * @param source title of the source, with edition or year; for common practice and the like, the
 *     words themselves
 * @param place where in the source: paragraph, table, page; empty where the whole is meant
 */
public record Citation(Kind kind, String source, String place) {

  /** How far a source binds, the most binding first. */
  public enum Kind {
    LAW("law"),
    STANDARD("published standard"),
    HANDBOOK("handbook"),
    DATA_SHEET("data sheet"),
    COMMON_PRACTICE("common practice"),
    CHOSEN("our own choice"),
    GEOMETRY("geometry"),
    MEASURED("measured"),
    ENTERED("entered");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** What the trade does, with no published source. */
  public static final Citation COMMON_PRACTICE =
      new Citation(Kind.COMMON_PRACTICE, "common practice", "");

  /** What we settled on, where neither a source nor the trade says. */
  public static final Citation OWN_CHOICE = new Citation(Kind.CHOSEN, "our own choice", "");

  /** Follows from lines and angles alone. */
  public static final Citation GEOMETRY = new Citation(Kind.GEOMETRY, "follows from geometry", "");

  /** Read off a caliper, a rule or a scale. */
  public static final Citation MEASURED = new Citation(Kind.MEASURED, "measured", "");

  /** Chosen by the maker, in the job or the shop. */
  public static final Citation ENTERED = new Citation(Kind.ENTERED, "entered", "");

  public Citation {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(source);
    Objects.requireNonNull(place);
  }

  /** In one line: {@code Machine rule, § 3 (law)}. */
  public String text() {
    var where = place.isEmpty() ? source : source + ", " + place;
    return where.equals(kind.words()) ? where : where + " (" + kind.words() + ")";
  }
}
