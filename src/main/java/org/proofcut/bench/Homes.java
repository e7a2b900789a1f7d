package org.proofcut.bench;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.stream.Collectors;
import org.proofcut.core.storage.Cabinet;
import org.proofcut.core.storage.Place;
import org.proofcut.core.storage.Places;
import org.proofcut.logbook.GearHome;
import org.proofcut.logbook.StorageLog;

/**
 * Where things live by the plans that were taken. Homes and pins go with their places, whatever
 * took those away: the cabinet as typed, the design of a job, content.
 */
@ApplicationScoped
class Homes {

  private final StorageLog storage;
  private final CabinetShelf shelf;

  Homes(StorageLog storage, CabinetShelf shelf) {
    this.storage = storage;
    this.shelf = shelf;
  }

  /** What lives in a cabinet. */
  List<GearHome> in(String cabinet) {
    return storage.homes().stream().filter(home -> home.cabinet().equals(cabinet)).toList();
  }

  /** Has everything live where a plan puts it, and nothing else in its cabinet. */
  void settle(PlannedCabinet planned) {
    var cabinet = planned.task().cabinet();
    storage.settle(
        cabinet.id(),
        planned.plan().puts().stream()
            .map(
                put ->
                    new GearHome(
                        put.thing().id(),
                        cabinet.id(),
                        put.place().id(),
                        Lived.words(cabinet, put.place())))
            .toList());
  }

  /** Follows all cabinets as they are now; whether any home was changed. */
  boolean follow() {
    return QuarkusTransaction.joiningExisting()
        .call(
            () -> {
              if (storage.homes().isEmpty() && storage.pins().isEmpty()) {
                return false;
              }
              boolean changed = false;
              for (var kept : shelf.all()) {
                // What lives in a cabinet that can't be read stays there until it is mended.
                changed |= kept.cabinet().map(this::follow).orElse(false);
              }
              return changed;
            });
  }

  /** Follows one cabinet; whether any home was changed. */
  boolean follow(Cabinet cabinet) {
    var id = cabinet.id();
    var places =
        Places.of(cabinet, shelf.limits()).stream()
            .collect(Collectors.toMap(Place::id, place -> Lived.words(cabinet, place)));
    storage.pins().stream()
        .filter(pin -> pin.cabinet().equals(id) && !places.containsKey(pin.place()))
        .forEach(pin -> storage.unpin(pin.thing()));
    var before = in(id);
    var after =
        before.stream()
            .filter(home -> places.containsKey(home.place()))
            .map(home -> new GearHome(home.thing(), id, home.place(), places.get(home.place())))
            .toList();
    if (after.equals(before)) {
      return false;
    }
    storage.settle(id, after);
    return true;
  }
}
