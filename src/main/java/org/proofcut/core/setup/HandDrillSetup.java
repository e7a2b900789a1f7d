package org.proofcut.core.setup;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.shop.Bit;
import org.proofcut.core.shop.HandDrill;

/**
 * Holes with a drill in the hands: the collar stands {@code guide + depth + point} from the tip.
 */
final class HandDrillSetup {

  private final Boring boring;
  private final HandDrill drill;

  private HandDrillSetup(Boring boring, HandDrill drill) {
    this.boring = boring;
    this.drill = drill;
  }

  /** The set-up, or why this drill and bit can't make it. */
  static Answer of(Boring boring, HandDrill drill) {
    return new HandDrillSetup(boring, drill).answer();
  }

  private Answer answer() {
    var row = boring.bored.row();
    var line =
        Setting.of(
            Setting.Role.LINE,
            "struck along the reference edge, to the centre of the bit",
            row.fromEdge().as("reference edge to the line"),
            boring.limits.settings().markStep());
    var place = boring.mark();
    var guide =
        Worked.entered(
            drill.hasGuide() ? "height of the drill guide" : "height of a drill guide: none",
            drill.guideHeight());
    var collar =
        Setting.of(
            Setting.Role.COLLAR,
            "from the tip of the bit",
            Worked.called("tip of the bit to the collar")
                .by("guide + depth + point")
                .with("guide", guide)
                .with("depth", boring.task.depth())
                .with("point", boring.task.below())
                .is(
                    guide
                        .value()
                        .plus(boring.task.depth().value())
                        .plus(boring.task.below().value())),
            drill.collarStep());
    var reached = collar.set().value().minus(guide.value()).minus(boring.task.below().value());
    var measures = boring.measures(line, place);
    var speed = Speeds.choose(drill, boring.bit, boring.bored.material(), boring.limits);
    var refusal =
        Refusal.firstOf(
            boring.otherHole(),
            boring.turns(drill, drill.largestBit()),
            guided(),
            boring.staysInside(),
            boring.goesDeepEnough(reached),
            collarReaches(
                boring.bit,
                collar.set().value(),
                "Use a longer boring.bit, or a lower guide",
                boring.conditions),
            clamped(),
            boring.settable(measures, line, place, reached),
            speed.refusal());
    if (refusal.isPresent()) {
      return refusal.get();
    }
    return new Setup(
        boring.task.asked(),
        drill,
        boring.bit,
        drill.hasGuide() ? Guide.DRILL_GUIDE : Guide.MARKS,
        List.of(line, place, collar),
        boring.plunges(
            boring.task.depth().value().equals(reached)
                ? boring.task.depth()
                : asSet(collar, guide, reached)),
        speed.speed().orElseThrow(),
        Feed.DOWN_INTO_THE_WORK,
        measures);
  }

  private Worked<Length> asSet(Setting collar, Worked<Length> guide, Length reached) {
    return Worked.called("depth of the boring.bit, as set")
        .by("collar − guide − point")
        .with("collar", collar.set())
        .with("guide", guide)
        .with("point", boring.task.below())
        .is(reached);
  }

  /** A wide bit catches on one side first and twists a wrist. */
  private Optional<Refusal> guided() {
    return boring.bit.kind() != Bit.Kind.CUP || drill.hasGuide()
        ? Optional.empty()
        : Refusal.because(
            Refusal.Reason.AID_MISSING,
            boring.bit.name() + " catches and kicks in a drill that nothing keeps square",
            "Use a drill press, or enter the guide that is clamped on the boring.work");
  }

  /**
   * Why a bit can't carry its collar so far from the tip, if so.
   *
   * @param instead what would help
   */
  static Optional<Refusal> collarReaches(
      Bit bit, Length collar, String instead, Conditions conditions) {
    var whole = bit.length().plus(bit.point());
    return collar.isAtMost(whole)
        ? Optional.empty()
        : Refusal.because(
            Refusal.Reason.CUTTER_TOO_SHORT,
            "The collar would stand "
                + conditions.shown(collar)
                + " from the tip, and "
                + bit.name()
                + " stands out "
                + conditions.shown(whole),
            instead);
  }

  private Optional<Refusal> clamped() {
    return boring.conditions.aids().contains("clamps")
        ? Optional.empty()
        : Refusal.because(
            Refusal.Reason.AID_MISSING,
            "Work under a drill in the hands has to be clamped, and the shop has no clamps entered",
            "Enter clamps in the shop if there are any");
  }
}
