package org.proofcut.core.setup;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.fit.FlushFit;
import org.proofcut.core.fit.SlotFit;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.readings.Readings;
import org.proofcut.core.shop.HandRouter;
import org.proofcut.core.shop.Machine;
import org.proofcut.core.shop.RouterTable;
import org.proofcut.core.shop.StraightCutter;

/** Random cuts at random routers, many of which can be made. */
public final class RandomCuts {

  /**
   * A cut, and what it is tried with.
   *
   * @param across how far the piece reaches out from its reference edge
   */
  public record Trial(CutAsked asked, Length across, Machine machine, StraightCutter cutter) {

    public Answer answer() {
      return answer(Learned.NOTHING);
    }

    /** The same in a shop whose proof cuts have taught something. */
    public Answer answer(Learned learned) {
      var usual = ShopsForTests.CONDITIONS;
      var answer = by(new Conditions(usual.limits(), usual.aids(), usual.unit(), learned));
      return answer instanceof Setup setup ? learned.applied(setup) : answer;
    }

    private Answer by(Conditions conditions) {
      if (machine instanceof RouterTable table) {
        return asked instanceof CutAsked.Slot slot
            ? RouterTableSetup.slot(slot, table, cutter, conditions)
            : RouterTableSetup.rabbet((CutAsked.Rabbet) asked, table, cutter, conditions);
      }
      var router = (HandRouter) machine;
      return asked instanceof CutAsked.Slot slot
          ? HandRouterSetup.slot(slot, router, cutter, conditions)
          : HandRouterSetup.rabbet((CutAsked.Rabbet) asked, router, cutter, conditions);
    }
  }

  private RandomCuts() {}

  /**
   * One that is always the same but for its depth: a slot of 17.87 mm on the table with a cutter of
   * 16 mm.
   */
  public static Trial slotOnTheTable(String depth) {
    return new Trial(
        CutsForTests.slot(depth, "96 mm", CutsForTests.SIDE),
        Length.ofMillimetres(900),
        ShopsForTests.TABLE,
        ShopsForTests.SIXTEEN);
  }

  public static Arbitrary<Trial> trials() {
    // Readings within 0.19 mm: some width serves.
    var readings =
        micrometres(5_000, 30_000)
            .flatMap(
                thinnest ->
                    Arbitraries.integers()
                        .between(0, 19)
                        .map(
                            hundredths ->
                                new Readings(
                                    "entering sheet",
                                    List.of(
                                        thinnest,
                                        thinnest.plus(Length.ofMicrometres(10L * hundredths))))));
    return readings.flatMap(
        entering ->
            Combinators.combine(asked(entering), machines(), cutters(entering.maximum().value()))
                .as((asked, machine, cutter) -> trial(asked, machine, cutter)));
  }

  private static Trial trial(CutAsked asked, Machine machine, StraightCutter cutter) {
    return new Trial(asked, asked.work().acrossGuide().least(), machine, cutter);
  }

  private static Arbitrary<CutAsked> asked(Readings entering) {
    var slot = SlotFit.of(entering, CasesForTests.FIT);
    var flush = FlushFit.of(entering, Worked.entered("set-in", Length.ZERO), CasesForTests.FIT);
    return Combinators.combine(
            Arbitraries.of(true, true, false),
            micrometres(2_000, 14_000),
            micrometres(10_000, 600_000),
            micrometres(100_000, 900_000))
        .as(
            (isSlot, depth, distance, across) -> {
              var work = new Work(at(CasesForTests.mm(700)), at(across), at(CasesForTests.mm(19)));
              var deep = Worked.entered("depth", depth);
              return isSlot
                  ? new CutAsked.Slot(
                      slot.target(),
                      slot.accepted().orElseThrow(),
                      deep,
                      Worked.entered("distance", distance.min(across.half())),
                      work)
                  : new CutAsked.Rabbet(flush.target(), flush.accepted().orElseThrow(), deep, work);
            });
  }

  private static Arbitrary<Machine> machines() {
    var steps =
        Arbitraries.of("0.02 mm", "0.05 mm", "0.1 mm", "0.2 mm", "0.254 mm", "0.5 mm")
            .map(Length::of);
    return Combinators.combine(
            steps, steps, micrometres(30_000, 120_000), Arbitraries.of(true, false))
        .as(
            (fenceStep, heightStep, toCentre, table) ->
                table
                    ? new RouterTable(
                        "table",
                        "router table",
                        ShopsForTests.DIAL,
                        CasesForTests.mm(500),
                        fenceStep,
                        heightStep,
                        CasesForTests.mm(60),
                        true,
                        true)
                    : new HandRouter(
                        "hand",
                        "hand router",
                        ShopsForTests.DIAL,
                        toCentre,
                        heightStep,
                        CasesForTests.mm(40),
                        true,
                        true));
  }

  /** From far too narrow for the width to somewhat too wide, and often just right. */
  private static Arbitrary<StraightCutter> cutters(Length width) {
    var diameters =
        Arbitraries.oneOf(
            Stream.of(
                    Arbitraries.integers()
                        .between(52, 106)
                        .map(percent -> new Length(width.picometres() / 100 * percent)),
                    Arbitraries.integers()
                        .between(100, 150)
                        .map(percent -> new Length(width.picometres() / 100 * percent)),
                    Arbitraries.integers()
                        .between(0, 15)
                        .map(hundredths -> width.plus(Length.ofMicrometres(10L * hundredths))))
                .toList());
    return diameters.map(
        diameter ->
            new StraightCutter(
                "cutter",
                "cutter",
                diameter,
                CasesForTests.mm(12),
                2,
                CasesForTests.mm(8),
                Optional.of(24_000)));
  }

  static Arbitrary<Length> micrometres(int least, int most) {
    return Arbitraries.integers().between(least, most).map(Length::ofMicrometres);
  }

  static Band at(Length length) {
    return new Band(length, length);
  }
}
