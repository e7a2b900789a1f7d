package org.proofcut.bench;

import java.util.Optional;
import org.proofcut.content.Content;
import org.proofcut.content.Faulty;
import org.proofcut.core.casework.CaseLimits;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.operation.OperationLimits;
import org.proofcut.core.plan.Book;
import org.proofcut.core.plan.Planner;

/**
 * What the service runs on at one moment: content, and the planner that plans by it.
 *
 * @param mark changes with the files of the shop's own content; empty where there are none
 */
record Standing(Content content, Planner planner, OwnShelf own, String mark) {

  static Standing on(Content content, OwnShelf own, String mark) {
    return new Standing(
        content,
        new Planner(
            new Book(
                content.limits(CaseLimits.class),
                content.limits(FitLimits.class),
                content.setupLimits(),
                content.limits(OperationLimits.class),
                content.rulebook(),
                content.wording(),
                content.dust())),
        own,
        mark);
  }

  /** The same, while what lies in the folder can't be used. */
  Standing refusing(boolean there, Faulty faulty) {
    return new Standing(
        content,
        planner,
        new OwnShelf(own.folder(), there, own.files(), own.changes(), Optional.of(faulty)),
        mark);
  }
}
