package org.proofcut.web.home;

/**
 * A job in one line.
 *
 * @param size over everything; empty where it can't be read
 * @param state where it stands, in words
 * @param shape that says the same: {@code done}, {@code now}, {@code open} or {@code stop}
 * @param next what to do next
 * @param action where that leads
 * @param posts whether it is an act, not a page
 */
record JobState(
    String id,
    String name,
    String size,
    String state,
    String shape,
    String next,
    String action,
    boolean posts,
    boolean demo) {}
