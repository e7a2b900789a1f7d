package org.proofcut.logbook;

/**
 * Where a thing of the shop lives.
 *
 * @param thing id of the shop's item
 * @param cabinet id of the cabinet
 * @param place id of the place in it
 * @param words how prompts call it
 */
public record GearHome(String thing, String cabinet, String place, String words) {}
