package org.proofcut.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.Demo;
import org.proofcut.core.shop.OwnedGear;
import org.proofcut.core.storage.Due;
import org.proofcut.core.storage.Fitting;
import org.proofcut.core.storage.GearAct;
import org.proofcut.core.storage.Thing;
import org.proofcut.logbook.ShopItem.Shelf;

@QuarkusTest
class StorageDeskTest {

  private static final String DEMO_CABINET = "demo-cabinet";

  @Inject StorageDesk desk;
  @Inject ShopFloor floor;
  @Inject JobDesk jobs;
  @Inject WorkBench bench;

  private final List<String> things = new ArrayList<>();
  private final List<String> cabinets = new ArrayList<>();
  private final List<String> people = new ArrayList<>();
  private final List<String> newJobs = new ArrayList<>();

  @AfterEach
  void takeAllOutAgain() {
    things.forEach(floor::remove);
    cabinets.forEach(desk::discard);
    people.forEach(desk::discardPerson);
    newJobs.forEach(bench::discard);
  }

  private String muffs(String name, String... more) {
    var typed = GearTyped.muffs(name, more);
    var id = floor.keep(Optional.empty(), Shelf.GEAR, "ear-protection", typed).value();
    things.add(id.orElseThrow());
    return id.get();
  }

  private String cabinet(String... changed) {
    var typed = GearTyped.cabinet(changed);
    var read = desk.keep(Optional.empty(), typed);
    assertEquals(List.of(), read.problems());
    cabinets.add(read.value().orElseThrow().id());
    return read.value().get().id();
  }

  @Test
  void demo_fitsWhole_andKeepsToEveryRule() {
    var planned = desk.plan(DEMO_CABINET).orElseThrow();
    assertEquals(List.of(), planned.faults());
    assertEquals(
        List.of(), planned.without().stream().map(one -> one.thing().name() + one.why()).toList());
    assertTrue(planned.task().things().size() >= 30, planned.task().things().size() + " things");
    var demo = desk.things().stream().filter(one -> one.thing().id().startsWith("demo-")).toList();
    assertEquals(List.of(), demo.stream().flatMap(one -> one.assumed().stream()).toList());
    assertEquals(List.of(), demo.stream().flatMap(one -> one.warnings().stream()).toList());
  }

  @Test
  void take_thePlan_givesGearItsPlace_untilTheCabinetGoes() {
    var cabinet = cabinet();
    var id = muffs("grey muffs", "kept-in", cabinet, "place", "on the bench");
    assertEquals("on the bench", piece(id).place());
    var planned = desk.plan(cabinet).orElseThrow();
    assertFalse(planned.taken());
    assertTrue(desk.take(cabinet, "other").isPresent(), "another plan was seen");
    assertEquals(Optional.empty(), desk.take(cabinet, planned.mark()));
    assertEquals(Optional.of("Small one: hooks"), desk.placeOf(id));
    assertEquals("Small one: hooks", piece(id).place());
    assertTrue(desk.plan(cabinet).orElseThrow().taken());

    var renamed = new LinkedHashMap<>(desk.cabinet(cabinet).orElseThrow().typed());
    renamed.put("name", "tall one");
    renamed.put("fitting-1-name", "pegs");
    assertEquals(List.of(), desk.keep(Optional.of(cabinet), renamed).problems());
    assertEquals(Optional.of("Tall one: pegs"), desk.placeOf(id));

    desk.discard(cabinet);
    assertEquals(Optional.empty(), desk.placeOf(id));
    assertEquals("on the bench", piece(id).place());
  }

  private OwnedGear piece(String id) {
    return floor.shop().gear().stream()
        .filter(one -> one.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void places_thatACabinetHasNoLonger_areNobodysHome() {
    var cabinet = cabinet();
    var id = muffs("grey muffs", "kept-in", cabinet);
    assertEquals(Optional.empty(), desk.pin(id, cabinet, "fitting-1"));
    assertEquals(Optional.empty(), desk.take(cabinet, desk.plan(cabinet).orElseThrow().mark()));
    var without = new LinkedHashMap<>(desk.cabinet(cabinet).orElseThrow().typed());
    without.keySet().removeIf(field -> field.startsWith("fitting-1"));
    assertEquals(List.of(), desk.keep(Optional.of(cabinet), without).problems());
    assertEquals(Optional.empty(), desk.placeOf(id));
    assertEquals(Optional.empty(), desk.thing(id).orElseThrow().pin());
  }

  @Test
  void pin_holdsAgainstWishes_andIsRefusedWhereARuleIsBroken() {
    var cabinet = cabinet();
    var id = muffs("grey muffs", "kept-in", cabinet);
    assertEquals("fitting-1", placeIn(cabinet, id));
    assertEquals(Optional.empty(), desk.pin(id, cabinet, "bottom-1"));
    assertEquals("bottom-1", placeIn(cabinet, id));
    desk.unpin(id);
    assertEquals("fitting-1", placeIn(cabinet, id));
    assertEquals(
        "place", where(desk.pin(kept("KIT", "first-aid-kit", cabinet), cabinet, "bottom-1")));
    assertEquals("place", where(desk.pin(id, cabinet, "shelf-9")));
    assertEquals("cabinet", where(desk.pin(id, "nothing", "bottom-1")));
    assertEquals("thing", where(desk.pin("nothing", cabinet, "bottom-1")));
  }

  private String kept(String shelf, String kind, String cabinet) {
    var typed = GearTyped.pairs("name", kind, "kept-in", cabinet);
    var id = floor.keep(Optional.empty(), Shelf.valueOf(shelf), kind, typed).value().orElseThrow();
    things.add(id);
    return id;
  }

  private String placeIn(String cabinet, String thing) {
    return desk.plan(cabinet).orElseThrow().plan().of(thing).orElseThrow().place().id();
  }

  private static String where(Optional<Problem> problem) {
    return problem.map(Problem::where).orElse("nothing is wrong");
  }

  @Test
  void unknownSizes_areTakenFromTheKind_andToldSo() {
    var cabinet = cabinet();
    var id = kept("GEAR", "ear-protection", cabinet);
    var stored = desk.thing(id).orElseThrow();
    assertEquals(List.of("kind of thing", "width", "height", "depth", "weight"), stored.assumed());
    assertEquals(stored.thing().kind().most(), stored.thing().size());
  }

  @Test
  void users_thatNobodyIs_areTold_andEverybodyHasToReachIt() {
    var person =
        desk.keepPerson(Optional.empty(), GearTyped.pairs("name", "Ola", "body", "1500 mm"));
    people.add(person.value().orElseThrow().id());
    assertEquals(
        List.of("name"),
        desk
            .keepPerson(Optional.empty(), GearTyped.pairs("name", "Ola", "body", "1600 mm"))
            .problems()
            .stream()
            .map(Problem::where)
            .toList());
    var known = desk.thing(muffs("one", "kept-users", "Ola")).orElseThrow();
    assertEquals(List.of(), known.warnings());
    assertEquals(java.util.Set.of("Ola"), known.thing().users());
    var unknown = desk.thing(muffs("two", "kept-users", "Nemo")).orElseThrow();
    assertEquals(1, unknown.warnings().size());
    assertEquals(java.util.Set.of(), unknown.thing().users());
  }

  @Test
  void whatDoesNotFit_isSaidWithWhy_andTheChangeThatHelps_canBeTyped() {
    var cabinet = cabinet("fitting-1-at", "200");
    var id = kept("KIT", "apron", cabinet);
    // An apron lies, too: too wide and too deep for the bottom as it is.
    var planned = desk.plan(cabinet).orElseThrow();
    assertEquals(List.of(id), planned.plan().without().stream().map(Thing::id).toList());
    assertTrue(planned.without().get(0).why().length() > 10, planned.without().get(0).why());
    assertTrue(planned.isSound());
    var fits = cabinet();
    muffs("grey muffs", "kept-in", fits, "kept-height", "640");
    var tall = desk.plan(fits).orElseThrow();
    assertEquals(List.of(), tall.without());
    assertEquals(Optional.empty(), desk.changed(fits));
  }

  @Test
  void changed_cabinet_isTypedWithTheSmallestChangeInIt() {
    var cabinet =
        cabinet(
            "fitting-2-kind",
            "shelf",
            "fitting-2-at",
            "300",
            "fitting-2-thickness",
            "18",
            "fitting-2-load",
            "15 kg",
            "fitting-2-depth",
            "250");
    var id = muffs("tall muffs", "kept-in", cabinet, "kept-height", "400");
    var planned = desk.plan(cabinet).orElseThrow();
    assertEquals(List.of(id), planned.plan().without().stream().map(Thing::id).toList());
    var changed = desk.changed(cabinet).orElseThrow();
    assertEquals(List.of(), desk.keep(Optional.of(cabinet), changed).problems());
    assertEquals(List.of(), desk.plan(cabinet).orElseThrow().without());
  }

  @Test
  void whatWasTakenOut_isNotKeptAgain_byWhoStillChangesIt() {
    var cabinet = cabinet();
    desk.discard(cabinet);
    var kept = desk.keep(Optional.of(cabinet), GearTyped.cabinet());
    assertEquals(List.of("cabinet"), kept.problems().stream().map(Problem::where).toList());
    assertEquals(Optional.empty(), desk.cabinet(cabinet));
    var typed = GearTyped.pairs("name", "Ola", "body", "1500 mm");
    var person = desk.keepPerson(Optional.empty(), typed).value().orElseThrow().id();
    desk.discardPerson(person);
    assertTrue(desk.keepPerson(Optional.of(person), typed).value().isEmpty());
    assertTrue(desk.people().stream().noneMatch(one -> one.id().equals(person)));
  }

  @Test
  void plan_ofTheSame_isTheSame_andOfOtherThings_another() {
    var cabinet = cabinet();
    muffs("grey muffs", "kept-in", cabinet);
    var once = desk.plan(cabinet).orElseThrow();
    assertEquals(once, desk.plan(cabinet).orElseThrow());
    muffs("red muffs", "kept-in", cabinet);
    assertNotEquals(once.mark(), desk.plan(cabinet).orElseThrow().mark());
  }

  @Test
  void takenOut_isWithWhoHasIt_untilItIsPutBack() {
    var id = muffs("grey muffs");
    assertEquals("act", where(desk.act(newId(), id, new GearAct.PutBack("Ola"))));
    var entry = newId();
    assertEquals(Optional.empty(), desk.act(entry, id, new GearAct.TakenOut("Ola")));
    assertEquals(Optional.empty(), desk.act(entry, id, new GearAct.TakenOut("Ola")), "once only");
    assertEquals("id", where(desk.act(entry, id, new GearAct.PutBack("Ola"))), "another act");
    assertEquals("id", where(desk.act(entry, muffs("red"), new GearAct.TakenOut("Ola"))));
    assertEquals(1, desk.record(id).size());
    assertEquals(Optional.of("Ola"), desk.thing(id).orElseThrow().with());
    assertEquals("thing", where(desk.act(newId(), id, new GearAct.TakenOut("Ida"))));
    assertEquals("who", where(desk.act(newId(), id, new GearAct.TakenOut(" "))));
    assertEquals(Optional.empty(), desk.act(newId(), id, new GearAct.PutBack("Ola")));
    assertEquals(Optional.empty(), desk.thing(id).orElseThrow().with());
    assertEquals("thing", where(desk.act(newId(), "nothing", new GearAct.TakenOut("Ola"))));
  }

  @Test
  void failed_isNotOffered_untilItIsMended() {
    var id = muffs("grey muffs", "opened", "2026-01-05");
    var failed = new GearAct.LookedAt("cushions", false, "cracked", Optional.empty());
    assertEquals(Optional.empty(), desk.act(newId(), id, failed));
    assertTrue(piece(id).outOfUse());
    assertEquals(Optional.of("out of use"), desk.thing(id).orElseThrow().idle());
    assertEquals("act", where(desk.act(newId(), id, new GearAct.TakenOut("Ola"))));
    assertEquals(List.of(Due.FAILED), due(id).stream().map(Due::ageing).toList());
    assertEquals(Optional.empty(), desk.act(newId(), id, new GearAct.Mended("new cushions")));
    assertFalse(piece(id).outOfUse());
    assertEquals("act", where(desk.act(newId(), id, new GearAct.Mended(""))));
  }

  @Test
  void looking_movesWhatIsDue_andReplacing_beginsAnew() {
    var id = muffs("grey muffs", "opened", "2026-01-05", "inspect-by", "2026-02-01");
    assertEquals(List.of("marked 2026-02-01", "cushions 2026-07-05"), words(due(id)));
    var good = new GearAct.LookedAt("cushions", true, "", Optional.empty());
    assertEquals(Optional.empty(), desk.act(newId(), id, good));
    var halfAYear = desk.today().plusMonths(6);
    assertEquals(List.of("marked 2026-02-01", "cushions " + halfAYear), words(due(id)));
    var marked = new GearAct.LookedAt(Due.MARKED, true, "", Optional.empty());
    assertEquals("act", where(desk.act(newId(), id, marked)), "until when?");
    var next = desk.today().plusYears(1);
    var until = new GearAct.LookedAt(Due.MARKED, true, "", Optional.of(next));
    assertEquals(Optional.empty(), desk.act(newId(), id, until));
    assertEquals(List.of("cushions " + halfAYear, "marked " + next), words(due(id)));
    assertEquals(
        "act",
        where(desk.act(newId(), id, new GearAct.LookedAt("strange", true, "", Optional.empty()))));
    var over = desk.today().plusYears(3);
    assertEquals(
        Optional.empty(), desk.act(newId(), id, new GearAct.Replaced("", Optional.of(over))));
    assertEquals(List.of("cushions " + halfAYear, "ends " + over), words(due(id)));
    assertEquals(Optional.of(desk.today()), piece(id).opened(), "opened on the day of the act");
  }

  @Test
  void due_begins_withWhatIsOverdue() {
    var id = muffs("grey muffs", "opened", "2020-01-05");
    var days = desk.due();
    var overdue = days.stream().takeWhile(Due::overdue).toList();
    assertTrue(overdue.stream().anyMatch(due -> due.thing().equals(id)));
    assertEquals(overdue, days.stream().filter(Due::overdue).toList());
    assertTrue(desk.dueSoon().containsAll(due(id)));
  }

  private List<Due> due(String thing) {
    return desk.due().stream().filter(due -> due.thing().equals(thing)).toList();
  }

  private static List<String> words(List<Due> all) {
    return all.stream()
        .map(due -> due.ageing() + " " + due.on().map(LocalDate::toString).orElse("never"))
        .toList();
  }

  private static String newId() {
    return UUID.randomUUID().toString();
  }

  @Test
  void caseOfAJob_isACabinet_thatFollowsItsDesign() {
    var job = jobs.keep(Optional.empty(), Demo.job()).value().orElseThrow();
    newJobs.add(job.id());
    var typed = new LinkedHashMap<>(desk.ofJob(job).orElseThrow());
    typed.put("hung", "800 mm");
    var kept = desk.keep(Optional.empty(), typed).value().orElseThrow();
    cabinets.add(kept.id());
    assertEquals(Optional.of(job.id()), kept.job());
    var shelf =
        kept.cabinet().orElseThrow().fittings(Fitting.Shelf.class).findFirst().orElseThrow();
    var moved = new LinkedHashMap<>(job.typed());
    moved.put("shelf-1", "400");
    jobs.keep(Optional.of(job.id()), moved);
    var after = desk.cabinet(kept.id()).orElseThrow().cabinet().orElseThrow();
    var lower = after.fittings(Fitting.Shelf.class).findFirst().orElseThrow();
    assertEquals(
        org.proofcut.core.measure.Length.ofMillimetres(100), shelf.top().minus(lower.top()));

    // 320 mm stand nowhere while the shelf is in the middle.
    muffs("a", "kept-in", kept.id(), "kept-height", "480", "kept-width", "300");
    assertEquals(1, desk.plan(kept.id()).orElseThrow().without().size());
    var heights = desk.shelfHeights(kept.id()).orElseThrow();
    assertTrue(heights.isBetter());
    assertEquals(List.of(), heights.after().without());
    assertEquals(List.of(), desk.takeHeights(kept.id()));
    assertEquals(
        heights.typed().get("shelf-1"), jobs.job(job.id()).orElseThrow().typed().get("shelf-1"));
    assertEquals(List.of(), desk.plan(kept.id()).orElseThrow().without());

    var lives = desk.plan(kept.id()).orElseThrow();
    var onShelf = lives.plan().in("shelf-1").get(0).thing().id();
    assertEquals(Optional.empty(), desk.take(kept.id(), lives.mark()));
    assertEquals(Optional.empty(), desk.pin(onShelf, kept.id(), "shelf-1"));
    var without = new LinkedHashMap<>(jobs.job(job.id()).orElseThrow().typed());
    without.remove("shelf-1");
    jobs.keep(Optional.of(job.id()), without);
    bench.planAgain(job.id());
    assertEquals(Optional.empty(), desk.placeOf(onShelf), "its shelf is gone");
    assertEquals(Optional.empty(), desk.thing(onShelf).orElseThrow().pin());

    bench.discard(job.id());
    var gone = desk.cabinet(kept.id()).orElseThrow();
    assertEquals(List.of("job"), gone.problems().stream().map(Problem::where).toList());
    assertEquals(Optional.empty(), desk.plan(kept.id()));
  }
}
