package org.proofcut.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.net.URL;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.proofcut.web.Tablet.Script;
import org.proofcut.web.Tablet.Size;

/** The parts as a browser shows them. */
@QuarkusTest
class GalleryLookTest {

  @TestHTTPResource("/gallery")
  URL gallery;

  @ParameterizedTest
  @CsvSource({
    "LANDSCAPE, ''", "PORTRAIT, ''", "PHONE, ''",
    "LANDSCAPE, /sheet", "PORTRAIT, /sheet", "PHONE, /sheet",
    "LANDSCAPE, /proof", "PORTRAIT, /proof", "PHONE, /proof"
  })
  void open_everySize_breaksNoRuleOfAccessAndFitsTheWidth(Size size, String page) {
    try (var tablet = Tablet.of(size, Script.ON)) {
      var shown = tablet.open(gallery + page);
      Tablet.picture(
          shown,
          "gallery"
              + page.replace('/', '-')
              + "-"
              + size.name().toLowerCase(java.util.Locale.ROOT));
      assertEquals(List.of(), Tablet.violations(shown));
      assertEquals(List.of(), Tablet.standingOut(shown));
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = Size.class,
      names = {"LANDSCAPE", "PORTRAIT"})
  void open_darkGround_breaksNoRuleOfAccess(Size size) {
    try (var tablet = Tablet.of(size, Script.ON)) {
      var page = tablet.open(gallery + "/sheet");
      page.click("text=Dark ground");
      assertEquals("dark", page.getAttribute("html", "data-ground"));
      assertTrue(page.url().endsWith("/gallery/sheet"), page.url());
      assertEquals(List.of(), Tablet.violations(page));
      Tablet.picture(page, "gallery-sheet-dark-" + size.name().toLowerCase(java.util.Locale.ROOT));
    }
  }

  @ParameterizedTest
  @CsvSource({"LANDSCAPE, /sheet", "PORTRAIT, /sheet", "PHONE, /sheet", "PORTRAIT, ''"})
  void open_lettersTwiceAsLarge_clipsNothing(Size size, String name) {
    try (var tablet = Tablet.of(size, Script.ON)) {
      var page = tablet.open(gallery + name);
      page.evaluate("document.documentElement.style.fontSize = '200%'");
      assertEquals(List.of(), Tablet.standingOut(page));
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = Size.class,
      names = {"LANDSCAPE", "PORTRAIT"})
  void measure_mainTargets_areAFingerWide(Size size) {
    try (var tablet = Tablet.of(size, Script.ON)) {
      var page = tablet.open(gallery + "/proof");
      for (var key : page.querySelectorAll(".key, .button-main")) {
        var box = key.boundingBox();
        assertTrue(
            box.width >= 112 && box.height >= 112,
            key.innerText() + " " + box.width + " × " + box.height);
      }
      assertEquals(16, page.querySelectorAll(".key").size());
      var seven = page.querySelector("[data-key='7']").boundingBox();
      var eight = page.querySelector("[data-key='8']").boundingBox();
      var four = page.querySelector("[data-key='4']").boundingBox();
      assertTrue(eight.x - seven.x - seven.width >= 17.9, "gap beside a key");
      assertTrue(four.y - seven.y - seven.height >= 17.9, "gap below a key");

      var sheet = tablet.open(gallery + "/sheet");
      for (var target : sheet.querySelectorAll("button.gear, button.check-answer")) {
        var box = target.boundingBox();
        assertTrue(
            box.width >= 112 && box.height >= 112,
            target.innerText() + " " + box.width + " × " + box.height);
      }
      for (var target : sheet.querySelectorAll("a.button, button.button, summary")) {
        var box = target.boundingBox();
        assertTrue(
            box.width >= 72 && box.height >= 72,
            target.innerText() + " " + box.width + " × " + box.height);
      }
      for (var figure : sheet.querySelectorAll(".figure-value")) {
        assertEquals("96px", figure.evaluate("it => getComputedStyle(it).fontSize"));
      }
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = Size.class,
      names = {"LANDSCAPE", "PORTRAIT"})
  void measure_everyWordOnATablet_isLargeEnoughForArmsLength(Size size) {
    try (var tablet = Tablet.of(size, Script.ON)) {
      for (var name : List.of("", "/sheet", "/proof")) {
        var small =
            tablet
                .open(gallery + name)
                .evaluate(
                    """
                    () => [...document.querySelectorAll('body *')]
                      .filter(e => [...e.childNodes].some(n => n.nodeType === 3 && n.data.trim()))
                      .filter(e => e.getClientRects().length && !e.closest('.unseen'))
                      .filter(e => {
                        const svg = e.closest('svg');
                        const scale = svg ? e.getScreenCTM().a : 1;
                        return parseFloat(getComputedStyle(e).fontSize) * scale < 22.9;
                      })
                      .map(e => e.textContent.trim() + ' ' + getComputedStyle(e).fontSize)""");
        assertEquals(List.of(), small, name);
      }
    }
  }

  @Test
  void tap_keys_typeIntoTheField() {
    try (var tablet = Tablet.of(Size.LANDSCAPE, Script.ON)) {
      var page = tablet.open(gallery + "/proof");
      page.fill("#reading", "");
      for (var key : List.of("1", "7", ".", "8", "9", "back", "2", " mm")) {
        page.click("[data-key='" + key + "']");
      }
      assertEquals("17.82 mm", page.inputValue("#reading"));
    }
  }

  @Test
  void open_withoutScript_hidesTheKeypadAndKeepsTheField() {
    try (var tablet = Tablet.of(Size.LANDSCAPE, Script.OFF)) {
      var page = tablet.open(gallery + "/proof");
      assertTrue(page.isHidden(".keypad"));
      assertTrue(page.isEditable("#reading"));
      assertTrue(page.isVisible("text=Record this reading"));
    }
  }

  @Test
  void choose_leftHanded_putsTheKeysOnTheLeft() {
    try (var tablet = Tablet.of(Size.LANDSCAPE, Script.OFF)) {
      var page = tablet.open(gallery + "/proof");
      double before = page.querySelector("#reading").boundingBox().x;
      page.click("text=Left-handed");
      assertEquals("left", page.getAttribute("html", "data-hand"));
      assertTrue(page.querySelector("#reading").boundingBox().x > before + 300);
    }
  }

  @Test
  void focus_byKeyboard_isSeenAndBeginsWithTheSkipLink() {
    try (var tablet = Tablet.of(Size.LANDSCAPE, Script.ON)) {
      var page = tablet.open(gallery + "/sheet");
      page.keyboard().press("Tab");
      assertEquals("To the main part", page.evaluate("document.activeElement.textContent"));
      page.keyboard().press("Enter");
      page.keyboard().press("Tab");
      assertEquals("5px", page.evaluate("getComputedStyle(document.activeElement).outlineWidth"));
    }
  }
}
