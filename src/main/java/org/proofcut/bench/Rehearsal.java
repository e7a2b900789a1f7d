package org.proofcut.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.content.Content;
import org.proofcut.content.Faulty;
import org.proofcut.core.intake.Demo;
import org.proofcut.core.intake.ItemForm;
import org.proofcut.core.intake.JobForm;
import org.proofcut.core.intake.KeptForm;
import org.proofcut.core.intake.ShopForms;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.shop.Cutter;
import org.proofcut.core.shop.Machine;
import org.proofcut.core.shop.OwnedAid;
import org.proofcut.core.shop.OwnedGear;
import org.proofcut.core.shop.Shop;
import org.proofcut.core.storage.OwnedKit;
import org.proofcut.core.storage.ThingKind;

/**
 * The demo's job, planned with content that is not in force yet: what makes the program fail there
 * is not let near a job in work. Whether the plan is sound is not asked; it may well be stopped.
 */
final class Rehearsal {

  private Rehearsal() {}

  /** Why the content can't be worked with; empty if the job can be planned. */
  static Optional<Faulty> of(Standing standing) {
    try {
      standing
          .planner()
          .plan(JobForm.read(Demo.job()).value().orElseThrow(), shop(standing.content()));
      return Optional.empty();
    } catch (RuntimeException e) {
      WorkBench.LOG.warn("The demo's job can't be planned with the shop's own content", e);
      return Optional.of(
          Faulty.inAll(
              "the demo's job can't be planned with it",
              "limits and words that a whole job can be planned with",
              "Take back what was changed last."));
    }
  }

  /** The demo's shop as it is entered, with the id of each thing its name. */
  static Shop shop(Content content) {
    var machines = new ArrayList<Machine>();
    var cutters = new ArrayList<Cutter>();
    var gear = new ArrayList<OwnedGear>();
    var aids = new ArrayList<String>();
    var ownedAids = new ArrayList<OwnedAid>();
    for (var thing : Demo.things()) {
      switch (thing.group()) {
        case MACHINE -> machines.add((Machine) made(ShopForms.of(thing.kind()), thing.typed()));
        case CUTTER -> cutters.add((Cutter) made(ShopForms.of(thing.kind()), thing.typed()));
        case GEAR -> gear.add((OwnedGear) made(gear(thing.kind(), content), thing.typed()));
        case AID -> aids.add(thing.kind());
        case KIT -> aid(thing, content).ifPresent(ownedAids::add);
        // No sheet of a case asks for a finish.
        case LIQUID -> {}
      }
    }
    return new Shop(
        "demo", Shop.ELSEWHERE, machines, cutters, gear, aids, false, List.of(), ownedAids);
  }

  private static Optional<OwnedAid> aid(Demo.Thing thing, Content content) {
    var kind = Optional.ofNullable(content.storage().get(thing.kind()));
    return kind.flatMap(ThingKind::asAid)
        .map(
            as ->
                as.of(
                    (OwnedKit) made(kind.map(ShopForms::kit), thing.typed()),
                    "",
                    Optional.empty(),
                    KeptForm.known(List.of()).kept(thing.typed(), LengthUnit.MILLIMETRE),
                    LengthUnit.MILLIMETRE));
  }

  private static Optional<ItemForm<?>> gear(String kind, Content content) {
    return Optional.ofNullable(content.wording().gear().get(kind)).map(ShopForms::gear);
  }

  private static Object made(Optional<? extends ItemForm<?>> form, Map<String, String> typed) {
    var id = typed.getOrDefault("name", "");
    return form.orElseThrow().read(id, typed, LengthUnit.MILLIMETRE).value().orElseThrow();
  }
}
