package org.proofcut.web.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URI;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.proofcut.bench.Hand;
import org.proofcut.bench.JobDesk;
import org.proofcut.bench.WorkBench;
import org.proofcut.core.checklist.Item;
import org.proofcut.core.measure.Length;
import org.proofcut.core.proof.Verdict;
import org.proofcut.core.proof.Verdict.Outcome;
import org.proofcut.core.run.SheetProgress;
import org.proofcut.core.run.Stage;
import org.proofcut.core.safety.Check.Pause;
import org.proofcut.web.Tablet;
import org.proofcut.web.Tablet.Script;
import org.proofcut.web.Tablet.Size;

/**
 * A person walks the demo job in a real browser, from the first sheet to the last sign-off. The
 * hand taps only what the page offers; the eye, which the page can't give, reads the machine and
 * the caliper, and is played from what the set-up should have come to.
 */
@QuarkusTest
class DemoJobWalkTest {

  /** More taps than this and the walk has gone astray. */
  private static final int MOST_TAPS = 500;

  @TestHTTPResource("/")
  URI home;

  @Inject JobDesk desk;
  @Inject WorkBench bench;

  @Test
  void demoJob_isWalkedToItsLastSignOffWithoutScript() {
    try (var tablet = Tablet.of(Size.LANDSCAPE, Script.OFF)) {
      var walk = new Walk(tablet, desk.keepDemo().id());
      walk.begin();
      walk.toTheEnd((page, stage) -> {});
      assertDone(walk);
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = Size.class,
      names = {"LANDSCAPE", "PORTRAIT"})
  void everyStage_isAccessibleAndLargeEnough(Size size) {
    var faults = new ArrayList<String>();
    try (var tablet = Tablet.of(size, Script.ON)) {
      var walk = new Walk(tablet, desk.keepDemo().id());
      walk.begin();
      var seen = new HashSet<String>();
      walk.toTheEnd(
          (page, progress) -> {
            var machine = progress.setup().map(setup -> setup.machine().kind()).orElse("by-hand");
            var name = machine + "-" + progress.stage().name().toLowerCase().replace('_', '-');
            if (seen.add(name)) {
              Tablet.violations(page).forEach(fault -> faults.add(name + ": " + fault));
              faults.addAll(tooSmall(page, name));
              Tablet.picture(page, "sheet-" + name + "-" + size.name().toLowerCase());
            }
          });
      walk.open("/jobs/" + walk.job + "/sheets");
      Tablet.violations(walk.page).forEach(fault -> faults.add("sheets: " + fault));
      Tablet.picture(walk.page, "sheets-" + size.name().toLowerCase());
      assertDone(walk);
    }
    assertEquals(List.of(), faults);
  }

  @Test
  void trouble_isOneTapFromASheet_andLeadsBack() {
    try (var tablet = Tablet.of(Size.PORTRAIT, Script.ON)) {
      var walk = new Walk(tablet, desk.keepDemo().id());
      walk.begin();
      walk.open("/jobs/" + walk.job + "/sheets/1");
      walk.page.getByText("In trouble").first().click();
      assertEquals(List.of(), Tablet.violations(walk.page));
      Tablet.picture(walk.page, "trouble-portrait");
      walk.page.getByText("Back", new Page.GetByTextOptions().setExact(true)).first().click();
      assertTrue(walk.page.url().endsWith("/sheets/1"), walk.page.url());
    }
  }

  private static void assertDone(Walk walk) {
    assertTrue(
        walk.page.content().contains("Every sheet of this job is signed off"), "the last page");
    assertEquals(
        List.of(), walk.sheets().stream().filter(sheet -> sheet.stage() != Stage.DONE).toList());
  }

  /** Main actions and keys of at least 112 px; figures of at least 22 arcminutes at 700 mm. */
  private static List<String> tooSmall(Page page, String name) {
    var faults = new ArrayList<String>();
    for (var target : page.locator(".button-main:visible, .key:visible").all()) {
      var box = target.boundingBox();
      if (box.height < 112 || box.width < 112) {
        faults.add(name + ": " + target.textContent() + " is " + box.width + " × " + box.height);
      }
    }
    // 10-inch tablet, 1280 px over 217 mm: 0.17 mm a pixel; figures are about 0.7 of the type size.
    var figures = page.locator(".figure-number:visible").all();
    for (var figure : figures) {
      double size =
          ((Number) figure.evaluate("e => parseFloat(getComputedStyle(e).fontSize)")).doubleValue();
      double arcminutes = Math.toDegrees(Math.atan(size * 0.7 * 0.17 / 700)) * 60;
      if (arcminutes < 22) {
        faults.add(name + ": a figure of " + arcminutes + " arcminutes");
      }
    }
    return faults;
  }

  /** What is looked at before each tap. */
  private interface Look {
    void at(Page page, SheetProgress progress);
  }

  private final class Walk {
    private final Page page;
    private final String job;

    Walk(Tablet tablet, String job) {
      this.page = tablet.open(home.toString());
      this.job = job;
    }

    void open(String path) {
      page.navigate(home.resolve(path).toString());
    }

    /** Work begins where the job says so. */
    void begin() {
      open("/jobs/" + job);
      page.locator("form[action$='/begin'] button, button[formaction$='/begin']").first().click();
      assertTrue(page.url().endsWith("/jobs/" + job + "/sheets"), page.url());
    }

    List<SheetProgress> sheets() {
      return bench.work(job).orElseThrow().progress().sheets();
    }

    void toTheEnd(Look look) {
      for (int taps = 0; taps < MOST_TAPS; taps++) {
        var current = bench.work(job).orElseThrow().progress().current();
        if (current.isEmpty()) {
          open("/jobs/" + job + "/sheets");
          return;
        }
        var path = "/jobs/" + job + "/sheets/" + current.get().sheet().number();
        if (!page.url().contains(path)
            || page.url().matches(".*/sheets/" + current.get().sheet().number() + "[0-9].*")) {
          open(path);
        }
        look.at(page, current.get());
        tap(current.get());
      }
      throw new AssertionError("still walking after " + MOST_TAPS + " taps at " + page.url());
    }

    private void tap(SheetProgress progress) {
      var found = page.locator("#found");
      if (found.count() > 0) {
        found.fill(read(progress));
        page.locator("form.question .button-main").click();
        return;
      }
      var gear = page.locator(".gear-form:has(input[name=act][value=confirm]) button");
      if (gear.count() > 0) {
        gear.first().click();
        return;
      }
      var others =
          page.locator(
              "#now .checks form:has(input[name=act][value=confirm]) button,"
                  + " #now form:has(input[name=act][value=cut]) button");
      (others.count() > 0 ? others : page.locator("#now .button-main")).first().click();
    }

    /** What a person reads at the machine or on the caliper when all is as it should be. */
    private String read(SheetProgress progress) {
      if (progress.stage() == Stage.PROOF) {
        return progress.verdicts().stream()
            .filter(verdict -> verdict.outcome() == Outcome.MORE_READINGS)
            .findFirst()
            .map(Verdict::measure)
            .map(measure -> measure.target().value())
            .map(Length::toString)
            .orElseThrow();
      }
      var figure =
          progress.open(Pause.SET).stream()
              .filter(Item.Figure.class::isInstance)
              .map(Item.Figure.class::cast)
              .findFirst()
              .orElseThrow();
      return Hand.asSet(progress, figure);
    }
  }
}
