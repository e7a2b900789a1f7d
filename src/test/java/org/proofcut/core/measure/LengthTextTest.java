package org.proofcut.core.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTextTest {

  @Nested
  class Understood {

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        quoteCharacter = '~',
        textBlock =
            """
            18.25           | 18.25 mm
            18,25 mm        | 18.25 mm
            +18.25 mm       | 18.25 mm
            -5              | -5 mm
            −5 mm           | -5 mm
            .5              | 0.5 mm
            ,5 mm           | 0.5 mm
            0,705           | 0.705 mm
            0,705 in        | 17.907 mm
            0.705 in        | 17.907 mm
            .705"           | 17.907 mm
            1,2345 mm       | 1.2345 mm
            18.250000 mm    | 18.25 mm
            59cm            | 590 mm
            59 CM           | 590 mm
            1.2 m           | 1200 mm
            5 mm.           | 5 mm
            5 in.           | 127 mm
            5 inch          | 127 mm
            5 Inches        | 127 mm
            23/32 in        | 18.25625 mm
            11/4 in         | 69.85 mm
            1 1/2"          | 38.1 mm
            1-1/2"          | 38.1 mm
            1‑1/2 in        | 38.1 mm
            1 ½ in          | 38.1 mm
            1½ in           | 38.1 mm
            1-½ in          | 38.1 mm
            ½"              | 12.7 mm
            ⅞″              | 22.225 mm
            3⁄4 in          | 19.05 mm
            18 25/32"       | 477.04375 mm
            1''             | 25.4 mm
            1’’             | 25.4 mm
            1”              | 25.4 mm
            3'              | 914.4 mm
            3 foot          | 914.4 mm
            3'6"            | 1066.8 mm
            3' 6            | 1066.8 mm
            3'-6"           | 1066.8 mm
            3'6''           | 1066.8 mm
            3′ 6½″          | 1079.5 mm
            3’ 6 1/2”       | 1079.5 mm
            3' 6 1/2"       | 1079.5 mm
            3 ft 6 in       | 1066.8 mm
            3ft. 6in.       | 1066.8 mm
            -3' 6"          | -1066.8 mm
            3' .5"          | 927.1 mm
            3' 1/2"         | 927.1 mm
            0               | 0 mm
            -0              | 0 mm
            100 m           | 100000 mm
            """)
    void parse_asPeopleWriteIt_isExact(String text, String exactly) {
      assertEquals(exactly, Length.parse(text, LengthUnit.MILLIMETRE).toString());
    }

    @Test
    void parse_bareNumber_takesTheUnitOfTheJob() {
      assertEquals(Length.of("2 3/4 in"), Length.parse("11/4", LengthUnit.INCH));
      assertEquals(Length.of("2.75 mm"), Length.parse("11/4", LengthUnit.MILLIMETRE));
    }

    @Test
    void parse_spacesOfAllWidths_areSpaces() {
      assertEquals(
          Length.of("1 1/2 in"),
          Length.parse(" \u00a01\u20071/2\u2009\t\"\u202f", LengthUnit.INCH));
    }
  }

  @Nested
  class Refused {

    @ParameterizedTest
    @ValueSource(
        strings = {
          "letters",
          "NaN",
          "Infinity",
          "1e9",
          "1E9",
          "1e-3",
          "0x10",
          "0b1",
          "1f",
          "1d",
          "1L",
          "1_000",
          "٣",
          "1٣",
          "１２",
          "5 İN",
          "5 ㎜",
          "Ⅷ",
          "⅓",
          "1%",
          "5 kg",
          "5 µm",
          "$5",
          "±5",
          "~5",
          "<script>",
          "--5",
          "+-5",
          "- -5",
          "5-",
          "5 -",
          "1 -1/2",
          "1- 1/2",
          "1 - 1/2",
          "5-3",
          "5+3",
          "2*3",
          "(5)",
          "5.",
          "5. mm",
          "5 .",
          ".",
          ",",
          "-",
          "+",
          "'",
          "\"",
          "/",
          "mm",
          "1/",
          "/2",
          "1/0",
          "1/2/3",
          "1/2 1/2",
          "1/½",
          "½½",
          "1½½",
          "½/2",
          "1/2.5",
          "1.5/2",
          "1.5 1/2",
          "1.5½",
          "1 5/4",
          "1-2/2",
          "12.7.1",
          "1,2,3",
          "1.234,5",
          "1,234.5",
          "1,234",
          "1,234 mm",
          "1,234,567",
          "18 25",
          "1 2 3",
          "18.25 18.25",
          "5 mm 3",
          "5mm3",
          "5 mm 3 mm",
          "5 cm 3 mm",
          "5in3",
          "1m9",
          "5\"\"",
          "3''6",
          "3' 6'",
          "3' 6 mm",
          "3' 6\" 2",
          "3'-",
          "3' -",
          "3ft.6in",
          "5 mm..",
          "5 mm,",
          "5\n6",
          "1\u0000",
          "1/3 in",
          "0.0000000001 mm",
          "100.001 m",
          "9999999999999999999999999999999999999999",
        })
    void parse_rubbish_isRefused(String text) {
      var refusal =
          assertThrows(
              LengthFormatException.class, () -> Length.parse(text, LengthUnit.MILLIMETRE));
      assertEquals(text, refusal.text());
      assertTrue(
          refusal.position() >= 0 && refusal.position() <= text.length(),
          "position " + refusal.position());
      assertFalse(refusal.reason().isBlank());
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        quoteCharacter = '~',
        textBlock =
            """
            12x           | 2 | "x" is no unit
            12 mm 3       | 6 | "3" was not expected
            1/0           | 2 | 0 below its line
            1/            | 2 | lower half
            18 25         | 3 | side by side
            1 -1/2        | 1 | not worked out
            1 5/4         | 2 | less than 1
            12.7.1        | 0 | Two marks
            -1,234.5      | 1 | without a thousands mark, as 1234.5
            1,234         | 0 | Write 1.234 or 1234
            5.            | 2 | Decimals are missing
            1/3 in        | 0 | cannot be kept exactly
            3' 1/3"       | 3 | cannot be kept exactly
            3' 6 mm       | 5 | After feet come inches
            3ft.6in       | 3 | what the point means
            101 m         | 0 | more than 100 m
            """)
    void parse_rubbish_saysWhereAndWhy(String text, int position, String reason) {
      var refusal =
          assertThrows(LengthFormatException.class, () -> Length.parse(text, LengthUnit.INCH));
      assertEquals(position, refusal.position(), refusal.getMessage());
      assertTrue(refusal.reason().contains(reason), refusal.getMessage());
    }

    @Test
    void parse_nothing_asksForALength() {
      for (var nothing : new String[] {null, "", "   ", " ".repeat(10_000)}) {
        var refusal =
            assertThrows(LengthFormatException.class, () -> Length.parse(nothing, LengthUnit.INCH));
        assertEquals("", refusal.text());
        assertTrue(refusal.reason().startsWith("Nothing was entered"));
      }
    }

    @Test
    void parse_tenKilobytes_isRefusedAndShortened() {
      var refusal =
          assertThrows(
              LengthFormatException.class,
              () -> Length.parse("1".repeat(10_240), LengthUnit.MILLIMETRE));
      assertTrue(refusal.getMessage().length() < 120, refusal.getMessage());
      assertTrue(refusal.reason().contains("too long"));
    }

    @Test
    void parse_longTextOfWideCharacters_isNotCutInsideOne() {
      var refusal =
          assertThrows(
              LengthFormatException.class,
              () -> Length.parse("1" + "🪚".repeat(50), LengthUnit.MILLIMETRE));
      assertEquals("1" + "🪚".repeat(19) + "…", refusal.text());
    }

    @Test
    void of_noUnit_isRefused() {
      var refusal = assertThrows(LengthFormatException.class, () -> Length.of("18.25"));
      assertTrue(refusal.reason().contains("unit is missing"));
    }
  }
}
