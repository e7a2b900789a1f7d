package org.proofcut.web.sheet;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.CookieParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.NewCookie;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.proofcut.bench.House;
import org.proofcut.bench.Work;
import org.proofcut.bench.WorkBench;
import org.proofcut.core.checklist.Item;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthFormatException;
import org.proofcut.core.proof.Verdict;
import org.proofcut.core.run.Act;
import org.proofcut.core.run.SheetProgress;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.web.sheet.SheetViews.Typed;

/** The sheets of a job in work. Every act is a form post, and leads back to the sheet. */
@Path("/jobs/{job}/sheets")
@Produces(MediaType.TEXT_HTML)
public class SheetPages {

  static final int UNPROCESSABLE = 422;

  @CheckedTemplate(basePath = "sheet")
  static class Templates {
    static native TemplateInstance list(SheetList view);

    static native TemplateInstance sheet(SheetView view);

    static native TemplateInstance hold(HoldView view);

    static native TemplateInstance gone(String what, String back);

    static native TemplateInstance cannotBegin(String job, List<Problem> problems);
  }

  private final WorkBench bench;
  private final House house;
  private final Clock clock;

  SheetPages(WorkBench bench, House house, Clock clock) {
    this.bench = bench;
    this.house = house;
    this.clock = clock;
  }

  @GET
  public Response list(@PathParam("job") String job) {
    return bench
        .work(job)
        .map(work -> page(Templates.list(SheetList.of(work, shows(work))), 200, Optional.empty()))
        .orElseGet(() -> gone("Work on this job has not begun, or there is no such job", "/"));
  }

  @GET
  @Path("{number}")
  public Response sheet(
      @PathParam("job") String job,
      @PathParam("number") String number,
      @CookieParam("tablet") String tablet) {
    var work = bench.work(job);
    return work.flatMap(one -> progress(one, number))
        .map(progress -> show(work.get(), progress, Typed.NOTHING, 200, tablet))
        .orElseGet(() -> gone("There is no such sheet", "/"));
  }

  @POST
  @Path("{number}")
  public Response act(
      @PathParam("job") String job,
      @PathParam("number") String number,
      @CookieParam("tablet") String tablet,
      MultivaluedMap<String, String> form) {
    var work = bench.work(job);
    var progress = work.flatMap(one -> progress(one, number));
    if (progress.isEmpty()) {
      return gone("There is no such sheet", "/");
    }
    var sent = new Form(form);
    var problem = take(job, work.get(), progress.get(), sent, device(tablet));
    if (problem.isEmpty()) {
      return seeOther(after(job, progress.get(), sent));
    }
    // What was typed is shown again on the sheet as it is now.
    var typed = new Typed(sent.get("act"), sent.get("item"), sent.text(), problem);
    var now = bench.work(job).orElseThrow();
    return show(
        now,
        now.progress().sheets().get(progress.get().sheet().number() - 1),
        typed,
        UNPROCESSABLE,
        tablet);
  }

  @GET
  @Path("{number}/hold")
  public Response hold(@PathParam("job") String job, @PathParam("number") String number) {
    return bench
        .work(job)
        .flatMap(work -> progress(work, number).map(one -> HoldView.of(work, one)))
        .map(view -> page(Templates.hold(view), 200, Optional.empty()))
        .orElseGet(() -> gone("There is no such sheet", "/"));
  }

  // ---- acts ----------------------------------------------------------------------------------

  /** Makes the act that was sent, and has it taken; or says why not. */
  private Optional<Problem> take(
      String job, Work work, SheetProgress progress, Form form, String device) {
    var shows = shows(work);
    return switch (form.get("act")) {
      case "confirm" -> confirm(job, progress, form, device, shows);
      case "without" ->
          send(job, form, device, new Act.WentWithout(form.get("item"), form.get("reason")));
      case "reading" -> reading(job, form, device, shows);
      case "drop" -> drop(job, progress, form, device);
      case "correct" -> send(job, form, device, WorkBench.corrections(progress));
      case "override" -> send(job, form, device, new Act.Overridden(form.get("reason")));
      case "read-again" ->
          length(form.get("found"), shows)
              .map(found -> send(job, form, device, new Act.ReadAgain(found)))
              .orElseGet(() -> Optional.of(noLength(form.get("found"), shows)));
      case "disturbed" -> send(job, form, device, new Act.Disturbed(form.get("reason")));
      case "cut" -> send(job, form, device, new Act.PartCut(form.get("part")));
      case "not-cut" -> send(job, form, device, new Act.PartNotCut(form.get("part")));
      case "hold" -> send(job, form, device, new Act.Held());
      case "sign-off" -> send(job, form, device, new Act.SignedOff());
      default ->
          Optional.of(
              Problem.stops(
                  "", "That button is not known here", "a button of this sheet", "Open it again"));
    };
  }

  private Optional<Problem> confirm(
      String job, SheetProgress progress, Form form, String device, Shows shows) {
    var item = progress.sheet().checklist().item(form.get("item"));
    if (item.isPresent() && item.get() instanceof Item.Figure) {
      // A figure is kept as it was read, exactly.
      return length(form.get("found"), shows)
          .map(
              found ->
                  send(job, form, device, new Act.Confirmed(form.get("item"), found.toString())))
          .orElseGet(() -> Optional.of(noLength(form.get("found"), shows)));
    }
    return send(job, form, device, new Act.Confirmed(form.get("item"), form.get("answer")));
  }

  private Optional<Problem> reading(String job, Form form, String device, Shows shows) {
    var dimension =
        Arrays.stream(Dimension.values())
            .filter(one -> one.name().equals(form.get("item")))
            .findFirst();
    var found = length(form.get("found"), shows);
    if (dimension.isEmpty() || !form.get("attempt").matches("[0-9]{1,4}")) {
      return Optional.of(
          Problem.stops(
              "", "It is not clear what was measured", "a measure of this sheet", "Measure again"));
    }
    if (found.isEmpty()) {
      return Optional.of(noLength(form.get("found"), shows));
    }
    return send(
        job,
        form,
        device,
        new Act.ReadingTaken(Integer.parseInt(form.get("attempt")), dimension.get(), found.get()));
  }

  /** The readings of every measure of this proof cut go, each by an act of its own. */
  private Optional<Problem> drop(String job, SheetProgress progress, Form form, String device) {
    var dimensions =
        progress.verdicts().stream()
            .filter(verdict -> !verdict.found().isEmpty())
            .map(Verdict::measure)
            .map(measure -> measure.dimension())
            .toList();
    for (var dimension : dimensions) {
      var problem =
          bench.act(
              job,
              new WorkBench.Sent(
                  form.get("entry") + "-" + dimension.name(),
                  device,
                  form.get("operation"),
                  form.get("fingerprint"),
                  new Act.ReadingsDropped(progress.attempt(), dimension)));
      if (problem.isPresent()) {
        return problem;
      }
    }
    return Optional.empty();
  }

  private Optional<Problem> send(String job, Form form, String device, Act act) {
    var entry = form.get("entry").isBlank() ? WorkBench.newEntryId() : form.get("entry");
    return bench.act(
        job,
        new WorkBench.Sent(entry, device, form.get("operation"), form.get("fingerprint"), act));
  }

  private static Optional<Length> length(String text, Shows shows) {
    try {
      var length = Length.parse(text, shows.unit());
      return length.isPositive() ? Optional.of(length) : Optional.empty();
    } catch (LengthFormatException e) {
      return Optional.empty();
    }
  }

  private static Problem noLength(String text, Shows shows) {
    var allowed = "a length like " + LengthFormatException.EXAMPLES;
    try {
      Length.parse(text, shows.unit());
      return Problem.stops(
          "found", "That is not more than nothing.", allowed, "Key in what you read");
    } catch (LengthFormatException e) {
      return Problem.stops("found", e.reason() + ".", allowed, "Key in what you read");
    }
  }

  // ---- pages ---------------------------------------------------------------------------------

  private Response show(Work work, SheetProgress progress, Typed typed, int status, String tablet) {
    var problems = new ArrayList<>(work.problems());
    var view =
        new SheetViews(house.content(), work, progress, shows(work), typed, clock.instant()).view();
    if (problems.isEmpty()) {
      return page(Templates.sheet(view), status, Optional.ofNullable(tablet));
    }
    return page(Templates.cannotBegin(work.job().id(), problems), 409, Optional.ofNullable(tablet));
  }

  private static String after(String job, SheetProgress before, Form form) {
    var sheets = "/jobs/" + job + "/sheets/";
    int number = before.sheet().number();
    return switch (form.get("act")) {
      case "hold" -> sheets + number + "/hold";
      case "sign-off" -> sheets + number;
      default -> sheets + number + "#now";
    };
  }

  private static Optional<SheetProgress> progress(Work work, String number) {
    return number.matches("[0-9]{1,4}")
        ? work.plan()
            .sheet(Integer.parseInt(number))
            .map(sheet -> work.progress().sheets().get(sheet.number() - 1))
        : Optional.empty();
  }

  private static Shows shows(Work work) {
    return new Shows(work.plan().designed().design().unit());
  }

  private static Response gone(String what, String back) {
    return page(Templates.gone(what, back), 404, Optional.empty());
  }

  static Response page(TemplateInstance template, int status, Optional<String> knownTablet) {
    var answer =
        Response.status(status).entity(template).type(MediaType.TEXT_HTML + ";charset=UTF-8");
    if (knownTablet.isEmpty()) {
      answer.cookie(
          new NewCookie.Builder("tablet")
              .value(UUID.randomUUID().toString())
              .path("/")
              .maxAge(315_360_000)
              .httpOnly(true)
              .sameSite(NewCookie.SameSite.STRICT)
              .build());
    }
    return answer.build();
  }

  private static Response seeOther(String path) {
    return Response.seeOther(URI.create(path)).build();
  }

  private static String device(String tablet) {
    return tablet != null && tablet.matches("[0-9a-f-]{36}") ? tablet : "unnamed";
  }

  /** A form as sent: what is missing is empty. */
  private record Form(MultivaluedMap<String, String> fields) {

    String get(String name) {
      var value = fields.getFirst(name);
      return value == null ? "" : value;
    }

    /** The one thing that was typed. */
    String text() {
      return get("found").isEmpty() ? get("reason") : get("found");
    }
  }
}
