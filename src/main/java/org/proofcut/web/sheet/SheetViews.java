package org.proofcut.web.sheet;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.proofcut.bench.OutOfPlace;
import org.proofcut.bench.Work;
import org.proofcut.bench.WorkBench;
import org.proofcut.content.Content;
import org.proofcut.core.casework.CaseFigure;
import org.proofcut.core.checklist.Item;
import org.proofcut.core.drawing.CaseElevation;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.operation.PartCut;
import org.proofcut.core.plan.OperationSheet;
import org.proofcut.core.run.SheetProgress;
import org.proofcut.core.run.Stage;
import org.proofcut.core.safety.Check.Pause;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.shop.GearOffer;
import org.proofcut.web.part.Carried;
import org.proofcut.web.part.WorkingLine;
import org.proofcut.web.reading.GearReads;
import org.proofcut.web.reading.SheetReads;
import org.proofcut.web.reading.SheetReads.Drawn;
import org.proofcut.web.reading.SheetReads.Figure;
import org.proofcut.web.reading.Shows;
import org.proofcut.web.reading.Today;
import org.proofcut.web.sheet.SheetView.GearView;
import org.proofcut.web.sheet.SheetView.PartView;
import org.proofcut.web.sheet.SheetView.PauseView;

/** Writes out one sheet as it stands. */
final class SheetViews {

  private final Content content;
  private final Work work;
  private final SheetProgress progress;
  private final OperationSheet sheet;
  private final Shows shows;
  private final Typed typed;
  private final Instant now;
  private final Today today;
  private final List<OutOfPlace> out;

  SheetViews(
      Content content,
      Work work,
      SheetProgress progress,
      Shows shows,
      Typed typed,
      Instant now,
      List<OutOfPlace> out) {
    this.content = content;
    this.work = work;
    this.progress = progress;
    this.sheet = progress.sheet();
    this.shows = shows;
    this.typed = typed;
    this.now = now;
    this.today = new Today(progress.today(), OutOfPlace.inWords(out));
    this.out = out;
  }

  SheetView view() {
    var setup = progress.setup();
    var wording = content.wording().operations().get(sheet.operation().kind().id());
    var now = new NowViews(content, work, progress, shows, typed, this::carries, today).now();
    return new SheetView(
        work.job().id(),
        work.plan().designed().design().name(),
        sheet.number(),
        work.plan().sheets().size(),
        sheet.operation().title(),
        wording.purpose(),
        pauses(),
        isOpen(),
        nextThing(),
        workFirst(),
        progress.stage() == Stage.BEFORE_POWER,
        isOpen() && (progress.stage() == Stage.PROOF || progress.stage() == Stage.CUT),
        work.isStopped() || isOpen() ? null : openElsewhere(),
        cameBack(),
        reads(setup),
        gear(),
        GearReads.together(sheet, content.wording()),
        !progress.lacking().isEmpty(),
        work.progress().current().isEmpty() && progress.isDone() ? out : List.of(),
        parts(),
        wording.steps(),
        now,
        also(),
        problems(now),
        action(),
        carries());
  }

  /** Nothing can be done while a problem of design or shop stops the job. */
  private boolean isOpen() {
    return progress.isOpen() && !work.isStopped();
  }

  private Integer openElsewhere() {
    return work.progress()
        .current()
        .map(open -> open.sheet().number())
        .filter(number -> number != sheet.number())
        .orElse(null);
  }

  private boolean cuts() {
    return sheet.operation().kind().cuts();
  }

  private List<String> also() {
    return isOpen()
        ? sheet.checklist().unaskedAt(Place.pause(progress)).stream()
            .map(look -> look.ask() + " " + look.answer() + ".")
            .toList()
        : List.of();
  }

  /** In a word where to go on, above figures that may fill the page. */
  private String nextThing() {
    if (!isOpen() || workFirst()) {
      return null;
    }
    return (cuts() ? "Set the machine: " : "Get ready: ") + Place.of(progress);
  }

  /** Once the machine is set, what is done comes before what is read. */
  private boolean workFirst() {
    return switch (progress.stage()) {
      case MACHINE, BEFORE_POWER, PROOF, CUT, LEAVE_SAFE, DONE -> true;
      case LOCKED, SET -> false;
    };
  }

  /** What is wrong, each leading to its field if that is on the page. */
  private List<Problem> problems(SheetView.Now now) {
    var problems = new ArrayList<Problem>();
    work.problems().forEach(problem -> problems.add(Typed.at("", problem)));
    var field = Typed.field(typed.act(), typed.item());
    typed
        .problem()
        .map(problem -> Typed.at(now.asks(field) ? field : "", problem))
        .ifPresent(problems::add);
    return problems;
  }

  // ---- what is read --------------------------------------------------------------------------

  private SheetReads reads(Optional<Setup> setup) {
    var reads =
        SheetReads.of(sheet, setup, content.wording(), shows)
            .at(Place.pause(progress), sheet, work.plan().sheet(sheet.number() - 1), shows);
    return setup.isPresent() ? reads : reads.onTheCase(caseFigures(), elevation());
  }

  private List<Figure> caseFigures() {
    return work.plan().caseFigures(sheet).stream().map(this::figure).toList();
  }

  private Figure figure(CaseFigure figure) {
    var shown = Scale.rule(shows.unit()).show(figure.value().value());
    return new Figure(
        figure.name(),
        figure.from(),
        shown,
        null,
        shows.leftover(shown),
        WorkingLine.of(figure.value(), shows.caliper()));
  }

  /** The case that is put together, where no machine is to be drawn. */
  private Drawn elevation() {
    return new Drawn(
        CaseElevation.of(work.plan().finished(), shows.unit(), 600),
        CaseElevation.of(work.plan().finished(), shows.unit(), 350));
  }

  // ---- what is worn --------------------------------------------------------------------------

  private List<GearView> gear() {
    boolean asked = progress.stage() == Stage.BEFORE_POWER && isOpen();
    return GearReads.of(sheet, content.wording(), today).stream()
        .map(gear -> gear(gear, asked))
        .toList();
  }

  private GearView gear(GearReads reads, boolean asked) {
    var gear = reads.item();
    var answer = progress.answers().get(gear.id());
    return new GearView(
        reads.sign(),
        reads.name(),
        reads.place(),
        reads.ask(),
        answer,
        reads.forbidden(),
        answer == null ? reads.lacking() : null,
        reads.notes(),
        changedSince(gear),
        asked && answer == null && reads.lacking() == null ? action() : null,
        thing(gear),
        carries(
            new Carried("act", "confirm"),
            new Carried("item", gear.id()),
            new Carried("answer", gear.answer())));
  }

  /** The piece to take, where it is known how its kind is kept. */
  private String thing(Item.Gear gear) {
    boolean isKept =
        content.storage().values().stream()
            .anyMatch(kind -> kind.gear().filter(gear.kind()::equals).isPresent());
    return gear.piece(today.day(), today.out().keySet())
        .filter(piece -> gear.on() && isKept)
        .map(GearOffer.Piece::id)
        .orElse(null);
  }

  /** What flips from one sheet to the next is what is forgotten. */
  private String changedSince(Item.Gear gear) {
    return work.plan()
        .sheet(sheet.number() - 1)
        .flatMap(
            before ->
                before.checklist().items().stream()
                    .filter(Item.Gear.class::isInstance)
                    .map(Item.Gear.class::cast)
                    .filter(one -> one.kind().equals(gear.kind()) && one.on() != gear.on())
                    .findFirst()
                    .map(one -> "changed since sheet " + before.number()))
        .orElse(null);
  }

  // ---- parts ---------------------------------------------------------------------------------

  private List<PartView> parts() {
    return sheet.operation().parts().stream().map(this::part).toList();
  }

  private PartView part(PartCut part) {
    boolean cuts = cuts();
    boolean cut = progress.cut().contains(part.id());
    boolean mayCut = progress.stage() == Stage.CUT && isOpen();
    return new PartView(
        capital(part.name()),
        detail(part),
        capital(part.name()) + (cuts ? " is cut" : " is in place"),
        cut ? (cuts ? "Cut" : "In place") : null,
        mayCut || isOpen() && cut ? action() : null,
        carries(new Carried("act", cut ? "not-cut" : "cut"), new Carried("part", part.id())),
        isOpen() && cut ? (cuts ? "Not cut after all" : "Not in place after all") : null);
  }

  private String detail(PartCut part) {
    var details = new ArrayList<String>();
    part.size().ifPresent(size -> details.add(size.name() + ": " + shows.text(size.value())));
    part.handling()
        .ifPresent(
            handling -> {
              details.add(handling.face());
              details.add(handling.rides().words() + " on the guide");
              details.add(handling.first());
              handling.breakout().ifPresent(details::add);
            });
    return String.join(" · ", details);
  }

  // ---- where the work stands -----------------------------------------------------------------

  private List<PauseView> pauses() {
    var stage = progress.stage();
    var pauses = new ArrayList<PauseView>();
    pauses.add(pause(cuts() ? "Set" : "Get ready", stage, Stage.SET));
    if (!sheet.checklist().at(Pause.MACHINE).isEmpty()) {
      pauses.add(pause("The machine", stage, Stage.MACHINE));
    }
    pauses.add(pause(cuts() ? "Before power" : "Begin", stage, Stage.BEFORE_POWER));
    var third = sheet.needsProof() ? "Proof, then parts" : cuts() ? "Parts" : "Assemble";
    // The proof and the real parts are one stretch of work between two pauses.
    pauses.add(pause(third, stage == Stage.PROOF ? Stage.CUT : stage, Stage.CUT));
    pauses.add(pause("Leave safe", stage, Stage.LEAVE_SAFE));
    return pauses;
  }

  private static PauseView pause(String name, Stage stage, Stage own) {
    var state =
        stage == own
            ? "now"
            : stage != Stage.LOCKED && stage.ordinal() > own.ordinal() ? "done" : "later";
    return new PauseView(name, state, null);
  }

  /** After a while away: when, and where it was left. */
  private String cameBack() {
    if (!isOpen() || progress.lastAct().isEmpty()) {
      return null;
    }
    var away = Duration.between(progress.lastAct().get(), now);
    if (away.toMinutes() < 2 && !progress.held()) {
      return null;
    }
    long minutes = away.toMinutes();
    var when =
        minutes < 1
            ? "just now"
            : minutes < 120
                ? minutes + (minutes == 1 ? " minute ago" : " minutes ago")
                : away.toHours() < 48 ? away.toHours() + " hours ago" : away.toDays() + " days ago";
    var again =
        progress.askedAgain().isEmpty() ? "" : " What fades in the meantime is asked again.";
    return (progress.held() ? "You put the work down " : "You stopped ")
        + when
        + " at "
        + Place.of(progress)
        + "."
        + again;
  }

  private String action() {
    return "/jobs/" + work.job().id() + "/sheets/" + sheet.number();
  }

  private List<Carried> carries(Carried... own) {
    var carries = new ArrayList<Carried>(List.of(own));
    carries.add(new Carried("entry", WorkBench.newEntryId()));
    carries.add(new Carried("operation", sheet.id()));
    carries.add(new Carried("fingerprint", sheet.marks().fingerprint()));
    return carries;
  }

  static String capital(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  static FitLimits fit(Content content) {
    return content.limits(FitLimits.class);
  }

  /** What was typed and why it was refused, to be shown again. */
  record Typed(String act, String item, String text, Optional<Problem> problem) {

    static final Typed NOTHING = new Typed("", "", "", Optional.empty());

    /** Id and name of the field that an act is typed in; a reading has its own on each page. */
    static String field(String act, String item) {
      return switch (act) {
        case "confirm", "reading", "read-again" -> "found";
        case "without" -> "without-" + item.replaceAll("[^a-z0-9-]", "-");
        default -> act;
      };
    }

    boolean isFor(String otherAct, String otherItem) {
      return act.equals(otherAct) && (otherItem.isEmpty() || item.equals(otherItem));
    }

    /** The problem at this field, if it is this field's. */
    Problem at(String otherAct, String otherItem) {
      return isFor(otherAct, otherItem)
          ? problem.map(one -> at(field(act, item), one)).orElse(null)
          : null;
    }

    static Problem at(String field, Problem problem) {
      return new Problem(
          field, problem.what(), problem.allowed(), problem.doThis(), problem.force());
    }

    String kept(String otherAct, String otherItem) {
      return isFor(otherAct, otherItem) ? text : "";
    }
  }
}
