package org.proofcut.core.storage;

/** What every plan keeps to. */
public enum HardRule {
  /** A thing has one place. */
  ONCE,
  /** It fits in its place, and its place is as it is built. */
  IN_PLACE,
  /** A hand gets to it, lifts it off its hook, lifts the lid over it. */
  HAND_ROOM,
  /** It takes up no room that something else has. */
  NOT_THROUGH,
  /** The door shuts over it, and shuts with it where it hangs there. */
  DOOR_SHUTS,
  /** Its place carries it, and its hook several times over. */
  LOAD,
  /** It is kept as it should be: hanging, standing, lying, upright. */
  POSTURE,
  SEALED,
  DRY,
  /** Nothing presses on it. */
  UNDEFORMED,
  /** It is in sight. */
  OPEN,
  /** Nothing is in its way. */
  AT_ONCE,
  /** It is never kept here. */
  ELSEWHERE,
  /** Clean things are kept from dirty ones. */
  APART,
  /** Everyone who uses it reaches it. */
  REACH,
  /** It hangs no higher and no lower than it may. */
  MOUNTING,
  /** It stays where it was pinned. */
  PINNED
}
