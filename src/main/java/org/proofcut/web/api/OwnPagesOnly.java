package org.proofcut.web.api;

import io.vertx.core.http.HttpServerRequest;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerRequestFilter;
import jakarta.ws.rs.container.PreMatching;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.ext.Provider;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.proofcut.core.evidence.Problem;

/** Refuses what another site's page sends; the package says why it is asked so. */
@Provider
@PreMatching
final class OwnPagesOnly implements ContainerRequestFilter {

  private static final Set<String> CHANGE_NOTHING = Set.of("GET", "HEAD", "OPTIONS");
  private static final String ADDRESS_4 = "[0-9]{1,3}(\\.[0-9]{1,3}){3}";
  private static final String ADDRESS_6 = "\\[[0-9a-f:.]+]";
  private static final String OF_THIS_NET =
      "[a-z0-9-]+|[a-z0-9.-]+\\.(local|localhost|home\\.arpa)";
  private static final String HOSTS =
      "(" + ADDRESS_4 + "|" + ADDRESS_6 + "|" + OF_THIS_NET + ")\\.?(:[0-9]{1,5})?";

  private final HttpServerRequest request;

  OwnPagesOnly(HttpServerRequest request) {
    this.request = request;
  }

  @Override
  public void filter(ContainerRequestContext context) {
    var authority = request.authority();
    var host = authority == null ? "" : authority.toString().toLowerCase(Locale.ROOT);
    if (!host.matches(HOSTS)) {
      refuse(
          context,
          Problem.stops(
              "Host",
              "This name could be anybody's",
              "localhost, a plain address, a name without a dot, a name below .local",
              "Open it by the address of the computer that it runs on"));
    } else if (!CHANGE_NOTHING.contains(context.getMethod()) && isFromElsewhere(context, host)) {
      refuse(
          context,
          Problem.stops(
              "Origin",
              "Another page sent this",
              "what the pages of this service send, and programs without an Origin",
              "Do it on the page of this service"));
    }
  }

  private static boolean isFromElsewhere(ContainerRequestContext context, String host) {
    var origin = context.getHeaderString("Origin");
    return origin != null
        && !List.of("http://" + host, "https://" + host).contains(origin.toLowerCase(Locale.ROOT));
  }

  private static void refuse(ContainerRequestContext context, Problem problem) {
    if (ProblemAnswers.isOfApi(context)) {
      context.abortWith(ProblemDetail.refusal(ProblemKind.ELSEWHERE, problem).getResponse());
    } else {
      context.abortWith(
          Response.status(Response.Status.FORBIDDEN)
              .type(MediaType.TEXT_PLAIN_TYPE.withCharset("UTF-8"))
              .entity(problem.what() + ". " + problem.doThis() + ".\n")
              .build());
    }
  }
}
