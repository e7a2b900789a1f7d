package org.proofcut.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/** Limits that a room takes as a record of its own. */
class LimitFolderTest {

  record SampleLimits(
      Worked<Length> overlap, Worked<Integer> readings, Worked<List<SpeedBand>> speedBands) {

    record SpeedBand(Length toDiameter, int turnsPerMinute) {}
  }

  record ClashingLimits(Worked<Length> smallCutter) {}

  private static final String PASSES =
      """
      overlap:
        name: overlap of two passes
        value: 1 mm
        because: {source: common-practice}
      speed-bands:
        name: highest speed by diameter
        value:
          - {to-diameter: 1 in, turns-per-minute: 24000}
          - {to-diameter: 2 in, turns-per-minute: 18000}
        because: {source: en-847-1, place: marking}
      """;

  private static final String READINGS =
      """
      readings:
        name: readings of a sheet
        value: 4
        because: {source: common-practice}
      """;

  @Test
  void limits_overTwoFiles_areOneRecord() {
    var limits = read(PASSES, READINGS).orThrow().limits(SampleLimits.class);

    assertEquals(
        Worked.given("overlap of two passes", Length.of("1 mm"), Citation.COMMON_PRACTICE),
        limits.overlap());
    assertEquals(4, limits.readings().value());
    assertEquals(
        new SampleLimits.SpeedBand(Length.of("50.8 mm"), 18_000),
        limits.speedBands().value().get(1));
    assertEquals(Citation.Kind.STANDARD, limits.speedBands().source().kind());
  }

  @Test
  void limits_oneMissing_saysWhich() {
    assertEquals(List.of("\"readings\" is missing"), what(read(PASSES, "{}")));
  }

  @Test
  void limits_oneInBothFiles_areRefused() {
    assertTrue(what(read(PASSES, READINGS + PASSES)).contains("\"overlap\" stands here twice"));
  }

  @Test
  void limits_ofOneNumber_canStandInACondition() {
    var limits = read(PASSES, READINGS).orThrow().rulebook().vocabulary().limits();

    assertEquals(Length.of("1 mm"), limits.get("overlap").value());
    assertEquals(4L, limits.get("readings").value());
    assertFalse(limits.containsKey("speed_bands"));
  }

  @Test
  void limits_ofTwoRoomsWithOneName_areRefused() {
    var clash = READINGS.replace("readings:", "small-cutter:").replace("value: 4", "value: 5 mm");
    var files = new TreeMap<>(ContentSource.bundled().files());
    files.put("clash/limits/clash.yaml", clash.getBytes(StandardCharsets.UTF_8));
    var folders = new ArrayList<>(LimitFolder.ALL);
    folders.add(new LimitFolder("clash/limits", ClashingLimits.class));

    assertEquals(
        List.of("\"small_cutter\" is already a limit of ClashingLimits"),
        what(ContentReader.read(new ContentSource(files), folders)));
  }

  @Test
  void limits_ofNoFolder_areAFaultOfTheProgram() {
    assertThrows(
        IllegalArgumentException.class, () -> Content.bundled().limits(SampleLimits.class));
  }

  private static List<String> what(Loaded loaded) {
    return ((Faulty) loaded)
        .problems().stream()
            .map(problem -> problem.what())
            .filter(what -> !what.equals("the file is empty"))
            .filter(what -> !what.equals("the file is no mapping"))
            .toList();
  }

  private static Loaded read(String passes, String readings) {
    var files = new TreeMap<>(ContentSource.bundled().files());
    files.put("sample/limits/passes.yaml", passes.getBytes(StandardCharsets.UTF_8));
    files.put("sample/limits/readings.yaml", readings.getBytes(StandardCharsets.UTF_8));
    var folders = new ArrayList<>(LimitFolder.ALL);
    folders.add(new LimitFolder("sample/limits", SampleLimits.class));
    return ContentReader.read(new ContentSource(files), folders);
  }
}
