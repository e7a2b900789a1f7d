package org.proofcut.web.sheet;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.CookieParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.NewCookie;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.BiFunction;
import org.proofcut.bench.House;
import org.proofcut.bench.StorageDesk;
import org.proofcut.bench.Work;
import org.proofcut.bench.WorkBench;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.run.SheetProgress;
import org.proofcut.web.part.Sent;
import org.proofcut.web.reading.Shows;
import org.proofcut.web.sheet.SheetViews.Typed;

/** The sheets of a job in work. Every act is a form post, and leads back to the sheet. */
@Path("/jobs/{job}/sheets")
@Produces(MediaType.TEXT_HTML)
public class SheetPages {

  static final int OK = 200;
  private static final int NOT_FOUND = 404;
  static final int UNPROCESSABLE = 422;

  /** The cookie by which a tablet is known again: another one is asked for gear anew. */
  static final String TABLET = "tablet";

  private static final int TEN_YEARS_IN_SECONDS = 315_360_000;

  @CheckedTemplate(basePath = "sheet")
  static class Templates {
    static native TemplateInstance list(SheetList view);

    static native TemplateInstance sheet(SheetView view);

    static native TemplateInstance hold(HoldView view);

    static native TemplateInstance gone(String what, String go, String back);

    static native TemplateInstance cannotBegin(String job, List<Problem> problems);
  }

  private final WorkBench bench;
  private final House house;
  private final StorageDesk storage;
  private final Clock clock;

  SheetPages(WorkBench bench, House house, StorageDesk storage, Clock clock) {
    this.bench = bench;
    this.house = house;
    this.storage = storage;
    this.clock = clock;
  }

  @GET
  public Response list(@PathParam("job") String job, @CookieParam(TABLET) String tablet) {
    return bench
        .work(job)
        .map(
            work ->
                page(Templates.list(SheetList.of(work, shows(work), storage.out())), OK, tablet))
        .orElseGet(() -> noWork(tablet));
  }

  @GET
  @Path("{number}")
  public Response sheet(
      @PathParam("job") String job,
      @PathParam("number") String number,
      @CookieParam(TABLET) String tablet) {
    return onSheet(
        job, number, tablet, (work, progress) -> show(work, progress, Typed.NOTHING, OK, tablet));
  }

  @POST
  @Path("{number}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response act(
      @PathParam("job") String job,
      @PathParam("number") String number,
      @CookieParam(TABLET) String tablet,
      String body) {
    return onSheet(
        job,
        number,
        tablet,
        (work, progress) -> {
          // A first post without a name gets one, so that the next page comes from the same tablet.
          var device = named(tablet).orElseGet(() -> UUID.randomUUID().toString());
          var sent = new ActForm(Sent.typed(body), work.unit());
          var problem = take(job, progress, sent, device);
          if (problem.isEmpty()) {
            return seeOther(after(job, progress, sent), device);
          }
          // What was typed is shown again on the sheet as it is now, if it is still asked there.
          var now = bench.work(job).orElseThrow();
          var typed = new Typed(sent.get("act"), sent.get("item"), sent.text(), problem);
          return now.progress()
              .sheet(progress.sheet().id())
              .map(one -> show(now, one, typed, UNPROCESSABLE, device))
              .orElseGet(() -> noSheet(job, now, device));
        });
  }

  @GET
  @Path("{number}/hold")
  public Response hold(
      @PathParam("job") String job,
      @PathParam("number") String number,
      @CookieParam(TABLET) String tablet) {
    return onSheet(
        job,
        number,
        tablet,
        (work, progress) -> page(Templates.hold(HoldView.of(work, progress)), OK, tablet));
  }

  private Response onSheet(
      String job, String number, String tablet, BiFunction<Work, SheetProgress, Response> answer) {
    var work = bench.work(job);
    if (work.isEmpty()) {
      return noWork(tablet);
    }
    return progress(work.get(), number)
        .map(progress -> answer.apply(work.get(), progress))
        .orElseGet(() -> noSheet(job, work.get(), tablet));
  }

  /** Has the acts taken that a form asks for, in their order, until one is refused. */
  private Optional<Problem> take(String job, SheetProgress progress, ActForm form, String device) {
    var asked = form.acts(progress);
    for (int i = 0; i < asked.acts().size(); i++) {
      var problem =
          bench.act(
              job,
              new WorkBench.Sent(
                  form.entry(i),
                  device,
                  form.get("operation"),
                  form.get("fingerprint"),
                  asked.acts().get(i)));
      if (problem.isPresent()) {
        return problem;
      }
    }
    return asked.problem();
  }

  // ---- pages ---------------------------------------------------------------------------------

  private Response show(Work work, SheetProgress progress, Typed typed, int status, String tablet) {
    var view =
        new SheetViews(
                house.content(), work, progress, shows(work), typed, clock.instant(), storage.out())
            .view();
    return page(Templates.sheet(view), status, tablet);
  }

  /** Back to the sheet, where the next thing to do stands. */
  private static String after(String job, SheetProgress before, ActForm form) {
    var sheet = "/jobs/" + job + "/sheets/" + before.sheet().number();
    return switch (form.get("act")) {
      case "hold" -> sheet + "/hold";
      case "sign-off" -> sheet;
      default -> sheet + "#next";
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
    return new Shows(work.unit());
  }

  static Response noWork(String tablet) {
    return page(
        Templates.gone(
            "Work on this job has not begun, or there is no such job", "Go to all jobs", "/"),
        NOT_FOUND,
        tablet);
  }

  private static Response noSheet(String job, Work work, String tablet) {
    return page(
        Templates.gone(
            "This job has sheets 1 to " + work.plan().sheets().size(),
            "Go to its sheets",
            "/jobs/" + job + "/sheets"),
        NOT_FOUND,
        tablet);
  }

  static Response page(TemplateInstance template, int status, String tablet) {
    return answer(
        Response.status(status).entity(template).type(MediaType.TEXT_HTML + ";charset=UTF-8"),
        tablet);
  }

  static Response seeOther(String path, String tablet) {
    return answer(Response.seeOther(URI.create(path)), tablet);
  }

  /** Names the tablet where it has no name yet, and again where it was named by this answer. */
  private static Response answer(Response.ResponseBuilder answer, String tablet) {
    return answer
        .cookie(
            new NewCookie.Builder(TABLET)
                .value(named(tablet).orElseGet(() -> UUID.randomUUID().toString()))
                .path("/")
                .maxAge(TEN_YEARS_IN_SECONDS)
                .httpOnly(true)
                .sameSite(NewCookie.SameSite.LAX)
                .build())
        .build();
  }

  private static Optional<String> named(String tablet) {
    return Optional.ofNullable(tablet).filter(name -> name.matches("[0-9a-f-]{36}"));
  }
}
