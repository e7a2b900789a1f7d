package org.proofcut.web.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.proofcut.bench.GearDesk;
import org.proofcut.bench.House;
import org.proofcut.bench.ShopFloor;
import org.proofcut.bench.WorkBench;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.ItemForm;
import org.proofcut.core.intake.ShopForms;
import org.proofcut.logbook.ShopItem;
import org.proofcut.logbook.ShopItem.Shelf;

/** What stands in the shop. */
@Path("/api/shop")
@Produces(MediaType.APPLICATION_JSON)
@Faults.Told
class ShopResource {

  private static final int LONGEST_KIND = 40;
  private static final Set<String> SHELVES =
      Arrays.stream(Shelf.values())
          .filter(shelf -> shelf != Shelf.SHOP)
          .map(ShopJson::word)
          .collect(Collectors.toUnmodifiableSet());

  private final ShopFloor floor;
  private final WorkBench bench;
  private final House house;
  private final GearDesk gear;

  ShopResource(ShopFloor floor, WorkBench bench, House house, GearDesk gear) {
    this.gear = gear;
    this.floor = floor;
    this.bench = bench;
    this.house = house;
  }

  @GET
  @Operation(summary = "The shop with all that stands in it, as typed")
  public ShopJson.Everything shop() {
    return new ShopJson.Everything(
        floor.about().getOrDefault("name", ""),
        floor.unit().symbol(),
        floor.hasDemo(),
        floor.shop().aidsAtHand(),
        items());
  }

  @GET
  @Path("/items")
  @Operation(summary = "All that stands in the shop, as typed")
  public List<ShopJson.Thing> items() {
    return floor.items().stream().map(ShopJson::thing).toList();
  }

  @GET
  @Path("/forms")
  @Operation(summary = "The fields of every kind of thing that a shop may have")
  public List<ShopJson.Form> forms() {
    var forms = new ArrayList<ShopJson.Form>();
    ShopForms.MACHINES.forEach(form -> forms.add(ShopJson.form(Shelf.MACHINE, form)));
    ShopForms.CUTTER_KINDS.forEach(form -> forms.add(ShopJson.form(Shelf.CUTTER, form)));
    var wording = house.content().wording();
    wording.gear().keySet().forEach(kind -> forms.add(form(Shelf.GEAR, kind)));
    floor.kitKinds().forEach(kind -> forms.add(form(Shelf.KIT, kind.id())));
    house
        .content()
        .liquids()
        .values()
        .forEach(kind -> forms.add(ShopJson.form(Shelf.LIQUID, ShopForms.liquid(kind))));
    wording
        .aids()
        .values()
        .forEach(
            aid ->
                forms.add(
                    new ShopJson.Form(ShopJson.word(Shelf.AID), aid.id(), aid.name(), List.of())));
    return forms;
  }

  private ShopJson.Form form(Shelf shelf, String kind) {
    return ShopJson.form(shelf, floor.form(shelf, kind).orElseThrow());
  }

  @GET
  @Path("/to-get")
  @Operation(summary = "Protective gear that is missing, out of date or ends within 30 days")
  public List<ShopJson.Missing> toGet() {
    return gear.toGet().stream().map(ShopJson::missing).toList();
  }

  @GET
  @Path("/items/{id}")
  @Operation(summary = "One thing, as typed")
  public ShopJson.Thing item(@PathParam("id") String id) {
    return ShopJson.thing(kept(id));
  }

  @POST
  @Path("/items")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Puts a thing into the shop")
  @RequestBody(
      required = true,
      content = @Content(schema = @Schema(implementation = ShopJson.ThingTyped.class)))
  @APIResponse(
      responseCode = "201",
      description = "It is kept",
      content = @Content(schema = @Schema(implementation = ShopJson.Thing.class)))
  public Response add(byte[] sent) {
    var thing = read(sent);
    var kept = ShopJson.thing(kept(keep(Optional.empty(), thing)));
    return Response.created(URI.create("/api/shop/items/" + kept.id())).entity(kept).build();
  }

  @PUT
  @Path("/items/{id}")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Changes a thing; every job in work is planned again")
  @RequestBody(
      required = true,
      content = @Content(schema = @Schema(implementation = ShopJson.ThingTyped.class)))
  public ShopJson.Thing change(@PathParam("id") String id, byte[] sent) {
    var before = kept(id);
    var thing = read(sent);
    if (thing.shelf != before.shelf() || !thing.kind.equals(before.kind())) {
      throw ProblemDetail.refusal(
          ProblemKind.FIELDS,
          Problem.stops(
              "kind",
              "It is another kind of thing",
              ShopJson.word(before.shelf()) + ", " + before.kind(),
              "Put the other thing in anew and take this one out"));
    }
    return ShopJson.thing(kept(keep(Optional.of(id), thing)));
  }

  @DELETE
  @Path("/items/{id}")
  @Operation(summary = "Takes a thing out; every job in work is planned again")
  public void remove(@PathParam("id") String id) {
    floor.remove(kept(id).id());
    bench.planAllAgain();
  }

  private ShopItem kept(String id) {
    return floor
        .item(id)
        .orElseThrow(
            () ->
                ProblemDetail.notThere(
                    "There is no such thing in the shop", "Look at the list of the shop"));
  }

  private record Thing(Shelf shelf, String kind, Map<String, String> typed) {}

  private Thing read(byte[] sent) {
    var body = Body.of(sent).only("shelf", "kind", "typed");
    var word = body.word("shelf", SHELVES);
    var kind = body.text("kind", LONGEST_KIND);
    body.check();
    var shelf = Shelf.valueOf(word.toUpperCase(Locale.ROOT));
    var typed = body.typed("typed", fields(shelf, kind));
    body.check();
    return new Thing(shelf, kind, typed);
  }

  private Set<String> fields(Shelf shelf, String kind) {
    if (shelf == Shelf.AID && house.content().wording().aids().containsKey(kind)) {
      return Set.of();
    }
    return floor
        .form(shelf, kind)
        .map(ItemForm::fields)
        .map(Body::names)
        .orElseThrow(
            () ->
                ProblemDetail.refusal(
                    ProblemKind.FIELDS,
                    Problem.stops(
                        "kind",
                        "There is no such kind on this shelf",
                        "a kind that /api/shop/forms lists",
                        "Look at the forms and choose one")));
  }

  private String keep(Optional<String> id, Thing thing) {
    String kept;
    if (thing.shelf == Shelf.AID) {
      floor.keepAid(thing.kind, true);
      kept =
          floor.items().stream()
              .filter(item -> item.shelf() == Shelf.AID && item.kind().equals(thing.kind))
              .findFirst()
              .orElseThrow()
              .id();
    } else {
      var read = floor.keep(id, thing.shelf, thing.kind, thing.typed);
      kept =
          read.value()
              .orElseThrow(() -> ProblemDetail.refusal(ProblemKind.FIELDS, read.problems()));
    }
    bench.planAllAgain();
    return kept;
  }
}
