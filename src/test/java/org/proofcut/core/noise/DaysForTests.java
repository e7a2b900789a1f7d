package org.proofcut.core.noise;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.DayAsked;
import org.proofcut.core.exposure.ExposureLimits;
import org.proofcut.core.exposure.MachineNoise;
import org.proofcut.core.exposure.NoiseLaw;
import org.proofcut.core.exposure.NoiseLaw.Left;
import org.proofcut.core.exposure.NoiseLaw.Measure;
import org.proofcut.core.exposure.NoiseLaw.Step;
import org.proofcut.core.intake.NoiseForm;
import org.proofcut.core.measure.Length;
import org.proofcut.core.plan.Plan;
import org.proofcut.core.shop.OwnedGear;
import org.proofcut.core.shop.Shop;

/** Days with levels and limits of round numbers. */
final class DaysForTests {

  static final ExposureLimits LIMITS =
      new ExposureLimits(
          given("feed", Length.of("3 m")),
          given("seconds around", 20),
          given("seconds each", 15),
          given("proof cuts", 3),
          given("difference", 7),
          given("derating", 4),
          given("too quiet", 70));

  static final NoiseLaw US =
      new NoiseLaw(
          "us",
          "us",
          List.of("us"),
          Measure.FIVE_DECIBEL_DOSE,
          List.of(step("action", "85", false), step("limit", "90", true)),
          left("90"),
          left("85"),
          Optional.of(left("115")));

  static final NoiseLaw EUROPE =
      new NoiseLaw(
          "eu",
          "eu",
          List.of("eu"),
          Measure.DAILY_LEVEL,
          List.of(
              step("lower", "80", false), step("upper", "85", false), step("limit", "87", true)),
          left("87"),
          left("80"),
          Optional.empty());

  static final NoiseLaw ADVICE =
      new NoiseLaw(
          "advice",
          "advice",
          List.of("elsewhere"),
          Measure.THREE_DECIBEL_DOSE,
          List.of(step("recommended", "85", false)),
          left("85"),
          left("80"),
          Optional.empty());

  private DaysForTests() {}

  /** A day of what is typed, without a job. */
  static NoiseDay typed(NoiseLaw law, String... fieldsAndTexts) {
    return typed(law, List.of(), fieldsAndTexts);
  }

  static NoiseDay typed(NoiseLaw law, List<OwnedGear> gear, String... fieldsAndTexts) {
    var typed = new HashMap<String, String>();
    for (int i = 0; i < fieldsAndTexts.length; i += 2) {
      typed.put(fieldsAndTexts[i], fieldsAndTexts[i + 1]);
    }
    var read = NoiseForm.read(typed, 0);
    return day(
        Optional.empty(),
        Map.of(),
        gear,
        law,
        read.value().orElseThrow(() -> new AssertionError(read.problems().toString())));
  }

  /** A day on a plan, with the usual levels of its machines all 100 dBA, the extractor at 90. */
  static NoiseDay planned(Plan plan, DayAsked asked) {
    return day(Optional.of(plan), Map.of(), List.of(), EUROPE, asked);
  }

  static NoiseDay day(
      Optional<Plan> plan,
      Map<String, Worked<Amount>> measured,
      List<OwnedGear> gear,
      NoiseLaw law,
      DayAsked asked) {
    return NoiseDay.dayOf(plan, shop(gear), new NoiseLevels(usual(), measured), LIMITS, law, asked);
  }

  /** A plan whose ear protectors are judged by the levels of {@link #planned}. */
  static Plan judged(Plan plan, List<OwnedGear> gear) {
    return JobNoise.judge(plan, shop(gear), new NoiseLevels(usual(), Map.of()), LIMITS, EUROPE);
  }

  static Shop shop(List<OwnedGear> gear) {
    return new Shop("test", List.of(), List.of(), gear, List.of());
  }

  private static Map<String, MachineNoise> usual() {
    var usual = new HashMap<String, MachineNoise>();
    for (var kind :
        List.of("router-table", "hand-held-router", "table-saw", "track-saw", "mitre-saw")) {
      usual.put(kind, noise(kind, "95", "100"));
    }
    usual.put(NoiseLevels.EXTRACTOR, noise(NoiseLevels.EXTRACTOR, "80", "90"));
    return usual;
  }

  private static MachineNoise noise(String kind, String least, String most) {
    return new MachineNoise(kind, kind, dba(least), dba(most), Citation.OWN_CHOICE);
  }

  static Amount dba(String level) {
    return new Amount(new java.math.BigDecimal(level), "dBA");
  }

  private static Step step(String name, String at, boolean above) {
    return new Step(name, dba(at), above, "Something.", Citation.OWN_CHOICE);
  }

  private static Left left(String at) {
    return new Left(dba(at), Citation.OWN_CHOICE);
  }

  private static <T> Worked<T> given(String name, T value) {
    return Worked.given(name, value, Citation.OWN_CHOICE);
  }
}
