package org.proofcut.web.sheet;

import jakarta.ws.rs.CookieParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import org.proofcut.bench.JobDesk;
import org.proofcut.bench.WorkBench;

/** Begins work on a job: from then on its plan is kept, and its sheets are open. */
@Path("/jobs/{job}/begin")
@Produces(MediaType.TEXT_HTML)
public class BeginPages {

  private final JobDesk desk;
  private final WorkBench bench;

  BeginPages(JobDesk desk, WorkBench bench) {
    this.desk = desk;
    this.bench = bench;
  }

  @POST
  public Response begin(
      @PathParam("job") String job, @CookieParam(SheetPages.TABLET) String tablet) {
    if (desk.job(job).isEmpty()) {
      return SheetPages.noWork(tablet);
    }
    var problems = bench.begin(job);
    return problems.isEmpty()
        ? SheetPages.seeOther("/jobs/" + job + "/sheets", tablet)
        : SheetPages.page(
            SheetPages.Templates.cannotBegin(job, problems), SheetPages.UNPROCESSABLE, tablet);
  }
}
