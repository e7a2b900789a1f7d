package org.proofcut.web.weight;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import org.proofcut.bench.JobDesk;
import org.proofcut.bench.LoadDesk;
import org.proofcut.web.part.LiveForm;

/** Whether the finished case of a job tips. What was typed stands in the address. */
@Path("/jobs/{job}/standing")
@Produces(MediaType.TEXT_HTML)
public class StandPages {

  private final LoadDesk desk;
  private final JobDesk jobs;

  StandPages(LoadDesk desk, JobDesk jobs) {
    this.desk = desk;
    this.jobs = jobs;
  }

  @CheckedTemplate(basePath = "weight")
  static class Templates {
    private Templates() {}

    static native TemplateInstance stand(StandView page);

    static native TemplateInstance standLive(StandView page);
  }

  @GET
  public TemplateInstance page(@PathParam("job") String job, @Context UriInfo address) {
    var known = WeightPages.known(jobs, job);
    return desk.stand(known, LiveForm.typed(address))
        .map(draft -> Templates.stand(StandView.of(known, draft)))
        .orElseGet(() -> WeightPages.Templates.unsound(known.id(), "Whether it tips"));
  }

  /** What it comes to while it is typed; the page's address follows. */
  @GET
  @Path("answer")
  public Response answer(@PathParam("job") String job, @Context UriInfo address) {
    var known = WeightPages.known(jobs, job);
    return desk.stand(known, LiveForm.typed(address))
        .map(draft -> StandView.of(known, draft))
        .map(page -> LiveForm.answer(Templates.standLive(page), page.action(), address))
        .orElseGet(() -> Response.status(Response.Status.NOT_FOUND).build());
  }
}
