package org.proofcut.web.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.CutForm;
import org.proofcut.core.intake.LiftForm;
import org.proofcut.core.measure.LengthUnit;

class FormViewTest {

  private static final List<CutForm.Group> LIFT = LiftForm.groups();

  @Test
  void of_emptyField_isMissingAndNotWrong() {
    var form = form(Map.of("weight", " "), stops("weight"), stops("long"));
    assertEquals(List.of("weight", "long"), form.missing().stream().map(Asked::id).toList());
    assertEquals(List.of(), form.mend());
    assertNull(asked(form, "weight").problem());
    assertEquals("2 fields still empty", form.undone());
  }

  @Test
  void of_wrongField_isToldAtTheFieldAndComesFirst() {
    var form = form(Map.of("weight", "heavy"), stops("weight"), stops("long"));
    assertEquals(List.of(stops("weight")), form.mend());
    assertNotNull(asked(form, "weight").problem());
    assertEquals("1 thing to mend", form.undone());
  }

  /** Nothing could be typed there, so nothing is empty: it must not vanish. */
  @Test
  void of_problemBesideTheFields_isToMend() {
    var form = form(Map.of(), stops("saw:3"), stops(""));
    assertEquals(List.of(stops("saw:3"), stops("")), form.mend());
    assertEquals(List.of(), form.missing());
    assertEquals("2 things to mend", form.undone());
  }

  @Test
  void echoes_lengthTyped_saysWhatWasUnderstood() {
    var form = form(Map.of("long", "24 1/2 in"));
    assertEquals(
        "= 24 1/2 in",
        form.echoes().stream().filter(one -> one.id().equals("long")).findFirst().get().echo());
  }

  private static FormView form(Map<String, String> typed, Problem... problems) {
    return FormView.of(LIFT, typed, List.of(problems), LengthUnit.INCH);
  }

  private static Problem stops(String where) {
    return Problem.stops(where, "It is wrong", "what is right", "Mend it");
  }

  private static Asked asked(FormView form, String id) {
    return form.groups().stream()
        .flatMap(group -> group.asked().stream())
        .filter(one -> one.id().equals(id))
        .findFirst()
        .orElseThrow();
  }
}
