package org.proofcut.web.part;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.CutForm;
import org.proofcut.core.measure.LengthUnit;

/**
 * A form whose answer follows while it is typed: its fields with what was typed into them, and what
 * keeps the answer from being worked out.
 *
 * @param groups the fields, in the order they are asked
 * @param missing those that nothing was entered in; not wrong yet, so told beside the form and not
 *     at the field
 * @param mend what is wrong with what was entered, and what is wrong beside the fields
 */
public record FormView(List<Group> groups, List<Asked> missing, List<Problem> mend) {

  public FormView {
    groups = List.copyOf(groups);
    missing = List.copyOf(missing);
    mend = List.copyOf(mend);
  }

  /**
   * Fields under one heading.
   *
   * @param id of the heading on the page
   */
  public record Group(String id, String title, List<Asked> asked) {

    public Group {
      asked = List.copyOf(asked);
    }
  }

  /** Fields as content of a form asks for them. */
  public static FormView of(
      List<CutForm.Group> groups,
      Map<String, String> typed,
      List<Problem> problems,
      LengthUnit unit) {
    return of(
        groups.stream().map(group -> group(group, typed, problems, unit)).toList(),
        typed,
        problems);
  }

  private static Group group(
      CutForm.Group group, Map<String, String> typed, List<Problem> problems, LengthUnit unit) {
    return new Group(
        "part-" + group.title().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-"),
        group.title(),
        group.fields().stream().map(field -> Asked.of(field, typed, problems, unit)).toList());
  }

  /** Fields that were put under their headings already. */
  public static FormView of(List<Group> groups, Map<String, String> typed, List<Problem> problems) {
    var empty =
        asked(groups)
            .map(Asked::id)
            .filter(id -> typed.getOrDefault(id, "").isBlank())
            .collect(Collectors.toUnmodifiableSet());
    var open = problems.stream().map(Problem::where).filter(empty::contains).toList();
    var shown =
        groups.stream()
            .map(
                group ->
                    new Group(
                        group.id(),
                        group.title(),
                        group.asked().stream()
                            .map(one -> empty.contains(one.id()) ? one.withoutProblem() : one)
                            .toList()))
            .toList();
    return new FormView(
        shown,
        asked(shown).filter(one -> open.contains(one.id())).toList(),
        problems.stream().filter(problem -> !empty.contains(problem.where())).toList());
  }

  /**
   * The same after it was sent: what is empty is wrong now, and told at its field like the rest.
   */
  public static FormView sentBack(
      List<CutForm.Group> groups,
      Map<String, String> typed,
      List<Problem> problems,
      LengthUnit unit) {
    return new FormView(
        groups.stream().map(group -> group(group, typed, problems, unit)).toList(),
        List.of(),
        problems);
  }

  private static Stream<Asked> asked(List<Group> groups) {
    return groups.stream().flatMap(group -> group.asked().stream());
  }

  /** The shape that says the same as {@link #undone}. */
  public String undoneShape() {
    return mend.isEmpty() ? "shape-open" : "shape-stop";
  }

  /** Fields beside which it is said what was understood. */
  public List<Asked> echoes() {
    return asked(groups).filter(one -> one.echo() != null).toList();
  }

  /** What keeps it from being worked out, in one line. */
  public String undone() {
    return mend.isEmpty()
        ? counted(missing.size(), "field still empty", "fields still empty")
        : counted(mend.size(), "thing to mend", "things to mend");
  }

  private static String counted(int number, String one, String more) {
    return number + " " + (number == 1 ? one : more);
  }
}
