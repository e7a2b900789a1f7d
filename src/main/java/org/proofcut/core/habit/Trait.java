package org.proofcut.core.habit;

import java.util.Optional;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.shop.RouterTable;

/**
 * One thing that proof cuts can tell of a machine or a cutter.
 *
 * <p>What a machine is set to is kept by machine <em>and</em> cutter: a scale that was zeroed on
 * one cutter's edge is off by another amount with a cutter of another size, and a cutter that runs
 * out cuts on both sides of the edge that the fence was measured to.
 */
public sealed interface Trait {

  /** How wide a straight cutter cuts in one pass, or a saw blade: its kerf. */
  record CutWidth(String cutter) implements Trait {}

  /**
   * By how much a stacked cutter cuts wider than its parts come to; negative where narrower. Kept
   * for all stacks of it together: paint, dust and the run-out of its outer blades are in each.
   */
  record StackWider(String cutter) implements Trait {}

  /** From the base edge of a hand-held router to the cutting edge nearest to the guide. */
  record BaseToEdge(String machine, String cutter) implements Trait {}

  /** By how much cuts come out larger than the scale was set to; negative where smaller. */
  record ScaleOffset(String machine, String cutter, Datum datum) implements Trait {}

  /** What a scale is read between. */
  enum Datum {
    FENCE_TO_NEAREST_EDGE("fence"),
    /** A rabbet's fence is measured to the other side of the cutter: another figure altogether. */
    FENCE_TO_FARTHEST_EDGE("fence, to the farthest cutting edge"),
    FENCE_TO_CENTRE("fence, to the centre of the bit"),
    STOP("stop"),
    STOP_ON_GAUGE("stop on the gauge's facing"),
    TRACK("track"),
    HEIGHT("height scale"),
    DEPTH("depth stop");

    private final String words;

    Datum(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }

    /** The scale that a setting of a set-up is read on, where proofs can tell how it is off. */
    static Optional<Datum> of(Setup setup, Setting.Role role) {
      boolean toFarEdge =
          setup.machine() instanceof RouterTable
              && (setup.asked() instanceof CutAsked.Rabbet
                  || setup.asked() instanceof CutAsked.Tongue);
      boolean told =
          setup.measures().stream().anyMatch(one -> one.correctedBy().equals(Optional.of(role)));
      // Both walls come of a centred groove's fence, and a profile's stands in line with a bearing:
      // neither is the figure that a slot or a rabbet tells of.
      boolean otherFence =
          role == Setting.Role.FENCE
              && (setup.asked() instanceof CutAsked.CentredGroove
                  || setup.asked() instanceof CutAsked.EdgeProfile
                  || setup.asked() instanceof CutAsked.EdgeTrim);
      // Set to the far side of the teeth by rule; no scale reads that side.
      boolean byRule =
          setup.asked() instanceof CutAsked.Step step
              && !step.onEdge()
              && role != Setting.Role.HEIGHT;
      if (!told || otherFence || byRule) {
        return Optional.empty();
      }
      if (setup.asked() instanceof CutAsked.Bored) {
        return ofBoring(role);
      }
      return switch (role) {
        case FENCE -> Optional.of(toFarEdge ? FENCE_TO_FARTHEST_EDGE : FENCE_TO_NEAREST_EDGE);
        // A stop beside the blade is set by caliper, one on the sled by its scale.
        case STOP ->
            switch (setup.guide()) {
              case SLED -> Optional.of(STOP);
              case GAUGE -> Optional.of(STOP_ON_GAUGE);
              case FENCE,
                  FENCE_WITH_BLOCK,
                  CARRIER,
                  STRAIGHTEDGE,
                  SAW_FENCE,
                  TRACK,
                  MARKS,
                  DRILL_GUIDE,
                  POCKET_JIG,
                  TEMPLATE,
                  BEARING,
                  BEARING_WITH_PIN,
                  ROLLERS ->
                  Optional.empty();
            };
        case MARK -> Optional.of(TRACK);
        case HEIGHT -> Optional.of(HEIGHT);
        case DEPTH -> Optional.of(DEPTH);
        // Strip and shim are calipered; a straightedge is laid by what is known of base and cutter.
        case STRIP, SHIM, OPENING_LENGTH, OPENING_WIDTH, STRAIGHTEDGE, STOP_OFFSET, STOPS_APART ->
            Optional.empty();
        case LINE, COLLAR -> throw new AssertionError("set for holes alone");
      };
    }

    private static Optional<Datum> ofBoring(Setting.Role role) {
      return switch (role) {
        case FENCE -> Optional.of(FENCE_TO_CENTRE);
        case STOP -> Optional.of(STOP);
        case DEPTH -> Optional.of(DEPTH);
        // A mark is struck anew each time; a collar is set by caliper.
        case MARK, LINE, COLLAR -> Optional.empty();
        case STRIP,
            SHIM,
            OPENING_LENGTH,
            OPENING_WIDTH,
            HEIGHT,
            STRAIGHTEDGE,
            STOP_OFFSET,
            STOPS_APART ->
            throw new AssertionError("no hole is set by a " + role);
      };
    }
  }

  /** Id of the cutter that this is known of. */
  String cutter();

  /** Whether this is known of that machine. */
  default boolean isOfMachine(String id) {
    if (this instanceof BaseToEdge base) {
      return base.machine.equals(id);
    }
    return this instanceof ScaleOffset scale && scale.machine.equals(id);
  }

  /** Whether it is a size by itself, and not how far something comes out off what it should. */
  default boolean isSize() {
    return this instanceof CutWidth || this instanceof BaseToEdge;
  }

  /** What an observation says of this: a size of its own, or how far a scale was off. */
  default Length valueOf(Length set, Length found) {
    return isSize() ? found : found.minus(set);
  }

  /** Names it in an address or a form, such as {@code scale~saw~blade~stop}. */
  default String id() {
    if (this instanceof CutWidth width) {
      return "width~" + width.cutter;
    }
    if (this instanceof StackWider stack) {
      return "stack~" + stack.cutter;
    }
    if (this instanceof BaseToEdge base) {
      return "base~" + base.machine + "~" + base.cutter;
    }
    var scale = (ScaleOffset) this;
    var datum = scale.datum.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    return "scale~" + scale.machine + "~" + scale.cutter + "~" + datum;
  }
}
