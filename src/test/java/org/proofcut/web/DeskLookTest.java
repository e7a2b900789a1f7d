package org.proofcut.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
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
import org.proofcut.bench.Taught;
import org.proofcut.bench.WorkBench;
import org.proofcut.core.intake.CutsTyped;
import org.proofcut.core.intake.Demo;
import org.proofcut.core.intake.HandTyped;
import org.proofcut.core.intake.LoadsTyped;
import org.proofcut.core.intake.ShopForms;
import org.proofcut.logbook.Logbook;
import org.proofcut.web.Tablet.Script;
import org.proofcut.web.Tablet.Size;

/** First page, shop and job as a browser shows them. */
@QuarkusTest
class DeskLookTest {

  @TestHTTPResource("/")
  URI home;

  @Inject JobDesk desk;
  @Inject ShopFloor floor;
  @Inject WorkBench bench;
  @Inject Logbook logbook;

  private Taught taught;

  @BeforeEach
  void teach() {
    taught = new Taught(logbook, floor);
    taught.fenceOff("0.2 mm", "0.3 mm", "0.4 mm", "0.3 mm", "2 mm");
    taught.widthUnder("0.12 mm");
  }

  @AfterEach
  void forget() {
    taught.forget();
  }

  private String demo;

  /** One of its own: others may have been changed. */
  private String demo() {
    if (demo == null) {
      demo = desk.keepDemo().id();
    }
    return demo;
  }

  private Map<String, String> pages() {
    var pages = new LinkedHashMap<String, String>();
    pages.put("jobs", "");
    pages.put("shop", "shop");
    for (var machine : ShopForms.MACHINES) {
      pages.put("shop-" + machine.kind(), "shop/machines/new?kind=" + machine.kind());
    }
    for (var cutter : ShopForms.CUTTER_KINDS) {
      pages.put("shop-" + cutter.kind(), "shop/cutters/new?kind=" + cutter.kind());
    }
    pages.put("shop-ear-protection", "shop/gear/new?kind=ear-protection");
    pages.put("shop-dust-mask", "shop/gear/new?kind=dust-mask");
    pages.put("shop-to-get", "shop/to-get");
    pages.put("shop-change", "shop/items/" + floor.items().get(0).id());
    pages.put("shop-remove", "shop/items/" + floor.items().get(0).id() + "/remove");
    pages.put("shop-habits", "shop/habits");
    pages.put("shop-habit-aside", "shop/habits/" + taught.fence().id() + "/set-aside");
    pages.put("shop-habit-afresh", "shop/habits/" + taught.fence().id() + "/afresh");
    pages.put("job", "jobs/" + demo());
    pages.put("job-new", "jobs/new");
    pages.put("job-discard", "jobs/" + demo() + "/discard");
    pages.put("demo-discard", "demo/discard");
    pages.put("rules-own", "rules/own");
    pages.put("setups", "setups");
    pages.put("setup-dado-empty", "setups/dado");
    CutsTyped.byKind()
        .forEach(
            (kind, typed) ->
                pages.put("setup-" + kind, "setups/" + kind + "?" + Rubbish.query(typed)));
    pages.put(
        "setup-dado-stopped",
        "setups/dado?" + Rubbish.query(CutsTyped.with("dado", "depth", "13")));
    pages.put(
        "setup-mitre-proof",
        "setups/mitre?"
            + Rubbish.query(
                CutsTyped.with(
                    "mitre",
                    "found-size-1",
                    "400.5",
                    "found-size-2",
                    "400.5",
                    "found-run_across-1",
                    "60",
                    "found-run_across-2",
                    "60")));
    pages.put("shop-liquid", "shop/liquids/new?kind=epoxy");
    pages.put("hand-work", "hand-work");
    pages.put("hand-work-finish-empty", "hand-work/finish");
    HandTyped.byKind()
        .forEach(
            (kind, typed) ->
                pages.put("hand-work-" + kind, "hand-work/" + kind + "?" + Rubbish.query(typed)));
    pages.put(
        "hand-work-finish-stopped",
        "hand-work/finish?" + Rubbish.query(HandTyped.with("finish", "applied", "sprayed")));
    pages.put(
        "hand-work-carry-rubbish",
        "hand-work/carry?" + Rubbish.query(HandTyped.with("carry", "length", "4x8")));
    pages.put("rules", "rules?words=saw");
    pages.put("rules-of-a-cut", "rules?machine=router-table&operation=dado&harm=cut");
    pages.put("rules-by-harm", "rules/by-harm");
    pages.put("noise-empty", "noise");
    pages.put(
        "noise",
        "noise?other-1-what=sanding&other-1-level=95&other-1-minutes=60&protector=NRR+25&second=NRR+29");
    pages.put("noise-rubbish", "noise?other-1-level=loud&other-1-minutes=&protector=muffs");
    pages.put("job-noise", "jobs/" + demo() + "/noise?done-1=no&minutes-2=30");
    pages.put("dust-empty", "dust");
    pages.put(
        "dust",
        "dust?wood-1=western-red-cedar&wood-2=mdf&machine=router-table&extraction=extractor"
            + "&airflow=300&mouth-width=120&mouth-height=80&level=25");
    pages.put("dust-to-mend", "dust?wood-1=iroko&machine=lathe&extraction=extractor&level=-5");
    pages.put("lifting-empty", "lifting");
    pages.put("lifting", "lifting?" + Rubbish.query(LoadsTyped.lift()));
    pages.put(
        "lifting-guess", "lifting?" + Rubbish.query(Rubbish.with(LoadsTyped.lift(), "out", "")));
    pages.put(
        "lifting-carried",
        "lifting?" + Rubbish.query(Rubbish.with(LoadsTyped.lift(), "carried", "yes")));
    pages.put("lifting-part", "lifting?job=" + demo() + "&part=left-side");
    pages.put("weights", "jobs/" + demo() + "/weights");
    pages.put("standing", "jobs/" + demo() + "/standing");
    pages.put(
        "standing-rubbish",
        "jobs/"
            + demo()
            + "/standing?"
            + Rubbish.query(Rubbish.with(LoadsTyped.stand(), "hung", "abc")));
    pages.put("not-there", "no/such/page");
    return pages;
  }

  @Test
  void open_everyPage_inEverySize_breaksNoRuleOfAccess_fitsTheWidth_andIsMadeForFingers() {
    var faults = new ArrayList<String>();
    try (var tablet = Tablet.of(Size.LANDSCAPE, Script.ON)) {
      for (var each : pages().entrySet()) {
        var page = tablet.open(home + each.getValue());
        for (var size : Size.values()) {
          Tablet.resize(page, size);
          var name = each.getKey() + "-" + size.name().toLowerCase(Locale.ROOT);
          Tablet.picture(page, name);
          Tablet.violations(page).forEach(fault -> faults.add(name + ": " + fault));
          Tablet.standingOut(page).forEach(fault -> faults.add(name + ": " + fault));
          if (size != Size.PHONE) {
            lowTargets(page).forEach(fault -> faults.add(name + ": " + fault));
          }
        }
      }
    }
    assertEquals(List.of(), faults);
  }

  /** What is pressed and lower than a finger is wide, with its height in pixels. */
  private static List<?> lowTargets(Page page) {
    return (List<?>)
        page.evaluate(
            """
        () => [...document.querySelectorAll('.button, summary, input[type=text], select')]
          .map(e => ({ e, high: e.getBoundingClientRect().height }))
          .filter(({ e, high }) => e.checkVisibility({ visibilityProperty: true }) && high > 0
            && high < (e.classList.contains('button-main') ? 112 : 71))
          .map(({ e, high }) => e.textContent.trim() + ' ' + high)""");
  }

  @Test
  void type_inTheForm_answersAtOnceAndKeepsTheCaret() {
    try (var tablet = Tablet.of(Size.LANDSCAPE, Script.ON)) {
      var page = tablet.open(home + "jobs/" + demo());
      page.fill("#bottom-dado", "15");
      PlaywrightAssertions.assertThat(page.locator("#answer"))
          .containsText("too little wood is left");
      assertEquals("bottom-dado", page.evaluate("document.activeElement.id"));
      Tablet.picture(page, "job-to-mend-landscape");
      assertEquals(List.of(), Tablet.violations(page));
      page.fill("#bottom-dado", "11/4 in");
      PlaywrightAssertions.assertThat(page.locator("#bottom-dado-echo")).containsText("69.85 mm");
      page.fill("#bottom-dado", "6");
      PlaywrightAssertions.assertThat(page.locator("#answer")).containsText("Sound");
      page.check("#unit-2");
      PlaywrightAssertions.assertThat(page.locator("#width-echo")).hasText("= 620 in");
      PlaywrightAssertions.assertThat(page.locator("#answer"))
          .containsText("A number without a unit is now in inches.");
    }
  }

  @Test
  void type_aSetUp_answersAtOnceAndStandsInTheAddress() {
    try (var tablet = Tablet.of(Size.LANDSCAPE, Script.ON)) {
      var page =
          tablet.open(home + "setups/dado?" + Rubbish.query(CutsTyped.with("dado", "depth", "")));
      PlaywrightAssertions.assertThat(page.locator("#answer")).containsText("1 field still empty");
      page.fill("#depth", "1/4 in");
      PlaywrightAssertions.assertThat(page.locator("#answer")).containsText("Height 6.4 mm");
      PlaywrightAssertions.assertThat(page.locator("#depth-echo")).hasText("= 6.35 mm");
      assertEquals("depth", page.evaluate("document.activeElement.id"));
      page.reload();
      assertEquals("1/4 in", page.inputValue("#depth"));
      assertEquals(List.of(), Tablet.violations(page));
    }
  }

  @Test
  void open_pageOfAFault_breaksNoRuleOfAccess() {
    try (var tablet = Tablet.of(Size.PORTRAIT, Script.ON)) {
      var page = tablet.open(home.toString());
      page.navigate(home + "fault-for-tests");
      PlaywrightAssertions.assertThat(page.locator("h1")).hasText("A fault of this program");
      Tablet.picture(page, "fault-portrait");
      assertEquals(List.of(), Tablet.violations(page));
    }
  }

  @Test
  void begin_jobThatCannotBeCut_saysWhy() {
    var typed = new LinkedHashMap<>(Demo.job());
    typed.put("bottom-dado", "15 mm");
    var job = desk.keep(Optional.empty(), typed).value().orElseThrow().id();
    try (var tablet = Tablet.of(Size.LANDSCAPE, Script.ON)) {
      var page = tablet.open(home + "jobs/" + job);
      page.evaluate(
          """
          address => {
            const form = document.createElement('form');
            form.method = 'post';
            form.action = address;
            document.body.append(form);
            form.submit();
          }""",
          "/jobs/" + job + "/begin");
      PlaywrightAssertions.assertThat(page.locator("h1")).hasText("This can't be cut yet");
      Tablet.picture(page, "job-cannot-begin-landscape");
      assertEquals(List.of(), Tablet.violations(page));
    } finally {
      bench.discard(job);
    }
  }

  @Test
  void open_size_showsItsWorking() {
    try (var tablet = Tablet.of(Size.PORTRAIT, Script.OFF)) {
      var page = tablet.open(home + "jobs/" + demo());
      var working = page.locator("#answer .opens-one").nth(4);
      assertTrue(working.locator(".working").isHidden());
      working.locator("summary").click();
      assertTrue(working.locator(".working").isVisible());
      assertTrue(working.textContent().contains("="), working.textContent());
    }
  }

  @Test
  void enter_aWholeJobWithoutScript_isKept() {
    try (var tablet = Tablet.of(Size.PORTRAIT, Script.OFF)) {
      var page = tablet.open(home + "jobs/new");
      page.fill("#name", "Boot box");
      page.fill("#width", "500");
      page.fill("#height", "700");
      page.fill("#depth", "300");
      sheet(page, 1, "ply", "17.7");
      page.click("text=Add a sheet");
      assertEquals("Boot box", page.inputValue("#name"));
      sheet(page, 2, "thin ply", "5.6");
      for (var part : List.of("left-side", "right-side", "top", "bottom", "shelf", "plinth")) {
        page.check("input[name=from-" + part + "][value='1']");
      }
      page.check("input[name=from-back][value='2']");
      for (var joint : List.of("top-rabbet", "bottom-dado", "shelf-dado", "back-rabbet")) {
        page.fill("#" + joint, "6");
      }
      page.fill("#plinth-height", "80");
      page.fill("#plinth-set-back", "3O");
      page.click("text=Save the job");
      assertTrue(page.isVisible("text=There is a problem"));
      assertEquals("3O", page.inputValue("#plinth-set-back"));
      assertEquals("plinth-set-back", page.getAttribute(".field-wrong input", "id"));
      Tablet.picture(page, "job-refused-portrait");
      page.fill("#plinth-set-back", "30");
      page.click("text=Save the job");
      assertTrue(page.url().contains("/jobs/"), page.url());
      assertTrue(page.isVisible("#status >> text=Saved"));
      assertTrue(page.isVisible("text=Begin work"));
      bench.discard(page.url().replaceAll(".*/jobs/([^?]+).*", "$1"));
    }
  }

  private static void sheet(Page page, int number, String name, String thickness) {
    var stem = "#sheet-" + number + "-";
    page.fill(stem + "name", name);
    page.selectOption(stem + "material", "plywood");
    page.fill(stem + "length", "2440");
    page.fill(stem + "width", "1220");
    for (int i = 1; i <= 4; i++) {
      page.fill(stem + "reading-" + i, thickness);
    }
  }
}
