package org.proofcut.core.operation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.casework.Casework;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.method.Methods;
import org.proofcut.core.setup.ShopsForTests;

class OperationsTest {

  @Test
  void print() {
    var c = Casework.derive(CasesForTests.cupboard(), CasesForTests.CASE, CasesForTests.FIT);
    var ops =
        Operations.of(
            c,
            c,
            CasesForTests.FIT,
            new OperationLimits(
                Worked.given("a", Length.ofMillimetres(6), Citation.COMMON_PRACTICE),
                Worked.given("b", Length.ofMillimetres(5), Citation.COMMON_PRACTICE),
                Worked.given("c", Length.ofMillimetres(300), Citation.COMMON_PRACTICE),
                Worked.given("d", Length.ofMillimetres(50), Citation.COMMON_PRACTICE)),
            new Methods(ShopsForTests.shop(), ShopsForTests.CONDITIONS));
    for (var op : ops) {
      System.out.println("== " + op.id() + " | " + op.title());
      op.choice()
          .ifPresent(
              ch ->
                  ch.refused()
                      .forEach(
                          r ->
                              System.out.println(
                                  "   no: "
                                      + r.machine()
                                      + "/"
                                      + r.cutter()
                                      + ": "
                                      + r.why().what())));
      op.setup()
          .ifPresent(
              s -> {
                System.out.println(
                    "   "
                        + s.machine().name()
                        + " / "
                        + s.cutter().name()
                        + " "
                        + s.guide()
                        + " step "
                        + s.speed().step().mark()
                        + " rim "
                        + s.speed().rim().value());
                s.settings()
                    .forEach(
                        x ->
                            System.out.println(
                                "   " + x.role() + " " + x.set().value() + "  " + x.from()));
                s.passes()
                    .forEach(
                        p ->
                            System.out.println(
                                "   pass "
                                    + p.number()
                                    + " strip "
                                    + p.stripOn()
                                    + " depth "
                                    + p.depth().value()
                                    + " takes "
                                    + p.takes()
                                    + " "
                                    + p.engages()));
                s.measures()
                    .forEach(
                        m ->
                            System.out.println(
                                "   measure "
                                    + m.dimension()
                                    + " "
                                    + m.target().value()
                                    + " "
                                    + m.accepted()
                                    + " by "
                                    + m.correctedBy()));
              });
      op.parts()
          .forEach(
              p ->
                  System.out.println(
                      "   - "
                          + p.name()
                          + " "
                          + p.size().map(x -> x.value().toString()).orElse("")
                          + " "
                          + p.handling()));
    }
    assertEquals(List.of(), List.of());
  }
}
