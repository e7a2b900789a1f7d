package org.proofcut.core.drawing;

/**
 * Writes SVG. Everything that goes in as text is escaped; every number is written with at most
 * three decimals from a whole number of thousandths.
 *
 * <p>Colours are custom properties of the page with the light ground's value behind them, so that a
 * picture follows a dark ground and still stands alone.
 */
final class Svg {

  static final String INK = "var(--ink,#15181b)";
  static final String SHEET = "var(--sheet,#fffdf7)";
  static final String WOOD = "var(--wood,#e9dfc6)";

  private final StringBuilder text = new StringBuilder();

  /** A picture that says the same as these words. */
  static Svg picture(String viewBox, String cssClass, String words) {
    return new Svg()
        .element(
            "svg",
            "xmlns",
            "http://www.w3.org/2000/svg",
            "class",
            cssClass,
            "viewBox",
            viewBox,
            // Only where a page gives the picture another shape: then the ends go, not the size.
            "preserveAspectRatio",
            "xMidYMid slice",
            "role",
            "img",
            "aria-label",
            words);
  }

  /** A picture beside words that already say it. */
  static Svg silent(String viewBox, String cssClass) {
    return new Svg()
        .element(
            "svg",
            "xmlns",
            "http://www.w3.org/2000/svg",
            "class",
            cssClass,
            "viewBox",
            viewBox,
            "aria-hidden",
            "true",
            "focusable",
            "false");
  }

  /** Opens an element; names and values of its attributes in turn. */
  Svg element(String name, String... attributes) {
    return start(name, attributes).raw(">");
  }

  /** An element with nothing in it. */
  Svg empty(String name, String... attributes) {
    return start(name, attributes).raw("/>");
  }

  /** An element with text in it. */
  Svg words(String name, String words, String... attributes) {
    return element(name, attributes).raw(escaped(words)).close(name);
  }

  Svg path(String d, String... attributes) {
    return start("path", "d", d).attributes(attributes).raw("/>");
  }

  Svg close(String name) {
    return raw("</" + name + ">");
  }

  /** SVG that is already written. */
  Svg raw(String svg) {
    text.append(svg);
    return this;
  }

  private Svg start(String name, String... attributes) {
    return raw("<" + name).attributes(attributes);
  }

  private Svg attributes(String... namesAndValues) {
    for (int i = 0; i < namesAndValues.length; i += 2) {
      raw(" " + namesAndValues[i] + "=\"" + escaped(namesAndValues[i + 1]) + "\"");
    }
    return this;
  }

  /** For example, 12,500 thousandths are written {@code 12.5}. */
  static String number(long thousandths) {
    var sign = thousandths < 0 ? "-" : "";
    long size = Math.abs(thousandths);
    var whole = sign + size / 1000;
    long rest = size % 1000;
    return rest == 0
        ? whole
        : whole + ("." + (1000 + rest)).replace(".1", ".").replaceAll("0+$", "");
  }

  static String escaped(String words) {
    var safe = new StringBuilder();
    words
        .codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> {
                  if (c >= 0x20 || c == '\t' || c == '\n') {
                    safe.appendCodePoint(c);
                  }
                }
              }
            });
    return safe.toString();
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
