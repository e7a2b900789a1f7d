package org.proofcut.core.boring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.geometry.Sizes.degrees;
import static org.proofcut.core.geometry.Sizes.entered;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;

/** Figures of holes that are printed elsewhere, each with how it is known. */
class BoringPublishedTest {

  /**
   * Middle of a 35 mm cup by its distance from the door's edge, from a cup hinge maker's chart:
   * found in a secondary copy.
   */
  @ParameterizedTest
  @CsvSource({"3, 20.5", "4, 21.5", "5, 22.5", "6, 23.5", "7, 24.5", "8, 25.5"})
  void cup_ofThirtyFive_isCentredByItsDistanceFromTheEdge(String fromEdge, String centre) {
    assertEquals(Length.of(centre + " mm"), cup(fromEdge + " mm").centre().value());
  }

  /**
   * Overlay = fixed distance + edge to cup − height of the plate, from the same chart: formula
   * found in a secondary copy. The figures, with an assumed fixed distance of 11 mm, follow from
   * it.
   */
  @ParameterizedTest
  @CsvSource({"0, 16", "3, 13"})
  void overlay_losesTheHeightOfThePlate(String plate, String overlay) {
    var fixed = entered("11 mm");
    var height = entered(plate + " mm");
    assertEquals(Length.of(overlay + " mm"), cup("5 mm").overlay(fixed, height).value());
    assertEquals(
        Length.of("5 mm"), HingeCup.fromEdge(entered(overlay + " mm"), fixed, height).value());
  }

  private static HingeCup cup(String fromEdge) {
    return new HingeCup(
        entered("35 mm"), entered("13 mm"), entered(fromEdge), entered("18 mm"), entered("4 mm"));
  }

  /**
   * Highest speed = 12 · v ÷ (π · D): 12,000 ft/min at the rim of 2 in make 22,918 turns a minute.
   * Formula found in a secondary copy, the value follows from it.
   */
  @Test
  void highestSpeed_ofTwoInchesAtTwelveThousandFeetAMinute() {
    var rim =
        Worked.given(
            "rim", new Amount(new BigDecimal("3657.6"), "m/min"), Citation.COMMON_PRACTICE);
    assertEquals(22_918, DrillSpeed.highest(entered("2 in"), rim).value());
  }

  /**
   * Line boring in the trade: holes on a pitch of 32 mm, the first row 37 mm from the front edge;
   * from memory. A side of 22 pitches and 2 × 37 mm at its ends takes 23 holes without a remainder.
   */
  @Test
  void lineBoring_onThirtyTwo_startsThirtySevenFromBothEnds() {
    var row =
        new ShelfPins(entered("778 mm"), entered("32 mm"), entered("37 mm"), Optional.empty());
    assertEquals(23, row.holes().value());
    assertEquals(Length.of("37 mm"), row.margin().value());
    assertEquals(Length.of("69 mm"), row.positions().get(1).value());
  }

  /**
   * Pocket holes are bored at 15°, from memory; on that slant an axis moves across by .268 for 1.0
   * along, as tan 15° is .268 in every table.
   */
  @Test
  void pocketHole_atFifteenDegrees_goesAcrossByTwoHundredSixtyEightThousandths() {
    var hole =
        new PocketHole(
            degrees("15"),
            entered("0.75 in"),
            entered("0.375 in"),
            entered("0.5 in"),
            entered("0 in"),
            entered("0.375 in"));
    // 0.5 in under the head, and 1 in ÷ cos 15° = 1.03528 in beyond the joint
    var screw =
        entered(
            Length.of("0.5 in")
                .plus(
                    Length.of("1 in")
                        .times(degrees("15").value().secant(), new Length(1), Rounding.NEAREST)));
    assertNear("1.0 in", hole.tipBeyondJoint(screw).value());
    assertNear(".268 in", hole.tipBelowFace(screw).value().minus(Length.of("0.375 in")));
  }

  private static void assertNear(String printed, Length found) {
    var off = found.minus(Length.of(printed)).abs();
    assertTrue(off.isAtMost(Length.of(".0008 in")), found + ", printed " + printed);
  }
}
