package org.proofcut.core.method;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.proofcut.core.measure.Length;
import org.proofcut.core.method.Choice.Refused;
import org.proofcut.core.setup.Answer;
import org.proofcut.core.setup.BevelSetup;
import org.proofcut.core.setup.CentredGrooveSetup;
import org.proofcut.core.setup.Conditions;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.CutAsked.Bevel;
import org.proofcut.core.setup.CutAsked.CentredGroove;
import org.proofcut.core.setup.CutAsked.Countersink;
import org.proofcut.core.setup.CutAsked.EdgeProfile;
import org.proofcut.core.setup.CutAsked.EdgeTrim;
import org.proofcut.core.setup.CutAsked.FlushTrim;
import org.proofcut.core.setup.CutAsked.Holes;
import org.proofcut.core.setup.CutAsked.Jointing;
import org.proofcut.core.setup.CutAsked.Mitre;
import org.proofcut.core.setup.CutAsked.Parting;
import org.proofcut.core.setup.CutAsked.Planing;
import org.proofcut.core.setup.CutAsked.Pocket;
import org.proofcut.core.setup.CutAsked.Rabbet;
import org.proofcut.core.setup.CutAsked.Slot;
import org.proofcut.core.setup.CutAsked.Step;
import org.proofcut.core.setup.CutAsked.Strips;
import org.proofcut.core.setup.CutAsked.Tapered;
import org.proofcut.core.setup.CutAsked.TemplateRecess;
import org.proofcut.core.setup.CutAsked.Tongue;
import org.proofcut.core.setup.DrillSetup;
import org.proofcut.core.setup.EdgeProfileSetup;
import org.proofcut.core.setup.EdgeTrimSetup;
import org.proofcut.core.setup.FlushTrimSetup;
import org.proofcut.core.setup.HandRouterSetup;
import org.proofcut.core.setup.KnifeSetup;
import org.proofcut.core.setup.MitreSawSetup;
import org.proofcut.core.setup.PocketSetup;
import org.proofcut.core.setup.Refusal;
import org.proofcut.core.setup.RouterTableSetup;
import org.proofcut.core.setup.SawSetup;
import org.proofcut.core.setup.SawSlotSetup;
import org.proofcut.core.setup.SawStepSetup;
import org.proofcut.core.setup.SawStripSetup;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.setup.TaperSetup;
import org.proofcut.core.setup.TemplateSetup;
import org.proofcut.core.setup.TongueSetup;
import org.proofcut.core.shop.BearingCutter;
import org.proofcut.core.shop.Bit;
import org.proofcut.core.shop.Cutter;
import org.proofcut.core.shop.DrillPress;
import org.proofcut.core.shop.HandDrill;
import org.proofcut.core.shop.HandRouter;
import org.proofcut.core.shop.Jointer;
import org.proofcut.core.shop.KnifeMachine;
import org.proofcut.core.shop.Machine;
import org.proofcut.core.shop.MitreSaw;
import org.proofcut.core.shop.Planer;
import org.proofcut.core.shop.RouterTable;
import org.proofcut.core.shop.SawBlade;
import org.proofcut.core.shop.Shop;
import org.proofcut.core.shop.StackedCutter;
import org.proofcut.core.shop.StraightCutter;
import org.proofcut.core.shop.TableSaw;
import org.proofcut.core.shop.TrackSaw;

/**
 * Chooses machine and cutter for a cut.
 *
 * <p>Order of trying (common practice): a router table before a router in the hands; one pass with
 * a cutter that fits before two with a narrower one, the widest of those first; a slot at the saw
 * last, with a stacked cutter where it may take one, else with a blade in several passes. A whole
 * sheet is broken down along a track before it is lifted to a saw; every other saw cut is tried at
 * the table saw first, and a crosscut at the mitre saw last: parts of a case are wide, and on a
 * sled they lie whole. A mitre is cut at the mitre saw. Holes are bored at a press before a drill
 * in the hands, because its fence and its column keep them in line and square, with the bit nearest
 * to their size; of two alike a brad point, which starts where it is put. Faces, edges and
 * thicknesses of boards, tapers and tongues have one kind of machine each.
 */
public final class Methods {

  private final Shop shop;
  private final Conditions conditions;

  public Methods(Shop shop, Conditions conditions) {
    this.shop = shop;
    this.conditions = conditions;
  }

  /** The first way that works, and why the ones before it don't. */
  public Choice choose(CutAsked asked) {
    if (asked instanceof Slot slot) {
      return first(slotWays(slot));
    }
    if (asked instanceof Rabbet rabbet) {
      return first(rabbetWays(rabbet));
    }
    if (asked instanceof EdgeProfile profile) {
      return first(edgeProfileWays(profile));
    }
    if (asked instanceof TemplateRecess recess) {
      return first(templateWays(recess));
    }
    if (asked instanceof EdgeTrim trim) {
      return first(edgeTrimWays(trim));
    }
    if (asked instanceof FlushTrim trim) {
      return first(flushTrimWays(trim));
    }
    if (asked instanceof CentredGroove groove) {
      return first(centredGrooveWays(groove));
    }
    if (asked instanceof Holes holes) {
      return first(
          boringWays(
              holes.diameter().value(),
              bit -> DrillSetup.serves(holes, bit, conditions),
              (press, bit) -> DrillSetup.holes(holes, press, bit, conditions),
              (drill, bit) -> DrillSetup.holes(holes, drill, bit, conditions)));
    }
    if (asked instanceof Countersink seat) {
      return first(
          boringWays(
              seat.head().value(),
              bit -> DrillSetup.serves(seat, bit, conditions),
              (press, bit) -> DrillSetup.countersink(seat, press, bit, conditions),
              (drill, bit) -> DrillSetup.countersink(seat, drill, bit, conditions)));
    }
    if (asked instanceof Pocket pocket) {
      return first(
          ways(
              HandDrill.class,
              bits(pocket.exit().value(), bit -> bit.kind() == Bit.Kind.STEPPED),
              (drill, bit) -> PocketSetup.of(pocket, drill, bit, conditions)));
    }
    if (asked instanceof Mitre mitre) {
      return first(mitreWays(mitre));
    }
    if (asked instanceof Bevel bevel) {
      return first(bevelWays(bevel));
    }
    if (asked instanceof Jointing jointing) {
      return first(
          knifeWays(Jointer.class, jointer -> KnifeSetup.jointing(jointing, jointer, conditions)));
    }
    if (asked instanceof Planing planing) {
      return first(
          knifeWays(Planer.class, planer -> KnifeSetup.planing(planing, planer, conditions)));
    }
    if (asked instanceof Step step) {
      return first(
          ways(
              TableSaw.class,
              shop.cutters(SawBlade.class).toList(),
              (saw, blade) -> SawStepSetup.cut(step, saw, blade, conditions)));
    }
    if (asked instanceof Strips strips) {
      return first(
          ways(
              TableSaw.class,
              shop.cutters(SawBlade.class).toList(),
              (saw, blade) -> SawStripSetup.strips(strips, saw, blade, conditions)));
    }
    if (asked instanceof Tongue tongue) {
      // As for a rabbet, none is too wide, and the widest is the stiffest.
      return first(
          ways(
              RouterTable.class,
              straightCutters(Comparator.comparing(StraightCutter::diameter).reversed()),
              (table, cutter) -> TongueSetup.table(tongue, table, cutter, conditions)));
    }
    if (asked instanceof Tapered tapered) {
      return first(
          ways(
              TableSaw.class,
              shop.cutters(SawBlade.class).toList(),
              (saw, blade) -> TaperSetup.cut(tapered, saw, blade, conditions)));
    }
    return first(partingWays((Parting) asked));
  }

  /** Of the profile's cutters the one that reaches as far over the face as is wanted. */
  private Stream<Way> edgeProfileWays(EdgeProfile profile) {
    var cutters =
        bearingCutters(
            profile.profile(),
            Comparator.comparing(
                (BearingCutter one) -> one.cutWidth().minus(profile.width().value()).abs()));
    return Stream.concat(
        ways(
            RouterTable.class,
            cutters,
            (table, cutter) -> EdgeProfileSetup.table(profile, table, cutter, conditions)),
        ways(
            HandRouter.class,
            cutters,
            (router, cutter) -> EdgeProfileSetup.hand(profile, router, cutter, conditions)));
  }

  /** The shortest cutter that reaches is the stiffest, and shows least below the work. */
  private Stream<Way> flushTrimWays(FlushTrim trim) {
    return ways(
        HandRouter.class,
        bearingCutters(
            BearingCutter.Profile.FLUSH_TRIM, Comparator.comparing(BearingCutter::cuttingLength)),
        (router, cutter) -> FlushTrimSetup.hand(trim, router, cutter, conditions));
  }

  /** The widest cutter is the stiffest, and leaves the flattest edge. */
  private Stream<Way> edgeTrimWays(EdgeTrim trim) {
    return ways(
        RouterTable.class,
        straightCutters(Comparator.comparing(StraightCutter::diameter).reversed()),
        (table, cutter) -> EdgeTrimSetup.table(trim, table, cutter, conditions));
  }

  /** The widest cutter that the corners allow is the stiffest. */
  private Stream<Way> templateWays(TemplateRecess recess) {
    return ways(
        HandRouter.class,
        straightCutters(Comparator.comparing(StraightCutter::diameter).reversed()),
        (router, cutter) -> TemplateSetup.hand(recess, router, cutter, conditions));
  }

  private List<BearingCutter> bearingCutters(
      BearingCutter.Profile profile, Comparator<BearingCutter> order) {
    return shop.cutters(BearingCutter.class)
        .filter(one -> one.profile() == profile)
        .sorted(order.thenComparing(BearingCutter::id))
        .toList();
  }

  /** At the table first: its guard can stay over a cutter that a saw's blade must do without. */
  private Stream<Way> centredGrooveWays(CentredGroove groove) {
    return Stream.concat(
        ways(
            RouterTable.class,
            byFit(groove.width().value()),
            (table, cutter) -> CentredGrooveSetup.table(groove, table, cutter, conditions)),
        ways(
            TableSaw.class,
            shop.cutters(SawBlade.class).toList(),
            (saw, blade) -> CentredGrooveSetup.saw(groove, saw, blade, conditions)));
  }

  private Stream<Way> slotWays(Slot slot) {
    var cutters = byFit(slot.width().value());
    return Stream.of(
            ways(
                RouterTable.class,
                cutters,
                (table, cutter) -> RouterTableSetup.slot(slot, table, cutter, conditions)),
            ways(
                HandRouter.class,
                cutters,
                (router, cutter) -> HandRouterSetup.slot(slot, router, cutter, conditions)),
            ways(
                TableSaw.class,
                shop.cutters(StackedCutter.class).toList(),
                (saw, stack) -> SawSlotSetup.stacked(slot, saw, stack, conditions)),
            ways(
                TableSaw.class,
                shop.cutters(SawBlade.class).toList(),
                (saw, blade) -> SawSlotSetup.passes(slot, saw, blade, conditions)))
        .flatMap(ways -> ways);
  }

  private Stream<Way> rabbetWays(Rabbet rabbet) {
    // The widest cutter is the stiffest, and for a rabbet none is too wide.
    var cutters = straightCutters(Comparator.comparing(StraightCutter::diameter).reversed());
    return Stream.concat(
        ways(
            RouterTable.class,
            cutters,
            (table, cutter) -> RouterTableSetup.rabbet(rabbet, table, cutter, conditions)),
        ways(
            HandRouter.class,
            cutters,
            (router, cutter) -> HandRouterSetup.rabbet(rabbet, router, cutter, conditions)));
  }

  private <M extends KnifeMachine> Stream<Way> knifeWays(
      Class<M> machines, Function<M, Answer> calculator) {
    return shop.machines(machines)
        .map(machine -> new Way(machine, machine.head(), () -> calculator.apply(machine)));
  }

  private Stream<Way> partingWays(Parting parting) {
    var blades = shop.cutters(SawBlade.class).toList();
    var atTable =
        ways(
            TableSaw.class,
            blades,
            (saw, blade) -> SawSetup.table(parting, saw, blade, conditions));
    var alongTrack =
        ways(
            TrackSaw.class,
            blades,
            (saw, blade) -> SawSetup.track(parting, saw, blade, conditions));
    boolean wholeSheet = parting.along() && !parting.toSize();
    if (parting.along()) {
      return wholeSheet ? Stream.concat(alongTrack, atTable) : Stream.concat(atTable, alongTrack);
    }
    var atMitreSaw =
        ways(
            MitreSaw.class,
            blades,
            (saw, blade) -> MitreSawSetup.length(parting, saw, blade, conditions));
    return Stream.of(atTable, alongTrack, atMitreSaw).flatMap(ways -> ways);
  }

  private Stream<Way> bevelWays(Bevel bevel) {
    var blades = shop.cutters(SawBlade.class).toList();
    return Stream.concat(
        ways(
            TableSaw.class,
            blades,
            (saw, blade) -> BevelSetup.table(bevel, saw, blade, conditions)),
        ways(
            TrackSaw.class,
            blades,
            (saw, blade) -> BevelSetup.track(bevel, saw, blade, conditions)));
  }

  private Stream<Way> mitreWays(Mitre mitre) {
    return ways(
        MitreSaw.class,
        shop.cutters(SawBlade.class).toList(),
        (saw, blade) -> MitreSawSetup.flat(mitre, saw, blade, conditions));
  }

  private Stream<Way> boringWays(
      Length diameter,
      Predicate<Bit> serves,
      Calculator<DrillPress, Bit> atPress,
      Calculator<HandDrill, Bit> byHand) {
    var tried = bits(diameter, serves);
    return Stream.concat(
        ways(DrillPress.class, tried, atPress), ways(HandDrill.class, tried, byHand));
  }

  /** Those that serve, the nearest in size first; else the nearest alone, to say why not. */
  private List<Bit> bits(Length diameter, Predicate<Bit> serves) {
    var bits =
        shop.cutters(Bit.class)
            .sorted(
                Comparator.comparing((Bit bit) -> bit.diameter().minus(diameter).abs())
                    .thenComparing(Bit::kind)
                    .thenComparing(Bit::id))
            .toList();
    var right = bits.stream().filter(serves).toList();
    return right.isEmpty() ? bits.subList(0, Math.min(1, bits.size())) : right;
  }

  /** Cutters nearest to the width first, from either side, then ever narrower ones. */
  private List<StraightCutter> byFit(Length width) {
    return straightCutters(
        Comparator.comparing((StraightCutter cutter) -> cutter.diameter().minus(width).abs()));
  }

  private List<StraightCutter> straightCutters(Comparator<StraightCutter> order) {
    return shop.cutters(StraightCutter.class)
        .sorted(order.thenComparing(StraightCutter::id))
        .toList();
  }

  private <M extends Machine, C extends Cutter> Stream<Way> ways(
      Class<M> machines, List<C> cutters, Calculator<M, C> calculator) {
    return shop.machines(machines)
        .flatMap(
            machine ->
                cutters.stream()
                    .map(
                        cutter ->
                            new Way(machine, cutter, () -> calculator.answer(machine, cutter))));
  }

  private Choice first(Stream<Way> ways) {
    var refused = new ArrayList<Refused>();
    for (var way : (Iterable<Way>) ways::iterator) {
      var answer = way.answer().get();
      if (answer instanceof Setup setup) {
        return new Choice(Optional.of(conditions.learned().applied(setup)), refused);
      }
      refused.add(new Refused(way.machine().name(), way.cutter().name(), (Refusal) answer));
    }
    return new Choice(Optional.empty(), refused);
  }

  private interface Calculator<M, C> {
    Answer answer(M machine, C cutter);
  }

  private record Way(Machine machine, Cutter cutter, Supplier<Answer> answer) {}
}
