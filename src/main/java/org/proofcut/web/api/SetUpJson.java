package org.proofcut.web.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.proofcut.bench.CutDraft;
import org.proofcut.core.checklist.Wording;
import org.proofcut.core.intake.CutForm;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.setup.StackChoice;
import org.proofcut.core.shop.Shop;

/** Cuts that belong to no job. */
final class SetUpJson {

  private SetUpJson() {}

  /** A kind of cut and its form. */
  @Schema(name = "CutKind")
  record Kind(String kind, String title, String says, List<ShopJson.Input> fields) {}

  /** What is sent to have a cut worked out. */
  @Schema(name = "CutTyped", requiredProperties = "typed")
  record Typed(
      @Schema(
              description =
                  "each field of the form by its name; a length as people write it; machine,"
                      + " cutter and unit may be left out")
          Map<String, String> typed) {}

  /** What is sent to keep what a proof cut teaches. */
  @Schema(
      name = "CutProven",
      requiredProperties = {"typed", "proof", "fingerprint"})
  record Proven(
      @Schema(description = "the fields of the cut, every reading of its proof cut among them")
          Map<String, String> typed,
      @Schema(description = "made where the proof was cut; the same again is the same proof")
          String proof,
      @Schema(description = "of the sheet whose figures were set") String fingerprint) {}

  /** What a cut comes to. */
  @Schema(name = "CutAnswer")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Answer(
      @Schema(description = "whether there is a set-up that no rule stops") boolean sound,
      @Schema(description = "left out while something can't be read")
          Optional<SheetJson.OneSheet> sheet,
      @Schema(description = "on what the proof cut shows so far")
          List<ProgressJson.Judged> verdicts,
      @Schema(description = "the best few stacks, the one that is set up first") List<Stack> stacks,
      List<ProblemDetail.One> problems) {}

  /** One stack that serves. */
  @Schema(name = "Stack")
  record Stack(
      String name,
      LengthJson.Figure cuts,
      @Schema(description = "of what goes in, at its thickest reading and at its thinnest")
          LengthJson.Range room) {}

  static Kind kind(CutForm form, Shop shop) {
    return new Kind(form.kind(), form.title(), form.says(), ShopJson.inputs(form.fields(shop)));
  }

  static Answer answer(CutDraft draft, Wording wording) {
    return new Answer(
        draft.isSound(),
        draft.plan().map(plan -> SheetJson.sheet(plan.sheet(), List.of(), draft.unit(), wording)),
        draft.verdicts().stream()
            .map(verdict -> ProgressJson.judged(verdict, draft.unit()))
            .toList(),
        draft.plan().stream()
            .flatMap(plan -> plan.stacks().stream())
            .map(choice -> stack(choice, draft.unit()))
            .toList(),
        ProblemDetail.One.all(draft.allProblems()));
  }

  private static Stack stack(StackChoice choice, LengthUnit unit) {
    return new Stack(
        choice.stack().name(),
        LengthJson.figure(choice.cuts(), unit),
        LengthJson.range(choice.room(), unit));
  }
}
