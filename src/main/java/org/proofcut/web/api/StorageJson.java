package org.proofcut.web.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.proofcut.bench.CabinetDraft;
import org.proofcut.bench.ChosenHeights;
import org.proofcut.bench.GearCabinet;
import org.proofcut.bench.KeptPerson;
import org.proofcut.bench.PlannedCabinet;
import org.proofcut.bench.StoredThing;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.storage.Change;
import org.proofcut.core.storage.Due;
import org.proofcut.core.storage.GearAct;
import org.proofcut.core.storage.GearEntry;
import org.proofcut.core.storage.HookSheet.Hook;
import org.proofcut.core.storage.Place;
import org.proofcut.core.storage.Put;
import org.proofcut.core.storage.Size;

/** Where gear lives. */
final class StorageJson {

  private StorageJson() {}

  /** What is sent to keep a cabinet or a person. */
  @Schema(name = "StorageTyped", requiredProperties = "typed")
  record Typed(
      @Schema(description = "each field of the form by its name; a length as people write it")
          Map<String, String> typed) {}

  /** The smallest change that gives everything a place. */
  @Schema(name = "GearChange")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Changed(
      @Schema(description = "what to do; none where nothing helps, or nothing is left over")
          Optional<String> change,
      @Schema(description = "the thing whose pin is taken out, where it is that")
          Optional<String> unpin,
      @Schema(description = "the cabinet as typed with it, to be kept like any other; may be empty")
          Map<String, String> typed) {

    static Changed of(Optional<Change> change, Optional<Map<String, String>> typed) {
      return new Changed(
          change.map(Change::words),
          change.filter(Change.Unpin.class::isInstance).map(one -> ((Change.Unpin) one).thing()),
          typed.orElse(Map.of()));
    }
  }

  /** What is sent to take a plan. */
  @Schema(name = "StorageTaken", requiredProperties = "mark")
  record Taken(@Schema(description = "mark of the plan that was seen") String mark) {}

  /** What is sent to have a thing stay in a place. */
  @Schema(
      name = "StoragePin",
      requiredProperties = {"thing", "cabinet", "place"})
  record Pin(String thing, String cabinet, String place) {}

  /** What is sent to record an act. */
  @Schema(
      name = "GearActSent",
      requiredProperties = {"id", "act"})
  record ActSent(
      @Schema(description = "made where the act happened; the same act again does nothing")
          String id,
      @Schema(description = "taken-out, put-back, looked-at, mended or replaced") String act,
      @Schema(description = "of taken-out and put-back") String who,
      @Schema(description = "of looked-at: id of what fell due") String ageing,
      @Schema(description = "of looked-at: good or failed") String result,
      @Schema(description = "of looked-at, mended and replaced; may be left out") String note,
      @Schema(description = "of looked-at a marked day: the next one, from 2000 to 2099")
          String next,
      @Schema(description = "of replaced: the last day marked on the new one, from 2000 to 2099")
          String goodUntil) {}

  /** A cabinet. */
  @Schema(name = "GearCabinet")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Cabinet(
      String id,
      String name,
      @Schema(description = "unit of a number without one") String unit,
      @Schema(description = "the job whose case it is") Optional<String> job,
      Map<String, String> typed,
      List<ProblemDetail.One> problems) {}

  /** A cabinet as typed. */
  @Schema(name = "GearCabinetDraft")
  record Draft(
      @Schema(description = "the fields that are asked for now") List<ShopJson.Input> fields,
      List<Spot> places,
      List<ProblemDetail.One> problems) {}

  /** One place, from its inner lower left corner at the back. */
  @Schema(name = "GearPlace")
  record Spot(
      String id,
      String name,
      @Schema(description = "shelf, rail, drawer, box, door-rail or wall") String kind,
      LengthJson.Range across,
      LengthJson.Range upright,
      LengthJson.Range deep,
      boolean sealed,
      boolean dry,
      int mostGrams) {}

  /** How much room a thing takes. */
  @Schema(name = "GearSize")
  record Box(LengthJson.Plain wide, LengthJson.Plain high, LengthJson.Plain deep) {}

  /** A thing in its place. */
  @Schema(name = "GearPut")
  record Lies(
      String thing,
      String name,
      String place,
      @Schema(description = "from the left side inside to the thing's left") LengthJson.Plain left,
      Box size,
      int grams,
      boolean pinned) {}

  /** A thing without a place. */
  @Schema(name = "GearWithout")
  record Without(String thing, String name, String why) {}

  /** A wish that is not met. */
  @Schema(name = "GearWish")
  record Wish(String words, long cost) {}

  /** A hook, as it is screwed in. */
  @Schema(name = "GearHook")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Screwed(
      String place,
      String thing,
      String corner,
      LengthJson.Figure fromSide,
      LengthJson.Figure fromBottom,
      LengthJson.Figure panel,
      @Schema(
              description =
                  "of a batten that has to be there first; left out where the panel holds")
          Optional<LengthJson.Figure> batten,
      @Schema(description = "how deep its screw may go, into the batten where there is one")
          LengthJson.Figure goesIn,
      LengthJson.Figure pilot,
      int loadGrams) {}

  /** A plan of a cabinet. */
  @Schema(name = "GearPlan")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Plan(
      String cabinet,
      @Schema(description = "the same for the same plan") String mark,
      @Schema(description = "whether everything lives by it") boolean taken,
      @Schema(description = "rules that it breaks; none, or it can't be taken") List<String> faults,
      long cost,
      @Schema(description = "the least that any plan costs, as far as was proven") long bound,
      @Schema(description = "how much better another could be at most, in per cent") String gap,
      List<Spot> places,
      List<Lies> puts,
      List<Without> without,
      List<Wish> unmet,
      List<Screwed> hooks) {}

  /** Heights of shelves that suit the gear. */
  @Schema(name = "GearShelfHeights")
  record Heights(
      String job,
      boolean better,
      List<Shelf> shelves,
      int withoutBefore,
      int withoutAfter,
      long costBefore,
      long costAfter) {}

  /** One shelf of a job. */
  @Schema(name = "GearShelfHeight")
  record Shelf(
      @Schema(description = "of the job's form") String field,
      String name,
      @Schema(description = "from the floor to its underside by the design, as it would be typed")
          String was,
      @Schema(description = "the same as found") String is) {}

  /** A thing of the shop. */
  @Schema(name = "GearThing")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Thing(
      String id,
      String name,
      String kind,
      String kindName,
      Box size,
      int grams,
      @Schema(description = "what was taken from its kind") List<String> assumed,
      List<String> warnings,
      List<Keeping> keeping,
      Optional<String> cabinet,
      @Schema(description = "where it lives, as prompts say it") Optional<String> place,
      @Schema(description = "id of the place that it is pinned to") Optional<String> pin,
      @Schema(description = "who has it") Optional<String> with,
      @Schema(description = "the day on which it was taken out") Optional<String> since,
      @Schema(description = "why it is not used today") Optional<String> idle) {}

  /** What its place must give. */
  @Schema(name = "GearKeeping")
  record Keeping(String need, String why, LengthJson.Cited because) {}

  /** Somebody who takes things out. */
  @Schema(name = "GearPerson")
  record Person(
      String id,
      Map<String, String> typed,
      LengthJson.Plain knuckle,
      LengthJson.Plain elbow,
      LengthJson.Plain shoulder,
      LengthJson.Plain highest,
      boolean seated,
      @Schema(description = "heights that were not measured") List<LengthJson.Figure> estimated) {}

  /** Something that is to be done to a piece. */
  @Schema(name = "GearDue")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Falls(
      String thing,
      String name,
      @Schema(description = "id of what falls due, as an act names it") String ageing,
      String what,
      @Schema(description = "left out where it is not known since when to count")
          Optional<String> on,
      boolean overdue,
      @Schema(description = "whether the piece is over then") boolean ends,
      LengthJson.Cited because) {}

  /** An act of the record. */
  @Schema(name = "GearEntry")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Done(
      String id,
      String day,
      String act,
      Optional<String> who,
      Optional<String> ageing,
      Optional<String> result,
      Optional<String> note,
      Optional<String> next,
      Optional<String> goodUntil) {}

  static Cabinet cabinet(GearCabinet one) {
    return new Cabinet(
        one.id(),
        one.name(),
        one.unit().symbol(),
        one.job(),
        one.typed(),
        ProblemDetail.One.all(one.problems()));
  }

  static Draft draft(CabinetDraft draft) {
    return new Draft(
        draft.groups().stream().flatMap(group -> ShopJson.inputs(group.fields()).stream()).toList(),
        draft.places().stream().map(place -> spot(place, draft.unit())).toList(),
        ProblemDetail.One.all(draft.problems()));
  }

  private static Spot spot(Place place, LengthUnit unit) {
    return new Spot(
        place.id(),
        place.name(),
        ShopJson.word(place.kind()),
        LengthJson.range(place.across(), unit),
        LengthJson.range(place.upright(), unit),
        LengthJson.range(place.deep(), unit),
        place.sealed(),
        place.dry(),
        place.mostGrams());
  }

  static Plan plan(PlannedCabinet planned) {
    var unit = planned.cabinet().unit();
    var plan = planned.plan();
    return new Plan(
        planned.cabinet().id(),
        planned.mark(),
        planned.taken(),
        planned.faults().stream().map(fault -> fault.thing() + ": " + fault.words()).toList(),
        plan.cost(),
        plan.bound(),
        plan.gap().toPlainString(),
        planned.places().stream().map(place -> spot(place, unit)).toList(),
        plan.puts().stream().map(put -> lies(put, planned)).toList(),
        planned.without().stream()
            .map(one -> new Without(one.thing().id(), one.thing().name(), one.why()))
            .toList(),
        planned.unmet().stream().map(one -> new Wish(one.words(), one.cost())).toList(),
        planned.hooks().hooks().stream().map(hook -> screwed(hook, unit)).toList());
  }

  private static Lies lies(Put put, PlannedCabinet planned) {
    var unit = planned.cabinet().unit();
    var thing = put.thing();
    return new Lies(
        thing.id(),
        thing.name(),
        put.place().id(),
        LengthJson.plain(put.left(), unit),
        box(thing.size(), unit),
        thing.grams(),
        planned.task().pins().containsKey(thing.id()));
  }

  private static Box box(Size size, LengthUnit unit) {
    return new Box(
        LengthJson.plain(size.wide(), unit),
        LengthJson.plain(size.high(), unit),
        LengthJson.plain(size.deep(), unit));
  }

  private static Screwed screwed(Hook hook, LengthUnit unit) {
    return new Screwed(
        hook.row().id(),
        hook.holds().id(),
        hook.corner(),
        LengthJson.figure(hook.spot().fromSide(), unit),
        LengthJson.figure(hook.spot().fromBottom(), unit),
        LengthJson.figure(hook.panel(), unit),
        hook.batten().map(batten -> LengthJson.figure(batten, unit)),
        LengthJson.figure(hook.goesIn(), unit),
        LengthJson.figure(hook.pilot(), unit),
        hook.load().value());
  }

  static Heights heights(ChosenHeights chosen) {
    return new Heights(
        chosen.job(),
        chosen.isBetter(),
        chosen.shelves().stream()
            .map(one -> new Shelf(one.field(), one.name(), one.was(), one.is()))
            .toList(),
        chosen.before().without().size(),
        chosen.after().without().size(),
        chosen.before().cost(),
        chosen.after().cost());
  }

  static Thing thing(StoredThing one, LengthUnit unit) {
    var thing = one.thing();
    return new Thing(
        thing.id(),
        thing.name(),
        thing.kind().id(),
        thing.kind().name(),
        box(thing.size(), unit),
        thing.grams(),
        one.assumed(),
        one.warnings(),
        thing.kind().keeping().stream()
            .map(
                keeping ->
                    new Keeping(
                        keeping.need().words(), keeping.why(), LengthJson.cited(keeping.because())))
            .toList(),
        one.cabinet(),
        one.home().map(StoredThing.Home::words),
        one.pin().map(StoredThing.Pin::place),
        one.with(),
        one.out().map(out -> out.since().toString()),
        one.idle());
  }

  static Person person(KeptPerson one, LengthUnit unit) {
    var person = one.person();
    return new Person(
        one.id(),
        one.typed(),
        LengthJson.plain(person.knuckle(), unit),
        LengthJson.plain(person.elbow(), unit),
        LengthJson.plain(person.shoulder(), unit),
        LengthJson.plain(person.highest(), unit),
        person.seated(),
        one.estimated().stream().map(worked -> LengthJson.figure(worked, unit)).toList());
  }

  static Falls falls(Due due) {
    return new Falls(
        due.thing(),
        due.name(),
        due.ageing(),
        due.what(),
        due.on().map(LocalDate::toString),
        due.overdue(),
        due.ends(),
        LengthJson.cited(due.because()));
  }

  static Done done(GearEntry entry) {
    var looked = as(GearAct.LookedAt.class, entry.act());
    var replaced = as(GearAct.Replaced.class, entry.act());
    return new Done(
        entry.id(),
        entry.day().toString(),
        StorageActs.word(entry.act()),
        as(GearAct.TakenOut.class, entry.act())
            .map(GearAct.TakenOut::who)
            .or(() -> as(GearAct.PutBack.class, entry.act()).map(GearAct.PutBack::who)),
        looked.map(GearAct.LookedAt::ageing),
        looked.map(one -> one.good() ? StorageActs.GOOD : StorageActs.FAILED),
        looked
            .map(GearAct.LookedAt::note)
            .or(() -> replaced.map(GearAct.Replaced::note))
            .or(() -> as(GearAct.Mended.class, entry.act()).map(GearAct.Mended::note)),
        looked.flatMap(GearAct.LookedAt::next).map(LocalDate::toString),
        replaced.flatMap(GearAct.Replaced::goodUntil).map(LocalDate::toString));
  }

  private static <A extends GearAct> Optional<A> as(Class<A> type, GearAct act) {
    return Optional.of(act).filter(type::isInstance).map(type::cast);
  }
}
