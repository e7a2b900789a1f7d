package org.proofcut.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.storage.StorageForTests.length;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.exposure.WeightUnit;
import org.proofcut.core.measure.Length;
import org.proofcut.core.storage.Ageing;
import org.proofcut.core.storage.Cabinet;
import org.proofcut.core.storage.Fitting;
import org.proofcut.core.storage.HardRule;
import org.proofcut.core.storage.Keeping;
import org.proofcut.core.storage.Mounting;
import org.proofcut.core.storage.Need;
import org.proofcut.core.storage.Person;
import org.proofcut.core.storage.Place;
import org.proofcut.core.storage.Put;
import org.proofcut.core.storage.Reach;
import org.proofcut.core.storage.Size;
import org.proofcut.core.storage.Soil;
import org.proofcut.core.storage.StorageCheck;
import org.proofcut.core.storage.StorageForTests;
import org.proofcut.core.storage.StorageLimits;
import org.proofcut.core.storage.StorageTask;
import org.proofcut.core.storage.Thing;
import org.proofcut.core.storage.ThingKind;
import org.proofcut.core.storage.Use;

/**
 * How gear is kept and reached, as content has it, against print.
 *
 * <p>NFPA 10, 6.1.3.8 (heights of extinguishers) and its monthly look and yearly service with 29
 * CFR 1910.157(e)(2) and (e)(3): found in secondary copies. 2010 ADA Standards, 308.2.1, 308.2.2
 * and 308.3.1 (reach): read in a stored copy. 29 CFR 1910.134(h)(2)(i), (h)(2)(ii) and (h)(3)(i)
 * (keeping and looking at respirators): found in secondary copies. ANSI/ISEA Z358.1 (eye wash:
 * within 10 s, run weekly, heads 33 to 45 in high in the edition of 2009): found in a secondary
 * copy. 29 CFR 1910.106(e)(9)(iii) (waste that burns: covered metal receptacle, emptied daily; the
 * covered metal from memory), 30 CFR 57.4104(b) and WAC 51-54A-3304 (oily rags: covered metal or
 * listed containers): read on the publishers' sites.
 */
class StoragePublishedTest {

  private static final Content CONTENT = Content.bundled();
  private static final Map<String, ThingKind> KINDS = CONTENT.storage();
  private static final StorageLimits LIMITS = CONTENT.limits(StorageLimits.class);

  /** Reaches farther than the standard lets anybody be asked to. */
  private static final Person SEATED =
      new Person("anybody", length(600), length(700), length(1050), length(2000), true);

  private static final Person STANDING =
      new Person("anybody", length(750), length(1050), length(1400), length(2100), false);

  /**
   * NFPA 10, 6.1.3.8: 40 lb, in whole grams 18 144; 5 ft (1.53 m), 3 ft 6 in (1.07 m), 4 in (102
   * mm).
   */
  @ParameterizedTest
  @CsvSource({
    "9000,  60 in,   500 mm, true",
    "9000,  60.1 in, 500 mm, false",
    "18144, 60 in,   500 mm, true",
    "18145, 60 in,   500 mm, false",
    "18145, 42 in,   500 mm, true",
    "18145, 42.1 in, 500 mm, false",
    "9000,  602 mm,  500 mm, true",
    "9000,  601 mm,  500 mm, false",
  })
  void extinguisher_hangsBetweenThePrintedHeights(
      int grams, String top, String high, boolean good) {
    var thing =
        thing("fire-extinguisher", new Size(length(200), Length.of(high), length(200)), grams);
    assertEquals(good, !rules(thing, onWallAt(top)).contains(HardRule.MOUNTING));
  }

  /** NFPA 10, 6.1.3.8: exactly 40 lb, as it is entered, is not over 40 lb. */
  @ParameterizedTest
  @CsvSource({"40, 60 in, true", "40, 60.1 in, false", "40.01, 60 in, false", "40.01, 42 in, true"})
  void extinguisher_of40Pounds_mayHangAsHighAsALighterOne(String pounds, String top, boolean good) {
    var weight = new Amount(new BigDecimal(pounds), "lb");
    int grams =
        WeightUnit.KILOGRAM
            .of(weight)
            .movePointRight(3)
            .setScale(0, RoundingMode.UP)
            .intValueExact();
    var thing = thing("fire-extinguisher", new Size(length(200), length(500), length(200)), grams);
    assertEquals(good, !rules(thing, onWallAt(top)).contains(HardRule.MOUNTING));
  }

  /** 29 CFR 1910.157(e)(2) and (e)(3), and NFPA 10: a look each month, service each year. */
  @Test
  void extinguisher_isLookedAtEachMonthAndServicedEachYear() {
    assertEquals(Period.ofMonths(1), age("fire-extinguisher", "look").every());
    assertEquals(Period.ofYears(1), age("fire-extinguisher", "service").every());
  }

  /** 2010 ADA Standards, 308.2.1 and 308.3.1. */
  @ParameterizedTest
  @CsvSource({"14.9 in, false", "15 in, true", "48 in, true", "48.1 in, false"})
  void seated_unobstructed(String height, boolean good) {
    assertEquals(good, reaches(height, "0 in"));
  }

  /** 2010 ADA Standards, 308.2.2. */
  @ParameterizedTest
  @CsvSource({
    "20 in,   48 in,   true",
    "20.1 in, 48 in,   false",
    "20.1 in, 44 in,   true",
    "20.1 in, 44.1 in, false",
    "25 in,   44 in,   true",
    "25.1 in, 44 in,   false",
    "25.1 in, 30 in,   false",
  })
  void seated_overSomething(String before, String height, boolean good) {
    assertEquals(good, reaches(height, before));
  }

  /** 29 CFR 1910.134(h)(2)(i): damage and bending, dust and chemicals, sun, extremes, damp. */
  @Test
  void respirators_areKeptSealedDryAndUndeformed_byLaw() {
    var respirators = respirators().toList();
    assertTrue(respirators.size() >= 6, respirators.toString());
    for (var kind : respirators) {
      for (var need : List.of(Need.SEALED, Need.DRY, Need.UNDEFORMED)) {
        var because = keeping(kind, need).because();
        assertEquals(Citation.Kind.LAW, because.kind(), kind.id() + " " + need);
        assertTrue(because.text().contains("1910.134"), because.text());
        assertEquals("(h)(2)(i)", because.place(), kind.id() + " " + need);
      }
      assertEquals(Soil.CLEAN, kind.soil(), kind.id());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"dust-filters", "gas-filters"})
  void filters_areKeptSealedAndDry(String id) {
    keeping(KINDS.get(id), Need.SEALED);
    keeping(KINDS.get(id), Need.DRY);
  }

  @ParameterizedTest
  @ValueSource(strings = {"dust-half-mask", "gas-half-mask", "disposable-masks"})
  void respirator_inAnOpenPlace_isRefused_andInABoxIsNot(String id) {
    var thing = thing(id, new Size(length(140), length(120), length(120)), 300);
    assertTrue(rules(thing, place("shelf-1")).contains(HardRule.SEALED));
    assertEquals(List.of(), rules(thing, place("box-1")));
  }

  /** 29 CFR 1910.134(h)(2)(ii) and (h)(3)(i): at hand, in a marked place, looked at each month. */
  @Test
  void emergencyRespirator_isInSightAndAtOnce_andLookedAtEachMonth() {
    keeping(KINDS.get("escape-hood"), Need.OPEN);
    keeping(KINDS.get("escape-hood"), Need.AT_ONCE);
    assertEquals(Period.ofMonths(1), age("escape-hood", "look").every());
  }

  /** ANSI/ISEA Z358.1: heads 33 to 45 in high, here all of the station. */
  @ParameterizedTest
  @CsvSource({
    "45 in,   300 mm, true",
    "45.1 in, 300 mm, false",
    "37 in,   4 in,   true",
    "36.9 in, 4 in,   false",
  })
  void eyeWashStation_hangsBetweenThePrintedHeights(String top, String high, boolean good) {
    var thing =
        thing("eye-wash-station", new Size(length(250), Length.of(high), length(200)), 2000);
    assertEquals(good, !rules(thing, onWallAt(top)).contains(HardRule.MOUNTING));
  }

  /** ANSI/ISEA Z358.1: run weekly. */
  @Test
  void eyeWashStation_isRunEachWeek() {
    assertEquals(Period.ofDays(7), age("eye-wash-station", "run").every());
  }

  /** NFPA 10, 6.1.3.8: not hidden; ANSI/ISEA Z358.1: within 10 s. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "fire-extinguisher",
        "fire-blanket",
        "eye-wash-bottle",
        "eye-wash-station",
        "first-aid-kit",
        "burn-dressing"
      })
  void emergencyThing_behindADoor_isRefused(String id) {
    var kind = KINDS.get(id);
    assertEquals(Use.EMERGENCY, kind.use());
    var thing = thing(id, kind.least(), kind.leastGrams());
    for (var behind : List.of("shelf-1", "rail-1", "drawer-1", "box-1", "door-1")) {
      assertTrue(rules(thing, place(behind)).contains(HardRule.OPEN), id + " " + behind);
    }
    for (var shut : List.of("drawer-1", "box-1")) {
      assertTrue(rules(thing, place(shut)).contains(HardRule.AT_ONCE), id + " " + shut);
    }
    assertFalse(rules(thing, onWallAt("1143 mm")).contains(HardRule.OPEN), id);
    assertFalse(rules(thing, onWallAt("1143 mm")).contains(HardRule.MOUNTING), id);
  }

  @Test
  void whateverIsForAnEmergency_isTakenAtOnce() {
    var kinds = KINDS.values().stream().filter(kind -> kind.use() == Use.EMERGENCY).toList();
    assertTrue(kinds.size() >= 7, kinds.toString());
    kinds.forEach(kind -> keeping(kind, Need.AT_ONCE));
  }

  /** 29 CFR 1910.106(e)(9)(iii), 30 CFR 57.4104(b), WAC 51-54A-3304: never with gear. */
  @ParameterizedTest
  @ValueSource(
      strings = {"oily-rags", "oily-waste", "liquids", "spray-cans", "fuel", "charging", "food"})
  void whatBurnsOrSpoils_hasNoPlaceAnywhere(String id) {
    var thing = thing(id, KINDS.get(id).least(), KINDS.get(id).leastGrams());
    var places = new ArrayList<>(task(thing, StorageForTests.cabinet()).places());
    assertEquals(
        Set.of(Place.Kind.values()), Set.copyOf(places.stream().map(Place::kind).toList()));
    for (var place : places) {
      assertTrue(rules(thing, place).contains(HardRule.ELSEWHERE), id + " " + place.name());
    }
  }

  @Test
  void oilyRags_goToACoveredMetalCanEmptiedDaily_byLaw() {
    var rags = keeping(KINDS.get("oily-rags"), Need.ELSEWHERE);
    assertEquals(Citation.Kind.LAW, rags.because().kind());
    for (var word : List.of("covered metal can", "daily", "outdoors")) {
      assertTrue(rags.why().contains(word), rags.why());
    }
    var can = keeping(KINDS.get("oily-waste"), Need.ELSEWHERE);
    assertEquals(Citation.Kind.LAW, can.because().kind());
    assertTrue(can.why().contains("emptied each day"), can.why());
  }

  /** 29 CFR 1910.134(d)(3)(iii)(B)(2), from memory: gas filters by a written schedule. */
  @ParameterizedTest
  @CsvSource({"gas-half-mask, filters", "full-mask, filters", "gas-filters, open"})
  void gasFilters_areChangedByTheSchedule(String id, String age) {
    var because = age(id, age).because();
    assertEquals(Citation.Kind.LAW, because.kind());
    assertTrue(because.place().startsWith("(d)(3)(iii)(B)(2)"), because.place());
    assertTrue(because.place().contains("the months are our own choice"), because.place());
  }

  /** What has no published source says so; what has one says where in it. */
  @Test
  void everyFigure_hasItsSource() {
    for (var kind : KINDS.values()) {
      var sources =
          Stream.of(
                  Stream.of(kind.because()),
                  kind.keeping().stream().map(Keeping::because),
                  kind.ages().stream().map(Ageing::because),
                  kind.mounting().stream().map(Mounting::because))
              .flatMap(all -> all)
              .toList();
      for (var because : sources) {
        boolean unpublished =
            because.equals(Citation.COMMON_PRACTICE) || because.equals(Citation.OWN_CHOICE);
        assertTrue(
            unpublished || (CONTENT.known(because).isPresent() && !because.place().isBlank()),
            kind.id() + ": " + because.text());
      }
    }
  }

  private static Stream<ThingKind> respirators() {
    return KINDS.values().stream()
        .filter(
            kind ->
                kind.id().equals("escape-hood")
                    || kind.gear()
                        .filter(gear -> gear.equals("dust-mask") || gear.equals("vapour-mask"))
                        .isPresent());
  }

  private static Keeping keeping(ThingKind kind, Need need) {
    return kind.keeping().stream()
        .filter(keeping -> keeping.need() == need)
        .findFirst()
        .orElseThrow(() -> new AssertionError(kind.id() + " does not ask for " + need));
  }

  private static Ageing age(String kind, String id) {
    return KINDS.get(kind).ages().stream()
        .filter(age -> age.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError(kind + " has no " + id));
  }

  private static boolean reaches(String height, String before) {
    return Reach.of(SEATED, Length.of(before), LIMITS)
        .filter(band -> band.contains(Length.of(height)))
        .isPresent();
  }

  private static Thing thing(String kind, Size size, int grams) {
    return new Thing(
        kind, kind, KINDS.get(kind), size, grams, false, KINDS.get(kind).use(), Set.of());
  }

  private static StorageTask task(Thing thing, Cabinet cabinet) {
    return new StorageTask(cabinet, List.of(thing), List.of(STANDING), Map.of(), Map.of(), LIMITS);
  }

  private static Place place(String id) {
    var cabinet = StorageForTests.cabinet();
    return StorageForTests.place(
        new StorageTask(cabinet, List.of(), List.of(STANDING), Map.of(), Map.of(), LIMITS), id);
  }

  /** A place on the wall whose hooks are so high above the floor, with room down to it. */
  private static Place onWallAt(String height) {
    var at = Length.of(height);
    var wall =
        new Fitting.Wall(
            "wall-2", "on the wall", at, length(800), at, length(400), 100_000, 500_000);
    var cabinet = StorageForTests.cabinet().with(fittings -> List.of(wall));
    return StorageForTests.place(
        new StorageTask(cabinet, List.of(), List.of(STANDING), Map.of(), Map.of(), LIMITS),
        "wall-2");
  }

  /** The rules that a thing breaks at the left of a place, with room to its side. */
  private static List<HardRule> rules(Thing thing, Place place) {
    var left = place.across().least().plus(LIMITS.untouched().value());
    var plan = StorageForTests.plan(new Put(thing, place, left));
    return StorageCheck.faults(task(thing, StorageForTests.cabinet()), plan).stream()
        .map(StorageCheck.Fault::rule)
        .toList();
  }
}
