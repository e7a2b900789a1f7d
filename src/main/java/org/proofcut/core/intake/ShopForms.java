package org.proofcut.core.intake;

import static org.proofcut.core.intake.Field.text;
import static org.proofcut.core.intake.MachineFields.withLevel;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.shop.Cutter;
import org.proofcut.core.shop.GearKind;
import org.proofcut.core.shop.Liquid;
import org.proofcut.core.shop.LiquidKind;
import org.proofcut.core.shop.Machine;
import org.proofcut.core.shop.OwnedGear;
import org.proofcut.core.storage.OwnedKit;
import org.proofcut.core.storage.ThingKind;

/** The forms of all that stands in a shop. */
public final class ShopForms {

  /** Name of the shop itself. */
  public static final Field SHOP_NAME =
      text("name", "Name of the shop", "stands on its pages, such as \"the long shed\"");

  /** Unit of the shop itself. */
  public static final Field SHOP_UNIT =
      Field.choice("unit", "What is entered from now on, without a unit, is in", JobForm.UNITS);

  /** Whether a mask seals on whoever works here. */
  public static final Field BEARD =
      Field.yesNo("beard", "Beard where a mask seals")
          .hinted(
              "No hair may lie under the seal of a mask: 29 CFR 1910.134(g)(1), from memory. A loose"
                  + " hood with a fan needs no seal.")
          .mayStayEmpty();

  /**
   * Where the shop itself stands.
   *
   * @param regions that content knows
   */
  public static Field region(List<Field.Choice> regions) {
    return Field.choice("region", "Where the shop stands", regions)
        .hinted("Its law is told where it binds, with its limits for noise and dust.");
  }

  /** Kinds of machine. */
  public static final List<ItemForm<? extends Machine>> MACHINES =
      List.of(
          withLevel(RouterForms.routerTable()),
          withLevel(RouterForms.handRouter()),
          withLevel(SawForms.tableSaw()),
          withLevel(SawForms.trackSaw()),
          withLevel(SawForms.mitreSaw()),
          withLevel(DrillForms.drillPress()),
          withLevel(DrillForms.handDrill()),
          withLevel(KnifeMachineForms.jointer()),
          withLevel(KnifeMachineForms.planer()));

  /** Kinds of cutter. */
  public static final List<ItemForm<? extends Cutter>> CUTTER_KINDS =
      List.of(
          RouterForms.straightCutter(),
          RouterForms.bearingCutter(),
          SawForms.sawBlade(),
          SawForms.stackedCutter(),
          DrillForms.bit());

  private ShopForms() {}

  /**
   * The shop itself.
   *
   * @param unit that bare numbers of new things take
   * @param region id of where it stands: what is law there
   * @param beard whether whoever works here has a beard where a mask seals
   */
  public record About(String name, LengthUnit unit, String region, boolean beard) {}

  /** What was typed of the shop itself, or what is wrong with it. */
  public static Read<About> about(Map<String, String> typed, Field region) {
    var form = new FormReader(typed, LengthUnit.MILLIMETRE);
    var name = form.text(SHOP_NAME);
    var unit = form.choice(SHOP_UNIT).equals("in") ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
    var stands = form.choice(region);
    var beard = form.yes(BEARD);
    return form.result(() -> new About(name, unit, stands, beard));
  }

  /** The level that the shop's meter showed at a machine, if one was entered and can be read. */
  public static Optional<Worked<Amount>> measuredLevel(Map<String, String> typed) {
    return MachineFields.level(new FormReader(typed, LengthUnit.MILLIMETRE))
        .map(level -> Worked.measured("level at your ear, by your meter", level));
  }

  /** The form of a kind of machine or cutter. */
  public static Optional<ItemForm<?>> of(String kind) {
    return Stream.<ItemForm<?>>concat(MACHINES.stream(), CUTTER_KINDS.stream())
        .filter(form -> form.kind().equals(kind))
        .findFirst();
  }

  /** The form of a glue, finish or solvent of a kind that content knows. */
  public static ItemForm<Liquid> liquid(LiquidKind kind) {
    return LiquidForm.of(kind);
  }

  /** The form of a piece of gear of a kind that content knows. */
  public static ItemForm<OwnedGear> gear(GearKind kind) {
    return GearForm.of(kind, Optional.empty());
  }

  /** The same with how it is kept. */
  public static ItemForm<OwnedGear> gear(GearKind kind, KeptForm kept) {
    return GearForm.of(kind, Optional.of(kept));
  }

  /** The form of a thing that nobody wears. */
  public static ItemForm<OwnedKit> kit(ThingKind kind) {
    return KitForm.of(kind, Optional.empty());
  }

  /** The same with how it is kept. */
  public static ItemForm<OwnedKit> kit(ThingKind kind, KeptForm kept) {
    return KitForm.of(kind, Optional.of(kept));
  }
}
