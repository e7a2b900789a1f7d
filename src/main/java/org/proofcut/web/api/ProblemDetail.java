package org.proofcut.web.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.proofcut.core.evidence.Problem;

/**
 * What is wrong, after RFC 9457.
 *
 * @param type where this kind of problem is explained
 * @param title the kind in words
 * @param status the status of the answer again
 * @param detail what is wrong this time
 * @param instance the address that was asked
 * @param problems each thing that is wrong, with what to do
 */
@JsonInclude(JsonInclude.Include.NON_ABSENT)
@Schema(description = "What is wrong, after RFC 9457")
record ProblemDetail(
    String type,
    String title,
    int status,
    String detail,
    Optional<String> instance,
    List<One> problems) {

  /** Media type of a problem detail. */
  static final String MEDIA_TYPE = "application/problem+json";

  /** One thing that is wrong. */
  @Schema(name = "Problem")
  record One(
      @Schema(description = "the field, or the part of the body") String where,
      String what,
      @Schema(description = "what would be right") String allowed,
      String doThis,
      @Schema(description = "stops or warns") String force) {

    static One of(Problem problem) {
      return new One(
          problem.where(),
          problem.what(),
          problem.allowed(),
          problem.doThis(),
          problem.force().name().toLowerCase(Locale.ROOT));
    }

    static List<One> all(List<Problem> problems) {
      return problems.stream().map(One::of).toList();
    }
  }

  static ProblemDetail of(ProblemKind kind, String detail, List<Problem> problems) {
    return new ProblemDetail(
        kind.type(), kind.title(), kind.status(), detail, Optional.empty(), One.all(problems));
  }

  /** An answer that says nothing itself: only its status is known. */
  static ProblemDetail of(int status) {
    return ProblemKind.withStatus(status)
        .map(kind -> of(kind, kind.meaning(), List.of()))
        .orElseGet(
            () ->
                new ProblemDetail(
                    "about:blank",
                    Optional.ofNullable(Response.Status.fromStatusCode(status))
                        .map(Response.Status::getReasonPhrase)
                        .orElse("Refused"),
                    status,
                    "The request was refused.",
                    Optional.empty(),
                    List.of()));
  }

  ProblemDetail at(String address) {
    return new ProblemDetail(type, title, status, detail, Optional.of(address), problems);
  }

  String written(ObjectMapper json) {
    try {
      return json.writeValueAsString(this);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a record of texts can be written", e);
    }
  }

  Response answer() {
    return Response.status(status).type(MEDIA_TYPE).entity(this).build();
  }

  /** To be thrown: ends the request with these problems. */
  static WebApplicationException refusal(ProblemKind kind, List<Problem> problems) {
    var detail = problems.isEmpty() ? kind.meaning() : problems.get(0).what() + ".";
    return new WebApplicationException(of(kind, detail, problems).answer());
  }

  static WebApplicationException refusal(ProblemKind kind, Problem problem) {
    return refusal(kind, List.of(problem));
  }

  /** To be thrown where there is no job, thing or sheet at the address. */
  static WebApplicationException notThere(String what, String doThis) {
    return refusal(
        ProblemKind.NOT_THERE,
        Problem.stops("address", what, "an address that was listed", doThis));
  }
}
