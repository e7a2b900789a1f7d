package org.proofcut.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.storage.StorageForTests.length;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.storage.Fitting;
import org.proofcut.core.storage.Need;
import org.proofcut.core.storage.Place;
import org.proofcut.core.storage.Put;
import org.proofcut.core.storage.StorageCheck;
import org.proofcut.core.storage.StorageForTests;
import org.proofcut.core.storage.StorageLimits;
import org.proofcut.core.storage.StorageTask;
import org.proofcut.core.storage.Thing;
import org.proofcut.core.storage.ThingKind;

/** Kinds of kept things: what holds for all of ours, and a shop's own laid over them. */
class StorageContentTest {

  private static final String KINDS = "storage/kinds.yaml";
  private static final int LONGEST_WHY = 100;
  private static final int LONGEST_WHAT = 90;

  private static final Map<String, ThingKind> OURS = Content.bundled().storage();

  @Test
  void kinds_thirtyAtLeast_inTheOrderOfTheFile() {
    assertTrue(OURS.size() >= 30, OURS.keySet().toString());
    assertEquals("ear-muffs", OURS.keySet().iterator().next());
    assertEquals(OURS.size(), OURS.values().stream().map(ThingKind::name).distinct().count());
  }

  @Test
  void words_areShort_andSentencesEnd() {
    for (var kind : OURS.values()) {
      for (var keeping : kind.keeping()) {
        var why = keeping.why();
        assertTrue(why.length() <= LONGEST_WHY && why.endsWith("."), kind.id() + ": " + why);
      }
      for (var age : kind.ages()) {
        var what = age.what();
        assertTrue(what.length() <= LONGEST_WHAT && !what.endsWith("."), kind.id() + ": " + what);
      }
    }
  }

  /** A hood goes over glasses and muffs; all else is put on as its kind of gear is. */
  @Test
  void dressing_isTheOrderOfTheGear() {
    var gear = Content.bundled().wording().gear();
    for (var kind : OURS.values()) {
      kind.gear()
          .filter(id -> !kind.id().equals("powered-hood"))
          .ifPresent(
              id -> assertEquals(Optional.of(gear.get(id).order()), kind.dressing(), kind.id()));
    }
  }

  /** With its own box where it needs one, in a cabinet with a wall beside it. */
  @Test
  void kind_thatIsKept_hasAPlaceSomewhere() {
    var wall =
        new Fitting.Wall(
            "low", "low", length(1140), length(900), length(700), length(330), 60_000, 200_000);
    var cabinet =
        StorageForTests.cabinet()
            .with(
                fittings -> {
                  var more = new ArrayList<Fitting>(fittings);
                  more.add(wall);
                  return more;
                });
    for (var kind : OURS.values()) {
      var thing =
          new Thing(
              kind.id(),
              kind.name(),
              kind,
              kind.least(),
              kind.leastGrams(),
              kind.keeping().stream().anyMatch(keeping -> keeping.need() == Need.SEALED),
              kind.use(),
              Set.of());
      var task =
          new StorageTask(
              cabinet,
              List.of(thing),
              List.of(StorageForTests.STANDING),
              Map.of(),
              Map.of(),
              Content.bundled().limits(StorageLimits.class));
      var suits = task.places().stream().filter(place -> suits(task, thing, place)).toList();
      assertEquals(thing.needs(Need.ELSEWHERE), suits.isEmpty(), kind.id());
    }
  }

  private static boolean suits(StorageTask task, Thing thing, Place place) {
    var left = place.across().least().plus(task.limits().untouched().value());
    return StorageCheck.faults(task, StorageForTests.plan(new Put(thing, place, left))).isEmpty();
  }

  @Nested
  class AShopsOwn {

    private static final String TORCH =
        """
        torch:
          name: head lamp
          least: {wide: 60 mm, high: 40 mm, deep: 50 mm}
          most: {wide: 90 mm, high: 90 mm, deep: 90 mm}
          least-grams: 40
          most-grams: 200
          postures: [hanging]
          keeping:
            - need: at-once
              why: Found in the dark.
              because: {source: common-practice}
          soil: either
          use: emergency
          ages:
            - id: light
              what: Switch it on
              every: 10 days
              ends: false
              because: {source: own-choice}
          because: {source: own-choice}
        """;

    @Test
    void entry_standsInsteadOfOurs_theOthersStay_andEachSourceSaysSo() {
      var laid = new LaidOver().own(KINDS, TORCH);
      var storage = laid.content().storage();

      assertEquals(OURS.keySet(), storage.keySet());
      assertEquals(OURS.get("ear-muffs"), storage.get("ear-muffs"));
      var torch = storage.get("torch");
      assertEquals("head lamp", torch.name());
      var own = Optional.of("this shop's own instead of ours");
      assertEquals(own, torch.because().own());
      assertEquals(own, torch.keeping().get(0).because().own());
      assertEquals(own, torch.ages().get(0).because().own());
      assertEquals(List.of("head lamp (torch): this shop's own instead of ours"), laid.changes());
    }

    @Test
    void faultyEntry_isToldWhereItStands() {
      var worn = TORCH.replace("  least: ", "  gear: hat\n  least: ");
      var told = new LaidOver().own(KINDS, worn).problems().stream().map(Problem::where).toList();
      assertEquals(List.of(KINDS + ":3:9", KINDS + ":3:9"), told);
    }

    /** A day that is marked on the piece falls due by that id. */
    @ParameterizedTest
    @ValueSource(strings = {"marked", "ends", "failed"})
    void ageing_underAnIdThatIsTaken_isRefused(String id) {
      var problems = new LaidOver().own(KINDS, TORCH.replace("id: light", "id: " + id)).problems();
      assertEquals(List.of(KINDS + ":15:5"), problems.stream().map(Problem::where).toList());
    }

    @Test
    void kindOfGear_thatNothingKeeps_isToldWhereItStands() {
      var text = LaidOver.text("shop/gear.yaml");
      var hat = text.substring(text.indexOf("face-shield:"), text.indexOf("safety-shoes:"));
      var problems =
          new LaidOver().own("shop/gear.yaml", hat.replace("face-shield:", "hat:")).problems();
      assertEquals(List.of("shop/gear.yaml:1:1"), problems.stream().map(Problem::where).toList());
      assertEquals("nothing says how gear of the kind \"hat\" is kept", problems.get(0).what());
    }

    /** What it says is wrong lies in ours, as the shop left it alone there. */
    @Test
    void faultThatItCausesInOurs_isToldWithThatLine() {
      var dressing = entry("burn-dressing").replace("  together: first aid\n", "");
      var bottle = entry("eye-wash-bottle").replace("  together: first aid\n", "");
      var problems = new LaidOver().own(KINDS, dressing + bottle).problems();
      assertEquals(1, problems.size(), problems.toString());
      var ours = LaidOver.text(KINDS).lines().toList();
      int line = ours.indexOf("first-aid-kit:");
      while (!ours.get(line).startsWith("  together:")) {
        line++;
      }
      assertEquals("ours: %s:%d:13".formatted(KINDS, line + 1), problems.get(0).where());
    }

    /**
     * Rags among the gear, a mask in the dust: law asks otherwise, whatever a shop lays over it.
     */
    @Test
    void needThatRestsOnLaw_takenOut_isRefused() {
      var rags = entry("oily-rags").replace("need: elsewhere", "need: dry");
      var problems = new LaidOver().own(KINDS, rags).problems();
      assertEquals(1, problems.size(), problems.toString());
      assertEquals(KINDS + ":9:5", problems.get(0).where());
      assertEquals(
          "\"oily-rags\" no longer has to be kept somewhere else, as law asks: "
              + OURS.get("oily-rags").keeping().get(0).because().text(),
          problems.get(0).what());

      var open = entry("gas-half-mask").replaceAll("(?s)  keeping:.*?  soil:", "  soil:");
      assertEquals(3, new LaidOver().own(KINDS, open).problems().size());
    }

    /** What is only practice is a shop's to change, and so are the words of what law asks. */
    @Test
    void needThatRestsOnPractice_takenOut_andOneByLawInOtherWords_areTaken() {
      var light = entry("ear-muffs").replace("need: undeformed", "need: upright");
      light = light.replace("postures: [hanging", "postures: [standing");
      var rags = entry("oily-rags").replaceFirst("why: .*", "why: Behind the shop, in the can.");
      var storage = new LaidOver().own(KINDS, light + rags).content().storage();
      assertEquals(Need.UPRIGHT, storage.get("ear-muffs").keeping().get(0).need());
      assertEquals("Behind the shop, in the can.", storage.get("oily-rags").keeping().get(0).why());
    }

    @Test
    void limit_farFromOurs_isRefused() {
      var factor =
          """
          hook-factor:
            name: how many times a thing's weight its hook carries
            value: 51
            because: {source: own-choice}
          """;
      var path = "storage/limits/load.yaml";
      assertEquals(
          List.of(path + ":3:10"),
          new LaidOver().own(path, factor).problems().stream().map(Problem::where).toList());
      assertEquals(
          50,
          new LaidOver()
              .own(path, factor.replace("51", "50"))
              .content()
              .limits(StorageLimits.class)
              .hookFactor()
              .value());
    }

    private static String entry(String id) {
      var text = LaidOver.text(KINDS);
      var from = text.indexOf(id + ":\n");
      var last = text.indexOf("\n  because: ", from);
      return text.substring(from, text.indexOf('\n', last + 1) + 1);
    }
  }
}
