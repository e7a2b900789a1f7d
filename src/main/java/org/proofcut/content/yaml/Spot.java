package org.proofcut.content.yaml;

/**
 * A place in a file.
 *
 * @param file path below the content folder
 * @param line counted from 1
 * @param column counted from 1
 * @param text the whole line, for showing it with a caret
 */
public record Spot(String file, int line, int column, String text) {

  /** The beginning of a file that has no line to show. */
  public static Spot of(String file) {
    return new Spot(file, 1, 1, "");
  }

  /** A place within the text that begins here; if the text is folded over lines, here. */
  public Spot within(String written, int columns) {
    return text.startsWith(written, column - 1)
        ? new Spot(file, line, column + columns, text)
        : this;
  }

  /** With no more of its line than a person reads; the caret still stands below its column. */
  Spot shortened(int longest) {
    if (text.length() <= longest) {
      return this;
    }
    return column <= longest
        ? new Spot(file, line, column, text.substring(0, longest) + "…")
        : new Spot(file, line, column, "");
  }

  @Override
  public String toString() {
    return file + ":" + line + ":" + column;
  }
}
