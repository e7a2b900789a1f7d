package org.proofcut.web.api;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;

/**
 * Answers below {@code /api} where no resource is. Such a request never reaches the filters of the
 * resources: it would end at the service's own page for what is not found.
 */
@Singleton
final class Nowhere {

  /** After everything else that answers. */
  private static final int LAST = 1_000_000;

  private final ObjectMapper json;

  Nowhere(ObjectMapper json) {
    this.json = json;
  }

  void listen(@Observes Router router) {
    router.route("/api/*").order(LAST).handler(this::answer);
  }

  private void answer(RoutingContext request) {
    var detail = ProblemDetail.of(ProblemKind.NOT_THERE.status()).at(request.request().path());
    request
        .response()
        .setStatusCode(detail.status())
        .putHeader(HttpHeaders.CONTENT_TYPE, ProblemDetail.MEDIA_TYPE)
        .end(detail.written(json));
  }
}
