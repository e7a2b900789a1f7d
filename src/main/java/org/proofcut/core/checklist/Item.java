package org.proofcut.core.checklist;

import org.proofcut.core.safety.Check.Pause;
import org.proofcut.core.setup.Setting;

/**
 * One thing to confirm. Each kind says what confirming it means.
 *
 * <p>The id is stable for the operation: the record refers to it.
 */
public sealed interface Item {

  String id();

  Pause pause();

  /** A figure to set; confirmed by reading it back. */
  record Figure(Setting.Role role) implements Item {
    @Override
    public String id() {
      return "figure:" + role.name().toLowerCase(java.util.Locale.ROOT);
    }

    @Override
    public Pause pause() {
      return Pause.SET;
    }
  }

  /** Something to look at or touch; confirmed by its answer. */
  record Look(String id, Pause pause, String ask, String answer) implements Item {}

  /**
   * Protective gear to put on or take off; confirmed by its answer.
   *
   * @param kind id of the kind of gear
   * @param name what the maker calls the piece at hand, or the kind where there is none
   * @param place where it lives; empty where unknown
   * @param atHand whether the shop owns one; always true where it is to be taken off
   */
  record Gear(
      String kind, boolean on, String name, String place, boolean atHand, String ask, String answer)
      implements Item {
    @Override
    public String id() {
      return "gear:" + kind + (on ? ":on" : ":off");
    }

    @Override
    public Pause pause() {
      return Pause.BEFORE_POWER;
    }
  }
}
