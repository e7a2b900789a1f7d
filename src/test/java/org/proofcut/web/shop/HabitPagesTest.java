package org.proofcut.web.shop;

import static io.restassured.RestAssured.get;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.web.Rubbish.escaped;
import static org.proofcut.web.Rubbish.post;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.bench.HabitDesk;
import org.proofcut.bench.ShopFloor;
import org.proofcut.bench.Taught;
import org.proofcut.core.habit.Habit;
import org.proofcut.core.habit.Observation;
import org.proofcut.core.habit.Ruling;
import org.proofcut.core.habit.Ruling.About;
import org.proofcut.core.habit.Trait;
import org.proofcut.core.measure.Length;
import org.proofcut.core.shop.RouterTable;
import org.proofcut.logbook.Logbook;
import org.proofcut.web.Rubbish;

@QuarkusTest
class HabitPagesTest {

  private static final String PAGE = "/shop/habits";

  @Inject HabitDesk desk;
  @Inject ShopFloor floor;
  @Inject Logbook logbook;

  private Taught taught;

  @BeforeEach
  void teach() {
    taught = new Taught(logbook, floor);
  }

  @AfterEach
  void forget() {
    taught.forget();
  }

  private Habit fence() {
    return desk.habits().of(taught.fence());
  }

  private String to(String what) {
    return PAGE + "/" + taught.fence().id() + "/" + what;
  }

  private static void taken(Rubbish.Answer answer) {
    assertEquals(303, answer.statusCode());
    assertTrue(answer.location().contains(PAGE + "#scale~"), answer.location());
  }

  @Test
  void habits_saysWhatWasFound_ofWhat_andWhatIsMadeOfIt() {
    taught.fenceOff("0.2 mm", "0.3 mm", "0.4 mm", "0.3 mm", "0.2 mm", "0.4 mm");
    taught.widthUnder("0.1 mm");
    var table = floor.shop().machines(RouterTable.class).findFirst().orElseThrow();
    var html = get(PAGE).asString();
    assertTrue(
        html.contains(
            "Set by your fence, cuts have come out 0.30 mm more than set: 6 proofs, ±0.10 mm."),
        html);
    assertTrue(html.contains("The next set-up sets it 0.30 mm less for that."), html);
    assertTrue(html.contains("Two proofs in three lie within 0.09 mm of their mean."), html);
    assertTrue(html.contains(">" + escaped(table.name()) + " with "), html);
    assertTrue(html.contains("1 proof; one alone gives no interval"), html);
    assertTrue(html.contains("set 100.00 mm, found 100.40 mm"), html);
    assertTrue(get("/shop").asString().contains("href=\"/shop/habits\""));
  }

  @Test
  void question_standsFirst_andIsAnsweredByOneTap() {
    var told = taught.fenceOff("0.3 mm", "0.3 mm", "1.2 mm");
    var far = told.get(2);
    assertEquals(1, fence().open().size());
    var html = get(PAGE).asString();
    int asked = html.indexOf("This proof found 1.20 mm, the mean of 2 proofs before was 0.30 mm.");
    assertTrue(0 < asked && asked < html.indexOf("Set by your fence"), html);
    assertTrue(html.indexOf("action=\"" + to("count") + "\"") < html.indexOf("Set by your fence"));

    taken(post(to("leave-out"), Map.of("proof", far.proof())));
    assertEquals(List.of(), fence().open());
    assertEquals(2, fence().learned().size());
    assertTrue(get(PAGE).asString().contains("Left out: the maker left it out"));
    taken(post(to("count"), Map.of("proof", far.proof())));
    assertEquals(told, fence().learned());
  }

  @Test
  void setAside_isNotUsed_untilTakenUp() {
    taught.fenceOff("0.5 mm");
    taken(post(to("set-aside"), Map.of("because", "the fence goes for <repair>")));
    var html = get(PAGE).asString();
    assertTrue(html.contains("Set aside: the fence goes for &lt;repair&gt;."), html);
    assertFalse(html.contains("The next set-up sets it"), html);
    taken(post(to("take-up"), Map.of()));
    assertTrue(get(PAGE).asString().contains("The next set-up sets it 0.48 mm less for that."));
  }

  @ParameterizedTest
  @CsvSource({"cutter, cutter sharpened or replaced", "scale, scale set anew"})
  void startAfresh_byChoice_reachesAsFarAsItSays(String changed, String because) {
    taught.fenceOff("0.5 mm");
    taught.widthUnder("0.1 mm");
    taken(post(to("afresh"), Map.of("changed", changed)));
    assertEquals(List.of(), fence().learned());
    assertEquals(because, fence().since().orElseThrow().because());
    assertEquals(
        changed.equals("cutter") ? 0 : 1, desk.habits().of(taught.width()).learned().size());
    assertTrue(get(PAGE).asString().contains(": " + because + "."));
  }

  @Test
  void startAfresh_forAnotherReason_needsTheReason() {
    taught.fenceOff("0.5 mm");
    var answer = post(to("afresh"), Map.of("changed", "other", "because", " "));
    assertEquals(422, answer.statusCode());
    assertTrue(answer.asString().contains("id=\"because-problem\""), answer.asString());
    assertEquals(1, fence().learned().size());
    taken(post(to("afresh"), Map.of("changed", "other", "because", "new bearings")));
    var since = fence().since().orElseThrow();
    assertEquals("new bearings", since.because());
    assertEquals(new About.Only(taught.fence()), since.about());
  }

  /** Each field of each form, with everything else right. */
  @ParameterizedTest
  @CsvSource({"set-aside, because", "afresh, changed", "afresh, because"})
  void rule_rubbishInAField_isToldThereOrKeptWhole(String form, String field) {
    taught.fenceOff("0.5 mm");
    var right =
        form.equals("afresh") ? Map.of("changed", "other", "because", "x") : Map.of("because", "x");
    for (var rubbish : Rubbish.ALL) {
      var before = logbook.rulings();
      var answer = post(to(form), Rubbish.with(right, field, rubbish));
      var received = Rubbish.asReceived(rubbish).strip();
      boolean isText =
          !received.isEmpty()
              && received.length() <= 80
              && received.chars().noneMatch(Character::isISOControl);
      if (field.equals("because") && isText) {
        taken(answer);
        assertEquals(before.size() + 1, logbook.rulings().size());
        var last = logbook.rulings().get(before.size());
        assertEquals(
            received,
            last instanceof Ruling.SetAside aside
                ? aside.because()
                : ((Ruling.StartedAfresh) last).because());
        assertFalse(get(PAGE).asString().contains("<script>alert"), rubbish);
      } else {
        assertEquals(422, answer.statusCode(), form + " " + field + ": " + rubbish);
        var html = answer.asString();
        assertTrue(html.contains("href=\"#" + field + "\""), rubbish);
        assertTrue(html.contains("id=\"" + field + "\""), rubbish);
        assertTrue(html.contains("id=\"" + field + "-problem\""), rubbish);
        assertFalse(html.contains("<script>alert"), rubbish);
        assertEquals(before, logbook.rulings());
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"count", "leave-out"})
  void rule_onAProofThatIsNotThere_isRefused(String ruling) {
    taught.fenceOff("0.5 mm");
    var before = logbook.rulings();
    for (var rubbish : Rubbish.ALL) {
      assertEquals(404, post(to(ruling), Map.of("proof", rubbish)).statusCode(), rubbish);
    }
    assertEquals(404, post(to(ruling), Map.of()).statusCode());
    assertEquals(before, logbook.rulings());
  }

  @ParameterizedTest
  @ValueSource(strings = {"count", "leave-out", "take-up", "set-aside", "afresh"})
  void rule_onAHabitThatIsNotThere_isRefused(String ruling) {
    var address = PAGE + "/scale~none~none~stop/" + ruling;
    assertEquals(404, post(address, Map.of("proof", "x", "because", "x")).statusCode());
    if (ruling.equals("set-aside") || ruling.equals("afresh")) {
      assertEquals(404, get(address).statusCode());
    }
  }

  @Test
  void asks_nameTheHabit() {
    taught.fenceOff("0.5 mm");
    for (var form : List.of("set-aside", "afresh")) {
      var html = get(to(form)).asString();
      assertTrue(html.contains(": fence</p>"), html);
      assertTrue(html.contains("button-main"), html);
    }
    assertTrue(get(to("afresh")).asString().contains("value=\"scale\""));
    taught.widthUnder("0.1 mm");
    var width = get(PAGE + "/" + taught.width().id() + "/afresh").asString();
    assertFalse(width.contains("value=\"scale\""), width);
  }

  @Test
  void habits_ofWhatIsGone_areCountedAndNotShown() {
    var gone = new Trait.CutWidth("cutter that is gone");
    logbook.append(
        new Observation(
            "p", gone, Length.ofMillimetres(8), Length.ofMillimetres(3), Instant.now()));
    var html = get(PAGE).asString();
    assertFalse(html.contains(gone.id()), html);
    assertTrue(html.contains("that no longer stand in the shop"), html);
  }
}
