package org.proofcut.core.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.exposure.DustBook;
import org.proofcut.core.exposure.DustEffect;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.operation.HandTask;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.safety.Fact;
import org.proofcut.core.safety.StepFacts;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Pass;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.setup.Work;
import org.proofcut.core.shop.BearingCutter;
import org.proofcut.core.shop.Jointer;
import org.proofcut.core.shop.Liquid;
import org.proofcut.core.shop.LiquidKind;
import org.proofcut.core.shop.Machine;
import org.proofcut.core.shop.MitreSaw;
import org.proofcut.core.shop.OwnedGear;
import org.proofcut.core.shop.Planer;
import org.proofcut.core.shop.Shop;
import org.proofcut.core.shop.StackedCutter;
import org.proofcut.core.shop.TableSaw;
import org.proofcut.core.shop.TrackSaw;
import org.proofcut.core.stock.Material;

/** What is true of an operation, for the rules to judge. */
final class Facts {

  private Facts() {}

  static StepFacts of(Operation operation, Shop shop, DustBook dust) {
    var setup = operation.setup();
    var facts =
        StepFacts.builder()
            .with(Fact.OPERATION, operation.kind().id())
            .with(Fact.MACHINE, setup.map(one -> one.machine().kind()).orElse("none"))
            .with(Fact.GUIDE, setup.map(one -> one.guide().id()).orElse("none"))
            .with(Fact.THROUGH_CUT, operation.asked().map(Facts::isThrough).orElse(false))
            .with(Fact.REGION, shop.region())
            .with(Fact.MATERIALS, materials(operation))
            .with(Fact.PARTS, operation.parts().size())
            .with(Fact.USES_STRIP, setup.map(Setup::usesStrip).orElse(false))
            .with(
                Fact.STACKED_CUTTER,
                setup.map(one -> one.cutter() instanceof StackedCutter).orElse(false))
            .with(
                Fact.CUTTER_HAS_BEARING,
                setup.map(one -> one.cutter() instanceof BearingCutter).orElse(false))
            .with(Fact.INSIDE_OPENING, operation.asked().map(Facts::isInside).orElse(false))
            .with(
                Fact.CUTTER_MARKED,
                setup.map(one -> one.cutter().markedTopSpeed().isPresent()).orElse(false))
            .with(Fact.MACHINE_HAS_GUARD, setup.map(one -> one.machine().hasGuard()).orElse(false))
            .with(
                Fact.MACHINE_HAS_RIVING_KNIFE,
                setup.map(one -> hasRivingKnife(one.machine())).orElse(false))
            .with(
                Fact.MACHINE_HAS_EXTRACTION,
                setup.map(one -> one.machine().hasExtraction()).orElse(false))
            .with(Fact.AIDS_AT_HAND, shop.aidsAtHand())
            .with(Fact.GEAR_AT_HAND, gear(shop))
            .with(Fact.GLUE, operation.kind() == OperationKind.FASTEN)
            .with(Fact.SCREWS, operation.kind() == OperationKind.FASTEN);
    setup.ifPresent(one -> cutting(facts, one));
    operation.asked().ifPresent(asked -> work(facts, asked.work()));
    dust(facts, operation, dust);
    return facts.build();
  }

  /** Kinds of gear that can be worn or used: what is out of use is not at hand. */
  private static List<String> gear(Shop shop) {
    return shop.gear().stream()
        .filter(gear -> !gear.outOfUse())
        .map(OwnedGear::kind)
        .distinct()
        .toList();
  }

  /** What is true of a task without a cutter that belongs to no job. */
  static StepFacts of(HandTask task, Shop shop) {
    var facts =
        StepFacts.builder()
            .with(Fact.OPERATION, task.kind().id())
            .with(Fact.MACHINE, "none")
            .with(Fact.GUIDE, "none")
            .with(Fact.THROUGH_CUT, false)
            .with(Fact.REGION, shop.region())
            .with(Fact.MATERIALS, task.material().stream().map(Material::id).toList())
            .with(Fact.PARTS, 1)
            .with(Fact.USES_STRIP, false)
            .with(Fact.STACKED_CUTTER, false)
            .with(Fact.CUTTER_HAS_BEARING, false)
            .with(Fact.INSIDE_OPENING, false)
            .with(Fact.CUTTER_MARKED, false)
            .with(Fact.MACHINE_HAS_GUARD, false)
            .with(Fact.MACHINE_HAS_RIVING_KNIFE, false)
            .with(
                Fact.MACHINE_HAS_EXTRACTION, task instanceof HandTask.Sand sand && sand.extracted())
            .with(Fact.AIDS_AT_HAND, shop.aidsAtHand())
            .with(Fact.GEAR_AT_HAND, gear(shop))
            .with(Fact.GLUE, task instanceof HandTask.Fasten fasten && fasten.glue().isPresent())
            .with(Fact.SCREWS, task instanceof HandTask.Fasten fasten && fasten.screws());
    task.liquid().ifPresent(liquid -> liquid(facts, liquid));
    byHand(facts, task);
    return facts.build();
  }

  private static void byHand(StepFacts.Builder facts, HandTask task) {
    if (task instanceof HandTask.Carry carry) {
      facts
          .with(Fact.LOAD_WEIGHT, carry.weight().value())
          .with(Fact.LOAD_LONGEST, carry.longest())
          .with(Fact.WHOLE_SHEET, carry.wholeSheet())
          .with(Fact.ALONE, carry.alone())
          .with(Fact.STAIRS, carry.stairs());
    } else if (task instanceof HandTask.Fasten fasten) {
      facts.with(Fact.NAILS, fasten.nails());
    } else if (task instanceof HandTask.Sand sand) {
      facts.with(Fact.BY_MACHINE, sand.byMachine());
    } else if (task instanceof HandTask.Finish finish) {
      facts
          .with(Fact.SPRAYED, finish.applied() == HandTask.Finish.Applied.SPRAYED)
          .with(Fact.OUTDOORS, finish.outdoors())
          .with(Fact.WET_ROOM, finish.wetRoom());
    } else if (task instanceof HandTask.CleanUp cleanUp) {
      facts.with(Fact.CLEANED, cleanUp.what().id());
    }
  }

  private static void liquid(StepFacts.Builder facts, Liquid liquid) {
    facts
        .with(Fact.FLAMMABLE, liquid.category().value().words())
        .with(Fact.HEATS_ITSELF, liquid.kind().heatsItself())
        .with(Fact.LIQUID_HARMS, liquid.kind().harms().stream().map(LiquidKind.Harm::id).toList())
        .with(Fact.DATA_SHEET_ON_FILE, liquid.dataSheetOnFile())
        .with(Fact.STANDS_WET, liquid.kind().standsWet());
  }

  private static void cutting(StepFacts.Builder facts, Setup setup) {
    facts
        .with(Fact.PASSES, setup.passes().size())
        .with(Fact.CUTTER_DIAMETER, setup.cutter().diameter())
        .with(Fact.SPINDLE_SPEED, setup.speed().step().perMinute())
        .with(Fact.CUT_DEPTH, deepest(setup))
        .with(Fact.DEEPEST_PASS, deepestPass(setup));
    if (setup.machine() instanceof Planer planer) {
      facts.with(Fact.MACHINE_HAS_KICKBACK_FINGERS, planer.hasKickbackFingers());
    }
    tableLength(setup.machine()).ifPresent(length -> facts.with(Fact.TABLE_LENGTH, length));
    largestBlade(setup.machine()).ifPresent(blade -> facts.with(Fact.LARGEST_BLADE, blade));
    setup
        .cutter()
        .markedTopSpeed()
        .ifPresent(top -> facts.with(Fact.CUTTER_TOP_SPEED, top.longValue()));
  }

  private static void work(StepFacts.Builder facts, Work work) {
    facts
        .with(Fact.SHORTEST_WORK, work.alongGuide().least())
        .with(Fact.LONGEST_WORK, work.alongGuide().most())
        .with(Fact.NARROWEST_WORK, work.acrossGuide().least())
        .with(Fact.WIDEST_WORK, work.acrossGuide().most())
        .with(Fact.THICKEST_WORK, work.thickness().most())
        .with(Fact.THINNEST_WORK, work.thickness().least())
        .with(Fact.GUIDE_CONTACT, work.alongGuide().least())
        .with(Fact.OVERHANG, work.acrossGuide().most());
  }

  /** Only what cuts makes dust. */
  private static void dust(StepFacts.Builder facts, Operation operation, DustBook dust) {
    if (operation.setup().isEmpty()) {
      return;
    }
    var woods =
        operation.cutSheets().stream()
            .flatMap(sheet -> dust.wood(sheet.wood(), sheet.material().id()).stream())
            .toList();
    if (!woods.isEmpty()) {
      facts.with(Fact.DUST_EFFECTS, dust.effects(woods).stream().map(DustEffect::id).toList());
      dust.strength(operation.setup().get().machine().kind(), woods)
          .ifPresent(strength -> facts.with(Fact.DUST_STRENGTH, strength.value().id()));
    }
  }

  private static List<String> materials(Operation operation) {
    return operation.cutSheets().stream().map(sheet -> sheet.material().id()).distinct().toList();
  }

  private static boolean isInside(CutAsked asked) {
    return asked instanceof CutAsked.TemplateRecess
        || asked instanceof CutAsked.EdgeProfile profile
            && profile.edge() == CutAsked.EdgeKind.INSIDE
        || asked instanceof CutAsked.FlushTrim trim && trim.edge() == CutAsked.EdgeKind.INSIDE;
  }

  private static boolean isThrough(CutAsked asked) {
    return asked instanceof CutAsked.Parting
        || asked instanceof CutAsked.Mitre
        || asked instanceof CutAsked.Bevel
        || asked instanceof CutAsked.Strips
        || asked instanceof CutAsked.Tapered
        || asked instanceof CutAsked.Holes holes && holes.depth().isEmpty()
        || asked instanceof CutAsked.EdgeTrim
        || asked instanceof CutAsked.FlushTrim;
  }

  private static boolean hasRivingKnife(Machine machine) {
    if (machine instanceof TableSaw saw) {
      return saw.hasRivingKnife();
    }
    if (machine instanceof TrackSaw saw) {
      return saw.hasRivingKnife();
    }
    return false;
  }

  private static Optional<Length> largestBlade(Machine machine) {
    if (machine instanceof TableSaw saw) {
      return Optional.of(saw.blades().most());
    }
    if (machine instanceof TrackSaw saw) {
      return Optional.of(saw.blades().most());
    }
    return machine instanceof MitreSaw saw ? Optional.of(saw.blades().most()) : Optional.empty();
  }

  private static Optional<Length> tableLength(Machine machine) {
    if (machine instanceof Jointer jointer) {
      return Optional.of(jointer.infeedLength().plus(jointer.outfeedLength()));
    }
    return machine instanceof Planer planer ? Optional.of(planer.bedLength()) : Optional.empty();
  }

  /** What knives take off in each pass, one after another from the same face or edge. */
  private static List<Length> planed(Setup setup) {
    return setup.passes().stream()
        .flatMap(pass -> pass.planed().stream())
        .map(Pass.Planed::takes)
        .toList();
  }

  private static Length deepest(Setup setup) {
    var planed = planed(setup);
    if (!planed.isEmpty()) {
      return planed.stream().reduce(Length.ZERO, Length::plus);
    }
    var deepest =
        setup.passes().stream()
            .map(pass -> pass.depth().value())
            .max(Length::compareTo)
            .orElseThrow();
    // The carrier's base covers as much of the blade.
    return setup.asked() instanceof CutAsked.Tapered tapered
        ? deepest.minus(tapered.carrier().base().value())
        : deepest;
  }

  /** The most that any one pass takes in depth; passes at a new offset begin at the face again. */
  private static Length deepestPass(Setup setup) {
    // What trims an edge goes into it sideways.
    if (setup.asked() instanceof CutAsked.FlushTrim trim) {
      return trim.overhang().value();
    }
    if (setup.asked() instanceof CutAsked.EdgeTrim) {
      return setup.setting(Setting.Role.FENCE).orElseThrow().set().value();
    }
    var planed = planed(setup);
    if (!planed.isEmpty()) {
      return planed.stream().max(Length::compareTo).orElseThrow();
    }
    var deepest = Length.ZERO;
    var before = new HashMap<Band, Length>();
    for (var pass : setup.passes()) {
      var depth = pass.depth().value();
      var from = before.put(pass.takes(), depth);
      deepest = deepest.max(from == null ? depth : depth.minus(from));
    }
    return deepest;
  }
}
