package org.proofcut.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.operation.SingleCut;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.ShopsForTests;
import org.proofcut.core.shop.Shop;
import org.proofcut.core.shop.StackedCutter;
import org.proofcut.core.shop.TableSaw.BlindCuts;

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

  @Test
  void stackedCutter_showsTheBestFewStacks_theOneThatIsSetUpFirst() {
    var owned =
        new StackedCutter(
            "s",
            "stack",
            Length.ofMillimetres(200),
            24,
            Length.of("3.2 mm"),
            List.of(layer("3.2 mm", 4), layer("1.6 mm", 2)),
            List.of(layer("0.3 mm", 2), layer("0.1 mm", 4), layer("0.05 mm", 2)),
            Optional.of(6_000));
    var saw = ShopsForTests.sawWith(new BlindCuts(true, Optional.of(Length.of("22 mm"))));
    var shop =
        new Shop("Saw alone", List.of(saw), List.of(owned), List.of(), List.of("featherboard"));
    var dado = operation(CutAsked.Slot.class);
    var plan = alone(dado, shop);
    var entering = dado.entering().orElseThrow();
    assertTrue(plan.stacks().size() > 1, plan.problems().toString());
    assertEquals(
        plan.sheet().operation().setup().orElseThrow().cutter(), plan.stacks().get(0).stack());
    for (var choice : plan.stacks()) {
      assertEquals(
          choice.stack().cutWidth(),
          entering.most().plus(choice.room().least()),
          choice.toString());
      assertEquals(entering.extent(), choice.room().extent());
    }
    assertEquals(List.of(), alone(dado, ShopsForTests.shop()).stacks());
  }

  private static StackedCutter.Layer layer(String thickness, int count) {
    return new StackedCutter.Layer(Length.of(thickness), count);
  }

  private static Operation operation(Class<? extends CutAsked> asked) {
    return JOB.sheets().stream()
        .map(OperationSheet::operation)
        .filter(one -> one.asked().filter(asked::isInstance).isPresent())
        .findFirst()
        .orElseThrow();
  }
}
