package org.proofcut.core.storage;

import org.proofcut.core.measure.Length;

/**
 * Somebody who takes things out, by their own heights above the floor, in shoes.
 *
 * @param knuckle of the hanging hand
 * @param highest that the hand still grips
 * @param seated whether they reach from a chair
 */
public record Person(
    String name, Length knuckle, Length elbow, Length shoulder, Length highest, boolean seated) {}
