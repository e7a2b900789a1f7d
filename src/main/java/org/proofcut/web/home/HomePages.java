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
import java.util.Locale;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.proofcut.bench.GearDesk;
import org.proofcut.bench.House;
import org.proofcut.bench.JobDesk;
import org.proofcut.bench.OutOfPlace;
import org.proofcut.bench.ShopFloor;
import org.proofcut.bench.StorageDesk;
import org.proofcut.bench.WorkBench;
import org.proofcut.core.shop.GearLife;
import org.proofcut.core.storage.Due;
import org.proofcut.logbook.JobRecord;

/** The first page, and the way to be rid of the demo. */
@Path("/")
@Produces(MediaType.TEXT_HTML)
public class HomePages {

  /** More than these stand on the page of gear storage only. */
  private static final int MOST_DUE = 3;

  private final JobDesk desk;
  private final ShopFloor floor;
  private final WorkBench bench;
  private final JobStates states;
  private final GearDesk gear;
  private final StorageDesk storage;
  private final House house;
  private final String folder;

  HomePages(
      JobDesk desk,
      ShopFloor floor,
      WorkBench bench,
      JobStates states,
      GearDesk gear,
      StorageDesk storage,
      House house,
      @ConfigProperty(name = "proofcut.folder") String folder) {
    this.desk = desk;
    this.floor = floor;
    this.bench = bench;
    this.states = states;
    this.gear = gear;
    this.storage = storage;
    this.house = house;
    this.folder = folder;
  }

  /**
   * How the gear stands.
   *
   * @param due the first of what is overdue or soon due
   * @param more how many more there are
   * @param out what is out of its place, longest out first
   */
  record GearState(List<DueLine> due, int more, List<OutOfPlace> out) {

    public boolean isQuiet() {
      return due.isEmpty() && out.isEmpty();
    }
  }

  /** Something that is to be done to a piece of gear. */
  record DueLine(String thing, String name, String what, String when, boolean overdue) {}

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
        GearState storage,
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
        gearState(),
        house.own().faults());
  }

  private GearState gearState() {
    var due = storage.dueSoon();
    return new GearState(
        due.stream().limit(MOST_DUE).map(HomePages::line).toList(),
        Math.max(0, due.size() - MOST_DUE),
        storage.out());
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private static DueLine line(Due due) {
    return new DueLine(
        due.thing(),
        capital(due.name()),
        due.what(),
        due.on()
            .map(GearLife::inWords)
            .map(day -> by(due) + day)
            .orElse((due.overdue() ? "Overdue: " : "") + "not known since when"),
        due.overdue());
  }

  private static String by(Due due) {
    if (due.ageing().equals(Due.FAILED)) {
      return "Failed on ";
    }
    return due.overdue() ? "Overdue: was due by " : due.ends() ? "ends on " : "due by ";
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
