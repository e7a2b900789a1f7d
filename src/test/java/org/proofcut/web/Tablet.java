package org.proofcut.web;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.Cookie;
import com.microsoft.playwright.options.ScreenshotType;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * A real browser in the sizes the shop has. Where no Chromium is installed the tests that need one
 * say so and are skipped, unless {@code -Dproofcut.browser.required=true}: then they fail.
 *
 * <p>For example:
 *
 * <pre>{@code
 * try (var tablet = Tablet.of(Size.LANDSCAPE, Script.ON)) {
 *   var page = tablet.open(url);
 *   assertEquals(List.of(), Tablet.violations(page));
 *   Tablet.picture(page, "operation-sheet-landscape");
 * }
 * }</pre>
 */
public final class Tablet implements AutoCloseable {

  /** What is held in the hand, in CSS pixels. */
  public enum Size {
    LANDSCAPE(1280, 800),
    PORTRAIT(800, 1280),
    PHONE(390, 844);

    private final int width;
    private final int height;

    Size(int width, int height) {
      this.width = width;
      this.height = height;
    }
  }

  /** Whether the page's script runs. */
  public enum Script {
    ON,
    OFF
  }

  private static final Path PICTURES = Path.of("target/pictures");

  /** Those that stand here are taken anew where it is asked for. */
  private static final Path SHOWN = Path.of("docs/pictures");

  private static final List<String> WCAG_22_AA =
      List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");

  private static final String AXE = AxeBuilder.getAxeScript();

  private static Browser browser;

  private final BrowserContext context;
  private final Page page;

  private Tablet(BrowserContext context) {
    this.context = context;
    this.page = context.newPage();
  }

  /** A fresh tablet that remembers nothing; skips or fails the test where no browser is. */
  public static Tablet of(Size size, Script script) {
    return new Tablet(
        browser()
            .newContext(
                new Browser.NewContextOptions()
                    .setViewportSize(size.width, size.height)
                    .setJavaScriptEnabled(script == Script.ON)));
  }

  /** The tablet's one page, now at this address, with its typeface loaded. */
  public Page open(String address) {
    var answer = page.navigate(address);
    assertTrue(answer.status() < 500, address + " answers " + answer.status());
    page.evaluate("document.fonts.ready.then(() => true)");
    return page;
  }

  /** The same page in another size, without loading it again. */
  public static void resize(Page page, Size size) {
    page.setViewportSize(size.width, size.height);
  }

  /** The same with a cookie that the service at this address has given before. */
  public Tablet known(URI service, String cookie, String value) {
    context.addCookies(List.of(new Cookie(cookie, value).setUrl(service.toString())));
    return this;
  }

  /**
   * What axe finds against WCAG 2.2 AA, one line for each place; needs a page whose script runs.
   */
  public static List<String> violations(Page page) {
    if (page.evaluate("'axe' in window").equals(false)) {
      page.evaluate(AXE + "; true");
    }
    // Run here and not by AxeBuilder: that one brings every rule that was kept, with every place
    // it was kept at, out of the browser, which takes longer than finding them.
    return ((List<?>)
            page.evaluate(
                """
                tags => axe
                  .run(document, { runOnly: { type: 'tag', values: tags }, resultTypes: ['violations'] })
                  .then(found => found.violations.flatMap(rule =>
                    rule.nodes.map(node => `${rule.id} ${node.target} ${node.html}`)))""",
                WCAG_22_AA))
        .stream().map(String.class::cast).toList();
  }

  /** Sideways scrolling, and text wider than the box that holds it; one line for each place. */
  public static List<String> standingOut(Page page) {
    return ((List<?>)
            page.evaluate(
                """
                () => {
                  const width = document.documentElement.clientWidth;
                  const said = e => e.tagName + '.' + e.className + ' ' + e.textContent.trim().slice(0, 40);
                  const sideways = document.documentElement.scrollWidth <= width ? []
                    : ['scrolls sideways: ' + document.documentElement.scrollWidth + ' > ' + width,
                       ...[...document.querySelectorAll('body *')]
                         .filter(e => e.getBoundingClientRect().right > width)
                         .map(e => 'scrolls sideways: ' + said(e))];
                  const wide = [...document.querySelectorAll('body *:not(svg, svg *)')]
                    .filter(e => e.getClientRects().length && !e.closest('.unseen, .skip, .figure-rule, input, details:not([open]) > :not(summary)'))
                    .filter(e => getComputedStyle(e).display !== 'inline')
                    .filter(e => e.scrollWidth > e.clientWidth + 2 && e.clientWidth > 0)
                    .map(e => 'stands out of its box: ' + e.scrollWidth + ' > ' + e.clientWidth + ' ' + said(e));
                  return [...sideways, ...wide];
                }"""))
        .stream().map(String.class::cast).toList();
  }

  /** What of this can be seen and is narrower or lower than that many CSS pixels. */
  public static List<String> smallerThan(Page page, int pixels, String targets) {
    return ((List<?>)
            page.evaluate(
                """
                ([targets, least]) => [...document.querySelectorAll(targets)]
                  .filter(e => e.getClientRects().length)
                  .map(e => ({ e, box: e.getBoundingClientRect() }))
                  .filter(({ box }) => box.width < least || box.height < least)
                  .map(({ e, box }) => `${e.textContent.trim()} is ${box.width} × ${box.height}`)""",
                List.of(targets, pixels)))
        .stream().map(String.class::cast).toList();
  }

  /**
   * Keeps the whole page as {@code target/pictures/<name>.jpg} where {@code
   * -Dproofcut.pictures=true} asks for it; with {@code -Dproofcut.refresh=true} in docs/pictures,
   * if it stands there already. Nothing is judged by a picture, and taking them all takes minutes.
   */
  public static void picture(Page page, String name) {
    var file = name + ".jpg";
    if (Boolean.getBoolean("proofcut.refresh") && Files.exists(SHOWN.resolve(file))) {
      take(page, SHOWN.resolve(file));
    } else if (Boolean.getBoolean("proofcut.pictures")) {
      take(page, PICTURES.resolve(file));
    }
  }

  private static void take(Page page, Path to) {
    page.screenshot(
        new Page.ScreenshotOptions()
            .setPath(to)
            .setType(ScreenshotType.JPEG)
            .setQuality(35)
            .setFullPage(true));
  }

  @Override
  public void close() {
    context.close();
  }

  private static synchronized Browser browser() {
    if (browser == null) {
      // One for all tests; it ends with the virtual machine, which closes the pipe it listens to.
      browser =
          Playwright.create()
              .chromium()
              .launch(
                  new BrowserType.LaunchOptions()
                      .setExecutablePath(chromium())
                      .setArgs(
                          List.of(
                              "--no-sandbox",
                              "--disable-gpu",
                              "--no-first-run",
                              "--disable-background-networking",
                              "--disable-component-update",
                              "--disable-sync")));
    }
    return browser;
  }

  private static Path chromium() {
    return Stream.of(
            System.getenv("PROOFCUT_CHROMIUM"), "/usr/bin/chromium", "/usr/bin/chromium-browser")
        .filter(place -> place != null && Files.isExecutable(Path.of(place)))
        .map(Path::of)
        .findFirst()
        .orElseGet(Tablet::none);
  }

  private static Path none() {
    return Boolean.getBoolean("proofcut.browser.required")
        ? fail("no Chromium at /usr/bin/chromium; set PROOFCUT_CHROMIUM to where it is")
        : abort("skipped: no Chromium");
  }
}
