package org.proofcut.core.noise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.noise.DaysForTests.EUROPE;
import static org.proofcut.core.noise.DaysForTests.US;
import static org.proofcut.core.noise.DaysForTests.planned;
import static org.proofcut.core.noise.DaysForTests.typed;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.DayAsked;
import org.proofcut.core.exposure.NoiseRule;
import org.proofcut.core.noise.Protection.Verdict;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.plan.OperationSheet;
import org.proofcut.core.plan.Plan;
import org.proofcut.core.plan.PlansForTests;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.shop.GearLife;
import org.proofcut.core.shop.OwnedGear;

class NoiseDayTest {

  private static final Plan PLAN = PlansForTests.plan();
  private static final NoiseDay DAY = planned(PLAN, DayAsked.AS_PLANNED);

  @Nested
  class Sheets {

    @Test
    void parts_areAllSheets_inTheirOrder() {
      assertEquals(
          PLAN.sheets().stream().map(OperationSheet::id).toList(),
          DAY.parts().stream().map(DayPart::id).toList());
      assertTrue(PLAN.sheets().size() > 10, "few sheets");
    }

    /** Recomputed with doubles, from the plan's own numbers. */
    @Test
    void time_isThatOfEveryRun_withItsProofCuts() {
      int proven = 0;
      for (var sheet : PLAN.sheets()) {
        var part = part(DAY, sheet.number());
        var setup = sheet.operation().setup();
        if (setup.isEmpty()) {
          assertEquals(Optional.empty(), part.time());
          continue;
        }
        var parting = sheet.operation().asked().orElseThrow();
        boolean across = parting instanceof CutAsked.Parting cut && !cut.along();
        var longest =
            across ? parting.work().acrossGuide().most() : parting.work().alongGuide().most();
        int passes = setup.get().passes().size();
        double seconds =
            sheet.operation().parts().size()
                * passes
                * (Math.ceil(longest.inMillimetres().doubleValue() / 50 - 1e-9) + 20);
        if (sheet.needsProof()) {
          var scrap =
              sheet.proofPieces().stream()
                  .mapToDouble(piece -> piece.alongGuide().inMillimetres().doubleValue())
                  .max()
                  .orElseThrow();
          seconds += 3 * passes * (Math.ceil(scrap / 50 - 1e-9) + 20);
          proven++;
        }
        assertEquals(seconds, part.time().orElseThrow().value().toSeconds(), 0.5, sheet.id());
      }
      assertTrue(proven > 3, "few proofs");
    }

    @Test
    void time_carriesItsWorking() {
      var lines =
          DAY.parts().get(0).time().orElseThrow().lines().stream().map(Worked::name).toList();
      assertTrue(lines.contains("feed"), lines::toString);
      assertTrue(lines.contains("time of one run"), lines::toString);
    }

    @Test
    void byHand_nothingCounts() {
      var part = DAY.parts().get(PLAN.sheets().size() - 1);
      assertEquals(
          OperationKind.FASTEN, PLAN.sheets().get(PLAN.sheets().size() - 1).operation().kind());
      assertEquals(Optional.empty(), part.stay());
      assertFalse(part.isUnknown());
      assertEquals(0, DAY.share(part).signum());
    }

    @Test
    void leftOut_bringsNothing_andTheOthersTheSame() {
      var without = planned(PLAN, asked(Set.of(1), Map.of()));
      assertFalse(part(without, 1).done());
      assertEquals(Optional.empty(), part(without, 1).stay());
      assertTrue(dose(without).compareTo(dose(DAY)) < 0);
      assertEquals(part(DAY, 2), part(without, 2));
    }

    @Test
    void minutesOfTheMaker_countInPlaceOfThePlans() {
      var time = Worked.entered("time", Duration.ofMinutes(90));
      var day = planned(PLAN, asked(Set.of(), Map.of(2, time)));
      assertEquals(time, part(day, 2).time().orElseThrow());
      assertEquals(part(DAY, 2).planned(), part(day, 2).planned());
      var none = Worked.entered("time", Duration.ZERO);
      assertEquals(
          Optional.empty(), part(planned(PLAN, asked(Set.of(), Map.of(2, none))), 2).stay());
    }

    @Test
    void minutesForWorkByHand_countNothing() {
      int last = PLAN.sheets().size();
      var time = Worked.entered("time", Duration.ofMinutes(90));
      var day = planned(PLAN, asked(Set.of(), Map.of(last, time)));
      assertEquals(Optional.empty(), part(day, last).stay());
      assertEquals(dose(DAY), dose(day));
    }

    @Test
    void shares_comeToTheWhole() {
      var sum = DAY.parts().stream().map(DAY::share).reduce(BigDecimal.ZERO, BigDecimal::add);
      assertTrue(sum.subtract(BigDecimal.valueOf(100)).abs().doubleValue() < 1, sum::toString);
      var first = DAY.loudestFirst().get(0);
      DAY.parts().forEach(part -> assertTrue(DAY.share(part).compareTo(DAY.share(first)) <= 0));
    }
  }

  @Nested
  class Levels {

    @Test
    void meter_countsBeforeTheUsual() {
      var machine = PLAN.sheets().get(0).operation().setup().orElseThrow().machine();
      var level = Worked.measured("by your meter", DaysForTests.dba("88.5"));
      var day =
          DaysForTests.day(
              Optional.of(PLAN),
              Map.of(machine.id(), level),
              List.of(),
              EUROPE,
              DayAsked.AS_PLANNED);
      assertEquals(Optional.of(level), part(day, 1).level());
      assertEquals(NoiseLevels.From.METER, part(day, 1).from());
    }

    @Test
    void usual_isTheLoudEnd_withTheExtractorWhereOneIsConnected() {
      var byExtraction =
          PLAN.sheets().stream()
              .filter(sheet -> sheet.operation().setup().isPresent())
              .collect(
                  Collectors.groupingBy(
                      sheet -> sheet.operation().setup().orElseThrow().machine().hasExtraction()));
      for (var entry : byExtraction.entrySet()) {
        for (var sheet : entry.getValue()) {
          // 100 and 90 together are 100.41, up to a tenth.
          assertEquals(
              DaysForTests.dba(entry.getKey() ? "100.5" : "100"),
              part(DAY, sheet.number()).level().orElseThrow().value());
        }
      }
      assertTrue(byExtraction.containsKey(true));
    }

    @Test
    void unknownLevel_isTold_andCountsNothing() {
      var day =
          NoiseDay.dayOf(
              Optional.of(PLAN),
              new org.proofcut.core.shop.Shop("s", List.of(), List.of(), List.of(), List.of()),
              new NoiseLevels(Map.of(), Map.of()),
              DaysForTests.LIMITS,
              EUROPE,
              DayAsked.AS_PLANNED);
      assertTrue(part(day, 1).isUnknown());
      assertEquals(Optional.empty(), day.dailyLevel());
      assertEquals(List.of(), day.steps());
    }
  }

  @Nested
  class Protectors {

    private static final String[] LOUD = {"other-1-level", "100", "other-1-minutes", "480"};

    @Test
    void ratingThatCantBeRead_isTold_andGetsNoFigure() {
      var left = typed(US, gear("EN 352"), LOUD).protections().get(0);
      assertEquals(Verdict.NOT_READ, left.verdict());
      assertEquals(Optional.empty(), left.asWorn());
      assertEquals("EN 352", left.marked());
    }

    @Test
    void figureThatWasEntered_countsBeforeTheNoteBesideIt() {
      var left = typed(US, entered(false), LOUD).protections();
      assertEquals(List.of("SNR 30"), left.stream().map(Protection::marked).toList());
    }

    @Test
    void protectorOutOfUse_isNotReckonedWith() {
      assertEquals(List.of(), typed(US, entered(true), LOUD).protections());
    }

    private static List<OwnedGear> entered(boolean outOfUse) {
      return List.of(
          new OwnedGear(
              "g",
              "ear-protection",
              "muffs",
              "NRR 25",
              "",
              Optional.empty(),
              Optional.of(new OwnedGear.Rated(OwnedGear.Rated.Scale.SNR, 30)),
              Optional.empty(),
              GearLife.UNDATED,
              outOfUse));
    }

    @Test
    void otherGear_isNoHearingProtector() {
      var shoes = List.of(new OwnedGear("s", "safety-shoes", "shoes", "NRR 25", ""));
      assertEquals(List.of(), typed(US, shoes, LOUD).protections());
    }

    @Test
    void twoRatings_areJudgedEach() {
      var left = typed(EUROPE, gear("NRR 25, SNR 30"), LOUD).protections();
      assertEquals(List.of("NRR 25", "SNR 30"), left.stream().map(Protection::marked).toList());
      // 100 + 7 − 30, and 4 more as worn.
      assertEquals(DaysForTests.dba("77.00"), left.get(1).asRated().orElseThrow().value());
      assertEquals(DaysForTests.dba("81.00"), left.get(1).asWorn().orElseThrow().value());
      assertEquals(Verdict.ENOUGH_BY_THE_RULE, left.get(1).verdict());
    }

    @Test
    void smallRating_makesNothingLouder() {
      for (var marked : List.of("NRR 1", "SNR 1", "NRR 5")) {
        for (var difference : List.of("", "20", "-10")) {
          var left =
              typed(
                      US,
                      gear(marked),
                      "other-1-level",
                      "100",
                      "other-1-minutes",
                      "480",
                      "c-over-a",
                      difference)
                  .protections()
                  .get(0);
          var most = new BigDecimal("100.00");
          assertTrue(left.asRated().orElseThrow().value().value().compareTo(most) <= 0);
          assertTrue(left.asWorn().orElseThrow().value().value().compareTo(most) <= 0);
        }
      }
    }

    @Test
    void needed_isTheLeastThatIsEnough_andOneLessIsNot() {
      var day = typed(US, LOUD);
      for (var needed : day.needed()) {
        var least = needed.least();
        if (least.isPresent()) {
          assertEquals(Verdict.ENOUGH, verdict(least.get().text()));
          int less = least.get().decibels() - 1;
          assertFalse(verdict(least.get().kind() + " " + less) == Verdict.ENOUGH);
        }
      }
      // 100 − ½ (NRR − 7) ≤ 85 would want 37, which none has; 100 + 7 − SNR + 4 ≤ 85 wants 26.
      assertEquals(Optional.empty(), day.needed().get(0).least());
      assertEquals("SNR 26", day.needed().get(1).least().orElseThrow().text());
      assertEquals(List.of(), typed(US, "other-1-level", "80", "other-1-minutes", "60").needed());
    }

    private static Verdict verdict(String marked) {
      return typed(US, gear(marked), LOUD).protections().get(0).verdict();
    }

    @Test
    void second_ofSnr_getsNoFigure() {
      var left =
          typed(
                  US,
                  gear("SNR 30"),
                  "other-1-level",
                  "100",
                  "other-1-minutes",
                  "480",
                  "second",
                  "SNR 20")
              .protections();
      assertEquals(Verdict.NO_FIGURE, left.get(1).verdict());
    }

    @Test
    void tooMuch_isToldWhereTheLoudestIsQuietUnderIt() {
      var quiet = typed(US, gear("SNR 32"), "other-1-level", "95", "other-1-minutes", "480");
      assertTrue(quiet.protections().get(0).tooMuch());
      assertFalse(typed(US, gear("SNR 30"), LOUD).protections().get(0).tooMuch());
    }

    @Test
    void dayWithoutNoise_hasNothingToKeepOut() {
      var left = typed(US, gear("SNR 32")).protections().get(0);
      assertEquals(Verdict.QUIET_DAY, left.verdict());
    }

    private static List<OwnedGear> gear(String rating) {
      return List.of(new OwnedGear("g", "ear-protection", "muffs", rating, ""));
    }
  }

  private static DayAsked asked(Set<Integer> leftOut, Map<Integer, Worked<Duration>> times) {
    return new DayAsked(
        leftOut, times, List.of(), Optional.empty(), Optional.empty(), Optional.empty());
  }

  private static DayPart part(NoiseDay day, int sheet) {
    return day.parts().get(sheet - 1);
  }

  private static BigDecimal dose(NoiseDay day) {
    return day.dose(NoiseRule.RECOMMENDED).dose().value().value();
  }
}
