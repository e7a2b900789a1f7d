package org.proofcut.bench;

import java.util.List;
import java.util.Map;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.storage.Cabinet;
import org.proofcut.core.storage.StoragePlan;

/**
 * Heights of the shelves of a job's case, as its gear asks for them.
 *
 * @param cabinet the case with its shelves there
 * @param shelves each with the height that it has by the design and the one that was found
 * @param before the plan with the shelves as designed
 * @param after the plan with the shelves as found
 * @param designed the job as typed, as it was
 * @param typed the same with the heights that were found
 */
public record ChosenHeights(
    String job,
    LengthUnit unit,
    Cabinet cabinet,
    List<MovedShelf> shelves,
    StoragePlan before,
    StoragePlan after,
    Map<String, String> designed,
    Map<String, String> typed) {

  /**
   * One shelf.
   *
   * @param field of the job's form
   * @param was from the floor to its underside, as it would be typed in the unit of the job
   * @param is the same as found
   */
  public record MovedShelf(String field, String name, String was, String is) {}

  public ChosenHeights {
    shelves = List.copyOf(shelves);
    designed = Map.copyOf(designed);
    typed = Map.copyOf(typed);
  }

  /** Whether anything is to be moved. */
  public boolean isBetter() {
    return shelves.stream().anyMatch(shelf -> !shelf.was().equals(shelf.is()));
  }
}
