package org.proofcut.web.api;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Response;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.proofcut.bench.ShopFloor;
import org.proofcut.bench.StorageDesk;
import org.proofcut.calendar.DueCalendar;

/** What falls due, for a calendar that looks here from time to time. */
@Path("/storage/due.ics")
class DueCalendarResource {

  private static final String CALENDAR = "text/calendar;charset=UTF-8";

  private final StorageDesk desk;
  private final ShopFloor floor;
  private final Clock clock;

  DueCalendarResource(StorageDesk desk, ShopFloor floor, Clock clock) {
    this.desk = desk;
    this.floor = floor;
    this.clock = clock;
  }

  @GET
  @Produces(CALENDAR)
  @Operation(hidden = true)
  public Response due() {
    var name = "Gear, " + floor.about().getOrDefault("name", "my shop");
    var places = desk.places();
    var text =
        DueCalendar.text(
            name, desk.due(), clock.instant(), thing -> Optional.ofNullable(places.get(thing)));
    return Response.ok(text.getBytes(StandardCharsets.UTF_8), CALENDAR)
        .header("Content-Disposition", "inline; filename=\"due.ics\"")
        .build();
  }
}
