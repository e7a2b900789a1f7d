package org.proofcut.content;

/**
 * A thing that holds or pushes the work in place of a hand.
 *
 * @param plural whether one speaks of it as "they"
 * @param ask what is asked before power
 * @param answer where it then is
 */
public record WorkAid(String id, String name, boolean plural, String ask, String answer) {}
