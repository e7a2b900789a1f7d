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
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.proofcut.bench.House;
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
    var page = page("short-work-at-the-gauge");
    assertTrue(page.contains("shortest_held_across = 200.00 mm, common practice"), page);
    assertTrue(page.contains("it stops the step"), page);
  }

  @Test
  void words_thatNoRuleKnows_sayWhatToDo() {
    var page = page("zebra");
    assertTrue(page.contains("No rule speaks of that. Fewer words find more."));
    assertEquals(List.of(), ids(page));
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

  /** Each once, in the order of the page. */
  private static List<String> ids(String page) {
    return RULE.matcher(page).results().map(match -> match.group(1)).distinct().toList();
  }
}
