package org.proofcut.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.proofcut.core.operation.HandTask;
import org.proofcut.core.safety.Fact;
import org.proofcut.core.shop.GearLife;
import org.proofcut.core.shop.OwnedGear;
import org.proofcut.core.shop.Shop;
import org.proofcut.core.stock.Material;

class FactsTest {

  /** A mask with a torn seal hangs there, and is none. */
  @Test
  void gearOutOfUse_isNotAtHand() {
    var shop =
        new Shop(
            "test",
            List.of(),
            List.of(),
            List.of(gear("mask", "dust-mask", true), gear("muffs", "ear-protection", false)),
            List.of());
    var facts = Facts.of(new HandTask.DryFit(Material.PLYWOOD), shop);
    assertEquals(Optional.of(List.of("ear-protection")), facts.value(Fact.GEAR_AT_HAND));
  }

  private static OwnedGear gear(String id, String kind, boolean outOfUse) {
    return new OwnedGear(
        id,
        kind,
        id,
        "",
        "",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        GearLife.UNDATED,
        outOfUse);
  }
}
