package org.proofcut.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.proofcut.content.yaml.Faults;
import org.proofcut.content.yaml.Located;
import org.proofcut.content.yaml.Spot;
import org.proofcut.core.operation.Ways;
import org.proofcut.core.safety.Harm;
import org.proofcut.rulebook.Rule;

/** Every harm of every cut is spoken of, or it is said why not. */
class HarmMatrixTest {

  private static final int FEW = 20;

  private final Content content = Content.bundled();
  private final List<Rule> rules = content.rulebook().rules();

  @Test
  void cells_eachHasRulesOrAReason_neverBoth() {
    assertEquals(Ways.all(), content.matrix().rows().stream().map(HarmMatrix.Row::way).toList());
    for (var row : content.matrix().rows()) {
      for (var harm : Harm.values()) {
        var cell = row.cell(harm);
        assertEquals(cell.rules().isEmpty(), cell.why().isPresent(), row.way() + " " + harm);
      }
    }
  }

  @Test
  void rules_inACell_areOfItsHarmAndForItsCut() {
    var byId = rules.stream().collect(Collectors.toMap(Rule::id, rule -> rule));
    for (var row : content.matrix().rows()) {
      for (var harm : Harm.values()) {
        for (var id : row.cell(harm).rules()) {
          var rule = byId.get(id);
          assertEquals(harm, rule.harm(), id);
          assertTrue(
              rule.operations().isEmpty() || rule.operations().contains(row.way().kind().id()), id);
          assertTrue(
              rule.machines().isEmpty() || rule.machines().contains(row.way().machine()), id);
        }
      }
    }
  }

  /** One that stands in no cell could never be read: its condition contradicts its scope. */
  @Test
  void rules_eachCanSpeakSomewhere() {
    var speaking = new HashSet<String>();
    for (var row : content.matrix().rows()) {
      row.cells().values().forEach(cell -> speaking.addAll(cell.rules()));
    }
    assertEquals(
        List.of(), rules.stream().map(Rule::id).filter(id -> !speaking.contains(id)).toList());
  }

  /** Where a scope alone would count a rule whose condition can't hold there. */
  @ParameterizedTest
  @CsvSource({
    // Blind cuts, through cuts.
    "dado, table-saw, CUT, saw-without-guard, false",
    "rip, table-saw, CUT, saw-without-guard, true",
    "dado, table-saw, CUT, blind-cut-without-guard, true",
    "rip, table-saw, CUT, blind-cut-without-guard, false",
    "screw-holes, drill-press, CUT, bit-breaks-through, true",
    "shelf-pins, drill-press, CUT, bit-breaks-through, false",
    // What guides the work.
    "crosscut, table-saw, THROWN, fence-with-gauge, true",
    "rip, table-saw, THROWN, fence-with-gauge, false",
    "edge-profile, router-table, THROWN, edge-meets-the-cutter-without-a-pin, true",
    "dado, router-table, THROWN, edge-meets-the-cutter-without-a-pin, false",
    // A stack, a strip, a bearing, an opening.
    "dado, table-saw, THROWN, stacked-cutter-bites-wide, true",
    "step-flat, table-saw, THROWN, stacked-cutter-bites-wide, false",
    "dado, router-table, THROWN, strip-left-in, true",
    "back-rabbet, router-table, THROWN, strip-left-in, false",
    "flush-trim, hand-held-router, THROWN, bearing-comes-loose, true",
    "dado, hand-held-router, THROWN, bearing-comes-loose, false",
    "template-recess, hand-held-router, THROWN, wrong-way-round-the-opening, true",
    "dado, hand-held-router, THROWN, wrong-way-round-the-opening, false",
    // Glue and screws belong to no machine.
    "rip, table-saw, VAPOUR, glue-on-skin, false",
    "rip, table-saw, STRUCK, screw-comes-through, false",
    // A whole sheet is broken down, not crosscut.
    "rough-strips, table-saw, STRAIN, sheet-carried-alone, true",
    "crosscut, table-saw, STRAIN, sheet-carried-alone, false"
  })
  void rule_countsWhereItCanSpeak(
      String operation, String machine, Harm harm, String rule, boolean counts) {
    var cell = content.matrix().row(operation, machine).orElseThrow().cell(harm);
    assertEquals(counts, cell.rules().contains(rule), cell.rules()::toString);
  }

  @Test
  void reason_isTheOneOfItsLine() {
    var cell = content.matrix().row("mitre", "mitre-saw").orElseThrow().cell(Harm.STRAIN);
    assertEquals(List.of(), cell.rules());
    assertTrue(cell.why().orElseThrow().startsWith("Work and its long ends lie still"));
  }

  @Test
  void row_thatIsNotMade_isNone() {
    assertTrue(content.matrix().row("dado", "planer").isEmpty());
  }

  /** Takes away all that speaks of one harm: every row that has no line is then told. */
  @ParameterizedTest
  @EnumSource(Harm.class)
  void hole_anywhere_isTold(Harm harm) {
    var others = rules.stream().filter(rule -> rule.harm() != harm).toList();
    var told = told(others, lines());
    var expected = new ArrayList<String>();
    for (var row : content.matrix().rows()) {
      if (row.cell(harm).why().isEmpty()) {
        expected.add(
            "no rule speaks of %s on %s, %s"
                .formatted(row.way().kind().id(), row.way().machine(), harm.words()));
      }
    }
    assertFalse(expected.isEmpty(), "nothing was taken away");
    assertEquals(new HashSet<>(expected), new HashSet<>(told));
    assertEquals(expected.size(), told.size());
  }

  /** A line that stands for everything is stale wherever a rule speaks, and never idle. */
  @ParameterizedTest
  @EnumSource(Harm.class)
  void stale_anywhere_isTold(Harm harm) {
    var everything = new NoneHere("all", List.of(), List.of(), List.of(harm), "It hides.");
    var lines = new LinkedHashMap<>(lines());
    lines.put("all", new Located<>(everything, Spot.of("test.yaml")));
    var told = told(rules, lines);
    var reasons =
        content.matrix().rows().stream().filter(row -> row.cell(harm).why().isPresent()).count();
    var stale =
        told.stream().filter(what -> what.startsWith("\"all\" says that there is no")).count();
    assertEquals(content.matrix().rows().size() - reasons, stale);
    assertEquals(content.matrix().rows().size(), told.size(), "the rest is said twice");
  }

  /** All faults, a few rows at a time: no more than fifty are listed at once. */
  private List<String> told(List<Rule> some, Map<String, Located<NoneHere>> lines) {
    var told = new ArrayList<String>();
    for (int from = 0; from < Ways.all().size(); from += FEW) {
      var few = Ways.all().subList(from, Math.min(from + FEW, Ways.all().size()));
      var own = new LinkedHashMap<>(lines);
      own.values()
          .removeIf(
              line ->
                  few.stream()
                      .noneMatch(way -> line.value().isFor(way.kind().id(), way.machine())));
      var faults = new Faults();
      reader(some, faults).read(few, own);
      assertEquals(0, faults.more());
      faults.all().forEach(fault -> told.add(fault.problem().what()));
    }
    return told;
  }

  private MatrixReader reader(List<Rule> some, Faults faults) {
    return new MatrixReader(content.rulebook().vocabulary(), some, content.cases(), faults);
  }

  /** The lines that the bundled content has, one for each cell. */
  private Map<String, Located<NoneHere>> lines() {
    var lines = new LinkedHashMap<String, Located<NoneHere>>();
    for (var row : content.matrix().rows()) {
      for (var harm : Harm.values()) {
        row.cell(harm)
            .why()
            .ifPresent(
                why -> {
                  var id = row.way().machine() + " " + row.way().kind().id() + " " + harm;
                  lines.put(
                      id,
                      new Located<>(
                          new NoneHere(
                              id,
                              List.of(located(row.way().kind().id())),
                              List.of(located(row.way().machine())),
                              List.of(harm),
                              why),
                          Spot.of("test.yaml")));
                });
      }
    }
    return lines;
  }

  private static Located<String> located(String word) {
    return new Located<>(word, Spot.of("test.yaml"));
  }
}
