package org.proofcut.web.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.proofcut.core.casework.CaseFigure;
import org.proofcut.core.checklist.CutterChange;
import org.proofcut.core.checklist.Item;
import org.proofcut.core.checklist.Wording;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.method.Choice.Refused;
import org.proofcut.core.operation.Handling;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.operation.PartCut;
import org.proofcut.core.plan.Marks;
import org.proofcut.core.plan.OperationSheet;
import org.proofcut.core.plan.Plan;
import org.proofcut.core.plan.ProofPiece;
import org.proofcut.core.setup.AngleSetting;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.KnifeMarks;
import org.proofcut.core.setup.Measure;
import org.proofcut.core.setup.Pass;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.setup.Speed;
import org.proofcut.core.shop.GearOffer;
import org.proofcut.core.stock.Sheet;

/** A plan with its operation sheets. */
final class SheetJson {

  private SheetJson() {}

  /** A whole plan. */
  @Schema(name = "Plan")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Whole(
      @Schema(description = "whether work could begin") boolean sound,
      @Schema(description = "which plan of the job this is, once work has begun")
          Optional<Integer> revision,
      List<JobJson.Piece> parts,
      List<OneSheet> sheets,
      @Schema(description = "all that is wrong with design, shop and sheets")
          List<ProblemDetail.One> problems) {}

  /** The sheet of one operation. */
  @Schema(name = "OperationSheet")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record OneSheet(
      String id,
      int number,
      String kind,
      String title,
      String purpose,
      @Schema(description = "how the work is held and supported") List<String> hold,
      @Schema(description = "what is done, where no cutter does it") List<String> steps,
      @Schema(description = "left out for work without a cutter") Optional<SetUp> setup,
      @Schema(description = "measured or struck on the case itself, where no cutter runs")
          List<OnCase> caseFigures,
      @Schema(description = "ways that were tried first, and why not") List<NotSo> refused,
      List<Run> parts,
      @Schema(description = "names of the sheets that are cut") List<String> cut,
      @Schema(description = "names of the sheets whose parts go in") List<String> entering,
      @Schema(description = "operations whose proof its size stands on") List<String> waitsFor,
      @Schema(description = "the gravest first") List<RuleJson.Found> findings,
      List<Asked> checklist,
      List<Scrap> proofPieces,
      @Schema(description = "whether a proof cut is asked for") boolean needsProof,
      @Schema(description = "of the marks; sent with every act") String fingerprint,
      List<Mark> marks) {}

  /** One state of one machine. */
  @Schema(name = "SetUp")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record SetUp(
      Machine machine,
      Cutter cutter,
      @Schema(description = "the steps of changing the cutter, power off")
          Optional<Change> cutterChange,
      String guide,
      List<Figure> figures,
      @Schema(
              description =
                  "centres of holes, all from the one reference end; empty for other cuts")
          List<LengthJson.Figure> holes,
      @Schema(description = "none where the machine has no angle to set") List<Angled> angles,
      List<OnePass> passes,
      Turning speed,
      Direction feed,
      List<Measured> measures,
      @Schema(description = "what proof cuts have taught that the figures use, in words")
          List<String> learned,
      @Schema(description = "left out where no knives turn") Optional<LeftByKnives> knifeMarks) {}

  /** The machine of a set-up. */
  @Schema(name = "Machine")
  record Machine(String id, String kind, String name) {}

  /** The cutter of a set-up. */
  @Schema(name = "Cutter")
  record Cutter(String id, String name, LengthJson.Plain diameter, int edges) {}

  /** How a cutter is changed. */
  @Schema(name = "CutterChange")
  record Change(List<String> steps, LengthJson.Cited because) {}

  /** A figure to set. */
  @Schema(name = "Setting")
  record Figure(
      String role,
      String words,
      @Schema(description = "between which two things it is measured") String from,
      LengthJson.Figure set,
      @Schema(description = "smallest change that can be set") LengthJson.Plain step) {}

  /** An angle to set. */
  @Schema(name = "AngleSetting")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Angled(
      String role,
      String words,
      @Schema(description = "left or right, as seen at the machine; left out where it is square")
          Optional<String> toward,
      @Schema(description = "where it is measured from") String from,
      @Schema(description = "the angle aimed at") String exact,
      @Schema(description = "on the machine's own steps") String set,
      @Schema(description = "the angle aimed at less the angle as set") String leftOver,
      @Schema(description = "smallest change that can be set") String step,
      List<LengthJson.Line> working) {}

  /** A length that is measured or struck on the case. */
  @Schema(name = "CaseFigure")
  record OnCase(
      String name,
      @Schema(description = "between which two things it is measured") String from,
      LengthJson.Figure value) {}

  /** One run of the batch past the cutter. */
  @Schema(name = "Pass")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record OnePass(
      int number,
      boolean stripOn,
      @Schema(description = "how many strips of a pack are in; left out where there is one or none")
          Optional<Integer> strips,
      @Schema(description = "how the work is turned; left out where it lies the same way in all")
          Optional<String> lies,
      LengthJson.Figure depth,
      @Schema(description = "what the cutter covers, from the reference edge")
          LengthJson.Range takes,
      @Schema(description = "the side of the cutter that meets new wood") String engages,
      @Schema(description = "what knives take off; left out for every other cutter")
          Optional<Planed> planed,
      @Schema(description = "where the fence stands; left out where it never moves")
          Optional<LengthJson.Figure> guideAt) {}

  /** What knives take off a whole face or edge. */
  @Schema(name = "PlanedOff")
  record Planed(String where, LengthJson.Plain takes, LengthJson.Plain leaves) {}

  /** What turning knives leave on the face that goes past them. */
  @Schema(name = "KnifeMarks")
  record LeftByKnives(
      @Schema(description = "length of wood that goes by in a minute") LengthJson.Figure feed,
      LengthJson.Figure apart,
      Number perInch,
      @Schema(description = "marks to the inch that a finished face has at least") Number wanted,
      @Schema(description = "whether the face can be left as it comes") boolean fine) {}

  /** How fast the cutter turns. */
  @Schema(name = "Speed")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Turning(
      @Schema(description = "on the dial") String mark,
      String turnsPerMinute,
      Number limit,
      Number rim,
      @Schema(description = "left out where it is not told") Optional<Number> slowestFeed,
      @Schema(description = "left out where it is not told") Optional<Number> fastestFeed) {}

  /** A figure that is no length. */
  @Schema(name = "WorkedNumber")
  record Number(
      String name, String value, String unit, List<LengthJson.Line> working, String source) {}

  /** Which way the work or the machine moves. */
  @Schema(name = "Feed")
  record Direction(String direction, String words, String why) {}

  /** What is measured on a proof cut. */
  @Schema(name = "Measure")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Measured(
      String dimension,
      String what,
      LengthJson.Figure target,
      @Schema(description = "readings that prove it") LengthJson.Range accepted,
      @Schema(description = "how many readings are taken") int readings,
      @Schema(description = "left out where no setting moves it") Optional<String> correctedBy,
      @Schema(description = "the angle that shows in it; left out where none does")
          Optional<String> shows,
      @Schema(description = "how many times over a move of that setting shows; left out for once")
          Optional<Integer> timesMoved) {}

  /** A way that was refused. */
  @Schema(name = "Refused")
  record NotSo(String machine, String cutter, String reason, String what, String instead) {}

  /** A piece to run and tick. */
  @Schema(name = "PartCut")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Run(
      String id,
      String name,
      Optional<LengthJson.Figure> size,
      @Schema(description = "the edge that distances are taken from") String reference,
      Optional<Lies> handling) {}

  /** How a piece lies at the machine. */
  @Schema(name = "Handling")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Lies(
      String face,
      String rides,
      String leads,
      String trails,
      @Schema(description = "where the end lies that a row of holes begins at")
          Optional<String> end,
      @Schema(description = "what to do where the cutter comes out") Optional<String> breakout) {}

  /** An item of the checklist; which fields it has depends on its type. */
  @Schema(name = "ChecklistItem")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Asked(
      @Schema(description = "figure, look or gear") String type,
      String id,
      String pause,
      @Schema(description = "of a figure: which setting is read back") Optional<String> role,
      @Schema(description = "of a look and of gear") Optional<String> ask,
      @Schema(description = "of a look and of gear: what is right") Optional<String> answer,
      Optional<Gear> gear) {}

  /** A piece of gear to put on or take off. */
  @Schema(name = "Gear")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Gear(
      String kind,
      boolean on,
      String name,
      String place,
      @Schema(description = "whether the shop owns one that will do, whatever the day")
          boolean atHand,
      @Schema(description = "the marks that are needed; left out where any will do")
          Optional<String> needed,
      @Schema(description = "all that the shop owns of the kind, the best choice first")
          List<Piece> pieces,
      @Schema(description = "the law that it rests on: no reason sets it aside")
          Optional<LengthJson.Cited> law,
      @Schema(description = "why it is off although another rule wants it on")
          Optional<String> why) {}

  /** One owned piece of gear. */
  @Schema(name = "GearPiece")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Piece(
      String id,
      String name,
      String marked,
      String place,
      @Schema(description = "why it never meets the need as it is") Optional<String> unfit,
      @Schema(description = "the last day that it serves") Optional<String> lastDay) {

    static Piece of(GearOffer.Piece piece) {
      return new Piece(
          piece.id(),
          piece.name(),
          piece.marked(),
          piece.place(),
          piece.unfit(),
          piece.life().lastDay().map(Object::toString));
    }
  }

  /** Scrap to prove a set-up on. */
  @Schema(name = "ProofPiece")
  record Scrap(
      String sheet, LengthJson.Plain alongGuide, LengthJson.Plain acrossGuide, String purpose) {}

  /** One thing that a set-up stands on. */
  @Schema(name = "Mark")
  record Mark(String what, String value) {}

  static Whole whole(
      Plan plan, Optional<Integer> revision, List<ProblemDetail.One> problems, Wording wording) {
    var unit = plan.finished().design().unit();
    return new Whole(
        plan.isSound(),
        revision,
        JobJson.parts(plan.finished(), unit),
        plan.sheets().stream()
            .map(sheet -> sheet(sheet, plan.caseFigures(sheet), unit, wording))
            .toList(),
        problems);
  }

  static OneSheet sheet(
      OperationSheet sheet, List<CaseFigure> caseFigures, LengthUnit unit, Wording wording) {
    var operation = sheet.operation();
    var words = wording.operations().get(operation.kind().id());
    var machine = operation.setup().map(setup -> setup.machine().kind()).orElse("none");
    return new OneSheet(
        sheet.id(),
        sheet.number(),
        operation.kind().id(),
        operation.title(),
        words.purpose(),
        words.holdOn(machine),
        words.steps(),
        operation.setup().map(setup -> setup(setup, unit, wording)),
        caseFigures.stream()
            .map(one -> new OnCase(one.name(), one.from(), LengthJson.figure(one.value(), unit)))
            .toList(),
        refused(operation),
        operation.parts().stream().map(part -> run(part, unit)).toList(),
        names(operation.cutSheets()),
        names(operation.enteringSheets()),
        operation.waitsFor(),
        sheet.findings().stream().map(finding -> RuleJson.found(finding, unit)).toList(),
        sheet.checklist().items().stream().map(SheetJson::asked).toList(),
        sheet.proofPieces().stream().map(piece -> scrap(piece, unit)).toList(),
        sheet.needsProof(),
        sheet.marks().fingerprint(),
        sheet.marks().all().stream().map(SheetJson::mark).toList());
  }

  private static List<String> names(List<Sheet> sheets) {
    return sheets.stream().map(Sheet::name).toList();
  }

  private static List<NotSo> refused(Operation operation) {
    return operation.choice().stream()
        .flatMap(choice -> choice.refused().stream())
        .map(SheetJson::notSo)
        .toList();
  }

  private static NotSo notSo(Refused refused) {
    return new NotSo(
        refused.machine(),
        refused.cutter(),
        ShopJson.word(refused.why().reason()),
        refused.why().what(),
        refused.why().instead());
  }

  static SetUp setup(Setup setup, LengthUnit unit, Wording wording) {
    return new SetUp(
        new Machine(setup.machine().id(), setup.machine().kind(), setup.machine().name()),
        new Cutter(
            setup.cutter().id(),
            setup.cutter().name(),
            LengthJson.plain(setup.cutter().diameter(), unit),
            setup.cutter().edges()),
        Optional.ofNullable(wording.cutterChanges().get(setup.machine().kind()))
            .map(SheetJson::change),
        setup.guide().id(),
        figures(setup, unit),
        holes(setup, unit),
        setup.anglesSet().stream().map(angle -> angled(angle, unit)).toList(),
        setup.passes().stream().map(pass -> pass(pass, unit)).toList(),
        turning(setup.speed(), unit),
        new Direction(ShopJson.word(setup.feed()), setup.feed().words(), setup.feed().why()),
        setup.measures().stream().map(measure -> measured(measure, unit)).toList(),
        setup.taught(),
        setup.knifeMarks().map(marks -> marks(marks, unit)));
  }

  private static LeftByKnives marks(KnifeMarks marks, LengthUnit unit) {
    var perInch = marks.perInch().value();
    return new LeftByKnives(
        LengthJson.figure(marks.feed(), unit),
        LengthJson.figure(marks.apart(), unit),
        number(marks.perInch(), perInch.value().toPlainString(), perInch.unit(), unit),
        number(marks.wanted(), marks.wanted().value().toString(), perInch.unit(), unit),
        marks.areFine());
  }

  private static List<LengthJson.Figure> holes(Setup setup, LengthUnit unit) {
    return setup.asked() instanceof CutAsked.Bored bored
        ? bored.row().along().stream().map(hole -> LengthJson.figure(hole, unit)).toList()
        : List.of();
  }

  private static Change change(CutterChange change) {
    return new Change(change.steps(), LengthJson.cited(change.because()));
  }

  static List<Figure> figures(Setup setup, LengthUnit unit) {
    return setup.settings().stream().map(setting -> figure(setting, unit)).toList();
  }

  private static Figure figure(Setting setting, LengthUnit unit) {
    return new Figure(
        ShopJson.word(setting.role()),
        setting.role().words(),
        setting.from(),
        LengthJson.figure(setting.read(), unit),
        LengthJson.plain(setting.step(), unit));
  }

  private static Angled angled(AngleSetting angle, LengthUnit unit) {
    return new Angled(
        ShopJson.word(angle.role()),
        angle.role().words(),
        angle.toward().map(ShopJson::word),
        angle.from(),
        angle.exact().value().toString(),
        angle.set().value().toString(),
        angle.leftOver().toString(),
        angle.step().toString(),
        LengthJson.working(angle.set(), unit));
  }

  private static OnePass pass(Pass pass, LengthUnit unit) {
    return new OnePass(
        pass.number(),
        pass.stripOn(),
        pass.strips(),
        pass.lies().map(Pass.Lies::words),
        LengthJson.figure(pass.depth(), unit),
        LengthJson.range(pass.takes(), unit),
        ShopJson.word(pass.engages()),
        pass.planed()
            .map(
                off ->
                    new Planed(
                        off.where(),
                        LengthJson.plain(off.takes(), unit),
                        LengthJson.plain(off.leaves(), unit))),
        pass.guideAt().map(at -> LengthJson.figure(at, unit)));
  }

  private static Turning turning(Speed speed, LengthUnit unit) {
    Worked<Amount> rim = speed.rim();
    return new Turning(
        speed.step().mark(),
        Integer.toString(speed.step().perMinute()),
        number(speed.limit(), speed.limit().value().toString(), "turns a minute", unit),
        number(rim, unit),
        speed.feed().map(feed -> number(feed.least(), unit)),
        speed.feed().map(feed -> number(feed.most(), unit)));
  }

  private static Number number(Worked<Amount> worked, LengthUnit lengths) {
    var amount = worked.value();
    return number(worked, amount.value().toPlainString(), amount.unit(), lengths);
  }

  private static Number number(
      Worked<?> worked, String value, String valueUnit, LengthUnit lengths) {
    return new Number(
        worked.name(),
        value,
        valueUnit,
        LengthJson.working(worked, lengths),
        worked.source().text());
  }

  static Measured measured(Measure measure, LengthUnit unit) {
    return new Measured(
        ShopJson.word(measure.dimension()),
        measure.what(),
        LengthJson.figure(measure.target(), unit),
        LengthJson.range(measure.accepted(), unit),
        measure.readings(),
        measure.correctedBy().map(ShopJson::word),
        measure.angle().map(angle -> ShopJson.word(angle.role())),
        measure.timesMoved());
  }

  private static Run run(PartCut part, LengthUnit unit) {
    return new Run(
        part.id(),
        part.name(),
        part.size().map(size -> LengthJson.figure(size, unit)),
        part.reference().words(),
        part.handling().map(SheetJson::lies));
  }

  private static Lies lies(Handling handling) {
    return new Lies(
        handling.face(),
        handling.rides().words(),
        handling.leads().words(),
        handling.trails().words(),
        handling.end(),
        handling.breakout());
  }

  private static Asked asked(Item item) {
    var pause = ShopJson.word(item.pause());
    if (item instanceof Item.Figure figure) {
      var role = ShopJson.word(figure.role());
      return new Asked(
          "figure",
          item.id(),
          pause,
          Optional.of(role),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());
    }
    if (item instanceof Item.Look look) {
      return new Asked(
          "look",
          item.id(),
          pause,
          Optional.empty(),
          Optional.of(look.ask()),
          Optional.of(look.answer()),
          Optional.empty());
    }
    var gear = (Item.Gear) item;
    return new Asked(
        "gear",
        item.id(),
        pause,
        Optional.empty(),
        Optional.of(gear.ask()),
        Optional.of(gear.answer()),
        Optional.of(
            new Gear(
                gear.kind(),
                gear.on(),
                gear.name(),
                gear.place(),
                gear.atHand(),
                gear.offer().flatMap(GearOffer::needed),
                gear.offer().stream()
                    .flatMap(offer -> offer.pieces().stream())
                    .map(Piece::of)
                    .toList(),
                gear.law().map(LengthJson::cited),
                gear.why())));
  }

  private static Scrap scrap(ProofPiece piece, LengthUnit unit) {
    return new Scrap(
        piece.sheet(),
        LengthJson.plain(piece.alongGuide(), unit),
        LengthJson.plain(piece.acrossGuide(), unit),
        piece.purpose());
  }

  private static Mark mark(Marks.Mark mark) {
    return new Mark(mark.what(), mark.value());
  }
}
