package org.proofcut.web.part;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.DateText;
import org.proofcut.core.intake.Field;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.AngleFormatException;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthFormatException;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Scale;

/**
 * One field of a form as it stands on a page, for the tag {@code asked}.
 *
 * @param value what was typed, as it was typed
 * @param hint null where there is none
 * @param options what may be chosen; none where text is typed
 * @param echo the length, angle or day that was understood, such as "= 2 3/4 in"; null where none
 *     is asked
 * @param problem the gravest problem of this field; null where there is none
 */
public record Asked(
    String id,
    String label,
    String value,
    String hint,
    List<Option> options,
    String echo,
    Problem problem) {

  /** One of the things to choose from. */
  public record Option(String value, String label) {}

  private static final int MOST_LAID_OUT = 2;

  public Asked {
    options = List.copyOf(options);
  }

  /** A field with what was typed into it and what is wrong with that. */
  public static Asked of(
      Field field, Map<String, String> typed, List<Problem> problems, LengthUnit bareUnit) {
    var value = typed.getOrDefault(field.name(), "");
    return new Asked(
        field.name(),
        field.label(),
        value,
        field.hint().isEmpty() ? null : field.hint(),
        field.choices().stream().map(one -> new Option(one.value(), one.words())).toList(),
        switch (field.entry()) {
          case LENGTH -> understood(value, bareUnit);
          case ANGLE -> understood(value);
          case DATE -> understoodDay(value);
          case TEXT, COUNT, NUMBER, YES_NO, SPEEDS, CHOICE -> null;
        },
        problems.stream()
            .filter(problem -> problem.where().equals(field.name()))
            .min(Comparator.comparing(Problem::force))
            .orElse(null));
  }

  /** The same where a hint above a group says it for all. */
  public Asked withoutHint() {
    return hinted(null);
  }

  /** The same with this hint; null for none. */
  public Asked hinted(String hint) {
    return new Asked(id, label, value, hint, options, echo, problem);
  }

  /** The same where what is wrong with it is told elsewhere. */
  Asked withoutProblem() {
    return new Asked(id, label, value, hint, options, echo, null);
  }

  /** What was typed as one would say it: a length with its unit, a choice in its own words. */
  public String said() {
    if (echo != null) {
      return echo.replace("= ", "");
    }
    return options.stream()
        .filter(option -> option.value().equals(value))
        .map(Option::label)
        .findFirst()
        .orElse(value);
  }

  public boolean isChoice() {
    return !options.isEmpty();
  }

  /** Whether the options are a list to open. */
  public boolean isOpened() {
    return options.size() > MOST_LAID_OUT;
  }

  /** The unit alone while nothing is typed: that is the one that a bare number will take. */
  private static String understood(String typed, LengthUnit bareUnit) {
    if (typed.isBlank()) {
      return bareUnit.symbol();
    }
    try {
      return shown(Length.parse(typed, bareUnit), bareUnit);
    } catch (LengthFormatException unreadable) {
      return "= ?";
    }
  }

  private static String understood(String typed) {
    if (typed.isBlank()) {
      return "°";
    }
    try {
      return "= " + Angle.parse(typed);
    } catch (AngleFormatException unreadable) {
      return "= ?";
    }
  }

  private static String understoodDay(String typed) {
    return typed.isBlank()
        ? null
        : DateText.read(typed).map(day -> "= " + DateText.said(day)).orElse("= ?");
  }

  private static String shown(Length length, LengthUnit unit) {
    var byRule = Scale.rule(unit).show(length);
    if (byRule.isExact()) {
      return "= " + byRule;
    }
    var byCaliper = Scale.caliper(unit).show(length);
    return (byCaliper.isExact() ? "= " : "≈ ") + byCaliper;
  }
}
