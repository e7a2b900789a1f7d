package org.proofcut.web.sheet;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.proofcut.bench.Hand;
import org.proofcut.bench.JobDesk;
import org.proofcut.bench.WorkBench;
import org.proofcut.core.checklist.Item;
import org.proofcut.core.run.Act;
import org.proofcut.core.run.ProofState;
import org.proofcut.core.run.SheetProgress;
import org.proofcut.core.run.Stage;
import org.proofcut.core.safety.Check.Pause;
import org.proofcut.web.Rubbish;

@QuarkusTest
class SheetPagesTest {

  private static final String TABLET = "11111111-2222-3333-4444-555555555555";

  @Inject JobDesk desk;
  @Inject WorkBench bench;

  private String job;

  @BeforeEach
  void keepJob() {
    job = desk.keepDemo().id();
  }

  @AfterEach
  void discardJob() {
    bench.discard(job);
  }

  @Test
  void list_beforeWorkBegins_saysWhatToDo() {
    get("/jobs/" + job + "/sheets").then().statusCode(404).body(containsString("Go to all jobs"));
  }

  @Test
  void begin_soundJob_leadsToItsSheets() {
    given()
        .redirects()
        .follow(false)
        .post("/jobs/" + job + "/begin")
        .then()
        .statusCode(303)
        .header("Location", endsWith("/jobs/" + job + "/sheets"));
    get("/jobs/" + job + "/sheets").then().statusCode(200).body(containsString("Open sheet 1:"));
  }

  @Test
  void begin_noSuchJob_saysSo() {
    given().post("/jobs/nothing/begin").then().statusCode(404).body(containsString("no such job"));
  }

  @Test
  void sheet_unknownNumber_leadsBackToTheSheets() {
    new Hand(bench, job, TABLET);
    for (var number : List.of("0", "99", "-1", "abc", "99999999999", "1e9", "%3Cscript%3E")) {
      get("/jobs/" + job + "/sheets/" + number)
          .then()
          .statusCode(404)
          .body(containsString("/jobs/" + job + "/sheets\""));
    }
    get("/jobs/nothing/sheets/1").then().statusCode(404).body(containsString("Go to all jobs"));
  }

  @Test
  void sheet_everyOneAtEveryStage_isShown() {
    var hand = new Hand(bench, job, TABLET);
    var all = bench.work(job).orElseThrow().plan().sheets();
    for (var sheet : all) {
      assertShown(sheet(sheet.number()), sheet.operation().title());
    }
    var seen = EnumSet.noneOf(Stage.class);
    while (hand.current().isPresent()) {
      var before = hand.current().get();
      seen.add(before.stage());
      assertShown(sheet(before.sheet().number()), before.sheet().operation().title());
      if (before.sheet().number() == all.size() && before.stage() == Stage.LEAVE_SAFE) {
        break;
      }
      hand.until(
          now -> now.stage() != before.stage() || !now.sheet().id().equals(before.sheet().id()));
    }
    assertEquals(EnumSet.complementOf(EnumSet.of(Stage.LOCKED, Stage.DONE)), seen);
  }

  private static void assertShown(String page, String title) {
    assertTrue(page.contains("<h1>" + Rubbish.escaped(title) + "</h1>"), title);
    assertFalse(page.contains("<script>"), title);
  }

  @Test
  void provenSheet_byItsFormsAlone_isSignedOff() {
    var sheet = new Hand(bench, job, TABLET).until(now -> now.sheet().needsProof());
    int number = sheet.sheet().number();
    var stages = new ArrayList<Stage>();
    for (int posts = 0; posts < 99 && !progress(number).isDone(); posts++) {
      var now = progress(number);
      if (!stages.contains(now.stage())) {
        stages.add(now.stage());
      }
      var form = nextForm(sheet(number));
      if (form.containsKey("found")) {
        form.put("found", answered(now));
      }
      post(number, form).then().statusCode(303);
    }
    assertTrue(progress(number).isDone(), "signed off");
    assertEquals(
        List.of(
            Stage.SET, Stage.MACHINE, Stage.BEFORE_POWER, Stage.PROOF, Stage.CUT, Stage.LEAVE_SAFE),
        stages);
    assertTrue(sheet(number).contains("Signed off"));
  }

  @Test
  void post_sameEntryTwice_isDoneOnce() {
    new Hand(bench, job, TABLET);
    var form = nextForm(sheet(1));
    post(1, form).then().statusCode(303);
    post(1, form).then().statusCode(303);
    assertEquals(1, bench.record(job).size());
  }

  @Test
  void post_onALockedSheet_isRefusedAndNotRecorded() {
    new Hand(bench, job, TABLET);
    assertFalse(sheet(2).contains("<button class=\"check-answer\""), "nothing to tap");
    assertTrue(sheet(2).contains("Open sheet 1"), "the way to the open sheet");
    var forged = nextForm(sheet(1));
    var locked = bench.work(job).orElseThrow().plan().sheet(2).orElseThrow();
    forged.put("operation", locked.id());
    forged.put("fingerprint", locked.marks().fingerprint());
    var first = locked.checklist().at(Pause.SET).get(0);
    forged.put("item", first.id());
    forged.put("answer", ((Item.Look) first).answer());
    assertEquals(422, post(2, forged).statusCode());
    forged.put("act", "sign-off");
    assertEquals(422, post(2, forged).statusCode());
    assertEquals(List.of(), bench.record(job));
  }

  @Test
  void post_fromAPageThatIsOutOfDate_saysSoAndShowsTheSheetAsItIs() {
    new Hand(bench, job, TABLET);
    var form = nextForm(sheet(1));
    form.put("fingerprint", "0123456789abcdef");
    var answer = post(1, form);
    assertEquals(422, answer.statusCode());
    assertTrue(answer.asString().contains("The plan changed since this page was shown"));
    assertTrue(answer.asString().contains("Set, power off"));
    assertEquals(List.of(), bench.record(job));
  }

  @Test
  void post_anAnswerThatIsOnNoButton_isRefused() {
    new Hand(bench, job, TABLET);
    for (var rubbish : Rubbish.ALL) {
      var form = nextForm(sheet(1));
      form.put("answer", rubbish);
      assertEquals(422, Rubbish.post(address(1), form).statusCode(), rubbish);
      form.put("act", rubbish);
      assertEquals(422, Rubbish.post(address(1), form).statusCode(), rubbish);
    }
    assertEquals(List.of(), bench.record(job));
  }

  @Test
  void readBack_rubbish_isToldAtTheFieldAndKept() {
    var sheet =
        new Hand(bench, job, TABLET)
            .until(now -> nextForm(sheet(now)).containsKey("found"))
            .sheet();
    assertRubbishIsRefused(sheet.number());
  }

  @Test
  void reading_rubbish_isToldAtTheFieldAndKept() {
    var sheet = new Hand(bench, job, TABLET).until(now -> now.stage() == Stage.PROOF).sheet();
    assertRubbishIsRefused(sheet.number());
    var form = nextForm(sheet(sheet.number()));
    form.put("found", "9000 mm");
    assertTrue(post(sheet.number(), form).asString().contains("is far from"));
    for (var rubbish : Rubbish.ALL) {
      form.put("found", "18 mm");
      form.put("attempt", rubbish);
      assertEquals(422, Rubbish.post(address(sheet.number()), form).statusCode(), rubbish);
    }
  }

  private void assertRubbishIsRefused(int number) {
    int before = bench.record(job).size();
    for (var rubbish : Rubbish.ALL) {
      var form = nextForm(sheet(number));
      form.put("found", rubbish);
      var answer = Rubbish.post(address(number), form);
      assertEquals(422, answer.statusCode(), rubbish);
      var page = answer.asString();
      assertTrue(page.contains("There is a problem"), rubbish);
      assertTrue(page.contains("href=\"#found\""), "the summary leads to the field: " + rubbish);
      assertTrue(page.contains("id=\"found-problem\""), "told at the field: " + rubbish);
      assertTrue(
          page.contains("value=\"" + Rubbish.escaped(Rubbish.asReceived(rubbish)) + "\""),
          "kept: " + rubbish);
    }
    assertEquals(before, bench.record(job).size());
  }

  @Test
  void reason_emptyOrEndless_isToldAtItsField_andAnythingElseIsKeptAsWritten() {
    var hand = new Hand(bench, job, TABLET);
    int number = hand.until(now -> now.stage() == Stage.PROOF).sheet().number();
    for (var act : List.of("override", "disturbed")) {
      for (var reason : List.of("", "   ", "x".repeat(10_000))) {
        var form = formWith(sheet(number), act);
        form.put(act, reason);
        var answer = Rubbish.post(address(number), form);
        assertEquals(422, answer.statusCode());
        assertTrue(answer.asString().contains("href=\"#" + act + "\""), act);
        assertTrue(answer.asString().contains("id=\"" + act + "-problem\""), act);
        assertTrue(answer.asString().contains("value=\"" + reason + "\""), "kept");
      }
    }
    var form = formWith(sheet(number), "override");
    form.put("override", "<script>alert(1)</script>");
    post(number, form).then().statusCode(303);
    assertEquals(Stage.CUT, progress(number).stage());
    assertTrue(sheet(number).contains("because &lt;script&gt;alert(1)&lt;/script&gt;"));
  }

  @Test
  void proof_off_saysWhatToChangeAndAsksForTheFigureAnew() {
    var hand = new Hand(bench, job, TABLET);
    var start =
        hand.until(
            now ->
                now.stage() == Stage.PROOF
                    && now.verdicts().get(0).measure().correctedBy().isPresent());
    int number = start.sheet().number();
    for (var verdict : start.verdicts()) {
      var measure = verdict.measure();
      var off = measure.accepted().most().plus(measure.accepted().extent());
      for (int i = 0; i < measure.readings(); i++) {
        hand.act(start, new Act.ReadingTaken(1, measure.dimension(), off));
      }
    }
    var page = sheet(number);
    assertTrue(page.contains("Not yet"), "the stamp");
    assertTrue(page.contains("Cut new scrap and measure again."), "the one thing to do");
    var form = formWith(page, "correct");
    post(number, form).then().statusCode(303).header("Location", endsWith("#next"));
    var now = progress(number);
    assertEquals(Stage.SET, now.stage());
    assertEquals(2, now.attempt());
    assertTrue(sheet(number).contains("the proof cut made it"), "the figure says why it moved");
  }

  @Test
  void disturbed_afterTheProof_losesItAndSaysWhy() {
    var hand = new Hand(bench, job, TABLET);
    int number =
        hand.until(now -> now.sheet().needsProof() && now.stage() == Stage.CUT).sheet().number();
    var form = formWith(sheet(number), "disturbed");
    form.put("disturbed", "the fence was knocked");
    post(number, form).then().statusCode(303);
    assertTrue(progress(number).proof() instanceof ProofState.Lost);
    assertTrue(sheet(number).contains("The proof is lost: the fence was knocked."));
  }

  @Test
  void part_tickedByMistake_isUntickedAgain() {
    var hand = new Hand(bench, job, TABLET);
    var sheet = hand.until(now -> now.stage() == Stage.LEAVE_SAFE);
    int number = sheet.sheet().number();
    post(number, formWith(sheet(number), "not-cut")).then().statusCode(303);
    assertEquals(sheet.cut().size() - 1, progress(number).cut().size());
    assertEquals(Stage.CUT, progress(number).stage());
  }

  @Test
  void gear_notWorn_goesOnWithItsReason() {
    var hand = new Hand(bench, job, TABLET);
    int number = hand.until(now -> now.stage() == Stage.BEFORE_POWER).sheet().number();
    var form = formWith(sheet(number), "without");
    form.put(
        form.keySet().stream().filter(name -> name.startsWith("without-")).findFirst().get(),
        "the strap broke");
    post(number, form).then().statusCode(303);
    assertEquals("not, because the strap broke", progress(number).answers().get(form.get("item")));
  }

  @Test
  void hold_leadsToTheStateTheMachineShouldBeIn_andBack() {
    new Hand(bench, job, TABLET);
    var location =
        post(1, formWith(sheet(1), "hold")).then().statusCode(303).extract().header("Location");
    assertTrue(location.endsWith("/jobs/" + job + "/sheets/1/hold"), location);
    given()
        .get(address(1) + "/hold")
        .then()
        .statusCode(200)
        .body(containsString("Plug out, or battery out"))
        .body(containsString("item 1 of"));
    assertTrue(sheet(1).contains("You put the work down just now at item 1 of"));
  }

  @Test
  void tablet_isNamedOnceAndKnownAgain() {
    new Hand(bench, job, TABLET);
    var name = given().get(address(1)).getCookie("tablet");
    assertNotEquals("", name);
    given().cookie("tablet", name).get(address(1)).then().cookie("tablet", equalTo(name));
    given()
        .cookie("tablet", name)
        .get("/jobs/" + job + "/sheets")
        .then()
        .cookie("tablet", equalTo(name));
    given().cookie("tablet", "\"><script>").get(address(1)).then().statusCode(200);
  }

  @Test
  void trouble_leadsBackToTheSheet_andNowhereElse() {
    given()
        .get("/trouble?back=" + address(1))
        .then()
        .statusCode(200)
        .body(containsString("href=\"" + address(1) + "\""))
        .body(containsString("local emergency number"));
    for (var elsewhere : List.of("https://example.org/", "//example.org", "javascript:alert(1)")) {
      var page = given().queryParam("back", elsewhere).get("/trouble").asString();
      assertFalse(page.contains(elsewhere), elsewhere);
    }
  }

  // ---- forms of a page -----------------------------------------------------------------------

  private static final Pattern FORM =
      Pattern.compile("<form[^>]*action=\"/jobs/[^\"]*\"[^>]*>(.*?)</form>", Pattern.DOTALL);
  private static final Pattern INPUT = Pattern.compile("<input[^>]* name=\"([^\"]*)\"[^>]*>");
  private static final Pattern VALUE = Pattern.compile(" value=\"([^\"]*)\"");

  /** What a page's forms would send, by the order of the page. */
  private static List<Map<String, String>> forms(String page) {
    var forms = new ArrayList<Map<String, String>>();
    var form = FORM.matcher(page);
    while (form.find()) {
      var sends = new LinkedHashMap<String, String>();
      var input = INPUT.matcher(form.group(1));
      while (input.find()) {
        var value = VALUE.matcher(input.group());
        sends.put(input.group(1), value.find() ? unescaped(value.group(1)) : "");
      }
      forms.add(sends);
    }
    return forms;
  }

  private static String unescaped(String text) {
    return text.replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&#39;", "'")
        .replace("&amp;", "&");
  }

  private static Map<String, String> formWith(String page, String act) {
    return forms(page).stream()
        .filter(form -> act.equals(form.get("act")))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no form for " + act));
  }

  /** The first form that leads on, as a person would take it. */
  private static Map<String, String> nextForm(String page) {
    return forms(page).stream()
        .filter(form -> List.of("confirm", "reading", "cut", "sign-off").contains(form.get("act")))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no way on"));
  }

  private static String answered(SheetProgress now) {
    var act = Hand.next(now);
    return act instanceof Act.ReadingTaken reading
        ? reading.found().toString()
        : ((Act.Confirmed) act).answer();
  }

  private String address(int number) {
    return "/jobs/" + job + "/sheets/" + number;
  }

  private String sheet(SheetProgress progress) {
    return sheet(progress.sheet().number());
  }

  private String sheet(int number) {
    return get(address(number)).then().statusCode(200).extract().asString();
  }

  private SheetProgress progress(int number) {
    return bench.work(job).orElseThrow().progress().sheets().get(number - 1);
  }

  private static Response get(String address) {
    return given().cookie("tablet", TABLET).urlEncodingEnabled(false).get(address);
  }

  private Response post(int number, Map<String, String> form) {
    return given()
        .redirects()
        .follow(false)
        .cookie("tablet", TABLET)
        .contentType("application/x-www-form-urlencoded; charset=UTF-8")
        .formParams(form)
        .post(address(number));
  }
}
