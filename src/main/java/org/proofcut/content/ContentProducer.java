package org.proofcut.content;

import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.jboss.logging.Logger;

/** Reads the bundled content when the service starts; faulty content keeps it from starting. */
@Singleton
class ContentProducer {

  private static final Logger LOG = Logger.getLogger(ContentProducer.class);

  @Produces
  @Singleton
  Content content() {
    return Content.bundled();
  }

  void readAtStart(@Observes StartupEvent start, Content content) {
    LOG.info(content.summary());
  }
}
