package org.proofcut.web.storage;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.bench.House;
import org.proofcut.bench.PlannedCabinet;
import org.proofcut.bench.StorageDesk;
import org.proofcut.core.drawing.CabinetElevation;
import org.proofcut.core.drawing.Sign;
import org.proofcut.core.shop.GearLife;
import org.proofcut.core.storage.Due;
import org.proofcut.core.storage.Put;
import org.proofcut.core.storage.Thing;

/** Labels of the places of a cabinet, to print and cut out. */
@Path("/storage/cabinets/{id}/labels")
@Produces(MediaType.TEXT_HTML)
public class LabelPages {

  /** Signs of kinds that nobody wears, by what their ids begin with. */
  private static final Map<String, Sign> SIGNS =
      Map.of("first-aid", Sign.FIRST_AID, "fire-extinguisher", Sign.EXTINGUISHER);

  private final StorageDesk desk;
  private final House house;

  LabelPages(StorageDesk desk, House house) {
    this.desk = desk;
    this.house = house;
  }

  /**
   * One label.
   *
   * @param sign null where there is none for it
   * @param next the day on which something next falls due; empty where nothing does
   */
  record Label(int number, String name, String place, Sign sign, String next) {

    /** Letters of name and place that a label holds in its usual size. */
    private static final int MOST_LETTERS = 40;

    /** Whether it is set in smaller letters, so that none of it is cut off. */
    public boolean isLong() {
      return name.length() + place.length() > MOST_LETTERS;
    }
  }

  @CheckedTemplate(basePath = "storage")
  static class Templates {
    private Templates() {}

    static native TemplateInstance labels(
        String id, String cabinet, String standing, String day, List<Label> labels);
  }

  @GET
  public TemplateInstance page(@PathParam("id") String id) {
    var planned = planned(desk, id);
    var due = desk.due();
    var numbers = CabinetElevation.numbers(planned.places(), planned.plan());
    return Templates.labels(
        id,
        planned.cabinet().name(),
        PlanView.standing(planned),
        GearLife.inWords(desk.today()),
        planned.places().stream()
            .flatMap(place -> planned.plan().in(place.id()).stream())
            .map(put -> label(put, numbers.get(put.thing().id()), due))
            .toList());
  }

  /** The plan of a cabinet, if there is such a cabinet and it can be planned. */
  static PlannedCabinet planned(StorageDesk desk, String id) {
    return desk.plan(id).orElseThrow(NotFoundException::new);
  }

  private Label label(Put put, int number, List<Due> due) {
    var thing = put.thing();
    return new Label(
        number,
        Says.capital(thing.name()),
        Says.capital(put.place().name()),
        sign(thing).orElse(null),
        Says.next(thing.id(), due).map(GearLife::inWords).orElse(""));
  }

  private Optional<Sign> sign(Thing thing) {
    var gear = thing.kind().gear().map(house.content().wording().gear()::get);
    return gear.isPresent()
        ? Arrays.stream(Sign.values())
            .filter(sign -> !sign.see().isEmpty() && sign.see().equals(gear.get().sign()))
            .findFirst()
        : SIGNS.keySet().stream().filter(thing.kind().id()::startsWith).map(SIGNS::get).findFirst();
  }
}
