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
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.proofcut.bench.HabitDesk;
import org.proofcut.bench.SetUpDesk;
import org.proofcut.bench.ShopFloor;
import org.proofcut.core.boring.HolesForTests;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.habit.Ruling;
import org.proofcut.core.intake.CutForm;
import org.proofcut.core.intake.CutForms;
import org.proofcut.core.intake.CutsTyped;
import org.proofcut.core.intake.Field;
import org.proofcut.core.intake.Read;
import org.proofcut.core.setup.ShopsForTests;
import org.proofcut.core.shop.Machine;
import org.proofcut.logbook.Logbook;
import org.proofcut.web.Rubbish;

@QuarkusTest
class SetUpPagesTest {

  @Inject SetUpDesk desk;
  @Inject ShopFloor floor;
  @Inject HabitDesk habits;
  @Inject Logbook logbook;

  static List<String> kinds() {
    return List.copyOf(CutsTyped.byKind().keySet());
  }

  static List<Arguments> fields() {
    var all = new ArrayList<Arguments>();
    for (var form : CutForms.all(CasesForTests.FIT, HolesForTests.LIMITS)) {
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
    assertTrue(page.contains("The working"), page);
    assertTrue(page.contains("caution-word"), page);
    assertTrue(page.contains("drawing-frame"), page);
    boolean proven = !form(kind).proof().isEmpty();
    assertEquals(proven, page.contains("not proven"), page);
    assertEquals(proven, !page.contains("nothing to prove by caliper"), page);
    assertEquals(proven, page.contains("The proof cut, in scrap first"), page);
    assertEquals(proven, page.contains("by caliper</h2>"), page);
  }

  @Test
  void cutWithoutASize_isNeverCalledProven() {
    var page = Rubbish.fetch(address("break-down", CutsTyped.with("break-down"))).asString();
    assertTrue(page.contains("nothing to prove by caliper"), page);
    assertFalse(page.contains("Proven by"), page);
    assertFalse(page.contains("Keep what it shows"), page);
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

  /** A collar is set by caliper: its proof shows no scale. */
  @Test
  void open_proofThatTeachesNothing_offersNothingToKeep() {
    var typed = CutsTyped.with("pocket-holes", "found-depth-1", "19", "found-depth-2", "19.2");
    var page = Rubbish.fetch(address("pocket-holes", typed)).asString();
    assertTrue(page.contains("Proven by this proof cut"), page);
    assertFalse(page.contains("Keep what it shows"), page);
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
    assertFalse(page.contains("Set this"), page);
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

  /** 300 wanted: 300.4 found twice at the first proof, so the fence cuts 0.4 mm more than set. */
  private static Map<String, String> measured(String... more) {
    var typed = CutsTyped.with("rip", "found-size-1", "300.4", "found-size-2", "300.4");
    for (int i = 0; i < more.length; i += 2) {
      typed.put(more[i], more[i + 1]);
    }
    return typed;
  }

  private static String hidden(String page, String name) {
    var found = Pattern.compile("name=\"" + name + "\" value=\"([^\"]*)\"").matcher(page);
    assertTrue(found.find(), name);
    return found.group(1);
  }

  @Test
  void proof_measured_isJudgedOnThePage() {
    var off = Rubbish.fetch(address("rip", measured())).asString();
    assertTrue(off.contains("Not yet"), off);
    assertTrue(off.contains("Fence 0.40 mm nearer: 299.6 mm"), off);
    assertTrue(off.contains("Keep what it shows"), off);
    var right =
        Rubbish.fetch(address("rip", measured("found-size-1", "300", "found-size-2", "300.05")))
            .asString();
    assertTrue(right.contains("Proven by this proof cut"), right);
    var half = Rubbish.fetch(address("rip", measured("found-size-2", ""))).asString();
    assertFalse(half.contains("Keep what it shows"), half);
  }

  @Test
  void proof_kept_isReckonedWithNextTime_untilItIsStartedAfresh() {
    var before = Rubbish.fetch(address("rip", CutsTyped.with("rip"))).asString();
    assertFalse(before.contains("Your proof cuts are reckoned with"), before);
    var page = Rubbish.fetch(address("rip", measured())).asString();
    var sent = measured("proof", hidden(page, "proof"), "fingerprint", hidden(page, "fingerprint"));
    var answer = Rubbish.post("/setups/rip/proofs", sent);
    assertEquals(303, answer.statusCode(), answer.asString());
    assertFalse(answer.location().contains("found-size"), answer.location());
    try {
      var after = Rubbish.fetch(address("rip", CutsTyped.with("rip"))).asString();
      assertTrue(after.contains("Your proof cuts are reckoned with"), after);
      assertTrue(after.contains("cuts have come out 0.40 mm more than set: 1 proof"), after);
      assertTrue(after.contains("Fence 299.6 mm"), after);
      // A second tap sends the same once more.
      assertEquals(303, Rubbish.post("/setups/rip/proofs", sent).statusCode());
      assertTrue(
          Rubbish.fetch(address("rip", CutsTyped.with("rip")))
              .asString()
              .contains("more than set: 1 proof"));
      // What it was measured at is no longer what a page shows: the same again tells nothing.
      var again =
          Rubbish.post(
              "/setups/rip/proofs",
              measured("proof", "another", "fingerprint", hidden(page, "fingerprint")));
      assertEquals(422, again.statusCode());
      assertTrue(again.asString().contains("The figures have changed"), again.asString());
      assertTrue(again.asString().contains("value=\"300.4\""), "what was typed is kept");
    } finally {
      startAfresh();
    }
    assertEquals(
        before,
        Rubbish.fetch(address("rip", CutsTyped.with("rip")))
            .asString()
            .replaceAll("proof\" value=\"[^\"]*", "proof\" value=\""));
  }

  /** Nothing kept can be taken back. */
  private void startAfresh() {
    habits
        .habits()
        .all()
        .forEach(
            habit ->
                habits.rule(
                    now ->
                        new Read<>(
                            Optional.of(
                                new Ruling.StartedAfresh(
                                    new Ruling.About.Only(habit.trait()), "end of a test", now)),
                            List.of())));
  }

  @Test
  void proof_tappedTwiceAtOnce_isKeptOnce() {
    var page = Rubbish.fetch(address("rip", measured())).asString();
    var proof = hidden(page, "proof");
    var sent = measured("proof", proof, "fingerprint", hidden(page, "fingerprint"));
    try {
      var taps =
          Stream.generate(
                  () ->
                      CompletableFuture.supplyAsync(
                          () -> Rubbish.post("/setups/rip/proofs", sent).statusCode()))
              .limit(6)
              .toList();
      taps.forEach(tap -> assertEquals(303, tap.join()));
      var kept = logbook.observations().stream().filter(one -> one.proof().equals(proof)).toList();
      assertEquals(1, kept.size(), kept::toString);
    } finally {
      startAfresh();
    }
  }

  @Test
  void proof_readingsFarApart_showNothingAndSaySo() {
    var uneven = measured("found-size-2", "305");
    var page = Rubbish.fetch(address("rip", uneven)).asString();
    uneven.put("proof", hidden(page, "proof"));
    uneven.put("fingerprint", hidden(page, "fingerprint"));
    var answer = Rubbish.post("/setups/rip/proofs", uneven);
    assertEquals(422, answer.statusCode());
    assertTrue(answer.asString().contains("lie too far apart"), answer.asString());
  }

  @Test
  void proof_notWhollyMeasured_isRefusedAndKept() {
    var answer = Rubbish.post("/setups/rip/proofs", measured("found-size-2", "many"));
    assertEquals(422, answer.statusCode());
    assertTrue(answer.asString().contains("value=\"many\""), answer.asString());
    assertEquals(404, Rubbish.post("/setups/none/proofs", Map.of("a", "b")).statusCode());
  }

  @Test
  void open_unknownCut_isNotThere() {
    assertEquals(404, get("/setups/no-such-cut").statusCode());
    assertEquals(404, get("/setups/no-such-cut/answer").statusCode());
  }
}
