package org.proofcut.web.dust;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.web.Rubbish.escaped;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.proofcut.bench.DustDesk;
import org.proofcut.bench.JobDesk;
import org.proofcut.bench.ShopFloor;
import org.proofcut.bench.WorkBench;
import org.proofcut.content.Content;
import org.proofcut.core.intake.Demo;
import org.proofcut.core.intake.DustForm;
import org.proofcut.core.intake.Field;
import org.proofcut.core.intake.ShopForms;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.safety.Finding;
import org.proofcut.web.Rubbish;

@QuarkusTest
class DustPagesTest {

  @Inject DustDesk desk;
  @Inject JobDesk jobs;
  @Inject WorkBench bench;
  @Inject ShopFloor floor;

  static List<String> fields() {
    return DustForm.fields(Content.bundled().dust(), false).stream().map(Field::name).toList();
  }

  private static Map<String, String> typed(String... fieldsAndTexts) {
    var typed =
        new LinkedHashMap<>(
            Map.of("wood-1", "oak", "machine", "router-table", "extraction", "none"));
    for (int i = 0; i < fieldsAndTexts.length; i += 2) {
      typed.put(fieldsAndTexts[i], fieldsAndTexts[i + 1]);
    }
    return typed;
  }

  private static String page(String... fieldsAndTexts) {
    var answer = Rubbish.fetch("/dust?" + Rubbish.query(typed(fieldsAndTexts)));
    assertEquals(200, answer.statusCode());
    return answer.asString();
  }

  @Test
  void open_nothingTyped_namesWhatIsEmptyAndCallsNothingWrong() {
    var page = Rubbish.fetch("/dust").asString();
    assertTrue(page.contains("3 fields still empty"), page);
    assertFalse(page.contains("field-wrong"), page);
    assertFalse(page.contains("Airflow needed"), page);
    assertTrue(Rubbish.fetch("/rules").asString().contains("href=\"/dust\""));
  }

  @Test
  void mixture_withHardwood_isHeldToHardwoodsLimit() {
    assertTrue(page("wood-1", "pine").contains("5 mg/m³ inhalable"));
    var mixed = page("wood-1", "pine", "wood-2", "oak");
    assertTrue(mixed.contains("hardwood dust: <b>3 mg/m³ inhalable"), mixed);
    assertTrue(mixed.contains("any hardwood in a mixture makes it so"), mixed);
    assertTrue(page("wood-1", "particleboard").contains("hardwood dust: <b>3 mg/m³ inhalable"));
  }

  @Test
  void level_givesTheWeakestMaskAndItsWorking() {
    var page = page("level", "30");
    assertTrue(page.contains("mask that is all filter, marked FFP2"), page);
    assertTrue(page.contains("level ÷ limit, rounded up"), page);
    assertTrue(page.contains("It seals only on shaven skin"), page);
    assertTrue(page("level", "30.01").contains("marked FFP3"));
    assertTrue(page("level", "3").contains("no stronger mask than the machine asks for"));
    assertTrue(page("level", "500").contains("no filter mask is enough"));
  }

  @Test
  void nothingMeasured_saysThatNoFigureSaysIt() {
    var page = page();
    assertTrue(page.contains("Nothing was measured, so no figure says this"), page);
    assertFalse(page.contains("level ÷ limit"), page);
  }

  @Test
  void unitedStates_hearWhatThePocketGuideListsAboveItsLimit() {
    var about = floor.shop();
    try {
      floor.keepAbout(new ShopForms.About(about.name(), LengthUnit.INCH, "us", false));
      assertTrue(page("level", "1.5").contains("lists only supplied air"));
      assertTrue(page("level", "1.5").contains("quarter mask"));
      assertTrue(page().contains("lists only supplied air"), "nobody knows that it is less");
      assertFalse(page("level", "0.9").contains("lists only supplied air"));
      // 4 in at 20 m/s: 0.3048/3 m, π/4 d² · 20 · 3600 ÷ 1.69901 = 343.6.
      assertTrue(page("diameter", "4").contains("344 ft³/min"));
      assertTrue(
          page("extraction", "extractor", "diameter", "4", "airflow", "344").contains("Enough"));
      assertTrue(
          page("extraction", "extractor", "diameter", "4", "airflow", "343")
              .contains("Too little"));
    } finally {
      floor.keepAbout(
          new ShopForms.About(about.name(), LengthUnit.MILLIMETRE, about.region(), false));
    }
    assertFalse(page("level", "1.5").contains("<div class=\"note\"><p>Above it the pocket guide"));
  }

  @Test
  void extraction_isJudgedAtItsOpening() {
    assertTrue(page("diameter", "100").contains("566 m³/h"));
    var little = page("extraction", "extractor", "diameter", "100", "airflow", "565");
    assertTrue(little.contains("Too little"), little);
    assertTrue(little.contains("19.9 m/s"), little);
    var enough = page("extraction", "extractor", "diameter", "100 mm", "airflow", "333 ft3/min");
    assertTrue(enough.contains("Enough"), enough);
    var mouth =
        page(
            "extraction",
            "extractor",
            "mouth-width",
            "120",
            "mouth-height",
            "80",
            "airflow",
            "346");
    assertTrue(mouth.contains("Enough") && mouth.contains("at 10 m/s"), mouth);
    var both = page("diameter", "100", "mouth-width", "80", "mouth-height", "80");
    assertTrue(both.contains("A duct and a mouth were entered"), both);
    // One size of two is not wrong yet.
    assertTrue(page("mouth-width", "80").contains("<a href=\"#mouth-height\">And height</a>"));
  }

  @Test
  void panel_tellsOfFormaldehyde_solidWoodDoesNot() {
    var page = page("wood-1", "mdf");
    for (var told : List.of("0.75 ppm", "2 ppm", "0.3 ppm", "E1", "A dust filter holds back no")) {
      assertTrue(page.contains(told), told);
    }
    assertFalse(page().contains("Formaldehyde from the glue"));
  }

  @Test
  void job_tellsItsWoods_andItsSheetsAreCautionedOf() {
    var typed = new LinkedHashMap<>(Demo.job());
    typed.put("sheet-1-wood", "Iroko");
    var id = jobs.keep(Optional.empty(), typed).value().orElseThrow().id();
    try {
      var page =
          Rubbish.fetch("/dust?job=" + id + "&machine=router-table&extraction=none").asString();
      assertTrue(page.contains("<b>iroko</b>"), page);
      assertTrue(page.contains("can make you allergic"), page);
      assertFalse(page.contains("still empty"), page);
      var found = found(typed);
      assertTrue(found.contains("sensitising-wood"), found::toString);
      assertTrue(found.contains("carcinogenic-dust"), found::toString);
      assertFalse(found(Demo.job()).contains("sensitising-wood"));
    } finally {
      bench.discard(id);
    }
  }

  @Test
  void wood_thatNobodyKnows_isToldAndCountsAsItsMaterial() {
    var typed = new LinkedHashMap<>(Demo.job());
    typed.put("sheet-1-wood", "zebrano");
    var draft = jobs.draft(typed);
    var told = draft.problems().stream().filter(one -> one.where().equals("sheet-1-wood")).toList();
    assertEquals(1, told.size(), told::toString);
    assertFalse(told.get(0).stops());
    assertEquals(found(Demo.job()), found(typed));
  }

  private String found(Map<String, String> job) {
    return jobs.draft(job).plan().orElseThrow().sheets().stream()
        .flatMap(sheet -> sheet.findings().stream())
        .map(Finding::rule)
        .distinct()
        .sorted()
        .collect(Collectors.joining(" "));
  }

  @Test
  void job_thatIsNotThere_isTold() {
    var page = page("job", "no-such-job");
    assertTrue(page.contains("There is no such job"), page);
    assertFalse(page.contains("Airflow needed"), page);
  }

  @ParameterizedTest
  @MethodSource("fields")
  void rubbish_inAField_isToldThereAndKept(String field) {
    var one =
        desk.draft(typed()).groups().stream()
            .flatMap(group -> group.fields().stream())
            .filter(each -> each.name().equals(field))
            .findFirst()
            .orElseThrow();
    for (var rubbish : Rubbish.ALL) {
      var typed = typed(field, rubbish);
      var answer = Rubbish.fetch("/dust?" + Rubbish.query(typed));
      assertEquals(200, answer.statusCode(), rubbish);
      var page = answer.asString();
      boolean readable = desk.draft(typed(field, Rubbish.asReceived(rubbish))).answer().isPresent();
      assertEquals(readable, page.contains("Airflow needed"), field + " = " + rubbish);
      if (!rubbish.isBlank()) {
        assertFalse(readable, field + " = " + rubbish);
        assertTrue(page.contains("id=\"" + field + "-problem\""), field + " = " + rubbish);
      } else {
        assertEquals(one.optional() && (rubbish.isEmpty() || one.choices().isEmpty()), readable);
      }
      if (one.choices().isEmpty()) {
        assertTrue(
            page.contains("value=\"" + escaped(Rubbish.asReceived(rubbish)) + "\""), rubbish);
      }
      assertFalse(page.contains("<script>alert"), rubbish);
      assertEquals(200, Rubbish.fetch("/dust/answer?" + Rubbish.query(typed)).statusCode());
    }
  }

  @Test
  void job_rubbish_isToldThere() {
    for (var rubbish : Rubbish.ALL) {
      var answer = Rubbish.fetch("/dust?" + Rubbish.query(typed("job", rubbish)));
      assertEquals(200, answer.statusCode(), rubbish);
      assertEquals(!rubbish.isBlank(), answer.asString().contains("id=\"job-problem\""), rubbish);
    }
  }
}
