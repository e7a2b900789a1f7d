package org.proofcut.core.shop;

import java.util.Optional;

/**
 * A piece of the shop that holds or pushes the work in place of a hand.
 *
 * @param kind id of its kind, as in {@code content/shop/aids.yaml}
 * @param name what the maker calls it
 * @param place where it lives; empty where it has no place yet
 * @param unfit why it is not used; empty where only its days count
 * @param life how long it serves
 */
public record OwnedAid(
    String id, String kind, String name, String place, Optional<String> unfit, GearLife life) {}
