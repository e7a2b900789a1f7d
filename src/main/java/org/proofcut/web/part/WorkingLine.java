package org.proofcut.web.part;

import java.time.Duration;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.display.Scale;

/**
 * One line of a working as text, for the tag {@code working}.
 *
 * @param name what was found
 * @param formula the formula in words; empty for what was given
 * @param inputs what was put in, under the formula's names
 * @param result the result; where rounding left something over, the exact value stands with it
 * @param source where it comes from
 */
public record WorkingLine(
    String name, String formula, List<Put> inputs, String result, String source) {

  /** A value put in, as text. */
  public record Put(String as, String value) {}

  /** All lines of a working, from what was given to its result, lengths written on this scale. */
  public static List<WorkingLine> of(Worked<?> worked, Scale scale) {
    return worked.lines().stream().map(line -> line(line, scale)).toList();
  }

  private static WorkingLine line(Worked<?> worked, Scale scale) {
    return new WorkingLine(
        worked.name(),
        worked.formula(),
        worked.inputs().stream()
            .map(input -> new Put(input.as(), written(input.value().value(), scale)))
            .toList(),
        written(worked.value(), scale),
        worked.source().text());
  }

  private static String written(Object value, Scale scale) {
    if (value instanceof Length length) {
      var shown = scale.show(length);
      return shown.isExact() ? shown.text() : shown.text() + " (exactly " + length + ")";
    }
    if (value instanceof Duration time) {
      return "%d min %d s".formatted(time.toMinutes(), time.toSecondsPart());
    }
    if (value instanceof Collection<?> values) {
      return values.stream().map(each -> written(each, scale)).collect(Collectors.joining(", "));
    }
    return String.valueOf(value);
  }
}
