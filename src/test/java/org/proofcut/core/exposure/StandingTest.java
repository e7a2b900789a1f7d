package org.proofcut.core.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.Standing.Mass;
import org.proofcut.core.exposure.Standing.Pull;
import org.proofcut.core.measure.Length;

class StandingTest {

  private static final Worked<Length> BASE = length("400 mm");

  /** 60 lb, 10 in behind: 40 lb at 14 in before it stand, 43 lb tip it. */
  @Test
  void tips_fromTheLoadThatOutweighsIt() {
    assertFalse(cabinet(load(40, "14 in")).tips());
    assertTrue(cabinet(load(43, "14 in")).tips());
    // 600 − 560 pound inches.
    assertEquals("1016.0 lb mm", cabinet(load(40, "14 in")).margin().value().text());
  }

  @Test
  void tips_inBalanceAlready() {
    assertTrue(cabinet(load(50, "12 in")).tips());
    assertEquals(0, margin(cabinet(load(50, "12 in"))).signum());
  }

  /** Two loads pull as one does that is as heavy as both, where they pull together. */
  @Property
  void margin_ofTwoLoads_isThatOfBothTogether(
      @ForAll @IntRange(min = 0, max = 50) int one,
      @ForAll @IntRange(min = 0, max = 50) int other,
      @ForAll @IntRange(min = 1, max = 900) int before) {
    var arm = before + " mm";
    assertEquals(
        0,
        margin(cabinet(load(one + other, arm)))
            .compareTo(margin(cabinet(load(one, arm), load(other, arm)))));
  }

  @Property
  void margin_fallsWithEachPoundBeforeIt(
      @ForAll @IntRange(min = 0, max = 80) int pounds,
      @ForAll @IntRange(min = 1, max = 40) int more,
      @ForAll @IntRange(min = 1, max = 900) int before) {
    var arm = before + " mm";
    assertTrue(
        margin(cabinet(load(pounds + more, arm))).compareTo(margin(cabinet(load(pounds, arm))))
            < 0);
  }

  @Property
  void margin_fallsWithEachPoundOfPull_andWithItsHeight(
      @ForAll @IntRange(min = 0, max = 80) int pounds,
      @ForAll @IntRange(min = 1, max = 40) int more,
      @ForAll @IntRange(min = 1, max = 1800) int high) {
    assertTrue(margin(pulled(pounds + more, high)).compareTo(margin(pulled(pounds, high))) < 0);
    assertTrue(margin(pulled(more, high + 1)).compareTo(margin(pulled(more, high))) < 0);
  }

  @Property
  void margin_fallsAsTheFloorDrops(
      @ForAll @IntRange(min = 0, max = 60) int drop,
      @ForAll @IntRange(min = 1, max = 60) int more) {
    assertTrue(margin(sloped(drop + more)).compareTo(margin(sloped(drop))) < 0);
  }

  /** Just so much more and it tips; a tenth less and it stands. */
  @Property
  void morePull_isWhereItTips(
      @ForAll @IntRange(min = 100, max = 2000) int high,
      @ForAll @IntRange(min = 0, max = 30) int drop) {
    var standing = sloped(drop);
    var at = length(high + " mm");
    var more = standing.morePull(at).value().value();
    assertFalse(withPull(standing, more.subtract(new BigDecimal("0.1")), at).tips());
    assertTrue(withPull(standing, more.add(new BigDecimal("0.1")), at).tips());
  }

  /**
   * A block of wood with a weight in front, a thousand small cubes each turned with the floor and
   * let hang by itself; no formula of moments, only which side of the front feet each hangs on.
   */
  @Property(tries = 300)
  void margin_isThatOfManySmallCubes(
      @ForAll @IntRange(min = 50, max = 900) int deep,
      @ForAll @IntRange(min = 100, max = 2400) int high,
      @ForAll @IntRange(min = 1, max = 200) int weight,
      @ForAll @IntRange(min = 0, max = 45) int drop,
      @ForAll @IntRange(min = 0, max = 40) int pull,
      @ForAll @IntRange(min = 0, max = 40) int hung) {
    var standing =
        new Standing(
            List.of(
                mass("block", weight, "kg", deep / 2.0, high / 2.0),
                mass("hung", hung, "kg", -100, high)),
            List.of(new Pull("pull", amount(pull, "kg"), length(high + " mm"))),
            length(drop + " mm"),
            length(deep + " mm"));
    double slope = Math.asin((double) drop / deep);
    double expected = 0;
    for (int i = 0; i < 100; i++) {
      for (int j = 0; j < 10; j++) {
        double y = deep * (i + 0.5) / 100;
        double z = high * (j + 0.5) / 10;
        // Turned forward about the front feet: what was up leans to the front.
        expected += weight / 1000.0 * (Math.cos(slope) * y - Math.sin(slope) * z);
      }
    }
    expected += hung * (Math.cos(slope) * -100 - Math.sin(slope) * high);
    expected -= pull * Math.cos(slope) * high;
    assertEquals(expected, margin(standing).doubleValue(), 0.5);
  }

  /** Light where it holds, heavy where it pulls. */
  @Test
  void margin_weightBetweenTwoEnds_isTheWorse() {
    var behind =
        new Mass("side", amount(8, "kg"), amount(12, "kg"), length("100 mm"), length("0 mm"));
    var before =
        new Mass("door", amount(2, "kg"), amount(3, "kg"), length("-100 mm"), length("0 mm"));
    assertEquals(
        "500.0 kg mm",
        Standing.level(List.of(behind, before), List.of(), BASE).margin().value().text());
  }

  @Test
  void weightsInTwoUnits_areRefused() {
    var kilograms = mass("load", 10, "kg", -355.6, 0);
    assertThrows(IllegalArgumentException.class, () -> cabinet(kilograms));
  }

  @Test
  void floorSteeperThanUpright_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> sloped(400));
  }

  private static BigDecimal margin(Standing standing) {
    return standing.margin().value().value();
  }

  private static Standing cabinet(Mass... loads) {
    var masses = new ArrayList<Mass>();
    masses.add(mass("cabinet", 60, "lb", 254, 0));
    masses.addAll(Arrays.asList(loads));
    return Standing.level(masses, List.of(), BASE);
  }

  private static Standing pulled(int pounds, int high) {
    return Standing.level(
        List.of(mass("cabinet", 60, "lb", 254, 500)),
        List.of(new Pull("pull", amount(pounds, "lb"), length(high + " mm"))),
        BASE);
  }

  private static Standing sloped(int drop) {
    return new Standing(
        List.of(mass("cabinet", 60, "lb", 254, 500)), List.of(), length(drop + " mm"), BASE);
  }

  private static Standing withPull(Standing standing, BigDecimal force, Worked<Length> high) {
    var pull = new Pull("pull", Worked.entered("pull", new Amount(force, "lb")), high);
    return new Standing(standing.masses(), List.of(pull), standing.drop(), standing.base());
  }

  private static Mass load(int pounds, String before) {
    return Mass.of(
        "load",
        amount(pounds, "lb"),
        Worked.entered("behind", Length.of(before).negated()),
        length("0 mm"));
  }

  private static Mass mass(String name, int weight, String unit, double behind, double high) {
    return Mass.of(name, amount(weight, unit), length(behind + " mm"), length(high + " mm"));
  }

  private static Worked<Amount> amount(int weight, String unit) {
    return Worked.entered("weight", new Amount(BigDecimal.valueOf(weight), unit));
  }

  private static Worked<Length> length(String text) {
    var length = text.startsWith("-") ? Length.of(text.substring(1)).negated() : Length.of(text);
    return Worked.entered("length", length);
  }
}
