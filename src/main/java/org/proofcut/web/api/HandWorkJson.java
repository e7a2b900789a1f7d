package org.proofcut.web.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.proofcut.bench.HandDraft;
import org.proofcut.core.checklist.Wording;
import org.proofcut.core.intake.HandForm;
import org.proofcut.core.shop.Shop;

/** Work without a cutter that belongs to no job. */
final class HandWorkJson {

  private HandWorkJson() {}

  /** A kind of task and its form. */
  @Schema(name = "HandTaskKind")
  record Kind(String kind, String title, String says, List<ShopJson.Input> fields) {}

  /** What is sent to have a task looked at. */
  @Schema(name = "HandTaskTyped", requiredProperties = "typed")
  record Typed(
      @Schema(
              description =
                  "each field of the form by its name; a length as people write it; unit may be"
                      + " left out")
          Map<String, String> typed) {}

  /** What a task comes to. */
  @Schema(name = "HandTaskAnswer")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Answer(
      @Schema(description = "whether it can be read and no rule stops it") boolean sound,
      @Schema(description = "a weight, or how easily a liquid takes fire")
          List<AmountJson.Figure> figures,
      @Schema(description = "left out while something can't be read")
          Optional<SheetJson.OneSheet> sheet,
      List<ProblemDetail.One> problems) {}

  static Kind kind(HandForm form, Shop shop) {
    return new Kind(form.kind(), form.title(), form.says(), ShopJson.inputs(form.fields(shop)));
  }

  static Answer answer(HandDraft draft, Wording wording) {
    return new Answer(
        draft.isSound(),
        draft.task().stream()
            .flatMap(task -> task.figures().stream())
            .map(worked -> AmountJson.figure(worked, draft.unit()))
            .toList(),
        draft.plan().map(plan -> SheetJson.sheet(plan.sheet(), List.of(), draft.unit(), wording)),
        ProblemDetail.One.all(draft.problems()));
  }
}
