package org.proofcut.content;

import java.util.List;
import org.proofcut.core.casework.CaseLimits;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.operation.OperationLimits;
import org.proofcut.core.setup.SetupLimits;

/**
 * A folder of limits and the record that a room takes them as.
 *
 * <p>Each component of the record is one limit: {@code Worked<Length>}, {@code Worked<Integer>}, or
 * {@code Worked} of a list of records. The files of the folder may share them out as they like.
 *
 * @param path below the content folder, such as {@code setup/limits}
 */
record LimitFolder(String path, Class<? extends Record> type) {

  /** The rooms that take their limits from content; one line each. */
  static final List<LimitFolder> ALL =
      List.of(
          new LimitFolder("casework/limits", CaseLimits.class),
          new LimitFolder("fit/limits", FitLimits.class),
          new LimitFolder("setup/limits", SetupLimits.class),
          new LimitFolder("operation/limits", OperationLimits.class));
}
