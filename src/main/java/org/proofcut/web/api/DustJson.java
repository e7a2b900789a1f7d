package org.proofcut.web.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.proofcut.bench.DustDraft;
import org.proofcut.core.exposure.AirLimit;
import org.proofcut.core.exposure.DustAnswer;
import org.proofcut.core.exposure.DustBook;
import org.proofcut.core.exposure.DustEffect;
import org.proofcut.core.exposure.Mask;
import org.proofcut.core.exposure.Wood;
import org.proofcut.core.measure.LengthUnit;

/** Dust: what it does, what draws it off, the mask. */
final class DustJson {

  private DustJson() {}

  /** What is sent to have dust worked out. */
  @Schema(name = "DustTyped", requiredProperties = "typed")
  record Typed(
      @Schema(
              description =
                  "each field of the form by its name; \"job\" may name a job whose sheets are cut")
          Map<String, String> typed) {}

  /** A wood or board. */
  @Schema(name = "Wood")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record OneWood(
      String id,
      String name,
      @Schema(description = "hardwood, softwood or panel") String group,
      @Schema(description = "what its dust counts as") String countsAs,
      @Schema(description = "specific gravity at 12 %, where a source gives it")
          Optional<String> gravity,
      List<Does> effects) {}

  /** One thing that dust does. */
  @Schema(name = "DustEffect")
  record Does(
      @Schema(description = "irritant, sensitiser, carcinogen or toxic") String effect,
      List<String> on,
      LengthJson.Cited because) {}

  /** A limit of what may be in the air. */
  @Schema(name = "AirLimit")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Most(
      String id,
      String of,
      String most,
      String over,
      String fraction,
      boolean law,
      Optional<String> above,
      LengthJson.Cited because) {}

  /** Extraction. */
  @Schema(name = "Extraction")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Air(
      @Schema(description = "whether the opening is the usual one of such a machine") boolean usual,
      AmountJson.Figure needed,
      @Schema(description = "velocity that is there; left out where nobody knows")
          Optional<AmountJson.Figure> reached,
      boolean enough) {}

  /** Which mask. */
  @Schema(name = "MaskNeed")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Worn(
      @Schema(description = "none, least, beyond-all or by-strength") String need,
      Optional<String> mask,
      @Schema(description = "whether it has to lie on shaven skin") Optional<Boolean> seals,
      @Schema(description = "level over limit; left out where nothing was measured")
          Optional<AmountJson.Figure> factor) {}

  /** What dust comes to. */
  @Schema(name = "DustAnswer")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Answer(Optional<Found> found, List<ProblemDetail.One> problems) {}

  /** The same, where all could be read. */
  @Schema(name = "DustFound")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Found(
      String region,
      List<OneWood> woods,
      String countsAs,
      List<String> effects,
      @Schema(description = "an order, and no amount: little, some, much, most") String strength,
      List<Most> here,
      List<Most> elsewhere,
      @Schema(description = "id of the limit that masks are reckoned by") Optional<String> heldTo,
      Air air,
      Optional<Worn> mask,
      @Schema(description = "none where nothing is glued") List<Most> formaldehyde) {}

  static OneWood wood(Wood wood) {
    return new OneWood(
        wood.id(),
        wood.name(),
        wood.group().words(),
        wood.countsAs().words(),
        wood.gravity().map(one -> one.value().toPlainString()),
        wood.effects().stream()
            .map(
                one ->
                    new Does(
                        one.does().id(),
                        one.on().stream().map(Wood.Site::words).toList(),
                        LengthJson.cited(one.because())))
            .toList());
  }

  static Answer answer(DustDraft draft, DustBook book) {
    return new Answer(
        draft.answer().map(one -> found(one, draft, book)),
        ProblemDetail.One.all(draft.problems()));
  }

  private static Found found(DustAnswer answer, DustDraft draft, DustBook book) {
    return new Found(
        draft.region().id(),
        answer.woods().stream().map(DustJson::wood).toList(),
        answer.counted().words(),
        answer.effects().stream().map(DustEffect::id).toList(),
        answer.strength().value().id(),
        answer.here().stream().map(DustJson::most).toList(),
        answer.elsewhere().stream().map(DustJson::most).toList(),
        answer.heldTo().map(AirLimit::id),
        new Air(
            answer.air().usual(),
            AmountJson.figure(answer.air().needed(), draft.unit()),
            answer.air().reached().map(one -> AmountJson.figure(one, draft.unit())),
            answer.air().enough()),
        answer.mask().map(need -> worn(need, draft.unit())),
        answer.hasPanel()
            ? book.formaldehydeLimits(draft.region().id()).stream().map(DustJson::most).toList()
            : List.of());
  }

  private static Most most(AirLimit limit) {
    return new Most(
        limit.id(),
        limit.of().words(),
        limit.most().value().text(),
        limit.over().words(),
        limit.fraction().words(),
        limit.isLaw(),
        limit.above(),
        LengthJson.cited(limit.most().source()));
  }

  private static Worn worn(Mask.Need need, LengthUnit unit) {
    if (need instanceof Mask.Need.Least least) {
      return new Worn(
          "least",
          Optional.of(least.mask().words()),
          Optional.of(least.mask().seals()),
          Optional.of(AmountJson.figure(least.factor(), unit)));
    }
    if (need instanceof Mask.Need.ByStrength strength) {
      return new Worn(
          "by-strength",
          Optional.of(strength.mask().words()),
          Optional.of(strength.mask().seals()),
          Optional.empty());
    }
    if (need instanceof Mask.Need.BeyondAll beyond) {
      return new Worn(
          "beyond-all",
          Optional.empty(),
          Optional.empty(),
          Optional.of(AmountJson.figure(beyond.factor(), unit)));
    }
    var none = (Mask.Need.None) need;
    return new Worn(
        "none",
        Optional.empty(),
        Optional.empty(),
        Optional.of(AmountJson.figure(none.factor(), unit)));
  }
}
