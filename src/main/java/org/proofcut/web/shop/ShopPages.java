package org.proofcut.web.shop;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.proofcut.bench.GearDesk;
import org.proofcut.bench.House;
import org.proofcut.bench.ShopFloor;
import org.proofcut.bench.WorkBench;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.Field;
import org.proofcut.core.intake.ItemForm;
import org.proofcut.core.intake.ShopForms;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.shop.GearOffer;
import org.proofcut.core.shop.Shop;
import org.proofcut.core.shop.WorkAid;
import org.proofcut.core.storage.Need;
import org.proofcut.core.storage.ThingKind;
import org.proofcut.logbook.ShopItem;
import org.proofcut.logbook.ShopItem.Shelf;
import org.proofcut.web.part.Asked;
import org.proofcut.web.part.Sent;

/** The shop as entered, and the forms to change it. */
@Path("/shop")
@Produces(MediaType.TEXT_HTML)
@Consumes(MediaType.APPLICATION_FORM_URLENCODED)
public class ShopPages {

  private static final int NOT_ACCEPTED = 422;
  private static final int SHOWN_FIGURES = 3;
  private static final int LONGEST_HELD = 16;

  /** Stays at the end of a line, never at its beginning. */
  private static final String SEPARATOR = "\u00a0· ";

  private final ShopFloor floor;
  private final WorkBench bench;
  private final House house;
  private final GearDesk gear;

  ShopPages(ShopFloor floor, WorkBench bench, House house, GearDesk gear) {
    this.gear = gear;
    this.floor = floor;
    this.bench = bench;
    this.house = house;
  }

  /** All things of one kind. */
  record Kind(String title, List<Thing> things, String addHref, String addLabel) {}

  /**
   * One thing.
   *
   * @param state whether gear serves, in words; null for other things
   * @param shape the shape beside these words
   */
  record Thing(String id, String name, String figures, String state, String shape) {}

  /**
   * One kind of work aid.
   *
   * @param ticked whether one is at hand that is not entered as a thing
   * @param entered names of those that are entered and will do
   * @param unfit those that are entered and won't do, each with why
   */
  record Aid(String kind, String name, boolean ticked, List<String> entered, List<String> unfit) {

    public boolean isAtHand() {
      return ticked || !entered.isEmpty();
    }

    /** In words. */
    public String state() {
      return entered.isEmpty()
          ? isAtHand() ? "At hand" : "None at hand"
          : "At hand: " + String.join(", ", entered);
    }
  }

  /** A group of kinds under one heading. */
  record Group(String id, String title, List<Kind> kinds) {}

  /**
   * The form of one thing.
   *
   * @param id of the thing; empty for a new one
   * @param save words of the button that keeps it
   * @param hint on where its figures stand
   */
  record ThingForm(
      String id,
      String title,
      String save,
      String action,
      String hint,
      List<Asked> fields,
      List<Problem> refused) {}

  @CheckedTemplate(basePath = "shop")
  static class Templates {
    private Templates() {}

    static native TemplateInstance shop(
        String name,
        List<Asked> about,
        List<Problem> refused,
        List<Group> groups,
        List<Aid> aids,
        int toGet,
        int ownFaults);

    static native TemplateInstance thing(ThingForm form);

    static native TemplateInstance remove(String id, String name, String kind);
  }

  @GET
  public TemplateInstance shop() {
    return shown(floor.about(), List.of());
  }

  /** Name and unit of the shop, and where it stands. */
  @POST
  public Response keepAbout(String form) {
    var typed = Sent.typed(form);
    var read = floor.readAbout(typed);
    if (read.value().isEmpty()) {
      return refused(shown(typed, read.problems()));
    }
    floor.keepAbout(read.value().get());
    // What is law may have changed with where the shop stands.
    bench.planAllAgain();
    return toShop("");
  }

  @GET
  @Path("{shelf}/new")
  public TemplateInstance askNew(
      @PathParam("shelf") String shelf, @QueryParam("kind") String kind) {
    return shown(Optional.empty(), shelf(shelf), kind(kind), Map.of(), List.of());
  }

  @POST
  @Path("{shelf}/new")
  public Response keepNew(
      @PathParam("shelf") String shelf, @QueryParam("kind") String kind, String form) {
    return keep(Optional.empty(), shelf(shelf), kind(kind), Sent.typed(form));
  }

  @GET
  @Path("items/{id}")
  public TemplateInstance item(@PathParam("id") String id) {
    var item = known(id);
    return shown(Optional.of(id), item.shelf(), item.kind(), item.typed(), List.of());
  }

  @POST
  @Path("items/{id}")
  public Response keep(@PathParam("id") String id, String form) {
    var item = known(id);
    return keep(Optional.of(id), item.shelf(), item.kind(), Sent.typed(form));
  }

  private Response keep(Optional<String> id, Shelf shelf, String kind, Map<String, String> typed) {
    form(shelf, kind);
    var kept = floor.keep(id, shelf, kind, typed);
    if (kept.value().isEmpty()) {
      return refused(shown(id, shelf, kind, typed, kept.problems()));
    }
    return changed(shelf);
  }

  @GET
  @Path("items/{id}/remove")
  public TemplateInstance askToRemove(@PathParam("id") String id) {
    var item = known(id);
    return Templates.remove(id, name(item), form(item.shelf(), item.kind()).title());
  }

  @POST
  @Path("items/{id}/remove")
  public Response remove(@PathParam("id") String id) {
    var item = known(id);
    floor.remove(id);
    return changed(item.shelf());
  }

  @POST
  @Path("aids/{kind}")
  public Response keepAid(@PathParam("kind") String kind, String form) {
    if (!house.content().wording().aids().containsKey(kind)) {
      throw new NotFoundException();
    }
    switch (Sent.typed(form).getOrDefault("at-hand", "")) {
      case "yes" -> floor.keepAid(kind, true);
      case "no" -> floor.keepAid(kind, false);
      default -> {
        return toShop("#aids");
      }
    }
    return changed(Shelf.AID);
  }

  /** What every job in work is planned with has changed. */
  private Response changed(Shelf shelf) {
    bench.planAllAgain();
    return toShop("#" + path(shelf));
  }

  private static Response toShop(String place) {
    return Response.seeOther(URI.create("/shop" + place)).build();
  }

  private static Response refused(TemplateInstance page) {
    return Response.status(NOT_ACCEPTED).entity(page).build();
  }

  private TemplateInstance shown(Map<String, String> about, List<Problem> refused) {
    var fields =
        floor.aboutFields().stream()
            .map(field -> Asked.of(field, about, refused, floor.unit()))
            .toList();
    return Templates.shop(
        floor.about().getOrDefault("name", ""),
        fields,
        refused,
        groups(),
        aids(),
        gear.toGet().size(),
        house.own().faults());
  }

  private List<Group> groups() {
    var items = floor.items();
    // Read once for all of them.
    var shop = floor.shop();
    return List.of(
        group(items, shop, Shelf.MACHINE, "Machines", ShopForms.MACHINES.stream()),
        group(items, shop, Shelf.CUTTER, "Cutters and blades", ShopForms.CUTTER_KINDS.stream()),
        group(
            items,
            shop,
            Shelf.GEAR,
            "Protective gear",
            house.content().wording().gear().keySet().stream().map(kind -> form(Shelf.GEAR, kind))),
        group(
            items,
            shop,
            Shelf.KIT,
            "First aid, fire, push sticks and the like",
            floor.kitKinds().stream()
                .filter(kind -> !isKeptElsewhere(kind))
                .map(kind -> form(Shelf.KIT, kind.id()))),
        group(
            items,
            shop,
            Shelf.LIQUID,
            "Glues and finishes",
            house.content().liquids().keySet().stream().map(kind -> form(Shelf.LIQUID, kind))));
  }

  /** What never comes near gear is named on the card of its cabinet, not entered here. */
  private static boolean isKeptElsewhere(ThingKind kind) {
    return kind.keeping().stream().anyMatch(keeping -> keeping.need() == Need.ELSEWHERE);
  }

  private Group group(
      List<ShopItem> items,
      Shop shop,
      Shelf shelf,
      String title,
      Stream<? extends ItemForm<?>> forms) {
    return new Group(
        path(shelf), title, forms.map(form -> kind(items, shop, shelf, form)).toList());
  }

  private Kind kind(List<ShopItem> items, Shop shop, Shelf shelf, ItemForm<?> form) {
    return new Kind(
        capital(form.title()),
        items.stream()
            .filter(item -> item.shelf() == shelf && item.kind().equals(form.kind()))
            .map(item -> thing(item, shop, form))
            .toList(),
        "/shop/" + path(shelf) + "/new?kind=" + form.kind(),
        "Add: " + lower(form.title()));
  }

  private Thing thing(ShopItem item, Shop shop, ItemForm<?> form) {
    var today = gear.today();
    var piece = shop.gear().stream().filter(one -> one.id().equals(item.id())).findFirst();
    var idle = piece.flatMap(one -> one.idleOn(today));
    var soon = piece.flatMap(one -> one.life().soonAfter(today));
    return new Thing(
        item.id(),
        name(item),
        figures(item, form) + category(item, shop),
        idle.map(why -> "Not to be worn: " + why)
            .or(() -> soon.map(why -> "Soon: " + why))
            .or(() -> piece.map(one -> "In use"))
            .orElse(null),
        idle.isPresent() ? "shape-stop" : soon.isPresent() ? "shape-now" : "shape-done");
  }

  /** The few figures that tell two of a kind apart. */
  private String figures(ShopItem item, ItemForm<?> form) {
    var unit = floor.unitOf(item);
    return form.fields().stream()
        .filter(field -> field.entry() != Field.Entry.SPEEDS && !field.name().equals("name"))
        .map(field -> Asked.of(field, item.typed(), List.of(), unit))
        .filter(asked -> !asked.value().isBlank())
        .limit(SHOWN_FIGURES)
        .map(asked -> asked.label() + (asked.label().endsWith("?") ? " " : ": ") + held(asked))
        .reduce((one, other) -> one + SEPARATOR + other)
        .orElse("");
  }

  /** A number keeps its unit on its line; longer words may be broken. */
  private static String held(Asked asked) {
    var said = asked.said();
    return said.length() > LONGEST_HELD ? said : said.replace(' ', '\u00a0');
  }

  /** How easily a liquid takes fire; nothing for what is none. */
  private static String category(ShopItem item, Shop shop) {
    return shop.liquids().stream()
        .filter(liquid -> liquid.id().equals(item.id()))
        .map(liquid -> SEPARATOR + liquid.category().value())
        .findFirst()
        .orElse("");
  }

  private List<Aid> aids() {
    var shop = floor.shop();
    return house.content().wording().aids().values().stream().map(aid -> aid(aid, shop)).toList();
  }

  private Aid aid(WorkAid aid, Shop shop) {
    var today = gear.today();
    var offer = GearOffer.of(aid, shop);
    return new Aid(
        aid.id(),
        capital(aid.name()),
        shop.aids().contains(aid.id()),
        offer.pieces().stream()
            .filter(piece -> piece.isEntered() && piece.refusedOn(today).isEmpty())
            .map(
                piece ->
                    piece.place().isEmpty()
                        ? piece.name()
                        : piece.name() + " (" + piece.place() + ")")
            .toList(),
        offer.refused(today).stream().map(ShopPages::capital).toList());
  }

  private TemplateInstance shown(
      Optional<String> id,
      Shelf shelf,
      String kind,
      Map<String, String> typed,
      List<Problem> refused) {
    var form = form(shelf, kind);
    var unit = id.map(this::known).map(floor::unitOf).orElseGet(floor::unit);
    return Templates.thing(
        new ThingForm(
            id.orElse(""),
            capital(form.title()),
            "Save the " + lower(form.title()),
            id.map(it -> "/shop/items/" + it)
                .orElse("/shop/" + path(shelf) + "/new?kind=" + form.kind()),
            hint(shelf, unit),
            form.fields().stream().map(field -> Asked.of(field, typed, refused, unit)).toList(),
            refused));
  }

  private static String hint(Shelf shelf, LengthUnit unit) {
    return shelf == Shelf.LIQUID
        ? "What its label and its safety data sheet say. Write the unit behind a temperature."
        : "A number without a unit is in "
            + (unit == LengthUnit.INCH ? "inches" : "millimetres")
            + ". Figures come from the machine's own plate and manual, or from your caliper.";
  }

  private ItemForm<?> form(Shelf shelf, String kind) {
    return floor.form(shelf, kind).orElseThrow(NotFoundException::new);
  }

  /** A work aid has no form: it is at hand or it is not. */
  private ShopItem known(String id) {
    return floor
        .item(id)
        .filter(item -> item.shelf() != Shelf.AID)
        .orElseThrow(NotFoundException::new);
  }

  private static Shelf shelf(String path) {
    return Stream.of(Shelf.MACHINE, Shelf.CUTTER, Shelf.GEAR, Shelf.KIT, Shelf.LIQUID)
        .filter(shelf -> path(shelf).equals(path))
        .findFirst()
        .orElseThrow(NotFoundException::new);
  }

  private static String path(Shelf shelf) {
    return switch (shelf) {
      case MACHINE -> "machines";
      case CUTTER -> "cutters";
      case GEAR -> "gear";
      case KIT -> "kit";
      case AID -> "aids";
      case LIQUID -> "liquids";
      case SHOP -> "about";
    };
  }

  private static String kind(String asked) {
    return asked == null ? "" : asked;
  }

  private static String name(ShopItem item) {
    return item.typed().getOrDefault("name", item.kind());
  }

  static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private static String lower(String words) {
    return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
  }
}
