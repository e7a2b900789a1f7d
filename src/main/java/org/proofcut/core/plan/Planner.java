package org.proofcut.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.proofcut.core.casework.Case;
import org.proofcut.core.casework.CaseDesign;
import org.proofcut.core.casework.Casework;
import org.proofcut.core.casework.ProvenDepths;
import org.proofcut.core.casework.SpaceCheck;
import org.proofcut.core.checklist.Checklist;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.method.Methods;
import org.proofcut.core.operation.HandTask;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.operation.Operations;
import org.proofcut.core.operation.SingleCut;
import org.proofcut.core.safety.Finding;
import org.proofcut.core.safety.StepFacts;
import org.proofcut.core.setup.Conditions;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Learned;
import org.proofcut.core.setup.SawSlotSetup;
import org.proofcut.core.setup.StackChoice;
import org.proofcut.core.shop.Shop;
import org.proofcut.core.shop.StackedCutter;
import org.proofcut.core.shop.TableSaw;

/** Works out a whole job. The same inputs give the same plan. */
public final class Planner {

  private final Book book;

  public Planner(Book book) {
    this.book = book;
  }

  /** The plan before anything was proven. */
  public Plan plan(CaseDesign design, Shop shop) {
    return plan(design, shop, ProvenDepths.NONE);
  }

  /** The plan with the depths that proof cuts have found. */
  public Plan plan(CaseDesign design, Shop shop, ProvenDepths proven) {
    return plan(design, shop, proven, operation -> Learned.NOTHING);
  }

  /**
   * The plan with the depths that proof cuts have found, and with what earlier ones have taught.
   *
   * @param learned by the id of the operation
   */
  public Plan plan(
      CaseDesign design, Shop shop, ProvenDepths proven, Function<String, Learned> learned) {
    var designed = Casework.derive(design, book.caseLimits(), book.fitLimits());
    var finished = Casework.derive(design, book.caseLimits(), book.fitLimits(), proven);
    var problems = new ArrayList<>(designed.problems());
    if (Problem.anyStops(problems)) {
      return new Plan(designed, finished, List.of(), problems);
    }
    problems.addAll(inSpace(designed));
    var operations =
        Operations.of(
            designed,
            finished,
            book.fitLimits(),
            book.operationLimits(),
            operation ->
                new Methods(
                    shop,
                    new Conditions(
                        book.setupLimits(),
                        shop.aidsAtHand(),
                        design.unit(),
                        learned.apply(operation))));
    var sheets = new ArrayList<OperationSheet>();
    for (var operation : operations) {
      problems.addAll(noWay(operation));
      var sheet = sheet(sheets.size() + 1, operation, shop);
      problems.addAll(stopped(sheet));
      sheets.add(sheet);
    }
    return new Plan(designed, finished, sheets, problems);
  }

  /** One cut that belongs to no job. */
  public SinglePlan plan(SingleCut cut, Shop shop, LengthUnit unit) {
    return plan(cut, shop, unit, Learned.NOTHING);
  }

  /** One cut that belongs to no job, with what proof cuts have taught. */
  public SinglePlan plan(SingleCut cut, Shop shop, LengthUnit unit, Learned learned) {
    var conditions = new Conditions(book.setupLimits(), shop.aidsAtHand(), unit, learned);
    var operation = cut.by(new Methods(shop, conditions));
    return new SinglePlan(
        sheet(1, operation, shop), stacks(operation, shop, conditions), noWay(operation));
  }

  /** One task without a cutter that belongs to no job. */
  public SinglePlan plan(HandTask task, Shop shop) {
    return new SinglePlan(
        sheet(1, task.operation(), Facts.of(task, shop), shop), List.of(), List.of());
  }

  private static List<StackChoice> stacks(Operation operation, Shop shop, Conditions conditions) {
    var setup = operation.setup();
    if (setup.isEmpty()
        || !(setup.get().cutter() instanceof StackedCutter stack)
        || !(setup.get().machine() instanceof TableSaw saw)
        || !(setup.get().asked() instanceof CutAsked.Slot slot)) {
      return List.of();
    }
    return shop.cutters(StackedCutter.class)
        .filter(owned -> owned.id().equals(stack.id()))
        .flatMap(
            owned ->
                operation.entering().stream()
                    .flatMap(
                        entering ->
                            SawSlotSetup.choices(slot, saw, owned, entering, conditions).stream()))
        .toList();
  }

  private OperationSheet sheet(int number, Operation operation, Shop shop) {
    return sheet(number, operation, Facts.of(operation, shop, book.dust()), shop);
  }

  private OperationSheet sheet(int number, Operation operation, StepFacts facts, Shop shop) {
    var findings = book.rules().judge(facts);
    return new OperationSheet(
        number,
        operation,
        findings,
        Checklist.of(operation, findings, shop, book.wording()),
        ProofPieces.of(operation, book.operationLimits()),
        Marks.of(operation));
  }

  /**
   * The second opinion. The holes it finds are those that the design warns of; anything else would
   * be a fault of this program, and stops the work.
   */
  private List<Problem> inSpace(Case designed) {
    var found =
        SpaceCheck.assemble(
            designed, book.fitLimits().mostRoom().value(), book.caseLimits().backEase().value());
    return designed.design().joinery().closes() ? found.faults() : List.of();
  }

  /**
   * A sheet that a rule stops is told before anything is cut. Work may begin: shop or stock can be
   * put right before that sheet is reached, and the sheet itself stays shut.
   */
  private static List<Problem> stopped(OperationSheet sheet) {
    return sheet.findings().stream()
        .filter(finding -> finding.effect() == Finding.Effect.STOP)
        .map(
            finding ->
                Problem.warns(
                    "operation:" + sheet.id(),
                    "Sheet %d, %s, is stopped. %s"
                        .formatted(
                            sheet.number(),
                            sheet.operation().title(),
                            withoutFullStop(finding.hazard())),
                    "nothing that the rule " + finding.rule() + " forbids",
                    withoutFullStop(finding.controls().get(0).action())))
        .toList();
  }

  /** A problem's words go without: whoever prints them sets it. */
  private static String withoutFullStop(String sentence) {
    return sentence.replaceFirst("\\.$", "");
  }

  /** What the maker can do about an operation for which no machine and cutter was found. */
  private static List<Problem> noWay(Operation operation) {
    if (operation.choice().isEmpty() || operation.setup().isPresent()) {
      return List.of();
    }
    var refused = operation.choice().get().refused();
    if (refused.isEmpty()) {
      return List.of(
          Problem.stops(
              "operation:" + operation.id(),
              operation.title() + ": the shop has no machine or no cutter for it",
              "a machine of the right kind, and a cutter that fits it",
              "Enter one in the shop"));
    }
    var telling = operation.choice().get().telling().orElseThrow();
    return List.of(
        Problem.stops(
            "operation:" + operation.id(),
            operation.title()
                + ": no machine and cutter in the shop can do it. "
                + telling.machine()
                + ": "
                + telling.why().what(),
            "a way that nothing refuses",
            telling.why().instead()));
  }
}
