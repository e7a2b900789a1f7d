package org.proofcut.core.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

/** A picture read back: what stands where, in pixels, worked out from its SVG alone. */
public final class Seen {

  /** A text with the room it takes up, estimated from its size. */
  public record Words(String text, double left, double top, double right, double bottom) {

    boolean overlaps(Words other) {
      return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }
  }

  /** An upright rectangle, with what it is filled and drawn with. */
  record Box(double left, double top, double right, double bottom, String fill, String stroke) {

    double width() {
      return right - left;
    }

    double height() {
      return bottom - top;
    }
  }

  record Circle(double x, double y, double r) {}

  private static final Pattern UPRIGHT = Pattern.compile("M([0-9.]+) ([0-9.]+)L\\1 ([0-9.]+)");

  private static final Pattern RECTANGLE = Pattern.compile("M(\\S+) (\\S+)H(\\S+)V(\\S+)H(\\S+)z");

  private final Document svg;
  private final String source;

  private Seen(String source) {
    this.source = source;
    try {
      this.svg =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(new InputSource(new StringReader(source)));
    } catch (Exception e) {
      throw new AssertionError("no well-formed SVG: " + source, e);
    }
  }

  public static Seen in(Picture picture) {
    var seen = new Seen(picture.svg());
    assertEquals(picture.words(), seen.svg.getDocumentElement().getAttribute("aria-label"));
    return seen;
  }

  List<Words> texts() {
    var texts = new ArrayList<Words>();
    for (var one : all("text")) {
      double size = number(one, "font-size");
      double wide =
          one.getTextContent().length()
              * size
              * (one.getAttribute("font-weight").equals("700") ? 0.55 : 0.5);
      double x = number(one, "x");
      double left =
          switch (one.getAttribute("text-anchor")) {
            case "middle" -> x - wide / 2;
            case "end" -> x - wide;
            default -> x;
          };
      double y = number(one, "y");
      texts.add(
          new Words(one.getTextContent(), left, y - size * 0.75, left + wide, y + size * 0.22));
    }
    return texts;
  }

  List<Box> boxes() {
    var boxes = new ArrayList<Box>();
    for (var one : all("path")) {
      var hit = RECTANGLE.matcher(one.getAttribute("d"));
      if (hit.matches()) {
        boxes.add(
            new Box(
                Double.parseDouble(hit.group(1)),
                Double.parseDouble(hit.group(2)),
                Double.parseDouble(hit.group(3)),
                Double.parseDouble(hit.group(4)),
                one.getAttribute("fill"),
                one.getAttribute("stroke-width")));
      }
    }
    return boxes;
  }

  /** Thin lines straight up or down, such as join a number to what it stands beside. */
  List<Box> leads() {
    return all("path").stream()
        .filter(one -> one.getAttribute("stroke-width").equals("1.5"))
        .map(one -> UPRIGHT.matcher(one.getAttribute("d")))
        .filter(Matcher::matches)
        .map(
            hit -> {
              double x = Double.parseDouble(hit.group(1));
              double from = Double.parseDouble(hit.group(2));
              double to = Double.parseDouble(hit.group(3));
              return new Box(x, Math.min(from, to), x, Math.max(from, to), "", "");
            })
        .toList();
  }

  Circle cutter() {
    return circles().get(0);
  }

  List<Circle> circles() {
    return all("circle").stream()
        .map(one -> new Circle(number(one, "cx"), number(one, "cy"), number(one, "r")))
        .toList();
  }

  boolean turnsClockwise() {
    return source.contains("scale(-1 1)");
  }

  /** Every text is at least so large, lies on the sheet, and over no other. */
  public void isLegible(String what) {
    var size = svg.getDocumentElement().getAttribute("viewBox").split(" ");
    double width = Double.parseDouble(size[2]);
    double height = Double.parseDouble(size[3]);
    var texts = texts();
    assertTrue(!texts.isEmpty(), what);
    for (var one : all("text")) {
      assertTrue(number(one, "font-size") >= 24, what + ": too small: " + one.getTextContent());
    }
    for (int i = 0; i < texts.size(); i++) {
      var one = texts.get(i);
      assertTrue(
          one.left >= 0 && one.top >= 0 && one.right <= width && one.bottom <= height,
          () -> what + ": off the sheet: " + one);
      for (var other : texts.subList(i + 1, texts.size())) {
        assertTrue(!one.overlaps(other), () -> what + ": " + one + " over " + other);
      }
    }
  }

  private List<Element> all(String name) {
    var found = svg.getElementsByTagName(name);
    var all = new ArrayList<Element>();
    for (int i = 0; i < found.getLength(); i++) {
      all.add((Element) found.item(i));
    }
    return all;
  }

  private static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }
}
