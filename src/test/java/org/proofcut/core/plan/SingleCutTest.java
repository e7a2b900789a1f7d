package org.proofcut.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.operation.SingleCut;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.ShopsForTests;
import org.proofcut.core.shop.Shop;

/** One cut alone is planned by the same code as the same cut in a job. */
class SingleCutTest {

  private static final Plan JOB = PlansForTests.plan();

  private static SinglePlan alone(Operation operation, Shop shop) {
    var cut =
        new SingleCut(
            operation.kind(),
            operation.title(),
            operation.asked().orElseThrow(),
            operation.cutSheets().get(0),
            operation.enteringSheets().stream().findFirst());
    return PlansForTests.planner().plan(cut, shop, LengthUnit.MILLIMETRE);
  }

  @Test
  void everyCutOfAJob_hasTheSameSetUpAlone() {
    int cuts = 0;
    for (var sheet : JOB.sheets()) {
      if (sheet.operation().asked().isPresent()) {
        var alone = alone(sheet.operation(), ShopsForTests.shop()).sheet();
        assertEquals(sheet.operation().choice(), alone.operation().choice(), sheet.id());
        assertEquals(sheet.findings(), alone.findings(), sheet.id());
        cuts++;
      }
    }
    assertTrue(cuts >= 9, cuts + " cuts");
  }

  @Test
  void shopWithoutACutter_saysWhatToEnter() {
    var shop = ShopsForTests.shop().with(Optional.empty(), Optional.of("none"));
    var dado = operation(CutAsked.Slot.class);
    var alone = alone(dado, shop);
    assertEquals(1, alone.problems().size());
    assertEquals("Enter one in the shop", alone.problems().get(0).doThis());
  }

  @Test
  void everyWayRefused_saysWhyAndWhatInstead() {
    var shop = ShopsForTests.shop().with(Optional.of("table"), Optional.of("18"));
    var dado = operation(CutAsked.Slot.class);
    var slot = (CutAsked.Slot) dado.asked().orElseThrow();
    assertTrue(
        slot.accepted().most().isLessThan(ShopsForTests.EIGHTEEN.diameter()),
        "the cutter is too wide for this test");
    var problem = alone(dado, shop).problems().get(0);
    assertTrue(problem.stops());
    assertTrue(problem.what().contains("the slot may be at most"), problem.what());
    assertEquals("Use a narrower cutter", problem.doThis());
  }

  private static Operation operation(Class<? extends CutAsked> asked) {
    return JOB.sheets().stream()
        .map(OperationSheet::operation)
        .filter(one -> one.asked().filter(asked::isInstance).isPresent())
        .findFirst()
        .orElseThrow();
  }
}
