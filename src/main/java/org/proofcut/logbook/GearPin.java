package org.proofcut.logbook;

/**
 * Where a thing of the shop is to stay.
 *
 * @param thing id of the shop's item
 * @param cabinet id of the cabinet
 * @param place id of the place in it
 */
public record GearPin(String thing, String cabinet, String place) {}
