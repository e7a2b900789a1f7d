package org.proofcut.core.boring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.geometry.Sizes.entered;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;

class HingeCupTest {

  @Test
  void woodLeftUnderTheCup_warnsUnderTheLimit_andStopsWhereItComesThrough() {
    assertEquals(Length.of("5 mm"), inDoor("18 mm").left().value());
    assertEquals(List.of(), inDoor("17 mm").problems(LengthUnit.MILLIMETRE));
    var thin = inDoor("16.99 mm").problems(LengthUnit.MILLIMETRE).get(0);
    assertFalse(thin.stops());
    assertEquals("Only 3.99 mm of wood is left under the cup", thin.what());
    assertFalse(inDoor("13.01 mm").problems(LengthUnit.MILLIMETRE).get(0).stops());
    assertTrue(inDoor("13 mm").problems(LengthUnit.MILLIMETRE).get(0).stops());
    assertEquals("depth", inDoor("13 mm").problems(LengthUnit.INCH).get(0).where());
  }

  @Test
  void overlayThatTheHingeDoesNotAllow_isAProblem() {
    var allowed = new Band(Length.of("3 mm"), Length.of("6 mm"));
    assertEquals(List.of(), problems("14 mm", allowed));
    assertEquals(List.of(), problems("17 mm", allowed));
    assertEquals(List.of("overlay"), problems("13.9 mm", allowed));
    assertEquals(List.of("overlay"), problems("17.1 mm", allowed));
  }

  private static List<String> problems(String overlay, Band allowed) {
    var edge = HingeCup.fromEdge(entered(overlay), entered("11 mm"), entered("0 mm"));
    return HingeCup.problems(edge, allowed, LengthUnit.MILLIMETRE).stream()
        .map(problem -> problem.where())
        .toList();
  }

  @Test
  void sizesThatAreNone_areRefused() {
    assertThrows(IllegalArgumentException.class, () -> inDoor("0 mm"));
  }

  private static HingeCup inDoor(String thickness) {
    return new HingeCup(
        entered("35 mm"), entered("13 mm"), entered("5 mm"), entered(thickness), entered("4 mm"));
  }
}
