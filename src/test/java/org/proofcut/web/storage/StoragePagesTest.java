package org.proofcut.web.storage;

import static io.restassured.RestAssured.get;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.web.Rubbish.asReceived;
import static org.proofcut.web.Rubbish.escaped;
import static org.proofcut.web.Rubbish.post;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.bench.JobDesk;
import org.proofcut.bench.ShopFloor;
import org.proofcut.bench.StorageDesk;
import org.proofcut.bench.WorkBench;
import org.proofcut.web.Rubbish;

@QuarkusTest
class StoragePagesTest {

  static final List<String> RUBBISH = Rubbish.ALL;

  @Inject StorageDesk desk;
  @Inject ShopFloor floor;
  @Inject JobDesk jobs;
  @Inject WorkBench bench;

  private SmallCabinet cabinet;
  private String muffs;
  private String stick;
  private List<String> cabinetsBefore;
  private List<String> peopleBefore;

  @BeforeEach
  void fillACabinet() {
    cabinetsBefore = desk.cabinets().stream().map(one -> one.id()).toList();
    peopleBefore = desk.people().stream().map(one -> one.id()).toList();
    cabinet = new SmallCabinet(desk, floor);
    muffs = cabinet.addMuffs("green muffs");
    stick = cabinet.addPushStick("oak stick");
  }

  @AfterEach
  void takeOut() {
    cabinet.takeOut();
    desk.cabinets().stream()
        .map(one -> one.id())
        .filter(id -> !cabinetsBefore.contains(id))
        .forEach(desk::discard);
    desk.people().stream()
        .map(one -> one.id())
        .filter(id -> !peopleBefore.contains(id))
        .forEach(desk::discardPerson);
  }

  private String page(String address) {
    return get(address).then().statusCode(200).extract().asString();
  }

  private String plan() {
    return page("/storage/cabinets/" + cabinet.id);
  }

  private String thing() {
    return page("/storage/things/" + muffs);
  }

  private static String refused(Rubbish.Answer answer) {
    assertEquals(422, answer.statusCode());
    return answer.asString();
  }

  @Test
  void overview_beforeAnybodyLivesThere_namesCabinetAndWhatHasNoPlace() {
    var page = page("/storage");
    assertTrue(page.contains("corner cabinet"), page);
    assertTrue(page.contains("0 things live here, 2 have no place yet"), page);
    assertTrue(page.contains("To be kept in corner cabinet"), page);
    var why = page("/storage/no-place");
    assertTrue(why.contains("Green muffs"), why);
    assertTrue(why.contains("Planned: corner cabinet, "), why);
  }

  @Test
  void take_thePlanThatWasSeen_givesEverythingItsPlace() {
    var seen = plan();
    assertTrue(seen.contains("Everything has a place: 2 things"), seen);
    assertTrue(seen.contains("Live by this plan"), seen);
    var mark = desk.plan(cabinet.id).orElseThrow().mark();
    assertEquals(
        303, post("/storage/cabinets/" + cabinet.id + "/take", Map.of("mark", mark)).statusCode());
    assertTrue(plan().contains("Everything lives by this plan"));
    var overview = page("/storage");
    assertTrue(overview.contains("2 things live here"), overview);
    assertTrue(overview.contains("aria-label=\"Corner cabinet: "), overview);
    assertTrue(thing().contains("Corner cabinet: "));
  }

  @Test
  void take_anotherPlanThanWasSeen_isRefusedInWords() {
    var page =
        refused(post("/storage/cabinets/" + cabinet.id + "/take", Map.of("mark", "yesterday")));
    assertTrue(page.contains("There is a problem"), page);
  }

  @Test
  void plan_listsEachThingWithItsNumber_andSaysItForWhoCantSeeTheDrawing() {
    var page = plan();
    assertTrue(page.contains("1&nbsp; "), page);
    assertTrue(
        page.contains("aria-label=\"corner cabinet from the front. Inside 600 mm wide"), page);
  }

  @Test
  void pin_aThingWhereItIsPlanned_thenTakeThePinOut() {
    var place = desk.plan(cabinet.id).orElseThrow().plan().of(muffs).orElseThrow().place().id();
    var at = "/storage/cabinets/" + cabinet.id;
    assertEquals(303, post(at + "/pin", Map.of("thing", muffs, "place", place)).statusCode());
    assertTrue(plan().contains("Pinned here"));
    assertTrue(thing().contains("Pinned to: "));
    assertEquals(303, post(at + "/unpin", Map.of("thing", muffs)).statusCode());
    assertFalse(plan().contains("Pinned here"));
  }

  @Test
  void pin_toAPlaceWhereItMayNotBe_isRefusedWithTheReason_onItsOwnPage() {
    var page = refused(post("/storage/things/" + muffs + "/pin", Map.of("place", "fitting-3")));
    assertTrue(page.contains("There is a problem"), page);
    assertTrue(page.contains("place-problem"), page);
    assertTrue(page.contains("<option value=\"fitting-3\" selected>"), page);
  }

  @ParameterizedTest
  @FieldSource("RUBBISH")
  void pin_rubbish_isRefused(String rubbish) {
    refused(
        post("/storage/cabinets/" + cabinet.id + "/pin", Map.of("thing", rubbish, "place", "x")));
    refused(
        post("/storage/cabinets/" + cabinet.id + "/pin", Map.of("thing", muffs, "place", rubbish)));
    refused(post("/storage/cabinets/" + cabinet.id + "/unpin", Map.of("thing", rubbish)));
    refused(post("/storage/cabinets/" + cabinet.id + "/take", Map.of("mark", rubbish)));
    refused(post("/storage/things/" + muffs + "/pin", Map.of("place", rubbish)));
  }

  @Test
  void plan_whatFitsAfterASmallChange_saysWhich_andBringsItIntoTheForm() {
    cabinet.addMuffs("long muffs", "kept-height", "480", "kept-width", "200");
    var page = plan();
    assertTrue(page.contains("1 thing has no place here"), page);
    assertTrue(page.contains("<b>Long muffs</b><br>"), page);
    assertTrue(
        page.indexOf("What does not fit") < page.indexOf("Live by this plan"),
        "what does not fit is read before the plan is taken");
    var words = desk.change(cabinet.id).orElseThrow().words();
    assertTrue(words.startsWith("Move shelf: its top goes from 300 mm to "), words);
    var more = page("/storage/cabinets/" + cabinet.id + "/smallest-change");
    assertTrue(more.contains(escaped(words)), more);
    assertTrue(page("/storage/cabinets/" + cabinet.id + "?all=yes").contains(more.strip()), more);
    var form = page("/storage/cabinets/" + cabinet.id + "/change?smallest=yes");
    assertTrue(form.contains(escaped(words) + ". That is entered here and not saved yet"), form);
    assertTrue(form.contains("<a href=\"#fitting-2-at\">"), form);
    assertEquals(1, form.split("<li><a href=\"#", -1).length - 1, "only the shelf has changed");
    assertTrue(form.contains("Everything has a place: 3 things"), form);
    assertEquals(
        "300",
        desk.cabinet(cabinet.id).orElseThrow().typed().get("fitting-2-at"),
        "kept as it was");
  }

  @Test
  void plan_whatNoSmallChangeMakesRoomFor_saysSo() {
    cabinet.addMuffs("giant muffs", "kept-height", "1500", "kept-width", "560");
    assertEquals(Optional.empty(), desk.change(cabinet.id));
    var more = page("/storage/cabinets/" + cabinet.id + "/smallest-change");
    assertTrue(more.contains("No small change makes room"), more);
    assertFalse(more.contains("?smallest=yes"), more);
    var form = page("/storage/cabinets/" + cabinet.id + "/change?smallest=yes");
    assertFalse(form.contains("not saved yet"), form);
  }

  @Test
  void plan_whatGoesWithout_isToldByHowBadlyItIsWanted_andEachReasonOnce() {
    cabinet.addMuffs("giant muffs", "kept-height", "1500");
    cabinet.addMuffs("giant spare muffs", "kept-height", "1500");
    cabinet.addFirstAidKit("aid kit");
    var without = PlanView.without(desk.plan(cabinet.id).orElseThrow());
    assertEquals(
        List.of("Aid kit", "Giant muffs; giant spare muffs"),
        without.stream().map(PlanView.Left::things).toList());
  }

  @Test
  void plan_afterAPin_saysWhatMovesFromWhere() {
    cabinet.live();
    assertFalse(plan().contains("Moves here from"));
    var lived = desk.plan(cabinet.id).orElseThrow().plan().of(stick).orElseThrow().place();
    var other = lived.id().equals("fitting-1") ? "fitting-2" : "fitting-1";
    assertEquals(Optional.empty(), desk.pin(stick, cabinet.id, other));
    var page = plan();
    assertTrue(page.contains("Moves here from " + lived.name()), page);
    assertTrue(page.contains("Planned anew; what lives here lives by an earlier plan"), page);
    var card = page("/storage/cabinets/" + cabinet.id + "/card");
    assertTrue(card.contains("Planned anew; what lives here lives by an earlier plan"), card);
  }

  @Test
  void plan_ofAnEmptyCabinet_saysHowGearComesThere_andOffersNoPapers() {
    var kept =
        post("/storage/cabinets", SmallCabinet.with(SmallCabinet.typed(), "name", "spare one"));
    var page = page(kept.location());
    assertTrue(page.contains("Nothing is to be kept here yet"), page);
    assertTrue(page.contains("href=\"/shop#gear\""), page);
    assertFalse(page.contains("/labels"), page);
    assertFalse(page.contains("Live by this plan"), page);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/storage/cabinets/none",
        "/storage/cabinets/none/change",
        "/storage/cabinets/none/remove",
        "/storage/cabinets/none/labels",
        "/storage/cabinets/none/card",
        "/storage/cabinets/none/hooks",
        "/storage/cabinets/new?job=none",
        "/storage/things/none",
        "/storage/people/none",
        "/storage/people/none/remove"
      })
  void open_unknown_isNotThere(String address) {
    get(address).then().statusCode(404);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "cabinets/none/take",
        "cabinets/none/pin",
        "cabinets/none/unpin",
        "cabinets/none/heights",
        "cabinets/none/change",
        "cabinets/none/remove",
        "things/none/take-out",
        "things/none/look",
        "things/none/pin",
        "things/none/unpin",
        "people/none",
        "people/none/remove"
      })
  void send_toUnknown_isNotThere(String address) {
    assertEquals(404, post("/storage/" + address, Map.of("who", "Ash")).statusCode());
  }

  @Test
  void newCabinet_asItBegins_canBeKept_andIsPlanned() {
    var typed = SmallCabinet.with(desk.newCabinet(), "name", "second cabinet");
    var answer = post("/storage/cabinets", typed);
    assertEquals(303, answer.statusCode(), answer.asString());
    var page = get(answer.location()).then().statusCode(200).extract().asString();
    assertTrue(page.contains("second cabinet"), page);
  }

  @Test
  void form_anotherKindOfFitting_asksForOtherFields() {
    var typed = SmallCabinet.with(SmallCabinet.typed(), "fitting-4-kind", "drawer");
    var fields = post("/storage/cabinets/fields", typed).asString();
    assertTrue(fields.contains("fitting-4-inner-width"), fields);
    assertFalse(fields.contains("<html"), "a part of the page, not the page");
  }

  @Test
  void answer_whileTyped_bringsTheDrawingAndTheLine() {
    var answer =
        post(
                "/storage/cabinets/answer",
                SmallCabinet.with(SmallCabinet.typed(), "cabinet", cabinet.id))
            .asString();
    assertTrue(answer.contains("Everything has a place: 2 things"), answer);
    assertTrue(answer.contains("class=\"drawing\""), answer);
    assertTrue(answer.contains("id=\"verdict\" hx-swap-oob=\"true\""), answer);
  }

  @ParameterizedTest
  @FieldSource("RUBBISH")
  void cabinet_rubbishInEachField_isTold_andStaysAsTyped(String rubbish) {
    for (var field : SmallCabinet.typed().keySet()) {
      var typed = SmallCabinet.with(SmallCabinet.typed(), field, rubbish);
      assertEquals(200, post("/storage/cabinets/answer", typed).statusCode(), field);
      var answer = post("/storage/cabinets", typed);
      if (answer.statusCode() == 303) {
        desk.discard(answer.location().replaceAll(".*/", ""));
      } else {
        assertEquals(422, answer.statusCode(), field);
        assertTrue(answer.asString().contains("There is a problem"), field);
        if (answer.asString().contains("<input type=\"text\" id=\"" + field + "\"")) {
          assertTrue(
              answer.asString().contains("value=\"" + escaped(asReceived(rubbish)) + "\""), field);
        }
      }
    }
  }

  @Test
  void cabinet_emptyFieldThatWasSent_isToldAtTheField() {
    var typed = SmallCabinet.with(SmallCabinet.typed(), "width", " ", "fitting-2-load", "");
    var sent = post("/storage/cabinets", typed);
    assertAtField("width", sent);
    assertAtField("fitting-2-load", sent);
    var typing = post("/storage/cabinets/form", typed).asString();
    assertFalse(typing.contains("width-problem"), "not wrong yet");
  }

  @Test
  void form_takingAFittingOut_leavesTheOthersAsTheyWere_andKeepsNothing() {
    var typed = SmallCabinet.with(SmallCabinet.typed(), "cabinet", cabinet.id);
    var page = post("/storage/cabinets/form", typed).asString();
    assertTrue(page.contains("name=\"without\" value=\"fitting-2\""), page);
    assertFalse(page.contains("value=\"fitting-4\""), "nothing is there to be taken out");
    var less =
        post("/storage/cabinets/form", SmallCabinet.with(typed, "without", "fitting-2")).asString();
    assertFalse(less.contains("fitting-2-at"), less);
    assertTrue(less.contains("id=\"fitting-3-at\" name=\"fitting-3-at\" value=\"700\""), less);
    assertTrue(plan().contains("<h3>Shelf</h3>"), "not kept yet");
    var all = post("/storage/cabinets/form", SmallCabinet.with(typed, "without", "f")).asString();
    assertTrue(all.contains("fitting-2-at"), all);
  }

  @Test
  void change_theName_isKept() {
    var typed = SmallCabinet.with(SmallCabinet.typed(), "name", "moved cabinet");
    assertEquals(303, post("/storage/cabinets/" + cabinet.id + "/change", typed).statusCode());
    assertTrue(plan().contains("moved cabinet"));
  }

  @Test
  void remove_asksFirst_thenLeavesTheGearWithoutAPlace() {
    cabinet.live();
    var asked = page("/storage/cabinets/" + cabinet.id + "/remove");
    assertTrue(asked.contains("Take \"corner cabinet\" out?"), asked);
    assertEquals(303, post("/storage/cabinets/" + cabinet.id + "/remove", Map.of()).statusCode());
    get("/storage/cabinets/" + cabinet.id).then().statusCode(404);
    assertTrue(desk.thing(muffs).orElseThrow().home().isEmpty());
  }

  @Test
  void takeOut_thenPutBack_isOnThePagesAndInTheRecord() {
    cabinet.live();
    var at = "/storage/things/" + muffs;
    assertEquals(303, post(at + "/take-out", Map.of("who", "Tomo")).statusCode());
    var out = thing();
    assertTrue(out.contains("Out: with Tomo"), out);
    // Nobody of that name is entered: still nobody else stands chosen.
    assertTrue(
        out.contains("<option value=\"Tomo\" selected>") || out.contains("value=\"Tomo\" checked"),
        out);
    assertTrue(page("/storage").contains("With Tomo"));
    assertTrue(page("/").contains("out, with Tomo"));
    assertEquals(303, post(at + "/put-back", Map.of("who", "Tomo")).statusCode());
    var back = thing();
    assertFalse(back.contains("Out: with Tomo"), back);
    assertTrue(back.contains("Taken out by Tomo"), back);
    assertTrue(back.contains("Put back by Tomo"), back);
  }

  @Test
  void takeOut_sentTwice_isDoneOnce() {
    var typed = Map.of("who", "Tomo", "entry", UUID.randomUUID().toString());
    post("/storage/things/" + muffs + "/take-out", typed);
    assertEquals(303, post("/storage/things/" + muffs + "/take-out", typed).statusCode());
    assertEquals(1, desk.record(muffs).size());
  }

  @Test
  void takeOut_byNobody_isToldAtTheField() {
    var page = refused(post("/storage/things/" + muffs + "/take-out", Map.of("who", " ")));
    assertTrue(page.contains("who-problem"), page);
    assertEquals(List.of(), desk.record(muffs));
  }

  @Test
  void look_failed_isNotOffered_untilItIsMended() {
    var at = "/storage/things/" + muffs;
    assertEquals(
        303,
        post(
                at + "/look",
                Map.of("look-what", "cushions", "look-good", "no", "look-note", "cushion split"))
            .statusCode());
    var page = thing();
    assertTrue(page.contains("<b>Not to be used.</b> "), page);
    assertTrue(page.contains("Looked at: failed, cushion split.<br>"), page);
    assertTrue(page.contains("It is not offered until it is mended or replaced"), page);
    assertFalse(page.contains("Take it out"), "what has failed is not taken out");
    assertFalse(page.contains("It was looked at</span>"), "a look mends nothing");
    var overview = page("/storage");
    assertTrue(overview.contains("Failed on "), overview);
    assertTrue(
        overview.indexOf("Failed on ") < overview.indexOf("Overdue: was due by "),
        "what has failed comes before what is overdue");
    assertTrue(
        floor.shop().gear().stream()
            .noneMatch(one -> one.id().equals(muffs) && one.idleOn(desk.today()).isEmpty()));
    assertEquals(303, post(at + "/mended", Map.of("mended-note", "new cushions")).statusCode());
    var mended = thing();
    assertFalse(mended.contains("Not to be used"), mended);
    assertTrue(mended.contains("Take it out"), mended);
    assertFalse(mended.contains("It was mended, and is good"), "there is nothing to mend");
  }

  @Test
  void look_overdue_standsOpen_beforeThePin() {
    var old = cabinet.addMuffs("old muffs", "opened", "2020-01-31");
    var page = page("/storage/things/" + old);
    assertTrue(page.contains("Overdue: was due by "), page);
    assertTrue(
        page.contains(
            "<details class=\"more\" open><summary><span class=\"more-open\">It was looked at"),
        page);
    assertTrue(page.indexOf("id=\"look\"") < page.indexOf("id=\"pin\""), page);
  }

  @Test
  void replace_over_standsOpen_andNothingIsTakenOut() {
    var over = cabinet.addMuffs("worn out muffs", "good-until", "2020-01-31");
    var page = page("/storage/things/" + over);
    assertTrue(page.contains("<b>Not to be used.</b> Was good until 31 January 2020."), page);
    assertTrue(
        page.contains(
            "<details class=\"more\" open><summary><span class=\"more-open\">It was replaced"),
        page);
    assertFalse(page.contains("Take it out"), page);
  }

  @Test
  void acts_whatTheDeskRefuses_isToldAtItsField() {
    var at = "/storage/things/" + muffs;
    var line = "x".repeat(100);
    var good = Map.of("look-what", "cushions", "look-good", "yes");
    assertAtField("look-note", post(at + "/look", SmallCabinet.with(good, "look-note", line)));
    assertAtField("look-what", post(at + "/look", SmallCabinet.with(good, "look-what", "none")));
    assertAtField("look-next", post(at + "/look", SmallCabinet.with(good, "look-what", "marked")));
    assertAtField("replaced-note", post(at + "/replaced", Map.of("replaced-note", line)));
    assertAtField("replaced-until", post(at + "/replaced", Map.of("replaced-until", "2020-01-31")));
    assertAtField("who", post(at + "/take-out", Map.of("who", line)));
    assertTrue(
        refused(post(at + "/mended", Map.of("mended-note", "new")))
            .contains("<b>It has not failed</b>"));
    assertEquals(List.of(), desk.record(muffs));
  }

  private static void assertAtField(String field, Rubbish.Answer answer) {
    var page = refused(answer);
    assertTrue(page.contains("<a href=\"#" + field + "\">"), field + " in the summary: " + page);
    assertTrue(page.contains("id=\"" + field + "-problem\""), field + " at the field: " + page);
  }

  @Test
  void thing_ofSomebodyWhoIsNotThere_saysSo() {
    var thing = cabinet.addMuffs("muffs of Nobody", "kept-users", "Nobody");
    var page = page("/storage/things/" + thing);
    assertTrue(page.contains("There is nobody of the name &quot;Nobody&quot;"), page);
  }

  @Test
  void look_withoutAnAnswer_isToldAtTheField_andStaysOpen() {
    var page = refused(post("/storage/things/" + muffs + "/look", Map.of("look-note", "a crack")));
    assertTrue(page.contains("look-good-problem"), page);
    assertTrue(page.contains("value=\"a crack\""), page);
    assertTrue(page.contains("<details class=\"more\" open>"), page);
  }

  @ParameterizedTest
  @FieldSource("RUBBISH")
  void acts_rubbish_neverFails_andNothingUnreadableIsKept(String rubbish) {
    var fields =
        List.of(
            "who",
            "look-what",
            "look-good",
            "look-note",
            "look-next",
            "mended-note",
            "replaced-note",
            "replaced-until",
            "entry");
    var good = Map.of("who", "Ash", "look-what", "cushions", "look-good", "yes", "look-next", "");
    for (var field : fields) {
      for (var act : List.of("take-out", "put-back", "look", "mended", "replaced")) {
        var status =
            post("/storage/things/" + muffs + "/" + act, Rubbish.with(good, field, rubbish))
                .statusCode();
        assertTrue(status == 303 || status == 422, act + " " + field + " " + status);
      }
    }
    thing();
    page("/storage");
  }

  @Test
  void people_enter_change_remove() {
    var typed = Map.of("name", "Ilse", "body", "1700 mm");
    assertEquals(303, post("/storage/people/new", typed).statusCode());
    var page = page("/storage/people");
    assertTrue(page.contains("Ilse"), page);
    assertTrue(page.contains("What is estimated"), page);
    var id =
        desk.people().stream()
            .filter(one -> one.person().name().equals("Ilse"))
            .findFirst()
            .orElseThrow()
            .id();
    assertEquals(
        303, post("/storage/people/" + id, Map.of("name", "Ilse", "body", "1500 mm")).statusCode());
    assertTrue(page("/storage/people/" + id).contains("value=\"1500 mm\""));
    assertEquals(303, post("/storage/people/" + id + "/remove", Map.of()).statusCode());
    get("/storage/people/" + id).then().statusCode(404);
  }

  @ParameterizedTest
  @FieldSource("RUBBISH")
  void person_rubbishInEachField_isToldOrKept(String rubbish) {
    var good = Map.of("name", "Ilse", "body", "1700 mm");
    for (var field : List.of("name", "seated", "body", "knuckle", "elbow", "shoulder", "highest")) {
      var answer = post("/storage/people/new", Rubbish.with(good, field, rubbish));
      assertTrue(
          answer.statusCode() == 303 || answer.asString().contains("There is a problem"),
          field + " " + answer.statusCode());
    }
  }

  @Test
  void labels_nameEachThingAndItsPlace() {
    var page = page("/storage/cabinets/" + cabinet.id + "/labels");
    for (var put : desk.plan(cabinet.id).orElseThrow().plan().puts()) {
      assertTrue(page.contains("<b>" + Says.capital(put.thing().name()) + "</b>"), page);
      assertTrue(page.contains("<span>" + Says.capital(put.place().name()) + "</span>"), page);
    }
    assertEquals(2, page.split("<li class=\"label\">", -1).length - 1);
  }

  @Test
  void card_saysWhatLivesWhere_andWhatNeverDoes() {
    var page = page("/storage/cabinets/" + cabinet.id + "/card");
    assertTrue(page.contains("Green muffs"), page);
    assertTrue(page.contains("Never in here"), page);
    assertTrue(page.contains("Rags, pads and gloves wet with oil or finish"), page);
    assertTrue(page.contains("burn by themselves"), page);
  }

  /** The back is 8 mm: no screw holds there. */
  @Test
  void hooks_thinPanel_asksForABatten_andDefersToTheMaker() {
    desk.pin(muffs, cabinet.id, "fitting-1");
    var page = page("/storage/cabinets/" + cabinet.id + "/hooks");
    assertTrue(page.contains("First fasten <b>a batten, 18 mm thick</b>"), page);
    assertTrue(page.contains("Green muffs"), page);
    assertTrue(page.contains("No screw comes through"), page);
    assertTrue(page.contains("The maker of the hook"), page);
    // Five times 280 g.
    assertTrue(page.contains("<td class=\"number\">1.4 kg</td>"), page);
    assertTrue(page.contains("<td class=\"number\">760 mm</td>"), page);
  }

  @Test
  void hooks_onTheWall_nameWhatHangsThere_howHigh_andItsWeight() {
    var typed = SmallCabinet.wall(SmallCabinet.typed());
    assertEquals(303, post("/storage/cabinets/" + cabinet.id + "/change", typed).statusCode());
    cabinet.addFirstAidKit("aid kit");
    var page = page("/storage/cabinets/" + cabinet.id + "/hooks");
    assertTrue(page.contains("all hung <b>1400 mm</b> above the floor"), page);
    assertTrue(page.contains("Aid kit</b>, 900 g</li>"), page);
    assertTrue(page.contains("held by what the wall is made of"), page);
  }

  @Test
  void job_canBeTheCabinet_andItsShelvesMayFollowTheGear() {
    var job = jobs.keepDemo().id();
    try {
      assertTrue(page("/jobs/" + job).contains("Keep gear in it"));
      var form = page("/storage/cabinets/new?job=" + job);
      assertTrue(form.contains("name=\"job\" value=\"" + job + "\""), form);
      var typed =
          SmallCabinet.with(
              desk.ofJob(jobs.job(job).orElseThrow()).orElseThrow(), "name", "spare cupboard");
      var kept = post("/storage/cabinets", typed);
      assertEquals(303, kept.statusCode(), kept.asString());
      var page = get(kept.location()).then().statusCode(200).extract().asString();
      assertTrue(page.contains("Shelves of the case"), page);
      assertTrue(page("/jobs/" + job).contains("Its gear"));
    } finally {
      takeOutCabinetsOf(job);
      bench.discard(job);
    }
  }

  private void takeOutCabinetsOf(String job) {
    new ArrayList<>(desk.cabinets())
        .stream()
            .filter(one -> one.job().filter(job::equals).isPresent())
            .forEach(one -> desk.discard(one.id()));
  }

  @Test
  void job_isGone_cabinetSaysWhatIsWrong() {
    var job = jobs.keepDemo().id();
    var typed =
        SmallCabinet.with(
            desk.ofJob(jobs.job(job).orElseThrow()).orElseThrow(), "name", "orphan cupboard");
    var kept = post("/storage/cabinets", typed);
    bench.discard(job);
    var page = get(kept.location()).then().statusCode(200).extract().asString();
    assertTrue(page.contains("orphan cupboard"), page);
    assertTrue(page.contains("Mend it"), page);
  }

  @Test
  void shop_leadsHere_andOffersWhatNobodyWears() {
    var page = page("/shop");
    assertTrue(page.contains("href=\"/storage\""), page);
    assertTrue(page.contains("/shop/kit/new?kind=first-aid-kit"), page);
    assertFalse(page.contains("/shop/kit/new?kind=oily-rags"), page);
    assertEquals("oak stick", desk.thing(stick).orElseThrow().thing().name());
  }
}
