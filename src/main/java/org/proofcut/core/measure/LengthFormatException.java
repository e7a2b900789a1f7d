package org.proofcut.core.measure;

/** Text that is no length. */
public final class LengthFormatException extends MeasureFormatException {

  private static final long serialVersionUID = 1L;

  /** Ways to write a length that are always understood. */
  public static final String EXAMPLES = "18.25, 18,25 mm, 23/32 in, 1 1/2\", 3' 6 1/2\"";

  LengthFormatException(String text, int position, String reason) {
    super(text, position, reason);
  }
}
