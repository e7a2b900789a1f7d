package org.proofcut.web.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.proofcut.bench.NoiseDraft;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.NoiseLaw;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.noise.DayPart;
import org.proofcut.core.noise.NoiseDay;
import org.proofcut.core.noise.Protection;

/** A day's noise. */
final class NoiseJson {

  private NoiseJson() {}

  /** What is sent to have a day worked out. */
  @Schema(name = "NoiseTyped", requiredProperties = "typed")
  record Typed(
      @Schema(
              description =
                  "fields of the day by their names, such as minutes-3; any may be left out")
          Map<String, String> typed) {}

  /** A day's noise. */
  @Schema(name = "NoiseDay")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Day(
      @Schema(description = "left out while something can't be read") Optional<Answer> answer,
      List<ShopJson.Input> fields,
      List<ProblemDetail.One> problems) {}

  /** What a day comes to. */
  @Schema(name = "NoiseAnswer")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Answer(
      List<Part> parts,
      @Schema(description = "by each published rule") List<Dose> doses,
      @Schema(description = "LEX,8h; left out for a day without noise")
          Optional<AmountJson.Number> dailyLevel,
      String law,
      @Schema(description = "of the law, that the day comes under") List<Step> steps,
      List<Protector> protectors,
      @Schema(
              description =
                  "least ratings that are enough as worn, one of each kind if there is any")
          List<String> needed) {}

  /** A sheet of the day, or something else that is loud. */
  @Schema(name = "NoisePart")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Part(
      Optional<Integer> sheet,
      String what,
      Optional<String> machine,
      boolean done,
      Optional<AmountJson.Number> level,
      @Schema(description = "where the level is from") String from,
      @Schema(description = "left out where nothing can be counted") Optional<Long> seconds,
      @Schema(description = "of the day's dose, in per cent") String share) {}

  /** A dose by one rule. */
  @Schema(name = "NoiseDose")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Dose(
      @Schema(description = "permitted-us or recommended") String rule,
      AmountJson.Number dose,
      @Schema(description = "of eight hours; left out where the dose is none")
          Optional<AmountJson.Number> steadyLevel) {}

  /** A step of a law. */
  @Schema(name = "NoiseStep")
  record Step(String name, String at, boolean above, String asks, LengthJson.Cited because) {}

  /** A hearing protector and what it leaves. */
  @Schema(name = "Protector")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Protector(
      String name,
      String marked,
      Optional<AmountJson.Number> asRated,
      Optional<AmountJson.Number> asWorn,
      @Schema(description = "judged as worn") String verdict,
      @Schema(description = "whether too little may be heard under it") boolean tooMuch) {}

  static Day day(NoiseDraft draft, List<ShopJson.Input> fields) {
    return new Day(
        draft.problems().isEmpty() ? Optional.of(answer(draft.day())) : Optional.empty(),
        fields,
        ProblemDetail.One.all(draft.problems()));
  }

  private static Answer answer(NoiseDay day) {
    return new Answer(
        day.parts().stream().map(part -> part(part, day)).toList(),
        day.doses().stream()
            .map(
                dose ->
                    new Dose(
                        ShopJson.word(dose.rule()),
                        number(dose.dose()),
                        dose.steady().map(NoiseJson::number)))
            .toList(),
        day.dailyLevel().map(NoiseJson::number),
        day.law().title(),
        day.steps().stream().map(NoiseJson::step).toList(),
        day.protections().stream().map(NoiseJson::protector).toList(),
        day.needed().stream()
            .flatMap(one -> one.least().stream())
            .map(rating -> rating.text())
            .toList());
  }

  private static Part part(DayPart part, NoiseDay day) {
    return new Part(
        part.sheet(),
        part.title(),
        part.machine(),
        part.done(),
        part.level().map(NoiseJson::number),
        part.from().words(),
        part.time().map(time -> time.value().toSeconds()),
        day.share(part).toPlainString());
  }

  private static Step step(NoiseLaw.Step step) {
    return new Step(
        step.name(), step.at().text(), step.above(), step.asks(), LengthJson.cited(step.because()));
  }

  private static Protector protector(Protection one) {
    return new Protector(
        one.name(),
        one.marked(),
        one.asRated().map(NoiseJson::number),
        one.asWorn().map(NoiseJson::number),
        one.verdict().words(),
        one.tooMuch());
  }

  private static AmountJson.Number number(Worked<Amount> worked) {
    return AmountJson.number(worked, LengthUnit.MILLIMETRE);
  }
}
