package org.proofcut.web.storage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.proofcut.bench.PlannedCabinet;
import org.proofcut.bench.StorageDesk;
import org.proofcut.bench.StoredThing;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.shop.GearLife;
import org.proofcut.core.storage.Due;
import org.proofcut.core.storage.GearAct;
import org.proofcut.core.storage.GearEntry;
import org.proofcut.core.storage.GearState;
import org.proofcut.core.storage.Place;
import org.proofcut.web.part.Asked;
import org.proofcut.web.part.Asked.Option;

/**
 * Everything on the page of a thing.
 *
 * @param where where it lives, or why it lives nowhere
 * @param cabinet id of the cabinet whose plan has it; empty where none has
 * @param entry id of the act that the page's forms may bring; the same one twice is one act
 * @param facts what is known of it
 * @param keeping what its place must give, and why
 * @param idle why it is not to be used; empty where it may be
 * @param broken whether it waits to be mended or replaced: then nothing else is asked of it
 * @param open which of the forms that are folded up stands open: the one that was sent back, or
 *     that of what is overdue
 */
record ThingView(
    String id,
    String name,
    String kind,
    String where,
    String shape,
    String cabinet,
    String with,
    String idle,
    String entry,
    List<Fact> facts,
    List<Kept> keeping,
    List<StorageView.DueRow> due,
    Pinned pinned,
    Asked who,
    List<Asked> look,
    List<Asked> mended,
    List<Asked> replaced,
    boolean broken,
    String open,
    List<String> record,
    List<Problem> refused) {

  /** One thing that is known, and what is to be said of that; null where there is nothing. */
  record Fact(String name, String value, String more) {}

  /** What its place must give, why, and where that is written. */
  record Kept(String what, String why, String source) {}

  /**
   * Where it is to stay.
   *
   * @param to what it is pinned to; empty where it may go anywhere
   * @param where the place to choose
   */
  record Pinned(String to, Asked where) {}

  /** Fields of the forms; each has a name of its own, as all stand on one page. */
  static final String WHO = "who";

  static final String AGEING = "look-what";
  static final String GOOD = "look-good";
  static final String LOOK_NOTE = "look-note";
  static final String NEXT = "look-next";
  static final String MENDED_NOTE = "mended-note";
  static final String REPLACED_NOTE = "replaced-note";
  static final String GOOD_UNTIL = "replaced-until";
  static final String PLACE = "place";

  private static final String DAY_HINT = "such as 3 Nov 2027 or 2027-11-03; may stay empty";

  /** What was typed into one of the forms, and what is wrong with it. */
  record Typed(String form, Map<String, String> fields, List<Problem> problems) {

    static final Typed NOTHING = new Typed("", Map.of(), List.of());

    private Asked asked(String id, String label, String hint, List<Option> options) {
      return new Asked(
          id,
          label,
          fields.getOrDefault(id, ""),
          hint,
          options,
          null,
          problems.stream().filter(one -> one.where().equals(id)).findFirst().orElse(null));
    }
  }

  static ThingView of(
      StoredThing one, StorageDesk desk, LengthUnit unit, String entry, Typed typed) {
    var due = desk.due().stream().filter(each -> each.thing().equals(one.thing().id())).toList();
    var plan = one.cabinet().flatMap(desk::plan);
    var record = desk.record(one.thing().id());
    var failed = failed(record, one.thing().id());
    // What was entered as out of use has nothing that falls due.
    boolean broken = failed.isPresent() || (one.idle().isPresent() && due.isEmpty());
    return new ThingView(
        one.thing().id(),
        Says.capital(one.thing().name()),
        Says.capital(one.thing().kind().name()),
        where(one, plan),
        one.home().isPresent() ? "shape-done" : "shape-open",
        one.cabinet().orElse(""),
        one.with().orElse(""),
        failed.or(() -> one.idle().map(Says::capital)).orElse(""),
        entry,
        facts(one, unit),
        one.thing().kind().keeping().stream()
            .map(
                each ->
                    new Kept(Says.capital(each.need().words()), each.why(), each.because().text()))
            .toList(),
        due.stream().map(StorageView.DueRow::of).toList(),
        plan.map(each -> pinned(one, each, typed)).orElse(null),
        who(one, desk, typed),
        look(due, typed),
        List.of(
            typed.asked(MENDED_NOTE, "What was done", "in one line; may stay empty", List.of())),
        List.of(
            typed.asked(REPLACED_NOTE, "What came in", "in one line; may stay empty", List.of()),
            typed.asked(GOOD_UNTIL, "Good until, as marked on it", DAY_HINT, List.of())),
        broken,
        typed.form().isEmpty() ? wanted(due) : typed.form(),
        record.stream().map(ThingView::line).toList(),
        typed.problems());
  }

  private static String where(StoredThing one, Optional<PlannedCabinet> plan) {
    return one.home()
        .map(StoredThing.Home::words)
        .map(Says::capital)
        .orElseGet(
            () -> {
              var plans = new LinkedHashMap<String, PlannedCabinet>();
              plan.ifPresent(each -> plans.put(each.cabinet().id(), each));
              return StorageView.whyNowhere(one, plans);
            });
  }

  /** What was found when it failed, as far as it was not mended or replaced since. */
  private static Optional<String> failed(List<GearEntry> record, String thing) {
    return GearState.of(record).getOrDefault(thing, GearState.NEW).failed().stream()
        .flatMap(
            day ->
                record.stream()
                    .filter(each -> each.day().equals(day))
                    .filter(
                        each -> each.act() instanceof GearAct.LookedAt looked && !looked.good()))
        .reduce((first, last) -> last)
        .map(ThingView::line);
  }

  private static String line(GearEntry entry) {
    return GearLife.inWords(entry.day()) + ": " + Says.act(entry.act());
  }

  /**
   * The form that what is most overdue is written down with; empty where nothing is, or two may.
   */
  private static String wanted(List<Due> due) {
    return due.stream()
        .filter(Due::overdue)
        .findFirst()
        .filter(each -> !each.ageing().equals(Due.FAILED))
        .map(each -> each.ends() ? "replaced" : "look")
        .orElse("");
  }

  private static List<Fact> facts(StoredThing one, LengthUnit unit) {
    var thing = one.thing();
    var assumed = Set.copyOf(one.assumed());
    var facts = new ArrayList<Fact>();
    if (assumed.contains("kind of thing")) {
      facts.add(
          new Fact(
              "Kept as",
              thing.kind().name(),
              "not entered, and it decides how the thing is kept: change what is entered"));
    }
    facts.add(
        new Fact(
            "Size as it is kept",
            Says.size(thing.size(), unit),
            Stream.of("width", "height", "depth").anyMatch(assumed::contains)
                ? "partly the usual for its kind, not measured"
                : null));
    facts.add(
        new Fact(
            "Weight",
            Says.weight(thing.grams()),
            assumed.contains("weight") ? "the usual for its kind, not weighed" : null));
    facts.add(new Fact("Used", thing.use().words(), null));
    facts.add(
        new Fact(
            "By",
            thing.users().isEmpty()
                ? "everybody"
                : String.join(", ", thing.users().stream().sorted().toList()),
            one.warnings().isEmpty() ? null : String.join(". ", one.warnings())));
    return facts;
  }

  private static Pinned pinned(StoredThing one, PlannedCabinet plan, Typed typed) {
    var to =
        one.pin()
            .filter(pin -> pin.cabinet().equals(plan.cabinet().id()))
            .flatMap(pin -> place(plan, pin.place()));
    var options =
        plan.places().stream()
            .map(place -> new Option(place.id(), Says.capital(place.name())))
            .toList();
    var now = one.pin().map(StoredThing.Pin::place).orElse("");
    var asked = typed.asked(PLACE, "Where it is to stay", null, options);
    return new Pinned(
        to.map(Place::name).map(Says::capital).orElse(""),
        typed.fields().containsKey(PLACE)
            ? asked
            : new Asked(asked.id(), asked.label(), now, null, options, null, null));
  }

  private static Optional<Place> place(PlannedCabinet plan, String id) {
    return plan.places().stream().filter(place -> place.id().equals(id)).findFirst();
  }

  /** A list of those who are known; whoever has it stands chosen when it comes back. */
  private static Asked who(StoredThing one, StorageDesk desk, Typed typed) {
    // Whoever has it may have been taken out of the list since.
    var people =
        Stream.concat(desk.people().stream().map(each -> each.person().name()), one.with().stream())
            .distinct()
            .map(name -> new Option(name, name))
            .toList();
    var asked =
        typed.asked(
            WHO,
            one.with().isPresent() ? "Who puts it back?" : "Who takes it?",
            people.isEmpty() ? "a name" : null,
            people);
    return typed.fields().containsKey(WHO) || one.with().isEmpty()
        ? asked
        : new Asked(WHO, asked.label(), one.with().get(), asked.hint(), people, null, null);
  }

  private static List<Asked> look(List<Due> due, Typed typed) {
    var what = new LinkedHashMap<String, String>();
    due.stream()
        .filter(each -> !each.ends() && !each.ageing().equals(Due.FAILED))
        .forEach(each -> what.putIfAbsent(each.ageing(), each.what()));
    what.putIfAbsent(Due.MARKED, "What its maker's instructions ask for");
    return List.of(
        typed.asked(
            AGEING,
            "What was looked at",
            null,
            what.entrySet().stream()
                .map(each -> new Option(each.getKey(), each.getValue()))
                .toList()),
        typed.asked(
            GOOD,
            "What was found",
            null,
            List.of(
                new Option("yes", "It is good"),
                new Option("no", "It has failed: not to be used"))),
        typed.asked(LOOK_NOTE, "What was seen", "in one line; may stay empty", List.of()),
        typed.asked(NEXT, "Next, where a day is marked on it", DAY_HINT, List.of()));
  }

  /** Whether it can be taken out; a form that was sent back stays, with what is wrong. */
  public boolean isThereToTake() {
    return idle.isEmpty() || open.equals("take-out");
  }

  public boolean isThereToLookAt() {
    return !broken || open.equals("look");
  }

  public boolean isThereToMend() {
    return broken || open.equals("mended");
  }

  public String here() {
    return "/storage/things/" + id;
  }
}
