package org.proofcut.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.setup.ShopsForTests.CONDITIONS;
import static org.proofcut.core.setup.ShopsForTests.DRILL;
import static org.proofcut.core.setup.ShopsForTests.EIGHT;
import static org.proofcut.core.setup.ShopsForTests.LIMITS;
import static org.proofcut.core.setup.ShopsForTests.STEPPED;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.setup.CutAsked.Pocket;
import org.proofcut.core.setup.CutAsked.Row;
import org.proofcut.core.setup.Setting.Role;
import org.proofcut.core.stock.Material;

class PocketSetupTest {

  private static final Pattern RANGE =
      Pattern.compile("Use a screw of ([0-9.]+ mm) to ([0-9.]+ mm).*");

  private static Worked<Length> mm(String millimetres) {
    return Worked.entered("test", Length.of(millimetres + " mm"));
  }

  private static Pocket pocket(String screw, String stock, String deep, Optional<String> thick) {
    var thin = Length.of(stock + " mm");
    return new Pocket(
        Worked.entered("angle", Angle.ofDegrees(15)),
        Worked.entered("exit", thin.half()),
        mm("40"),
        mm("3"),
        mm(screw),
        mm(deep),
        thick.map(PocketSetupTest::mm),
        new Row(mm("34"), List.of(mm("20"), mm("50"))),
        Material.PLYWOOD,
        new Work(
            new Band(Length.of("70 mm"), Length.of("70 mm")),
            new Band(Length.of("400 mm"), Length.of("400 mm")),
            new Band(thin, thin)));
  }

  private static Answer answer(Pocket pocket) {
    return PocketSetup.of(pocket, DRILL, STEPPED, CONDITIONS);
  }

  private static Refusal refusal(Answer answer) {
    assertTrue(answer instanceof Refusal, "not refused");
    return (Refusal) answer;
  }

  /** 9 ÷ sin 15° is 34.77; of it 3 stay: 40 + 34.77 − 3 = 71.77, on steps of 0.1. */
  @Test
  void collar_eighteenMillimetres_byHand() {
    var setup = (Setup) answer(pocket("32", "18", "50", Optional.of("18")));
    assertEquals(Length.of("71.8 mm"), setup.setting(Role.COLLAR).orElseThrow().set().value());
    assertEquals(Length.of("20 mm"), setup.setting(Role.MARK).orElseThrow().set().value());
    // Nose 12 and 3 before the end: 17 of 32 are in the other part.
    assertEquals(Length.of("17 mm"), setup.measures().get(0).target().value());
    assertEquals(
        Length.of("31.8 mm"), setup.passes().get(setup.passes().size() - 1).depth().value());
  }

  @Test
  void tipThatComesThrough_isRefused_withWhatWouldDo() {
    var through = refusal(answer(pocket("38", "18", "18", Optional.empty())));
    assertEquals(Refusal.Reason.TOO_DEEP, through.reason());
    assertTrue(through.instead().contains("a part that reaches"), through.instead());
    var shallow = refusal(answer(pocket("20", "18", "50", Optional.empty())));
    assertTrue(shallow.what().startsWith("Only 5.00 mm"), shallow.what());
    var hopeless = refusal(answer(pocket("32", "18", "8", Optional.empty())));
    assertTrue(hopeless.instead().startsWith("No screw does"), hopeless.instead());
  }

  @Test
  void withoutJigOrWithAnotherBit_isRefused() {
    var pocket = pocket("32", "18", "50", Optional.empty());
    var without = new Conditions(LIMITS, List.of("clamps"), LengthUnit.MILLIMETRE);
    assertEquals(
        Refusal.Reason.AID_MISSING,
        refusal(PocketSetup.of(pocket, DRILL, STEPPED, without)).reason());
    assertEquals(
        Refusal.Reason.CUTTER_DOES_NOT_FIT_MACHINE,
        refusal(PocketSetup.of(pocket, DRILL, EIGHT, CONDITIONS)).reason());
  }

  /** Judged in doubles, from a drawing of the joint and not from the formulas of the set-up. */
  @Test
  void anyJoint_screwThatIsSetStaysInside_andEndsOfTheRangeThatIsTold_areTheLastThatDo() {
    var chance = new Random(15_15);
    int made = 0;
    int told = 0;
    for (int i = 0; i < 400; i++) {
      var stock = Integer.toString(15 + chance.nextInt(30));
      var deep = Integer.toString(10 + chance.nextInt(60));
      Optional<String> thick = chance.nextBoolean() ? Optional.of(stock) : Optional.<String>empty();
      var screw = Integer.toString(16 + chance.nextInt(60));
      var answer = answer(pocket(screw, stock, deep, thick));
      if (answer instanceof Setup setup) {
        made++;
        double slope = Math.toRadians(15);
        double head = 15;
        double bite = Double.parseDouble(screw) - head;
        assertTrue(bite >= 12, "bites " + bite);
        assertTrue(bite * Math.cos(slope) <= Double.parseDouble(deep) - 2 + 0.001);
        double below = Double.parseDouble(stock) / 2 + bite * Math.sin(slope);
        thick.ifPresent(
            one -> assertTrue(below <= Double.parseDouble(one) - 2 + 0.001, "tip " + below));
        // The bit's tip stays in the wood.
        double axis = Double.parseDouble(stock) / 2 / Math.sin(slope);
        double bored =
            setup.setting(Role.COLLAR).orElseThrow().set().value().inMillimetres().doubleValue()
                - 40;
        assertEquals(axis - 3, bored, 0.07);
      } else {
        var range = RANGE.matcher(((Refusal) answer).instead());
        if (range.matches()) {
          told++;
          for (int end : new int[] {1, 2}) {
            var at = Length.of(range.group(end));
            var beyond = Length.ofMicrometres(end == 1 ? -50 : 50);
            assertTrue(answer(withScrew(stock, deep, thick, at)) instanceof Setup, at + " does");
            refusal(answer(withScrew(stock, deep, thick, at.plus(beyond))));
          }
        }
      }
    }
    assertTrue(made > 60 && told > 60, made + " made, " + told + " told");
  }

  private static Pocket withScrew(String stock, String deep, Optional<String> thick, Length screw) {
    return pocket(screw.toString().replace(" mm", ""), stock, deep, thick);
  }
}
