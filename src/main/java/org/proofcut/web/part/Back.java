package org.proofcut.web.part;

import java.util.Optional;
import java.util.regex.Pattern;

/** Where a page or a form leads back to: only where one of ours may have come from. */
public final class Back {

  /** The field, or the part of an address, that says so. */
  public static final String FIELD = "back";

  private static final Pattern OURS = Pattern.compile("/|/jobs/[A-Za-z0-9-]+/sheets(/[0-9]+)?");

  private Back() {}

  /**
   * The first page, or one of a job's sheets; empty for anything else.
   *
   * @param asked what was sent; null where nothing was
   */
  public static Optional<String> to(String asked) {
    return Optional.ofNullable(asked).filter(page -> OURS.matcher(page).matches());
  }
}
