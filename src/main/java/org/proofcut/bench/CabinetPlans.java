package org.proofcut.bench;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.proofcut.core.intake.PersonForm;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.storage.Cabinet;
import org.proofcut.core.storage.NoPlace;
import org.proofcut.core.storage.Person;
import org.proofcut.core.storage.Put;
import org.proofcut.core.storage.StorageTask;
import org.proofcut.logbook.StorageLog;

/** What is to be planned for each cabinet, and what the plan of it says. */
@ApplicationScoped
class CabinetPlans {

  /** Who reaches for things while nobody was entered; a height of our own choice. */
  private static final Person ANYBODY =
      PersonForm.read(Map.of("name", "anybody", "body", "1650 mm"), LengthUnit.MILLIMETRE)
          .value()
          .orElseThrow()
          .person();

  private final CabinetShelf shelf;
  private final PeopleShelf people;
  private final ThingDesk things;
  private final StoragePlans plans;

  CabinetPlans(StorageLog storage, CabinetShelf shelf, ThingDesk things, StoragePlans plans) {
    this.shelf = shelf;
    this.people = new PeopleShelf(storage);
    this.things = things;
    this.plans = plans;
  }

  /** A cabinet as kept, with what is to be planned for it. */
  private record Asked(GearCabinet kept, StorageTask task) {}

  /** Those to plan for: all who were entered, or anybody of middling height. */
  private List<Person> people() {
    var entered = people.all().stream().map(KeptPerson::person).toList();
    return entered.isEmpty() ? List.of(ANYBODY) : entered;
  }

  /** Everything in the shop that has a kind of thing, in the order entered. */
  List<StoredThing> things() {
    return things(people());
  }

  private List<StoredThing> things(List<Person> people) {
    return things.all(people.stream().map(Person::name).collect(Collectors.toSet()));
  }

  /** The plan of a cabinet, which may take seconds; empty where it is gone or can't be read. */
  Optional<PlannedCabinet> plan(String cabinet) {
    return asked(cabinet)
        .map(asked -> planned(asked.kept(), asked.task(), plans.plan(asked.task())));
  }

  /** What is to be planned for a cabinet as it is now; empty where it is gone or can't be read. */
  Optional<StorageTask> task(String cabinet) {
    return asked(cabinet).map(Asked::task);
  }

  /** Whether all that something was planned from is still so. */
  boolean stands(PlannedCabinet planned) {
    return task(planned.cabinet().id()).equals(Optional.of(planned.task()));
  }

  /** All of it as it is at one moment. */
  private Optional<Asked> asked(String cabinet) {
    return QuarkusTransaction.joiningExisting()
        .call(
            () ->
                shelf
                    .cabinet(cabinet)
                    .flatMap(
                        kept ->
                            kept.cabinet()
                                .map(one -> new Asked(kept, task(one, Optional.of(cabinet))))));
  }

  /**
   * The plan of a cabinet as typed, at a glance; empty while it can't be read. Of a new cabinet:
   * with what lives nowhere yet.
   *
   * @param id of the cabinet that is being changed; empty for a new one
   */
  Optional<PlannedCabinet> glance(Optional<String> id, Map<String, String> typed) {
    var draft = shelf.cabinet(id.orElse(""), typed);
    return draft
        .cabinet()
        .map(
            cabinet -> {
              var task = QuarkusTransaction.joiningExisting().call(() -> task(cabinet, id));
              return planned(draft, task, plans.glance(task));
            });
  }

  /**
   * @param id of the cabinet whose things it is for; empty for those that live nowhere
   */
  private StorageTask task(Cabinet cabinet, Optional<String> id) {
    var people = people();
    var kept =
        things(people).stream()
            .filter(one -> id.isPresent() ? one.cabinet().equals(id) : one.home().isEmpty())
            .toList();
    var pins = new HashMap<String, String>();
    var before = new HashMap<String, String>();
    for (var one : kept) {
      one.pin()
          .filter(pin -> pin.cabinet().equals(cabinet.id()))
          .ifPresent(pin -> pins.put(one.thing().id(), pin.place()));
      one.home()
          .filter(home -> home.cabinet().equals(cabinet.id()))
          .ifPresent(home -> before.put(one.thing().id(), home.place()));
    }
    return new StorageTask(
        cabinet,
        kept.stream().map(StoredThing::thing).toList(),
        people,
        pins,
        before,
        shelf.limits());
  }

  private static PlannedCabinet planned(
      GearCabinet kept, StorageTask task, StoragePlans.Solved solved) {
    var plan = solved.plan();
    boolean taken =
        !plan.puts().isEmpty()
            && plan.puts().stream().allMatch(put -> isThere(put, task))
            && plan.without().stream().noneMatch(thing -> task.before().containsKey(thing.id()));
    return new PlannedCabinet(
        kept,
        task,
        plan,
        task.places(),
        solved.faults(),
        solved.unmet(),
        plan.without().stream()
            .map(thing -> new PlannedCabinet.Without(thing, NoPlace.why(task, thing)))
            .toList(),
        solved.hooks(),
        taken,
        solved.mark());
  }

  private static boolean isThere(Put put, StorageTask task) {
    return put.place().id().equals(task.before().get(put.thing().id()));
  }
}
