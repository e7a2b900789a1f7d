package org.proofcut.core.shop;

/**
 * A piece of protective gear that is at hand.
 *
 * @param kind id of its kind, as in {@code content/shop/gear.yaml}
 * @param name what the maker calls it
 * @param rating as marked on it, such as "SNR 32"; empty where unknown
 * @param place where it lives; empty where it has no place yet
 */
public record OwnedGear(String id, String kind, String name, String rating, String place) {}
