package org.proofcut.core.drawing;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.proofcut.core.drawing.Drawing.Anchor;
import org.proofcut.core.drawing.Drawing.Fill;
import org.proofcut.core.drawing.Drawing.Line;
import org.proofcut.core.drawing.Drawing.Margins;
import org.proofcut.core.drawing.Drawing.Turn;
import org.proofcut.core.drawing.Drawing.Type;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.display.Scale;
import org.xml.sax.InputSource;

class DrawingTest {

  private static final Length METRE = Length.ofMillimetres(1000);
  private static final Length HALF_METRE = Length.ofMillimetres(500);

  @Test
  void field_areaWiderThanRoom_scalesByItsWidthAndCentresIt() {
    var plan = Drawing.of(520, 420, "plan").field(new Margins(10, 10, 10, 10), METRE, HALF_METRE);
    assertEquals(500_000, plan.thousandths(METRE));
    assertEquals(plan.px(10, 85), plan.at(Length.ZERO, Length.ZERO));
    assertEquals(plan.px(510, 335), plan.at(METRE, HALF_METRE));
  }

  @Test
  void thousandths_thirdOfAPixel_isRoundedOnce() {
    var plan =
        Drawing.of(300, 300, "plan")
            .field(new Margins(0, 0, 0, 0), Length.ofMillimetres(900), Length.ofMillimetres(900));
    assertEquals(333, plan.thousandths(Length.ofMillimetres(1)));
    assertEquals(667, plan.thousandths(Length.ofMillimetres(2)));
    assertEquals(-333, plan.thousandths(Length.ofMillimetres(-1)));
  }

  @Test
  void field_noRoom_refuses() {
    var sheet = Drawing.of(100, 100, "plan");
    var margins = new Margins(50, 0, 50, 0);
    assertThrows(IllegalArgumentException.class, () -> sheet.field(margins, METRE, METRE));
  }

  @Test
  void text_markup_isEscapedAndStaysText() throws Exception {
    var hostile = "</text><script>alert(\"1\")</script> & 'x' \u0001";
    var sheet = Drawing.of(640, 100, hostile);
    sheet.text(sheet.px(10, 40), hostile, Type.CAPTION, Anchor.START);
    var svg = sheet.picture().svg();
    assertFalse(svg.contains("<script"), svg);
    var texts = parsed(svg).getElementsByTagName("text");
    assertEquals("</text><script>alert(\"1\")</script> & 'x' ", texts.item(0).getTextContent());
  }

  @ParameterizedTest
  @CsvSource({"START, -50", "MIDDLE, 0", "END, 5", "START, 635", "MIDDLE, 700"})
  void text_overTheEdge_isMovedIn(Anchor anchor, long x) {
    var sheet = Drawing.of(640, 100, "plan");
    sheet.text(sheet.px(x, 500), "feed right to left", Type.LABEL, anchor);
    var hit = Pattern.compile("<text x=\"(\\d+)\" y=\"(\\d+)\"").matcher(sheet.picture().svg());
    assertTrue(hit.find());
    long at = Long.parseLong(hit.group(1));
    long wide = sheet.widthOf("feed right to left", Type.LABEL);
    long left = anchor == Anchor.START ? at : anchor == Anchor.MIDDLE ? at - wide / 2 : at - wide;
    assertTrue(left >= 0 && left + wide <= 640, left + " to " + (left + wide));
    assertTrue(Long.parseLong(hit.group(2)) <= 100);
  }

  @Test
  void text_widerThanTheSheet_isBrokenIntoLines() {
    var sheet = Drawing.of(350, 200, "plan");
    sheet.text(
        sheet.px(10, 30), "a sentence that is far too long for a phone", Type.LABEL, Anchor.START);
    assertEquals(3, sheet.picture().svg().split("<text", -1).length);
  }

  @Test
  void text_brokenIntoLines_keepsAFigureWhole() {
    var sheet = Drawing.of(350, 200, "plan");
    var lines = sheet.broken("strip for the plinth: 37 1/64 in wide", Type.NOTE, 320);
    assertEquals(List.of("strip for the plinth:", "37 1/64 in wide"), lines);
  }

  @Test
  void dimension_aslant_refuses() {
    var sheet = Drawing.of(640, 100, "plan");
    var from = sheet.px(0, 0);
    var to = sheet.px(10, 10);
    assertThrows(IllegalArgumentException.class, () -> sheet.dimension(from, to, "1"));
  }

  @Test
  void everyStroke_together_isWellFormed() {
    var sheet = Drawing.of(640, 400, "plan");
    sheet
        .box(sheet.px(0, 0), sheet.px(300, 40), Fill.MACHINE, Line.THICK)
        .box(sheet.px(0, 60), sheet.px(30, 300), Fill.WASTE, Line.DASHED)
        .plate(sheet.px(150, 20), "fence", Type.CAPTION)
        .outline(Fill.WOOD, Line.PLAIN, sheet.px(1, 1), sheet.px(9, 9), sheet.px(1, 9))
        .circle(sheet.px(50, 50), 9_000, Fill.INK, Line.NONE)
        .turning(sheet.px(50, 50), 24, Turn.CLOCKWISE)
        .dimension(sheet.px(10, 100), sheet.px(10, 200), "101.9")
        .dimension(sheet.px(10, 100), sheet.px(20, 100), "2")
        .feed(sheet.px(600, 300), sheet.px(100, 300));
    assertDoesNotThrow(() -> parsed(sheet.picture().svg()));
  }

  @ParameterizedTest
  @EnumSource(Sign.class)
  void sign_each_isWellFormedAndInItsColour(Sign sign) {
    var svg = sign.svg();
    assertDoesNotThrow(() -> parsed(svg));
    assertFalse(svg.contains("{"), svg);
    var colours = Arrays.asList("#005387", "#9b2423", "#f9a800", "#237f52");
    assertEquals(1, colours.stream().filter(svg::contains).count(), svg);
  }

  @Test
  void fitBar_reachesBelow_saysByHowMuchAndHatchesIt() {
    var picture = fit("0.01 mm", "0.16 mm");
    assertEquals(
        "Found 0.01 to 0.16 mm; right is 0.05 to 0.25 mm. It reaches 0.04 mm below: too tight.",
        picture.words());
    // Band of 0.2 mm in the middle third of 392 px: 0.05 mm lies at 144.667, 0.01 mm at 118.533.
    assertTrue(picture.svg().contains("M118.533 64H144.667V88H118.533z"), picture.svg());
  }

  @Test
  void fitBar_within_hatchesNothing() {
    var picture = fit("0.09 mm", "0.21 mm");
    assertEquals("Found 0.09 to 0.21 mm; right is 0.05 to 0.25 mm.", picture.words());
    assertFalse(picture.svg().contains("stroke-width=\"1.5\""), picture.svg());
  }

  @Test
  void fitBar_upsideDown_refuses() {
    assertThrows(IllegalArgumentException.class, () -> fit("0.2 mm", "0.1 mm"));
  }

  private static Picture fit(String from, String to) {
    return new FitBar(
            Length.of("0.05 mm"),
            Length.of("0.25 mm"),
            Length.of(from),
            Length.of(to),
            "too tight",
            "right",
            "loose")
        .drawn(Scale.HUNDREDTH_MILLIMETRE);
  }

  private static org.w3c.dom.Document parsed(String svg) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(svg)));
  }
}
