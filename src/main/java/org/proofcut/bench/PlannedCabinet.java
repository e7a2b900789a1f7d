package org.proofcut.bench;

import java.util.List;
import org.proofcut.core.storage.HookSheet;
import org.proofcut.core.storage.Place;
import org.proofcut.core.storage.StorageCheck.Fault;
import org.proofcut.core.storage.StoragePlan;
import org.proofcut.core.storage.StorageTask;
import org.proofcut.core.storage.Thing;
import org.proofcut.core.storage.Wishes.Unmet;

/**
 * A cabinet with its plan.
 *
 * @param places from left to right and from the top down; each with what lives there by {@link
 *     StoragePlan#in}
 * @param faults rules that the plan breaks: none, or it can't be taken
 * @param unmet wishes that are not met, the one that counts most first
 * @param without what has no place, and why
 * @param taken whether everything lives where the plan puts it
 * @param mark of the plan: the same for the same plan
 */
public record PlannedCabinet(
    GearCabinet cabinet,
    StorageTask task,
    StoragePlan plan,
    List<Place> places,
    List<Fault> faults,
    List<Unmet> unmet,
    List<Without> without,
    HookSheet hooks,
    boolean taken,
    String mark) {

  /**
   * A thing that has no place.
   *
   * @param why in a sentence
   */
  public record Without(Thing thing, String why) {}

  public PlannedCabinet {
    places = List.copyOf(places);
    faults = List.copyOf(faults);
    unmet = List.copyOf(unmet);
    without = List.copyOf(without);
  }

  /** Whether things can live by it from now on. */
  public boolean isSound() {
    return faults.isEmpty();
  }
}
