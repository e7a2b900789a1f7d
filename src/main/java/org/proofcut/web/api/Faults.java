package org.proofcut.web.api;

import jakarta.annotation.Priority;
import jakarta.interceptor.AroundInvoke;
import jakarta.interceptor.Interceptor;
import jakarta.interceptor.InterceptorBinding;
import jakarta.interceptor.InvocationContext;
import jakarta.ws.rs.WebApplicationException;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.List;
import java.util.UUID;
import org.jboss.logging.Logger;
import org.proofcut.core.evidence.Problem;
import org.proofcut.logbook.UnreadableException;

/**
 * Turns what nobody foresaw into an answer that gives nothing away: a reference, with the details
 * in the log only.
 */
@Faults.Told
@Interceptor
@Priority(Interceptor.Priority.APPLICATION)
final class Faults {

  private static final Logger LOG = Logger.getLogger("org.proofcut.api");

  /** On a resource: its faults are told so. */
  @InterceptorBinding
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.TYPE)
  @interface Told {}

  @AroundInvoke
  Object answer(InvocationContext request) throws Exception {
    try {
      return request.proceed();
    } catch (WebApplicationException e) {
      throw e;
    } catch (UnreadableException e) {
      LOG.error("could not be read back", e);
      throw ProblemDetail.refusal(ProblemKind.UNREADABLE, e.problem());
    } catch (RuntimeException e) {
      var reference = UUID.randomUUID().toString();
      LOG.error("fault " + reference, e);
      throw ProblemDetail.refusal(
          ProblemKind.FAULT,
          List.of(
              Problem.stops(
                  "reference " + reference,
                  "This program has a fault",
                  "nothing that you sent is to blame",
                  "Find the reference in the log and report it with what you sent")));
    }
  }
}
