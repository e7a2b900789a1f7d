package org.proofcut.core.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.proofcut.core.casework.Case;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

class CaseOnFloorTest {

  private static final Case CUPBOARD = CaseBodyTest.cupboard(900, 400);

  /** 600 wide with sides of 17.72, a shelf and a bottom 394.34 deep. */
  @Test
  void compartments_areTheRoomsOverTheBoards() {
    var compartments = CaseOnFloor.compartments(CUPBOARD);
    assertEquals(
        List.of("on the bottom", "on shelf"),
        compartments.stream().map(one -> one.name().replaceAll(" [0-9]$", "")).toList());
    for (var one : compartments) {
      assertEquals(Length.of("564.56 mm"), one.width().value());
      assertEquals(Length.of("394.34 mm"), one.depth().value());
    }
    assertEquals(Length.of("117.72 mm"), compartments.get(0).floor().value());
    // The shelf's underside lies at 480.
    assertEquals(Length.of("362.28 mm"), compartments.get(0).height().value());
  }

  /** 0.56456 × 0.39434 m hold 15.6 kg where 70 kg stand on a square metre. */
  @Test
  void usual_isByTheArea() {
    var perSquareMetre = Worked.given("load", 70, Citation.COMMON_PRACTICE);
    assertEquals(
        "15.6 kg", CaseOnFloor.compartments(CUPBOARD).get(0).usual(perSquareMetre).value().text());
  }

  @Test
  void states_withoutFronts_areNotOpened() {
    assertEquals(4, onFloor("0", "0", 0, Optional.empty()).states().size());
    assertEquals(8, onFloor("0", "0", 0, Optional.of("10")).states().size());
  }

  @Test
  void worst_isTheOneWithTheLeastLeft() {
    var floor = onFloor("10", "2", 0, Optional.of("10"));
    var worst = floor.worst();
    assertTrue(
        worst.pulled() && worst.open() && worst.filling() != CaseOnFloor.Filling.FULL,
        worst.words());
    for (var state : floor.states()) {
      assertTrue(margin(state).compareTo(margin(worst)) >= 0, state.words());
    }
  }

  /** Left alone on a level floor it stands, and what stands in it holds it down. */
  @Test
  void leftAlone_stands_andFullStandsFirmer() {
    var states = onFloor("10", "2", 0, Optional.empty()).states();
    assertFalse(states.get(0).standing().tips());
    assertTrue(margin(states.get(1)).compareTo(margin(states.get(0))) > 0);
  }

  @Property(tries = 100)
  void margin_fallsWithWhatHangsOnIt_withThePull_andWithTheDrop(
      @ForAll @IntRange(min = 0, max = 40) int hung,
      @ForAll @IntRange(min = 0, max = 20) int pull,
      @ForAll @IntRange(min = 0, max = 20) int drop) {
    var now = worst(hung, pull, drop);
    assertTrue(worst(hung + 1, pull, drop).compareTo(now) < 0);
    assertTrue(worst(hung, pull + 1, drop).compareTo(now) < 0);
    assertTrue(worst(hung, pull, drop + 1).compareTo(now) < 0);
  }

  /** On a floor that drops, what stands high turns it over: whatever part of it is filled. */
  @Test
  void worst_isNoBetterThanAnyFilling() {
    for (int drop : new int[] {0, 100, 150, 200, 300}) {
      var all = onFloor("0", "0", drop, Optional.empty());
      var worst = margin(all.worst());
      int rooms = all.contents().size();
      for (int filled = 0; filled < 1 << rooms; filled++) {
        int which = filled;
        var some =
            IntStream.range(0, rooms)
                .filter(n -> (which >> n & 1) == 1)
                .mapToObj(all.contents()::get)
                .toList();
        var least = margin(with(all, some).worst());
        assertTrue(worst.compareTo(least) <= 0, drop + " mm, " + some.size() + " filled");
      }
    }
  }

  private static CaseOnFloor with(CaseOnFloor floor, List<CaseOnFloor.Contents> contents) {
    return new CaseOnFloor(
        floor.body(),
        floor.outside(),
        contents,
        floor.fronts(),
        floor.frontsBefore(),
        floor.hung(),
        floor.hungBefore(),
        floor.pull(),
        floor.pullHigh(),
        floor.drop(),
        floor.feetBack());
  }

  /** 600 × 900 × 400 mm: high enough, and half of it is 108 dm³; heavy at 800 kg/m³. */
  @Test
  void comparedInSize_byAllThree() {
    var compared = onFloor("0", "0", 0, Optional.empty()).comparedInSize();
    assertTrue(compared.isHigh());
    assertTrue(compared.isHeavy());
    assertEquals("108.0 dm³", compared.volume().value().text());
    assertTrue(compared.isAsLarge());
    var low = floor(CaseBodyTest.cupboard(685, 400)).comparedInSize();
    assertFalse(low.isHigh());
    assertFalse(low.isAsLarge());
  }

  private static BigDecimal worst(int hung, int pull, int drop) {
    return margin(
        onFloor(Integer.toString(hung), Integer.toString(pull), drop, Optional.empty()).worst());
  }

  private static BigDecimal margin(CaseOnFloor.State state) {
    return state.standing().margin().value().value();
  }

  private static CaseOnFloor floor(Case made) {
    return onFloor(made, "0", "0", 0, Optional.empty());
  }

  private static CaseOnFloor onFloor(String hung, String pull, int drop, Optional<String> fronts) {
    return onFloor(CUPBOARD, hung, pull, drop, fronts);
  }

  private static CaseOnFloor onFloor(
      Case made, String hung, String pull, int drop, Optional<String> fronts) {
    return new CaseOnFloor(
        CaseBody.of(made, DensitiesForTests.ALIKE),
        made.design().outside(),
        CaseOnFloor.compartments(made).stream()
            .map(one -> new CaseOnFloor.Contents(one, weight("15"), one.middle()))
            .toList(),
        fronts.map(CaseOnFloorTest::weight),
        length(300),
        weight(hung),
        length(100),
        weight(pull),
        length(900),
        length(drop),
        length(0));
  }

  private static Worked<Amount> weight(String kilograms) {
    return Worked.entered("weight", new Amount(new BigDecimal(kilograms), "kg"));
  }

  private static Worked<Length> length(int millimetres) {
    return Worked.entered("length", Length.ofMillimetres(millimetres));
  }
}
