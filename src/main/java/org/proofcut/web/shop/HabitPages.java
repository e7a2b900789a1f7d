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
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.proofcut.bench.HabitDesk;
import org.proofcut.bench.ShopFloor;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.habit.Habit;
import org.proofcut.core.habit.Ruling;
import org.proofcut.core.intake.Field;
import org.proofcut.core.intake.Read;
import org.proofcut.core.intake.RulingForms;
import org.proofcut.web.part.Asked;
import org.proofcut.web.part.Sent;

/** What proof cuts have taught, and what the maker says to it. */
@Path("/shop/habits")
@Produces(MediaType.TEXT_HTML)
@Consumes(MediaType.APPLICATION_FORM_URLENCODED)
public class HabitPages {

  private static final int NOT_ACCEPTED = 422;

  private final HabitDesk desk;
  private final ShopFloor floor;
  private final Clock clock;

  HabitPages(HabitDesk desk, ShopFloor floor, Clock clock) {
    this.desk = desk;
    this.floor = floor;
    this.clock = clock;
  }

  /**
   * A page that asks why.
   *
   * @param of which habit, in words
   * @param says what comes of it
   * @param save words of the button
   */
  record Why(
      String title,
      String of,
      String says,
      String save,
      String action,
      List<Asked> fields,
      List<Problem> refused) {}

  @CheckedTemplate(basePath = "shop")
  static class Templates {
    private Templates() {}

    static native TemplateInstance habits(HabitsView view);

    static native TemplateInstance why(Why why);
  }

  @GET
  public TemplateInstance habits() {
    return Templates.habits(HabitsView.of(desk, floor.shop(), floor.unit(), clock.getZone()));
  }

  /** A proof that was asked about, or left out, counts. */
  @POST
  @Path("{trait}/count")
  public Response count(@PathParam("trait") String trait, String form) {
    var of = known(trait);
    var proof = proof(of, form);
    return kept(desk.rule(at -> RulingForms.accepted(of.trait(), proof, at)), of);
  }

  /** A proof does not count. */
  @POST
  @Path("{trait}/leave-out")
  public Response leaveOut(@PathParam("trait") String trait, String form) {
    var of = known(trait);
    var proof = proof(of, form);
    return kept(desk.rule(at -> RulingForms.leftOut(of.trait(), proof, Map.of(), at)), of);
  }

  @POST
  @Path("{trait}/take-up")
  public Response takeUp(@PathParam("trait") String trait) {
    var of = known(trait);
    return kept(desk.rule(at -> RulingForms.takenUp(of.trait(), at)), of);
  }

  @GET
  @Path("{trait}/set-aside")
  public TemplateInstance askAside(@PathParam("trait") String trait) {
    return aside(known(trait), Map.of(), List.of());
  }

  @POST
  @Path("{trait}/set-aside")
  public Response setAside(@PathParam("trait") String trait, String form) {
    var of = known(trait);
    var typed = Sent.typed(form);
    var said = desk.rule(at -> RulingForms.setAside(of.trait(), typed, at));
    return said.value().isPresent() ? kept(said, of) : refused(aside(of, typed, said.problems()));
  }

  @GET
  @Path("{trait}/afresh")
  public TemplateInstance askAfresh(@PathParam("trait") String trait) {
    return afresh(known(trait), Map.of(), List.of());
  }

  @POST
  @Path("{trait}/afresh")
  public Response startAfresh(@PathParam("trait") String trait, String form) {
    var of = known(trait);
    var typed = Sent.typed(form);
    var said = desk.rule(at -> RulingForms.startedAfresh(of.trait(), typed, at));
    return said.value().isPresent() ? kept(said, of) : refused(afresh(of, typed, said.problems()));
  }

  private TemplateInstance aside(Habit habit, Map<String, String> typed, List<Problem> refused) {
    return Templates.why(
        new Why(
            "Set aside",
            HabitsView.title(habit.trait(), floor.shop()),
            "Its proof cuts go on being counted, and no set-up reckons with them until you take"
                + " it up again.",
            "Set it aside",
            HabitsView.address(habit.trait()) + "/set-aside",
            asked(List.of(RulingForms.WHY_ASIDE), typed, refused),
            refused));
  }

  private TemplateInstance afresh(Habit habit, Map<String, String> typed, List<Problem> refused) {
    return Templates.why(
        new Why(
            "Start afresh",
            HabitsView.title(habit.trait(), floor.shop()),
            "Proof cuts made until now no longer count. A cutter is then learned anew on every"
                + " machine, a scale with every cutter; anything else is this one thing alone.",
            "Start afresh",
            HabitsView.address(habit.trait()) + "/afresh",
            asked(
                List.of(RulingForms.changed(habit.trait()), RulingForms.WHY_AFRESH),
                typed,
                refused),
            refused));
  }

  private List<Asked> asked(List<Field> fields, Map<String, String> typed, List<Problem> refused) {
    return fields.stream().map(field -> Asked.of(field, typed, refused, floor.unit())).toList();
  }

  private static Response refused(TemplateInstance page) {
    return Response.status(NOT_ACCEPTED).entity(page).build();
  }

  private static Response kept(Read<Ruling> said, Habit habit) {
    said.value().orElseThrow();
    return Response.seeOther(URI.create("/shop/habits#" + habit.trait().id())).build();
  }

  private Habit known(String trait) {
    return desk.habit(trait).orElseThrow(NotFoundException::new);
  }

  /** A proof is never typed: one that this habit does not have comes from no page of ours. */
  private static String proof(Habit habit, String form) {
    var proof = Sent.typed(form).getOrDefault("proof", "");
    if (habit.lessons().stream().noneMatch(one -> one.observation().proof().equals(proof))) {
      throw new NotFoundException();
    }
    return proof;
  }
}
