package org.proofcut.core.setup;

import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;

/**
 * One run of the batch past the cutter.
 *
 * @param number from 1
 * @param stripOn whether the spacer strip lies between guide and work (or base)
 * @param depth how deep the cut is after this pass; at a planer the thickness that it is set to
 * @param takes the width that the cutter covers, from the reference edge of the work; may begin
 *     before the edge where part of the cutter is buried in the fence
 * @param engages which side of the cutter meets new wood
 * @param strips how many strips of a pack lie there; empty where there never is more than one
 * @param lies how the work is turned for this pass; empty where it lies the same way in all
 * @param planed what knives take off a whole face or edge; empty for every other cut
 * @param guideAt where the fence stands in this pass; empty where it never moves
 */
public record Pass(
    int number,
    boolean stripOn,
    Worked<Length> depth,
    Band takes,
    Engages engages,
    Optional<Integer> strips,
    Optional<Lies> lies,
    Optional<Planed> planed,
    Optional<Worked<Length>> guideAt) {

  /** A pass of work that always lies the same way, with one strip or none. */
  public Pass(int number, boolean stripOn, Worked<Length> depth, Band takes, Engages engages) {
    this(
        number,
        stripOn,
        depth,
        takes,
        engages,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** The same pass with so many strips of a pack; empty where there never is more than one. */
  Pass ofPack(Optional<Integer> strips) {
    return new Pass(number, stripOn, depth, takes, engages, strips, lies, planed, guideAt);
  }

  /** The same pass, with the work turned for it. */
  Pass turnedTo(Lies side) {
    return new Pass(
        number, stripOn, depth, takes, engages, strips, Optional.of(side), planed, guideAt);
  }

  /** The same pass, of knives that take this off. */
  Pass planing(Planed off) {
    return new Pass(
        number, stripOn, depth, takes, engages, strips, lies, Optional.of(off), guideAt);
  }

  /** The same pass, with the fence moved for it. */
  Pass withFenceAt(Worked<Length> fence) {
    return new Pass(
        number, stripOn, depth, takes, engages, strips, lies, planed, Optional.of(fence));
  }

  /**
   * What knives take off in one pass.
   *
   * @param where which face or edge is at the knives, in words
   * @param takes at the thickest place
   * @param leaves what is left there
   */
  public record Planed(String where, Length takes, Length leaves) {}

  /**
   * What lies between guide and work, in words such as "strip in" or "2 strips in".
   *
   * @param there what is said of a strip that lies there, such as "in"
   * @param gone what is said of one that does not
   */
  public String strips(String there, String gone) {
    if (strips.isEmpty()) {
      return "strip " + (stripOn ? there : gone);
    }
    int count = strips.get();
    return count == 0
        ? "all strips " + gone
        : count + (count == 1 ? " strip " : " strips ") + there;
  }

  Pass deeperBy(Length by) {
    var moved =
        Worked.called("depth of pass " + number + ", corrected")
            .by("as set before + correction")
            .with("as set before", depth)
            .with("correction", Worked.measured("correction from the proof cut", by))
            .is(depth.value().plus(by));
    return new Pass(number, stripOn, moved, takes, engages, strips, lies, planed, guideAt);
  }

  /** Which face of a piece that is turned between passes is where. */
  public enum Lies {
    MARKED_FACE_AT_FENCE("marked face against the fence"),
    OTHER_FACE_AT_FENCE("other face against the fence"),
    MARKED_FACE_DOWN("marked face down"),
    OTHER_FACE_DOWN("other face down");

    private final String words;

    Lies(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** The side of the cutter that meets new wood. */
  public enum Engages {
    /** A full-width cut: wood on both sides, the work held to its guide. */
    BOTH_SIDES,
    /** The side away from a table's fence: against the feed. */
    AWAY_FROM_GUIDE,
    /** The side toward a hand-held router's guide: against the feed. */
    TOWARD_GUIDE,
    /** The side where the bearing rides: against the feed. */
    AT_THE_BEARING,
    /** The outside of each round in a template: against the feed. */
    AT_THE_TEMPLATE,
    /** A bit: wood all round, and the floor. */
    ALL_ROUND,
    /** Knives across the feed, which run against it all over the face or edge. */
    WHOLE_FACE
  }
}
