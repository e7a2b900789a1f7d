package org.proofcut.core.setup;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.shop.HandRouter;
import org.proofcut.core.shop.RouterTable;

/**
 * Cuts wood as a maker would, from the figures on the sheet alone, and finds out what is left and
 * which way the cutter pulled. Written from the physics of a turning cutter; it reads neither where
 * a pass is said to cut nor which side is said to meet wood.
 *
 * <p>Wood is a row of columns across the guide, counted from the reference edge, each cut down to
 * some depth. In whole picometres, exact.
 */
public final class CutSimulation {

  /** What the shop is really like. */
  public record Truth(
      Length diameter, Length guideReadsTooLittleBy, Length heightReadsTooLittleBy) {

    public static Truth asMarked(Setup setup) {
      return new Truth(setup.cutter().diameter(), Length.ZERO, Length.ZERO);
    }
  }

  /**
   * How wood and cutter move, seen from above: x to the person's right, y away from the person.
   *
   * @param turn 1 counter-clockwise, −1 clockwise
   * @param wood which way the wood moves past the cutter
   * @param fromGuide which way the wood reaches out from the guide
   * @param led 1 where the guide leads the wood, −1 where it lies on the wood and leads the cutter,
   *     which is pushed the other way
   */
  public record Motion(int turn, Direction wood, Direction fromGuide, int led) {

    /** Counter-clockwise; the fence behind the cutter; the work moves left. */
    public static final Motion TABLE = new Motion(1, new Direction(-1, 0), new Direction(0, -1), 1);

    /** Clockwise; the straightedge on the left; the router moves away, the wood toward you. */
    public static final Motion BY_HAND =
        new Motion(-1, new Direction(0, -1), new Direction(1, 0), -1);

    public static Motion of(Setup setup) {
      if (setup.machine() instanceof RouterTable) {
        return TABLE;
      }
      if (setup.machine() instanceof HandRouter) {
        return BY_HAND;
      }
      throw new IllegalArgumentException("only routers turn upright: " + setup.machine());
    }
  }

  public record Direction(int x, int y) {

    int dot(Direction other) {
      return x * other.x + y * other.y;
    }

    /** The velocity of a point here on a cutter that turns counter-clockwise about the origin. */
    Direction turned() {
      return new Direction(-y, x);
    }
  }

  /**
   * What one pass met.
   *
   * @param drag how the cutter drags the wood along the feed: negative against it, which is good,
   *     positive with it, a climb cut
   * @param pull how what is led is pulled away from the guide: negative presses it on
   * @param nearest where new wood began, from the centre of the cutter, away from the guide
   * @param farthest where it ended
   * @param bite most that was taken off in height; zero where nothing new was met
   * @param covers from the reference edge, where the cutter ran
   */
  public record Met(
      BigInteger drag, BigInteger pull, Length nearest, Length farthest, Length bite, Band covers) {

    public boolean isClimb() {
      return drag.signum() > 0;
    }

    public boolean pressesOn() {
      return pull.signum() < 0;
    }
  }

  /** A stretch of wood cut to one depth. */
  private record Column(long from, long to, long depth) {}

  private List<Column> wood;

  CutSimulation(Length across) {
    wood = List.of(new Column(0, across.picometres(), 0));
  }

  /** What is left, and what each pass met. */
  public record Result(CutSimulation wood, List<Met> passes) {}

  /** The whole set-up, pass after pass, on a piece that reaches out so far. */
  public static Result cut(Setup setup, Length across, Truth truth) {
    var simulation = new CutSimulation(across);
    var met = new ArrayList<Met>();
    var motion = Motion.of(setup);
    for (var pass : setup.passes()) {
      // The maker reads: strip on or off, and the height.
      var strip =
          pass.stripOn()
              ? setup.setting(Setting.Role.STRIP).orElseThrow().set().value()
              : Length.ZERO;
      var from = nearestCut(setup, strip, truth);
      var depth = pass.depth().value().plus(truth.heightReadsTooLittleBy());
      var guideIsNear = guideIsNear(setup);
      met.add(simulation.pass(motion, guideIsNear, from, truth.diameter(), depth));
    }
    return new Result(simulation, met);
  }

  /** From the reference edge to where the cutter begins to cut, set as the sheet says. */
  private static Length nearestCut(Setup setup, Length strip, Truth truth) {
    var place = setup.settings().get(0);
    var really = place.set().value().plus(truth.guideReadsTooLittleBy());
    if (setup.machine() instanceof HandRouter router) {
      var centre = router.baseEdgeToCentre().plus(strip);
      var half = truth.diameter().half();
      return guideIsNear(setup)
          ? really.plus(centre).minus(half)
          : really.minus(centre).minus(half);
    }
    if (place.from().startsWith("to the nearest cutting edge")) {
      return really.minus(strip);
    }
    if (place.from().startsWith("to the farthest cutting edge")) {
      return really.minus(strip).minus(truth.diameter());
    }
    throw new IllegalArgumentException("how would a maker set " + place.from() + "?");
  }

  private static boolean guideIsNear(Setup setup) {
    return !setup.settings().get(0).from().contains("beyond the cut");
  }

  /**
   * One pass.
   *
   * <p>A tooth at the leading half of the cutter, offset u from the centre away from the guide,
   * moves along the feed at a speed that is proportional to u, and takes a chip whose thickness,
   * spread over the columns, is the same for each: so the drag of a column is u times its height.
   *
   * @param guideIsNear whether the guide lies on the side of the reference edge
   */
  Met pass(Motion motion, boolean guideIsNear, Length from, Length diameter, Length depth) {
    long begin = from.picometres();
    long end = begin + diameter.picometres();
    var after = new ArrayList<Column>();
    var drag = BigInteger.ZERO;
    var pull = BigInteger.ZERO;
    long first = Long.MAX_VALUE;
    long last = Long.MIN_VALUE;
    long bite = 0;
    for (var column : wood) {
      long low = Math.max(column.from, begin);
      long high = Math.min(column.to, end);
      if (low >= high || column.depth >= depth.picometres()) {
        after.add(column);
        continue;
      }
      keep(after, column.from, low, column.depth);
      keep(after, low, high, depth.picometres());
      keep(after, high, column.to, column.depth);
      long height = depth.picometres() - column.depth;
      bite = Math.max(bite, height);
      first = Math.min(first, low);
      last = Math.max(last, high);
      // Twice the offsets of both ends, so that the centre is whole.
      long sign = guideIsNear ? 1 : -1;
      var near = BigInteger.valueOf(sign * (2 * low - begin - end));
      var far = BigInteger.valueOf(sign * (2 * high - begin - end));
      var moment =
          far.multiply(far).subtract(near.multiply(near)).multiply(BigInteger.valueOf(sign));
      var area = BigInteger.valueOf(high - low).multiply(BigInteger.valueOf(height));
      int alongFeed = motion.turn * motion.fromGuide.turned().dot(motion.wood);
      drag = drag.add(moment.multiply(BigInteger.valueOf(alongFeed * height)));
      // The tooth that meets the wood stands on the side that the wood comes from.
      int outward = -motion.led * motion.turn * motion.wood.turned().dot(motion.fromGuide);
      pull = pull.add(area.multiply(BigInteger.valueOf(outward)));
    }
    wood = List.copyOf(after);
    var covers = new Band(from, from.plus(diameter));
    if (bite == 0) {
      return new Met(drag, pull, Length.ZERO, Length.ZERO, Length.ZERO, covers);
    }
    var centre = from.plus(diameter.half());
    var one = new Length(first).minus(centre);
    var other = new Length(last).minus(centre);
    return guideIsNear
        ? new Met(drag, pull, one, other, new Length(bite), covers)
        : new Met(drag, pull, other.negated(), one.negated(), new Length(bite), covers);
  }

  private static void keep(List<Column> columns, long from, long to, long depth) {
    if (from < to) {
      columns.add(new Column(from, to, depth));
    }
  }

  private List<Column> cutColumns() {
    return wood.stream().filter(column -> column.depth > 0).toList();
  }

  /** From the reference edge to the near wall. */
  public Length nearWall() {
    return new Length(cutColumns().get(0).from);
  }

  /** From the reference edge to the far wall. */
  public Length farWall() {
    var cut = cutColumns();
    return new Length(cut.get(cut.size() - 1).to);
  }

  public Length width() {
    return farWall().minus(nearWall());
  }

  /** The depth at the shallowest place between the walls; zero where a fin was left standing. */
  public Length shallowest() {
    var near = nearWall().picometres();
    var far = farWall().picometres();
    return new Length(
        wood.stream()
            .filter(column -> column.from >= near && column.to <= far)
            .mapToLong(Column::depth)
            .min()
            .orElseThrow());
  }

  public Length deepest() {
    return new Length(wood.stream().mapToLong(Column::depth).max().orElseThrow());
  }
}
