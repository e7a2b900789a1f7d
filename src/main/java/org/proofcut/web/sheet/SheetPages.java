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
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.BiFunction;
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
import org.proofcut.core.setup.Measure;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.web.part.Sent;
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
  private final Clock clock;

  SheetPages(WorkBench bench, House house, Clock clock) {
    this.bench = bench;
    this.house = house;
    this.clock = clock;
  }

  @GET
  public Response list(@PathParam("job") String job, @CookieParam(TABLET) String tablet) {
    return bench
        .work(job)
        .map(work -> page(Templates.list(SheetList.of(work, shows(work))), OK, tablet))
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
          var sent = new Form(Sent.typed(body));
          var problem = take(job, work, progress, sent, device);
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

  // ---- acts ----------------------------------------------------------------------------------

  /** Makes the act that was sent, and has it taken; or says why not. */
  private Optional<Problem> take(
      String job, Work work, SheetProgress progress, Form form, String device) {
    var shows = shows(work);
    return switch (form.get("act")) {
      case "confirm" -> confirm(job, progress, form, device, shows);
      case "without" -> send(job, form, device, new Act.WentWithout(form.get("item"), form.text()));
      case "reading" -> reading(job, progress, form, device, shows);
      case "drop" -> drop(job, progress, form, device);
      case "correct" -> send(job, form, device, WorkBench.corrections(progress));
      case "override" -> send(job, form, device, new Act.Overridden(form.text()));
      case "read-again" -> readAgain(job, progress, form, device, shows);
      case "disturbed" -> send(job, form, device, new Act.Disturbed(form.text()));
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
      return length(form.text(), shows)
          .map(
              found ->
                  send(job, form, device, new Act.Confirmed(form.get("item"), found.toString())))
          .orElseGet(() -> Optional.of(noLength(form.text(), shows)));
    }
    var answer = item.map(SheetPages::answer).orElse("");
    if (!answer.equals(form.get("answer"))) {
      return Optional.of(
          Problem.stops(
              "",
              "That is no answer of this sheet",
              "the answer that stands on the button",
              "Look again and tap the answer that is true"));
    }
    return send(job, form, device, new Act.Confirmed(form.get("item"), answer));
  }

  private static String answer(Item item) {
    if (item instanceof Item.Look look) {
      return look.answer();
    }
    return item instanceof Item.Gear gear ? gear.answer() : "";
  }

  private Optional<Problem> readAgain(
      String job, SheetProgress progress, Form form, String device, Shows shows) {
    var found = length(form.text(), shows);
    if (found.isEmpty()) {
      return Optional.of(noLength(form.text(), shows));
    }
    var first = progress.setup().flatMap(setup -> setup.settings().stream().findFirst());
    if (first.isPresent() && Shows.isSlip(found.get(), first.get().set().value())) {
      return Optional.of(slip(found.get(), shows.figure(first.get()).text(), shows));
    }
    return send(job, form, device, new Act.ReadAgain(found.get()));
  }

  private static Problem slip(Length found, String shouldBe, Shows shows) {
    return Problem.stops(
        "found",
        shows.fine(found) + " is far from " + shouldBe,
        "a reading somewhere near " + shouldBe,
        "Look where it is measured and key it in again");
  }

  private Optional<Problem> reading(
      String job, SheetProgress progress, Form form, String device, Shows shows) {
    var dimension =
        Arrays.stream(Dimension.values())
            .filter(one -> one.name().equals(form.get("item")))
            .findFirst();
    var found = length(form.text(), shows);
    if (dimension.isEmpty() || !form.get("attempt").matches("[0-9]{1,4}")) {
      return Optional.of(
          Problem.stops(
              "", "It is not clear what was measured", "a measure of this sheet", "Measure again"));
    }
    if (found.isEmpty()) {
      return Optional.of(noLength(form.text(), shows));
    }
    var target =
        progress.verdicts().stream()
            .map(Verdict::measure)
            .filter(measure -> measure.dimension() == dimension.get())
            .map(measure -> measure.target().value())
            .findFirst();
    if (target.isPresent() && Shows.isSlip(found.get(), target.get())) {
      return Optional.of(slip(found.get(), shows.fine(target.get()), shows));
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
            .map(Measure::dimension)
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
    var view =
        new SheetViews(house.content(), work, progress, shows(work), typed, clock.instant()).view();
    return page(Templates.sheet(view), status, tablet);
  }

  /** Back to the sheet, where the next thing to do stands. */
  private static String after(String job, SheetProgress before, Form form) {
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
    return new Shows(work.plan().designed().design().unit());
  }

  private static Response noWork(String tablet) {
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

  /** A form as sent: what is missing is empty. */
  private record Form(Map<String, String> fields) {

    String get(String name) {
      return fields.getOrDefault(name, "");
    }

    /** The one thing that was typed: its field is called after the act. */
    String text() {
      return get(Typed.field(get("act"), get("item")));
    }
  }
}
