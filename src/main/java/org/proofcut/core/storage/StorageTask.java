package org.proofcut.core.storage;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is to be planned.
 *
 * @param pins place by the id of each thing that stays there
 * @param before place by the id of each thing, as it is now
 */
public record StorageTask(
    Cabinet cabinet,
    List<Thing> things,
    List<Person> people,
    Map<String, String> pins,
    Map<String, String> before,
    StorageLimits limits) {

  public StorageTask {
    things = List.copyOf(things);
    people = List.copyOf(people);
    pins = Map.copyOf(pins);
    before = Map.copyOf(before);
  }

  public List<Place> places() {
    return Places.of(cabinet, limits);
  }

  /** Those who use a thing; everybody where nobody is known by any of its names. */
  public List<Person> usersOf(Thing thing) {
    var users = people.stream().filter(person -> thing.users().contains(person.name())).toList();
    return users.isEmpty() ? people : users;
  }

  /** The same for another cabinet. */
  public StorageTask in(Cabinet other) {
    return new StorageTask(other, things, people, pins, before, limits);
  }

  /** The same without one pin. */
  public StorageTask unpinned(String thing) {
    var left = new HashMap<>(pins);
    left.remove(thing);
    return new StorageTask(cabinet, things, people, left, before, limits);
  }

  /** The thing with this id, if there is one. */
  public Optional<Thing> thing(String id) {
    return things.stream().filter(thing -> thing.id().equals(id)).findFirst();
  }
}
