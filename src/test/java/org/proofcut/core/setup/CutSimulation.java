package org.proofcut.core.setup;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.shop.BearingCutter;
import org.proofcut.core.shop.Cutter;
import org.proofcut.core.shop.HandRouter;
import org.proofcut.core.shop.RouterTable;
import org.proofcut.core.shop.SawBlade;
import org.proofcut.core.shop.StackedCutter;
import org.proofcut.core.shop.TableSaw;

/**
 * Cuts wood as a maker would, from the figures on the sheet alone, and finds out what is left and
 * which way the cutter pulled. Written from the physics of a turning cutter; it reads neither where
 * a pass is said to cut nor which side is said to meet wood.
 *
 * <p>Wood is a row of columns across the guide, counted from the reference edge, each cut down to
 * some depth. In whole picometres, exact.
 */
public final class CutSimulation {

  /**
   * What the shop is really like.
   *
   * @param cuts width that the cutter takes in one pass: a router cutter's diameter, a blade's kerf
   */
  public record Truth(Length cuts, Length guideReadsTooLittleBy, Length heightReadsTooLittleBy) {

    public static Truth asMarked(Setup setup) {
      return new Truth(widthOf(setup.cutter()), Length.ZERO, Length.ZERO);
    }

    private static Length widthOf(Cutter cutter) {
      if (cutter instanceof StackedCutter stack) {
        var sum = stack.outerKerf().plus(stack.outerKerf());
        for (var layers : List.of(stack.chippers(), stack.shims())) {
          for (var layer : layers) {
            for (int i = 0; i < layer.count(); i++) {
              sum = sum.plus(layer.thickness());
            }
          }
        }
        return sum;
      }
      return cutter instanceof SawBlade blade ? blade.kerf() : cutter.diameter();
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

    /**
     * Round a piece at the place farthest to the right of its middle; inside an opening at the one
     * farthest to the left of its middle. Moving counter-clockwise about a middle, what lies at
     * {@code p} from it moves along {@code p} turned by a quarter.
     */
    public static Motion byBearing(Feed feed) {
      return switch (feed) {
        case COUNTER_CLOCKWISE_ROUND -> round(new Direction(1, 0), 1, -1);
        case CLOCKWISE_INSIDE -> round(new Direction(-1, 0), -1, 1);
        // On a table, the work toward the person.
        case RIGHT_TO_LEFT -> TABLE;
        case AWAY_FROM_YOU,
            CLOCKWISE_IN_THE_TEMPLATE,
            INTO_THE_BLADE,
            DOWN_ON_THE_WORK,
            ALONG_THE_TRACK,
            DOWN_INTO_THE_WORK,
            OVER_THE_KNIVES,
            UNDER_THE_KNIVES ->
            throw new IllegalArgumentException("no edge is followed so: " + feed);
      };
    }

    /**
     * A router in the hands that follows an edge.
     *
     * @param at where it is, from the middle
     * @param way 1 counter-clockwise about the middle, −1 clockwise
     * @param woodReaches 1 where the wood lies away from the middle, −1 toward it
     */
    static Motion round(Direction at, int way, int woodReaches) {
      var router = at.turned().times(way);
      // What presses the bearing on pulls the router the way that the wood reaches.
      return new Motion(-1, router.times(-1), at.times(woodReaches), 1);
    }

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

    Direction times(int factor) {
      return new Direction(x * factor, y * factor);
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
   * @param pull how what is led is pulled away from the guide, at the saw lifted off the table:
   *     negative presses it on
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
    if (setup.asked() instanceof CutAsked.CentredGroove) {
      return cutFromBothFaces(setup, across, truth);
    }
    if (setup.asked() instanceof CutAsked.EdgeTrim) {
      return cutAlongASplitFence(setup, across, truth);
    }
    if (setup.guide() == Guide.BEARING || setup.guide() == Guide.BEARING_WITH_PIN) {
      return cutByBearing(setup, across, truth, Motion.byBearing(setup.feed()));
    }
    if (setup.machine() instanceof TableSaw) {
      return cutAtSaw(setup, across, truth, equalStrips(setup), AWAY);
    }
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
      var depth = setup.read(pass).plus(truth.heightReadsTooLittleBy());
      var guideIsNear = guideIsNear(setup);
      met.add(simulation.pass(motion, guideIsNear, from, truth.cuts(), depth));
    }
    return new Result(simulation, met);
  }

  /**
   * A piece on edge, one face to the fence and then the other, as each pass says; never touching
   * the fence. Turned over, what lay farthest from the fence lies at it.
   */
  private static Result cutFromBothFaces(Setup setup, Length across, Truth truth) {
    var simulation = new CutSimulation(across);
    var met = new ArrayList<Met>();
    var fence = setup.settings().get(0);
    if (!fence.from().startsWith("to the nearest")) {
      throw new IllegalArgumentException("how would a maker set " + fence.from() + "?");
    }
    var from = fence.read().value().plus(truth.guideReadsTooLittleBy());
    for (var pass : setup.passes()) {
      boolean over = pass.lies().orElseThrow() == Pass.Lies.OTHER_FACE_AT_FENCE;
      if (over) {
        simulation.turnOver();
      }
      var depth = setup.read(pass).plus(truth.heightReadsTooLittleBy());
      met.add(
          setup.machine() instanceof TableSaw
              ? simulation.passOfBlade(AWAY, from, truth.cuts(), setup.cutter().diameter(), depth)
              : simulation.pass(Motion.TABLE, true, from, truth.cuts(), depth));
      if (over) {
        simulation.turnOver();
      }
    }
    return new Result(simulation, met);
  }

  /**
   * The bearing touches the edge from outside, its centre half its diameter off; a layer that
   * stands out reaches beyond that edge.
   */
  static Result cutByBearing(Setup setup, Length across, Truth truth, Motion motion) {
    var out =
        setup.asked() instanceof CutAsked.FlushTrim trim ? trim.overhang().value() : Length.ZERO;
    var simulation = new CutSimulation(across);
    simulation.wood = List.of(new Column(-out.picometres(), across.picometres(), 0));
    var bearing = ((BearingCutter) setup.cutter()).bearing();
    var from = bearing.half().negated().minus(truth.cuts().half());
    var met = new ArrayList<Met>();
    for (var pass : setup.passes()) {
      var depth = setup.read(pass).plus(truth.heightReadsTooLittleBy());
      met.add(simulation.pass(motion, true, from, truth.cuts(), depth));
    }
    return new Result(simulation, met);
  }

  /**
   * The maker lines the outfeed half up with the cutting edge by the shim behind it. What is cut
   * through is gone, and the edge that is left rides the fence in the next pass.
   */
  private static Result cutAlongASplitFence(Setup setup, Length across, Truth truth) {
    var shim = setup.setting(Setting.Role.SHIM).orElseThrow().read().value();
    var fence = setup.setting(Setting.Role.FENCE).orElseThrow();
    if (!fence.from().startsWith("infeed half to the farthest cutting edge")
        || !fence.read().value().equals(shim)) {
      throw new IllegalArgumentException("the halves of the fence are out of line");
    }
    var simulation = new CutSimulation(across);
    var met = new ArrayList<Met>();
    var far = fence.read().value().plus(truth.guideReadsTooLittleBy());
    for (var pass : setup.passes()) {
      var depth = setup.read(pass).plus(truth.heightReadsTooLittleBy());
      met.add(simulation.pass(Motion.TABLE, true, far.minus(truth.cuts()), truth.cuts(), depth));
      simulation.wood =
          simulation.wood.stream()
              .filter(column -> column.depth == 0)
              .map(
                  column ->
                      new Column(column.from - far.picometres(), column.to - far.picometres(), 0))
              .toList();
    }
    return new Result(simulation, met);
  }

  /** How far the wood reaches out that is left. */
  Length reaches() {
    return new Length(wood.get(wood.size() - 1).to);
  }

  /**
   * Half of a recess, from its middle out to one wall: plunged in the middle, then in rounds that
   * widen by what two of them overlap, the last where the bush runs along the template.
   *
   * @param way −1 clockwise, as it should be; 1 the other way
   */
  static Result cutInATemplate(Setup setup, Truth truth, Length overlap, int way) {
    var asked = (CutAsked.TemplateRecess) setup.asked();
    var opening = setup.setting(Setting.Role.OPENING_WIDTH).orElseThrow().read().value();
    var farthest = opening.minus(asked.bush().outside().value()).half();
    var out = setup.setting(Setting.Role.DEPTH).orElseThrow().set().value();
    var last = setup.passes().get(setup.passes().size() - 1);
    var simulation = new CutSimulation(opening.times(2));
    simulation.wood = List.of(new Column(-opening.picometres(), 2 * opening.picometres(), 0));
    var met = new ArrayList<Met>();
    for (var pass : setup.passes()) {
      // The maker sets the depth of the last pass on the scale, the others by as much less.
      var depth =
          out.minus(asked.template().value())
              .minus(last.depth().value())
              .plus(pass.depth().value());
      var centre = Length.ZERO;
      while (true) {
        met.add(
            simulation.pass(
                Motion.round(new Direction(-1, 0), way, 1),
                true,
                centre.minus(truth.cuts().half()),
                truth.cuts(),
                depth));
        if (centre.isAtLeast(farthest)) {
          break;
        }
        centre = centre.plus(truth.cuts().minus(overlap)).min(farthest);
      }
    }
    return new Result(simulation, met);
  }

  /** The face that lay at the guide lies away from it. */
  void turnOver() {
    long end = wood.get(wood.size() - 1).to;
    var over = new ArrayList<Column>();
    for (int i = wood.size() - 1; i >= 0; i--) {
      var one = wood.get(i);
      over.add(new Column(end - one.to, end - one.from, one.depth));
    }
    wood = List.copyOf(over);
  }

  /** From the reference edge to where the cutter begins to cut, set as the sheet says. */
  private static Length nearestCut(Setup setup, Length strip, Truth truth) {
    var place = setup.settings().get(0);
    var really = place.read().value().plus(truth.guideReadsTooLittleBy());
    if (setup.machine() instanceof HandRouter router) {
      var centre = router.baseEdgeToCentre().plus(strip);
      var half = truth.cuts().half();
      return guideIsNear(setup)
          ? really.plus(centre).minus(half)
          : really.minus(centre).minus(half);
    }
    if (place.from().startsWith("to the nearest cutting edge")) {
      return really.minus(strip);
    }
    if (place.from().startsWith("to the farthest cutting edge")) {
      return really.minus(strip).minus(truth.cuts());
    }
    throw new IllegalArgumentException("how would a maker set " + place.from() + "?");
  }

  /** The work is pushed from the person's side into the front of the blade. */
  static final Direction AWAY = new Direction(0, 1);

  /** The wrong way: from behind the saw. */
  static final Direction TOWARD_YOU = new Direction(0, -1);

  /**
   * A slot at the table saw.
   *
   * @param strips the pack, outermost last: that one is taken out first
   * @param feed which way the work moves
   */
  static Result cutAtSaw(
      Setup setup, Length across, Truth truth, List<Length> strips, Direction feed) {
    var place = setup.settings().get(0);
    if (!place.from().startsWith("to the nearest tooth")
        && !place.from().startsWith("from the nearest tooth")) {
      throw new IllegalArgumentException("how would a maker set " + place.from() + "?");
    }
    var really = place.read().value().plus(truth.guideReadsTooLittleBy());
    var height = setup.setting(Setting.Role.HEIGHT).orElseThrow().read().value();
    var simulation = new CutSimulation(across);
    var met = new ArrayList<Met>();
    for (var pass : setup.passes()) {
      // The maker reads how many strips are in, and never touches fence or height.
      int in = pass.strips().orElse(pass.stripOn() ? 1 : 0);
      var from = really;
      for (var strip : strips.subList(0, in)) {
        from = from.minus(strip);
      }
      met.add(
          simulation.passOfBlade(
              feed,
              from,
              truth.cuts(),
              setup.cutter().diameter(),
              height.plus(truth.heightReadsTooLittleBy())));
    }
    return new Result(simulation, met);
  }

  /** As the pack would be if all its strips were alike; the last takes what does not divide. */
  static List<Length> equalStrips(Setup setup) {
    if (setup.setting(Setting.Role.STRIP).isEmpty()) {
      return List.of();
    }
    var pack = setup.setting(Setting.Role.STRIP).orElseThrow().read().value();
    var first = setup.passes().get(0);
    int count = first.strips().orElse(1);
    var each = new Length(pack.picometres() / count);
    var strips = new ArrayList<Length>();
    for (int i = 1; i < count; i++) {
      strips.add(each);
    }
    strips.add(pack.minus(each.times(count - 1L)));
    return strips;
  }

  /**
   * One pass over a blade that stands out of the table so high; its top turns toward the person.
   *
   * <p>A tooth at height z above the table stands z + R − h above the arbor and moves toward the
   * person at a speed in proportion to that: the drag of a column is the sum of it over the height
   * that is new. Work that is pushed away meets the front of the blade, where teeth move down;
   * pulled from behind it meets the back, where they rise.
   */
  Met passOfBlade(Direction feed, Length from, Length kerf, Length diameter, Length height) {
    long begin = from.picometres();
    long end = begin + kerf.picometres();
    var towardPerson = new Direction(0, -1);
    var after = new ArrayList<Column>();
    var drag = BigInteger.ZERO;
    var lift = BigInteger.ZERO;
    long first = Long.MAX_VALUE;
    long last = Long.MIN_VALUE;
    long bite = 0;
    for (var column : wood) {
      long low = Math.max(column.from, begin);
      long high = Math.min(column.to, end);
      if (low >= high || column.depth >= height.picometres()) {
        after.add(column);
        continue;
      }
      keep(after, column.from, low, column.depth);
      keep(after, low, high, height.picometres());
      keep(after, high, column.to, column.depth);
      bite = Math.max(bite, height.picometres() - column.depth);
      first = Math.min(first, low);
      last = Math.max(last, high);
      // Twice the heights above the arbor, so that the radius is whole.
      var top = diameter.picometres();
      var bottom = top - 2 * (height.picometres() - column.depth);
      var speeds = BigInteger.valueOf(top).pow(2).subtract(BigInteger.valueOf(bottom).pow(2));
      var width = BigInteger.valueOf(high - low);
      drag = drag.add(speeds.multiply(width).multiply(BigInteger.valueOf(towardPerson.dot(feed))));
      var area = width.multiply(BigInteger.valueOf(height.picometres() - column.depth));
      lift = lift.add(area.multiply(BigInteger.valueOf(towardPerson.dot(feed))));
    }
    wood = List.copyOf(after);
    var covers = new Band(from, from.plus(kerf));
    var centre = from.plus(kerf.half());
    return bite == 0
        ? new Met(drag, lift, Length.ZERO, Length.ZERO, Length.ZERO, covers)
        : new Met(
            drag,
            lift,
            new Length(first).minus(centre),
            new Length(last).minus(centre),
            new Length(bite),
            covers);
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
