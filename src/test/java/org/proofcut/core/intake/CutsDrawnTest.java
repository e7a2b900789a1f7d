package org.proofcut.core.intake;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.proofcut.core.boring.HolesForTests;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.drawing.CutSection;
import org.proofcut.core.drawing.MachinePlan;
import org.proofcut.core.drawing.Seen;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.plan.PlansForTests;
import org.proofcut.core.setup.ShopsForTests;
import org.proofcut.core.shop.Machine;
import org.proofcut.core.shop.Shop;

/** Each cut that a person might type, drawn on each machine that makes it. */
class CutsDrawnTest {

  private static final int[] WIDTHS = {600, 350};

  static List<CutForm> forms() {
    return CutForms.all(CasesForTests.FIT, HolesForTests.LIMITS);
  }

  @ParameterizedTest
  @MethodSource("forms")
  void cut_isLegibleInBothUnitsAndWidths(CutForm form) {
    var typed = CutForm.filledIn(CutsTyped.with(form.kind()), LengthUnit.MILLIMETRE);
    var shop = ShopsForTests.shop();
    for (var machine : shop.machines()) {
      if (form.machines().stream().anyMatch(kind -> kind.isInstance(machine))) {
        drawn(form, form.read(typed, shop).value().orElseThrow(), with(shop, machine));
      }
    }
  }

  private static void drawn(CutForm form, CutForm.Wanted wanted, Shop shop) {
    var operation =
        PlansForTests.planner().plan(wanted.cut(), shop, wanted.unit()).sheet().operation();
    operation
        .setup()
        .ifPresent(
            setup -> {
              for (var unit : LengthUnit.values()) {
                for (int width : WIDTHS) {
                  var what = form.kind() + " on " + setup.machine().name() + " at " + width;
                  Seen.in(MachinePlan.of(operation, setup, unit, width)).isLegible(what);
                  Seen.in(CutSection.of(operation, setup, unit, width)).isLegible(what);
                }
              }
            });
  }

  private static Shop with(Shop shop, Machine machine) {
    return new Shop(shop.name(), List.of(machine), shop.cutters(), shop.gear(), shop.aids());
  }
}
