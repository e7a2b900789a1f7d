package org.proofcut.web.home;

import static io.restassured.RestAssured.get;
import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.proofcut.bench.OutOfPlace;
import org.proofcut.bench.ShopFloor;
import org.proofcut.bench.StorageDesk;
import org.proofcut.core.storage.GearAct;
import org.proofcut.core.storage.GearEntry;
import org.proofcut.logbook.ShopItem.Shelf;
import org.proofcut.logbook.StorageLog;

/** What is out of its place stands on the first page until it is put back. */
@QuarkusTest
class OutOnFirstPageTest {

  @Inject ShopFloor floor;
  @Inject StorageDesk desk;
  @Inject StorageLog log;

  private String muffs;

  @BeforeEach
  void enter() {
    var typed = Map.of("name", "tartan <muffs>", "decibels", "30", "scale", "SNR");
    muffs = floor.keep(Optional.empty(), Shelf.GEAR, "ear-protection", typed).value().orElseThrow();
  }

  @AfterEach
  void takeOut() {
    floor.remove(muffs);
  }

  @Test
  void takenOutToday_isSaidWithWhoHasIt_andOneTapPutsItBack() {
    out(0);
    var html = get("/").asString();
    assertTrue(html.contains("Out of its place"), html);
    assertTrue(html.contains("Tartan &lt;muffs&gt;</b></a>: out, with Ash, since today"), html);
    assertTrue(html.contains("No place yet"), html);

    var form = Map.of("entry", UUID.randomUUID().toString(), "who", "Ash", "back", "/");
    assertTrue(putBack(form).matches("http://[^/]+/"), "the first page");
    assertFalse(get("/").asString().contains("with Ash, since"));
    assertTrue(putBack(form).endsWith("/"), "tapped twice, it is put back once");
    assertEquals(2, desk.record(muffs).size());
  }

  @Test
  void takenOutOnAnEarlierDay_standsOutInWords_andComesFirst() {
    out(1);
    var html = get("/").asString();
    assertTrue(html.contains("<b>still out</b>, with Ash, since yesterday"), html);
    get("/api/gear/things/" + muffs)
        .then()
        .body("with", equalTo("Ash"))
        .body("since", equalTo(desk.today().minusDays(1).toString()));

    var typed = Map.of("name", "second", "decibels", "30", "scale", "SNR");
    var second =
        floor.keep(Optional.empty(), Shelf.GEAR, "ear-protection", typed).value().orElseThrow();
    log.append(entry(second, 9));
    assertEquals(
        List.of("second", "tartan <muffs>"),
        desk.out().stream()
            .filter(one -> List.of(muffs, second).contains(one.thing()))
            .map(one -> one.name().toLowerCase())
            .toList());
    floor.remove(second);
  }

  /** It leads back to pages of ours, wherever else is asked for. */
  @Test
  void putBack_ledElsewhere_leadsToItsOwnPage() {
    for (var back : List.of("https://example.org", "//example.org", "/jobs/../x", "", "/\n")) {
      out(0);
      var form = Map.of("entry", UUID.randomUUID().toString(), "who", "Ash", "back", back);
      var location = putBack(form);
      assertTrue(location.endsWith("/storage/things/" + muffs), location);
    }
  }

  @Test
  void whatIsGoneFromTheShop_isNotOut() {
    out(1);
    floor.remove(muffs);
    assertFalse(desk.out().stream().map(OutOfPlace::thing).anyMatch(muffs::equals));
  }

  /** Where it leads. */
  private String putBack(Map<String, String> form) {
    return given()
        .redirects()
        .follow(false)
        .formParams(form)
        .post("/storage/things/" + muffs + "/put-back")
        .then()
        .statusCode(303)
        .extract()
        .header("Location");
  }

  private void out(int daysAgo) {
    log.append(entry(muffs, daysAgo));
  }

  private GearEntry entry(String thing, int daysAgo) {
    return new GearEntry(
        UUID.randomUUID().toString(),
        thing,
        desk.today().minusDays(daysAgo),
        new GearAct.TakenOut("Ash"));
  }
}
