package org.proofcut.web.sheet;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.proofcut.bench.Work;
import org.proofcut.bench.WorkBench;
import org.proofcut.content.Content;
import org.proofcut.core.casework.CaseFigure;
import org.proofcut.core.checklist.Item;
import org.proofcut.core.drawing.CaseElevation;
import org.proofcut.core.drawing.CutSection;
import org.proofcut.core.drawing.MachinePlan;
import org.proofcut.core.drawing.Sign;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.measure.display.Shown;
import org.proofcut.core.operation.PartCut;
import org.proofcut.core.plan.OperationSheet;
import org.proofcut.core.run.SheetProgress;
import org.proofcut.core.run.Stage;
import org.proofcut.core.safety.Check.Pause;
import org.proofcut.core.safety.Control;
import org.proofcut.core.safety.Finding;
import org.proofcut.core.setup.Pass;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;
import org.proofcut.web.part.Carried;
import org.proofcut.web.part.WorkingLine;
import org.proofcut.web.sheet.SheetView.CautionView;
import org.proofcut.web.sheet.SheetView.Drawn;
import org.proofcut.web.sheet.SheetView.FactView;
import org.proofcut.web.sheet.SheetView.FigureView;
import org.proofcut.web.sheet.SheetView.GearView;
import org.proofcut.web.sheet.SheetView.PartView;
import org.proofcut.web.sheet.SheetView.PauseView;
import org.proofcut.web.sheet.SheetView.ProofPieceView;

/** Writes out one sheet as it stands. */
final class SheetViews {

  /** Cautions that stand in full on the sheet; the rest is one tap away. */
  private static final int IN_FULL = 3;

  private final Content content;
  private final Work work;
  private final SheetProgress progress;
  private final OperationSheet sheet;
  private final Shows shows;
  private final Typed typed;
  private final Instant now;

  SheetViews(
      Content content, Work work, SheetProgress progress, Shows shows, Typed typed, Instant now) {
    this.content = content;
    this.work = work;
    this.progress = progress;
    this.sheet = progress.sheet();
    this.shows = shows;
    this.typed = typed;
    this.now = now;
  }

  SheetView view() {
    var setup = progress.setup();
    var wording = content.wording().operations().get(sheet.operation().kind().id());
    var machine = setup.map(one -> one.machine().kind()).orElse("none");
    var cautions = cautions(Finding.Effect.CAUTION);
    int inFull = Math.min(IN_FULL, cautions.size());
    var now = new NowViews(content, work, progress, shows, typed, this::carries).now();
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
        cautions(Finding.Effect.STOP),
        setup.map(this::figures).orElseGet(this::caseFigures),
        setup.map(this::facts).orElse(List.of()),
        setup.map(this::passes).orElse(List.of()),
        setup.map(this::plan).orElseGet(this::elevation),
        setup.map(this::section).orElse(null),
        setup.map(one -> one.feed().words()).orElse(null),
        setup.map(one -> one.feed().why()).orElse(null),
        wording.holdOn(machine),
        Optional.ofNullable(content.wording().cutterChanges().get(machine))
            .map(change -> change.steps())
            .orElse(List.of()),
        refused(),
        proofPieces(),
        cautions.subList(0, inFull),
        cautions.subList(inFull, cautions.size()),
        gear(),
        parts(),
        wording.steps(),
        now,
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
      case BEFORE_POWER, PROOF, CUT, LEAVE_SAFE, DONE -> true;
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

  // ---- what is set ---------------------------------------------------------------------------

  private List<FigureView> figures(Setup setup) {
    return setup.settings().stream().map(this::figure).toList();
  }

  private List<FigureView> caseFigures() {
    return work.plan().caseFigures(sheet).stream().map(this::figure).toList();
  }

  private FigureView figure(CaseFigure figure) {
    var shown = Scale.rule(shows.unit()).show(figure.value().value());
    return new FigureView(
        figure.name(),
        figure.from(),
        shown,
        null,
        shows.leftover(shown),
        WorkingLine.of(figure.value(), shows.caliper()));
  }

  private FigureView figure(Setting setting) {
    var shown = shows.figure(setting);
    return new FigureView(
        setting.role().words(),
        setting.from(),
        shown,
        shows.rule(setting),
        note(setting, shown),
        WorkingLine.of(setting.set(), shows.caliper()));
  }

  private String note(Setting setting, Shown shown) {
    var planned =
        sheet.operation().setup().flatMap(setup -> setup.setting(setting.role())).orElseThrow();
    var moved = setting.set().value().minus(planned.set().value());
    return moved.isZero()
        ? shows.leftover(shown)
        : "Planned "
            + shows.figure(planned)
            + "; the proof cut made it "
            + shows.fine(moved.abs())
            + (moved.isPositive() ? " more." : " less.");
  }

  private List<FactView> facts(Setup setup) {
    var speed = setup.speed();
    var facts = new ArrayList<FactView>();
    facts.add(new FactView("machine", setup.machine().name(), null));
    facts.add(new FactView("cutter", setup.cutter().name(), null));
    facts.add(
        new FactView(
            "speed step",
            speed.step().mark(),
            String.format(
                Locale.ROOT, "%,d/min, rim %s", speed.step().perMinute(), speed.rim().value())));
    facts.add(new FactView("passes", Integer.toString(setup.passes().size()), null));
    facts.add(new FactView("guided by", setup.guide().words(), null));
    return facts;
  }

  private List<String> passes(Setup setup) {
    return setup.passes().size() == 1
        ? List.of()
        : setup.passes().stream().map(pass -> pass(pass, setup)).toList();
  }

  private String pass(Pass pass, Setup setup) {
    var strip = setup.usesStrip() ? pass.strips("in", "out") + ", " : "";
    var meets =
        switch (pass.engages()) {
          case BOTH_SIDES -> "full width, held to the guide";
          case AWAY_FROM_GUIDE -> "new wood only on the side away from the fence";
          case TOWARD_GUIDE -> "new wood only on the side of the straightedge";
        };
    return strip + shows.text(pass.depth().value()) + " deep: " + meets;
  }

  private Drawn plan(Setup setup) {
    return new Drawn(
        MachinePlan.of(sheet.operation(), setup, shows.unit(), 600),
        MachinePlan.of(sheet.operation(), setup, shows.unit(), 350));
  }

  /** The case that is put together, where no machine is to be drawn. */
  private Drawn elevation() {
    return new Drawn(
        CaseElevation.of(work.plan().finished(), shows.unit(), 600),
        CaseElevation.of(work.plan().finished(), shows.unit(), 350));
  }

  private Drawn section(Setup setup) {
    return new Drawn(
        CutSection.of(sheet.operation(), setup, shows.unit(), 600),
        CutSection.of(sheet.operation(), setup, shows.unit(), 350));
  }

  private List<String> refused() {
    return sheet
        .operation()
        .choice()
        .map(
            choice ->
                choice.refused().stream()
                    .map(
                        one ->
                            one.machine()
                                + ", "
                                + one.cutter()
                                + ": "
                                + one.why().what()
                                + ". "
                                + one.why().instead()
                                + ".")
                    .toList())
        .orElse(List.of());
  }

  private List<ProofPieceView> proofPieces() {
    return sheet.proofPieces().stream()
        .map(
            piece ->
                new ProofPieceView(
                    piece.sheet()
                        + ", at least "
                        + shows.text(piece.alongGuide())
                        + " along the guide and "
                        + shows.text(piece.acrossGuide())
                        + " out from it: "
                        + piece.purpose()))
        .toList();
  }

  // ---- what can hurt, what is worn -----------------------------------------------------------

  private List<CautionView> cautions(Finding.Effect effect) {
    return sheet.findings().stream()
        .filter(finding -> finding.effect() == effect)
        .map(this::caution)
        .toList();
  }

  private CautionView caution(Finding finding) {
    boolean gearAlone =
        finding.controls().stream().allMatch(control -> control.kind() == Control.Kind.GEAR);
    var actions = finding.controls().stream().map(Control::action).toList();
    var seen =
        finding.seen().stream()
            .map(one -> one.name().replace('_', ' ') + " " + seen(one.value()))
            .toList();
    return new CautionView(
        finding.word(),
        finding.hazard() + (gearAlone ? " Only gear stands between it and you." : ""),
        actions,
        finding.sourceSays().isEmpty()
            ? finding.because().text()
            : finding.sourceSays() + " (" + finding.because().text() + ")",
        "Rule " + finding.rule() + (seen.isEmpty() ? "" : ": " + String.join(", ", seen)),
        Sign.GENERAL_WARNING);
  }

  private String seen(Object value) {
    return value instanceof Length length ? shows.text(length) : String.valueOf(value);
  }

  private List<GearView> gear() {
    boolean asked = progress.stage() == Stage.BEFORE_POWER && isOpen();
    return sheet.checklist().at(Pause.BEFORE_POWER).stream()
        .filter(Item.Gear.class::isInstance)
        .map(Item.Gear.class::cast)
        .map(gear -> gear(gear, asked))
        .toList();
  }

  private GearView gear(Item.Gear gear, boolean asked) {
    var name =
        gear.on()
            ? capital(gear.name())
            : capital(content.wording().gear().get(gear.kind()).name()) + " off";
    var place =
        gear.on() && !gear.atHand()
            ? "none in the shop"
            : gear.place().isEmpty() && gear.on() ? "no place entered" : gear.place();
    var answer = progress.answers().get(gear.id());
    return new GearView(
        sign(gear),
        name,
        place,
        gear.ask(),
        answer,
        gear.on() ? null : Boolean.TRUE,
        changedSince(gear),
        asked && answer == null ? action() : null,
        carries(
            new Carried("act", "confirm"),
            new Carried("item", gear.id()),
            new Carried("answer", gear.answer())));
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

  private Sign sign(Item.Gear gear) {
    var kind = content.wording().gear().get(gear.kind());
    var number = gear.on() ? kind.sign() : kind.offSign().orElse("");
    return Arrays.stream(Sign.values())
        .filter(sign -> !number.isEmpty() && sign.see().equals(number))
        .findFirst()
        .orElse(gear.on() ? Sign.MUST : Sign.NO_REACHING_IN);
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
              details.add(handling.leads().words() + " leads");
              handling.breakout().ifPresent(details::add);
            });
    return String.join(" · ", details);
  }

  // ---- where the work stands -----------------------------------------------------------------

  private List<PauseView> pauses() {
    var stage = progress.stage();
    var pauses = new ArrayList<PauseView>();
    pauses.add(pause(cuts() ? "Set" : "Get ready", stage, Stage.SET));
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
