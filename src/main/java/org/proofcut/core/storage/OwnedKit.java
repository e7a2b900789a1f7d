package org.proofcut.core.storage;

import java.time.LocalDate;
import java.util.Optional;
import org.proofcut.core.shop.GearLife;

/**
 * A thing of the shop that keeps people whole and that nobody wears: a first aid kit, a push stick.
 *
 * @param kind id of its kind of thing, as in {@code content/storage/kinds.yaml}
 * @param name what the maker calls it
 * @param opened when it was bought or opened
 * @param life how long it serves
 * @param outOfUse whether it has failed
 */
public record OwnedKit(
    String id,
    String kind,
    String name,
    Optional<LocalDate> opened,
    GearLife life,
    boolean outOfUse) {

  /** Why it is not used on a day; empty where it may be. */
  public Optional<String> idleOn(LocalDate day) {
    return outOfUse ? Optional.of("out of use") : life.overOn(day);
  }
}
