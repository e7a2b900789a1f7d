package org.proofcut.content;

import java.util.Optional;
import org.proofcut.content.yaml.Written;
import org.proofcut.core.measure.Length;
import org.proofcut.core.safety.Fact;

/** A fact's value as a case writes it. */
final class FactValue {

  private FactValue() {}

  /**
   * Empty if it is a list where one value should stand, or the other way.
   *
   * @throws IllegalArgumentException if the text is no such value
   */
  static Optional<Object> read(Fact.Type type, Written written) {
    if (written.isList() != (type == Fact.Type.TEXTS)) {
      return Optional.empty();
    }
    return Optional.of(
        switch (type) {
          case TEXTS -> written.texts();
          case TEXT -> written.toString();
          case YES_NO -> yesOrNo(written.toString());
          case COUNT, SPEED -> Long.valueOf(written.toString());
          case LENGTH -> Length.of(written.toString());
          case WEIGHT, LEVEL -> AmountText.read(type, written.toString());
        });
  }

  private static boolean yesOrNo(String text) {
    return switch (text) {
      case "true" -> true;
      case "false" -> false;
      default -> throw new IllegalArgumentException(text);
    };
  }

  static String shape(Fact.Type type) {
    return switch (type) {
      case TEXT -> "one word, such as fence";
      case TEXTS -> "a list of words, such as [plywood]; [] for none";
      case YES_NO -> "true or false";
      case COUNT -> "a whole number, such as 2";
      case SPEED -> "turns per minute as a whole number, such as 18000";
      case LENGTH -> "a length with its unit, such as 18.25 mm or 23/32 in";
      case WEIGHT -> AmountText.WEIGHT;
      case LEVEL -> AmountText.LEVEL;
    };
  }
}
