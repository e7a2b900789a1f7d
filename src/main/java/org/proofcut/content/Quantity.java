package org.proofcut.content;

import org.proofcut.core.evidence.Citation;
import org.proofcut.core.measure.Length;
import org.proofcut.core.safety.Fact;
import org.proofcut.rulebook.Limit;

/**
 * The number of a limit, with what it measures: {@code 18 mm}, {@code 18000 per minute}, {@code 25
 * kg}, {@code 85 dBA}, {@code 3}.
 */
record Quantity(Fact.Type type, Object value) {

  private static final String PER_MINUTE = " per minute";

  Quantity {
    if (!Limit.canBeCompared(value)) {
      throw new IllegalArgumentException("too large or too fine to be compared: " + value);
    }
  }

  /** A limit as it stands in a file. */
  record Entry(String name, Quantity value, Citation because) {

    Limit limit() {
      return new Limit(name, value.type, value.value, because);
    }
  }

  /**
   * @throws IllegalArgumentException if the text is none of these
   */
  static Quantity of(String text) {
    if (text.endsWith(PER_MINUTE)) {
      var number = text.substring(0, text.length() - PER_MINUTE.length());
      return new Quantity(Fact.Type.SPEED, Long.valueOf(number));
    }
    var amount = AmountText.type(text);
    if (amount.isPresent()) {
      return new Quantity(amount.get(), AmountText.read(amount.get(), text));
    }
    return text.matches("\\d+")
        ? new Quantity(Fact.Type.COUNT, Long.valueOf(text))
        : new Quantity(Fact.Type.LENGTH, Length.of(text));
  }
}
