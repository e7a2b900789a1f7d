package org.proofcut.core.setup;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.boring.PocketHole;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.setup.CutAsked.Pocket;
import org.proofcut.core.shop.Bit;
import org.proofcut.core.shop.HandDrill;

/**
 * Pocket holes with a jig and a stepped bit: the collar on the bit says how deep, and so where the
 * screw's head lands and its tip ends. A collar set farther from the tip lets the head in deeper,
 * and the tip out farther by as much; so a proof is a screw in scrap, measured from the end to its
 * tip.
 */
public final class PocketSetup {

  private final Pocket asked;
  private final HandDrill drill;
  private final Bit bit;
  private final Conditions conditions;
  private final SetupLimits limits;

  private PocketSetup(Pocket asked, HandDrill drill, Bit bit, Conditions conditions) {
    this.asked = asked;
    this.drill = drill;
    this.bit = bit;
    this.conditions = conditions;
    this.limits = conditions.limits();
  }

  /** The set-up, or why this drill, bit and screw can't make it. */
  public static Answer of(Pocket asked, HandDrill drill, Bit bit, Conditions conditions) {
    if (bit.kind() != Bit.Kind.STEPPED || !bit.point().isPositive()) {
      return new Refusal(
          Refusal.Reason.CUTTER_DOES_NOT_FIT_MACHINE,
          bit.name() + " is a bit of another kind: " + bit.kind().words(),
          "Use the stepped bit that belongs to the jig");
    }
    return new PocketSetup(asked, drill, bit, conditions).answer();
  }

  private Answer answer() {
    var hole = asked.with(bit);
    var collar =
        Setting.of(
            Setting.Role.COLLAR,
            "from the tip of the bit",
            hole.collar(asked.guide()),
            drill.collarStep());
    var mark =
        Setting.of(
            Setting.Role.MARK,
            asked.row().along().size() == 1
                ? "from the reference edge to the middle of the pocket"
                : "for the first pocket, from the reference edge; so are all the others",
            asked.row().first(),
            limits.settings().markStep());
    var speed = Speeds.choose(drill, bit, asked.material(), limits);
    var refusal =
        Refusal.firstOf(
            jig(),
            turns(),
            HandDrillSetup.collarReaches(
                bit,
                collar.set().value(),
                "Use a longer bit, or a jig with a shorter guide",
                conditions),
            staysInside(),
            holds(hole),
            speed.refusal());
    if (refusal.isPresent()) {
      return refusal.get();
    }
    var bored =
        Worked.called("bored along the axis")
            .by("collar − guide")
            .with("collar", collar.set())
            .with("guide", asked.guide())
            .is(collar.set().value().minus(asked.guide().value()));
    var radius = bit.diameter().half();
    var middle = asked.row().fromEdge().value();
    return new Setup(
        asked,
        drill,
        bit,
        Guide.POCKET_JIG,
        List.of(collar, mark),
        Boring.plunges(bored, new Band(middle.minus(radius), middle.plus(radius)), bit, limits),
        speed.speed().orElseThrow(),
        Feed.DOWN_INTO_THE_WORK,
        List.of(tip(hole)));
  }

  private Measure tip(PocketHole hole) {
    var bite = hole.bite(asked.screw());
    return new Measure(
        Measure.Dimension.DEPTH,
        "from the end of the scrap to the tip of a screw driven home in it, along the screw, in two"
            + " pockets",
        bite,
        Band.around(bite.value(), limits.drill().pocketTolerance().value()),
        RouterCuts.TWO_READINGS,
        Optional.of(Setting.Role.COLLAR),
        Optional.empty());
  }

  private Optional<Refusal> jig() {
    return conditions.aids().contains("pocket-jig")
        ? Optional.empty()
        : Refusal.because(
            Refusal.Reason.AID_MISSING,
            "A pocket hole wants a jig that leads the bit, and the shop has none entered",
            "Enter the jig in the shop if there is one");
  }

  private Optional<Refusal> turns() {
    return bit.diameter().isAtMost(drill.largestBit())
        ? Optional.empty()
        : Refusal.because(
            Refusal.Reason.CUTTER_DOES_NOT_FIT_MACHINE,
            bit.name()
                + " is larger than "
                + drill.name()
                + " turns: "
                + conditions.shown(drill.largestBit()),
            "Use a drill that turns larger bits");
  }

  private Optional<Refusal> staysInside() {
    var row = asked.row();
    var radius = bit.diameter().half();
    var inside =
        row.first().value().isGreaterThan(radius)
            && row.last().value().plus(radius).isLessThan(asked.work().alongGuide().least())
            && mouthEnd().isLessThan(asked.work().acrossGuide().least());
    return inside
        ? Optional.empty()
        : Refusal.because(
            Refusal.Reason.WORK_TOO_SMALL,
            "A pocket would break out of a part "
                + conditions.shown(asked.work().alongGuide().least())
                + " wide and "
                + conditions.shown(asked.work().acrossGuide().least())
                + " long: its mouth ends "
                + conditions.shown(mouthEnd())
                + " from the joint",
            "Move it in, or join the parts another way");
  }

  private Length mouthEnd() {
    return asked.with(bit).section(asked.screw()).mouthFar().x().negated();
  }

  /** A tip that shows or a screw that hardly holds is no set-up, with what would do. */
  private Optional<Refusal> holds(PocketHole hole) {
    var other =
        new PocketHole.Other(
            asked.deep(),
            asked.thick(),
            limits.drill().leastBeyondTip(),
            limits.drill().leastBite());
    var problems = hole.problems(asked.screw(), other, conditions.unit());
    if (problems.isEmpty()) {
      return Optional.empty();
    }
    var first = problems.stream().filter(Problem::stops).findFirst().orElse(problems.get(0));
    boolean screw = first.where().equals("screw");
    return Refusal.because(
        screw ? Refusal.Reason.TOO_DEEP : Refusal.Reason.CUTTER_DOES_NOT_FIT_MACHINE,
        first.what() + ": right is " + first.allowed(),
        screw ? screwsThatDo(hole) : first.doThis());
  }

  /**
   * From the shortest that bites to the longest whose tip stays inside: bite {@code (deep − left) ÷
   * cos a}, and where the faces are flush {@code (thick − left − exit) ÷ sin a}.
   */
  private String screwsThatDo(PocketHole hole) {
    var head = hole.underTheHead().value();
    var shortest = head.plus(limits.drill().leastBite().value());
    var left = limits.drill().leastBeyondTip().value();
    var angle = asked.angle().value();
    var bite =
        asked.deep().value().minus(left).times(angle.secant(), Length.HUNDREDTH, Rounding.DOWN);
    if (asked.thick().isPresent()) {
      var down = asked.thick().get().value().minus(left).minus(asked.exit().value());
      var oneOverSine = Angle.RIGHT.minus(angle).secant();
      bite = bite.min(down.times(oneOverSine, Length.HUNDREDTH, Rounding.DOWN));
    }
    var longest = head.plus(bite);
    var wanted = hole.tipBeyondJoint(asked.screw()).value().plus(left);
    if (longest.isLessThan(shortest)) {
      return "No screw does in a part so small: the shortest that holds, "
          + conditions.caliper(shortest)
          + ", needs a larger one";
    }
    return "Use a screw of "
        + conditions.caliper(shortest)
        + " to "
        + conditions.caliper(longest)
        + (wanted.isGreaterThan(asked.deep().value())
            ? ", or for this one a part that reaches "
                + conditions.shown(wanted)
                + " from the joint"
            : "");
  }
}
