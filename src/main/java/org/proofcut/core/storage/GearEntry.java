package org.proofcut.core.storage;

import java.time.LocalDate;

/**
 * An act on a piece of gear, as it was recorded.
 *
 * @param id made where the act happened
 * @param thing id of the piece
 * @param day on which it happened, where the shop is
 */
public record GearEntry(String id, String thing, LocalDate day, GearAct act) {}
