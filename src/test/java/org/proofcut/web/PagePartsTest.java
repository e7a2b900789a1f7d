package org.proofcut.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.qute.Engine;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every part of a page, rendered from each of its examples. */
@QuarkusTest
class PagePartsTest {

  @Inject Engine engine;

  static List<Gallery.Example> examples() {
    return Gallery.examples();
  }

  @Test
  void examples_everyTag_hasSome() throws IOException {
    try (var tags = Files.list(Path.of("src/main/resources/templates/tags"))) {
      var written =
          tags.map(tag -> tag.getFileName().toString().replace(".html", ""))
              .collect(Collectors.toCollection(TreeSet::new));
      var shown =
          examples().stream()
              .map(Gallery.Example::tag)
              .collect(Collectors.toCollection(TreeSet::new));
      assertEquals(written, shown);
    }
  }

  /** A tag takes its words and addresses as they are written: braces in them would stay. */
  @Test
  void tags_inEveryTemplate_takeNoExpressionWithinWords() throws IOException {
    var within = "(\\{#[a-zA-Z]+ [^{}]*\"[^\"{}]*\\{)";
    try (var files = Files.walk(Path.of("src/main/resources/templates"))) {
      for (var file : files.filter(Files::isRegularFile).toList()) {
        assertEquals(List.of(), found(within, Files.readString(file)), file.toString());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  void render_example_idsAreUniqueAndEverythingPointsSomewhere(Gallery.Example example) {
    var html = example.html(engine);
    var ids = found("\\sid=\"([^\"]*)\"", html);
    assertEquals(ids.size(), new HashSet<>(ids).size(), "ids once each: " + ids);
    for (var label : found("<label[^>]*\\sfor=\"([^\"]*)\"", html)) {
      assertTrue(ids.contains(label), "label for " + label);
    }
    for (var described : found("aria-describedby=\"([^\"]*)\"", html)) {
      for (var id : described.trim().split(" +")) {
        assertTrue(ids.contains(id), "described by " + id);
      }
    }
    for (var field : found("<(?:input type=\"(?:text|radio)\"|select) id=\"([^\"]*)\"", html)) {
      assertTrue(html.contains("for=\"" + field + "\""), "no label for " + field);
    }
    for (var link : found("href=\"#([^\"]*)\"", html)) {
      assertTrue(link.equals("main") || ids.contains(link), "link to " + link);
    }
    assertFalse(html.contains("type=\"number\""), "fractions can't be typed into a number input");
    assertFalse(html.contains("<script>"), "what was typed is escaped");
  }

  @Test
  void field_withProblem_keepsWhatWasTyped() {
    var html = example("field: sent back with what was typed");
    assertTrue(html.contains("value=\"3,1415.9\""), html);
    assertTrue(html.contains("aria-invalid=\"true\""), html);
    assertTrue(html.contains("aria-describedby=\"depth-hint depth-problem\""), html);
  }

  @Test
  void problemSummary_problemOfAField_leadsToIt() {
    var html = example("problemSummary: two fields sent back, and one thing only to know");
    assertTrue(html.contains("There is a problem"), html);
    assertTrue(html.contains("<a href=\"#width\">“abc” is no length.</a>"), html);
  }

  @Test
  void choice_nothingChosen_choosesNothing() {
    assertFalse(example("choice: laid out, nothing chosen for the maker").contains("checked"));
  }

  @Test
  void shown_wholeAndFraction_hasSpaceBetween() {
    var text = example("shown: a whole number and a fraction").replaceAll("<[^>]*>", "").strip();
    assertEquals("4 1/64 in", text);
  }

  @Test
  void stamp_nestedWords_areShown() {
    assertTrue(example("stamp: proven").contains("Cut the real parts with nothing moved."));
  }

  @Test
  void forms_whatTheyCarry_isSentAlong() {
    var gear = example("gear: answered, asked, forbidden, and only to read");
    assertTrue(gear.contains("<input type=\"hidden\" name=\"act\" value=\"7\">"), gear);
    var check = example("checkItem: done, next, later, only to read");
    assertTrue(check.contains("<input type=\"hidden\" name=\"act\" value=\"8\">"), check);
    var part = example("partTick: cut, to cut, not open");
    assertTrue(part.contains("<input type=\"hidden\" name=\"act\" value=\"9\">"), part);
  }

  @Test
  void caution_notice_hasNoTriangle() {
    assertFalse(example("caution: a notice has no triangle").contains("<svg"));
    assertTrue(example("caution: caution").contains("<svg"));
  }

  private String example(String name) {
    return examples().stream()
        .filter(example -> example.toString().equals(name))
        .findFirst()
        .orElseThrow()
        .html(engine);
  }

  private static List<String> found(String pattern, String html) {
    return Pattern.compile(pattern).matcher(html).results().map(hit -> hit.group(1)).toList();
  }
}
