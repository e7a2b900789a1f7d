package org.proofcut.core.drawing;

/**
 * A drawing and the same thing in words.
 *
 * @param svg one {@code <svg>} element, complete and escaped, to be put into a page as it is
 * @param words what it shows, for who can't see it
 */
public record Picture(String svg, String words) {}
