package org.proofcut.web.home;

import jakarta.enterprise.context.ApplicationScoped;
import org.proofcut.bench.Draft;
import org.proofcut.bench.JobDesk;
import org.proofcut.bench.Work;
import org.proofcut.bench.WorkBench;
import org.proofcut.core.casework.CaseDesign;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.logbook.JobRecord;
import org.proofcut.logbook.UnreadableException;

/** Where each job stands, and what is to be done next on it. */
@ApplicationScoped
class JobStates {

  private final JobDesk desk;
  private final WorkBench bench;

  JobStates(JobDesk desk, WorkBench bench) {
    this.desk = desk;
    this.bench = bench;
  }

  JobState of(JobRecord job) {
    var draft = desk.draft(job.typed());
    try {
      return bench
          .work(job.id())
          .map(work -> inWork(job, draft, work))
          .orElseGet(() -> notBegun(job, draft));
    } catch (UnreadableException unreadable) {
      // One record that can't be read must not hide the other jobs.
      return state(job, draft, "Its record can't be read", "stop", "Open the job", page(job));
    }
  }

  private static JobState inWork(JobRecord job, Draft draft, Work work) {
    int all = work.progress().sheets().size();
    if (work.isStopped()) {
      return state(job, draft, "Stopped: " + mend(work.problems()), "stop", "Mend it", page(job));
    }
    var current = work.progress().current();
    if (current.isEmpty()) {
      return state(
          job,
          draft,
          "Done: all " + all + " sheets signed off",
          "done",
          "Look at the sheets",
          page(job) + "/sheets");
    }
    int number = current.get().sheet().number();
    return state(
        job,
        draft,
        "In work: sheet " + number + " of " + all,
        "now",
        "Go on with sheet " + number,
        page(job) + "/sheets/" + number);
  }

  private static JobState notBegun(JobRecord job, Draft draft) {
    if (!draft.isSound()) {
      return state(
          job, draft, "Not begun: " + mend(draft.problems()), "stop", "Mend it", page(job));
    }
    int sheets = draft.plan().orElseThrow().sheets().size();
    var state =
        state(
            job,
            draft,
            "Not begun: " + sheets + " sheets ahead",
            "open",
            "Begin work",
            page(job) + "/begin");
    return new JobState(
        state.id(),
        state.name(),
        state.size(),
        state.state(),
        state.shape(),
        state.next(),
        state.action(),
        true,
        state.demo());
  }

  private static String mend(java.util.List<Problem> problems) {
    long count = problems.stream().filter(Problem::stops).count();
    return count + (count == 1 ? " thing" : " things") + " to mend";
  }

  private static JobState state(
      JobRecord job, Draft draft, String words, String shape, String next, String action) {
    return new JobState(
        job.id(),
        job.typed().getOrDefault("name", ""),
        draft.plan().map(plan -> size(plan.designed().design())).orElse(""),
        words,
        shape,
        next,
        action,
        false,
        job.demo());
  }

  private static String size(CaseDesign design) {
    var scale = Scale.rule(design.unit());
    var outside = design.outside();
    return scale.show(outside.width()).number()
        + " wide × "
        + scale.show(outside.height()).number()
        + " high × "
        + scale.show(outside.depth()).number()
        + " deep, "
        + design.unit().symbol();
  }

  private static String page(JobRecord job) {
    return "/jobs/" + job.id();
  }
}
