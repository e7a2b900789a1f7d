package org.proofcut.bench;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.CabinetForm;
import org.proofcut.core.intake.CutForm;
import org.proofcut.core.intake.JobForm;
import org.proofcut.core.intake.NewCabinet;
import org.proofcut.core.intake.PersonForm;
import org.proofcut.core.intake.Read;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.shop.GearLife;
import org.proofcut.core.storage.Aged;
import org.proofcut.core.storage.Cabinet;
import org.proofcut.core.storage.Change;
import org.proofcut.core.storage.Due;
import org.proofcut.core.storage.GearAct;
import org.proofcut.core.storage.GearEntry;
import org.proofcut.core.storage.NoPlace;
import org.proofcut.core.storage.Person;
import org.proofcut.core.storage.Place;
import org.proofcut.core.storage.Places;
import org.proofcut.core.storage.Put;
import org.proofcut.core.storage.StorageTask;
import org.proofcut.logbook.GearHome;
import org.proofcut.logbook.GearPin;
import org.proofcut.logbook.JobRecord;
import org.proofcut.logbook.StorageItem;
import org.proofcut.logbook.StorageLog;

/** Where gear lives: cabinets, people, plans, what is out, and what falls due. */
@ApplicationScoped
public class StorageDesk {

  /** Who reaches for things while nobody was entered; a height of our own choice. */
  private static final Person ANYBODY =
      PersonForm.read(Map.of("name", "anybody", "body", "1650 mm"), LengthUnit.MILLIMETRE)
          .value()
          .orElseThrow()
          .person();

  private final StorageLog storage;
  private final ShopFloor floor;
  private final CabinetShelf shelf;
  private final ThingDesk things;
  private final GearActs acts;
  private final StoragePlans plans;
  private final WorkBench bench;
  private final PeopleShelf people;

  /** One change at a time: what is kept is judged from what was kept before. */
  private final Object oneAtATime = new Object();

  StorageDesk(
      StorageLog storage,
      ShopFloor floor,
      CabinetShelf shelf,
      ThingDesk things,
      GearActs acts,
      StoragePlans plans,
      WorkBench bench) {
    this.storage = storage;
    this.floor = floor;
    this.shelf = shelf;
    this.things = things;
    this.acts = acts;
    this.plans = plans;
    this.bench = bench;
    this.people = new PeopleShelf(storage);
  }

  /** The day that everything is judged on. */
  public LocalDate today() {
    return things.today();
  }

  /** All cabinets, in the order entered. */
  public List<GearCabinet> cabinets() {
    return shelf.all();
  }

  public Optional<GearCabinet> cabinet(String id) {
    return shelf.cabinet(id);
  }

  /** What a page begins a new cabinet with: something to change, in the unit of the shop. */
  public Map<String, String> newCabinet() {
    var typed = new LinkedHashMap<>(NewCabinet.typed());
    typed.put(JobForm.UNIT.name(), floor.unit() == LengthUnit.INCH ? "in" : "mm");
    return typed;
  }

  /** What typed fields of a cabinet come to; nothing is kept. */
  public CabinetDraft draft(Map<String, String> typed) {
    return shelf.draft(typed);
  }

  /**
   * Keeps a cabinet as typed, if all of it can be read. What lives in places that it has no longer
   * lives nowhere from then on.
   *
   * @param id of the cabinet to change; empty for a new one
   */
  public Read<GearCabinet> keep(Optional<String> id, Map<String, String> typed) {
    synchronized (oneAtATime) {
      var itemId = id.orElseGet(() -> UUID.randomUUID().toString());
      var filled = CabinetForm.filledIn(typed);
      var read = shelf.read(itemId, filled);
      if (read.value().isEmpty()) {
        return new Read<>(Optional.empty(), read.problems());
      }
      storage.keep(new StorageItem(itemId, StorageItem.Sort.CABINET, filled));
      if (follow(itemId, read.value().get())) {
        bench.planAllAgain();
      }
      return new Read<>(shelf.cabinet(itemId), List.of());
    }
  }

  /** Homes and pins go with their places; whether any home was changed. */
  private boolean follow(String id, Cabinet cabinet) {
    var places =
        Places.of(cabinet, shelf.limits()).stream()
            .collect(Collectors.toMap(Place::id, place -> Lived.words(cabinet, place)));
    var before = homesIn(id);
    var after =
        before.stream()
            .filter(home -> places.containsKey(home.place()))
            .map(home -> new GearHome(home.thing(), id, home.place(), places.get(home.place())))
            .toList();
    storage.settle(id, after);
    storage.pins().stream()
        .filter(pin -> pin.cabinet().equals(id) && !places.containsKey(pin.place()))
        .forEach(pin -> storage.unpin(pin.thing()));
    return !after.equals(before);
  }

  private List<GearHome> homesIn(String cabinet) {
    return storage.homes().stream().filter(home -> home.cabinet().equals(cabinet)).toList();
  }

  /** Takes a cabinet out; what lived there lives nowhere from then on. */
  public void discard(String cabinet) {
    synchronized (oneAtATime) {
      boolean lived = !homesIn(cabinet).isEmpty();
      if (shelf.cabinet(cabinet).isPresent()) {
        storage.remove(cabinet);
      }
      if (lived) {
        bench.planAllAgain();
      }
    }
  }

  /**
   * What a page begins a cabinet with that is the case of a job: to be completed with doors and
   * hooks, and kept like any other. Empty while its design is not sound.
   */
  public Optional<Map<String, String>> ofJob(JobRecord job) {
    return shelf.ofJob(job);
  }

  /** All who take things out, in the order entered. */
  public List<KeptPerson> people() {
    return people.all();
  }

  /** The fields of a person. */
  public List<CutForm.Group> personFields() {
    return List.of(new CutForm.Group("Who takes things out", PersonForm.fields()));
  }

  /**
   * Keeps a person as typed, if all of it can be read.
   *
   * @param id of the person to change; empty for a new one
   */
  public Read<KeptPerson> keepPerson(Optional<String> id, Map<String, String> typed) {
    return people.keep(id, typed, floor.unit());
  }

  /** Takes a person out. */
  public void discardPerson(String id) {
    if (people().stream().anyMatch(person -> person.id().equals(id))) {
      storage.remove(id);
    }
  }

  /** Those to plan for: all who were entered, or anybody of middling height. */
  private List<Person> planFor() {
    var entered = people().stream().map(KeptPerson::person).toList();
    return entered.isEmpty() ? List.of(ANYBODY) : entered;
  }

  /** Everything in the shop that has a kind of thing, in the order entered. */
  public List<StoredThing> things() {
    return things.all(planFor().stream().map(Person::name).collect(Collectors.toSet()));
  }

  public Optional<StoredThing> thing(String id) {
    return things().stream().filter(one -> one.thing().id().equals(id)).findFirst();
  }

  /** The plan of a cabinet; empty where there is none, or it can't be read. */
  public Optional<PlannedCabinet> plan(String cabinet) {
    return shelf
        .cabinet(cabinet)
        .flatMap(kept -> kept.cabinet().map(one -> planned(kept, task(one, kept(cabinet)))));
  }

  private List<StoredThing> kept(String cabinet) {
    return things().stream()
        .filter(one -> one.cabinet().filter(cabinet::equals).isPresent())
        .toList();
  }

  private StorageTask task(Cabinet cabinet, List<StoredThing> kept) {
    var pins = new HashMap<String, String>();
    var before = new HashMap<String, String>();
    for (var one : kept) {
      var id = one.thing().id();
      one.pin()
          .filter(pin -> pin.cabinet().equals(cabinet.id()))
          .ifPresent(pin -> pins.put(id, pin.place()));
      one.home()
          .filter(home -> home.cabinet().equals(cabinet.id()))
          .ifPresent(home -> before.put(id, home.place()));
    }
    return new StorageTask(
        cabinet,
        kept.stream().map(StoredThing::thing).toList(),
        planFor(),
        pins,
        before,
        shelf.limits());
  }

  private PlannedCabinet planned(GearCabinet kept, StorageTask task) {
    return planned(kept, task, plans.plan(task));
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

  /**
   * The plan of a cabinet as typed, at a glance; nothing is kept. Of a new cabinet: with what lives
   * nowhere yet.
   *
   * @param id of the cabinet that is being changed; empty for a new one
   */
  public Optional<PlannedCabinet> glance(Optional<String> id, Map<String, String> typed) {
    var draft = shelf.cabinet(id.orElse(""), typed);
    return draft
        .cabinet()
        .map(
            cabinet -> {
              var task = task(cabinet, id.map(this::kept).orElseGet(this::homeless));
              return planned(draft, task, plans.glance(task));
            });
  }

  private List<StoredThing> homeless() {
    return things().stream().filter(one -> one.home().isEmpty()).toList();
  }

  /** The smallest change after which everything has a place in a cabinet; it may take seconds. */
  public Optional<Change> change(String cabinet) {
    return plan(cabinet).flatMap(planned -> plans.change(planned.task()));
  }

  /**
   * The cabinet as typed with the smallest change in it, to be kept like any other. Empty where
   * there is none, where it is a pin to be taken out, or where a job's design would have to change.
   */
  public Optional<Map<String, String>> changed(String cabinet) {
    return plan(cabinet)
        .flatMap(
            planned ->
                plans
                    .change(planned.task())
                    .filter(change -> !(change instanceof Change.Unpin))
                    .flatMap(
                        change ->
                            shelf.typed(planned.cabinet(), change.in(planned.task()).cabinet())));
  }

  /** The shelf heights of a job's case that suit the gear best; empty for any other cabinet. */
  public Optional<ChosenHeights> shelfHeights(String cabinet) {
    return plan(cabinet).flatMap(planned -> new CaseHeights(shelf, bench, plans).choose(planned));
  }

  /** Takes those heights over into the job; what is wrong with that, or nothing. */
  public List<Problem> takeHeights(String cabinet) {
    synchronized (oneAtATime) {
      var chosen = shelfHeights(cabinet);
      return chosen.isEmpty()
          ? List.of(StorageRefusals.noSuchCabinet())
          : new CaseHeights(shelf, bench, plans).take(chosen.get());
    }
  }

  /** Has a thing stay in a place of a cabinet; what is wrong with that, or nothing. */
  public Optional<Problem> pin(String thing, String cabinet, String place) {
    synchronized (oneAtATime) {
      var planned = plan(cabinet);
      var there =
          planned.stream()
              .flatMap(one -> one.places().stream())
              .filter(one -> one.id().equals(place))
              .findFirst();
      var pinned = planned.flatMap(one -> one.task().thing(thing));
      if (there.isEmpty()) {
        return Optional.of(StorageRefusals.noSuchCabinet());
      }
      if (pinned.isEmpty()) {
        return Optional.of(StorageRefusals.notKeptThere());
      }
      var refused = NoPlace.why(planned.get().task(), pinned.get(), there.get());
      if (refused.isEmpty()) {
        storage.pin(new GearPin(thing, cabinet, place));
      }
      return refused.map(why -> StorageRefusals.unfit(pinned.get(), there.get(), why));
    }
  }

  /** Lets a thing go wherever is best. */
  public void unpin(String thing) {
    storage.unpin(thing);
  }

  /**
   * Has everything live by the plan of a cabinet from now on; jobs in work are planned anew.
   *
   * @param mark of the plan that was seen
   * @return why not; empty when it was taken
   */
  public Optional<Problem> take(String cabinet, String mark) {
    synchronized (oneAtATime) {
      var planned = plan(cabinet);
      if (planned.isEmpty()) {
        return Optional.of(StorageRefusals.noSuchCabinet());
      }
      if (!planned.get().mark().equals(mark)) {
        return Optional.of(StorageRefusals.otherPlan());
      }
      if (!planned.get().isSound()) {
        return Optional.of(StorageRefusals.brokenPlan(planned.get()));
      }
      var made = planned.get().task().cabinet();
      var homes = new ArrayList<GearHome>();
      for (var put : planned.get().plan().puts()) {
        homes.add(
            new GearHome(
                put.thing().id(), cabinet, put.place().id(), Lived.words(made, put.place())));
      }
      storage.settle(cabinet, homes);
      bench.planAllAgain();
      return Optional.empty();
    }
  }

  /** What is out of its place, longest out first. */
  public List<OutOfPlace> out() {
    var today = today();
    return things().stream()
        .filter(one -> one.out().isPresent())
        .sorted(
            Comparator.comparing((StoredThing one) -> one.out().orElseThrow().since())
                .thenComparing(one -> one.thing().name())
                .thenComparing(one -> one.thing().id()))
        .map(one -> OutOfPlace.of(one, today))
        .toList();
  }

  /** Where a thing lives, as prompts say it: "Gear cabinet: bay 1, hooks". */
  public Optional<String> placeOf(String thing) {
    return new Lived(storage).home(thing).map(GearHome::words);
  }

  /** What falls due, what is overdue first, then what has no day, then by day. */
  public List<Due> due() {
    return Aged.due(things.aged(), today());
  }

  /** What is overdue, or falls due within {@link GearLife#SOON_IN_DAYS}. */
  public List<Due> dueSoon() {
    var then = today().plusDays(GearLife.SOON_IN_DAYS);
    return due().stream()
        .filter(due -> due.on().filter(day -> !day.isAfter(then)).isPresent())
        .toList();
  }

  /**
   * Records an act on a thing, if it can be taken now; the same one again does nothing.
   *
   * @param entryId made where the act happened
   * @return why it can't; empty when it was recorded, or had been before
   */
  public Optional<Problem> act(String entryId, String thing, GearAct act) {
    synchronized (oneAtATime) {
      if (acts.has(entryId)) {
        return Optional.empty();
      }
      var refused = acts.refuse(thing, act);
      if (refused.isEmpty() && acts.record(entryId, thing, act)) {
        bench.planAllAgain();
      }
      return refused;
    }
  }

  /** The record of a thing, in the order recorded. */
  public List<GearEntry> record(String thing) {
    return acts.of(thing);
  }
}
