package org.proofcut.core.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.proofcut.core.casework.CaseDesign;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.measure.Length;

class JobFormTest {

  private static final List<String> RUBBISH =
      List.of(
          "",
          "abc",
          "-5",
          "0",
          "1e9",
          "NaN",
          "1,234.5",
          "<script>alert(1)</script>",
          "5 kg",
          "x".repeat(10_000),
          "\u0000",
          "\ud83d",
          "٣",
          "1/0");

  @Test
  void demo_readsWithoutAProblem() {
    var read = JobForm.read(Demo.job());
    assertEquals(List.of(), read.problems());
    var design = read.value().orElseThrow();
    assertEquals(Length.of("620 mm"), design.outside().width());
    assertEquals(List.of(Length.of("500 mm")), design.shelves());
    assertEquals(4, design.sheets().top().thickness().all().size());
    assertEquals("thin ply for the back", design.sheets().back().name());
  }

  @Test
  void unitOfTheJob_isTakenByBareNumbersOnly() {
    var typed = changed("unit", "in");
    typed.put("width", "24");
    typed.put("height", "94 cm");
    var outside = JobForm.read(typed).value().map(CaseDesign::outside);
    // 940 mm elsewhere is now 940 in, and out of range: this is told, and not silently converted.
    assertTrue(outside.isEmpty());
    var wrong = JobForm.read(typed).problems().stream().map(Problem::where).toList();
    assertTrue(wrong.contains("sheet-1-length"), wrong.toString());
    assertTrue(!wrong.contains("width") && !wrong.contains("height"), wrong.toString());
  }

  @Nested
  class Fields {

    @ParameterizedTest(name = "{0} = {1}")
    @MethodSource("org.proofcut.core.intake.JobFormTest#rubbish")
    void rubbish_isToldAtItsFieldAndNothingIsRead(String field, String text) {
      var read = JobForm.read(changed(field, text));
      assertTrue(read.value().isEmpty());
      assertTrue(
          read.problems().stream().anyMatch(problem -> problem.where().equals(field)),
          () -> read.problems().toString());
    }

    @Test
    void emptyForm_isToldWholeAndAtOnce() {
      var wrong = JobForm.read(Map.of()).problems().stream().map(Problem::where).toList();
      assertTrue(wrong.containsAll(List.of("name", "width", "height", "depth", "from-top")));
    }

    @Test
    void sheetWithoutReadings_isAskedForThem() {
      var typed = new HashMap<>(Demo.job());
      for (int i = 1; i <= 4; i++) {
        typed.put("sheet-2-reading-" + i, " ");
      }
      var wrong = JobForm.read(typed).problems();
      assertEquals(1, wrong.size(), wrong.toString());
      assertEquals("sheet-2-reading-1", wrong.get(0).where());
    }
  }

  @Nested
  class AtField {

    @Test
    void secondShelf_isTheFieldItWasTypedIn() {
      var typed = changed("shelf-1", "");
      typed.put("shelf-3", "400");
      typed.put("shelf-5", "410");
      var problem = Problem.stops("shelf-2", "too close", "apart", "move it");
      assertEquals("shelf-5", JobForm.atField(problem, typed).where());
    }

    @Test
    void sheet_isItsFirstReading() {
      var problem = Problem.stops("sheet:sheet-2", "uneven", "even", "measure");
      assertEquals("sheet-2-reading-1", JobForm.atField(problem, Demo.job()).where());
    }
  }

  static Stream<Arguments> rubbish() {
    var lengths =
        List.of(
            "width",
            "height",
            "depth",
            "top-rabbet",
            "bottom-dado",
            "shelf-dado",
            "back-rabbet",
            "sheet-1-length",
            "sheet-1-width");
    return Stream.concat(
        lengths.stream().flatMap(field -> RUBBISH.stream().map(text -> Arguments.of(field, text))),
        Stream.of("unit", "from-top", "from-shelf", "sheet-1-material")
            .flatMap(
                field ->
                    Stream.of("", "9", "<b>", "x".repeat(10_000))
                        .map(text -> Arguments.of(field, text))));
  }

  private static Map<String, String> changed(String field, String text) {
    var typed = new HashMap<>(Demo.job());
    typed.put(field, text);
    return typed;
  }
}
