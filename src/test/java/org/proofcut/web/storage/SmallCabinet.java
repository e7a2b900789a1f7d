package org.proofcut.web.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.bench.ShopFloor;
import org.proofcut.bench.StorageDesk;
import org.proofcut.logbook.ShopItem.Shelf;

/** A cabinet of a test's own, with what is kept in it; all goes again with {@link #takeOut}. */
final class SmallCabinet {

  private final StorageDesk desk;
  private final ShopFloor floor;
  private final List<String> things = new ArrayList<>();
  final String id;

  SmallCabinet(StorageDesk desk, ShopFloor floor, String... changed) {
    this.desk = desk;
    this.floor = floor;
    var kept = desk.keep(Optional.empty(), with(typed(), changed));
    assertEquals(List.of(), kept.problems());
    id = kept.value().orElseThrow().id();
  }

  /** One bay with a row of hooks, a shelf and a door with hooks. */
  static Map<String, String> typed() {
    return with(
        Map.of(),
        "name",
        "corner cabinet",
        "unit",
        "mm",
        "dry",
        "yes",
        "doors",
        "left",
        "door",
        "18",
        "width",
        "600",
        "height",
        "800",
        "depth",
        "300",
        "raised",
        "800",
        "before",
        "0",
        "back",
        "8",
        "side",
        "18",
        "bays",
        "1",
        "upright-depth",
        "200",
        "fitting-1-kind",
        "rail",
        "fitting-1-at",
        "760",
        "fitting-1-load",
        "8 kg",
        "fitting-1-each",
        "5 kg",
        "fitting-2-kind",
        "shelf",
        "fitting-2-at",
        "300",
        "fitting-2-thickness",
        "18",
        "fitting-2-load",
        "15 kg",
        "fitting-3-kind",
        "door-rail",
        "fitting-3-at",
        "700",
        "fitting-3-depth",
        "60",
        "fitting-3-load",
        "4 kg",
        "fitting-3-each",
        "3 kg");
  }

  /** The same with a row of hooks on the wall beside it. */
  static Map<String, String> wall(Map<String, String> typed) {
    return with(
        typed,
        "fitting-4-kind",
        "wall",
        "fitting-4-at",
        "1400",
        "fitting-4-width",
        "500",
        "fitting-4-drop",
        "600",
        "fitting-4-depth",
        "300",
        "fitting-4-load",
        "20 kg",
        "fitting-4-each",
        "10 kg");
  }

  static Map<String, String> with(Map<String, String> typed, String... pairs) {
    var more = new LinkedHashMap<>(typed);
    for (int i = 0; i < pairs.length; i += 2) {
      more.put(pairs[i], pairs[i + 1]);
    }
    return more;
  }

  static Map<String, String> muffs(String name) {
    return with(
        Map.of(),
        "name",
        name,
        "decibels",
        "30",
        "scale",
        "SNR",
        "kept-width",
        "180",
        "kept-height",
        "220",
        "kept-depth",
        "100",
        "kept-weight",
        "280 g");
  }

  /** Ear muffs that are kept here. */
  String addMuffs(String name, String... more) {
    return add(Shelf.GEAR, "ear-protection", with(muffs(name), more));
  }

  /** A push stick that is kept here. */
  String addPushStick(String name) {
    return add(
        Shelf.KIT,
        "push-stick",
        with(
            Map.of(),
            "name",
            name,
            "kept-width",
            "60",
            "kept-height",
            "250",
            "kept-depth",
            "20",
            "kept-weight",
            "150 g"));
  }

  /** A first aid kit that is kept here. */
  String addFirstAidKit(String name) {
    return add(
        Shelf.KIT,
        "first-aid-kit",
        with(
            Map.of(),
            "name",
            name,
            "kept-width",
            "260",
            "kept-height",
            "180",
            "kept-depth",
            "100",
            "kept-weight",
            "900 g"));
  }

  private String add(Shelf shelf, String kind, Map<String, String> typed) {
    var kept = floor.keep(Optional.empty(), shelf, kind, with(typed, "kept-in", id));
    assertEquals(List.of(), kept.problems());
    things.add(kept.value().orElseThrow());
    return kept.value().get();
  }

  /** Has everything live by the plan. */
  void live() {
    assertEquals(Optional.empty(), desk.take(id, desk.plan(id).orElseThrow().mark()));
  }

  void takeOut() {
    things.forEach(floor::remove);
    desk.discard(id);
  }
}
