package org.proofcut.web.sheet;

import static io.restassured.RestAssured.get;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.proofcut.bench.DemoShop;
import org.proofcut.bench.Hand;
import org.proofcut.bench.JobDesk;
import org.proofcut.bench.ShopFloor;
import org.proofcut.bench.WorkBench;
import org.proofcut.core.run.Stage;
import org.proofcut.logbook.Logbook;
import org.proofcut.logbook.ShopItem;
import org.proofcut.logbook.ShopItem.Shelf;
import org.proofcut.web.Rubbish;

/** What a sheet says of gear that is lacking, and which ways out it offers. */
@QuarkusTest
class GearOnSheetTest {

  @Inject JobDesk desk;
  @Inject ShopFloor floor;
  @Inject WorkBench bench;
  @Inject Logbook logbook;

  private String job;
  private int number;
  private List<ShopItem> before;
  private Map<String, String> about;

  @BeforeEach
  void toThePauseBeforePower() {
    DemoShop.putBack(floor);
    before = floor.items();
    about = floor.about();
    job = desk.keepDemo().id();
    number =
        new Hand(bench, job, "tablet")
            .until(now -> now.stage() == Stage.BEFORE_POWER)
            .sheet()
            .number();
  }

  @AfterEach
  void putBack() {
    bench.discard(job);
    logbook.keep(before);
    floor.keepAbout(floor.readAbout(about).value().orElseThrow());
    DemoShop.putBack(floor);
    bench.planAllAgain();
  }

  @Test
  void atHand_saysItsMarksAndPlace_andHowGearGoesTogether() {
    var html = sheet();
    assertTrue(html.contains("Gear cabinet by the door: bay 1, shelf 2"), html);
    assertTrue(html.contains("Marked FFP3, P3 or P100"), html);
    assertTrue(html.contains("Safety glasses and ear muffs: Thin, straight arms"), html);
    assertFalse(html.contains("/shop/to-get"), html);
    assertFalse(html.contains("Rests on law here"), html);
  }

  @Test
  void wantedAndForbidden_saysWhyItIsOff() {
    assertTrue(
        sheet()
            .contains(
                "Wanted: sharp edges of sheets and boards. Forbidden, and that wins: a turning"
                    + " cutter pulls them in."));
  }

  @Test
  void lacking_saysWhatIsNeededAndWhyNothingWillDo_andOffersAReasonOnly() {
    removeAll("dust-mask", "half mask");
    var html = sheet();
    assertTrue(html.contains("Needed: FFP3, P3 or P100"), html);
    assertTrue(html.contains("folded spare mask: was good until 3 May 2024"), html);
    assertTrue(html.contains("Power and cut stay locked until you get it or record why"), html);
    assertTrue(html.contains("href=\"/shop/to-get\""), html);
    assertTrue(html.contains("Not wearing: dust mask"), html);
    assertFalse(html.contains("value=\"On, nose pinched\""), "it can't be confirmed");
    assertTrue(list().contains("Not in the shop: dust mask, FFP3, P3 or P100"));
  }

  @Test
  void goneWithout_staysOnSheetAndList() {
    removeAll("dust-mask", "half mask");
    for (var reason : List.of("two cuts <outdoors>", "x".repeat(400))) {
      var form = form();
      form.put("without-gear-dust-mask-on", reason);
      assertEquals(303, Rubbish.post(address(), form).statusCode());
      assertTrue(sheet().contains("not, because " + Rubbish.escaped(reason)));
      assertTrue(list().contains("Without dust mask, because " + Rubbish.escaped(reason)), list());
    }
  }

  @Test
  void goneWithout_rubbishInItsReason_isToldThereOrKept() {
    for (var rubbish : Rubbish.ALL) {
      var form = form();
      form.put("without-gear-dust-mask-on", rubbish);
      var answer = Rubbish.post(address(), form);
      assertTrue(List.of(303, 422).contains(answer.statusCode()), rubbish);
      assertFalse(sheet().contains("<script>alert"), rubbish);
    }
  }

  @Test
  void restsOnLaw_offersNoReason() {
    var typed = new HashMap<>(about);
    typed.put("region", "us");
    floor.keepAbout(floor.readAbout(typed).value().orElseThrow());
    bench.planAllAgain();
    var html = sheet();
    assertTrue(html.contains("Rests on law here: 29 CFR 1910.133, Eye and face protection"), html);
    assertTrue(html.contains("written for employers"), html);
    assertFalse(html.contains("without-gear-eye-protection-on"), html);
    assertTrue(html.contains("without-gear-dust-mask-on"), "no law asks for it here");
    removeAll("eye-protection", "");
    assertTrue(sheet().contains("It rests on law here: no reason opens it."));
  }

  private Map<String, String> form() {
    var marks = bench.work(job).orElseThrow().progress().sheets().get(number - 1).sheet();
    return new HashMap<>(
        Map.of(
            "act", "without",
            "item", "gear:dust-mask:on",
            "entry", WorkBench.newEntryId(),
            "operation", marks.id(),
            "fingerprint", marks.marks().fingerprint()));
  }

  private String address() {
    return "/jobs/" + job + "/sheets/" + number;
  }

  private String sheet() {
    var html = get(address()).asString();
    assertTrue(html.contains("Before power"), html);
    return html;
  }

  private String list() {
    return get("/jobs/" + job + "/sheets").asString();
  }

  private void removeAll(String kind, String name) {
    floor.items().stream()
        .filter(item -> item.shelf() == Shelf.GEAR && item.kind().equals(kind))
        .filter(item -> item.typed().get("name").startsWith(name))
        .forEach(item -> floor.remove(item.id()));
    bench.planAllAgain();
  }
}
