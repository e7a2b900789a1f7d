package org.proofcut.core.fit;

import org.proofcut.core.measure.Length;

/** What a given room between slot and entering part means at the bench. */
public enum Tightness {
  WILL_NOT_ENTER("will not go in"),
  MALLET("goes in with a mallet and seizes when glue swells it"),
  SNUG("snug"),
  RIGHT("right for glue"),
  SCREWED_ONLY("loose: only where screws hold it"),
  LOOSE("too loose");

  private final String words;

  Tightness(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  /** How tight a joint with this much room is; room on a limit counts to the better side. */
  public static Tightness of(Length room, FitLimits limits) {
    if (room.isNegative()) {
      return WILL_NOT_ENTER;
    }
    if (room.isLessThan(limits.leastRoom().value())) {
      return MALLET;
    }
    if (room.isLessThan(limits.rightFrom().value())) {
      return SNUG;
    }
    if (room.isAtMost(limits.mostRoom().value())) {
      return RIGHT;
    }
    return room.isAtMost(limits.mostRoomScrewed().value()) ? SCREWED_ONLY : LOOSE;
  }
}
