package org.proofcut.web.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.Media;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URI;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.proofcut.bench.JobDesk;
import org.proofcut.bench.ShopFloor;
import org.proofcut.bench.StorageDesk;
import org.proofcut.bench.WorkBench;
import org.proofcut.core.storage.GearAct;
import org.proofcut.core.storage.GearEntry;
import org.proofcut.logbook.StorageLog;
import org.proofcut.web.Tablet;
import org.proofcut.web.Tablet.Script;
import org.proofcut.web.Tablet.Size;

/** Gear storage as a browser shows it, and the way of a piece from the shop to the sheet. */
@QuarkusTest
class StorageLookTest {

  private static final double PIXELS_OF_MILLIMETRE = 96 / 25.4;

  @TestHTTPResource("/")
  URI home;

  @Inject StorageDesk desk;
  @Inject ShopFloor floor;
  @Inject StorageLog log;
  @Inject JobDesk jobs;
  @Inject WorkBench bench;

  private SmallCabinet cabinet;
  private final List<String> entered = new ArrayList<>();

  @BeforeEach
  void fillACabinet() {
    cabinet = new SmallCabinet(desk, floor);
    cabinet.addPushStick("oak stick");
  }

  @AfterEach
  void takeOut() {
    entered.forEach(floor::remove);
    cabinet.takeOut();
  }

  private Map<String, String> pages(String thing, String person) {
    var here = "storage/cabinets/" + cabinet.id;
    var pages = new LinkedHashMap<String, String>();
    pages.put("storage", "storage");
    pages.put("storage-no-place", "storage/no-place");
    pages.put("storage-cabinet-new", "storage/cabinets/new");
    pages.put("storage-plan", here);
    pages.put("storage-change", here + "/change");
    pages.put("storage-labels", here + "/labels");
    pages.put("storage-card", here + "/card");
    pages.put("storage-hooks", here + "/hooks");
    pages.put("storage-remove", here + "/remove");
    pages.put("storage-thing", "storage/things/" + thing);
    pages.put("storage-people", "storage/people");
    pages.put("storage-person-new", "storage/people/new");
    pages.put("storage-person-remove", "storage/people/" + person + "/remove");
    pages.put("storage-first-page", "");
    pages.put("shop-first-aid-kit", "shop/kit/new?kind=first-aid-kit");
    return pages;
  }

  @Test
  void open_everyPage_inEverySize_breaksNoRuleOfAccess_fitsTheWidth_andIsMadeForFingers() {
    var thing = cabinet.addMuffs("green muffs");
    // One that finds no place, one that is out.
    cabinet.addMuffs("tall muffs", "kept-height", "520", "kept-width", "560");
    cabinet.live();
    desk.act("look-test-1", thing, new GearAct.TakenOut("Tomo"));
    var person =
        desk.keepPerson(Optional.empty(), Map.of("name", "Ilse", "body", "1700 mm"))
            .value()
            .orElseThrow()
            .id();
    var faults = new ArrayList<String>();
    try (var tablet = Tablet.of(Size.LANDSCAPE, Script.ON)) {
      for (var each : pages(thing, person).entrySet()) {
        var page = tablet.open(home + each.getValue());
        page.querySelectorAll("details").forEach(one -> one.evaluate("it => it.open = true"));
        for (var size : Size.values()) {
          Tablet.resize(page, size);
          var name = each.getKey() + "-" + size.name().toLowerCase(Locale.ROOT);
          Tablet.picture(page, name);
          Tablet.violations(page).forEach(fault -> faults.add(name + ": " + fault));
          Tablet.standingOut(page).forEach(fault -> faults.add(name + ": " + fault));
          if (size != Size.PHONE) {
            tooSmall(page).forEach(fault -> faults.add(name + ": " + fault));
          }
        }
      }
    } finally {
      desk.discardPerson(person);
    }
    assertEquals(List.of(), faults);
  }

  private static List<String> tooSmall(Page page) {
    var faults = new ArrayList<>(Tablet.smallerThan(page, 112, ".button-main"));
    faults.addAll(Tablet.smallerThan(page, 71, ".button:not(.unseen), summary, select"));
    faults.addAll(Tablet.smallerThan(page, 48, ".tell-way, .way"));
    return faults;
  }

  @Test
  void aPiece_isEntered_pinned_planned_labelled_andFoundOnTheSheet() {
    var job = jobs.keepDemo().id();
    try (var tablet = Tablet.of(Size.LANDSCAPE, Script.ON)) {
      var page = enter(tablet.open(home + "shop/gear/new?kind=ear-protection"));
      page.navigate(home + "storage/cabinets/" + cabinet.id);
      PlaywrightAssertions.assertThat(page.locator("#verdict")).containsText("2 things");
      page.getByText("Green muffs").first().click();
      page.selectOption("#place", "fitting-1");
      page.click("button:has-text('Pin it there')");
      PlaywrightAssertions.assertThat(page.locator("main")).containsText("Pinned to: Hooks");
      page.click("a:has-text('The plan')");
      PlaywrightAssertions.assertThat(page.locator("#place-fitting-1")).containsText("Pinned here");
      page.click("button:has-text('Live by this plan')");
      PlaywrightAssertions.assertThat(page.locator(".top-title"))
          .containsText("Everything lives by this plan");
      Tablet.picture(page, "storage-lived-landscape");
      page.click("a:has-text('Labels')");
      assertLabelsFitTheirPaper(page);
      page.navigate(home + "jobs/" + job);
      page.click("text=Begin work");
      assertEquals("Corner cabinet: hooks", placeOnASheet(page, job));
      Tablet.picture(page, "storage-on-the-sheet-landscape");
      assertEquals(List.of(), Tablet.violations(page));
      page.click("nav >> text=Green muffs");
      PlaywrightAssertions.assertThat(page.locator("h1")).hasText("Green muffs");
    } finally {
      bench.discard(job);
    }
  }

  @Test
  void whatIsOut_isPutBackWithOneTap_onTheFirstPage() {
    var stick =
        desk.things().stream()
            .filter(one -> one.thing().name().equals("oak stick"))
            .findFirst()
            .orElseThrow()
            .thing()
            .id();
    log.append(
        new GearEntry(
            "out-" + stick, stick, desk.today().minusDays(1), new GearAct.TakenOut("Ilse")));
    var faults = new ArrayList<String>();
    try (var tablet = Tablet.of(Size.PORTRAIT, Script.ON)) {
      var page = tablet.open(home.toString());
      for (var size : Size.values()) {
        Tablet.resize(page, size);
        Tablet.violations(page).forEach(fault -> faults.add(size + ": " + fault));
        Tablet.standingOut(page).forEach(fault -> faults.add(size + ": " + fault));
        Tablet.picture(page, "home-out-" + size.name().toLowerCase(Locale.ROOT));
      }
      PlaywrightAssertions.assertThat(page.locator("main"))
          .containsText("Oak stick: still out, with Ilse, since yesterday");
      page.click("button:has-text('Put it back: Oak stick')");
      PlaywrightAssertions.assertThat(page.locator("h1")).hasText("Jobs");
      PlaywrightAssertions.assertThat(page.locator("main")).not().containsText("Oak stick: ");
    }
    assertEquals(List.of(), faults);
    assertEquals(Optional.empty(), desk.thing(stick).orElseThrow().out());
  }

  /** Its last day comes before that of the demo's own, so that it is used up first. */
  private Page enter(Page page) {
    page.fill("#name", "green muffs");
    page.fill("#decibels", "30");
    page.check("[name=scale][value=SNR]");
    page.fill("#good-until", "2090-01-31");
    page.fill("#kept-width", "180");
    page.fill("#kept-height", "220");
    page.fill("#kept-depth", "100");
    page.fill("#kept-weight", "280 g");
    if (page.locator("select#kept-in").count() > 0) {
      page.selectOption("#kept-in", cabinet.id);
    } else {
      page.check("[name=kept-in][value='" + cabinet.id + "']");
    }
    page.locator(".button-main").click();
    assertTrue(page.url().contains("/shop#gear"), page.url());
    entered.addAll(
        floor.items().stream()
            .filter(one -> one.typed().getOrDefault("name", "").equals("green muffs"))
            .map(one -> one.id())
            .toList());
    return page;
  }

  private static void assertLabelsFitTheirPaper(Page page) {
    page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
    var labels = page.querySelectorAll(".label");
    assertEquals(2, labels.size());
    for (var label : labels) {
      var box = label.boundingBox();
      assertEquals(90 * PIXELS_OF_MILLIMETRE, box.width, 1, label.innerText());
      assertEquals(35 * PIXELS_OF_MILLIMETRE, box.height, 1, label.innerText());
      assertEquals(
          true,
          label.evaluate(
              "it => it.scrollWidth <= it.clientWidth && it.scrollHeight <= it.clientHeight"),
          label.innerText() + " is cut off");
    }
    assertTrue(page.isHidden(".top-actions"), "buttons are printed");
    Tablet.picture(page, "storage-labels-printed");
    page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.SCREEN));
  }

  private static final String LONG =
      "half mask of the visitor who comes on Mondays, with wide straps and spare valves";

  /** A name as long as one may be, in a place of a name as long as one may be. */
  @Test
  void labels_ofLongNames_areNotCutOff() {
    var typed = SmallCabinet.with(SmallCabinet.typed(), "fitting-1-name", LONG, "name", LONG);
    desk.keep(Optional.of(cabinet.id), typed);
    var muffs = cabinet.addMuffs(LONG, "opened", "2026-01-31");
    desk.pin(muffs, cabinet.id, "fitting-1");
    try (var tablet = Tablet.of(Size.LANDSCAPE, Script.OFF)) {
      var page = tablet.open(home + "storage/cabinets/" + cabinet.id + "/labels");
      assertEquals(1, page.locator(".label-long").count());
      assertLabelsFitTheirPaper(page);
    }
  }

  /**
   * Everything that is drawn is printed: the drawing keeps its shape, and its frame goes round it.
   */
  @Test
  void drawings_printed_areWhole() {
    var wall = SmallCabinet.wall(SmallCabinet.typed());
    desk.keep(Optional.of(cabinet.id), wall);
    cabinet.addFirstAidKit("aid kit");
    try (var tablet = Tablet.of(Size.LANDSCAPE, Script.OFF)) {
      for (var each : List.of("/card", "")) {
        var page = tablet.open(home + "storage/cabinets/" + cabinet.id + each);
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
        Tablet.picture(page, "storage-printed" + each.replace('/', '-'));
        assertEquals(
            List.of(),
            page.evaluate(
                """
                () => [...document.querySelectorAll('.drawing')]
                  .filter(e => e.getClientRects().length)
                  .flatMap(e => {
                    const box = e.getBoundingClientRect();
                    const frame = e.closest('.drawing-frame').getBoundingClientRect();
                    const view = e.viewBox.baseVal;
                    const off = Math.abs(box.width / box.height - view.width / view.height);
                    return [
                      ...(off > .01 ? ['cut to ' + box.width + ' × ' + box.height] : []),
                      ...(box.bottom > frame.bottom + 1 ? ['lies over what follows'] : [])];
                  })"""),
            each);
      }
    }
  }

  /** Of the first sheet that asks for these muffs, as its gear says it. */
  private String placeOnASheet(Page page, String job) {
    var sheets = bench.work(job).orElseThrow().progress().sheets().size();
    for (int number = 1; number <= sheets; number++) {
      page.navigate(home + "jobs/" + job + "/sheets/" + number);
      var muffs = page.locator(".gear:has(b:text('Green muffs')) .gear-place");
      if (muffs.count() > 0) {
        return muffs.first().innerText();
      }
    }
    throw new AssertionError("no sheet asks for the muffs");
  }

  @Test
  void type_inTheForm_asksForWhatTheKindOfFittingNeeds_andKeepsTheCaret() {
    try (var tablet = Tablet.of(Size.LANDSCAPE, Script.ON)) {
      var page = tablet.open(home + "storage/cabinets/" + cabinet.id + "/change");
      page.selectOption("#fitting-4-kind", "drawer");
      PlaywrightAssertions.assertThat(page.locator("#fitting-4-inner-width")).isVisible();
      page.fill("#height", "1/0");
      PlaywrightAssertions.assertThat(page.locator("#answer")).containsText("to mend");
      assertEquals("height", page.evaluate("document.activeElement.id"));
      assertEquals(List.of(), Tablet.violations(page));
    }
  }

  @Test
  void cabinet_withoutScript_isEnteredAndKept() {
    try (var tablet = Tablet.of(Size.PORTRAIT, Script.OFF)) {
      var page = tablet.open(home + "storage/cabinets/" + cabinet.id + "/change");
      page.fill("#name", "corner cabinet, moved");
      page.selectOption("#fitting-4-kind", "shelf");
      page.click("text=Work it out, save nothing");
      assertEquals("corner cabinet, moved", page.inputValue("#name"));
      page.fill("#fitting-4-at", "5OO");
      page.fill("#fitting-4-thickness", "18");
      page.fill("#fitting-4-load", "10 kg");
      page.click("text=Save the cabinet");
      assertTrue(page.isVisible("text=There is a problem"));
      assertEquals("5OO", page.inputValue("#fitting-4-at"));
      page.fill("#fitting-4-at", "500");
      page.click("text=Save the cabinet");
      assertTrue(page.url().endsWith("/storage/cabinets/" + cabinet.id), page.url());
      assertTrue(page.textContent("h1").contains("Corner cabinet, moved"), page.textContent("h1"));
      page.click("text=Change the cabinet");
      page.click("button:has-text('Take it out: Fitting 4')");
      assertEquals("", page.inputValue("#fitting-4-kind"));
      page.click("text=Save the cabinet");
      assertEquals(0, page.locator("#place-fitting-4").count());
      assertEquals(1, page.locator("#place-fitting-2").count());
    }
  }
}
