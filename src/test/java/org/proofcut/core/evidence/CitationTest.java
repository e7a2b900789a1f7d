package org.proofcut.core.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class CitationTest {

  @Test
  void text_ofASource_namesPlaceAndKind() {
    assertEquals(
        "Machine rule, § 3 (law)", new Citation(Citation.Kind.LAW, "Machine rule", "§ 3").text());
    assertEquals(
        "Sheet of the hinge (data sheet)",
        new Citation(Citation.Kind.DATA_SHEET, "Sheet of the hinge", "").text());
  }

  @Test
  void text_ofWhatIsItsOwnKind_saysItOnce() {
    assertEquals("common practice", Citation.COMMON_PRACTICE.text());
    assertEquals("measured", Citation.MEASURED.text());
    assertEquals("entered", Citation.ENTERED.text());
    assertEquals("follows from geometry (geometry)", Citation.GEOMETRY.text());
  }
}
