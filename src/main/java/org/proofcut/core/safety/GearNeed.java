package org.proofcut.core.safety;

import java.util.Optional;

/**
 * What a rule says of one kind of protective gear.
 *
 * @param kind id of the kind, as in {@code content/shop/gear.yaml}
 * @param state required or forbidden; what no rule names is not needed
 * @param least id of the weakest class that will do; empty where any will
 * @param why in a few words, to be told where another rule says the opposite
 */
public record GearNeed(String kind, State state, Optional<String> least, Optional<String> why) {

  public enum State {
    REQUIRED,
    FORBIDDEN
  }

  /** Any class will do. */
  public GearNeed(String kind, State state) {
    this(kind, state, Optional.empty(), Optional.empty());
  }
}
