package org.proofcut.core.measure;

/** Text that is no measure. Carries what an edge needs to tell the person who typed it. */
public abstract sealed class MeasureFormatException extends IllegalArgumentException
    permits LengthFormatException, AngleFormatException {

  private static final long serialVersionUID = 1L;

  private final String text;
  private final int position;
  private final String reason;

  MeasureFormatException(String text, int position, String reason) {
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
