package org.proofcut.core.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.content.Content;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.casework.Casework;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.exposure.Lift.NotCovered;
import org.proofcut.core.exposure.LiftLimits;
import org.proofcut.core.exposure.StandingLimits;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.weight.CaseOnFloor;
import org.proofcut.core.weight.Densities;
import org.proofcut.web.Rubbish;

/** The forms of a lift and of a case on the floor. */
class LoadFormsTest {

  private static final LiftLimits LIFTING = Content.bundled().limits(LiftLimits.class);
  private static final StandingLimits STANDING = Content.bundled().limits(StandingLimits.class);
  private static final Densities DENSITIES = Content.bundled().limits(Densities.class);

  private static StandForm standing() {
    return new StandForm(
        Casework.derive(CasesForTests.cupboard(), CasesForTests.CASE, CasesForTests.FIT));
  }

  static List<String> liftFields() {
    return LiftForm.fields().stream().map(Field::name).toList();
  }

  static List<String> standFields() {
    return standing().fields().stream().map(Field::name).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "18, MILLIMETRE, 18 kg",
    "18, INCH, 18 lb",
    "18.5 KG, INCH, 18.5 kg",
    "'18,5', MILLIMETRE, 18.5 kg",
    "40lbs, MILLIMETRE, 40 lb",
    "350 g, INCH, 0.350 kg",
    "'0,350 kg', INCH, 0.350 kg"
  })
  void weight_asPeopleWriteIt(String typed, LengthUnit unit, String expected) {
    assertEquals(expected, WeightText.parse(typed, unit).text());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "heavy", "1,234", "1,234.5", "-3", "1e9", "3 stone", "kg", "1.2.3"})
  void weight_unclear_isRefused(String typed) {
    org.junit.jupiter.api.Assertions.assertThrows(
        WeightText.Unreadable.class, () -> WeightText.parse(typed, LengthUnit.MILLIMETRE));
  }

  @Test
  void lift_example_isReadWithNothingToMend() {
    var read = LiftForm.read(LoadsTyped.lift(), LIFTING);
    assertEquals(List.of(), read.problems());
    var task = read.value().orElseThrow();
    assertEquals("18 kg", task.weight().value().text());
    assertEquals(List.of(), task.notCovered());
    assertTrue(task.placed().isPresent());
  }

  @Test
  void lift_empty_asksForEveryFieldThatMayNotStayEmpty() {
    var empty = JobForm.withUnit(Map.of(), LengthUnit.MILLIMETRE);
    var asked = LiftForm.read(empty, LIFTING).problems().stream().map(Problem::where).toList();
    assertEquals(
        LiftForm.fields().stream()
            .filter(field -> !field.optional() && !field.name().equals("unit"))
            .map(Field::name)
            .sorted()
            .toList(),
        asked.stream().sorted().toList());
  }

  /** None of the questions that rule a figure out is taken for answered. */
  @ParameterizedTest
  @EnumSource(NotCovered.class)
  void lift_conditionNotAnswered_hasNoTask(NotCovered one) {
    var name = one.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    var open = Rubbish.with(LoadsTyped.lift(), name, "");
    assertTrue(LiftForm.read(open, LIFTING).value().isEmpty());
    var yes = Rubbish.with(LoadsTyped.lift(), name, "yes");
    assertEquals(List.of(one), LiftForm.read(yes, LIFTING).value().orElseThrow().notCovered());
  }

  /** A figure exactly at the sizes that one person holds; none from a hundredth more. */
  @Test
  void lift_tooLarge_isNotCovered() {
    assertEquals(List.of(), notCovered("1200 mm", "600 mm"));
    assertEquals(List.of(NotCovered.UNSTABLE), notCovered("1200.01 mm", "600 mm"));
    assertEquals(List.of(NotCovered.UNSTABLE), notCovered("1200 mm", "600.01 mm"));
  }

  private static List<NotCovered> notCovered(String longest, String deep) {
    var typed = Rubbish.with(Rubbish.with(LoadsTyped.lift(), "long", longest), "deep", deep);
    return LiftForm.read(typed, LIFTING).value().orElseThrow().notCovered();
  }

  @Test
  void lift_careAtTheEnd_asksForItsReach() {
    var typed = Rubbish.with(LoadsTyped.lift(), "end-out", "");
    assertEquals(
        List.of("end-out"),
        LiftForm.read(typed, LIFTING).problems().stream().map(Problem::where).toList());
    var careless = Rubbish.with(typed, "care", "no");
    assertTrue(LiftForm.read(careless, LIFTING).value().orElseThrow().placed().isEmpty());
  }

  @Test
  void estimatedOut_onlyWhileNothingWasMeasured() {
    var unmeasured = Rubbish.with(LoadsTyped.lift(), "out", "");
    assertEquals(
        Length.of("400 mm"),
        LiftForm.estimatedOut(Rubbish.with(unmeasured, "from", "300")).orElseThrow().value());
    assertTrue(LiftForm.estimatedOut(LoadsTyped.lift()).isEmpty());
    assertTrue(LiftForm.estimatedOut(Rubbish.with(unmeasured, "deep", "")).isEmpty());
  }

  @ParameterizedTest
  @MethodSource("liftFields")
  void lift_rubbishInOneField_isAProblemThereOrARightValue(String field) {
    for (var rubbish : Rubbish.ALL) {
      var read = LiftForm.read(Rubbish.with(LoadsTyped.lift(), field, rubbish), LIFTING);
      assertTrue(
          read.value().isPresent()
              || read.problems().stream().allMatch(problem -> problem.where().equals(field)),
          field + ": " + rubbish + ": " + read.problems());
    }
  }

  @ParameterizedTest
  @MethodSource("standFields")
  void stand_rubbishInOneField_isAProblemThereOrARightValue(String field) {
    for (var rubbish : Rubbish.ALL) {
      var typed = Rubbish.with(LoadsTyped.stand(), field, rubbish);
      var read = standing().read(standing().filledIn(typed, STANDING), STANDING, DENSITIES);
      assertTrue(
          read.value().map(CaseOnFloor::worst).isPresent()
              || read.problems().stream().allMatch(problem -> problem.where().equals(field)),
          field + ": " + rubbish + ": " + read.problems());
    }
  }

  @Test
  void stand_nothingTyped_isTheUsual() {
    var form = standing();
    var read = form.read(form.filledIn(Map.of(), STANDING), STANDING, DENSITIES);
    assertEquals(List.of(), read.problems());
    var floor = read.value().orElseThrow();
    assertEquals("15.6 kg", floor.contents().get(0).weight().value().text());
    assertEquals("27 kg", floor.hung().value().text());
    assertEquals(4, floor.states().size());
  }

  @Test
  void stand_pounds_areReckonedInKilograms() {
    var form = standing();
    var typed = Rubbish.with(LoadsTyped.stand(), "fronts", "20 lb");
    var floor = form.read(form.filledIn(typed, STANDING), STANDING, DENSITIES).value();
    assertEquals("9.072 kg", floor.orElseThrow().fronts().orElseThrow().value().text());
    assertEquals(8, floor.orElseThrow().states().size());
  }

  @Test
  void stand_frontsWithoutHowFar_asksForIt() {
    var form = standing();
    var typed = Rubbish.with(LoadsTyped.stand(), "fronts-before", "");
    var read = form.read(form.filledIn(typed, STANDING), STANDING, DENSITIES);
    assertEquals(List.of("fronts-before"), read.problems().stream().map(Problem::where).toList());
    assertFalse(read.value().isPresent());
  }
}
