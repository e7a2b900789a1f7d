package org.proofcut.web.storage;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import org.proofcut.bench.PlannedCabinet;
import org.proofcut.bench.StorageDesk;
import org.proofcut.core.drawing.CabinetElevation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.shop.GearLife;
import org.proofcut.core.storage.Fitting;
import org.proofcut.core.storage.HookSheet.Hook;
import org.proofcut.core.storage.Place;
import org.proofcut.web.part.WorkingLine;

/** Where each hook of a cabinet is screwed in, as a sheet for the bench. */
@Path("/storage/cabinets/{id}/hooks")
@Produces(MediaType.TEXT_HTML)
public class HookPages {

  private final StorageDesk desk;

  HookPages(StorageDesk desk) {
    this.desk = desk;
  }

  /**
   * A row of hooks.
   *
   * @param corner from where all its hooks are measured
   * @param found how that corner is found; empty where it is plain
   * @param side from which side its hooks are measured
   * @param pilot diameter of the holes
   * @param batten thickness of the batten that has to be there first; empty where the panel holds
   * @param screw how deep a screw may go, into the batten or the panel
   */
  record RowView(
      String name,
      String corner,
      String found,
      String side,
      String fromBottom,
      String panel,
      String pilot,
      String batten,
      String screw,
      List<HookView> hooks) {}

  /** One hook. */
  record HookView(
      int number,
      String holds,
      String fromSide,
      String fromBottom,
      String load,
      List<WorkingLine> working) {}

  /** Everything on the sheet. */
  record HooksView(
      String id,
      String cabinet,
      String standing,
      String day,
      List<RowView> rows,
      List<WallView> walls) {}

  /**
   * What hangs on a wall.
   *
   * @param height of the hooks above the floor
   */
  record WallView(String name, String height, List<HungView> hung) {}

  /** One thing that hangs there, with its own weight. */
  record HungView(int number, String name, String weight) {}

  @CheckedTemplate(basePath = "storage")
  static class Templates {
    private Templates() {}

    static native TemplateInstance hooks(HooksView page);
  }

  @GET
  public TemplateInstance page(@PathParam("id") String id) {
    var planned = LabelPages.planned(desk, id);
    var rows = new LinkedHashMap<Place, List<Hook>>();
    planned
        .hooks()
        .hooks()
        .forEach(hook -> rows.computeIfAbsent(hook.row(), any -> new ArrayList<>()).add(hook));
    return Templates.hooks(
        new HooksView(
            id,
            planned.cabinet().name(),
            PlanView.standing(planned),
            GearLife.inWords(desk.today()),
            rows.entrySet().stream()
                .map(row -> row(row.getKey(), row.getValue(), planned))
                .toList(),
            planned
                .task()
                .cabinet()
                .fittings(Fitting.Wall.class)
                .filter(wall -> !planned.plan().in(wall.id()).isEmpty())
                .map(wall -> wall(wall, planned))
                .toList()));
  }

  private static WallView wall(Fitting.Wall wall, PlannedCabinet planned) {
    var numbers = CabinetElevation.numbers(planned.places(), planned.plan());
    return new WallView(
        Says.capital(wall.name()),
        Says.length(wall.at(), planned.cabinet().unit()),
        planned.plan().in(wall.id()).stream()
            .map(
                put ->
                    new HungView(
                        numbers.get(put.thing().id()),
                        Says.capital(put.thing().name()),
                        Says.weight(put.thing().grams())))
            .toList());
  }

  private static RowView row(Place place, List<Hook> hooks, PlannedCabinet planned) {
    var unit = planned.cabinet().unit();
    var first = hooks.get(0);
    return new RowView(
        Says.capital(place.name()),
        first.corner(),
        place.isOnDoor()
            ? "A door that overlaps the frame reaches past that corner: shut it, and mark the opening"
                + " on it from inside."
            : "",
        place.isOnDoor() ? "from the hinges" : "from left",
        Says.length(first.spot().fromBottom().value(), unit),
        caliper(first.panel().value(), unit),
        caliper(first.pilot().value(), unit),
        first.batten().map(batten -> Says.length(batten.value(), unit)).orElse(""),
        "goes in " + caliper(first.goesIn().value(), unit) + " at most",
        hooks.stream().map(hook -> hook(hook, planned)).toList());
  }

  private static HookView hook(Hook hook, PlannedCabinet planned) {
    var unit = planned.cabinet().unit();
    var numbers = CabinetElevation.numbers(planned.places(), planned.plan());
    var working = new ArrayList<WorkingLine>();
    for (Worked<?> one : worked(hook)) {
      working.addAll(WorkingLine.of(one, Scale.rule(unit)));
    }
    return new HookView(
        numbers.get(hook.holds().id()),
        Says.capital(hook.holds().name()),
        Says.length(hook.spot().fromSide().value(), unit),
        Says.length(hook.spot().fromBottom().value(), unit),
        kilograms(hook.load().value()),
        working);
  }

  private static List<Worked<?>> worked(Hook hook) {
    var all = new ArrayList<Worked<?>>(List.of(hook.spot().fromSide(), hook.load(), hook.pilot()));
    all.add(hook.goesIn());
    return all;
  }

  private static String caliper(Length length, LengthUnit unit) {
    return Scale.caliper(unit).show(length).text();
  }

  /** A load is rounded up. */
  private static String kilograms(int grams) {
    return BigDecimal.valueOf(grams)
            .movePointLeft(3)
            .setScale(1, RoundingMode.CEILING)
            .toPlainString()
        + " kg";
  }
}
