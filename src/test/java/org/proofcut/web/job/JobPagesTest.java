package org.proofcut.web.job;

import static io.restassured.RestAssured.get;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.web.Rubbish.escaped;
import static org.proofcut.web.Rubbish.post;
import static org.proofcut.web.Rubbish.with;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.bench.JobDesk;
import org.proofcut.bench.WorkBench;
import org.proofcut.core.intake.Demo;
import org.proofcut.core.intake.Field;
import org.proofcut.core.intake.Field.Entry;
import org.proofcut.core.intake.JobForm;
import org.proofcut.logbook.JobRecord;
import org.proofcut.web.Rubbish;

@QuarkusTest
class JobPagesTest {

  @Inject JobDesk desk;
  @Inject WorkBench bench;

  private List<String> before;

  static List<String> fields() {
    return JobForm.fields().stream().map(Field::name).toList();
  }

  @BeforeEach
  void remember() {
    before = ids();
  }

  @AfterEach
  void discardWhatWasKept() {
    ids().stream().filter(id -> !before.contains(id)).forEach(bench::discard);
  }

  private List<String> ids() {
    return desk.jobs().stream().map(JobRecord::id).sorted().toList();
  }

  @ParameterizedTest
  @MethodSource("fields")
  void keep_rubbishInAField_isToldThereAndNothingIsKept(String field) {
    for (var rubbish : Rubbish.ALL) {
      var typed = with(Demo.job(), field, rubbish);
      var read = JobForm.read(with(Demo.job(), field, Rubbish.asReceived(rubbish)));
      var answer = post("/jobs", typed);
      var html = answer.asString();
      if (read.value().isPresent()) {
        assertEquals(303, answer.statusCode(), field + ": " + rubbish);
        discardWhatWasKept();
        continue;
      }
      assertEquals(422, answer.statusCode(), field + ": " + rubbish);
      assertTrue(html.contains("There is a problem"), field + ": " + rubbish);
      for (var problem : read.problems()) {
        assertTrue(html.contains("href=\"#" + problem.where() + "\""), problem.toString());
        assertTrue(html.contains("id=\"" + problem.where() + "\""), problem.toString());
        assertTrue(html.contains("id=\"" + problem.where() + "-problem\""), problem.toString());
      }
      assertKept(html, field, Rubbish.asReceived(rubbish));
      assertEquals(before, ids());
    }
  }

  /** One of each group: that every field is read is shown above. */
  static List<String> fieldsOfFirstGroups() {
    return fields().stream()
        .filter(name -> !name.matches("sheet-[2-6]-.*|.*-reading-[2-8]|shelf-[2-8]"))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("fieldsOfFirstGroups")
  void answer_rubbishInAField_answersAndRunsNoScript(String field) {
    for (var rubbish : Rubbish.ALL) {
      for (var address : List.of("/jobs/answer", "/jobs/form")) {
        var answer = post(address, with(Demo.job(), field, rubbish));
        assertEquals(200, answer.statusCode(), address + " " + field + ": " + rubbish);
        assertFalse(answer.asString().contains("<script>alert"), field);
        assertFalse(answer.asString().contains("<img src=x"), field);
      }
    }
    assertEquals(before, ids());
  }

  /** A choice can't show what is not among its options; its problem quotes it instead. */
  private static void assertKept(String html, String name, String typed) {
    assertFalse(html.contains("<script>alert"), name);
    assertFalse(html.contains("<img src=x"), name);
    boolean isChoice =
        JobForm.fields().stream()
            .anyMatch(field -> field.name().equals(name) && field.entry() == Entry.CHOICE);
    if (!isChoice) {
      assertTrue(
          html.contains("name=\"" + name + "\" value=\"" + escaped(typed) + "\""),
          name + " lost " + typed);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"/jobs", "/jobs/form", "/jobs/answer"})
  void post_brokenOrEmptyForm_isNoFault(String address) {
    for (var body : List.of("", "%", "width=%zz", "=", "&&&", "width", "unit=in&unit=mm")) {
      int status = Rubbish.postRaw(address, body).statusCode();
      assertTrue(status < 500, address + " " + body + " answers " + status);
    }
    assertEquals(before, ids());
  }

  @Test
  void keep_fieldsOfNoForm_areNotKept() {
    var typed = with(with(Demo.job(), "foreign", "x".repeat(9_000)), "sheet-7-name", "seventh");
    var id = kept(typed);
    assertEquals(JobForm.filledIn(Demo.job()), desk.job(id).orElseThrow().typed());
  }

  @Test
  void keep_goodJob_comesBackAsTyped() {
    var typed = with(Demo.job(), "name", "Ärmel & <b>\"Söhne\"</b>");
    var id = kept(typed);
    assertEquals(JobForm.filledIn(typed), desk.job(id).orElseThrow().typed());
    var html = get("/jobs/" + id).asString();
    assertTrue(html.contains("Ärmel &amp; &lt;b&gt;&quot;Söhne&quot;&lt;/b&gt;"), html);
    assertTrue(html.contains("Sound: 17 sheets"), "verdict");
    assertTrue(html.contains("formaction=\"/jobs/" + id + "/begin\""), "begin");
  }

  @Test
  void keep_changeOfAKeptJob_replacesIt() {
    var id = kept(Demo.job());
    var count = ids().size();
    var answer = post("/jobs/" + id, with(Demo.job(), "width", "650"));
    assertEquals(303, answer.statusCode());
    assertEquals("650", desk.job(id).orElseThrow().typed().get("width"));
    assertEquals(count, ids().size());
  }

  @Test
  void keep_rubbishOverAKeptJob_leavesItAsItWas() {
    var id = kept(Demo.job());
    assertEquals(422, post("/jobs/" + id, with(Demo.job(), "width", "wide")).statusCode());
    assertEquals("620", desk.job(id).orElseThrow().typed().get("width"));
  }

  @Test
  void keep_afterWorkBegan_saysThatProofsCanBeLost() {
    var id = kept(Demo.job());
    assertEquals(List.of(), bench.begin(id));
    int revision = bench.work(id).orElseThrow().revision();
    var html = get("/jobs/" + id).asString();
    assertTrue(html.contains("loses its proof"), html);
    assertFalse(html.contains(id + "/begin"), "begun once");
    assertEquals(303, post("/jobs/" + id, with(Demo.job(), "width", "650")).statusCode());
    assertEquals(revision + 1, bench.work(id).orElseThrow().revision());
  }

  @Test
  void answer_inches_showsFractionsAndWhatWasUnderstood() {
    var typed = with(with(Demo.job(), "unit", "in"), "width", "24 1/2");
    typed.replaceAll(
        (name, text) -> text.matches("[0-9.]+") && isLength(name) ? text + " mm" : text);
    typed.put("plinth-set-back", "11/4");
    var html = post("/jobs/answer", typed).asString();
    assertTrue(html.contains("= 24 1/2 in"), html);
    assertTrue(html.contains("= 2 3/4 in"), html);
    // 622.3 mm less two sides of 17.73 mm, and two depths of 6 mm: 598.84 mm, 23.5764 in.
    assertTrue(html.contains("23 37/64 in</b> <span class=\"small\">long, 0.002 in under"), html);
  }

  private static boolean isLength(String name) {
    return JobForm.fields().stream()
        .anyMatch(field -> field.name().equals(name) && field.entry() == Entry.LENGTH);
  }

  @Test
  void answer_otherUnitThanKept_warnsThatNothingIsConverted() {
    var id = kept(Demo.job());
    var typed = with(with(Demo.job(), "unit", "in"), "job", id);
    var html = post("/jobs/answer", typed).asString();
    assertTrue(html.contains("A number without a unit is now in inches."), html);
    assertTrue(html.contains("= 620 in"), html);
  }

  @Test
  void answer_soundJob_opensEachSizeToItsWorking() {
    var html = post("/jobs/answer", Demo.job()).asString();
    assertTrue(html.contains("596.54 mm"), html);
    assertTrue(html.contains("A way was found for every cut"), html);
    assertTrue(html.contains("0.10 mm"), "spread");
    assertTrue(html.contains("class=\"working\""), html);
  }

  @Test
  void answer_dadoTooDeep_isToldWithTheWayToItsField() {
    var html = post("/jobs/answer", with(Demo.job(), "bottom-dado", "15")).asString();
    assertTrue(html.contains("Must be mended"), html);
    assertTrue(html.contains("too little wood is left"), html);
    assertTrue(html.contains("href=\"#bottom-dado\""), html);
  }

  @Test
  void answer_weakDado_mayStayAndLooksOtherThanAStop() {
    var html = post("/jobs/answer", with(Demo.job(), "shelf-dado", "3")).asString();
    assertTrue(html.contains("May stay, but know it"), html);
    assertTrue(html.contains("tell-warns"), html);
    assertFalse(html.contains("tell-stops"), html);
  }

  @Test
  void answer_emptyForm_namesWhatIsMissingAndCallsNothingWrong() {
    var html = post("/jobs/answer", Map.of("unit", "mm")).asString();
    assertTrue(html.contains("Still empty"), html);
    assertTrue(html.contains("href=\"#width\""), html);
    assertFalse(html.contains("Must be mended"), html);
  }

  @Test
  void again_oneMoreSheetAndShelf_areThereAndWhatWasTypedStays() {
    var typed = new LinkedHashMap<>(Map.of("unit", "mm", "width", "61x", "sheet-1-name", ""));
    typed.put("add", "sheet");
    var html = post("/jobs/form", typed).asString();
    assertTrue(html.contains("id=\"sheet-2-reading-8\""), html);
    assertFalse(html.contains("id=\"sheet-3-name\""), html);
    assertTrue(html.contains("name=\"width\" value=\"61x\""), html);
    typed.put("add", "shelf");
    assertTrue(post("/jobs/form", typed).asString().contains("id=\"shelf-2\""));
  }

  @Test
  void again_asManySheetsAsThereCanBe_addsNone() {
    var typed = Map.of("sheet-6-name", "", "add", "sheet");
    var html = post("/jobs/form", typed).asString();
    assertTrue(html.contains("id=\"sheet-6-name\""), html);
    assertFalse(html.contains("sheet-7"), html);
    assertFalse(html.contains("Add a sheet"), html);
  }

  @Test
  void discard_asksFirst() {
    var id = kept(with(Demo.job(), "name", "Short-lived"));
    assertTrue(get("/jobs/" + id + "/discard").asString().contains("Throw away \"Short-lived\"?"));
    assertTrue(desk.job(id).isPresent());
    assertEquals(303, post("/jobs/" + id + "/discard", Map.of()).statusCode());
    assertEquals(404, get("/jobs/" + id).statusCode());
  }

  @ParameterizedTest
  @ValueSource(strings = {"/jobs/none", "/jobs/none/discard", "/jobs/%00", "/jobs/%F0%9F%92%A9"})
  void open_unknownJob_saysWhatToDo(String address) {
    var answer = io.restassured.RestAssured.given().urlEncodingEnabled(false).get(address);
    assertEquals(404, answer.statusCode());
    assertTrue(answer.asString().contains("There is no such page"), answer.asString());
  }

  @Test
  void keep_unknownJob_isNotFound() {
    assertEquals(404, post("/jobs/none", Demo.job()).statusCode());
    assertEquals(before, ids());
  }

  private static String kept(Map<String, String> typed) {
    var answer = post("/jobs", typed);
    assertEquals(303, answer.statusCode(), answer.asString());
    return answer.location().replaceAll(".*/jobs/([^?]+).*", "$1");
  }
}
