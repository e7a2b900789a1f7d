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
 * @param gearCabinet id of the gear cabinet that this case is; empty where it is none
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
    String otherUnit,
    String gearCabinet) {

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

  /** The gear cabinet that it is, or the form that makes it one. */
  public String gear() {
    return gearCabinet.isEmpty()
        ? "/storage/cabinets/new?job=" + id
        : "/storage/cabinets/" + gearCabinet;
  }

  public boolean canBegin() {
    return answer.sound() && asKept && !begun;
  }
}
