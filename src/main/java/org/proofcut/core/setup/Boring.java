package org.proofcut.core.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.setup.CutAsked.Bored;
import org.proofcut.core.setup.CutAsked.Countersink;
import org.proofcut.core.setup.CutAsked.Holes;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.shop.Bit;
import org.proofcut.core.shop.Machine;

/**
 * What a bit has to do at one setting, on whatever machine turns it: how deep, what may stop it,
 * and what is measured on its proof.
 *
 * <p>A caliper finds no centre, so a proof is measured to the near wall, half a diameter nearer. A
 * bit is lifted for its chips each time it has gone in a few diameters (common practice).
 */
final class Boring {

  /**
   * The depth that is bored.
   *
   * @param depth from where the stop is zeroed
   * @param below how far the tip then stands below that
   * @param made diameter at the face
   * @param deep whether the depth is wood, that has to be long enough and to stay shut
   * @param measures of what is made, without its place
   */
  record Task(
      CutAsked asked,
      Worked<Length> depth,
      Worked<Length> below,
      Length made,
      String zeroedOn,
      boolean deep,
      List<Measure> measures) {}

  final Bit bit;
  final Conditions conditions;
  final SetupLimits limits;
  final Bored bored;
  final Work work;
  final Task task;
  private final Setting.Role ofDepth;
  private final Optional<Refusal> otherHole;

  /**
   * Holes with this bit.
   *
   * @param ofDepth the setting that makes the depth
   */
  Boring(Holes asked, Bit bit, Setting.Role ofDepth, Conditions conditions) {
    this(
        asked,
        asked.work(),
        bit,
        ofDepth,
        conditions,
        otherHole(asked, bit, conditions),
        boring -> boring.task(asked));
  }

  /** Seats of heads with this bit. */
  Boring(Countersink asked, Bit bit, Setting.Role ofDepth, Conditions conditions) {
    this(
        asked,
        asked.work(),
        bit,
        ofDepth,
        conditions,
        otherHole(asked, bit, conditions),
        boring -> boring.task(asked));
  }

  private Boring(
      Bored bored,
      Work work,
      Bit bit,
      Setting.Role ofDepth,
      Conditions conditions,
      Optional<Refusal> otherHole,
      Function<Boring, Task> task) {
    this.bit = bit;
    this.conditions = conditions;
    this.limits = conditions.limits();
    this.bored = bored;
    this.work = work;
    this.ofDepth = ofDepth;
    this.otherHole = otherHole;
    this.task = task.apply(this);
  }

  /** Why this bit does not make what was asked for, on whatever machine. */
  Optional<Refusal> otherHole() {
    return otherHole;
  }

  private Task task(Holes asked) {
    var depth =
        asked
            .depth()
            .orElseGet(
                () ->
                    Worked.called("depth of the bit")
                        .by("thickest stock + how far into the waste board")
                        .with(
                            "thickest stock",
                            Worked.measured(
                                "thickest reading of the stock", work.thickness().most()))
                        .with("how far into the waste board", limits.drill().beyondHole())
                        .from(limits.drill().beyondHole().source())
                        .is(work.thickness().most().plus(limits.drill().beyondHole().value())));
    var measures = new ArrayList<Measure>();
    measures.add(diameter(asked));
    asked
        .depth()
        .ifPresent(
            wanted ->
                measures.add(
                    measure(
                        Dimension.DEPTH,
                        "from the face of the scrap to the floor beside the mark of the point, in"
                            + " two holes",
                        wanted,
                        limits.settings().depthTolerance().value(),
                        ofDepth)));
    return new Task(
        asked,
        depth,
        point(),
        bit.diameter(),
        "with the outer edges of the bit on the face",
        true,
        measures);
  }

  /**
   * A cone as long as {@code point} is as wide as {@code diameter}: it touches the rim of a hole
   * {@code h} wide with {@code h · point ÷ diameter} below the face, and holds a head of {@code H}
   * when as much of {@code H} is below it, and what the head is to lie under the face.
   */
  private Task task(Countersink asked) {
    var length = Worked.entered("length of the cone", bit.point());
    var width = Worked.entered("diameter of the cone", bit.diameter());
    var depth =
        Worked.called("depth of the seat, from the rim of the hole")
            .by("(head − hole) × length of the cone ÷ its diameter + what the head lies below")
            .with("head", asked.head())
            .with("hole", asked.hole())
            .with("length of the cone", length)
            .with("its diameter", width)
            .with("what the head lies below", asked.under())
            .is(cone(asked.head().value().minus(asked.hole().value())).plus(asked.under().value()));
    var below =
        Worked.called("cone below the rim of the hole")
            .by("hole × length of the cone ÷ its diameter")
            .with("hole", asked.hole())
            .with("length of the cone", length)
            .with("its diameter", width)
            .is(cone(asked.hole().value()));
    return new Task(
        asked,
        depth,
        below,
        asked.head().value(),
        "with the cone on the rim of the hole",
        false,
        List.of(
            new Measure(
                Dimension.DEPTH,
                "from the face of the scrap to the head of a screw in it, in two holes",
                asked.under(),
                new Band(Length.ZERO, asked.under().value().times(2)),
                RouterCuts.TWO_READINGS,
                Optional.of(ofDepth),
                Optional.empty())));
  }

  private Length cone(Length across) {
    return across.inProportion(bit.point(), bit.diameter(), Length.HUNDREDTH, Rounding.NEAREST);
  }

  private Worked<Length> point() {
    return Worked.entered("point of " + bit.name(), bit.point());
  }

  /** Marked from the reference end, so that nothing adds up along. */
  Setting mark() {
    var row = bored.row();
    return Setting.of(
        Setting.Role.MARK,
        row.along().size() == 1
            ? "from the reference end"
            : "for the first hole, from the reference end; so are all the others",
        row.first().as("reference end to the first hole"),
        limits.settings().markStep());
  }

  /** Why this bit makes another hole than was asked for, if so. */
  static Optional<Refusal> otherHole(Holes asked, Bit bit, Conditions conditions) {
    boolean right =
        switch (bit.kind()) {
          case CUP -> true;
          case BRAD_POINT, TWIST -> !asked.flat();
          case COUNTERSINK, STEPPED -> false;
        };
    if (!right) {
      return Refusal.because(
          Refusal.Reason.CUTTER_DOES_NOT_FIT_MACHINE,
          bit.name() + " is a bit of another kind: " + bit.kind().words(),
          asked.flat() ? "Use a bit that leaves a flat floor" : "Use a brad point or a twist bit");
    }
    var accepted = accepted(asked, conditions);
    if (accepted.contains(bit.diameter())) {
      return Optional.empty();
    }
    boolean wide = bit.diameter().isGreaterThan(accepted.most());
    return Refusal.because(
        wide ? Refusal.Reason.CUTTER_TOO_WIDE : Refusal.Reason.CUTTER_TOO_NARROW,
        bit.name()
            + " makes "
            + conditions.caliper(bit.diameter())
            + ", the hole may be "
            + conditions.caliper(accepted.least())
            + " to "
            + conditions.caliper(accepted.most()),
        "Use a bit of " + conditions.caliper(asked.diameter().value()));
  }

  static Optional<Refusal> otherHole(Countersink asked, Bit bit, Conditions conditions) {
    if (bit.kind() != Bit.Kind.COUNTERSINK || !bit.point().isPositive()) {
      return Refusal.because(
          Refusal.Reason.CUTTER_DOES_NOT_FIT_MACHINE,
          bit.name() + " is a bit of another kind: " + bit.kind().words(),
          "Use a countersink");
    }
    return bit.diameter().isAtLeast(asked.head().value())
        ? Optional.empty()
        : Refusal.because(
            Refusal.Reason.CUTTER_TOO_NARROW,
            bit.name()
                + " is "
                + conditions.caliper(bit.diameter())
                + " wide, the head is "
                + conditions.caliper(asked.head().value()),
            "Use a wider countersink");
  }

  private static Band accepted(Holes asked, Conditions conditions) {
    return asked
        .accepted()
        .orElseGet(
            () ->
                Band.around(
                    asked.diameter().value(), conditions.limits().drill().holeTolerance().value()));
  }

  Optional<Refusal> turns(Machine machine, Length largest) {
    return bit.diameter().isAtMost(largest)
        ? Optional.empty()
        : Refusal.because(
            Refusal.Reason.CUTTER_DOES_NOT_FIT_MACHINE,
            bit.name()
                + " is larger than "
                + machine.name()
                + " turns: "
                + conditions.shown(largest),
            "Use a machine that turns larger bits");
  }

  Optional<Refusal> staysInside() {
    var made = task.made();
    var row = bored.row();
    var radius = made.half();
    var across = row.fromEdge().value();
    boolean inside =
        across.isGreaterThan(radius)
            && across.plus(radius).isLessThan(work.acrossGuide().least())
            && row.first().value().isGreaterThan(radius)
            && row.last().value().plus(radius).isLessThan(work.alongGuide().least());
    return inside
        ? Optional.empty()
        : Refusal.because(
            Refusal.Reason.WORK_TOO_SMALL,
            "A hole of "
                + conditions.shown(made)
                + ", "
                + conditions.shown(across)
                + " from the edge and "
                + conditions.shown(row.first().value())
                + " to "
                + conditions.shown(row.last().value())
                + " from the end, breaks out of a piece of "
                + conditions.shown(work.alongGuide().least())
                + " by "
                + conditions.shown(work.acrossGuide().least()),
            "Move the holes in, or bore them in a larger piece");
  }

  Optional<Refusal> goesDeepEnough(Length depth) {
    if (!task.deep()) {
      return Optional.empty();
    }
    if (depth.isGreaterThan(bit.length())) {
      return Refusal.because(
          Refusal.Reason.CUTTER_TOO_SHORT,
          bit.name()
              + " bores "
              + conditions.shown(bit.length())
              + " at most, the hole is "
              + conditions.shown(depth)
              + " deep",
          "Use a longer bit");
    }
    if (isThrough(task.asked())) {
      return Optional.empty();
    }
    var left = work.thickness().least().minus(depth).minus(bit.point());
    return left.isAtLeast(limits.drill().leastUnderPoint().value())
        ? Optional.empty()
        : Refusal.because(
            Refusal.Reason.TOO_DEEP,
            "The point of "
                + bit.name()
                + " would reach "
                + conditions.caliper(depth.plus(bit.point()))
                + " into stock that is "
                + conditions.caliper(work.thickness().least())
                + " at its thinnest; at least "
                + conditions.caliper(limits.drill().leastUnderPoint().value())
                + " stays below it",
            "Make the hole shallower, or use a bit with a shorter point");
  }

  private static boolean isThrough(CutAsked asked) {
    return asked instanceof Holes holes && holes.depth().isEmpty();
  }

  /** The bit is lifted each time it has gone in a few diameters. */
  List<Pass> plunges(Worked<Length> depth) {
    var radius = bit.diameter().half();
    var across = bored.row().fromEdge().value();
    return plunges(depth, new Band(across.minus(radius), across.plus(radius)), bit, limits);
  }

  static List<Pass> plunges(Worked<Length> depth, Band takes, Bit bit, SetupLimits limits) {
    var lift = bit.diameter().times(limits.drill().diametersToLift().value());
    var passes = new ArrayList<Pass>();
    for (var reached = lift; reached.isLessThan(depth.value()); reached = reached.plus(lift)) {
      int number = passes.size() + 1;
      passes.add(
          new Pass(
              number,
              false,
              Worked.called("depth of plunge " + number)
                  .by("plunge × diameters before it is lifted × diameter")
                  .with("plunge", Worked.given("number of the plunge", number, depth.source()))
                  .with("diameters before it is lifted", limits.drill().diametersToLift())
                  .with("diameter", Worked.entered("diameter of the bit", bit.diameter()))
                  .from(limits.drill().diametersToLift().source())
                  .is(reached),
              takes,
              Pass.Engages.ALL_ROUND));
    }
    passes.add(new Pass(passes.size() + 1, false, depth, takes, Pass.Engages.ALL_ROUND));
    return passes;
  }

  private Measure diameter(Holes asked) {
    return new Measure(
        Dimension.DIAMETER,
        "across the hole, two ways",
        asked.diameter(),
        accepted(asked, conditions),
        RouterCuts.TWO_READINGS,
        Optional.empty(),
        Optional.empty());
  }

  List<Measure> measures(Setting across, Setting along) {
    if (!task.deep()) {
      // The cone finds the hole that is there.
      return task.measures();
    }
    var measures = new ArrayList<>(task.measures());
    var row = bored.row();
    measures.add(
        measure(
            Dimension.DISTANCE,
            "from the reference edge of the scrap to the near wall of two holes, well apart",
            nearWall("reference edge", row.fromEdge()),
            limits.settings().distanceTolerance().value(),
            across.role()));
    measures.add(
        measure(
            Dimension.FROM_END,
            "from the reference end of the scrap to the near wall of the first hole, twice",
            nearWall("reference end", row.first()),
            limits.settings().distanceTolerance().value(),
            along.role()));
    return measures;
  }

  private Worked<Length> nearWall(String from, Worked<Length> centre) {
    var diameter = Worked.entered("diameter of the bit", bit.diameter());
    return Worked.called(from + " to the near wall")
        .by("to the centre − diameter ÷ 2")
        .with("to the centre", centre)
        .with("diameter", diameter)
        .is(centre.value().minus(bit.diameter().half()));
  }

  private static Measure measure(
      Dimension dimension,
      String what,
      Worked<Length> target,
      Length tolerance,
      Setting.Role correctedBy) {
    return new Measure(
        dimension,
        what,
        target,
        Band.around(target.value(), tolerance),
        RouterCuts.TWO_READINGS,
        Optional.of(correctedBy),
        Optional.empty());
  }

  /**
   * Whether what is set comes near enough to what is wanted.
   *
   * @param across and {@code along}: the settings that place it
   * @param depth that the bit then bores
   */
  Optional<Refusal> settable(List<Measure> measures, Setting across, Setting along, Length depth) {
    var radius = bit.diameter().half();
    for (var measure : measures) {
      var asSet =
          switch (measure.dimension()) {
            case DIAMETER -> bit.diameter();
            case DEPTH -> depth.minus(task.depth().value()).plus(measure.target().value());
            case DISTANCE -> across.set().value().minus(radius);
            case FROM_END -> along.set().value().minus(radius);
            case WIDTH, SIZE, RUN_ACROSS, RUN_THROUGH, RUN_ALONG ->
                throw new AssertionError("no bit makes a width");
          };
      var refusal = RouterCuts.settable(measure, asSet, conditions);
      if (refusal.isPresent()) {
        return refusal;
      }
    }
    return Optional.empty();
  }
}
