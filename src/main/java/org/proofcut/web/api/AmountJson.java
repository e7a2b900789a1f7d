package org.proofcut.web.api;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.LengthUnit;

/** Figures that are no length, as they are given out. */
final class AmountJson {

  private AmountJson() {}

  /** A number with its unit apart, and the way it was found. */
  @Schema(name = "WorkedNumber")
  record Number(
      String name,
      String value,
      String unit,
      @Schema(description = "from what was given to this figure") List<LengthJson.Line> working,
      String source) {}

  /** A figure as one reads it, and the way it was found. */
  @Schema(name = "WorkedAmount")
  record Figure(
      String name,
      @Schema(description = "with its unit, where it has one", examples = "18.2 kg") String value,
      @Schema(description = "from what was given to this figure") List<LengthJson.Line> working,
      String source) {}

  /**
   * @param unit that lengths in its working are written in
   */
  static Number number(Worked<Amount> worked, LengthUnit unit) {
    return number(worked, worked.value().value().toPlainString(), worked.value().unit(), unit);
  }

  /**
   * @param of what there are so many of
   * @param unit that lengths in its working are written in
   */
  static Number number(Worked<Integer> worked, String of, LengthUnit unit) {
    return number(worked, worked.value().toString(), of, unit);
  }

  private static Number number(Worked<?> worked, String value, String of, LengthUnit unit) {
    return new Number(
        worked.name(), value, of, LengthJson.working(worked, unit), worked.source().text());
  }

  /**
   * @param unit that lengths in its working are written in
   */
  static Figure figure(Worked<?> worked, LengthUnit unit) {
    return new Figure(
        worked.name(),
        String.valueOf(worked.value()),
        LengthJson.working(worked, unit),
        worked.source().text());
  }
}
