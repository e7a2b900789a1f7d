package org.proofcut.core.storage;

/** What comes off a thing, or must not come on to it. */
public enum Soil {
  CLEAN,
  DIRTY,
  EITHER;

  /** Whether the two are kept apart. */
  public boolean isKeptFrom(Soil other) {
    return (this == CLEAN && other == DIRTY) || (this == DIRTY && other == CLEAN);
  }
}
