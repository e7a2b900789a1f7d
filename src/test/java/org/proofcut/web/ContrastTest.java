package org.proofcut.web;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Text against what it stands on: at least 7 to 1, on the light ground and on the dark one. */
class ContrastTest {

  private static final Path STYLE = Path.of("src/main/resources/META-INF/resources/proofcut.css");

  @ParameterizedTest
  @CsvSource({
    "ink, ground",
    "ink, sheet",
    "ink, wood",
    "soft, ground",
    "soft, sheet",
    "white, danger",
    "white, notice",
    "black, warning",
    "black, caution"
  })
  void contrast_textOnItsGround_isSevenToOne(String text, String on) throws IOException {
    var style = Files.readString(STYLE);
    var light = colours(block(style, ":root {"));
    var dark = new HashMap<>(light);
    dark.putAll(colours(block(style, "html[data-ground=\"dark\"] {")));
    for (var ground : List.of(light, dark)) {
      double contrast = contrast(ground.get(text), ground.get(on));
      assertTrue(contrast >= 7, text + " on " + on + " is " + contrast);
    }
  }

  /** Contrast ratio after WCAG 2.2, "contrast ratio" and "relative luminance" in its glossary. */
  private static double contrast(String one, String other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(String hex) {
    int rgb = Integer.parseInt(hex.substring(1), 16);
    return 0.2126 * linear(rgb >> 16)
        + 0.7152 * linear(rgb >> 8 & 255)
        + 0.0722 * linear(rgb & 255);
  }

  private static double linear(int channel) {
    double c = channel / 255.0;
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }

  private static String block(String style, String head) {
    int from = style.indexOf(head);
    assertTrue(from >= 0, head);
    return style.substring(from, style.indexOf('}', from));
  }

  private static Map<String, String> colours(String block) {
    var found = new HashMap<>(Map.of("white", "#ffffff", "black", "#000000"));
    Pattern.compile("--([a-z-]+): (#[0-9a-f]{6})")
        .matcher(block)
        .results()
        .forEach(hit -> found.put(hit.group(1), hit.group(2)));
    return found;
  }
}
