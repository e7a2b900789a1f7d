package org.proofcut.core.noise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.proofcut.core.checklist.Checklist;
import org.proofcut.core.checklist.Item;
import org.proofcut.core.exposure.DayAsked;
import org.proofcut.core.plan.OperationSheet;
import org.proofcut.core.plan.Plan;
import org.proofcut.core.plan.PlansForTests;
import org.proofcut.core.shop.GearKind;
import org.proofcut.core.shop.GearLife;
import org.proofcut.core.shop.GearOffer;
import org.proofcut.core.shop.OwnedGear;
import org.proofcut.core.shop.OwnedGear.Rated;
import org.proofcut.core.shop.OwnedGear.Rated.Scale;

/** Every machine at 100 dBA, the extractor at 90: 100.4 dBA. */
class JobNoiseTest {

  private static final GearKind MUFFS =
      new GearKind(
          "ear-protection",
          "ear muffs",
          true,
          3,
          "M003",
          Optional.empty(),
          Optional.empty(),
          new GearKind.Prompt("Are they on?", "On"),
          new GearKind.Prompt("Are they off?", "Off"));

  private static final OwnedGear WEAK = snr("weak", 8);
  private static final OwnedGear GOOD = snr("good", 32);

  private static OwnedGear snr(String id, int decibels) {
    return new OwnedGear(
        id,
        MUFFS.id(),
        id,
        "",
        "peg " + id,
        Optional.empty(),
        Optional.of(new Rated(Scale.SNR, decibels)),
        Optional.empty(),
        GearLife.UNDATED,
        false);
  }

  /** The test plan, every sheet of which asks for ear muffs. */
  private static Plan asking(List<OwnedGear> owned) {
    var plan = PlansForTests.plan();
    var gear =
        Item.Gear.toPutOn(MUFFS, GearOffer.of(MUFFS, List.of(), owned, false), Optional.empty());
    return new Plan(
        plan.designed(),
        plan.finished(),
        plan.sheets().stream()
            .map(
                sheet ->
                    new OperationSheet(
                        sheet.number(),
                        sheet.operation(),
                        sheet.findings(),
                        new Checklist(List.of(gear), Optional.empty()),
                        sheet.proofPieces(),
                        sheet.marks()))
            .toList(),
        plan.problems());
  }

  private static Plan judged(List<OwnedGear> owned) {
    return DaysForTests.judged(asking(owned), owned);
  }

  private static List<Item.Gear> muffs(Plan plan) {
    return plan.sheets().stream()
        .map(sheet -> (Item.Gear) sheet.checklist().items().get(0))
        .toList();
  }

  @Test
  void tooWeak_isNotOffered_andSaysWhatItLeaves() {
    var plan = judged(List.of(WEAK));
    assertTrue(plan.sheets().size() > 10, "few sheets");
    for (var gear : muffs(plan)) {
      assertFalse(gear.atHand());
      var why = gear.offer().orElseThrow().pieces().get(0).unfit().orElseThrow();
      assertTrue(why.startsWith("SNR 8 leaves "), why);
      assertTrue(why.endsWith("for all of this job in one day; 87 dBA may be left"), why);
    }
  }

  @Test
  void ofTwo_theOneThatIsEnoughIsOffered_whateverTheOrder() {
    for (var owned : List.of(List.of(WEAK, GOOD), List.of(GOOD, WEAK))) {
      for (var gear : muffs(judged(owned))) {
        assertEquals("good", gear.name());
        assertEquals("peg good", gear.place());
        assertTrue(gear.atHand());
      }
    }
  }

  /** What is asked for is the least rating that the day's page calls enough. */
  @Test
  void wanted_namesTheRatingThatTheDayNeeds() {
    var plan = asking(List.of(GOOD));
    var day = DaysForTests.planned(plan, DayAsked.AS_PLANNED);
    var least = day.needed().get(0).least().orElseThrow();
    var wanted = muffs(judged(List.of(GOOD))).get(0).wanted();
    assertTrue(wanted.startsWith("ear muffs, " + least.text()), wanted);
  }

  /** Of every rating: offered if and only if what it leaves by the day's page may be left. */
  @Test
  void everyRating_isOfferedWhereTheLawLetsSoMuchBeLeft() {
    int offered = 0;
    int refused = 0;
    for (int decibels = 1; decibels <= 39; decibels++) {
      var owned = List.of(snr("one", decibels));
      var day =
          DaysForTests.day(
              Optional.of(asking(owned)),
              Map.of(),
              owned,
              DaysForTests.EUROPE,
              DayAsked.AS_PLANNED);
      var left = day.protections().get(0).asWorn().orElseThrow().value().value();
      boolean may = left.compareTo(BigDecimal.valueOf(87)) <= 0;
      assertEquals(may, muffs(judged(owned)).get(0).atHand(), "SNR " + decibels);
      offered += may ? 1 : 0;
      refused += may ? 0 : 1;
    }
    assertTrue(offered > 10 && refused > 5, offered + " offered, " + refused + " refused");
  }

  @Test
  void withoutARating_isLeftToTheRules() {
    var plain = new OwnedGear("plain", MUFFS.id(), "plain", "", "");
    assertEquals(
        Optional.empty(),
        muffs(judged(List.of(plain))).get(0).offer().orElseThrow().pieces().get(0).unfit());
  }

  @Test
  void otherGear_andTheOrderOfTheSheets_stayAsTheyAre() {
    var plan = PlansForTests.plan();
    assertEquals(plan, DaysForTests.judged(plan, List.of(GOOD)));
  }

  @Test
  void levelsUnknown_nothingIsJudged() {
    var plan = asking(List.of(WEAK));
    assertEquals(
        plan,
        JobNoise.judge(
            plan,
            DaysForTests.shop(List.of(WEAK)),
            new NoiseLevels(Map.of(), Map.of()),
            DaysForTests.LIMITS,
            DaysForTests.EUROPE));
  }
}
