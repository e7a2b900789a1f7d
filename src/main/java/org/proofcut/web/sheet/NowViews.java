package org.proofcut.web.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.proofcut.bench.Work;
import org.proofcut.content.Content;
import org.proofcut.core.checklist.Item;
import org.proofcut.core.plan.OperationSheet;
import org.proofcut.core.proof.Verdict;
import org.proofcut.core.proof.Verdict.Outcome;
import org.proofcut.core.run.ProofState;
import org.proofcut.core.run.SheetProgress;
import org.proofcut.core.safety.Check.Pause;
import org.proofcut.core.setup.Measure;
import org.proofcut.core.setup.Setting;
import org.proofcut.web.part.Carried;
import org.proofcut.web.reading.AidReads;
import org.proofcut.web.reading.Shows;
import org.proofcut.web.reading.Today;
import org.proofcut.web.reading.Verdicts;
import org.proofcut.web.reading.Verdicts.VerdictView;
import org.proofcut.web.sheet.SheetView.ItemView;
import org.proofcut.web.sheet.SheetView.Now;
import org.proofcut.web.sheet.SheetView.Question;
import org.proofcut.web.sheet.SheetView.Reason;
import org.proofcut.web.sheet.SheetViews.Typed;

/** The one thing to do now, whatever pause the sheet is at. */
final class NowViews {

  private final Content content;
  private final Work work;
  private final SheetProgress progress;
  private final OperationSheet sheet;
  private final Shows shows;
  private final Typed typed;
  private final Carrier carrier;
  private final Today today;

  /** Adds to a form what every form of this sheet sends along. */
  interface Carrier {
    List<Carried> with(Carried... own);
  }

  NowViews(
      Content content,
      Work work,
      SheetProgress progress,
      Shows shows,
      Typed typed,
      Carrier carrier,
      Today today) {
    this.content = content;
    this.work = work;
    this.progress = progress;
    this.sheet = progress.sheet();
    this.shows = shows;
    this.typed = typed;
    this.carrier = carrier;
    this.today = today;
  }

  Now now() {
    if (work.isStopped()) {
      return says(
          "Nothing can be done here now",
          "Design or shop changed since this sheet was made. It can be read; it can't be worked.",
          "/jobs/" + work.job().id());
    }
    return switch (progress.stage()) {
      case LOCKED -> locked();
      case SET ->
          items(cuts() ? "Set, power off" : "Get ready", Pause.SET, lostProof() + corrected());
      case MACHINE ->
          items(
              "The machine, power off",
              Pause.MACHINE,
              "Asked once while you go on at this machine, and again after a cutter change.");
      case BEFORE_POWER ->
          items(
              cuts() ? "Before power" : "Before you begin",
              Pause.BEFORE_POWER,
              "Put on and take off first, then look." + lacking());
      case PROOF -> progress.proof().opensTheCut() ? items("Proof cut", Pause.PROOF, "") : proof();
      case CUT -> cut();
      case LEAVE_SAFE -> leaveSafe();
      case DONE -> done();
    };
  }

  private Now locked() {
    return says(
        "Not open yet",
        progress.lockedBecause() + ". All of it can be read." + aidsLacking(),
        null);
  }

  /** Why a rule may have stopped the sheet: what it looks for is there, and not to be used. */
  private String aidsLacking() {
    return sheet.checklist().items().stream()
        .filter(Item.Look.class::isInstance)
        .map(look -> AidReads.of((Item.Look) look, today))
        .filter(AidReads::lacking)
        .flatMap(aids -> aids.lines().stream())
        .distinct()
        .map(line -> " " + line + ".")
        .collect(Collectors.joining());
  }

  private String corrected() {
    boolean moved =
        progress.attempt() > 1
            && progress.open(Pause.SET).stream().allMatch(Item.Figure.class::isInstance);
    return moved ? "The last proof cut asked for another figure: set it anew." : "";
  }

  /** Power and cut stay locked, and why. */
  private String lacking() {
    var lacking = progress.lacking();
    if (lacking.isEmpty()) {
      return "";
    }
    boolean law = lacking.stream().anyMatch(gear -> gear.law().isPresent());
    return " Nothing in the shop meets: "
        + lacking.stream().map(Item.Gear::wanted).collect(Collectors.joining("; "))
        + ". Power and cut stay locked until you get it"
        + (law
            ? ". It rests on law here: no reason opens it."
            : " or record why you work without.");
  }

  // ---- items ---------------------------------------------------------------------------------

  private Now items(String heading, Pause pause, String says) {
    var open = progress.open(pause);
    var reasons =
        open.stream()
            .filter(Item.Gear.class::isInstance)
            .map(Item.Gear.class::cast)
            .filter(gear -> gear.on() && gear.law().isEmpty())
            .map(this::goingWithout)
            .collect(Collectors.toCollection(ArrayList::new));
    open.stream()
        .findFirst()
        .filter(Item.Look.class::isInstance)
        .map(Item.Look.class::cast)
        .ifPresent(look -> reasons.add(goingOn(look)));
    return new Now(
        heading,
        says,
        itemViews(pause),
        nextFigure(pause).map(this::readBack).orElse(null),
        List.of(),
        null,
        List.of(),
        reasons,
        null);
  }

  /** Looks and figures one after another; only the first open one can be answered. */
  private List<ItemView> itemViews(Pause pause) {
    var views = new ArrayList<ItemView>();
    boolean found = false;
    for (var item : sheet.checklist().at(pause)) {
      if (item instanceof Item.Gear) {
        continue;
      }
      boolean done = progress.isConfirmed(item);
      boolean next = !done && !found && gearIsAnswered(pause);
      found |= !done;
      views.add(view(views.size() + 1, item, done, next));
    }
    return views;
  }

  private boolean gearIsAnswered(Pause pause) {
    return progress.open(pause).stream().noneMatch(Item.Gear.class::isInstance);
  }

  private ItemView view(int number, Item item, boolean done, boolean next) {
    if (item instanceof Item.Figure figure) {
      var setting = setting(figure);
      return new ItemView(
          number,
          setting.role().words() + ", " + setting.from(),
          shows.figure(setting).text(),
          List.of(),
          done ? Boolean.TRUE : null,
          next ? Boolean.TRUE : null,
          null,
          List.of());
    }
    var look = (Item.Look) item;
    var aids = AidReads.of(look, today);
    return new ItemView(
        number,
        look.ask(),
        done ? progress.answers().get(look.id()) : look.answer(),
        aids.lines(),
        done ? Boolean.TRUE : null,
        next ? Boolean.TRUE : null,
        next && !aids.lacking() ? action() : null,
        carrier.with(
            new Carried("act", "confirm"),
            new Carried("item", look.id()),
            new Carried("answer", look.answer())));
  }

  private Optional<Item.Figure> nextFigure(Pause pause) {
    return progress.open(pause).stream()
        .findFirst()
        .filter(Item.Figure.class::isInstance)
        .map(Item.Figure.class::cast);
  }

  /** A figure is confirmed by acting on it: it is read back, not ticked. */
  private Question readBack(Item.Figure figure) {
    var setting = setting(figure);
    return question(
        "Set the " + Verdicts.lower(setting.role().words()) + " to " + shows.figure(setting).text(),
        Shows.readBack(setting.role()),
        capitalFrom(setting) + ". Key in what you read, not what it should be.",
        "confirm",
        figure.id(),
        "Record what I read",
        carrier.with(new Carried("act", "confirm"), new Carried("item", figure.id())));
  }

  private static String capitalFrom(Setting setting) {
    return SheetViews.capital(setting.from());
  }

  private Setting setting(Item.Figure figure) {
    return progress.setup().flatMap(setup -> setup.setting(figure.role())).orElseThrow();
  }

  private Reason goingWithout(Item.Gear gear) {
    var called = gear.called(today.day(), today.out().keySet());
    return reason(
        "Not wearing: " + called,
        "Not wearing " + Verdicts.lower(called) + ", because",
        "without",
        gear.id(),
        "Record the reason and go on without");
  }

  /** A look that can't be answered so must not be answered falsely. */
  private Reason goingOn(Item.Look look) {
    return reason(
        "It is otherwise",
        "Not \u201c" + look.answer() + "\u201d: what is there instead, and why it may be",
        "without",
        look.id(),
        "Record the reason and go on");
  }

  // ---- proof ---------------------------------------------------------------------------------

  private Now proof() {
    if (progress.proof() instanceof ProofState.ReadAgainFirst) {
      return readAgain();
    }
    var verdicts =
        progress.verdicts().stream()
            .filter(verdict -> verdict.outcome() != Outcome.MORE_READINGS)
            .map(this::verdict)
            .toList();
    var next =
        progress.verdicts().stream()
            .filter(verdict -> verdict.outcome() == Outcome.MORE_READINGS)
            .findFirst();
    boolean off =
        next.isEmpty() && progress.verdicts().stream().anyMatch(verdict -> !verdict.isProven());
    return new Now(
        "Proof cut" + (progress.attempt() > 1 ? ", number " + progress.attempt() : ""),
        lostProof() + "Cut the scrap piece just as the parts will be cut, then measure it.",
        List.of(),
        next.map(this::measure).orElse(null),
        verdicts,
        off ? newProof() : null,
        carrier.with(new Carried("act", "correct")),
        List.of(dropped(), override(), disturbed()).stream().flatMap(Optional::stream).toList(),
        null);
  }

  private String newProof() {
    return progress.corrections().corrections().isEmpty()
        ? "Begin a new proof cut"
        : "Take over the new figure";
  }

  private Now readAgain() {
    var first = progress.setup().orElseThrow().settings().get(0);
    return new Now(
        "Proven on an earlier day",
        "One reading first: is the "
            + Verdicts.lower(first.role().words())
            + " still where it was proven? Nothing is cut before.",
        List.of(),
        question(
            "The "
                + Verdicts.lower(first.role().words())
                + " was proven at "
                + shows.figure(first).text(),
            Shows.readBack(first.role()),
            capitalFrom(first) + ". Another reading than before loses the proof.",
            "read-again",
            "",
            "Record what I read",
            carrier.with(new Carried("act", "read-again"))),
        List.of(),
        null,
        List.of(),
        disturbed().stream().toList(),
        null);
  }

  private Question measure(Verdict verdict) {
    var measure = verdict.measure();
    int number = verdict.found().size() + 1;
    var soFar =
        verdict.found().isEmpty()
            ? ""
            : " So far "
                + verdict.found().stream().map(shows::fine).collect(Collectors.joining(" and "))
                + ".";
    return question(
        Shows.dimension(measure.dimension()) + ", reading " + number + " of " + measure.readings(),
        "What does the caliper say?",
        "Measure " + measure.what() + "." + soFar + entering(measure),
        "reading",
        measure.dimension().name(),
        "Record this reading",
        carrier.with(
            new Carried("act", "reading"),
            new Carried("item", measure.dimension().name()),
            new Carried("attempt", Integer.toString(progress.attempt()))));
  }

  private String entering(Measure measure) {
    return measure.dimension() == Measure.Dimension.WIDTH
        ? sheet
            .operation()
            .entering()
            .map(
                ends ->
                    " What goes in measures "
                        + shows.fine(ends.least())
                        + " to "
                        + shows.fine(ends.most())
                        + ".")
            .orElse("")
        : "";
  }

  private VerdictView verdict(Verdict verdict) {
    return new Verdicts(shows, SheetViews.fit(content))
        .of(verdict, sheet.operation(), progress.setup().orElseThrow());
  }

  private String lostProof() {
    if (!(progress.proof() instanceof ProofState.Lost lost)) {
      return "";
    }
    if (!lost.because().isEmpty()) {
      return "The proof is lost: " + lost.because() + ". ";
    }
    var changes =
        lost.changed().stream()
            .map(
                change ->
                    change.what()
                        + (change.was().isEmpty() ? "" : " was " + change.was())
                        + (change.is().isEmpty() ? ", is gone" : ", is " + change.is()))
            .collect(Collectors.joining("; "));
    return "The proof is lost, because the plan changed: " + changes + ". ";
  }

  private Optional<Reason> dropped() {
    boolean any = progress.verdicts().stream().anyMatch(verdict -> !verdict.found().isEmpty());
    return any
        ? Optional.of(
            new Reason(
                "drop",
                "A reading was wrong: measure again",
                "",
                "",
                null,
                "Throw the readings of this proof cut away",
                carrier.with(new Carried("act", "drop"))))
        : Optional.empty();
  }

  private Optional<Reason> override() {
    return Optional.of(
        reason(
            "Cut without a proof",
            "Cutting good stock without a proof, because",
            "override",
            "",
            "Record the reason and open the real cut"));
  }

  private Optional<Reason> disturbed() {
    return Optional.of(
        reason(
            "Something was moved or knocked",
            "What was moved",
            "disturbed",
            "",
            "Record it and set up again"));
  }

  private Reason reason(String heading, String label, String act, String item, String button) {
    return new Reason(
        Typed.field(act, item),
        heading,
        label,
        typed.kept(act, item),
        typed.at(act, item),
        button,
        carrier.with(new Carried("act", act), new Carried("item", item)));
  }

  // ---- real parts, leaving, done -------------------------------------------------------------

  private Now cut() {
    boolean cuts = cuts();
    var says =
        progress.proof() instanceof ProofState.Overridden overridden
            ? "Cut without a proof, because " + overridden.reason() + ". "
            : sheet.needsProof() ? "The set-up is proven. " : "";
    return new Now(
        cuts ? "The real parts" : "Put it together",
        says + (cuts ? "Tick each part when it is cut." : "Tick each part when it is in place."),
        List.of(),
        null,
        List.of(),
        null,
        List.of(),
        cuts ? disturbed().stream().toList() : List.of(),
        null);
  }

  private Now leaveSafe() {
    boolean all = progress.open(Pause.LEAVE_SAFE).isEmpty();
    return new Now(
        "Leave safe",
        "",
        itemViews(Pause.LEAVE_SAFE),
        null,
        List.of(),
        all ? "Sign off sheet " + sheet.number() : null,
        carrier.with(new Carried("act", "sign-off")),
        List.of(),
        null);
  }

  private Now done() {
    var next = work.progress().current();
    return new Now(
        "Signed off",
        next.isPresent() ? "" : "Every sheet of this job is signed off.",
        List.of(),
        null,
        List.of(),
        null,
        List.of(),
        List.of(),
        next.map(open -> "/jobs/" + work.job().id() + "/sheets/" + open.sheet().number())
            .orElse("/jobs/" + work.job().id() + "/sheets"));
  }

  private static Now says(String heading, String words, String next) {
    return new Now(heading, words, List.of(), null, List.of(), null, List.of(), List.of(), next);
  }

  private Question question(
      String heading,
      String label,
      String hint,
      String act,
      String item,
      String button,
      List<Carried> carries) {
    return new Question(
        heading,
        label,
        hint,
        typed.kept(act, item),
        shows.unit().symbol(),
        typed.at(act, item),
        button,
        carries);
  }

  private String action() {
    return "/jobs/" + work.job().id() + "/sheets/" + sheet.number();
  }

  private boolean cuts() {
    return sheet.operation().kind().cuts();
  }
}
