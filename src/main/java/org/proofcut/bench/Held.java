package org.proofcut.bench;

import jakarta.enterprise.context.RequestScoped;

/** What a request began with, and keeps to its end, whatever is edited meanwhile. */
@RequestScoped
class Held {

  private Standing standing;

  /** The first one that was asked for. */
  Standing orHold(Standing newest) {
    if (standing == null) {
      standing = newest;
    }
    return standing;
  }
}
