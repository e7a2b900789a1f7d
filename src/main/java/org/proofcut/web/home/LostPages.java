package org.proofcut.web.home;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.BadRequestException;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.UUID;
import java.util.stream.Stream;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;

/**
 * Pages for who asked for what is not there, and for a fault of the program. What went wrong inside
 * goes to the log under the number that the page names, and nowhere else.
 */
class LostPages {

  private static final Logger LOG = Logger.getLogger(LostPages.class);
  private static final int FAULT = 500;
  private static final int NOT_FOUND = 404;

  @CheckedTemplate(basePath = "home")
  static class Templates {
    private Templates() {}

    static native TemplateInstance lost(boolean found);

    static native TemplateInstance fault(String reference);
  }

  @ServerExceptionMapper
  Response refused(WebApplicationException refused, UriInfo asked) {
    int status = refused.getResponse().getStatus();
    if (status >= FAULT) {
      return fault(refused, asked);
    }
    boolean plain = refused.getResponse().hasEntity() || status < 400 || isApi(asked);
    return plain ? refused.getResponse() : page(status, Templates.lost(status != NOT_FOUND));
  }

  @ServerExceptionMapper
  Response fault(Throwable fault, UriInfo asked) {
    if (cameWhileReading(fault)) {
      return refused(new BadRequestException(fault), asked);
    }
    var reference = UUID.randomUUID().toString().substring(0, 8);
    LOG.errorf(fault, "Fault %s at %s", reference, asked.getPath());
    return isApi(asked) ? Response.status(FAULT).build() : page(FAULT, Templates.fault(reference));
  }

  /** The framework's reader of forms fails with any exception on a form that no browser sends. */
  private static boolean cameWhileReading(Throwable fault) {
    return Stream.of(fault.getStackTrace())
        .map(StackTraceElement::getClassName)
        .anyMatch(
            name -> name.contains("RequestDeserializeHandler") || name.contains("FormEncoded"));
  }

  private static boolean isApi(UriInfo asked) {
    return asked.getPath().startsWith("/api");
  }

  private static Response page(int status, TemplateInstance page) {
    return Response.status(status).type(MediaType.TEXT_HTML_TYPE).entity(page.render()).build();
  }
}
