package org.proofcut.bench;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.proofcut.core.shop.OwnedGear;
import org.proofcut.core.storage.Cabinet;
import org.proofcut.core.storage.GearState;
import org.proofcut.core.storage.OwnedKit;
import org.proofcut.core.storage.Place;
import org.proofcut.logbook.GearHome;
import org.proofcut.logbook.StorageLog;

/** What has happened to gear since it was entered: it got a place, it failed when looked at. */
final class Lived {

  private final Map<String, GearHome> homes;
  private final Map<String, GearState> states;

  Lived(StorageLog storage) {
    homes = storage.homes().stream().collect(Collectors.toMap(GearHome::thing, home -> home));
    states = GearState.of(storage.acts());
  }

  /** Where things in a place are, as prompts say it: {@code Gear cabinet: bay 1, hooks}. */
  static String words(Cabinet cabinet, Place place) {
    var name = cabinet.name();
    return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1) + ": " + place.name();
  }

  GearState state(String thing) {
    return states.getOrDefault(thing, GearState.NEW);
  }

  Optional<GearHome> home(String thing) {
    return Optional.ofNullable(homes.get(thing));
  }

  private boolean hasFailed(String thing) {
    return state(thing).failed().isPresent();
  }

  /** A piece with the place that a plan gave it; what it was entered with holds until then. */
  OwnedGear with(OwnedGear piece) {
    return new OwnedGear(
        piece.id(),
        piece.kind(),
        piece.name(),
        piece.rating(),
        home(piece.id()).map(GearHome::words).orElse(piece.place()),
        piece.marked(),
        piece.rated(),
        piece.opened(),
        piece.life(),
        piece.outOfUse() || hasFailed(piece.id()));
  }

  OwnedKit with(OwnedKit kit) {
    return new OwnedKit(
        kit.id(),
        kit.kind(),
        kit.name(),
        kit.opened(),
        kit.life(),
        kit.outOfUse() || hasFailed(kit.id()));
  }
}
