package org.proofcut.core.evidence;

import java.util.Collection;
import java.util.Objects;

/**
 * Something that is wrong, in the shape that a person can act on.
 *
 * @param where the form field (such as {@code width}) or the place in a file ({@code
 *     file:line:col})
 * @param what what is wrong, with what was given
 * @param allowed what would be right: a range, a list or an example
 * @param doThis the one thing to do
 * @param force whether work has to stop for it
 */
public record Problem(String where, String what, String allowed, String doThis, Force force) {

  /** How much a problem weighs. */
  public enum Force {
    /** Nothing goes on until it is mended. */
    STOPS,
    /** It may go on; the maker should know. */
    WARNS
  }

  public Problem {
    Objects.requireNonNull(where);
    Objects.requireNonNull(force);
    if (what.isBlank() || allowed.isBlank() || doThis.isBlank()) {
      throw new IllegalArgumentException("a problem says what, what is allowed, and what to do");
    }
  }

  /** A problem that stops the work. */
  public static Problem stops(String where, String what, String allowed, String doThis) {
    return new Problem(where, what, allowed, doThis, Force.STOPS);
  }

  /** A problem that the maker should know and may go on with. */
  public static Problem warns(String where, String what, String allowed, String doThis) {
    return new Problem(where, what, allowed, doThis, Force.WARNS);
  }

  public boolean stops() {
    return force == Force.STOPS;
  }

  /** Whether any of these stops the work. */
  public static boolean anyStops(Collection<Problem> problems) {
    return problems.stream().anyMatch(Problem::stops);
  }
}
