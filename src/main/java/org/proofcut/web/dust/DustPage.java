package org.proofcut.web.dust;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proofcut.bench.DustDesk;
import org.proofcut.bench.DustDraft;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.DustBook;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.logbook.JobRecord;
import org.proofcut.web.part.Asked;
import org.proofcut.web.part.WorkingLine;

/**
 * Everything on the page on dust.
 *
 * @param missing fields that nothing was entered in; not wrong yet
 * @param mend what is wrong with what was entered
 * @param reads what it comes to; null while something can't be read
 */
record DustPage(
    List<Group> groups, List<Asked> missing, List<Problem> mend, DustReads reads, String ofJob) {

  /** Fields under one heading. */
  record Group(String id, String title, List<Asked> asked) {}

  static DustPage of(DustDraft draft, DustBook book, List<JobRecord> jobs) {
    var mend = draft.problems().stream().filter(problem -> !isEmpty(problem, draft)).toList();
    var groups =
        draft.groups().stream()
            .map(
                group ->
                    new Group(
                        group.id(),
                        group.title(),
                        group.fields().stream()
                            .map(field -> Asked.of(field, draft.typed(), mend, draft.unit()))
                            .toList()))
            .collect(Collectors.toCollection(ArrayList::new));
    if (!jobs.isEmpty()) {
      groups.add(0, new Group("job", "The sheets of a job", List.of(job(draft, mend, jobs))));
    }
    var empty =
        draft.problems().stream()
            .filter(problem -> isEmpty(problem, draft))
            .map(Problem::where)
            .toList();
    return new DustPage(
        List.copyOf(groups),
        groups.stream()
            .flatMap(group -> group.asked().stream())
            .filter(asked -> empty.contains(asked.id()))
            .toList(),
        mend,
        draft.answer().map(answer -> DustReads.of(answer, draft, book)).orElse(null),
        draft.job().map(name -> name + ": " + DustReads.names(draft.ofJob())).orElse(""));
  }

  private static Asked job(DustDraft draft, List<Problem> mend, List<JobRecord> jobs) {
    return new Asked(
        DustDesk.JOB,
        "Job",
        draft.typed().getOrDefault(DustDesk.JOB, ""),
        "its woods and boards count too; none if you have no job yet",
        Stream.concat(
                Stream.of(new Asked.Option(DustDesk.NO_JOB, "none: only what is chosen below")),
                jobs.stream()
                    .map(job -> new Asked.Option(job.id(), job.typed().getOrDefault("name", ""))))
            .toList(),
        null,
        mend.stream()
            .filter(problem -> problem.where().equals(DustDesk.JOB))
            .findFirst()
            .orElse(null));
  }

  private static boolean isEmpty(Problem problem, DustDraft draft) {
    return draft.typed().getOrDefault(problem.where(), "").isBlank();
  }

  static List<WorkingLine> working(Worked<?> worked, DustDraft draft) {
    return WorkingLine.of(worked, Scale.caliper(draft.unit()));
  }

  /** In one line, for the strip that stays in sight. */
  public String verdict() {
    if (reads != null) {
      return reads.verdict();
    }
    if (!mend.isEmpty()) {
      return mend.size() == 1 ? "1 thing to mend" : mend.size() + " things to mend";
    }
    return missing.size() == 1 ? "1 field still empty" : missing.size() + " fields still empty";
  }
}
