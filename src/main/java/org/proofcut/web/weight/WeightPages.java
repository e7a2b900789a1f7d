package org.proofcut.web.weight;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.proofcut.bench.JobDesk;
import org.proofcut.bench.LoadDesk;
import org.proofcut.logbook.JobRecord;

/** What a job weighs, the heaviest part first. */
@Path("/jobs/{job}/weights")
@Produces(MediaType.TEXT_HTML)
public class WeightPages {

  private final LoadDesk desk;
  private final JobDesk jobs;

  WeightPages(LoadDesk desk, JobDesk jobs) {
    this.desk = desk;
    this.jobs = jobs;
  }

  @CheckedTemplate(basePath = "weight")
  static class Templates {
    private Templates() {}

    static native TemplateInstance weights(WeightsView page);

    static native TemplateInstance unsound(String job, String title);
  }

  @GET
  public TemplateInstance page(@PathParam("job") String job) {
    var known = known(jobs, job);
    return desk.weights(known)
        .map(weights -> Templates.weights(WeightsView.of(weights, desk.liftLimits())))
        .orElseGet(() -> Templates.unsound(known.id(), "What it weighs"));
  }

  static JobRecord known(JobDesk jobs, String id) {
    return jobs.job(id).orElseThrow(NotFoundException::new);
  }
}
