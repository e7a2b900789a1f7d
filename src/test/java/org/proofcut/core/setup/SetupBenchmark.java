package org.proofcut.core.setup;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.proofcut.core.boring.HolesForTests;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.intake.CutForm;
import org.proofcut.core.intake.CutForms;
import org.proofcut.core.intake.CutsTyped;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.method.Choice;
import org.proofcut.core.method.Methods;
import org.proofcut.core.operation.SingleCut;
import org.proofcut.core.shop.StackedCutter;
import org.proofcut.core.shop.StackedCutter.Layer;

/** Microseconds a set-up. Run by {@code docs/measure-setup.sh}. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class SetupBenchmark {

  private final CutAsked.Slot slot = CutsForTests.slot("6 mm", "96 mm", CutsForTests.SIDE);
  private final CutAsked.Rabbet rabbet = CutsForTests.rabbet(CutsForTests.SIDE);
  private final CutAsked.Parting rip =
      new CutAsked.Parting(
          Worked.entered("width", Length.ofMillimetres(300)), true, true, CutsForTests.SIDE);
  private final List<SingleCut> oneOfEach =
      CutForms.all(CasesForTests.FIT, HolesForTests.LIMITS).stream()
          .map(
              form ->
                  form.read(
                          CutForm.filledIn(CutsTyped.with(form.kind()), LengthUnit.MILLIMETRE),
                          CutsTyped.SHOP)
                      .value()
                      .orElseThrow()
                      .cut())
          .toList();
  private final Methods wholeShop =
      new Methods(
          CutsTyped.SHOP,
          new Conditions(ShopsForTests.LIMITS, CutsTyped.SHOP.aids(), LengthUnit.MILLIMETRE));
  private final Methods methods = new Methods(ShopsForTests.shop(), ShopsForTests.CONDITIONS);
  private final StackedCutter stack =
      new StackedCutter(
          "stack",
          "stack",
          Length.ofMillimetres(200),
          12,
          Length.of("3.2 mm"),
          List.of(new Layer(Length.of("3.2 mm"), 4), new Layer(Length.of("1.6 mm"), 1)),
          List.of(new Layer(Length.of("0.1 mm"), 4), new Layer(Length.of("0.25 mm"), 2)),
          Optional.of(7_000));

  /** A slot in two passes on the router table. */
  @Benchmark
  public Answer slotOnTheRouterTable() {
    return RouterTableSetup.slot(
        slot, ShopsForTests.TABLE, ShopsForTests.SIXTEEN, ShopsForTests.CONDITIONS);
  }

  @Benchmark
  public Answer slotByHand() {
    return HandRouterSetup.slot(
        slot, ShopsForTests.HAND, ShopsForTests.SIXTEEN, ShopsForTests.CONDITIONS);
  }

  @Benchmark
  public Answer rabbetOnTheRouterTable() {
    return RouterTableSetup.rabbet(
        rabbet, ShopsForTests.TABLE, ShopsForTests.SIXTEEN, ShopsForTests.CONDITIONS);
  }

  @Benchmark
  public Answer rip() {
    return SawSetup.table(
        rip, ShopsForTests.SAW, ShopsForTests.RIP_BLADE, ShopsForTests.CONDITIONS);
  }

  /** The best stacks among all that four kinds of layer make. */
  @Benchmark
  public List<StackedCutter> stacks() {
    return Stacks.best(
        slot.width().value(), slot.accepted(), stack, Stacks.FEW, ShopsForTests.CONDITIONS);
  }

  /** Every way that a small shop has, in order, until one serves. */
  @Benchmark
  public Choice choiceOfMethod() {
    return methods.choose(slot);
  }

  /** One cut of each kind that there is a page for, with the first way that serves. */
  @Benchmark
  public List<Choice> oneOfEachKind() {
    return oneOfEach.stream().map(cut -> wholeShop.choose(cut.asked())).toList();
  }
}
