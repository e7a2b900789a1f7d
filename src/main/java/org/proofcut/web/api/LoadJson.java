package org.proofcut.web.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.proofcut.bench.LiftDraft;
import org.proofcut.bench.LoadDesk;
import org.proofcut.bench.StandDraft;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.ClothingStorage;
import org.proofcut.core.exposure.Lift.NotCovered;
import org.proofcut.core.exposure.LiftTask;
import org.proofcut.core.exposure.LiftTask.Judged;
import org.proofcut.core.exposure.WeightUnit;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.weight.CaseBody;
import org.proofcut.core.weight.CaseOnFloor;
import org.proofcut.core.weight.PartAtTheSaw;
import org.proofcut.core.weight.Weight;

/** Weights, lifts, and cases that stand free. */
final class LoadJson {

  private LoadJson() {}

  /** What is sent to have something worked out. */
  @Schema(name = "LoadTyped", requiredProperties = "typed")
  record Typed(
      @Schema(description = "each field by its name; a length or a weight as people write it")
          Map<String, String> typed) {}

  /** A weight between the lightest and the heaviest that its material may be. */
  @Schema(name = "WeightBand")
  record Band(AmountJson.Figure least, AmountJson.Figure most, String leastInLb, String mostInLb) {}

  /** One end of a lift, judged. */
  @Schema(name = "LiftEnd")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record End(
      @Schema(description = "start or finish") String end,
      AmountJson.Figure mostRecommended,
      @Schema(description = "left out where nothing is recommended to be lifted")
          Optional<AmountJson.Figure> index,
      @Schema(description = "within, raised, grave or out-of-reach") String strain,
      List<AmountJson.Figure> multipliers) {}

  /** One thing done otherwise, and what decides then. */
  @Schema(name = "LiftBetter")
  record Better(String change, End then) {}

  /** What a lift comes to. */
  @Schema(name = "LiftAnswer")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Lifted(
      @Schema(
              description =
                  "the start, and the end where it is put down with care; none while there is no"
                      + " figure")
          List<End> ends,
      @Schema(description = "start or finish") Optional<String> decides,
      List<Better> better,
      @Schema(description = "why there is no figure") List<String> notCovered,
      @Schema(description = "what to do where there is none") List<String> instead,
      @Schema(description = "how far out the hands are, while that was not measured")
          Optional<LengthJson.Figure> estimatedOut,
      List<ProblemDetail.One> problems) {}

  /** A part, and one person who lays it on the saw table. */
  @Schema(name = "PartWeight")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record PartWeight(
      String part,
      String name,
      Band weight,
      @Schema(description = "too large for one person to hold steady: then there is no figure")
          boolean tooLarge,
      @Schema(description = "the end of the lift that decides") Optional<End> lift) {}

  /** A whole sheet. */
  @Schema(name = "SheetWeight")
  record SheetWeight(String sheet, String name, Band weight) {}

  /** A case as a body. */
  @Schema(name = "CaseBody")
  record Body(
      Band weight,
      @Schema(description = "from the front edges to the middle of gravity")
          LengthJson.Figure behind,
      @Schema(description = "from the floor to it") LengthJson.Figure high) {}

  /** What a job weighs. */
  @Schema(name = "JobWeights")
  record Weights(
      @Schema(description = "the heaviest first") List<PartWeight> parts,
      List<SheetWeight> sheets,
      Body body) {}

  /** One way in which a case is met with. */
  @Schema(name = "StandingState")
  record State(
      @Schema(
              description = "how much of what usually stands in it is there",
              enumeration = {"empty", "above", "full"})
          String filling,
      boolean open,
      boolean pulled,
      boolean tips,
      @Schema(description = "what is left before it tips; it tips from zero down")
          AmountJson.Figure margin,
      @Schema(description = "further pull at the top that tips it") AmountJson.Figure morePull) {}

  /** Sizes against those of a standard for clothing storage. */
  @Schema(name = "StandardSizes")
  record Compared(
      String standard, boolean high, boolean heavy, boolean roomy, boolean asLargeInAll) {}

  /** What a case on the floor comes to. */
  @Schema(name = "StandingAnswer")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Stood(
      Body body,
      @Schema(description = "none while something can't be read") List<State> states,
      @Schema(description = "the one with least left") Optional<State> worst,
      @Schema(description = "a comparison only") Optional<Compared> compared,
      @Schema(description = "what holds whatever the figures say") String always,
      List<ProblemDetail.One> problems) {}

  static Lifted lifted(LiftDraft draft) {
    var unit = draft.unit();
    return new Lifted(
        draft.task().stream()
            .flatMap(task -> task.judged(unit).stream())
            .map(one -> end(one, unit))
            .toList(),
        draft.task().flatMap(task -> task.decides(unit)).map(one -> ShopJson.word(one.end())),
        draft.task().stream()
            .flatMap(task -> task.better(unit).stream())
            .map(one -> new Better(one.change(), end(one.then(), unit)))
            .toList(),
        draft.task().stream()
            .flatMap(task -> task.notCovered().stream())
            .map(NotCovered::words)
            .toList(),
        draft
            .task()
            .filter(task -> !task.notCovered().isEmpty())
            .map((LiftTask task) -> task.instead(unit))
            .orElse(List.of()),
        draft.estimatedOut().map(out -> LengthJson.figure(out, unit)),
        ProblemDetail.One.all(draft.problems()));
  }

  static Weights weights(LoadDesk.Weights weights) {
    var unit = weights.unit();
    return new Weights(
        weights.parts().stream().map(one -> part(one, unit)).toList(),
        weights.sheets().stream()
            .map(
                one ->
                    new SheetWeight(one.sheet().id(), one.sheet().name(), band(one.weight(), unit)))
            .toList(),
        body(weights.body(), unit));
  }

  static Stood stood(StandDraft draft) {
    var unit = draft.unit();
    return new Stood(
        body(draft.body(), unit),
        draft.onFloor().stream()
            .flatMap(floor -> floor.states().stream().map(state -> state(state, floor, unit)))
            .toList(),
        draft.onFloor().map(floor -> state(floor.worst(), floor, unit)),
        draft.onFloor().map(floor -> compared(floor.comparedInSize())),
        "Fasten it to the building; its wall decides how. Local practice and codes come first.",
        ProblemDetail.One.all(draft.problems()));
  }

  private static Compared compared(ClothingStorage size) {
    return new Compared(
        ClothingStorage.SCOPE.text(),
        size.isHigh(),
        size.isHeavy(),
        size.isRoomy(),
        size.isAsLarge());
  }

  private static State state(CaseOnFloor.State state, CaseOnFloor floor, LengthUnit unit) {
    var standing = state.standing();
    var top = Worked.entered("height of the case", floor.outside().height());
    return new State(
        ShopJson.word(state.filling()),
        state.open(),
        state.pulled(),
        standing.tips(),
        AmountJson.figure(standing.margin(), unit),
        AmountJson.figure(standing.morePull(top), unit));
  }

  private static PartWeight part(PartAtTheSaw one, LengthUnit unit) {
    return new PartWeight(
        one.part().id(),
        one.part().name(),
        band(one.weight(), unit),
        one.isTooLarge(),
        one.lift().decides(unit).map(judged -> end(judged, unit)));
  }

  private static Body body(CaseBody body, LengthUnit unit) {
    return new Body(
        band(body.weight(), unit),
        LengthJson.figure(body.behind(), unit),
        LengthJson.figure(body.high(), unit));
  }

  private static End end(Judged one, LengthUnit unit) {
    return new End(
        ShopJson.word(one.end()),
        AmountJson.figure(one.most(), unit),
        one.index().map(index -> AmountJson.figure(index, unit)),
        ShopJson.word(one.strain()),
        one.lift().multipliers(unit).stream().map(each -> AmountJson.figure(each, unit)).toList());
  }

  private static Band band(Weight weight, LengthUnit unit) {
    return new Band(
        AmountJson.figure(weight.least(), unit),
        AmountJson.figure(weight.most(), unit),
        pounds(weight.least().value(), RoundingMode.DOWN),
        pounds(weight.most().value(), RoundingMode.UP));
  }

  private static String pounds(Amount weight, RoundingMode rounding) {
    return WeightUnit.POUND.amount(weight, 3, rounding).text();
  }
}
