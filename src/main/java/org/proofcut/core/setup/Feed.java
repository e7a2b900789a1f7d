package org.proofcut.core.setup;

/** Which way the work, or the machine, moves, and why. */
public enum Feed {
  /**
   * The cutter of a router table turns counter-clockwise seen from above; on the side away from the
   * fence its edges then meet the work, and press it to the fence.
   */
  RIGHT_TO_LEFT(
      "Feed right to left, against the cutter",
      "Seen from above the cutter turns counter-clockwise: fed this way it meets the work and"
          + " presses it to the fence."),
  /** A router in the hands turns clockwise seen from above. */
  AWAY_FROM_YOU(
      "Push away from you, straightedge on your left",
      "Seen from above the cutter turns clockwise: pushed this way the cut draws the base to the"
          + " straightedge."),
  /** As a router in the hands turns clockwise, wood lies on the left of its way. */
  COUNTER_CLOCKWISE_ROUND(
      "Move counter-clockwise round the piece, the wood on your left as you push",
      "Seen from above the cutter turns clockwise: moved this way its edges meet the wood and"
          + " draw the bearing to the edge."),
  CLOCKWISE_INSIDE(
      "Move clockwise round the opening, the wood on your left as you push",
      "Seen from above the cutter turns clockwise: moved this way its edges meet the wood and"
          + " draw the bearing to the edge."),
  CLOCKWISE_IN_THE_TEMPLATE(
      "Move clockwise inside the template, in rounds that widen from the middle",
      "Seen from above the cutter turns clockwise: moved this way it meets the wood outside its"
          + " round and draws the bush to the template."),
  /** The front teeth of a saw blade move down, and back toward the person. */
  INTO_THE_BLADE(
      "Push into the front of the blade",
      "The teeth at the front move down toward the table and hold the work on it."),
  /** At the bottom the teeth of a mitre saw run away from the person. */
  DOWN_ON_THE_WORK(
      "Bring the turning blade down through the work; a saw that slides: pull, lower, push",
      "At the bottom the teeth run toward the fence and press the work against it."),
  ALONG_THE_TRACK(
      "Push the saw away from you along the track",
      "The blade cuts up out of the work at the front, so the saw is pushed, never pulled."),
  /** A drill turns clockwise seen from above, and takes the work along that way if it can. */
  DOWN_INTO_THE_WORK(
      "Feed the bit in straight and steadily; lift it out for the chips",
      "Chips that can't get out jam the bit and burn the wall. A bit that jams turns the work, or"
          + " the drill in your hands."),
  /** At a jointer the head turns below the work. */
  OVER_THE_KNIVES(
      "Push from the lower table over the knives onto the higher one",
      "At the top of their circle the knives run against the feed, and hold the work back; fed the"
          + " other way they would throw it."),
  /** At a planer the head turns above the work. */
  UNDER_THE_KNIVES(
      "Feed in at the front; the rollers draw it through",
      "At the bottom of their circle the knives run against the feed; the rollers hold the work"
          + " against them.");

  private final String words;
  private final String why;

  Feed(String words, String why) {
    this.words = words;
    this.why = why;
  }

  public String words() {
    return words;
  }

  public String why() {
    return why;
  }
}
