package org.proofcut.core.safety;

/**
 * One thing to do about a hazard.
 *
 * @param kind its place in the hierarchy of controls
 * @param action one checkable action, in the imperative
 */
public record Control(Kind kind, String action) {

  /** The hierarchy of controls, the strongest first. */
  public enum Kind {
    REMOVE,
    REPLACE,
    GUARD,
    WORK_PRACTICE,
    GEAR
  }
}
