package org.proofcut.core.storage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiPredicate;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.storage.Placer.Effort;
import org.proofcut.core.storage.Placing.Choice;
import org.proofcut.core.storage.Placing.Exclusion;
import org.proofcut.core.storage.Placing.Item;
import org.proofcut.core.storage.Placing.Option;
import org.proofcut.core.storage.Placing.Order;
import org.proofcut.core.storage.Placing.Slot;
import org.proofcut.core.storage.Placing.Together;

/** Turns a task into a placing, has it solved, and lays the things out. */
public final class StoragePlanner {

  /** In the order of dressing, then the most used first. */
  private static final Comparator<Thing> FROM_THE_LEFT =
      Comparator.comparingInt((Thing thing) -> thing.dressing().orElse(Integer.MAX_VALUE))
          .thenComparing(thing -> thing.use())
          .thenComparing(Thing::name)
          .thenComparing(Thing::id);

  private final StorageTask task;
  private final StorageLimits limits;
  private final Suits suits;
  private final Wishes wishes;
  private final List<Place> places;

  private StoragePlanner(StorageTask task) {
    this.task = task;
    this.limits = task.limits();
    this.suits = new Suits(task);
    this.wishes = new Wishes(task);
    this.places = task.places();
  }

  /** A plan that keeps to every hard rule; the same for the same task. */
  public static StoragePlan plan(StorageTask task, Placer placer, Effort effort) {
    var planner = new StoragePlanner(task);
    var placing = planner.placing();
    return planner.laidOut(placing, placer.place(placing, effort));
  }

  /** What is to be solved for a task. */
  public static Placing placing(StorageTask task) {
    return new StoragePlanner(task).placing();
  }

  private Placing placing() {
    var items = task.things().stream().map(this::item).toList();
    var slots = places.stream().map(this::slot).toList();
    var together = together();
    var orders = orders();
    return new Placing(
        items, slots, exclusions(), together, orders, more(items, slots, together, orders));
  }

  /** More than all wishes can come to. */
  private static long more(
      List<Item> items, List<Slot> slots, List<Together> together, List<Order> orders) {
    long most = 1;
    for (var item : items) {
      most += item.options().stream().mapToLong(Option::cost).max().orElse(0);
    }
    for (var slot : slots) {
      most += slot.crowded(slot.room());
    }
    for (var group : together) {
      most += group.cost() * group.items().size();
    }
    return most + orders.stream().mapToLong(Order::cost).sum();
  }

  private Item item(Thing thing) {
    var options = new ArrayList<Option>();
    for (int s = 0; s < places.size(); s++) {
      var place = places.get(s);
      if (suits.refusal(thing, place).isEmpty()) {
        var room = suits.wide(thing).plus(suits.between(place));
        options.add(
            new Option(
                s, room.dividedBy(Length.HUNDREDTH, Rounding.UP), wishes.cost(thing, place)));
      }
    }
    return new Item(thing.id(), options, thing.grams());
  }

  /** One gap more than the place has: the last thing needs none behind it. */
  private Slot slot(Place place) {
    long room = place.width().plus(suits.between(place)).dividedBy(Length.HUNDREDTH, Rounding.DOWN);
    return new Slot(
        place.id(),
        room,
        place.mostGrams(),
        place.column(),
        room * (100 - limits.roomToGrow().value()) / 100,
        limits.perPercentCrowded().value());
  }

  private List<Together> together() {
    var things = task.things();
    return Wishes.together(things).values().stream()
        .map(
            group ->
                new Together(group.stream().map(things::indexOf).toList(), limits.apart().value()))
        .toList();
  }

  private List<Order> orders() {
    var things = task.things();
    var orders = new ArrayList<Order>();
    for (int i = 0; i < things.size(); i++) {
      for (int j = 0; j < things.size(); j++) {
        if (Wishes.isBefore(things.get(i), things.get(j))) {
          orders.add(new Order(i, j, limits.outOfTurn().value()));
        }
      }
    }
    return orders;
  }

  private List<Exclusion> exclusions() {
    var exclusions = new ArrayList<Exclusion>();
    for (int s = 0; s < places.size(); s++) {
      keepClean(s, exclusions);
      for (int t = 0; t < places.size(); t++) {
        if (s != t && meet(places.get(s), places.get(t))) {
          keepApart(s, t, exclusions);
        }
      }
    }
    return exclusions;
  }

  private void keepClean(int slot, List<Exclusion> exclusions) {
    var clean = choices(slot, Soil.CLEAN);
    var dirty = choices(slot, Soil.DIRTY);
    if (!clean.isEmpty() && !dirty.isEmpty()) {
      exclusions.add(new Exclusion(clean, dirty));
    }
  }

  private List<Choice> choices(int slot, Soil soil) {
    var choices = new ArrayList<Choice>();
    for (int i = 0; i < task.things().size(); i++) {
      if (task.things().get(i).soil() == soil) {
        choices.add(new Choice(i, slot));
      }
    }
    return choices;
  }

  /** Whether things in two places can meet, as a door shuts or else, or fall on each other. */
  private static boolean meet(Place one, Place other) {
    return isInside(one)
        && isInside(other)
        && (one.isOnDoor() != other.isOnDoor() || Block.overlap(one.across(), other.across()));
  }

  private static boolean isInside(Place place) {
    return switch (place.kind()) {
      case SHELF, RAIL, DOOR_RAIL -> true;
      case DRAWER, BOX, WALL -> false;
    };
  }

  /** Each thing of one place with all those of the other that it can't be with. */
  private void keepApart(int one, int other, List<Exclusion> exclusions) {
    // Each pair of places comes up twice: room is the same both ways and is looked at once.
    BiPredicate<Thing, Thing> bad =
        one < other
            ? (a, b) ->
                suits.cross(a, places.get(one), b, places.get(other)) || dirties(a, one, b, other)
            : (a, b) -> dirties(a, one, b, other);
    for (int i = 0; i < task.things().size(); i++) {
      var others = new ArrayList<Choice>();
      for (int j = 0; j < task.things().size(); j++) {
        if (i != j && bad.test(task.things().get(i), task.things().get(j))) {
          others.add(new Choice(j, other));
        }
      }
      if (!others.isEmpty()) {
        exclusions.add(new Exclusion(List.of(new Choice(i, one)), others));
      }
    }
  }

  private boolean dirties(Thing above, int one, Thing below, int other) {
    if (above.soil() != Soil.DIRTY || below.soil() != Soil.CLEAN) {
      return false;
    }
    var falls = Suits.anywhere(above, places.get(one));
    var on = Suits.anywhere(below, places.get(other));
    return Block.overlap(falls.across(), on.across())
        && Block.overlap(falls.deep(), on.deep())
        && falls.upright().least().isAtLeast(on.upright().most())
        && task.cabinet().built().stream().noneMatch(board -> shelters(board, falls, on));
  }

  /** Whether a board lies between the two for all of the width and depth that they share. */
  private static boolean shelters(Block board, Block falls, Block on) {
    return covers(board.across(), falls.across(), on.across())
        && covers(board.deep(), falls.deep(), on.deep())
        && board.upright().least().isAtLeast(on.upright().most())
        && board.upright().most().isAtMost(falls.upright().least());
  }

  private static boolean covers(Band board, Band falls, Band on) {
    return board.contains(falls.least().max(on.least()))
        && board.contains(falls.most().min(on.most()));
  }

  private StoragePlan laidOut(Placing placing, Placed placed) {
    var byPlace = new TreeMap<Integer, List<Thing>>();
    var without = new ArrayList<Thing>();
    for (int i = 0; i < task.things().size(); i++) {
      int slot = placed.slotOf().get(i);
      if (slot == Placing.NOWHERE) {
        without.add(task.things().get(i));
      } else {
        byPlace.computeIfAbsent(slot, any -> new ArrayList<>()).add(task.things().get(i));
      }
    }
    without.sort(Comparator.comparing(Thing::name).thenComparing(Thing::id));
    long nowhere = without.size() * placing.unplaced();
    return new StoragePlan(
        byPlace.entrySet().stream().flatMap(entry -> sideBySide(entry).stream()).toList(),
        without,
        placed.cost() - nowhere,
        Math.max(0, placed.bound() - nowhere));
  }

  private List<Put> sideBySide(Map.Entry<Integer, List<Thing>> there) {
    var place = places.get(there.getKey());
    var puts = new ArrayList<Put>();
    var left = place.across().least();
    for (var thing : there.getValue().stream().sorted(FROM_THE_LEFT).toList()) {
      left = left.plus(suits.beside(thing));
      puts.add(new Put(thing, place, left));
      left = left.plus(thing.size().wide()).plus(suits.beside(thing)).plus(suits.between(place));
    }
    return puts;
  }
}
