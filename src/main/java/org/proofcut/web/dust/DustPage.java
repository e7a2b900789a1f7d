package org.proofcut.web.dust;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.proofcut.bench.DustDesk;
import org.proofcut.bench.DustDraft;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.DustBook;
import org.proofcut.core.intake.DustForm;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.logbook.JobRecord;
import org.proofcut.web.part.Asked;
import org.proofcut.web.part.FormView;
import org.proofcut.web.part.WorkingLine;

/**
 * Everything on the page on dust.
 *
 * @param reads what it comes to; null while something can't be read
 * @param ofJob which woods a job is made from, in a line; empty where none was named
 */
record DustPage(FormView form, DustReads reads, String ofJob) {

  static DustPage of(DustDraft draft, DustBook book, List<JobRecord> jobs) {
    var groups = new ArrayList<FormView.Group>();
    if (!jobs.isEmpty()) {
      groups.add(new FormView.Group("part-job", "The sheets of a job", List.of(job(draft, jobs))));
    }
    draft.groups().stream().map(group -> group(group, draft)).forEach(groups::add);
    return new DustPage(
        FormView.of(groups, draft.typed(), draft.problems()),
        draft.answer().map(answer -> DustReads.of(answer, draft, book)).orElse(null),
        draft.job().map(name -> name + ": " + DustReads.names(draft.ofJob())).orElse(""));
  }

  private static FormView.Group group(DustForm.Group group, DustDraft draft) {
    return new FormView.Group(
        "part-" + group.id(),
        group.title(),
        group.fields().stream()
            .map(field -> Asked.of(field, draft.typed(), draft.problems(), draft.unit()))
            .toList());
  }

  private static Asked job(DustDraft draft, List<JobRecord> jobs) {
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
        draft.problems().stream()
            .filter(problem -> problem.where().equals(DustDesk.JOB))
            .findFirst()
            .orElse(null));
  }

  static List<WorkingLine> working(Worked<?> worked, DustDraft draft) {
    return WorkingLine.of(worked, Scale.caliper(draft.unit()));
  }

  /** In one line, for the strip that stays in sight. */
  public String verdict() {
    return reads == null ? form.undone() : reads.verdict();
  }
}
