package org.proofcut.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.*;
import org.junit.jupiter.api.Test;
import org.proofcut.core.plan.Plan;

class WrittenTest {

  private static final Written<Plan> PLANS = new Written<>(Plan.class);

  @Test
  void read_wholePlan_equalsWhatWasWritten() throws Exception {
    var plan = PlansForTests.cupboard();
    assertTrue(plan.isSound(), plan.problems().toString());
    var json = PLANS.write(plan);
    Files.writeString(Path.of("/tmp/lbk/plan.json"), json);
    for (int i = 0; i < 30; i++) {
      long t = System.nanoTime();
      PLANS.write(plan);
      long u = System.nanoTime();
      PLANS.read(json, "x");
      System.out.println((u - t) / 1000 + " us write, read " + (System.nanoTime() - u) / 1000);
    }
    System.out.println(json.length());
    assertEquals(plan, PLANS.read(json, "plan 1"));
  }
}
