package org.proofcut.web.home;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.proofcut.bench.GearDesk;
import org.proofcut.bench.House;
import org.proofcut.bench.JobDesk;
import org.proofcut.bench.ShopFloor;
import org.proofcut.bench.WorkBench;
import org.proofcut.logbook.JobRecord;

/** The first page, and the way to be rid of the demo. */
@Path("/")
@Produces(MediaType.TEXT_HTML)
public class HomePages {

  private final JobDesk desk;
  private final ShopFloor floor;
  private final WorkBench bench;
  private final JobStates states;
  private final GearDesk gear;
  private final House house;
  private final String folder;

  HomePages(
      JobDesk desk,
      ShopFloor floor,
      WorkBench bench,
      JobStates states,
      GearDesk gear,
      House house,
      @ConfigProperty(name = "proofcut.folder") String folder) {
    this.desk = desk;
    this.floor = floor;
    this.bench = bench;
    this.states = states;
    this.gear = gear;
    this.house = house;
    this.folder = folder;
  }

  @CheckedTemplate(basePath = "home")
  static class Templates {
    private Templates() {}

    static native TemplateInstance home(
        List<JobState> jobs,
        String shop,
        int things,
        boolean demo,
        String folder,
        int toGet,
        int ownFaults);

    static native TemplateInstance demo(List<String> jobs, List<String> things);
  }

  @GET
  public TemplateInstance home() {
    return Templates.home(
        desk.jobs().stream().map(states::of).toList(),
        floor.about().getOrDefault("name", ""),
        floor.items().size(),
        isDemoThere(),
        folder,
        gear.toGet().size(),
        house.own().faults());
  }

  @GET
  @Path("demo/discard")
  public Response askToDiscard() {
    if (!isDemoThere()) {
      return toFirstPage();
    }
    return Response.ok(
            Templates.demo(
                demoJobs().stream().map(job -> job.typed().getOrDefault("name", "")).toList(),
                floor.demoNames()))
        .build();
  }

  @POST
  @Path("demo/discard")
  public Response discard() {
    demoJobs().forEach(job -> bench.discard(job.id()));
    floor.discardDemo();
    bench.planAllAgain();
    return toFirstPage();
  }

  private boolean isDemoThere() {
    return floor.hasDemo() || !demoJobs().isEmpty();
  }

  private List<JobRecord> demoJobs() {
    return desk.jobs().stream().filter(JobRecord::demo).toList();
  }

  private static Response toFirstPage() {
    return Response.seeOther(URI.create("/")).build();
  }
}
