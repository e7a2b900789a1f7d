package org.proofcut.core.setup;

import static org.proofcut.core.setup.CutsForTests.withAids;
import static org.proofcut.core.setup.RandomCuts.at;
import static org.proofcut.core.setup.RandomCuts.micrometres;
import static org.proofcut.core.setup.ShopsForTests.mm;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.arbitraries.ListArbitrary;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.fit.SlotFit;
import org.proofcut.core.measure.Length;
import org.proofcut.core.readings.Readings;
import org.proofcut.core.setup.CutAsked.Slot;
import org.proofcut.core.shop.SawBlade;
import org.proofcut.core.shop.StackedCutter;
import org.proofcut.core.shop.StackedCutter.Layer;
import org.proofcut.core.shop.TableSaw;
import org.proofcut.core.shop.TableSaw.BlindCuts;

/** Random slots at random saws, with a blade or with a stack, many of which can be made. */
public final class RandomSawSlots {

  static final Conditions CONDITIONS = withAids("featherboard");

  /**
   * A slot, the saw, and what it is cut with.
   *
   * @param uneven how much of a strip's room each strip of the pack takes up, in hundredths
   */
  public record Trial(
      Slot asked,
      TableSaw saw,
      SawBlade blade,
      StackedCutter stack,
      boolean stacked,
      List<Integer> uneven) {

    public Answer answer() {
      return answer(Learned.NOTHING);
    }

    /** The same with what proof cuts have taught. */
    public Answer answer(Learned learned) {
      var conditions =
          new Conditions(CONDITIONS.limits(), CONDITIONS.aids(), CONDITIONS.unit(), learned);
      var answer =
          stacked
              ? SawSlotSetup.stacked(asked, saw, stack, conditions)
              : SawSlotSetup.passes(asked, saw, blade, conditions);
      return answer instanceof Setup setup ? learned.applied(setup) : answer;
    }

    /** How far the piece reaches out from its reference edge. */
    public Length across() {
      return asked.work().acrossGuide().least();
    }
  }

  private RandomSawSlots() {}

  public static Arbitrary<Trial> trials() {
    return Arbitraries.of(true, false, false).flatMap(RandomSawSlots::trials);
  }

  private static Arbitrary<Trial> trials(boolean stacked) {
    return Combinators.combine(
            stacked ? slots(8_000, 18_000) : slots(3_000, 11_000),
            Arbitraries.of("0.05 mm", "0.1 mm", "0.254 mm", "0.5 mm").map(Length::of),
            micrometres(1_800, 4_200),
            stacks(),
            Arbitraries.integers().between(0, 100).list().ofSize(5))
        .as(
            (asked, step, kerf, stack, uneven) -> {
              var saw =
                  ShopsForTests.sawWith(step, new BlindCuts(true, Optional.of(Length.of("22 mm"))));
              var blade = new SawBlade("b", "blade", mm(250), kerf, 40, Optional.of(6_000));
              return new Trial(asked, saw, blade, stack, stacked, uneven);
            });
  }

  private static Arbitrary<Slot> slots(int thin, int thick) {
    return Combinators.combine(
            micrometres(thin, thick),
            Arbitraries.integers().between(0, 19),
            micrometres(2_000, 12_000),
            micrometres(1_000, 500_000),
            micrometres(280_000, 700_000),
            micrometres(100_000, 1_200_000))
        .as(
            (thinnest, hundredths, depth, distance, along, across) -> {
              var thickest = thinnest.plus(Length.ofMicrometres(10L * hundredths));
              var fit =
                  SlotFit.of(
                      new Readings("entering sheet", List.of(thinnest, thickest)),
                      CasesForTests.FIT);
              return new Slot(
                  fit.target(),
                  fit.accepted().orElseThrow(),
                  Worked.entered("depth", depth),
                  Worked.entered("distance", distance.min(across.half())),
                  new Work(at(along), at(across), at(mm(19))));
            });
  }

  private static Arbitrary<StackedCutter> stacks() {
    return Combinators.combine(
            micrometres(2_400, 3_400),
            layers(1_200, 3_400).ofMinSize(2).ofMaxSize(3),
            layers(50, 500).ofMinSize(1).ofMaxSize(4))
        .as(
            (kerf, chippers, shims) ->
                new StackedCutter(
                    "s", "stack", mm(200), 24, kerf, chippers, shims, Optional.of(6_000)));
  }

  private static ListArbitrary<Layer> layers(int least, int most) {
    return Combinators.combine(micrometres(least, most), Arbitraries.integers().between(1, 4))
        .as(Layer::new)
        .list();
  }
}
