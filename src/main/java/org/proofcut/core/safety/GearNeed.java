package org.proofcut.core.safety;

/**
 * What a rule says of one kind of protective gear.
 *
 * @param kind id of the kind, as in {@code content/shop/gear.yaml}
 * @param state required or forbidden; what no rule names is not needed
 */
public record GearNeed(String kind, State state) {

  public enum State {
    REQUIRED,
    FORBIDDEN
  }
}
