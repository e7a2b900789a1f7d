package org.proofcut.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.JobForm;
import org.proofcut.core.intake.PersonForm;
import org.proofcut.core.intake.Read;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.logbook.StorageItem;
import org.proofcut.logbook.StorageLog;

/** Those who take things out, as typed. */
final class PeopleShelf {

  private final StorageLog storage;

  PeopleShelf(StorageLog storage) {
    this.storage = storage;
  }

  List<KeptPerson> all() {
    return storage.all(StorageItem.Sort.PERSON).stream()
        .flatMap(item -> person(item.id(), item.typed()).value().stream())
        .toList();
  }

  private static Read<KeptPerson> person(String id, Map<String, String> typed) {
    var read = PersonForm.read(typed, JobForm.unit(typed));
    return new Read<>(
        read.value().map(one -> new KeptPerson(id, typed, one.person(), one.estimated())),
        read.problems());
  }

  Read<KeptPerson> keep(Optional<String> id, Map<String, String> typed, LengthUnit shop) {
    var filled = new LinkedHashMap<String, String>();
    PersonForm.fields().stream()
        .filter(field -> !typed.getOrDefault(field.name(), "").isBlank())
        .forEach(field -> filled.put(field.name(), typed.get(field.name())));
    var unit = typed.getOrDefault(JobForm.UNIT.name(), shop.symbol());
    filled.put(JobForm.UNIT.name(), unit);
    var personId = id.orElseGet(() -> UUID.randomUUID().toString());
    var read = person(personId, filled);
    if (id.isPresent() && storage.item(StorageItem.Sort.PERSON, personId).isEmpty()) {
      return new Read<>(Optional.empty(), List.of(gone()));
    }
    if (read.value().isPresent() && isNamed(read.value().get(), personId)) {
      return new Read<>(Optional.empty(), List.of(sameName(read.value().get())));
    }
    read.value()
        .ifPresent(any -> storage.keep(new StorageItem(personId, StorageItem.Sort.PERSON, filled)));
    return read;
  }

  private boolean isNamed(KeptPerson person, String id) {
    return all().stream()
        .anyMatch(
            other ->
                !other.id().equals(id) && other.person().name().equals(person.person().name()));
  }

  private static Problem gone() {
    return Problem.stops(
        "name",
        "This person was taken out meanwhile",
        "somebody who is listed",
        "Enter the person as a new one");
  }

  private static Problem sameName(KeptPerson person) {
    return Problem.stops(
        "name",
        "There is somebody of the name \"" + person.person().name() + "\" already",
        "a name of its own for each",
        "Add a letter, or change the other entry");
  }
}
