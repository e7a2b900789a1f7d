package org.proofcut.web.sheet;

import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Optional;
import org.proofcut.bench.WorkBench;

/** Begins work on a job: from then on its plan is kept, and its sheets are open. */
@Path("/jobs/{job}/begin")
@Produces(MediaType.TEXT_HTML)
public class BeginPages {

  private final WorkBench bench;

  BeginPages(WorkBench bench) {
    this.bench = bench;
  }

  @POST
  public Response begin(@PathParam("job") String job) {
    var problems = bench.begin(job);
    return problems.isEmpty()
        ? Response.seeOther(URI.create("/jobs/" + job + "/sheets")).build()
        : SheetPages.page(
            SheetPages.Templates.cannotBegin(job, problems),
            SheetPages.UNPROCESSABLE,
            Optional.empty());
  }
}
