package org.proofcut.core.setup;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.geometry.CompoundMitre;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.setup.CutAsked.Mitre;
import org.proofcut.core.setup.CutAsked.Parting;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.shop.MitreSaw;
import org.proofcut.core.shop.SawBlade;
import org.proofcut.core.shop.Side;

/**
 * Cuts across the piece at a mitre saw: to length, mitred, and mitred with the blade tilted.
 *
 * <p>The blade turns about a point on the fence, so that what stands between stop and teeth along
 * the fence is the same at every angle. The longest edge lies on the fence and the piece that is
 * kept on the stop's side: between stop and teeth is then its size between the long points, and
 * nothing holds the offcut, which lies free on the other side.
 *
 * <p>A board {@code w} wide takes {@code w ÷ cos(mitre)} of the blade's travel, which may not be
 * more than the widest board that is cut square. How high the tilted blade cuts is asked of the
 * machine, as motor and guard stand in its way in a manner that no formula tells; between upright
 * and the greatest tilt the lower height is taken.
 */
public final class MitreSawSetup {

  /** Holds a short piece in place of a hand. */
  private static final String CLAMP = "hold-down-clamp";

  private static final MathContext DIGITS = new MathContext(50);

  private final MitreSaw saw;
  private final SawBlade blade;
  private final Conditions conditions;
  private final SetupLimits limits;

  private MitreSawSetup(MitreSaw saw, SawBlade blade, Conditions conditions) {
    this.saw = saw;
    this.blade = blade;
    this.conditions = conditions;
    this.limits = conditions.limits();
  }

  /** A crosscut to the stop, or why this saw can't make it. */
  public static Answer length(Parting asked, MitreSaw saw, SawBlade blade, Conditions conditions) {
    return new MitreSawSetup(saw, blade, conditions).length(asked);
  }

  /** A mitre on a piece that lies flat, the blade tilted where its face leans; or why not. */
  public static Answer flat(Mitre asked, MitreSaw saw, SawBlade blade, Conditions conditions) {
    var setup = new MitreSawSetup(saw, blade, conditions);
    return asked.lean().map(lean -> setup.leaning(asked, lean)).orElseGet(() -> setup.frame(asked));
  }

  // ---- the cuts ------------------------------------------------------------------------------

  private Answer length(Parting asked) {
    var angles = new ArrayList<AngleSetting>();
    angles.add(turned(square("mitre of a square cut"), Optional.empty(), ""));
    tilted(square("bevel of a square cut"), Optional.empty()).ifPresent(angles::add);
    var size = asked.size();
    var stop = stop(size);
    var measures =
        asked.toSize()
            ? List.of(size(size, stop, "along the piece, near both edges"))
            : List.<Measure>of();
    return answer(
        asked,
        stop,
        angles,
        measures,
        width(asked.work(), square("")),
        height(asked.work(), saw.cutHeight()),
        stopReaches(stop));
  }

  private Answer frame(Mitre asked) {
    var mitre = asked.corner().mitre();
    var turned = turned(mitre, Optional.of(Side.LEFT), "; for the other end as far to the right");
    var angles = new ArrayList<AngleSetting>();
    angles.add(turned);
    tilted(square("bevel of a flat frame"), Optional.empty()).ifPresent(angles::add);
    var stop = stop(asked.size());
    var across = new AngleShown(AngleSetting.Role.MITRE, mitre, asked.width());
    return answer(
        asked,
        stop,
        angles,
        List.of(
            size(asked.size(), stop, "between the long points, along the edge on the fence"),
            across(
                across,
                mitre,
                "an end that is mitred, the other end square: long edge less short edge")),
        width(asked.work(), mitre),
        height(asked.work(), saw.cutHeight()),
        turns(turned),
        stopReaches(stop),
        RouterCuts.settable(sizeMeasure(asked.size(), stop), stop.set().value(), conditions),
        settable(across, mitre, turned));
  }

  /**
   * The good face is up and the longer one, so the blade leans away from the piece that is kept.
   *
   * <p>The cut meets face and back in two lines side by side. With {@code μ} the mitre and {@code
   * β} the bevel, the plane of the cut is {@code u·cos μ + v·sin μ = n·tan β}, where {@code u} runs
   * along the piece, {@code v} across it and {@code n} up through it: at one edge the two faces
   * differ by {@code thickness · tan β ÷ cos μ}.
   */
  private Answer leaning(Mitre asked, Worked<Angle> lean) {
    var compound = new CompoundMitre(asked.corner(), lean);
    var mitre = compound.mitre();
    var bevel = compound.bevel();
    var leans = saw.tilt().map(tilt -> tilt.sides().get(0));
    // The kept piece lies on the side that the blade leans away from, its long edge on the fence.
    var kept = leans.map(Side::opposite).orElse(Side.LEFT);
    var both = saw.tilt().map(tilt -> tilt.sides().size() > 1).orElse(false);
    var turned =
        turned(
            mitre,
            Optional.of(kept),
            both
                ? "; for the other end mitre and bevel as far the other way"
                : "; for the other end turn the piece round, its other edge on the fence, and the"
                    + " mitre as far the other way: the bevel stays");
    var tilted = tilted(bevel, leans);
    if (tilted.isEmpty()) {
      return new Refusal(
          Refusal.Reason.OUT_OF_REACH,
          saw.name()
              + " has no tilt entered, and the blade has to tilt "
              + conditions.degrees(bevel.value()),
          "Cut it on a saw that tilts");
    }
    var mark =
        Setting.of(
            Setting.Role.MARK,
            "on the good face, along the long edge, from long point to long point; the blade on the"
                + " waste side",
            asked.size().as("long point to the mark"),
            limits.settings().markStep());
    var thickness =
        Worked.measured("thickness, middle of the readings", asked.work().thickness().middle());
    var over =
        Worked.called("thickness, as the mitre stretches it")
            .by("thickness ÷ cos(mitre), to 0.001 mm")
            .with("thickness", thickness)
            .with("mitre", mitre)
            .is(
                thickness
                    .value()
                    .times(mitre.value().secant(), Length.ofMicrometres(1), Rounding.NEAREST));
    var shown = new ArrayList<AngleShown>();
    var measures = new ArrayList<Measure>();
    measures.add(size(asked.size(), mark, "on the good face, between the long points"));
    if (mitre.value().isPositive()) {
      var across = new AngleShown(AngleSetting.Role.MITRE, mitre, asked.width());
      shown.add(across);
      measures.add(
          across(
              across,
              flat(asked),
              "an end that is cut, the other end square: long edge less short edge, on the good face"));
    }
    var through = new AngleShown(AngleSetting.Role.BEVEL, bevel, over);
    measures.add(
        through.measure(
            Dimension.RUN_THROUGH,
            "at one edge, the other end square: good face less back, along the piece",
            accepted(through, flat(asked)),
            RouterCuts.TWO_READINGS));
    var tilt = saw.tilt().orElseThrow();
    return answer(
        asked,
        mark,
        List.of(turned, tilted.get()),
        measures,
        width(asked.work(), mitre),
        height(asked.work(), saw.tiltedHeight()),
        turns(turned),
        within(tilted.get(), tilt.greatest(), "tilts"),
        mitre.value().isPositive() ? settable(shown.get(0), flat(asked), turned) : Optional.empty(),
        settable(through, flat(asked), tilted.get()));
  }

  private static Worked<Angle> flat(Mitre asked) {
    return asked.corner().mitre();
  }

  // ---- figures -------------------------------------------------------------------------------

  private Setting stop(Worked<Length> size) {
    return Setting.of(
        Setting.Role.STOP,
        "along the fence, from the blade's teeth to the stop, on the side that is kept",
        size.as("blade to the stop"),
        saw.stopStep());
  }

  private AngleSetting turned(Worked<Angle> mitre, Optional<Side> toward, String otherEnd) {
    return new AngleSetting(
        AngleSetting.Role.MITRE,
        toward,
        "from a square cut"
            + toward.map(side -> ", the saw's front to the " + side.words()).orElse("")
            + otherEnd,
        mitre,
        saw.mitreStep());
  }

  /** Empty where the blade can't be tilted. */
  private Optional<AngleSetting> tilted(Worked<Angle> bevel, Optional<Side> toward) {
    return saw.tilt()
        .map(
            tilt ->
                new AngleSetting(
                    AngleSetting.Role.BEVEL,
                    toward,
                    "from upright"
                        + toward
                            .map(side -> ", the blade's upper edge to the " + side.words())
                            .orElse(""),
                    bevel,
                    tilt.step()));
  }

  private static Worked<Angle> square(String name) {
    return Worked.given(name, Angle.ZERO, Citation.GEOMETRY);
  }

  private Measure size(Worked<Length> size, Setting place, String what) {
    return new Measure(
        Dimension.SIZE,
        what,
        size,
        Band.around(size.value(), limits.settings().sizeTolerance().value()),
        RouterCuts.TWO_READINGS,
        Optional.of(place.role()),
        Optional.empty());
  }

  private Measure sizeMeasure(Worked<Length> size, Setting place) {
    return size(size, place, "");
  }

  private Measure across(AngleShown shown, Worked<Angle> flat, String what) {
    return shown.measure(
        Dimension.RUN_ACROSS, what, accepted(shown, flat), RouterCuts.TWO_READINGS);
  }

  /**
   * How far an end may run in, so that a ring of such pieces closes.
   *
   * <p>A ring turns once round, by {@code 2π}, in {@code π ÷ m} corners of two mitres {@code m}
   * each. Cut at one setting, all {@code 2π ÷ m} cuts are off by the same {@code δ}, and the last
   * joint stands open by {@code w · δ · 2π ÷ m}. So {@code δ = m · open ÷ (2π · w)}. Never less
   * than a caliper shows.
   */
  private Band accepted(AngleShown shown, Worked<Angle> flat) {
    var share =
        limits
            .saw()
            .lastJointOpen()
            .value()
            .inMillimetres()
            .divide(
                Angle.PI
                    .multiply(BigDecimal.valueOf(2))
                    .multiply(shown.over().value().inMillimetres()),
                DIGITS);
    var hundredths =
        share
            .multiply(BigDecimal.valueOf(flat.value().hundredthsOfAnArcSecond()))
            .toBigInteger()
            .longValueExact();
    var byAngle = shown.within(new Angle(hundredths));
    var byCaliper = Band.around(shown.runsIn().value(), limits.settings().fineStep().value());
    return new Band(byAngle.least().min(byCaliper.least()), byAngle.most().max(byCaliper.most()));
  }

  // ---- limits --------------------------------------------------------------------------------

  private Optional<Refusal> settable(AngleShown shown, Worked<Angle> flat, AngleSetting setting) {
    if (accepted(shown, flat).contains(shown.asSet(setting))) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.STEP_TOO_COARSE,
        setting.role().words()
            + ": "
            + conditions.degrees(setting.exact().value())
            + " is wanted, and "
            + saw.name()
            + " can be set to "
            + setting.shown()
            + ": the last joint would stand open by more than "
            + conditions.shown(limits.saw().lastJointOpen().value()),
        "Use a saw that can be set more finely, or narrower pieces");
  }

  private Optional<Refusal> turns(AngleSetting mitre) {
    return within(mitre, saw.greatestMitre(), "turns");
  }

  private Optional<Refusal> within(AngleSetting angle, Angle greatest, String does) {
    if (!angle.set().value().isGreaterThan(greatest)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.OUT_OF_REACH,
        angle.role().words()
            + " of "
            + angle.shown()
            + "; "
            + saw.name()
            + " "
            + does
            + " to "
            + conditions.degrees(greatest),
        "Make the ring of more sides, or cut it on a sled with a fence set to the angle");
  }

  private Optional<Refusal> width(Work work, Worked<Angle> mitre) {
    var travel =
        work.acrossGuide().most().times(mitre.value().secant(), Length.HUNDREDTH, Rounding.UP);
    return atMost(
        travel,
        saw.cutWidth(),
        "The cut would run",
        "Cut it on a table saw's sled, or along a track");
  }

  private Optional<Refusal> height(Work work, Length most) {
    return atMost(
        work.thickness().most(),
        most,
        "The work would stand",
        "Use a larger saw, or plane the piece thinner first");
  }

  private Optional<Refusal> stopReaches(Setting stop) {
    if (saw.stopReach().isZero()) {
      return Refusal.because(
          Refusal.Reason.AID_MISSING,
          saw.name() + " has no stop entered",
          "Clamp a stop to its fence and enter how far it reaches, in the shop");
    }
    return atMost(
        stop.set().value(),
        saw.stopReach(),
        "The stop would stand",
        "Clamp a longer fence with a stop to the saw, or cut along a track");
  }

  private Optional<Refusal> atMost(Length is, Length most, String what, String instead) {
    if (is.isAtMost(most)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.OUT_OF_REACH,
        what
            + " "
            + conditions.shown(is)
            + "; "
            + saw.name()
            + " goes to "
            + conditions.shown(most),
        instead);
  }

  /** A hand that holds a short piece lies beside the blade. */
  private Optional<Refusal> held(Length kept) {
    var shortest = limits.saw().shortestAtMitreSaw().value();
    if (!kept.isLessThan(shortest) || conditions.aids().contains(CLAMP)) {
      return Optional.empty();
    }
    return Refusal.because(
        Refusal.Reason.WORK_TOO_SMALL,
        "A piece of "
            + conditions.shown(kept)
            + " is too short to be held by hand beside the blade; by hand at least "
            + conditions.shown(shortest),
        "Hold it with the saw's hold-down clamp and enter that in the shop, or cut it on a"
            + " table saw's sled");
  }

  @SafeVarargs
  private Answer answer(
      CutAsked asked,
      Setting place,
      List<AngleSetting> angles,
      List<Measure> measures,
      Optional<Refusal>... refusals) {
    var speed = Speeds.choose(saw, blade, limits);
    var refusal =
        Refusal.firstOf(
            SawSetup.takes(saw, saw.blades(), blade, conditions),
            Refusal.firstOf(refusals),
            held(place.set().value()),
            speed.refusal());
    if (refusal.isPresent()) {
      return refusal.get();
    }
    var kept = place.set().value();
    var thickest =
        Worked.measured("thickest reading of the stock", asked.work().thickness().most());
    return new Setup(
            asked,
            saw,
            blade,
            Guide.SAW_FENCE,
            List.of(place),
            List.of(
                new Pass(
                    1,
                    false,
                    thickest,
                    new Band(kept, kept.plus(alongFence(angles))),
                    Pass.Engages.BOTH_SIDES)),
            speed.speed().orElseThrow(),
            Feed.DOWN_ON_THE_WORK,
            measures)
        .at(angles);
  }

  /** How much of the fence the kerf takes, wider the more it runs aslant. */
  private Length alongFence(List<AngleSetting> angles) {
    var wide = blade.kerf();
    for (var angle : angles) {
      wide = wide.times(angle.set().value().secant(), Length.HUNDREDTH, Rounding.UP);
    }
    return wide;
  }
}
