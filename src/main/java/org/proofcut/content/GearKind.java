package org.proofcut.content;

import java.util.Optional;

/**
 * A kind of protective gear.
 *
 * @param plural whether one speaks of it as "they"
 * @param order in which it is put on, counted from 1: straps and arms break the seal of what comes
 *     after them
 * @param sign number of the ISO 7010 sign to compare with: ours is drawn anew
 * @param offSign the sign where it is forbidden
 * @param rating what is usually marked on it; empty if nothing is
 * @param on what is asked, and the answer, where it is required
 * @param off the same where it is forbidden
 */
public record GearKind(
    String id,
    String name,
    boolean plural,
    int order,
    String sign,
    Optional<String> offSign,
    Optional<String> rating,
    Prompt on,
    Prompt off) {

  /** A question at the machine and the one answer that lets the work go on. */
  public record Prompt(String ask, String answer) {}
}
