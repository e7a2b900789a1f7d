package org.proofcut.core.evidence;

import java.util.Objects;
import java.util.Optional;

/**
 * Where a figure or a rule comes from.
 *
 * @param kind how far it binds
 * @param source title of the source, with edition or year; for common practice and the like, the
 *     words themselves
 * @param place where in the source: paragraph, table, page; empty where the whole is meant
 * @param own what a shop has of its own where this is cited, such as {@code this shop: 4 mm instead
 *     of 6 mm}; empty where it came with the program
 */
public record Citation(Kind kind, String source, String place, Optional<String> own) {

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
    Objects.requireNonNull(own);
  }

  /** What came with the program. */
  public Citation(Kind kind, String source, String place) {
    this(kind, source, place, Optional.empty());
  }

  /** The same source, cited for what a shop has of its own. */
  public Citation forOwn(String whatTheShopHas) {
    return new Citation(kind, source, place, Optional.of(whatTheShopHas));
  }

  /** In one line: {@code Machine rule, § 3 (law)}; what is the shop's own stands first. */
  public String text() {
    var where = place.isEmpty() ? source : source + ", " + place;
    var cited = where.equals(kind.words()) ? where : where + " (" + kind.words() + ")";
    return own.map(shop -> shop + "; " + cited).orElse(cited);
  }
}
