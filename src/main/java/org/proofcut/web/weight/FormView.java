package org.proofcut.web.weight;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.CutForm;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.web.part.Asked;

/**
 * Fields with what was typed into them.
 *
 * @param missing those that nothing was entered in; not wrong yet
 * @param mend what is wrong with what was entered
 */
record FormView(List<Group> groups, List<Asked> missing, List<Problem> mend) {

  /** Fields under one heading. */
  record Group(String id, String title, List<Asked> asked) {}

  static FormView of(
      List<CutForm.Group> groups,
      Map<String, String> typed,
      List<Problem> problems,
      LengthUnit unit) {
    var mend = problems.stream().filter(problem -> !isEmpty(problem, typed)).toList();
    var empty =
        problems.stream().filter(problem -> isEmpty(problem, typed)).map(Problem::where).toList();
    var asked =
        groups.stream()
            .map(
                group ->
                    new Group(
                        group.title().toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", "-"),
                        group.title(),
                        group.fields().stream()
                            .map(field -> Asked.of(field, typed, mend, unit))
                            .toList()))
            .toList();
    return new FormView(
        asked,
        asked.stream()
            .flatMap(group -> group.asked().stream())
            .filter(one -> empty.contains(one.id()))
            .toList(),
        mend);
  }

  private static boolean isEmpty(Problem problem, Map<String, String> typed) {
    return typed.getOrDefault(problem.where(), "").isBlank();
  }

  /** Fields beside which it is said what was understood. */
  List<Asked> echoes() {
    return groups.stream()
        .flatMap(group -> group.asked().stream())
        .filter(asked -> asked.echo() != null)
        .toList();
  }

  /** The shape that says the same as {@link #undone}. */
  String undoneShape() {
    return mend.isEmpty() ? "shape-open" : "shape-stop";
  }

  /** What keeps it from being worked out, in one line. */
  String undone() {
    if (!mend.isEmpty()) {
      return mend.size() == 1 ? "1 thing to mend" : mend.size() + " things to mend";
    }
    return missing.size() == 1 ? "1 field still empty" : missing.size() + " fields still empty";
  }
}
