package org.proofcut.bench;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
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
import org.proofcut.core.storage.Change;
import org.proofcut.core.storage.Due;
import org.proofcut.core.storage.GearAct;
import org.proofcut.core.storage.GearEntry;
import org.proofcut.core.storage.NoPlace;
import org.proofcut.logbook.GearHome;
import org.proofcut.logbook.GearPin;
import org.proofcut.logbook.JobRecord;
import org.proofcut.logbook.StorageItem;
import org.proofcut.logbook.StorageLog;

/**
 * Where gear lives: cabinets, people, plans, what is out, and what falls due.
 *
 * <p>A change is judged and kept in one transaction: it is done whole or not at all, and one after
 * the other. Planning takes too long for that: it comes before, and whether it still stands is
 * looked at within.
 */
@ApplicationScoped
public class StorageDesk {

  private final StorageLog storage;
  private final ShopFloor floor;
  private final CabinetShelf shelf;
  private final ThingDesk things;
  private final GearActs acts;
  private final CabinetPlans cabinets;
  private final StoragePlans plans;
  private final Homes homes;
  private final WorkBench bench;
  private final PeopleShelf people;

  StorageDesk(
      StorageLog storage,
      ShopFloor floor,
      CabinetShelf shelf,
      ThingDesk things,
      GearActs acts,
      CabinetPlans cabinets,
      StoragePlans plans,
      Homes homes,
      WorkBench bench) {
    this.storage = storage;
    this.floor = floor;
    this.shelf = shelf;
    this.things = things;
    this.acts = acts;
    this.cabinets = cabinets;
    this.plans = plans;
    this.homes = homes;
    this.bench = bench;
    this.people = new PeopleShelf(storage);
  }

  /**
   * What came of a change.
   *
   * @param refused why it was not made; empty where it was
   * @param retold whether sheets of jobs in work say something else from now on
   */
  private record Done(Optional<Problem> refused, boolean retold) {

    static Done refused(Problem why) {
      return new Done(Optional.of(why), false);
    }

    static Done made(boolean retold) {
      return new Done(Optional.empty(), retold);
    }
  }

  private Optional<Problem> atOnce(Supplier<Done> change) {
    var done = QuarkusTransaction.joiningExisting().call(change::get);
    if (done.retold()) {
      bench.planAllAgain();
    }
    return done.refused();
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
    var itemId = id.orElseGet(() -> UUID.randomUUID().toString());
    var filled = CabinetForm.filledIn(typed);
    var kept = shelf.cabinet(itemId, filled);
    if (kept.cabinet().isEmpty()) {
      return new Read<>(Optional.empty(), kept.problems());
    }
    var refused =
        atOnce(
            () -> {
              if (id.isPresent() && shelf.cabinet(itemId).isEmpty()) {
                return Done.refused(StorageRefusals.noSuchCabinet());
              }
              storage.keep(new StorageItem(itemId, StorageItem.Sort.CABINET, filled));
              return Done.made(homes.follow(kept.cabinet().get()));
            });
    return refused.isEmpty()
        ? new Read<>(Optional.of(kept), List.of())
        : new Read<>(Optional.empty(), List.of(refused.get()));
  }

  /** Takes a cabinet out; what lived there lives nowhere from then on. */
  public void discard(String cabinet) {
    atOnce(
        () -> {
          boolean lived = !homes.in(cabinet).isEmpty();
          if (shelf.cabinet(cabinet).isPresent()) {
            storage.remove(cabinet);
          }
          return Done.made(lived);
        });
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
    var unit = floor.unit();
    return QuarkusTransaction.joiningExisting().call(() -> people.keep(id, typed, unit));
  }

  /** Takes a person out. */
  public void discardPerson(String id) {
    if (people().stream().anyMatch(person -> person.id().equals(id))) {
      storage.remove(id);
    }
  }

  /** Everything in the shop that has a kind of thing, in the order entered. */
  public List<StoredThing> things() {
    return cabinets.things();
  }

  public Optional<StoredThing> thing(String id) {
    return things().stream().filter(one -> one.thing().id().equals(id)).findFirst();
  }

  /**
   * The plan of a cabinet; empty where there is none, or it can't be read. It may take ten seconds
   * the first time.
   */
  public Optional<PlannedCabinet> plan(String cabinet) {
    return cabinets.plan(cabinet);
  }

  /**
   * The plan of a cabinet as typed, at a glance; nothing is kept. Of a new cabinet: with what lives
   * nowhere yet.
   *
   * @param id of the cabinet that is being changed; empty for a new one
   */
  public Optional<PlannedCabinet> glance(Optional<String> id, Map<String, String> typed) {
    return cabinets.glance(id, typed);
  }

  /** The smallest change after which everything has a place in a cabinet; it may take a minute. */
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
    return plan(cabinet).flatMap(planned -> new CaseHeights(shelf, plans).choose(planned));
  }

  /** Takes those heights over into the job; what is wrong with that, or nothing. */
  public List<Problem> takeHeights(String cabinet) {
    var planned = plan(cabinet);
    var heights = new CaseHeights(shelf, plans);
    var chosen = planned.flatMap(heights::choose);
    if (chosen.isEmpty()) {
      return List.of(StorageRefusals.noCase());
    }
    var unsound = shelf.unsound(chosen.get().typed());
    if (!unsound.isEmpty()) {
      return unsound;
    }
    var wrong =
        QuarkusTransaction.joiningExisting()
            .call(
                () ->
                    cabinets.stands(planned.get())
                        ? heights.keep(chosen.get())
                        : List.of(StorageRefusals.otherPlan()));
    return wrong.isEmpty() ? bench.planAgain(chosen.get().job()) : wrong;
  }

  /** Has a thing stay in a place of a cabinet; what is wrong with that, or nothing. */
  public Optional<Problem> pin(String thing, String cabinet, String place) {
    return atOnce(
        () -> {
          var task = cabinets.task(cabinet);
          var pinned = task.flatMap(one -> one.thing(thing));
          var there =
              task.stream()
                  .flatMap(one -> one.places().stream())
                  .filter(one -> one.id().equals(place))
                  .findFirst();
          if (task.isEmpty()) {
            return Done.refused(StorageRefusals.noSuchCabinet());
          }
          if (pinned.isEmpty()) {
            return Done.refused(StorageRefusals.notKeptThere());
          }
          if (there.isEmpty()) {
            return Done.refused(StorageRefusals.noSuchPlace());
          }
          var unfit = NoPlace.why(task.get(), pinned.get(), there.get());
          if (unfit.isPresent()) {
            return Done.refused(StorageRefusals.unfit(pinned.get(), there.get(), unfit.get()));
          }
          storage.pin(new GearPin(thing, cabinet, place));
          return Done.made(false);
        });
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
    return atOnce(
        () -> {
          if (!cabinets.stands(planned.get())) {
            return Done.refused(StorageRefusals.otherPlan());
          }
          homes.settle(planned.get());
          return Done.made(true);
        });
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
    return Optional.ofNullable(places().get(thing));
  }

  /** Where everything lives, by the id of the thing. */
  public Map<String, String> places() {
    return storage.homes().stream().collect(Collectors.toMap(GearHome::thing, GearHome::words));
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
   * Records an act on a thing, if it can be taken now; the same one again does nothing, and another
   * one of the same id is refused: two acts never share one.
   *
   * @param entryId made where the act happened
   * @return why it can't; empty when it was recorded, or had been before
   */
  public Optional<Problem> act(String entryId, String thing, GearAct act) {
    return atOnce(
        () -> {
          if (acts.has(entryId)) {
            boolean same =
                acts.of(thing).stream()
                    .anyMatch(one -> one.id().equals(entryId) && one.act().equals(act));
            return same ? Done.made(false) : Done.refused(StorageRefusals.otherAct());
          }
          var refused = acts.refuse(thing, act);
          return refused
              .map(Done::refused)
              .orElseGet(() -> Done.made(acts.record(entryId, thing, act)));
        });
  }

  /** The record of a thing, in the order recorded. */
  public List<GearEntry> record(String thing) {
    return acts.of(thing);
  }
}
