package org.proofcut.core.casework;

import java.util.List;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.part.PartRole;
import org.proofcut.core.stock.Sheet;

/**
 * A case as the maker wants it: sides that run the full height and stand on the floor, the top in
 * rabbets at their upper ends, bottom and fixed shelves in dados, the back in a rabbet all round, a
 * plinth under the bottom.
 *
 * @param unit the unit that the maker works in; messages are written in it
 * @param shelves for each fixed shelf, from the floor to its underside
 */
public record CaseDesign(
    String name,
    LengthUnit unit,
    Outside outside,
    Sheets sheets,
    Joinery joinery,
    Plinth plinth,
    List<Length> shelves) {

  /** Outer size, over everything. */
  public record Outside(Length width, Length height, Length depth) {}

  /** Which sheet each part comes from. */
  public record Sheets(
      Sheet leftSide,
      Sheet rightSide,
      Sheet top,
      Sheet bottom,
      Sheet shelves,
      Sheet back,
      Sheet plinth) {

    /** The sheet for a part. */
    public Sheet of(PartRole role) {
      return switch (role) {
        case LEFT_SIDE -> leftSide;
        case RIGHT_SIDE -> rightSide;
        case TOP -> top;
        case BOTTOM -> bottom;
        case SHELF -> shelves;
        case BACK -> back;
        case PLINTH -> plinth;
      };
    }
  }

  /**
   * How deep each housing goes, and how far the back lies in from the rear.
   *
   * @param topRabbet depth of the rabbet for the top, into the thickness of the sides
   * @param bottomDado depth of the dado for the bottom
   * @param shelfDado depth of the dados for the shelves
   * @param backRabbet depth of the rabbet for the back, into the thickness of sides and top
   * @param backSetIn from the rear edges to the rear face of the back
   */
  public record Joinery(
      Length topRabbet, Length bottomDado, Length shelfDado, Length backRabbet, Length backSetIn) {

    /** Whether the rear corners close: no hole beside the top, no notch behind a dado. */
    public boolean closes() {
      return backRabbet.equals(topRabbet)
          && bottomDado.isAtMost(backRabbet)
          && shelfDado.isAtMost(backRabbet);
    }
  }

  /**
   * The board under the bottom, between the sides.
   *
   * @param height from the floor to the underside of the bottom
   * @param setBack from the front edges of the sides to the front of the plinth
   */
  public record Plinth(Length height, Length setBack) {}

  public CaseDesign {
    shelves = List.copyOf(shelves);
  }
}
