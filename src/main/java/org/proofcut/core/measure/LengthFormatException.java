package org.proofcut.core.measure;

/** Text that is no length. Carries what an edge needs to tell the person who typed it. */
public final class LengthFormatException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  /** Ways to write a length that are always understood. */
  public static final String EXAMPLES = "18.25, 18,25 mm, 23/32 in, 1 1/2\", 3' 6 1/2\"";

  private final String text;
  private final int position;
  private final String reason;

  LengthFormatException(String text, int position, String reason) {
    super(reason + " (in \"" + text + "\" at " + (position + 1) + ")");
    this.text = text;
    this.position = position;
    this.reason = reason;
  }

  /** What was typed, shortened when very long. */
  public String text() {
    return text;
  }

  /** Where reading stopped, counted in characters from 0. */
  public int position() {
    return position;
  }

  /** What is wrong and how to write it, as one sentence for a maker. */
  public String reason() {
    return reason;
  }
}
