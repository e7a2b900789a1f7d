package org.proofcut.core.measure;

/** The two units a job can be written in. A bare number takes the job's unit. */
public enum LengthUnit {
  MILLIMETRE("mm", 1_000_000_000L),
  /** International inch, exactly 25.4 mm (NIST SP 811, from memory). */
  INCH("in", 25_400_000_000L);

  private final String symbol;
  private final long picometres;

  LengthUnit(String symbol, long picometres) {
    this.symbol = symbol;
    this.picometres = picometres;
  }

  /** Symbol as printed behind a number: {@code mm} or {@code in}. */
  public String symbol() {
    return symbol;
  }

  /** One of this unit in picometres. */
  public long picometres() {
    return picometres;
  }
}
