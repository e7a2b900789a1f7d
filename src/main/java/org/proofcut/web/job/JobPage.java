package org.proofcut.web.job;

import java.util.List;
import org.proofcut.core.evidence.Problem;

/**
 * Everything on the page of a job.
 *
 * @param id of the job; empty for one that was never kept
 * @param title its name as kept
 * @param refused why it could not be kept; empty where nobody tried
 * @param kept what is said of keeping: "Saved", "Not saved", or nothing
 * @param asKept whether the fields say what is kept
 * @param begun whether work has begun
 * @param otherUnit the unit that bare numbers take now, where it is not the one that was kept; else
 *     empty
 */
record JobPage(
    String id,
    String title,
    JobSections sections,
    CaseAnswer answer,
    List<Problem> refused,
    String kept,
    boolean asKept,
    boolean begun,
    String otherUnit) {

  JobPage {
    refused = List.copyOf(refused);
  }

  public String action() {
    return id.isEmpty() ? "/jobs" : "/jobs/" + id;
  }

  public String sheets() {
    return "/jobs/" + id + "/sheets";
  }

  public String weights() {
    return action() + "/weights";
  }

  public String standing() {
    return action() + "/standing";
  }

  public boolean canBegin() {
    return answer.sound() && asKept && !begun;
  }
}
