package org.proofcut.web.handbook;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.web.Rubbish.escaped;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.proofcut.bench.House;
import org.proofcut.core.safety.Harm;
import org.proofcut.rulebook.Rule;
import org.proofcut.web.Rubbish;

@QuarkusTest
class HandbookPagesTest {

  static final List<String> RUBBISH = Rubbish.ALL;

  private static final Pattern RULE = Pattern.compile("Rule ([a-z-]+)");

  @Inject House house;

  @Test
  void rules_withoutWords_areAllThere_withHazardAndSource() {
    var page = page("");
    for (var rule : house.content().rulebook().rules()) {
      assertTrue(page.contains("Rule " + rule.id()), rule.id());
      assertTrue(page.contains(escaped(rule.hazard())), rule.hazard());
      assertTrue(page.contains(escaped(rule.because().text())), rule.because().text());
    }
  }

  @Test
  void rules_ofOneMachine_standAtIt_gravestFirst() {
    var page = page("");
    var jointer = page.substring(page.indexOf("chapter-jointer"), page.indexOf("chapter-planer"));
    var words =
        Pattern.compile("caution-word\">.*?(DANGER|WARNING|CAUTION|NOTICE)</h3>").matcher(jointer);
    var order = List.of("DANGER", "WARNING", "CAUTION", "NOTICE");
    int last = 0;
    int seen = 0;
    while (words.find()) {
      int now = order.indexOf(words.group(1));
      assertTrue(now >= last, words.group(1) + " after " + order.get(last));
      last = now;
      seen++;
    }
    assertTrue(seen > 5, seen + " rules at the jointer");
  }

  @Test
  void words_findWhatSpeaksOfAllOfThem_inWhateverCase() {
    var found = ids(page("Push STICK"));
    assertTrue(found.contains("no-push-stick"), found::toString);
    assertFalse(found.contains("fine-dust"), found::toString);
    assertTrue(found.size() < ids(page("push")).size(), found::toString);
  }

  @Test
  void words_ofALaw_findTheRulesThatRestOnIt() {
    var found = ids(page("1910.138"));
    assertEquals(List.of("gloves-at-the-cutter"), found);
  }

  @Test
  void limit_isTold_withItsValueAndSource() {
    var page = page("short-work-at-the-saw");
    assertTrue(page.contains("shortest_held_across = 200.00 mm, common practice"), page);
    assertTrue(page.contains("it stops the step"), page);
  }

  @Test
  void rules_all_tellHowTheyHurt_andEveryGroundWithItsRegionAndHowItIsKnown() {
    var content = house.content();
    var page = page("");
    for (var rule : content.rulebook().rules()) {
      assertTrue(page.contains("Harm: " + escaped(rule.harm().words())), rule.id());
      for (var ground : rule.grounds()) {
        assertTrue(page.contains(escaped(ground.citation().text())), rule.id());
        assertTrue(page.contains(escaped(ground.says())), rule.id());
        content
            .known(ground.citation())
            .ifPresent(known -> assertTrue(page.contains(escaped(known)), rule.id()));
      }
    }
    assertTrue(page.contains("Binding in: Great Britain."));
    assertTrue(page.contains("Binding in: United States, Washington State."));
    assertTrue(page.contains("Binding in: United States. How"), "Washington lies within it");
  }

  @Test
  void words_ofAnyGround_ofWhereItBinds_ofHowItIsKnown_andOfTheHarm_findTheRule() {
    assertTrue(ids(page("PUWER regulation 19")).contains("cutter-change-live"));
    assertTrue(ids(page("binding in: european union guard")).contains("saw-without-guard"));
    assertFalse(ids(page("binding in: european union")).contains("snipe"));
    assertTrue(ids(page("the numbers of its regulations too")).contains("saw-without-guard"));
    var strain = ids(page("strained by lifting"));
    assertTrue(strain.contains("board-carried-round"), strain::toString);
    assertFalse(strain.contains("fine-dust"), strain::toString);
  }

  @Test
  void matrix_everyCell_leadsToExactlyItsRules_orToItsReason() {
    var content = house.content();
    var page = get("/rules/by-harm");
    for (var row : content.matrix().rows()) {
      for (var harm : Harm.values()) {
        var cell = row.cell(harm);
        var address =
            "/rules?machine=%s&operation=%s&harm=%s"
                .formatted(row.way().machine(), row.way().kind().id(), Sought.id(harm));
        var link = "href=\"" + escaped(address) + "\">" + cell.rules().size() + "<";
        assertEquals(!cell.rules().isEmpty(), page.contains(link), link);
        cell.why().ifPresent(why -> assertTrue(page.contains(escaped(why)), why));
      }
    }
    var reasons = Pattern.compile("href=\"#(why-[a-z-]+-\\d+)\"").matcher(page);
    int seen = 0;
    while (reasons.find()) {
      assertTrue(page.contains("<li id=\"" + reasons.group(1) + "\">"), reasons.group(1));
      seen++;
    }
    assertEquals(
        content.matrix().rows().stream()
            .flatMap(row -> row.cells().values().stream())
            .filter(cell -> cell.why().isPresent())
            .count(),
        seen);
  }

  @Test
  void rules_ofACell_areTheseAndNoOthers() {
    var content = house.content();
    for (var row : content.matrix().rows()) {
      var cell = row.cell(Harm.CUT);
      var page =
          get(
              "/rules?machine=%s&operation=%s&harm=cut"
                  .formatted(row.way().machine(), row.way().kind().id()));
      assertEquals(new TreeSet<>(cell.rules()), new TreeSet<>(ids(page)));
      assertTrue(
          page.contains(
              cell.rules().isEmpty() ? "No rule speaks of that" : cell.rules().size() + " of "),
          "the count");
    }
    var page = get("/rules?machine=table-saw&operation=rip&harm=cut&words=stick");
    assertTrue(ids(page).contains("no-push-stick"));
    assertFalse(ids(page).contains("blade-too-high"), "words look among the rules of the cell");
    assertTrue(page.contains("Table saw, Rip to width: cut by the cutter"), page);
  }

  @Test
  void rules_ofACutThatIsNotMade_areNone_andRubbishAsksForNoCut() {
    assertEquals(List.of(), ids(get("/rules?machine=planer&operation=dado&harm=cut")));
    assertEquals(ids(page("")), ids(get("/rules?machine=planer&operation=dado&harm=zebra")));
  }

  @Test
  void rules_ofOneMachineAlone_areThoseAtIt_andEachWayKeepsTheWords() {
    var content = house.content();
    var page = get("/rules?machine=jointer");
    var its =
        content.rulebook().rules().stream()
            .filter(rule -> rule.machines().contains("jointer"))
            .map(Rule::id)
            .toList();
    assertFalse(its.isEmpty());
    assertEquals(new TreeSet<>(its), new TreeSet<>(ids(page)));
    assertTrue(page.contains(its.size() + " of " + content.rulebook().rules().size() + " rules"));
    assertTrue(
        page.contains("href=\"/rules?machine=jointer\" aria-current=\"page\""), "it is marked");
    var found =
        given()
            .queryParam("machine", "jointer")
            .queryParam("words", "push block")
            .get("/rules")
            .asString();
    assertTrue(found.contains("href=\"/rules?machine=jointer&amp;words=push+block\""), found);
    assertTrue(its.containsAll(ids(found)), () -> ids(found).toString());
  }

  @Test
  void words_thatNoRuleOfTheMachineKnows_areNotLookedForAtOthers() {
    var page = get("/rules?machine=jointer&words=zebra");
    assertEquals(List.of(), ids(page));
    assertTrue(page.contains("No rule speaks of that"));
    assertEquals(List.of(), ids(get("/rules?machine=jointer&words=riving")));
    assertFalse(ids(page("riving")).isEmpty(), "other machines have some");
    assertEquals(ids(page("")), ids(get("/rules?machine=zebra")), "no machine asks for none");
  }

  @Test
  void page_ofAllRules_leadsToTheMatrix() {
    assertTrue(page("").contains("href=\"/rules/by-harm\""));
  }

  @Test
  void words_thatNoRuleKnows_sayWhatToDo() {
    var page = page("zebra");
    assertTrue(page.contains("No rule speaks of that. Fewer words find more."));
    assertEquals(List.of(), ids(page));
  }

  @ParameterizedTest
  @FieldSource("RUBBISH")
  void rubbish_inACell_isAnswered(String rubbish) {
    var answer =
        Rubbish.fetch(
            "/rules?"
                + Rubbish.query(Map.of("machine", rubbish, "operation", rubbish, "harm", "cut")));
    assertEquals(200, answer.statusCode(), rubbish);
    assertFalse(answer.asString().contains("<script>alert"), rubbish);
  }

  @ParameterizedTest
  @FieldSource("RUBBISH")
  void rubbish_isAnswered(String rubbish) {
    var answer = Rubbish.fetch("/rules?" + Rubbish.query(Map.of("words", rubbish)));
    assertEquals(200, answer.statusCode(), rubbish);
    assertFalse(answer.asString().contains("<script>alert"), rubbish);
  }

  private static String page(String words) {
    return given()
        .queryParam("words", words)
        .get("/rules")
        .then()
        .statusCode(200)
        .extract()
        .asString();
  }

  private static String get(String address) {
    return given().get(address).then().statusCode(200).extract().asString();
  }

  /** Each once, in the order of the page. */
  private static List<String> ids(String page) {
    return RULE.matcher(page).results().map(match -> match.group(1)).distinct().toList();
  }
}
