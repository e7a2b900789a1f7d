package org.proofcut.core.setup;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.CutAsked.Parting;
import org.proofcut.core.shop.Machine;
import org.proofcut.core.shop.SawBlade;
import org.proofcut.core.shop.TableSaw;
import org.proofcut.core.shop.TrackSaw;

/**
 * Cuts that part the stock: rips along the table saw's fence, crosscuts on its sled or against its
 * mitre gauge, and either along a track. The fence is set to the near side of the blade, so that
 * the kerf falls on the waste side.
 */
public final class SawSetup {

  private final Conditions conditions;
  private final SetupLimits limits;
  private final Parting asked;
  private final SawBlade blade;

  private SawSetup(Parting asked, SawBlade blade, Conditions conditions) {
    this.asked = asked;
    this.blade = blade;
    this.conditions = conditions;
    this.limits = conditions.limits();
  }

  /** A rip along the fence, a crosscut on sled or gauge, or why this saw can't make it. */
  public static Answer table(Parting asked, TableSaw saw, SawBlade blade, Conditions conditions) {
    return new SawSetup(asked, blade, conditions).table(saw);
  }

  /** A cut along the track, or why this saw can't make it. */
  public static Answer track(Parting asked, TrackSaw saw, SawBlade blade, Conditions conditions) {
    return new SawSetup(asked, blade, conditions).track(saw);
  }

  private Answer table(TableSaw saw) {
    var guide = asked.along() ? Guide.FENCE : carrier(saw);
    boolean onSled = guide == Guide.SLED;
    var height =
        above(
            "height of the blade",
            onSled ? "height above the sled's base" : "height above the table",
            limits.saw().bladeAbove());
    var place =
        asked.along()
            ? Setting.of(
                Setting.Role.FENCE,
                "to the near side of the blade's teeth",
                asked.size().as("fence to the blade"),
                saw.fenceStep())
            : Setting.of(
                Setting.Role.STOP,
                "from the blade's teeth to the stop on "
                    + (onSled ? "the sled" : "the gauge's facing"),
                asked.size().as("blade to the stop"),
                saw.fenceStep());
    // A sled's base lies between table and stock.
    var up =
        Setting.of(
            Setting.Role.HEIGHT,
            onSled ? "from the sled's base to the top tooth" : "from the table to the top tooth",
            height,
            saw.heightStep());
    var speed = Speeds.choose(saw, blade, limits);
    var refusal =
        Refusal.firstOf(
            takes(saw, saw.blades(), blade, conditions),
            asked.along() ? ripReach(saw) : onSled ? sledReach(saw) : gaugeReach(saw),
            settable(place),
            atMost(
                up.set().value(),
                saw.greatestHeight(),
                "The blade would stand",
                Refusal.Reason.TOO_DEEP,
                "Use a larger saw"),
            speed.refusal());
    if (refusal.isPresent()) {
      return refusal.get();
    }
    return setup(saw, guide, place, up, speed.speed().orElseThrow(), Feed.INTO_THE_BLADE);
  }

  private Answer track(TrackSaw saw) {
    var depth = above("depth of the blade", "depth below the track", limits.saw().trackBelow());
    var mark =
        Setting.of(
            Setting.Role.MARK,
            "from the reference edge to the edge of the track",
            asked.size().as("reference edge to the track"),
            limits.settings().markStep());
    var down =
        Setting.of(
            Setting.Role.DEPTH,
            "from the underside of the track to the lowest tooth",
            depth,
            saw.depthStep());
    var speed = Speeds.choose(saw, blade, limits);
    // A track lies along the cut: as long as the pieces for a rip, as wide as they are for a
    // crosscut.
    var run = asked.along() ? asked.work().alongGuide().most() : asked.work().acrossGuide().most();
    var refusal =
        Refusal.firstOf(
            takes(saw, saw.blades(), blade, conditions),
            carriesTrack(),
            atMost(
                run,
                saw.trackLength(),
                "The cut would run",
                Refusal.Reason.OUT_OF_REACH,
                "Join a second length of track, or break the sheet down in two steps"),
            settable(mark),
            atMost(
                down.set().value(),
                saw.greatestDepth(),
                "The blade would reach",
                Refusal.Reason.TOO_DEEP,
                "Use a larger saw"),
            speed.refusal());
    if (refusal.isPresent()) {
      return refusal.get();
    }
    return setup(saw, Guide.TRACK, mark, down, speed.speed().orElseThrow(), Feed.ALONG_THE_TRACK);
  }

  /** The track lies on the piece that is kept; on a narrow one it tips, and no clamp holds it. */
  private Optional<Refusal> carriesTrack() {
    var least = limits.saw().narrowestUnderTrack().value();
    return asked.size().value().isAtLeast(least)
        ? Optional.empty()
        : Refusal.because(
            Refusal.Reason.WORK_TOO_SMALL,
            "A piece only "
                + conditions.shown(asked.size().value())
                + (asked.along() ? " wide" : " long")
                + " does not carry the track; "
                + conditions.shown(least)
                + " or more does",
            asked.along()
                ? "Rip it at the table saw, as a thin strip where it is narrow"
                : "Cut it on a sled or at the mitre saw");
  }

  private Setup setup(
      Machine saw, Guide guide, Setting place, Setting depth, Speed speed, Feed feed) {
    var kept = place.set().value();
    var pass =
        new Pass(
            1,
            false,
            depth.set(),
            new Band(kept, kept.plus(blade.kerf())),
            Pass.Engages.BOTH_SIDES);
    return new Setup(
        asked,
        saw,
        blade,
        guide,
        List.of(place, depth),
        List.of(pass),
        speed,
        feed,
        measures(place));
  }

  /** A rough cut has nothing to prove. */
  private List<Measure> measures(Setting place) {
    if (!asked.toSize()) {
      return List.of();
    }
    return List.of(
        new Measure(
            Measure.Dimension.SIZE,
            asked.along() ? "across the piece, near both ends" : "along the piece, near both edges",
            asked.size(),
            Band.around(asked.size().value(), limits.settings().sizeTolerance().value()),
            RouterCuts.TWO_READINGS,
            Optional.of(place.role()),
            Optional.empty()));
  }

  private Optional<Refusal> settable(Setting place) {
    return measures(place).stream()
        .flatMap(size -> RouterCuts.settable(size, place.set().value(), conditions).stream())
        .findFirst();
  }

  private Worked<Length> above(String name, String what, Worked<Length> beyond) {
    return above(asked.work(), name, what, beyond);
  }

  /** The height or depth of a blade that goes so far beyond the stock. */
  static Worked<Length> above(Work work, String name, String what, Worked<Length> beyond) {
    var thickest = Worked.measured("thickest reading of the stock", work.thickness().most());
    return Worked.called(name)
        .by("thickest stock + how far the blade goes beyond it")
        .with("thickest stock", thickest)
        .with("how far the blade goes beyond it", beyond.as(beyond.name() + ": " + what))
        .from(beyond.source())
        .is(thickest.value().plus(beyond.value()));
  }

  /** Why a saw does not take a blade, if so. */
  static Optional<Refusal> takes(Machine saw, Band blades, SawBlade blade, Conditions conditions) {
    if (blades.contains(blade.diameter())) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.CUTTER_DOES_NOT_FIT_MACHINE,
        blade.name()
            + " does not fit: "
            + saw.name()
            + " takes "
            + conditions.shown(blades.least())
            + " to "
            + conditions.shown(blades.most()),
        "Use a blade of that size");
  }

  /** A rip rides the fence with its long edge, or it turns and is thrown. */
  private Optional<Refusal> ripReach(TableSaw saw) {
    var shortest = asked.work().alongGuide().least();
    if (shortest.isLessThan(limits.saw().shortestAtSaw().value())) {
      return Refusal.because(
          Refusal.Reason.WORK_TOO_SMALL,
          "A piece only "
              + conditions.shown(shortest)
              + " long is too short to rip along the fence",
          "Rip a longer piece and crosscut it afterwards");
    }
    if (asked.size().value().isLessThan(limits.saw().narrowestAtSaw().value())) {
      return Refusal.because(
          Refusal.Reason.WORK_TOO_SMALL,
          "A piece only "
              + conditions.shown(asked.size().value())
              + " wide would run between blade and fence, with no room for a push stick",
          "Cut it as a thin strip, which falls on the free side of the blade");
    }
    if (shortest.isLessThan(asked.size().value())) {
      return Refusal.because(
          Refusal.Reason.END_TOO_SHORT_ON_FENCE,
          "A piece wider than it is long would ride the fence with its short edge",
          "Cut it on the sled or along a track");
    }
    return atMost(
        asked.size().value(),
        saw.fenceReach(),
        "The fence would stand",
        Refusal.Reason.OUT_OF_REACH,
        "Cut it along a track");
  }

  /** The sled, which holds work and offcut; a gauge where the sled can't. */
  private Guide carrier(TableSaw saw) {
    boolean bySled = sledReach(saw).isEmpty();
    return bySled || saw.gauge().isEmpty() ? Guide.SLED : Guide.GAUGE;
  }

  private Optional<Refusal> gaugeReach(TableSaw saw) {
    var gauge = saw.gauge().orElseThrow();
    var across = asked.work().acrossGuide().most();
    var size = asked.size().value();
    var shortest = limits.saw().shortestHeldAcross().value();
    if (size.isLessThan(shortest)) {
      return Refusal.because(
          Refusal.Reason.WORK_TOO_SMALL,
          "A piece only "
              + conditions.shown(size)
              + " long brings the hand that holds it at the gauge to the blade; "
              + conditions.shown(shortest)
              + " or more can be held",
          "Clamp it on a sled, or cut it at the mitre saw");
    }
    if (across.isGreaterThan(size)) {
      return Refusal.because(
          Refusal.Reason.END_TOO_SHORT_ON_FENCE,
          "A piece wider than it is long turns against the gauge",
          "Cut it on a sled or along a track");
    }
    return Refusal.firstOf(
        atMost(
            size,
            gauge.stopReach(),
            "The stop would stand",
            Refusal.Reason.OUT_OF_REACH,
            "Cut it along a track"),
        atMost(
            across,
            gauge.widestWork(),
            "The work would cover",
            Refusal.Reason.OUT_OF_REACH,
            "Cut it along a track"));
  }

  private Optional<Refusal> sledReach(TableSaw saw) {
    if (saw.sledStopReach().isZero()) {
      return Refusal.because(
          Refusal.Reason.AID_MISSING,
          saw.name() + " has neither sled nor mitre gauge entered",
          "Enter what the saw has in the shop, or cut along a track");
    }
    var shortest = limits.saw().shortestHeldAcross().value();
    if (asked.size().value().isLessThan(shortest) && !conditions.aids().contains("clamps")) {
      return Refusal.because(
          Refusal.Reason.WORK_TOO_SMALL,
          "A piece under "
              + conditions.shown(shortest)
              + " is clamped on the sled, and the shop has no clamps entered",
          "Enter clamps in the shop, or cut it at the mitre saw");
    }
    return Refusal.firstOf(
        atMost(
            asked.size().value(),
            saw.sledStopReach(),
            "The stop would stand",
            Refusal.Reason.OUT_OF_REACH,
            "Cut it along a track"),
        atMost(
            asked.work().acrossGuide().most(),
            saw.sledDepth(),
            "The work would cover",
            Refusal.Reason.OUT_OF_REACH,
            "Cut it along a track"));
  }

  private Optional<Refusal> atMost(
      Length is, Length most, String what, Refusal.Reason reason, String instead) {
    return atMost(is, most, what, reason, instead, conditions);
  }

  /** Why a saw can't be set so far, if so. */
  static Optional<Refusal> atMost(
      Length is,
      Length most,
      String what,
      Refusal.Reason reason,
      String instead,
      Conditions conditions) {
    if (is.isAtMost(most)) {
      return Optional.empty();
    }
    return Refusal.because(
        reason,
        what + " " + conditions.shown(is) + "; this saw goes to " + conditions.shown(most),
        instead);
  }
}
