package org.proofcut.core.run;

/** Where the work on one sheet stands. */
public enum Stage {
  /** Not open yet. */
  LOCKED,
  /** Power off: figures and checks. */
  SET,
  /** Power off: the machine itself. */
  MACHINE,
  /** Gear and checks before power. */
  BEFORE_POWER,
  /** Proof cut: measure, correct. */
  PROOF,
  /** The real parts, one by one. */
  CUT,
  /** Stopped, isolated, cleared. */
  LEAVE_SAFE,
  /** Signed off. */
  DONE
}
