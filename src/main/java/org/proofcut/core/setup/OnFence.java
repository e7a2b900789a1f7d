package org.proofcut.core.setup;

import java.util.Optional;
import org.proofcut.core.measure.Length;

/** What is asked of work that rides a fence, whatever machine the fence belongs to. */
final class OnFence {

  private OnFence() {}

  /**
   * Why an edge is too short to ride it, if so.
   *
   * @param wanted shortest edge that may ride it at this machine
   * @param instead what to do with a shorter one
   */
  static Optional<Refusal> longEnough(
      Work work, Length wanted, String instead, Conditions conditions) {
    var shortest = work.alongGuide().least();
    if (shortest.isAtLeast(wanted)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.WORK_TOO_SMALL,
        "An edge of only "
            + conditions.shown(shortest)
            + " would ride the fence; at least "
            + conditions.shown(wanted)
            + " is wanted",
        instead);
  }

  /** Whether a piece reaches so far out that its edge on the fence does not guide it. */
  static boolean tips(Work work, Conditions conditions) {
    return work.alongGuide()
        .least()
        .times(conditions.limits().router().overhangToContact().value())
        .isLessThan(work.acrossGuide().most());
  }

  /** Why the work is not to be cut like that, where it tips. */
  static Optional<Refusal> doesNotGuide(Work work, String instead, Conditions conditions) {
    return Refusal.because(
        Refusal.Reason.END_TOO_SHORT_ON_FENCE,
        "An end of "
            + conditions.shown(work.alongGuide().least())
            + " on the fence does not guide a piece that reaches out "
            + conditions.shown(work.acrossGuide().most()),
        instead);
  }
}
