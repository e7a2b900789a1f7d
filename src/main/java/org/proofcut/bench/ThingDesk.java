package org.proofcut.bench;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.proofcut.core.shop.OwnedGear;
import org.proofcut.core.storage.Aged;
import org.proofcut.core.storage.KeptAs;
import org.proofcut.core.storage.OwnedKit;
import org.proofcut.core.storage.Thing;
import org.proofcut.core.storage.ThingKind;
import org.proofcut.logbook.GearHome;
import org.proofcut.logbook.GearPin;
import org.proofcut.logbook.ShopItem;
import org.proofcut.logbook.ShopItem.Shelf;
import org.proofcut.logbook.StorageItem;
import org.proofcut.logbook.StorageLog;

/** The things of the shop that want a place, and what of them falls due. */
@ApplicationScoped
class ThingDesk {

  private final ShopFloor floor;
  private final StorageLog storage;
  private final Clock clock;

  ThingDesk(ShopFloor floor, StorageLog storage, Clock clock) {
    this.floor = floor;
    this.storage = storage;
    this.clock = clock;
  }

  /** What the shop knows of a piece, be it worn or not. */
  private record Piece(Aged aged, Optional<StoredThing> stored) {}

  LocalDate today() {
    return LocalDate.now(clock);
  }

  /** Everything that has a kind of thing. */
  List<StoredThing> all(Set<String> people) {
    return pieces(people).stream().flatMap(piece -> piece.stored().stream()).toList();
  }

  /** All that ages, whether it has a kind of thing or not. */
  List<Aged> aged() {
    return pieces(Set.of()).stream().map(Piece::aged).toList();
  }

  private List<Piece> pieces(Set<String> people) {
    var lived = new Lived(storage);
    var pins = storage.pins().stream().collect(Collectors.toMap(GearPin::thing, pin -> pin));
    var cabinets = storage.all(StorageItem.Sort.CABINET).stream().map(StorageItem::id).toList();
    var pieces = new ArrayList<Piece>();
    for (var item : floor.items()) {
      if (item.shelf() == Shelf.GEAR || item.shelf() == Shelf.KIT) {
        piece(item, lived, pins, cabinets, people).ifPresent(pieces::add);
      }
    }
    return pieces;
  }

  private Optional<Piece> piece(
      ShopItem item,
      Lived lived,
      Map<String, GearPin> pins,
      List<String> cabinets,
      Set<String> people) {
    var kinds = floor.keptKinds(item.shelf(), item.kind());
    var kept = floor.keptForm(item.shelf(), item.kind()).kept(item.typed(), floor.unitOf(item));
    var kind = kind(kinds, kept);
    return aged(item, kind, lived)
        .map(
            aged -> {
              var idle = idle(item, lived);
              return new Piece(
                  aged,
                  kind.map(
                      of ->
                          new StoredThing(
                              thing(item.id(), aged.name(), of, kept, people),
                              assumed(kept, kinds),
                              warnings(kept, people),
                              kept.cabinet().or(() -> cabinets.stream().findFirst()),
                              lived.home(item.id()).map(ThingDesk::home),
                              Optional.ofNullable(pins.get(item.id())).map(ThingDesk::pin),
                              lived.state(item.id()).out(),
                              idle)));
            });
  }

  private static Optional<ThingKind> kind(List<ThingKind> kinds, KeptAs kept) {
    return kinds.stream().filter(one -> kept.kind().map(one.id()::equals).orElse(true)).findFirst();
  }

  private Optional<Aged> aged(ShopItem item, Optional<ThingKind> kind, Lived lived) {
    var ages = kind.map(ThingKind::ages).orElse(List.of());
    var state = lived.state(item.id());
    return item.shelf() == Shelf.KIT
        ? floor
            .readKept(item, OwnedKit.class)
            .map(
                kit ->
                    new Aged(
                        kit.id(),
                        kit.name(),
                        ages,
                        kit.opened(),
                        kit.life(),
                        kit.outOfUse(),
                        state))
        : floor
            .readKept(item, OwnedGear.class)
            .map(
                gear ->
                    new Aged(
                        gear.id(),
                        gear.name(),
                        ages,
                        gear.opened(),
                        gear.life(),
                        gear.outOfUse(),
                        state));
  }

  private Optional<String> idle(ShopItem item, Lived lived) {
    return item.shelf() == Shelf.KIT
        ? floor.readKept(item, OwnedKit.class).map(lived::with).flatMap(kit -> kit.idleOn(today()))
        : floor
            .readKept(item, OwnedGear.class)
            .map(lived::with)
            .flatMap(gear -> gear.idleOn(today()));
  }

  /** Of names that nobody has, none is left; where none is left, everybody has to reach it. */
  private static Thing thing(
      String id, String name, ThingKind kind, KeptAs kept, Set<String> people) {
    var thing = kept.thing(id, name, kind);
    return new Thing(
        id,
        name,
        kind,
        thing.size(),
        thing.grams(),
        thing.boxed(),
        thing.use(),
        thing.users().stream().filter(people::contains).collect(Collectors.toSet()));
  }

  private static List<String> assumed(KeptAs kept, List<ThingKind> kinds) {
    var assumed = new ArrayList<String>();
    if (kinds.size() > 1 && kept.kind().isEmpty()) {
      assumed.add("kind of thing");
    }
    assumed.addAll(kept.assumed());
    return assumed;
  }

  private static List<String> warnings(KeptAs kept, Set<String> people) {
    return kept.users().stream()
        .filter(name -> !people.contains(name))
        .sorted()
        .map(name -> "There is nobody of the name \"" + name + "\" among those who take things out")
        .toList();
  }

  private static StoredThing.Home home(GearHome home) {
    return new StoredThing.Home(home.cabinet(), home.place(), home.words());
  }

  private static StoredThing.Pin pin(GearPin pin) {
    return new StoredThing.Pin(pin.cabinet(), pin.place());
  }
}
