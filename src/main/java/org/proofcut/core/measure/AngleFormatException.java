package org.proofcut.core.measure;

/** Text that is no angle. */
public final class AngleFormatException extends MeasureFormatException {

  private static final long serialVersionUID = 1L;

  /** Ways to write an angle that are always understood. */
  public static final String EXAMPLES = "45, 22.5°, 22 1/2, 31° 37', 31° 37' 12\"";

  AngleFormatException(String text, int position, String reason) {
    super(text, position, reason);
  }
}
