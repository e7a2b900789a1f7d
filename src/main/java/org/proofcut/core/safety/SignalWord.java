package org.proofcut.core.safety;

/** Signal words in the order of their gravity, after the definitions of ANSI Z535.4. */
public enum SignalWord {
  DANGER,
  WARNING,
  CAUTION,
  NOTICE;

  /** What the harm would be. */
  public enum Severity {
    /** Death or an injury that does not heal. */
    KILL_OR_MAIM,
    /** An injury that heals. */
    MINOR_OR_MODERATE,
    /** Stock, tools or time; nobody is hurt. */
    THINGS_ONLY
  }

  /** How sure the harm is if the caution is not heeded. */
  public enum Likelihood {
    WILL,
    COULD
  }

  /** The word is computed, never chosen. */
  public static SignalWord of(Severity severity, Likelihood likelihood) {
    return switch (severity) {
      case KILL_OR_MAIM -> likelihood == Likelihood.WILL ? DANGER : WARNING;
      case MINOR_OR_MODERATE -> CAUTION;
      case THINGS_ONLY -> NOTICE;
    };
  }
}
