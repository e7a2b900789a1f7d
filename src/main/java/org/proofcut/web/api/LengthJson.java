package org.proofcut.web.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.web.part.WorkingLine;

/** Lengths as they are given out. */
final class LengthJson {

  private LengthJson() {}

  /**
   * A length.
   *
   * @param leftover true length less the length shown
   */
  @Schema(name = "Length")
  record Plain(
      @Schema(description = "exact, in millimetres", examples = "18.25625") String mm,
      @Schema(description = "in inches; to ten decimals where it has no end") String in,
      @Schema(description = "whether the number of inches is exact") boolean inIsExact,
      @Schema(description = "as written for a person", examples = "18.26 mm") String shown,
      @Schema(description = "unit of what is shown") String unit,
      @Schema(description = "true length less the length shown, exact", examples = "-0.00375 mm")
          String leftover) {}

  /** A length with the way it was found. */
  @Schema(name = "WorkedLength")
  record Figure(
      String name,
      String mm,
      String in,
      boolean inIsExact,
      String shown,
      String unit,
      String leftover,
      @Schema(description = "from what was given to this figure") List<Line> working,
      String source) {}

  /** One line of a working. */
  @Schema(name = "WorkingLine")
  record Line(String name, String formula, List<Put> inputs, String result, String source) {}

  /** A value put into a formula. */
  @Schema(name = "WorkingInput")
  record Put(String as, String value) {}

  /** All lengths from one to another. */
  @Schema(name = "Band")
  record Range(Plain least, Plain most) {}

  /** Where something comes from. */
  @Schema(name = "Citation")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Cited(
      @Schema(description = "how far it binds, such as law or common practice") String kind,
      String source,
      String place,
      @Schema(description = "what the shop has of its own there; left out where it has nothing")
          Optional<String> own) {}

  static Plain plain(Length length, LengthUnit unit) {
    var shown = Scale.caliper(unit).show(length);
    return new Plain(
        length.inMillimetres().toPlainString(),
        length.inInches().toPlainString(),
        isFiniteInInches(length),
        shown.text(),
        unit.symbol(),
        shown.leftover().toString());
  }

  static Figure figure(Worked<Length> worked, LengthUnit unit) {
    var plain = plain(worked.value(), unit);
    return new Figure(
        worked.name(),
        plain.mm,
        plain.in,
        plain.inIsExact,
        plain.shown,
        plain.unit,
        plain.leftover,
        working(worked, unit),
        worked.source().text());
  }

  static List<Line> working(Worked<?> worked, LengthUnit unit) {
    return WorkingLine.of(worked, Scale.caliper(unit)).stream()
        .map(
            line ->
                new Line(
                    line.name(),
                    line.formula(),
                    line.inputs().stream().map(put -> new Put(put.as(), put.value())).toList(),
                    line.result(),
                    line.source()))
        .toList();
  }

  static Range range(Band band, LengthUnit unit) {
    return new Range(plain(band.least(), unit), plain(band.most(), unit));
  }

  static Cited cited(Citation citation) {
    return new Cited(citation.kind().words(), citation.source(), citation.place(), citation.own());
  }

  /**
   * An inch is 2 · 127 · 10⁸ pm: of its prime factors only 127 is none of ten's. What is left has
   * at most nine decimals, so that ten are enough to be exact.
   */
  private static boolean isFiniteInInches(Length length) {
    return length.picometres() % 127 == 0;
  }
}
