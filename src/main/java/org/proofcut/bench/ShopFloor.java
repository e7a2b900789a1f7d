package org.proofcut.bench;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.intake.CabinetForm;
import org.proofcut.core.intake.Demo;
import org.proofcut.core.intake.DemoGear;
import org.proofcut.core.intake.Field;
import org.proofcut.core.intake.ItemForm;
import org.proofcut.core.intake.JobForm;
import org.proofcut.core.intake.KeptForm;
import org.proofcut.core.intake.Read;
import org.proofcut.core.intake.ShopForms;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.shop.Cutter;
import org.proofcut.core.shop.Liquid;
import org.proofcut.core.shop.Machine;
import org.proofcut.core.shop.OwnedAid;
import org.proofcut.core.shop.OwnedGear;
import org.proofcut.core.shop.Shop;
import org.proofcut.core.storage.OwnedKit;
import org.proofcut.core.storage.Place;
import org.proofcut.core.storage.Places;
import org.proofcut.core.storage.StorageLimits;
import org.proofcut.core.storage.ThingKind;
import org.proofcut.logbook.GearHome;
import org.proofcut.logbook.Logbook;
import org.proofcut.logbook.ShopItem;
import org.proofcut.logbook.ShopItem.Shelf;
import org.proofcut.logbook.StorageItem;
import org.proofcut.logbook.StorageLog;

/** The shop as entered: what there is, and changes to it. */
@ApplicationScoped
public class ShopFloor {

  private static final String SHOP = "shop";

  /** What the ids of the demo's things begin with. */
  private static final String DEMO = "demo-";

  private static final String DEMO_CABINET = DEMO + "cabinet";

  private static final String UNIT = JobForm.UNIT.name();
  private static final String REGION = "region";
  private static final String BEARD = ShopForms.BEARD.name();

  private final Logbook logbook;
  private final StorageLog storage;
  private final House house;
  private final Clock clock;

  ShopFloor(Logbook logbook, StorageLog storage, House house, Clock clock) {
    this.logbook = logbook;
    this.storage = storage;
    this.house = house;
    this.clock = clock;
  }

  /** Everything in the shop, as typed, in the order entered. */
  public List<ShopItem> items() {
    return logbook.shop().stream().filter(item -> item.shelf() != Shelf.SHOP).toList();
  }

  /** One thing in the shop, as typed. */
  public Optional<ShopItem> item(String id) {
    return items().stream().filter(item -> item.id().equals(id)).findFirst();
  }

  /** Name and unit of the shop, as typed. */
  public Map<String, String> about() {
    return logbook.shop().stream()
        .filter(item -> item.shelf() == Shelf.SHOP)
        .findFirst()
        .map(ShopItem::typed)
        .orElse(Map.of("name", "My shop", UNIT, "mm", REGION, Shop.ELSEWHERE));
  }

  /** The fields of the shop itself. */
  public List<Field> aboutFields() {
    return List.of(ShopForms.SHOP_NAME, ShopForms.SHOP_UNIT, region(), ShopForms.BEARD);
  }

  private Field region() {
    return ShopForms.region(
        house.content().regions().values().stream()
            .map(region -> new Field.Choice(region.id(), region.name()))
            .toList());
  }

  /** What was typed of the shop itself, or what is wrong with it; nothing is kept. */
  public Read<ShopForms.About> readAbout(Map<String, String> typed) {
    return ShopForms.about(typed, region());
  }

  /** The unit that bare numbers take in the shop's forms. */
  public LengthUnit unit() {
    return JobForm.unit(about());
  }

  /** The shop to plan with. */
  public Shop shop() {
    var machines = new ArrayList<Machine>();
    var cutters = new ArrayList<Cutter>();
    var gear = new ArrayList<OwnedGear>();
    var aids = new ArrayList<String>();
    var liquids = new ArrayList<Liquid>();
    var ownedAids = new ArrayList<OwnedAid>();
    var lived = new Lived(storage);
    for (var item : items()) {
      switch (item.shelf()) {
        case MACHINE -> readKept(item, Machine.class).ifPresent(machines::add);
        case CUTTER -> readKept(item, Cutter.class).ifPresent(cutters::add);
        case GEAR -> readKept(item, OwnedGear.class).map(lived::with).ifPresent(gear::add);
        case AID -> aids.add(item.kind());
        case LIQUID -> readKept(item, Liquid.class).ifPresent(liquids::add);
        case KIT -> ownedAid(item, lived).ifPresent(ownedAids::add);
        case SHOP -> {}
      }
    }
    var about = about();
    return new Shop(
        about.getOrDefault("name", "My shop"),
        // A shop that was kept before this was asked, or whose region content no longer knows.
        Optional.ofNullable(about.get(REGION))
            .filter(house.content().regions()::containsKey)
            .orElse(Shop.ELSEWHERE),
        machines,
        cutters,
        gear,
        aids,
        about.getOrDefault(BEARD, "no").equals("yes"),
        liquids,
        ownedAids);
  }

  /** A piece that cuts ask for, though nobody wears it. */
  private Optional<OwnedAid> ownedAid(ShopItem item, Lived lived) {
    return kit(item.kind())
        .flatMap(ThingKind::asAid)
        .flatMap(
            as ->
                readKept(item, OwnedKit.class)
                    .map(lived::with)
                    .map(
                        piece ->
                            as.of(
                                piece,
                                lived.home(piece.id()).map(GearHome::words).orElse(""),
                                piece.idleOn(LocalDate.now(clock)),
                                KeptForm.known(List.of()).kept(item.typed(), unitOf(item)),
                                unit())));
  }

  /** What the shop's meter showed at its machines, by the id of each. */
  Map<String, Worked<Amount>> measuredLevels() {
    var levels = new LinkedHashMap<String, Worked<Amount>>();
    for (var item : items()) {
      if (item.shelf() == Shelf.MACHINE) {
        ShopForms.measuredLevel(item.typed()).ifPresent(level -> levels.put(item.id(), level));
      }
    }
    return levels;
  }

  /** What was kept was read before it was kept; its unit is kept with it. */
  <T> Optional<T> readKept(ShopItem item, Class<T> type) {
    var unit = unitOf(item);
    return ownForm(item.shelf(), item.kind())
        .flatMap(form -> form.read(item.id(), item.typed(), unit).value())
        .map(type::cast);
  }

  /** The unit that bare numbers of a thing take: the one it was entered in, whatever the shop's. */
  public LengthUnit unitOf(ShopItem item) {
    return JobForm.unit(item.typed());
  }

  /** The form for a kind of thing, if there is such a kind. */
  public Optional<ItemForm<?>> form(Shelf shelf, String kind) {
    return switch (shelf) {
      case GEAR ->
          Optional.ofNullable(house.content().wording().gear().get(kind))
              .map(gear -> ShopForms.gear(gear, keptForm(shelf, kind)));
      case KIT -> kit(kind).map(kit -> ShopForms.kit(kit, keptForm(shelf, kind)));
      case MACHINE, CUTTER, LIQUID, AID, SHOP -> ownForm(shelf, kind);
    };
  }

  /** The same without how a piece is kept, which must not keep it from being read. */
  private Optional<ItemForm<?>> ownForm(Shelf shelf, String kind) {
    return switch (shelf) {
      case MACHINE ->
          ShopForms.MACHINES.stream()
              .filter(form -> form.kind().equals(kind))
              .<ItemForm<?>>map(form -> form)
              .findFirst();
      case CUTTER ->
          ShopForms.CUTTER_KINDS.stream()
              .filter(form -> form.kind().equals(kind))
              .<ItemForm<?>>map(form -> form)
              .findFirst();
      case GEAR ->
          Optional.ofNullable(house.content().wording().gear().get(kind)).map(ShopForms::gear);
      case KIT -> kit(kind).map(ShopForms::kit);
      case LIQUID ->
          Optional.ofNullable(house.content().liquids().get(kind)).map(ShopForms::liquid);
      case AID, SHOP -> Optional.empty();
    };
  }

  private Optional<ThingKind> kit(String kind) {
    return Optional.ofNullable(house.content().storage().get(kind))
        .filter(one -> one.gear().isEmpty());
  }

  /** Kinds of things that nobody wears and that a shop may have. */
  public List<ThingKind> kitKinds() {
    return house.content().storage().values().stream()
        .filter(kind -> kind.gear().isEmpty())
        .toList();
  }

  /** What a piece of the shop may be kept as, the usual first; none where content knows nothing. */
  List<ThingKind> keptKinds(Shelf shelf, String kind) {
    return shelf == Shelf.KIT
        ? kit(kind).stream().toList()
        : house.content().storage().values().stream()
            .filter(one -> one.gear().filter(kind::equals).isPresent())
            .toList();
  }

  /** The fields of how a piece is kept. */
  KeptForm keptForm(Shelf shelf, String kind) {
    var cabinets =
        storage.all(StorageItem.Sort.CABINET).stream()
            .map(item -> new Field.Choice(item.id(), item.typed().getOrDefault("name", item.id())))
            .toList();
    return KeptForm.among(keptKinds(shelf, kind), cabinets);
  }

  /**
   * Keeps a thing as typed, if all of it can be read.
   *
   * @param id of the thing to change; empty for a new one
   */
  public Read<String> keep(
      Optional<String> id, Shelf shelf, String kind, Map<String, String> typed) {
    var form = form(shelf, kind);
    if (form.isEmpty()) {
      return new Read<>(Optional.empty(), List.of(noSuchKind(kind)));
    }
    var itemId = id.orElseGet(() -> UUID.randomUUID().toString());
    var unit = id.flatMap(this::item).map(this::unitOf).orElseGet(this::unit);
    var read = form.get().read(itemId, typed, unit);
    if (read.value().isEmpty()) {
      return new Read<>(Optional.empty(), read.problems());
    }
    var kept = new LinkedHashMap<String, String>();
    form.get()
        .fields()
        .forEach(field -> kept.put(field.name(), typed.getOrDefault(field.name(), "")));
    kept.put(UNIT, unit.symbol());
    logbook.keep(new ShopItem(itemId, shelf, kind, kept));
    return new Read<>(Optional.of(itemId), List.of());
  }

  /** Whether a kind of work aid is at hand. */
  public void keepAid(String kind, boolean atHand) {
    var known =
        items().stream()
            .filter(item -> item.shelf() == Shelf.AID && item.kind().equals(kind))
            .toList();
    if (!atHand) {
      known.forEach(item -> logbook.remove(item.id()));
    } else if (known.isEmpty() && house.content().wording().aids().containsKey(kind)) {
      logbook.keep(new ShopItem(UUID.randomUUID().toString(), Shelf.AID, kind, Map.of()));
    }
  }

  /** Takes a thing out of the shop. */
  public void remove(String id) {
    if (!id.equals(SHOP)) {
      logbook.remove(id);
    }
  }

  /** Keeps what is known of the shop itself. */
  public void keepAbout(ShopForms.About about) {
    logbook.keep(
        new ShopItem(
            SHOP,
            Shelf.SHOP,
            "",
            Map.of(
                "name",
                about.name(),
                UNIT,
                about.unit().symbol(),
                REGION,
                about.region(),
                BEARD,
                about.beard() ? "yes" : "no")));
  }

  /** Whether nobody has used this shop yet. */
  boolean isUntouched() {
    return logbook.shop().isEmpty();
  }

  /** Puts the demo shop in. */
  void keepDemo() {
    var items = new ArrayList<ShopItem>();
    items.add(new ShopItem(SHOP, Shelf.SHOP, "", Demo.shop()));
    for (var thing : Demo.things()) {
      items.add(
          new ShopItem(
              DEMO + items.size(),
              Shelf.valueOf(thing.group().name()),
              thing.kind(),
              thing.typed()));
    }
    logbook.keep(items);
    storage.keep(new StorageItem(DEMO_CABINET, StorageItem.Sort.CABINET, DemoGear.cabinet()));
    storage.settle(DEMO_CABINET, demoHomes(items));
    for (var person : DemoGear.people()) {
      storage.keep(
          new StorageItem(DEMO + "person-" + person.get("name"), StorageItem.Sort.PERSON, person));
    }
  }

  /** So that its sheets name places of the cabinet from the first look on. */
  private List<GearHome> demoHomes(List<ShopItem> items) {
    var cabinet =
        CabinetForm.read(DEMO_CABINET, DemoGear.cabinet(), Optional.empty()).value().orElseThrow();
    var limits = house.content().limits(StorageLimits.class);
    var places =
        Places.of(cabinet, limits).stream()
            .collect(Collectors.toMap(Place::id, place -> Lived.words(cabinet, place)));
    var lives = DemoGear.homes();
    return items.stream()
        .filter(item -> item.shelf() == Shelf.GEAR || item.shelf() == Shelf.KIT)
        .filter(item -> lives.containsKey(nameOf(item)))
        .map(
            item -> {
              var place = lives.get(nameOf(item));
              return new GearHome(item.id(), DEMO_CABINET, place, places.get(place));
            })
        .toList();
  }

  /** Whether anything of the demo shop is still there. */
  public boolean hasDemo() {
    return demoItems().findAny().isPresent() || demoStorage().findAny().isPresent();
  }

  /** What of the demo shop is still there, as the maker calls it. */
  public List<String> demoNames() {
    return Stream.concat(
            demoItems().map(this::nameOf),
            demoStorage().map(item -> item.typed().getOrDefault("name", item.id())))
        .toList();
  }

  /** Takes everything of the demo shop out again. */
  public void discardDemo() {
    demoItems().map(ShopItem::id).forEach(logbook::remove);
    demoStorage().map(StorageItem::id).forEach(storage::remove);
  }

  private Stream<StorageItem> demoStorage() {
    return Stream.of(StorageItem.Sort.values())
        .flatMap(sort -> storage.all(sort).stream())
        .filter(item -> item.id().startsWith(DEMO));
  }

  private Stream<ShopItem> demoItems() {
    return items().stream().filter(item -> item.id().startsWith(DEMO));
  }

  private String nameOf(ShopItem item) {
    var aid = house.content().wording().aids().get(item.kind());
    return item.shelf() == Shelf.AID && aid != null
        ? aid.name()
        : item.typed().getOrDefault("name", item.kind());
  }

  private static Problem noSuchKind(String kind) {
    return Problem.stops(
        "kind",
        "\"" + (kind.length() > 24 ? kind.substring(0, 24) + "…" : kind) + "\" is no kind of thing",
        "a kind that the shop's page offers",
        "Choose one on the shop's page");
  }
}
