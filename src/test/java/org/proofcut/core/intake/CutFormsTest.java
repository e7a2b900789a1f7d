package org.proofcut.core.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.proofcut.core.boring.HolesForTests;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.plan.PlansForTests;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.setup.ShopsForTests;
import org.proofcut.core.shop.Shop;

class CutFormsTest {

  private static final List<CutForm> FORMS = CutForms.all(CasesForTests.FIT, HolesForTests.LIMITS);

  private static final Shop SHOP = CutsTyped.SHOP;

  private static final List<String> RUBBISH =
      List.of(
          "",
          "abc",
          "-5",
          "1e9",
          "NaN",
          "1,234.5",
          "<script>",
          "5 kg",
          "x".repeat(10_000),
          "\u0000",
          "\ud83d",
          "1/0");

  private static CutForm form(String kind) {
    return FORMS.stream().filter(one -> one.kind().equals(kind)).findFirst().orElseThrow();
  }

  private static Read<CutForm.Wanted> read(String kind, Map<String, String> typed) {
    return form(kind).read(CutForm.filledIn(typed, LengthUnit.MILLIMETRE), SHOP);
  }

  private static List<Setting> settings(String kind, Map<String, String> typed) {
    return setup(kind, typed).settings();
  }

  private static Setup setup(String kind, Map<String, String> typed) {
    var wanted = read(kind, typed).value().orElseThrow();
    return PlansForTests.planner()
        .plan(wanted.cut(), wanted.shop(), wanted.unit())
        .sheet()
        .operation()
        .setup()
        .orElseThrow();
  }

  static List<Arguments> fields() {
    var all = new ArrayList<Arguments>();
    for (var form : FORMS) {
      form.fields(SHOP).forEach(field -> all.add(Arguments.of(form.kind(), field.name())));
    }
    return all;
  }

  static List<String> kinds() {
    return FORMS.stream().map(CutForm::kind).toList();
  }

  @Test
  void examples_coverEveryForm() {
    assertEquals(Set.copyOf(kinds()), CutsTyped.byKind().keySet());
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void example_isReadWithoutAProblem_andHasASetUp(String kind) {
    assertEquals(List.of(), read(kind, CutsTyped.with(kind)).problems());
    var setup = setup(kind, CutsTyped.with(kind));
    assertFalse(setup.settings().isEmpty() && setup.anglesSet().isEmpty());
  }

  /** Sizes that can be read but fit nothing else: what is wrong is told where it can be mended. */
  @ParameterizedTest
  @MethodSource("fields")
  void sizeThatFitsNothing_isToldAtAFieldOfTheForm(String kind, String field) {
    var names = form(kind).fields(SHOP).stream().map(Field::name).toList();
    for (var size : List.of("0.5 mm", "1 mm", "3 mm", "40 mm", "115 mm", "900 mm", "3999 mm")) {
      for (var problem : read(kind, CutsTyped.with(kind, field, size)).problems()) {
        assertTrue(
            names.contains(problem.where()), kind + ", " + field + " " + size + ": " + problem);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("fields")
  void rubbishInAField_isToldAtThatField(String kind, String field) {
    boolean optional =
        form(kind).fields(SHOP).stream()
            .anyMatch(one -> one.name().equals(field) && one.optional());
    for (var rubbish : RUBBISH) {
      if (optional && rubbish.isEmpty()) {
        continue;
      }
      var problems = read(kind, CutsTyped.with(kind, field, rubbish)).problems();
      var where = problems.stream().map(Problem::where).toList();
      assertTrue(where.contains(field), field + " = " + rubbish + ": " + problems);
    }
  }

  @ParameterizedTest
  @CsvSource({
    // Two readings the wrong way round, in the part that goes in and in the one that is cut.
    "dado, entering-thickest, 17.8, entering-thickest, 17.90 mm or more",
    "rip, thickest, 17.9, thickest, 18.00 mm or more",
    // 0.05 to 0.25 mm of room at both ends leave 0.20 for the spread; a rabbet's 0.2 mm likewise.
    "dado, entering-thickest, 18.11, entering-thickest, at most 0.20 mm",
    "rabbet, entering-thickest, 18.11, entering-thickest, at most 0.20 mm",
    // As deep as the thinnest reading is through.
    "dado, depth, 18, depth, less than 18.00 mm",
    "rabbet, depth, 18.05, depth, less than 18.00 mm",
    // 96 + 18.1 wide ends beyond a piece of 114.
    "dado, across, 114, distance, a far wall within the piece",
    "rabbet, across, 18, across, a far wall within the piece"
  })
  void sizesThatContradictEachOther_areToldWithWhatWouldBeRight(
      String kind, String field, String text, String where, String allowed) {
    var problems = read(kind, CutsTyped.with(kind, field, text)).problems();
    assertEquals(1, problems.size(), problems.toString());
    assertEquals(where, problems.get(0).where());
    assertTrue(problems.get(0).allowed().startsWith(allowed), problems.get(0).allowed());
  }

  @Test
  void spreadThatJustServes_isRead() {
    assertEquals(
        List.of(), read("dado", CutsTyped.with("dado", "entering-thickest", "18.1")).problems());
  }

  @Test
  void everythingWrong_isToldAtOnce() {
    var problems = read("dado", Map.of()).problems();
    assertEquals(CutsTyped.with("dado").keySet().size(), problems.size(), problems.toString());
  }

  @Test
  void machineAndCutterChosen_areTheOnlyOnesTried() {
    var wanted =
        read("dado", CutsTyped.with("dado", "machine", "hand", "cutter", "12"))
            .value()
            .orElseThrow();
    assertEquals(List.of(ShopsForTests.HAND), wanted.shop().machines());
    assertEquals(List.of(ShopsForTests.TWELVE), wanted.shop().cutters());
    var choices =
        form("rip").fields(SHOP).stream()
            .filter(field -> field.name().equals(CutForm.MACHINE))
            .flatMap(field -> field.choices().stream())
            .map(Field.Choice::value)
            .toList();
    assertEquals(List.of(CutForm.ANY, "saw", "track"), choices);
  }

  /** What the form asks of the proof cut is what its set-up measures. */
  @ParameterizedTest
  @MethodSource("kinds")
  void readingsAsked_areThoseThatTheSetUpMeasures(String kind) {
    var wanted = read(kind, CutsTyped.with(kind)).value().orElseThrow();
    var measured = new EnumMap<Dimension, Integer>(Dimension.class);
    PlansForTests.planner()
        .plan(wanted.cut(), wanted.shop(), wanted.unit())
        .sheet()
        .operation()
        .setup()
        .orElseThrow()
        .measures()
        .forEach(measure -> measured.put(measure.dimension(), measure.readings()));
    assertEquals(measured, form(kind).proof());
  }

  @Test
  void readings_areRead_inTheUnitOfTheForm() {
    var typed = CutsTyped.with("rip", "found-size-1", "300.1", "found-size-2", "11 13/16 in");
    assertEquals(
        List.of(Length.of("300.1 mm"), Length.of("11 13/16 in")),
        read("rip", typed).value().orElseThrow().found().get(Dimension.SIZE));
  }

  /** The same sizes with their unit, in a form whose bare numbers are inches. */
  @ParameterizedTest
  @MethodSource("kinds")
  void unitOfTheForm_changesNoSetting(String kind) {
    var withUnits = new LinkedHashMap<>(CutsTyped.with(kind));
    form(kind).fields(SHOP).stream()
        .filter(field -> field.entry() == Field.Entry.LENGTH)
        .forEach(field -> withUnits.computeIfPresent(field.name(), (name, text) -> text + " mm"));
    withUnits.put("unit", "in");
    assertEquals(settings(kind, CutsTyped.with(kind)), settings(kind, withUnits));
    assertEquals(setup(kind, CutsTyped.with(kind)).anglesSet(), setup(kind, withUnits).anglesSet());
  }

  /** The same sizes in inches: 1 mm is 5/127 in exactly. */
  @ParameterizedTest
  @MethodSource("kinds")
  void inchesTyped_setTheSameAsTheirMillimetres(String kind) {
    var inches = new LinkedHashMap<>(CutsTyped.with(kind));
    form(kind).fields(SHOP).stream()
        .filter(field -> field.entry() == Field.Entry.LENGTH)
        .forEach(field -> inches.computeIfPresent(field.name(), (name, text) -> inInches(text)));
    inches.put("unit", "in");
    assertEquals(settings(kind, CutsTyped.with(kind)), settings(kind, inches));
    assertEquals(setup(kind, CutsTyped.with(kind)).anglesSet(), setup(kind, inches).anglesSet());
  }

  private static String inInches(String millimetres) {
    if (millimetres.isBlank()) {
      return millimetres;
    }
    var hundredths = new BigDecimal(millimetres).movePointRight(2).toBigIntegerExact();
    return hundredths + "/2540";
  }
}
