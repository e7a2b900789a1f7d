package org.proofcut.bench;

import io.quarkus.runtime.Startup;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import java.time.Clock;
import org.proofcut.content.Content;
import org.proofcut.core.casework.CaseLimits;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.operation.OperationLimits;
import org.proofcut.core.plan.Book;
import org.proofcut.core.plan.Planner;

/**
 * The content that the service runs on, read once at start. Faulty content stops the start, with
 * every fault in the message: a sheet without its cautions is worse than none.
 */
@Startup
@ApplicationScoped
public class House {

  private final Content content;
  private final Planner planner;

  House(Content content) {
    this.content = content;
    planner =
        new Planner(
            new Book(
                content.limits(CaseLimits.class),
                content.limits(FitLimits.class),
                content.setupLimits(),
                content.limits(OperationLimits.class),
                content.rulebook(),
                content.wording(),
                content.dust()));
  }

  public Content content() {
    return content;
  }

  public Planner planner() {
    return planner;
  }

  @Produces
  @ApplicationScoped
  Clock clock() {
    return Clock.systemDefaultZone();
  }
}
