package org.proofcut.web.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URI;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.proofcut.bench.Hand;
import org.proofcut.bench.JobDesk;
import org.proofcut.bench.StorageDesk;
import org.proofcut.bench.WorkBench;
import org.proofcut.core.checklist.Item;
import org.proofcut.core.measure.Length;
import org.proofcut.core.proof.Verdict;
import org.proofcut.core.proof.Verdict.Outcome;
import org.proofcut.core.run.SheetProgress;
import org.proofcut.core.run.Stage;
import org.proofcut.core.safety.Check.Pause;
import org.proofcut.core.storage.GearAct;
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
  private static final int MOST_TAPS = 700;

  /** The field of a question. */
  private static final String FOUND = "#found";

  /** What hands its answer in. */
  private static final String ANSWER = "form.question .button-main";

  /** What is tapped, the first that the page has. */
  private static final List<String> TARGETS =
      List.of(
          FOUND,
          ".gear-form:has(input[name=act][value=confirm]) button",
          "#now .checks form:has(input[name=act][value=confirm]) button,"
              + " #now form:has(input[name=act][value=cut]) button",
          "#now .button-main");

  @TestHTTPResource("/")
  URI home;

  @Inject JobDesk desk;
  @Inject WorkBench bench;
  @Inject StorageDesk storage;

  private String job;

  @BeforeEach
  void keepJob() {
    job = desk.keepDemo().id();
  }

  /** With its long record it would be planned again at every change that later tests make. */
  @AfterEach
  void discardJob() {
    bench.discard(job);
  }

  @Test
  void demoJob_isWalkedToItsLastSignOff_uprightWithoutScript() {
    try (var tablet = Tablet.of(Size.PORTRAIT, Script.OFF)) {
      var walk = new Walk(tablet, job);
      walk.begin();
      walk.toTheEnd(progress -> {});
      assertDone(walk);
      assertWhatIsOutCanBePutBack(walk);
    }
  }

  /** Where the last sheet is signed off, and where the list of sheets says so. */
  private void assertWhatIsOutCanBePutBack(Walk walk) {
    var muffs =
        storage.things().stream()
            .filter(one -> one.thing().name().equals("ear muffs"))
            .findFirst()
            .orElseThrow()
            .thing()
            .id();
    var end = List.of(walk.page.url().replaceFirst("#.*", ""), home + "jobs/" + job + "/sheets");
    for (var address : end) {
      var out = new GearAct.TakenOut("Rowan");
      assertEquals(Optional.empty(), storage.act(UUID.randomUUID().toString(), muffs, out));
      walk.page.navigate(address);
      var html = walk.page.content();
      assertTrue(html.contains("Still out of its place"), html);
      assertTrue(html.contains("out, with Rowan, since today"), html);
      walk.page.click("button:has-text('Put it back: Ear muffs')");
      assertEquals(address, walk.page.url());
      assertFalse(walk.page.content().contains("with Rowan"));
    }
  }

  /** The walk lies across; each kind of stage is looked at upright too, and could be tapped so. */
  @Test
  void demoJob_isWalkedToItsLastSignOff_andEveryStageIsAccessibleAndLargeEnoughBothWays() {
    var faults = new ArrayList<String>();
    try (var tablet = Tablet.of(Size.LANDSCAPE, Script.ON)) {
      var walk = new Walk(tablet, job);
      walk.begin();
      var seen = new HashSet<String>();
      walk.toTheEnd(
          progress -> {
            var machine = progress.setup().map(setup -> setup.machine().kind()).orElse("by-hand");
            var name = machine + "-" + progress.stage().name().toLowerCase().replace('_', '-');
            if (seen.add(name)) {
              look(walk.page, "sheet-" + name, faults);
            }
            if (seen.add(name + walk.target())) {
              Tablet.resize(walk.page, Size.PORTRAIT);
              walk.aim();
              Tablet.resize(walk.page, Size.LANDSCAPE);
            }
          });
      walk.open("/jobs/" + walk.job + "/sheets");
      look(walk.page, "sheets", faults);
      assertDone(walk);
    }
    assertEquals(List.of(), faults);
  }

  /** Upright and, as it is left, lying across. */
  private static void look(Page page, String name, List<String> faults) {
    for (var size : List.of(Size.PORTRAIT, Size.LANDSCAPE)) {
      Tablet.resize(page, size);
      var full = name + "-" + size.name().toLowerCase();
      Tablet.violations(page).forEach(fault -> faults.add(full + ": " + fault));
      tooSmall(page).forEach(fault -> faults.add(full + ": " + fault));
      Tablet.picture(page, full);
    }
  }

  @Test
  void trouble_isOneTapFromASheet_andLeadsBack() {
    try (var tablet = Tablet.of(Size.PORTRAIT, Script.ON)) {
      var walk = new Walk(tablet, job);
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
  private static List<String> tooSmall(Page page) {
    var faults = new ArrayList<>(Tablet.smallerThan(page, 112, ".button-main, .key"));
    // 10-inch tablet, 1280 px over 217 mm: 0.17 mm a pixel; figures are about 0.7 of the type size.
    var sizes =
        (List<?>)
            page.evaluate(
                """
                () => [...document.querySelectorAll('.figure-number')]
                  .filter(e => e.getClientRects().length)
                  .map(e => parseFloat(getComputedStyle(e).fontSize))""");
    for (var size : sizes) {
      double arcminutes =
          Math.toDegrees(Math.atan(((Number) size).doubleValue() * 0.7 * 0.17 / 700)) * 60;
      if (arcminutes < 22) {
        faults.add("a figure of " + arcminutes + " arcminutes");
      }
    }
    return faults;
  }

  /** What is looked at before each tap. */
  private interface Look {
    void at(SheetProgress progress);
  }

  private final class Walk {
    private final Page page;
    private final String job;
    private final Set<String> kinds = new HashSet<>();
    private String walked = "";
    private int pagesRead;

    Walk(Tablet tablet, String job) {
      this.page = tablet.open(home.toString());
      page.onDOMContentLoaded(read -> pagesRead++);
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

    /** Of several sheets of one operation at one machine the first is walked, tap by tap. */
    void toTheEnd(Look look) {
      for (int taps = 0; taps < MOST_TAPS; taps++) {
        var current = bench.work(job).orElseThrow().progress().current();
        if (current.isEmpty()) {
          open("/jobs/" + job + "/sheets");
          return;
        }
        var sheet = current.get().sheet();
        if (!sheet.id().equals(walked)) {
          if (!kinds.add(kind(current.get()))) {
            new Hand(bench, job, "by acts").until(now -> !now.sheet().id().equals(sheet.id()));
            continue;
          }
          walked = sheet.id();
        }
        var path = "/jobs/" + job + "/sheets/" + current.get().sheet().number();
        if (!page.url().contains(path)
            || page.url().matches(".*/sheets/" + current.get().sheet().number() + "[0-9].*")) {
          open(path);
        }
        look.at(current.get());
        tap(current.get());
      }
      throw new AssertionError("still walking after " + MOST_TAPS + " taps at " + page.url());
    }

    private String kind(SheetProgress progress) {
      return progress.sheet().operation().kind()
          + progress.setup().map(setup -> setup.machine().kind()).orElse("");
    }

    /** What the page offers to tap next. */
    String target() {
      var target =
          (String)
              page.evaluate(
                  "targets => targets.find(each => document.querySelector(each))", TARGETS);
      assertNotNull(target, "nothing to tap at " + page.url());
      return target.equals(FOUND) ? ANSWER : target;
    }

    /** Everything a tap needs, without the tap. */
    void aim() {
      page.locator(target()).first().click(new Locator.ClickOptions().setTrial(true));
    }

    private void tap(SheetProgress progress) {
      var target = target();
      if (target.equals(ANSWER)) {
        page.fill(FOUND, read(progress));
      }
      // What comes next is read from the page that the tap leads to, once all of it is there.
      int before = pagesRead;
      page.locator(target).first().click();
      page.waitForCondition(() -> pagesRead > before);
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
