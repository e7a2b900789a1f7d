package org.proofcut.core.intake;

import java.util.List;

/**
 * One field of a form.
 *
 * @param name of the input, and of the key in a body of the API
 * @param label what it is, in shop words
 * @param hint how to find it or write it; may be empty
 * @param entry what may be entered
 * @param optional whether it may stay empty
 * @param choices what may be chosen, for {@link Entry#CHOICE}
 */
public record Field(
    String name, String label, String hint, Entry entry, boolean optional, List<Choice> choices) {

  /** What may be entered. */
  public enum Entry {
    TEXT,
    LENGTH,
    ANGLE,
    COUNT,
    /** A number with or without a decimal point or comma. */
    NUMBER,
    YES_NO,
    /** Marks of a dial with their revolutions a minute: {@code 1: 8000, 2: 12000}. */
    SPEEDS,
    CHOICE,
    /** A day, as {@link DateText} reads it. */
    DATE
  }

  /** One choice: what is kept, and what is shown. */
  public record Choice(String value, String words) {}

  public Field {
    choices = List.copyOf(choices);
  }

  static Field text(String name, String label, String hint) {
    return new Field(name, label, hint, Entry.TEXT, false, List.of());
  }

  static Field length(String name, String label, String hint) {
    return new Field(name, label, hint, Entry.LENGTH, false, List.of());
  }

  static Field angle(String name, String label, String hint) {
    return new Field(name, label, hint, Entry.ANGLE, false, List.of());
  }

  static Field count(String name, String label, String hint) {
    return new Field(name, label, hint, Entry.COUNT, false, List.of());
  }

  static Field number(String name, String label, String hint) {
    return new Field(name, label, hint, Entry.NUMBER, false, List.of());
  }

  static Field yesNo(String name, String label) {
    return new Field(name, label, "", Entry.YES_NO, false, YES_OR_NO);
  }

  /** The same with how to tell. */
  Field hinted(String how) {
    return new Field(name, label, how, entry, optional, choices);
  }

  static Field speeds(String name, String label, String hint) {
    return new Field(name, label, hint, Entry.SPEEDS, false, List.of());
  }

  static Field choice(String name, String label, List<Choice> choices) {
    return new Field(name, label, "", Entry.CHOICE, false, choices);
  }

  static Field date(String name, String label, String hint) {
    return new Field(name, label, hint, Entry.DATE, true, List.of());
  }

  /** The same, where nothing needs to be entered. */
  Field mayStayEmpty() {
    return new Field(name, label, hint, entry, true, choices);
  }

  private static final List<Choice> YES_OR_NO =
      List.of(new Choice("yes", "Yes"), new Choice("no", "No"));
}
