package org.proofcut.logbook;

import org.proofcut.core.evidence.Problem;

/**
 * Something that was kept can't be read back: it is damaged, or was written by another version of
 * the program. It stays in the logbook as it is.
 */
public final class UnreadableException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient Problem problem;

  UnreadableException(Problem problem, Throwable cause) {
    super(problem.where() + ": " + problem.what() + ". " + problem.doThis() + ".", cause);
    this.problem = problem;
  }

  /** What can't be read, and what to do. */
  public Problem problem() {
    return problem;
  }
}
