package org.proofcut.core.intake;

import static org.proofcut.core.intake.Field.text;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.shop.Cutter;
import org.proofcut.core.shop.Liquid;
import org.proofcut.core.shop.LiquidKind;
import org.proofcut.core.shop.Machine;
import org.proofcut.core.shop.OwnedGear;

/** The forms of all that stands in a shop. */
public final class ShopForms {

  private static final Field GEAR_NAME = MachineFields.name("muffs on the hook by the door");

  private static final Field RATING =
      text("rating", "Rating", "as marked on it, such as SNR 32; leave empty if unknown")
          .mayStayEmpty();

  private static final Field PLACE =
      text("place", "Where it lives", "such as \"hook 3\"; leave empty if nowhere yet")
          .mayStayEmpty();

  /** Name of the shop itself. */
  public static final Field SHOP_NAME =
      text("name", "Name of the shop", "stands on its pages, such as \"the long shed\"");

  /** Unit of the shop itself. */
  public static final Field SHOP_UNIT =
      Field.choice("unit", "What is entered from now on, without a unit, is in", JobForm.UNITS);

  /**
   * Where the shop itself stands.
   *
   * @param regions that content knows
   */
  public static Field region(List<Field.Choice> regions) {
    return Field.choice("region", "Where the shop stands", regions);
  }

  /** Kinds of machine. */
  public static final List<ItemForm<? extends Machine>> MACHINES =
      List.of(
          RouterForms.routerTable(),
          RouterForms.handRouter(),
          SawForms.tableSaw(),
          SawForms.trackSaw(),
          SawForms.mitreSaw(),
          DrillForms.drillPress(),
          DrillForms.handDrill(),
          KnifeMachineForms.jointer(),
          KnifeMachineForms.planer());

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
   */
  public record About(String name, LengthUnit unit, String region) {}

  /** What was typed of the shop itself, or what is wrong with it. */
  public static Read<About> about(Map<String, String> typed, Field region) {
    var form = new FormReader(typed, LengthUnit.MILLIMETRE);
    var name = form.text(SHOP_NAME);
    var unit = form.choice(SHOP_UNIT).equals("in") ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
    var stands = form.choice(region);
    return form.result(() -> new About(name, unit, stands));
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
  public static ItemForm<OwnedGear> gear(String kind, String title) {
    return new ItemForm<>(
        kind,
        title,
        List.of(GEAR_NAME, RATING, PLACE),
        (id, form) -> {
          var name = form.text(GEAR_NAME);
          var rating = form.text(RATING);
          var place = form.text(PLACE);
          return form.result(() -> new OwnedGear(id, kind, name, rating, place));
        });
  }
}
