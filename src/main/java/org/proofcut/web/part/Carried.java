package org.proofcut.web.part;

/**
 * What a form sends along unseen, such as the id of the act or the sheet it belongs to.
 *
 * @param name name of the hidden input
 * @param value its value
 */
public record Carried(String name, String value) {}
