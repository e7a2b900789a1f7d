package org.proofcut.web.storage;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.bench.KeptPerson;
import org.proofcut.bench.ShopFloor;
import org.proofcut.bench.StorageDesk;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.web.part.Asked;
import org.proofcut.web.part.Sent;
import org.proofcut.web.part.WorkingLine;

/** Those who take things out, and how far they reach. */
@Path("/storage/people")
@Produces(MediaType.TEXT_HTML)
@Consumes(MediaType.APPLICATION_FORM_URLENCODED)
public class PeoplePages {

  private static final int NOT_ACCEPTED = 422;

  private final StorageDesk desk;
  private final ShopFloor floor;

  PeoplePages(StorageDesk desk, ShopFloor floor) {
    this.desk = desk;
    this.floor = floor;
  }

  /** One person with their heights in a line. */
  record Row(String id, String name, String says, List<Estimate> estimated) {}

  /** A height that was not measured. */
  record Estimate(String says, List<WorkingLine> working) {}

  /**
   * The form of one person.
   *
   * @param id of the person; empty for a new one
   */
  record PersonView(
      String id, String title, String hint, List<Asked> fields, List<Problem> refused) {

    public String action() {
      return "/storage/people/" + (id.isEmpty() ? "new" : id);
    }
  }

  @CheckedTemplate(basePath = "storage")
  static class Templates {
    private Templates() {}

    static native TemplateInstance people(List<Row> rows);

    static native TemplateInstance person(PersonView page);

    static native TemplateInstance removePerson(String id, String name);
  }

  @GET
  public TemplateInstance people() {
    return Templates.people(desk.people().stream().map(this::row).toList());
  }

  private Row row(KeptPerson kept) {
    var person = kept.person();
    var unit = floor.unit();
    return new Row(
        kept.id(),
        person.name(),
        "knuckle %s, elbow %s, shoulder %s, highest grip %s%s"
            .formatted(
                Says.length(person.knuckle(), unit),
                Says.length(person.elbow(), unit),
                Says.length(person.shoulder(), unit),
                Says.length(person.highest(), unit),
                person.seated() ? "; reaches from a chair" : ""),
        kept.estimated().stream()
            .map(
                one ->
                    new Estimate(
                        Says.capital(one.name()) + " " + Says.length(one.value(), unit),
                        WorkingLine.of(one, Scale.rule(unit))))
            .toList());
  }

  @GET
  @Path("new")
  public TemplateInstance blank() {
    return shown(Optional.empty(), Map.of(), List.of());
  }

  @POST
  @Path("new")
  public Response keepNew(String form) {
    return keep(Optional.empty(), Sent.typed(form));
  }

  @GET
  @Path("{id}")
  public TemplateInstance person(@PathParam("id") String id) {
    return shown(Optional.of(id), known(id).typed(), List.of());
  }

  @POST
  @Path("{id}")
  public Response keep(@PathParam("id") String id, String form) {
    return keep(Optional.of(known(id).id()), Sent.typed(form));
  }

  private Response keep(Optional<String> id, Map<String, String> typed) {
    var kept = desk.keepPerson(id, typed);
    return kept.value().isEmpty()
        ? Response.status(NOT_ACCEPTED).entity(shown(id, typed, kept.problems())).build()
        : toPeople();
  }

  private TemplateInstance shown(
      Optional<String> id, Map<String, String> typed, List<Problem> refused) {
    var unit = floor.unit();
    return Templates.person(
        new PersonView(
            id.orElse(""),
            id.map(it -> known(it).person().name()).orElse("New person"),
            "A height without a unit is in "
                + (unit == LengthUnit.INCH ? "inches" : "millimetres")
                + ", measured from the floor, in shoes.",
            desk.personFields().stream()
                .flatMap(group -> group.fields().stream())
                .map(field -> Asked.of(field, typed, refused, unit))
                .toList(),
            refused));
  }

  @GET
  @Path("{id}/remove")
  public TemplateInstance askToRemove(@PathParam("id") String id) {
    return Templates.removePerson(id, known(id).person().name());
  }

  @POST
  @Path("{id}/remove")
  public Response remove(@PathParam("id") String id) {
    desk.discardPerson(known(id).id());
    return toPeople();
  }

  private static Response toPeople() {
    return Response.seeOther(URI.create("/storage/people")).build();
  }

  private KeptPerson known(String id) {
    return desk.people().stream()
        .filter(one -> one.id().equals(id))
        .findFirst()
        .orElseThrow(NotFoundException::new);
  }
}
