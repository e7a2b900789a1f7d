package org.proofcut.core.setup;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.geometry.BevelRip;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.setup.CutAsked.Bevel;
import org.proofcut.core.setup.CutAsked.Parting;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.shop.Machine;
import org.proofcut.core.shop.SawBlade;
import org.proofcut.core.shop.Side;
import org.proofcut.core.shop.TableSaw;
import org.proofcut.core.shop.Tilt;
import org.proofcut.core.shop.TrackSaw;

/**
 * Rips with a tilted blade. In every one the blade's upper edge leans away from the piece that is
 * kept, which so lies over no blade and under none: its wide face is up.
 *
 * <ul>
 *   <li><b>Table saw.</b> The fence stands on the side that the blade leans away from. At the table
 *       the teeth stand nearest to it: there it is measured, and the narrow face lies there. The
 *       blade is raised along its own slope, by {@code thickness ÷ cos(bevel)} and what it stands
 *       beyond that.
 *   <li><b>Track saw.</b> It tilts about the edge of its track, its lower side in under the track:
 *       the mark is at the upper, wide face (common practice; the saw's manual wins).
 * </ul>
 *
 * Whatever holds for the upright rip of the same width holds for the tilted one: reach, shortest
 * piece, speed, blade.
 */
public final class BevelSetup {

  private static final String ALONG_THE_TRACK = "Cut it along a track";

  private final Bevel asked;
  private final SawBlade blade;
  private final Conditions conditions;
  private final SetupLimits limits;

  private BevelSetup(Bevel asked, SawBlade blade, Conditions conditions) {
    this.asked = asked;
    this.blade = blade;
    this.conditions = conditions;
    this.limits = conditions.limits();
  }

  /** A tilted rip along the table saw's fence, or why this saw can't make it. */
  public static Answer table(Bevel asked, TableSaw saw, SawBlade blade, Conditions conditions) {
    return new BevelSetup(asked, blade, conditions).table(saw);
  }

  /** A tilted cut along the track, or why this saw can't make it. */
  public static Answer track(Bevel asked, TrackSaw saw, SawBlade blade, Conditions conditions) {
    return new BevelSetup(asked, blade, conditions).track(saw);
  }

  private Answer table(TableSaw saw) {
    if (saw.tilt().isEmpty()) {
      return noTilt(saw, ALONG_THE_TRACK);
    }
    var leans = saw.tilt().get().sides().get(0);
    var fenceOn = leans.opposite();
    var angle =
        tilted(
            saw.tilt().get(),
            leans,
            ", the blade's upper edge to the " + leans.words() + ", away from the fence");
    var cannot = angled(saw, saw.tilt().get(), angle);
    if (cannot.isPresent()) {
      return cannot.get();
    }
    var rip = rip(angle, middle());
    var narrow = rip.fence();
    var upright =
        SawSetup.table(new Parting(narrow, true, true, asked.work()), saw, blade, conditions);
    if (!(upright instanceof Setup square)) {
      return upright;
    }
    var fence =
        Setting.of(
            Setting.Role.FENCE,
            "on the "
                + fenceOn.words()
                + ", to the blade's teeth at the table, the blade tilted already",
            narrow,
            saw.fenceStep());
    var out =
        Setting.of(
            Setting.Role.HEIGHT,
            "along the tilted blade, from the table to the top tooth",
            rip(angle, thickest()).bladeOut(limits.saw().bladeAbove()).as("blade out of the table"),
            saw.heightStep());
    var refusal =
        Refusal.firstOf(
            fenceOn == Side.RIGHT ? Optional.empty() : onTheLeft(saw, narrow.value()),
            atMost(out.set().value(), saw.greatestHeight(), saw, "The blade would stand out "));
    return refusal.isPresent()
        ? refusal.get()
        : setup(
            square,
            fence,
            out,
            angle,
            narrow,
            "across the face that lay on the table, near both ends");
  }

  /** The fence stands right of the blade as a rule; not every one can stand left of it. */
  private Optional<Refusal> onTheLeft(TableSaw saw, Length narrow) {
    if (saw.leftReach().isEmpty()) {
      return Refusal.because(
          Refusal.Reason.OUT_OF_REACH,
          "The blade of "
              + saw.name()
              + " leans to the right, over a piece at the fence: it would be trapped",
          "Enter how far the fence reaches on the left of the blade, or cut it along a track");
    }
    return atMost(narrow, saw.leftReach().get(), saw, "On the left the fence would stand ");
  }

  private Answer track(TrackSaw saw) {
    if (saw.tilt().isEmpty()) {
      return noTilt(saw, "Cut it at a table saw whose blade tilts");
    }
    var angle = tilted(saw.tilt().get(), Side.RIGHT, ", the blade's lower side in under the track");
    var cannot = angled(saw, saw.tilt().get(), angle);
    if (cannot.isPresent()) {
      return cannot.get();
    }
    var rip = rip(angle, middle());
    var wide = asked.goodIsWide() ? asked.goodFace() : rip.otherFace();
    var upright =
        SawSetup.track(new Parting(wide, true, true, asked.work()), saw, blade, conditions);
    if (!(upright instanceof Setup square)) {
      return upright;
    }
    var mark =
        Setting.of(
            Setting.Role.MARK,
            "on the upper face, from the reference edge to the edge of the track",
            wide.as("reference edge to the track"),
            limits.settings().markStep());
    var out =
        Setting.of(
            Setting.Role.DEPTH,
            "along the tilted blade, from the underside of the track to the lowest tooth",
            rip(angle, thickest()).bladeOut(limits.saw().trackBelow()).as("depth along the blade"),
            saw.depthStep());
    var refusal = atMost(out.set().value(), saw.greatestDepth(), saw, "The blade would reach ");
    return refusal.isPresent()
        ? refusal.get()
        : setup(square, mark, out, angle, wide, "across the face that was up, near both ends");
  }

  // ---- figures -------------------------------------------------------------------------------

  private AngleSetting tilted(Tilt tilt, Side toward, String how) {
    return new AngleSetting(
        AngleSetting.Role.BEVEL,
        Optional.of(toward),
        "from upright" + how,
        asked.bevel(),
        tilt.step());
  }

  private BevelRip rip(AngleSetting angle, Worked<Length> thickness) {
    return new BevelRip(angle.set(), thickness, asked.goodFace(), asked.goodIsWide());
  }

  private Worked<Length> middle() {
    return Worked.measured("thickness, middle of the readings", asked.work().thickness().middle());
  }

  private Worked<Length> thickest() {
    return Worked.measured("thickest reading of the stock", asked.work().thickness().most());
  }

  private AngleShown shown() {
    return new AngleShown(AngleSetting.Role.BEVEL, asked.bevel(), middle());
  }

  private Band accepted() {
    return Band.around(shown().runsIn().value(), limits.settings().sizeTolerance().value());
  }

  private Setup setup(
      Setup square,
      Setting place,
      Setting out,
      AngleSetting angle,
      Worked<Length> size,
      String where) {
    var kept = place.set().value();
    var upright =
        Worked.called("top tooth above the table, or below the track")
            .by("along the blade × cos(bevel), to 0.01 mm upward")
            .with("along the blade", out.set())
            .with("bevel", angle.set())
            .is(
                out.set()
                    .value()
                    .times(angle.set().value().cosine(), Length.HUNDREDTH, Rounding.UP));
    var kerf = blade.kerf().times(angle.set().value().secant(), Length.HUNDREDTH, Rounding.UP);
    return new Setup(
            asked,
            square.machine(),
            blade,
            square.guide(),
            List.of(place, out),
            List.of(
                new Pass(
                    1, false, upright, new Band(kept, kept.plus(kerf)), Pass.Engages.BOTH_SIDES)),
            square.speed(),
            square.feed(),
            List.of(
                new Measure(
                    Dimension.SIZE,
                    where,
                    size,
                    Band.around(size.value(), limits.settings().sizeTolerance().value()),
                    RouterCuts.TWO_READINGS,
                    Optional.of(place.role()),
                    Optional.empty()),
                shown()
                    .measure(
                        Dimension.RUN_THROUGH,
                        "at one place: width of the wide face less width of the narrow one",
                        accepted(),
                        RouterCuts.TWO_READINGS)))
        .at(List.of(angle));
  }

  // ---- limits --------------------------------------------------------------------------------

  private Refusal noTilt(Machine saw, String instead) {
    return new Refusal(
        Refusal.Reason.OUT_OF_REACH,
        "How " + saw.name() + " tilts was never entered",
        "Enter it in the shop. " + instead);
  }

  private Optional<Refusal> angled(Machine saw, Tilt tilt, AngleSetting angle) {
    var set = angle.set().value();
    if (set.isGreaterThan(tilt.greatest())) {
      return Refusal.because(
          Refusal.Reason.OUT_OF_REACH,
          "Bevel of "
              + angle.shown()
              + "; "
              + saw.name()
              + " tilts to "
              + conditions.degrees(tilt.greatest()),
          "Plane the edge to its angle, or cut it on edge in a carrier jig");
    }
    if (!set.isPositive() || !accepted().contains(shown().asSet(angle))) {
      return Refusal.because(
          Refusal.Reason.STEP_TOO_COARSE,
          "Bevel: "
              + conditions.degrees(asked.bevel().value())
              + " is wanted, and "
              + saw.name()
              + " can be set to "
              + angle.shown(),
          "Use a saw that can be set more finely, or plane the edge to its angle");
    }
    return rip(angle, middle()).problems(conditions.unit()).stream()
        .findFirst()
        .map(
            problem ->
                new Refusal(Refusal.Reason.WORK_TOO_SMALL, problem.what(), problem.doThis()));
  }

  private Optional<Refusal> atMost(Length is, Length most, Machine saw, String what) {
    if (is.isAtMost(most)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.OUT_OF_REACH,
        what + conditions.shown(is) + "; " + saw.name() + " goes to " + conditions.shown(most),
        "Use a larger saw, or plane the edge to its angle");
  }
}
