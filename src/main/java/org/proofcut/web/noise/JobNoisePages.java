package org.proofcut.web.noise;

import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import org.proofcut.bench.NoiseDesk;
import org.proofcut.web.part.LiveForm;

/** The noise of a day on the sheets of a job. */
@Path("/jobs/{job}/noise")
@Produces(MediaType.TEXT_HTML)
public class JobNoisePages {

  private final NoiseDesk desk;

  JobNoisePages(NoiseDesk desk) {
    this.desk = desk;
  }

  @GET
  public TemplateInstance page(@PathParam("job") String job, @Context UriInfo address) {
    return NoisePages.Templates.page(view(job, address));
  }

  /** What the form comes to, while it is typed; the page's address follows. */
  @GET
  @Path("answer")
  public Response answer(@PathParam("job") String job, @Context UriInfo address) {
    return NoisePages.live(view(job, address), address);
  }

  private NoisePage view(String job, UriInfo address) {
    return desk.draft(job, LiveForm.typed(address))
        .map(NoisePage::of)
        .orElseThrow(NotFoundException::new);
  }
}
