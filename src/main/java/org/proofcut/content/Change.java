package org.proofcut.content;

/**
 * What a shop's own content changes in ours.
 *
 * @param file path below the shop's content folder
 * @param id of the rule, limit or entry
 * @param words what is the shop's own, in a line
 * @param oursStays whether ours rests on law and stays in force beside it
 */
public record Change(String file, String id, String words, boolean oursStays) {}
