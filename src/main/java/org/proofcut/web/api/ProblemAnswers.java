package org.proofcut.web.api;

import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.container.ContainerResponseFilter;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.ext.Provider;

/** Makes every answer below {@code /api} that is an error a problem detail, whoever gave it. */
@Provider
final class ProblemAnswers implements ContainerResponseFilter {

  private final ObjectMapper json;

  ProblemAnswers(ObjectMapper json) {
    this.json = json;
  }

  @Override
  public void filter(ContainerRequestContext request, ContainerResponseContext answer) {
    if (answer.getStatus() >= 400 && isOfApi(request)) {
      var detail =
          answer.getEntity() instanceof ProblemDetail given
              ? given
              : ProblemDetail.of(answer.getStatus());
      var address = request.getUriInfo().getRequestUri().getRawPath();
      // As text: a problem is told in JSON whatever the request said it accepts.
      answer.setEntity(
          detail.at(address).written(json), null, MediaType.valueOf(ProblemDetail.MEDIA_TYPE));
    }
  }

  static boolean isOfApi(ContainerRequestContext request) {
    var path = request.getUriInfo().getRequestUri().getRawPath();
    return path.equals("/api") || path.startsWith("/api/");
  }
}
