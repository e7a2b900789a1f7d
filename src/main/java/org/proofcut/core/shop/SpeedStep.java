package org.proofcut.core.shop;

/**
 * One step of a machine's speed dial.
 *
 * @param mark what the dial says, such as "4"
 * @param perMinute revolutions a minute at that step
 */
public record SpeedStep(String mark, int perMinute) {}
