package org.proofcut.web.setup;

import static io.restassured.RestAssured.get;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.web.Rubbish.escaped;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.proofcut.bench.SetUpDesk;
import org.proofcut.bench.ShopFloor;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.intake.CutForm;
import org.proofcut.core.intake.CutForms;
import org.proofcut.core.intake.CutsTyped;
import org.proofcut.core.intake.Field;
import org.proofcut.core.setup.ShopsForTests;
import org.proofcut.core.shop.Machine;
import org.proofcut.web.Rubbish;

@QuarkusTest
class SetUpPagesTest {

  @Inject SetUpDesk desk;
  @Inject ShopFloor floor;

  static List<String> kinds() {
    return List.copyOf(CutsTyped.byKind().keySet());
  }

  static List<Arguments> fields() {
    var all = new ArrayList<Arguments>();
    for (var form : CutForms.all(CasesForTests.FIT)) {
      form.fields(ShopsForTests.shop())
          .forEach(field -> all.add(Arguments.of(form.kind(), field.name())));
    }
    return all;
  }

  private static String address(String kind, Map<String, String> typed) {
    return "/setups/" + kind + "?" + Rubbish.query(typed);
  }

  @Test
  void list_namesEveryKindOfCut() {
    var page = get("/setups").asString();
    for (var form : desk.forms()) {
      assertTrue(page.contains("href=\"/setups/" + form.kind() + "\""), form.kind());
      assertTrue(page.contains(form.says()), form.says());
    }
    assertTrue(get("/").asString().contains("href=\"/setups\""));
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void open_nothingTyped_namesWhatIsEmptyAndCallsNothingWrong(String kind) {
    var page = get("/setups/" + kind).asString();
    assertTrue(page.contains("fields still empty"), page);
    assertFalse(page.contains("field-wrong"), page);
    assertFalse(page.contains("Set this"), page);
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void open_example_showsFiguresDrawingWorkingAndCautions(String kind) {
    var page = Rubbish.fetch(address(kind, CutsTyped.with(kind))).asString();
    assertTrue(page.contains("Set this"), page);
    assertTrue(page.contains("not proven"), page);
    assertTrue(page.contains("The working"), page);
    assertTrue(page.contains("caution-word"), page);
    assertTrue(page.contains("drawing-frame"), page);
    assertTrue(page.contains("The proof cut, in scrap first"), page);
  }

  @ParameterizedTest
  @MethodSource("fields")
  void open_rubbishInAField_isToldThereAndKept(String kind, String field) {
    for (var rubbish : Rubbish.ALL) {
      var answer = Rubbish.fetch(address(kind, CutsTyped.with(kind, field, rubbish)));
      assertEquals(200, answer.statusCode(), rubbish);
      var page = answer.asString();
      boolean readable =
          form(kind).read(asRead(kind, field, rubbish), floor.shop()).value().isPresent();
      assertEquals(readable, page.contains("Set this") || page.contains("To the shop"), rubbish);
      if (!readable && !rubbish.isBlank()) {
        assertTrue(page.contains("id=\"" + field + "-problem\""), field + " = " + rubbish);
      }
      if (!isChosen(kind, field)) {
        assertTrue(
            page.contains("value=\"" + escaped(Rubbish.asReceived(rubbish)) + "\""),
            "kept: " + rubbish);
      }
      assertFalse(page.contains("<script>alert"), rubbish);
    }
  }

  private Map<String, String> asRead(String kind, String field, String rubbish) {
    return CutForm.filledIn(CutsTyped.with(kind, field, Rubbish.asReceived(rubbish)), floor.unit());
  }

  private boolean isChosen(String kind, String field) {
    return form(kind).fields(floor.shop()).stream()
        .anyMatch(one -> one.name().equals(field) && one.entry() == Field.Entry.CHOICE);
  }

  private CutForm form(String kind) {
    return desk.form(kind).orElseThrow();
  }

  @Test
  void open_machineChosen_isTheOneSetUp() {
    var hand =
        floor.shop().machines().stream()
            .filter(one -> one.kind().equals("hand-held-router"))
            .map(Machine::id)
            .findFirst()
            .orElseThrow();
    var page = Rubbish.fetch(address("dado", CutsTyped.with("dado", "machine", hand))).asString();
    assertTrue(page.contains("Push away from you, straightedge on your left"), page);
  }

  @Test
  void open_depthThatARuleForbids_isStopped() {
    var page = Rubbish.fetch(address("dado", CutsTyped.with("dado", "depth", "13"))).asString();
    assertTrue(page.contains("Stopped: see why"), page);
    assertTrue(page.contains("stamp-word"), page);
  }

  @Test
  void answer_whileTyping_comesAloneAndMovesTheAddress() {
    var query = Rubbish.query(CutsTyped.with("rip"));
    var answer = get("/setups/rip/answer?" + query);
    assertEquals(200, answer.statusCode());
    assertFalse(answer.asString().contains("<html"), answer.asString());
    assertTrue(answer.asString().contains("id=\"size-echo\""), answer.asString());
    assertEquals("/setups/rip?" + query, answer.getHeader("HX-Replace-Url"));
  }

  @Test
  void open_unknownCut_isNotThere() {
    assertEquals(404, get("/setups/no-such-cut").statusCode());
    assertEquals(404, get("/setups/no-such-cut/answer").statusCode());
  }
}
