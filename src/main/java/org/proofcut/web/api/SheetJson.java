package org.proofcut.web.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.proofcut.core.casework.CaseFigure;
import org.proofcut.core.checklist.Item;
import org.proofcut.core.checklist.Wording;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.method.Choice.Refused;
import org.proofcut.core.operation.Handling;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.operation.PartCut;
import org.proofcut.core.plan.Marks;
import org.proofcut.core.plan.OperationSheet;
import org.proofcut.core.plan.Plan;
import org.proofcut.core.plan.ProofPiece;
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
      @Schema(description = "left out for work without a cutter") Optional<MachineJson.SetUp> setup,
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

  /** A length that is measured or struck on the case. */
  @Schema(name = "CaseFigure")
  record OnCase(
      String name,
      @Schema(description = "between which two things it is measured") String from,
      LengthJson.Figure value) {}

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
      Optional<Gear> gear,
      @Schema(description = "of a look for work aids: each kind of which any will do")
          Optional<List<Aid>> aids) {}

  /** What the shop has of a kind of work aid. */
  @Schema(name = "AidAsked")
  record Aid(
      String kind,
      String name,
      @Schema(
              description =
                  "the best choice first; without id where one is at hand that was not entered by"
                      + " itself")
          List<Piece> pieces) {

    static Aid of(GearOffer offer) {
      return new Aid(offer.kind(), offer.name(), offer.pieces().stream().map(Piece::of).toList());
    }
  }

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

  /** One owned piece of gear, or one work aid. */
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
        operation.setup().map(setup -> MachineJson.setup(setup, unit, wording)),
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
          Optional.empty(),
          look.aids().map(offers -> offers.stream().map(Aid::of).toList()));
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
                gear.why())),
        Optional.empty());
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
