package org.proofcut.web.storage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.proofcut.bench.GearCabinet;
import org.proofcut.bench.PlannedCabinet;
import org.proofcut.bench.StorageDesk;
import org.proofcut.bench.StoredThing;
import org.proofcut.core.storage.Due;

/**
 * Everything on the page of where gear lives.
 *
 * @param due what has failed, what is overdue, what is soon due, in this order
 * @param out what is not in its place
 * @param homeless what has no place, and why
 * @param places that something lives in, from left to right
 * @param things what has a place, by name; where nothing is kept, so says {@link #isEmpty}
 */
record StorageView(
    List<CabinetRow> cabinets,
    List<DueRow> due,
    List<ThingRow> out,
    List<ThingRow> homeless,
    List<PlaceRow> places,
    List<ThingRow> things,
    List<String> people) {

  /** One cabinet, and how it stands. */
  record CabinetRow(String id, String name, String state, String shape) {}

  /** Something that is to be done. */
  record DueRow(String thing, String name, String what, String when, boolean overdue) {

    static DueRow of(Due due) {
      return new DueRow(
          due.thing(), Says.capital(due.name()), due.what(), Says.when(due), due.overdue());
    }
  }

  /** One place with what lives there. */
  record PlaceRow(String name, List<ThingRow> things) {}

  /**
   * One thing.
   *
   * @param says where it lives, who has it, or why it has no place; empty where that is plain
   * @param more what else is to be known of it; empty where nothing is
   */
  record ThingRow(String id, String name, String says, String more) {}

  /** Whether the shop has nothing to keep. */
  public boolean isEmpty() {
    return things.isEmpty() && homeless.isEmpty();
  }

  /** Whether the next step is to live by a first plan. */
  public boolean isToBegin() {
    return places.isEmpty() && !homeless.isEmpty();
  }

  static StorageView of(StorageDesk desk) {
    var cabinets = desk.cabinets();
    var names = cabinets.stream().collect(Collectors.toMap(GearCabinet::id, GearCabinet::name));
    var things =
        desk.things().stream()
            .sorted(
                Comparator.comparing((StoredThing one) -> one.thing().name().toLowerCase())
                    .thenComparing(one -> one.thing().id()))
            .toList();
    return new StorageView(
        cabinets.stream().map(one -> row(one, Says.capital(one.name()), things)).toList(),
        desk.dueSoon().stream()
            .sorted(Comparator.comparing(one -> !one.ageing().equals(Due.FAILED)))
            .map(DueRow::of)
            .toList(),
        things.stream()
            .filter(one -> one.with().isPresent())
            .map(one -> row(one, "With " + one.with().orElseThrow()))
            .toList(),
        things.stream()
            .filter(one -> one.home().isEmpty())
            .map(one -> row(one, to(one, names)))
            .toList(),
        places(things),
        things.stream()
            .filter(one -> one.home().isPresent())
            .map(one -> row(one, where(one)))
            .toList(),
        desk.people().stream().map(one -> one.person().name()).toList());
  }

  private static ThingRow row(StoredThing one, String says) {
    return new ThingRow(
        one.thing().id(),
        Says.capital(one.thing().name()),
        says,
        one.idle().map(why -> "Not to be used: " + why).orElse(""));
  }

  private static String where(StoredThing one) {
    return Says.capital(one.home().orElseThrow().words());
  }

  /** Said without a plan, which may take a while to make. */
  private static String to(StoredThing one, Map<String, String> cabinets) {
    return one.cabinet()
        .map(cabinets::get)
        .map(name -> "To be kept in " + name)
        .orElse("It is to be kept in no cabinet yet: say in which");
  }

  private static CabinetRow row(GearCabinet cabinet, String name, List<StoredThing> things) {
    if (cabinet.cabinet().isEmpty()) {
      return new CabinetRow(cabinet.id(), name, "To be mended", "shape-stop");
    }
    var kept =
        things.stream()
            .filter(one -> one.cabinet().filter(cabinet.id()::equals).isPresent())
            .toList();
    int open = (int) kept.stream().filter(one -> one.home().isEmpty()).count();
    var live = Says.counted(kept.size() - open, "thing lives", "things live") + " here";
    return open == 0
        ? new CabinetRow(cabinet.id(), name, live, "shape-done")
        : new CabinetRow(
            cabinet.id(),
            name,
            live + ", " + Says.counted(open, "has", "have") + " no place yet",
            "shape-open");
  }

  /** Why a thing has no place, or what its place would be. */
  static String whyNowhere(StoredThing one, Map<String, PlannedCabinet> plans) {
    if (one.cabinet().isEmpty()) {
      return "It is to be kept in no cabinet yet: say in which";
    }
    var plan = plans.get(one.cabinet().get());
    if (plan == null) {
      return "Its cabinet has to be mended first";
    }
    return plan.without().stream()
        .filter(each -> each.thing().id().equals(one.thing().id()))
        .map(each -> Says.capital(each.why()))
        .findFirst()
        .or(
            () ->
                plan.plan()
                    .of(one.thing().id())
                    .map(
                        put ->
                            "Planned: %s, %s; nobody lives by this plan yet"
                                .formatted(plan.cabinet().name(), put.place().name())))
        .orElse("No plan has it yet");
  }

  /** In the order of their names: cabinet by cabinet, bay by bay. */
  private static List<PlaceRow> places(List<StoredThing> things) {
    var rows = new TreeMap<String, List<ThingRow>>();
    for (var one : things) {
      one.home()
          .ifPresent(
              home ->
                  rows.computeIfAbsent(home.words(), any -> new ArrayList<>())
                      .add(row(one, one.with().map(who -> "Out: with " + who).orElse(""))));
    }
    return rows.entrySet().stream()
        .map(place -> new PlaceRow(Says.capital(place.getKey()), place.getValue()))
        .toList();
  }

  /** What has no place, and why; this asks for the plan of each of their cabinets. */
  static List<ThingRow> whyNowhere(StorageDesk desk) {
    var plans = new LinkedHashMap<String, PlannedCabinet>();
    var without = desk.things().stream().filter(one -> one.home().isEmpty()).toList();
    without.stream()
        .flatMap(one -> one.cabinet().stream())
        .distinct()
        .forEach(id -> desk.plan(id).ifPresent(plan -> plans.put(id, plan)));
    return without.stream().map(one -> row(one, whyNowhere(one, plans))).toList();
  }
}
