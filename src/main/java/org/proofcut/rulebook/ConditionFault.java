package org.proofcut.rulebook;

import java.util.List;

/** What is wrong with a condition, and where in its text, counted from 0. */
public sealed interface ConditionFault {

  int column();

  /**
   * A name that is not known.
   *
   * @param kind what it should be the name of
   * @param known the names that would be
   */
  record UnknownName(int column, String kind, String name, List<String> known)
      implements ConditionFault {}

  /**
   * Anything else.
   *
   * @param allowed what would be right
   */
  record Wrong(int column, String what, String allowed) implements ConditionFault {}
}
