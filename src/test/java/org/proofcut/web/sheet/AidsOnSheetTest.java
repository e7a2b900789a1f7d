package org.proofcut.web.sheet;

import static io.restassured.RestAssured.get;
import static org.hamcrest.Matchers.hasItem;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.proofcut.bench.DemoShop;
import org.proofcut.bench.Hand;
import org.proofcut.bench.JobDesk;
import org.proofcut.bench.ShopFloor;
import org.proofcut.bench.StorageDesk;
import org.proofcut.bench.WorkBench;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.run.Stage;
import org.proofcut.core.storage.GearAct;
import org.proofcut.logbook.ShopItem;
import org.proofcut.logbook.ShopItem.Shelf;
import org.proofcut.web.Rubbish;

/** A work aid that is kept as a thing of its own: the sheet says where it is, or why it is none. */
@QuarkusTest
class AidsOnSheetTest {

  private static final String ASK = "Where is the push stick?";
  private static final String ANSWER = "On the table, at your right hand";

  @Inject JobDesk desk;
  @Inject ShopFloor floor;
  @Inject StorageDesk storage;
  @Inject WorkBench bench;

  private String job;
  private List<ShopItem> before;
  private String stick;
  private final List<String> cabinets = new ArrayList<>();

  @BeforeEach
  void oneStick() {
    DemoShop.putBack(floor);
    before = floor.items();
    before.stream()
        .filter(item -> item.kind().equals("push-stick"))
        .forEach(item -> floor.remove(item.id()));
    stick = keep("red stick", "kept-width", "70", "kept-height", "460", "kept-depth", "20");
    job = desk.keepDemo().id();
    bench.begin(job);
  }

  @AfterEach
  void putBack() {
    bench.discard(job);
    floor.items().stream().filter(it -> !before.contains(it)).forEach(it -> floor.remove(it.id()));
    cabinets.forEach(storage::discard);
    DemoShop.putBack(floor);
    bench.planAllAgain();
  }

  @Test
  void entered_countsAsTheWorkAid_andThePromptNamesItsPlace_whereverThatIs() {
    var sheet = toTheStick();
    assertTrue(prompt(sheet).contains("Red stick: no place entered"), prompt(sheet));

    var cabinet = wallCabinet();
    assertEquals(Optional.empty(), storage.take(cabinet, storage.plan(cabinet).get().mark()));
    var place = storage.placeOf(stick).orElseThrow();
    assertTrue(place.startsWith("Rack by the saw: "), place);
    assertTrue(prompt(sheet).contains("Red stick: " + place), prompt(sheet));
    var pieces =
        "sheets.collectMany { it.checklist }.findAll { it.aids }.collectMany { it.aids }"
            + ".collectMany { it.pieces }";
    get("/api/jobs/" + job + "/plan").then().body(pieces + ".place", hasItem(place));
  }

  @Test
  void failed_isNotOffered_theSheetIsStopped_andSaysWhy() {
    int sheet = toTheStick();
    act(new GearAct.LookedAt("heel", false, "cut into", Optional.empty()));
    var html = page(sheet);
    assertTrue(html.contains("Without a push stick a hand would finish the cut"), html);
    assertTrue(html.contains("Red stick: out of use."), html);
    act(new GearAct.Mended("a new heel"));
    assertTrue(prompt(sheet).contains("Red stick: no place entered"));
  }

  @Test
  void tickedAsWell_staysAtHand_andWhatIsWrongWithTheOtherIsSaid() {
    int sheet = toTheStick();
    floor.keepAid("push-stick", true);
    act(new GearAct.LookedAt("heel", false, "cut into", Optional.empty()));
    var html = prompt(sheet);
    assertTrue(html.contains("Red stick: out of use"), html);
    assertTrue(html.contains(ANSWER));
    assertEquals(303, Rubbish.post("/jobs/" + job + "/sheets/" + sheet, form(sheet)).statusCode());
    floor.keepAid("push-stick", false);
  }

  @Test
  void out_saysWhoHasItAndSinceWhen_andOneInItsPlaceComesFirst() {
    int sheet = toTheStick();
    act(new GearAct.TakenOut("Rowan"));
    assertTrue(prompt(sheet).contains("Red stick: out, with Rowan, since today"), prompt(sheet));
    keep("blue stick", "kept-height", "500");
    bench.planAllAgain();
    var html = prompt(sheet);
    assertTrue(html.contains("Blue stick: no place entered"), html);
    assertFalse(html.contains("Red stick"), html);
    act(new GearAct.PutBack("Rowan"));
  }

  @Test
  void shopPage_andApi_sayThatItIsAtHand_withoutATick() {
    var html = get("/shop").asString();
    assertTrue(html.contains("At hand: red stick"), html);
    get("/api/shop").then().statusCode(200).body("aids", hasItem("push-stick"));
    act(new GearAct.LookedAt("heel", false, "", Optional.empty()));
    html = get("/shop").asString();
    assertTrue(html.contains("Red stick: out of use"), html);
    act(new GearAct.Mended(""));
  }

  private int toTheStick() {
    return new Hand(bench, job, "tablet")
        .until(
            now ->
                now.stage() == Stage.MACHINE && now.sheet().operation().kind() == OperationKind.RIP)
        .sheet()
        .number();
  }

  private String page(int sheet) {
    return get("/jobs/" + job + "/sheets/" + sheet).asString();
  }

  private String prompt(int sheet) {
    var html = page(sheet);
    assertTrue(html.contains(ASK), html);
    return html;
  }

  private Map<String, String> form(int number) {
    var sheet = bench.work(job).orElseThrow().plan().sheet(number).orElseThrow();
    var item =
        sheet.checklist().items().stream()
            .filter(one -> one.id().startsWith("look:hand-meets-blade"))
            .findFirst()
            .orElseThrow();
    return new HashMap<>(
        Map.of(
            "act", "confirm",
            "item", item.id(),
            "answer", ANSWER,
            "entry", WorkBench.newEntryId(),
            "operation", sheet.id(),
            "fingerprint", sheet.marks().fingerprint()));
  }

  private void act(GearAct act) {
    assertEquals(Optional.empty(), storage.act(UUID.randomUUID().toString(), stick, act));
  }

  private String keep(String name, String... fields) {
    var typed = new HashMap<String, String>(Map.of("name", name));
    for (int i = 0; i < fields.length; i += 2) {
      typed.put(fields[i], fields[i + 1]);
    }
    return floor.keep(Optional.empty(), Shelf.KIT, "push-stick", typed).value().orElseThrow();
  }

  /** Hooks on a wall, and only the stick to hang there. */
  private String wallCabinet() {
    var typed = new HashMap<>(storage.newCabinet());
    typed.put("name", "rack by the saw");
    var kept = storage.keep(Optional.empty(), typed).value().orElseThrow();
    cabinets.add(kept.id());
    var item = floor.item(stick).orElseThrow();
    var with = new HashMap<>(item.typed());
    with.put("kept-in", kept.id());
    floor.keep(Optional.of(stick), Shelf.KIT, "push-stick", with);
    return kept.id();
  }
}
