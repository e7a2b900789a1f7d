package org.proofcut.core.method;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.proofcut.core.method.Choice.Refused;
import org.proofcut.core.setup.Refusal;
import org.proofcut.core.setup.Refusal.Reason;

class ChoiceTest {

  @Test
  void telling_isOfTheWork_ratherThanOfACutterThatDoesNotFit() {
    assertEquals(
        Optional.of(Reason.WORK_TOO_SMALL),
        telling(
            Reason.CUTTER_TOO_WIDE,
            Reason.WORK_TOO_SMALL,
            Reason.OUT_OF_REACH,
            Reason.CUTTER_DOES_NOT_FIT_MACHINE));
  }

  @Test
  void telling_isTheFirst_whereAllAreOfCutters() {
    assertEquals(
        Optional.of(Reason.CUTTER_TOO_NARROW),
        telling(
            Reason.CUTTER_DOES_NOT_FIT_MACHINE, Reason.CUTTER_TOO_NARROW, Reason.CUTTER_TOO_WIDE));
  }

  @Test
  void telling_whereNothingWasTried_isEmpty() {
    assertEquals(Optional.empty(), telling());
  }

  private static Optional<Reason> telling(Reason... reasons) {
    var refused =
        Stream.of(reasons)
            .map(reason -> new Refused("machine", "cutter", new Refusal(reason, "what", "instead")))
            .toList();
    return new Choice(Optional.empty(), List.copyOf(refused))
        .telling()
        .map(one -> one.why().reason());
  }
}
