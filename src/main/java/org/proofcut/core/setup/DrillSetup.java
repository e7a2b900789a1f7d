package org.proofcut.core.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.setup.CutAsked.Bored;
import org.proofcut.core.setup.CutAsked.Countersink;
import org.proofcut.core.setup.CutAsked.Holes;
import org.proofcut.core.setup.CutAsked.Row;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.shop.Bit;
import org.proofcut.core.shop.DrillPress;
import org.proofcut.core.shop.HandDrill;
import org.proofcut.core.shop.Machine;

/**
 * Holes square to a face, at a drill press or with a drill in the hands.
 *
 * <p>At the press the fence stands as far behind the centre of the bit as the holes lie from the
 * reference edge, and the depth stop is counted from where the outer edges touch the face: point or
 * spur then goes deeper than the wall. In the hands the collar stands {@code guide + depth + point}
 * from the tip. A caliper finds no centre, so a proof is measured to the near wall, half a diameter
 * nearer. A bit is lifted for its chips each time it has gone in a few diameters (common practice).
 */
public final class DrillSetup {

  /**
   * What the bit has to do, beside where.
   *
   * @param depth from where the stop is zeroed
   * @param below how far the tip then stands below that
   * @param made diameter at the face
   * @param deep whether the depth is wood, that has to be long enough and to stay shut
   * @param measures of what is made, without its place
   */
  private record Task(
      CutAsked asked,
      Worked<Length> depth,
      Worked<Length> below,
      Length made,
      String zeroedOn,
      boolean deep,
      List<Measure> measures) {}

  private final Machine machine;
  private final Bit bit;
  private final Conditions conditions;
  private final SetupLimits limits;
  private final Bored bored;
  private final Work work;

  private DrillSetup(CutAsked asked, Bored bored, Machine machine, Bit bit, Conditions conditions) {
    this.machine = machine;
    this.bit = bit;
    this.conditions = conditions;
    this.limits = conditions.limits();
    this.bored = bored;
    this.work = asked.work();
  }

  /** The set-up for holes at a drill press, or why this press and bit can't make them. */
  public static Answer holes(Holes asked, DrillPress press, Bit bit, Conditions conditions) {
    var setup = new DrillSetup(asked, asked, press, bit, conditions);
    return setup.atPress(setup.task(asked), press, otherHole(asked, bit, conditions));
  }

  /** The set-up for holes with a drill in the hands, or why this drill and bit can't make them. */
  public static Answer holes(Holes asked, HandDrill drill, Bit bit, Conditions conditions) {
    var setup = new DrillSetup(asked, asked, drill, bit, conditions);
    return setup.byHand(setup.task(asked), drill, otherHole(asked, bit, conditions));
  }

  /** Whether this bit makes these holes, on whatever machine. */
  public static boolean serves(Holes asked, Bit bit, Conditions conditions) {
    return otherHole(asked, bit, conditions).isEmpty();
  }

  /** Whether this bit makes these seats, on whatever machine. */
  public static boolean serves(Countersink asked, Bit bit, Conditions conditions) {
    return otherHole(asked, bit, conditions).isEmpty();
  }

  /** The set-up for seats of heads at a drill press, or why it can't make them. */
  public static Answer countersink(
      Countersink asked, DrillPress press, Bit bit, Conditions conditions) {
    var setup = new DrillSetup(asked, asked, press, bit, conditions);
    return setup.atPress(setup.task(asked), press, otherHole(asked, bit, conditions));
  }

  /** The same with a drill in the hands. */
  public static Answer countersink(
      Countersink asked, HandDrill drill, Bit bit, Conditions conditions) {
    var setup = new DrillSetup(asked, asked, drill, bit, conditions);
    return setup.byHand(setup.task(asked), drill, otherHole(asked, bit, conditions));
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
                        ofDepth())));
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
                Optional.of(ofDepth()),
                Optional.empty())));
  }

  private Length cone(Length across) {
    return across.inProportion(bit.point(), bit.diameter(), Length.HUNDREDTH, Rounding.NEAREST);
  }

  private Setting.Role ofDepth() {
    return machine instanceof DrillPress ? Setting.Role.DEPTH : Setting.Role.COLLAR;
  }

  // ---- at the press --------------------------------------------------------------------------

  private Answer atPress(Task task, DrillPress press, Optional<Refusal> serves) {
    var row = bored.row();
    var fence =
        Setting.of(
            Setting.Role.FENCE,
            "to the centre of the bit: half its diameter beyond its near side",
            row.fromEdge().as("fence to the centre of the bit"),
            press.fenceStep());
    var place = alongPress(row, press);
    var depth =
        Setting.of(
            Setting.Role.DEPTH,
            "of the stop, counted from its reading " + task.zeroedOn(),
            task.depth(),
            press.depthStep());
    var measures = measures(task, fence, place);
    var speed = Speeds.choose(press, bit, bored.material(), limits);
    var refusal =
        RouterTableSetup.firstOf(
            serves,
            turns(press.largestBit()),
            staysInside(task.made()),
            fenceReaches(press),
            goesDeepEnough(depth.set().value(), task),
            strokeReaches(depth.set().value(), task.below().value(), press),
            standsUnder(press),
            heldAtPress(),
            settable(measures, List.of(fence, place), depth.set().value(), task),
            speed.refusal());
    if (refusal.isPresent()) {
      return refusal.get();
    }
    return new Setup(
        task.asked(),
        press,
        bit,
        Guide.FENCE,
        List.of(fence, place, depth),
        plunges(depth.set()),
        speed.speed().orElseThrow(),
        Feed.DOWN_INTO_THE_WORK,
        measures);
  }

  /** A stop for a few holes within its reach; else marks, that nothing adds up along. */
  private Setting alongPress(Row row, DrillPress press) {
    boolean stop =
        row.last().value().isAtMost(press.stopReach())
            && row.along().size() <= limits.drill().mostStops().value();
    if (!stop) {
      return mark(row);
    }
    return Setting.of(
        Setting.Role.STOP,
        row.along().size() == 1
            ? "on the fence, to the centre of the bit; the reference end lies against it"
            : "for the first hole, to the centre of the bit; moved for each further one",
        row.first().as("stop to the centre of the bit"),
        limits.settings().markStep().value());
  }

  private Optional<Refusal> fenceReaches(DrillPress press) {
    var wanted = bored.row().fromEdge().value();
    return wanted.isAtMost(press.fenceReach())
        ? Optional.empty()
        : refused(
            Refusal.Reason.OUT_OF_REACH,
            "The fence would stand "
                + conditions.shown(wanted)
                + " behind the bit; this press has room for "
                + conditions.shown(press.fenceReach()),
            "Take the other edge as reference, or bore it with a drill in the hands");
  }

  private Optional<Refusal> strokeReaches(Length depth, Length below, DrillPress press) {
    // The tip starts above the face.
    var stroke = depth.plus(below);
    return stroke.isAtMost(press.travel())
        ? Optional.empty()
        : refused(
            Refusal.Reason.TOO_DEEP,
            "A stroke of "
                + conditions.shown(stroke)
                + " is wanted, and the press has "
                + conditions.shown(press.travel()),
            "Use a press with a longer stroke, or bore it with a drill in the hands");
  }

  private Optional<Refusal> standsUnder(DrillPress press) {
    var high = work.thickness().most().plus(bit.length()).plus(bit.point());
    return high.isAtMost(press.underChuck())
        ? Optional.empty()
        : refused(
            Refusal.Reason.OUT_OF_REACH,
            "Work and bit together stand "
                + conditions.shown(high)
                + " high, and there is "
                + conditions.shown(press.underChuck())
                + " from table to chuck",
            "Bore it with a drill in the hands");
  }

  /** A short piece has no end that fence or column would stop. */
  private Optional<Refusal> heldAtPress() {
    var shortest = work.alongGuide().least();
    return shortest.isAtLeast(limits.drill().shortestAtDrill().value())
            || conditions.aids().contains("clamps")
        ? Optional.empty()
        : refused(
            Refusal.Reason.WORK_TOO_SMALL,
            "A piece only "
                + conditions.shown(shortest)
                + " long can't be held by hand against a bit that grabs, and the shop has no clamps"
                + " entered",
            "Enter clamps in the shop, or bore it in a piece of "
                + conditions.shown(limits.drill().shortestAtDrill().value())
                + " or more and cut that afterwards");
  }

  // ---- in the hands --------------------------------------------------------------------------

  private Answer byHand(Task task, HandDrill drill, Optional<Refusal> serves) {
    var row = bored.row();
    var line =
        Setting.of(
            Setting.Role.LINE,
            "struck along the reference edge, to the centre of the bit",
            row.fromEdge().as("reference edge to the line"),
            limits.settings().markStep().value());
    var place = mark(row);
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
                .with("depth", task.depth())
                .with("point", task.below())
                .is(guide.value().plus(task.depth().value()).plus(task.below().value())),
            drill.collarStep());
    var reached = collar.set().value().minus(guide.value()).minus(task.below().value());
    var measures = measures(task, line, place);
    var speed = Speeds.choose(drill, bit, bored.material(), limits);
    var refusal =
        RouterTableSetup.firstOf(
            serves,
            turns(drill.largestBit()),
            guided(drill),
            staysInside(task.made()),
            goesDeepEnough(reached, task),
            collarReaches(
                bit, collar.set().value(), "Use a longer bit, or a lower guide", conditions),
            clamped(),
            settable(measures, List.of(line, place), reached, task),
            speed.refusal());
    if (refusal.isPresent()) {
      return refusal.get();
    }
    return new Setup(
        task.asked(),
        drill,
        bit,
        drill.hasGuide() ? Guide.DRILL_GUIDE : Guide.MARKS,
        List.of(line, place, collar),
        plunges(
            task.depth().value().equals(reached)
                ? task.depth()
                : asSet(collar, guide, task, reached)),
        speed.speed().orElseThrow(),
        Feed.DOWN_INTO_THE_WORK,
        measures);
  }

  private static Worked<Length> asSet(
      Setting collar, Worked<Length> guide, Task task, Length reached) {
    return Worked.called("depth of the bit, as set")
        .by("collar − guide − point")
        .with("collar", collar.set())
        .with("guide", guide)
        .with("point", task.below())
        .is(reached);
  }

  private Worked<Length> point() {
    return Worked.entered("point of " + bit.name(), bit.point());
  }

  /** A wide bit catches on one side first and twists a wrist. */
  private Optional<Refusal> guided(HandDrill drill) {
    return bit.kind() != Bit.Kind.CUP || drill.hasGuide()
        ? Optional.empty()
        : refused(
            Refusal.Reason.AID_MISSING,
            bit.name() + " catches and kicks in a drill that nothing keeps square",
            "Use a drill press, or enter the guide that is clamped on the work");
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
        : refused(
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
    return conditions.aids().contains("clamps")
        ? Optional.empty()
        : refused(
            Refusal.Reason.AID_MISSING,
            "Work under a drill in the hands has to be clamped, and the shop has no clamps entered",
            "Enter clamps in the shop if there are any");
  }

  // ---- both ----------------------------------------------------------------------------------

  private Setting mark(Row row) {
    return Setting.of(
        Setting.Role.MARK,
        row.along().size() == 1
            ? "from the reference end"
            : "for the first hole, from the reference end; so are all the others",
        row.first().as("reference end to the first hole"),
        limits.settings().markStep().value());
  }

  /** Why this bit makes another hole than was asked for, if so. */
  private static Optional<Refusal> otherHole(Holes asked, Bit bit, Conditions conditions) {
    boolean right =
        switch (bit.kind()) {
          case CUP -> true;
          case BRAD_POINT, TWIST -> !asked.flat();
          case COUNTERSINK, STEPPED -> false;
        };
    if (!right) {
      return refused(
          Refusal.Reason.CUTTER_DOES_NOT_FIT_MACHINE,
          bit.name() + " is a bit of another kind: " + bit.kind().words(),
          asked.flat() ? "Use a bit that leaves a flat floor" : "Use a brad point or a twist bit");
    }
    var accepted = accepted(asked, conditions);
    if (accepted.contains(bit.diameter())) {
      return Optional.empty();
    }
    boolean wide = bit.diameter().isGreaterThan(accepted.most());
    return refused(
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

  private static Optional<Refusal> otherHole(Countersink asked, Bit bit, Conditions conditions) {
    if (bit.kind() != Bit.Kind.COUNTERSINK || !bit.point().isPositive()) {
      return refused(
          Refusal.Reason.CUTTER_DOES_NOT_FIT_MACHINE,
          bit.name() + " is a bit of another kind: " + bit.kind().words(),
          "Use a countersink");
    }
    return bit.diameter().isAtLeast(asked.head().value())
        ? Optional.empty()
        : refused(
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

  private Optional<Refusal> turns(Length largest) {
    return bit.diameter().isAtMost(largest)
        ? Optional.empty()
        : refused(
            Refusal.Reason.CUTTER_DOES_NOT_FIT_MACHINE,
            bit.name()
                + " is larger than "
                + machine.name()
                + " turns: "
                + conditions.shown(largest),
            "Use a machine that turns larger bits");
  }

  private Optional<Refusal> staysInside(Length made) {
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
        : refused(
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

  private Optional<Refusal> goesDeepEnough(Length depth, Task task) {
    if (!task.deep()) {
      return Optional.empty();
    }
    if (depth.isGreaterThan(bit.length())) {
      return refused(
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
        : refused(
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
  private List<Pass> plunges(Worked<Length> depth) {
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

  private List<Measure> measures(Task task, Setting across, Setting along) {
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

  private Optional<Refusal> settable(
      List<Measure> measures, List<Setting> settings, Length depth, Task task) {
    var radius = bit.diameter().half();
    for (var measure : measures) {
      var asSet =
          switch (measure.dimension()) {
            case DIAMETER -> bit.diameter();
            case DEPTH -> depth.minus(task.depth().value()).plus(measure.target().value());
            case DISTANCE -> settings.get(0).set().value().minus(radius);
            case FROM_END -> settings.get(1).set().value().minus(radius);
            case WIDTH, SIZE, RUN_ACROSS, RUN_THROUGH ->
                throw new AssertionError("no bit makes a width");
          };
      var refusal = RouterCuts.settable(measure, asSet, conditions);
      if (refusal.isPresent()) {
        return refusal;
      }
    }
    return Optional.empty();
  }

  private static Optional<Refusal> refused(Refusal.Reason reason, String what, String instead) {
    return Optional.of(new Refusal(reason, what, instead));
  }
}
