package org.proofcut.core.storage;

import java.util.Optional;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;

/**
 * One place of a cabinet, in which things stand or hang side by side.
 *
 * <p>Widths count from the inner face of the left side, heights from the inner face of the bottom,
 * depths from the inner face of the back.
 *
 * @param name as labels and prompts call it, such as "bay 1, rail"
 * @param column in which it lies, from 0 on the left; those on doors come with the bay behind them
 * @param across from left to right
 * @param upright from the surface that things stand on, or as deep as they may hang, to the surface
 *     above, or the hooks
 * @param deep from back to front
 * @param mostGrams what it carries in all
 * @param mostGramsEach what each hook carries; empty where there are no hooks
 * @param sealed whether a lid closes it
 * @param dry whether it stays dry
 */
public record Place(
    String id,
    String name,
    Kind kind,
    int column,
    Band across,
    Band upright,
    Band deep,
    int mostGrams,
    Optional<Integer> mostGramsEach,
    boolean sealed,
    boolean dry) {

  /** What kind of place it is. */
  public enum Kind {
    SHELF(false),
    RAIL(true),
    DRAWER(false),
    /** A box with a lid that stands on a shelf. */
    BOX(false),
    DOOR_RAIL(true),
    /** On the wall or on the outside of the cabinet: no door shuts over it. */
    WALL(true);

    private final boolean hung;

    Kind(boolean hung) {
      this.hung = hung;
    }

    /** Whether things hang there, each on its own hook. */
    public boolean isHung() {
      return hung;
    }
  }

  /** Whether things that are kept in this posture can be kept here. */
  public boolean takes(Posture posture) {
    return kind.isHung() == (posture == Posture.HANGING);
  }

  /** Whether it is in sight, behind no door. */
  public boolean isOpen() {
    return kind == Kind.WALL;
  }

  /** Whether things here go with the door and not with the back. */
  public boolean isOnDoor() {
    return kind == Kind.DOOR_RAIL;
  }

  public Length width() {
    return across.extent();
  }
}
