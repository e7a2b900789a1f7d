package org.proofcut.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.proofcut.core.exposure.Wood;
import org.proofcut.core.weight.Densities;

/** What a shop may say of noise, dust and weight for itself, and what it can't take away. */
class OwnExposureTest {

  private static final String LAWS = "exposure/laws.yaml";
  private static final String AIR = "exposure/air-limits.yaml";
  private static final String MASKS = "exposure/masks.yaml";
  private static final String SPECIES = "stock/species.yaml";
  private static final String LEVELS = "exposure/levels.yaml";
  private static final String EXTRACTION = "exposure/limits/extraction/extraction.yaml";
  private static final String DENSITIES = "weight/limits/densities.yaml";
  private static final String BRITAIN = "sources/united-kingdom.yaml";

  private static final String LOUD =
      """
      us-noise:
        title: what this shop thinks of noise
        regions: [us]
        measure: five-decibel-dose
        steps:
          - {name: limit, at: 100 dBA, above: true, asks: Something., because: {source: own-choice}}
        may-be-left: {at: 100 dBA, because: {source: own-choice}}
        better: {at: 95 dBA, because: {source: own-choice}}
      """;

  private static final String HARDWOOD =
      """
      gb-hardwood:
        name: hardwood dust
        of: hardwood-dust
        most: 30 mg/m3
        over: eight-hours
        fraction: inhalable
        because: {source: eh40, place: "wood dust, hardwood"}
      """;

  private static final String OLIVE =
      """
      olive:
        name: olive
        group: hardwood
        finer: false
        effects:
          - {does: irritant, on: [skin], because: {source: common-practice}}
      """;

  @Test
  void ownWood_isAdded_andTakesNoneOfOursAway() {
    var laid = new LaidOver().own(SPECIES, OLIVE);
    var woods = laid.content().dust().woods();
    assertTrue(woods.keySet().containsAll(Content.bundled().dust().woods().keySet()));
    assertEquals(
        "this shop's own",
        woods.get("olive").effects().get(0).because().own().orElse("taken for ours"));
    assertEquals(List.of("olive (olive): this shop's own"), laid.changes());
  }

  @Test
  void ownLevel_isTold_andTheOthersStayOurs() {
    var levels =
        new LaidOver()
            .own(
                LEVELS,
                """
                planer:
                  name: planer
                  least: 90 dBA
                  most: 95 dBA
                  because: {source: own-choice}
                """)
            .content()
            .noise()
            .levels();
    assertEquals("95 dBA", levels.get("planer").most().text());
    assertTrue(levels.get("planer").because().own().isPresent());
    assertEquals(Content.bundled().noise().levels().get("jointer"), levels.get("jointer"));
  }

  @Test
  void looserLawOfNoise_leavesOursInForce_andSaysSo() {
    var laid = new LaidOver().own(LAWS, LOUD);
    var noise = laid.content().noise();
    for (var region : List.of("us", "us-washington")) {
      assertEquals(Content.bundled().noise().lawIn(region), noise.lawIn(region));
    }
    assertTrue(
        laid.changes().contains("us-noise rests on law: ours stays in force beside this shop's"),
        laid.changes().toString());
  }

  @Test
  void stricterLawOfNoise_holds() {
    var stricter =
        LaidOver.text(LAWS).replaceFirst("(?s)better:\n    at: 85", "better:\n    at: 80");
    var noise = new LaidOver().own(LAWS, stricter).content().noise();
    assertEquals("80 dBA", noise.lawIn("us").better().at().text());
  }

  @Test
  void adviceWhereNoLawIsKnown_mayBeChanged() {
    var advice =
        LOUD.replace("us-noise", "advice")
            .replace("[us]", "[elsewhere]")
            .replace("five-decibel", "three-decibel");
    var noise = new LaidOver().own(LAWS, advice).content().noise();
    assertEquals("100 dBA", noise.lawIn("elsewhere").mayBeLeft().at().text());
  }

  @Test
  void regionMovedElsewhere_keepsItsLawOfNoise() {
    var noise =
        new LaidOver()
            .own("regions.yaml", "us-washington:\n  name: Washington State\n  within: gb\n")
            .content()
            .noise();
    assertEquals(Content.bundled().noise().lawIn("us-washington"), noise.lawIn("us-washington"));
  }

  @Test
  void newRegionWithinOneOfOurs_isUnderItsLaw() {
    var laid =
        new LaidOver()
            .own(LAWS, LOUD)
            .own("regions.yaml", "my-town:\n  name: My town\n  within: us\n");
    assertEquals(Content.bundled().noise().lawIn("us"), laid.content().noise().lawIn("my-town"));
  }

  @Test
  void regionThatIsNoMore_isHeldToTheStrictest() {
    assertEquals("advice", Content.bundled().noise().lawIn("the-moon").id());
  }

  @TestFactory
  Stream<DynamicTest> lawOfDust_isNotLoosened() {
    return Stream.of(
            new LaidOver().own(AIR, HARDWOOD),
            new LaidOver().own(AIR, HARDWOOD.replace("of: hardwood-dust", "of: formaldehyde")),
            new LaidOver()
                .own(BRITAIN, LaidOver.text(BRITAIN).replace("kind: law", "kind: handbook"))
                .own(AIR, HARDWOOD),
            new LaidOver()
                .own(
                    BRITAIN,
                    LaidOver.text(BRITAIN)
                        .replaceAll("jurisdiction: \\[gb\\]", "jurisdiction: [elsewhere]")))
        .map(
            laid ->
                DynamicTest.dynamicTest(
                    laid.changes().toString(),
                    () -> {
                      var dust = laid.content().dust();
                      var oak = List.of(wood(laid.content(), "oak"));
                      assertEquals(
                          "3 mg/m³", dust.law(oak, "gb").orElseThrow().most().value().text());
                      assertEquals(
                          "3 mg/m³", dust.heldTo(oak, "gb").orElseThrow().most().value().text());
                    }));
  }

  @Test
  void stricterLimitOfDust_holds() {
    var content = new LaidOver().own(AIR, HARDWOOD.replace("30 mg", "1 mg")).content();
    var held = content.dust().heldTo(List.of(wood(content, "oak")), "gb").orElseThrow();
    assertEquals("1 mg/m³", held.most().value().text());
  }

  @TestFactory
  Stream<DynamicTest> figuresThatMeanNothing_areRefusedWhereTheyStand() {
    return Stream.of(
        refused(AIR, HARDWOOD.replace("30 mg/m3", "0 mg/m3"), "more than nothing"),
        refused(AIR, HARDWOOD.replace("30 mg/m3", "30 kg"), "mg/m³"),
        refused(AIR, HARDWOOD.replace("30 mg/m3", "30 ppm"), "mg/m³"),
        refused(
            MASKS,
            "paper:\n  name: paper\n  factor: 0\n  seals: true\n  because: {source: own-choice}\n",
            "factor below 1"),
        refused(LAWS, LOUD.replace("at: 95 dBA", "at: 95 kg"), "dBA"),
        refused(LAWS, LOUD.replace("at: 100 dBA", "at: 100 ppm"), "dBA"),
        refused(EXTRACTION, velocity("0 m/s"), "more than 0 m/s"),
        refused(EXTRACTION, velocity("0.9 m/s"), "too far from ours"),
        refused(EXTRACTION, velocity("20 kg"), "m/s"),
        refused(DENSITIES, plywood(1, 2), "too far from ours"),
        refused(DENSITIES, plywood(420, 8000), "too far from ours"),
        refused(SPECIES, OLIVE + gravity("1E999999999"), "a number, such as 0.63"),
        refused(SPECIES, OLIVE + gravity("-0.6"), "a number, such as 0.63"));
  }

  @Test
  void tenTimesOurs_isStillNear() {
    new LaidOver().own(EXTRACTION, velocity("1 m/s")).content();
    var densities = new LaidOver().own(DENSITIES, plywood(42, 7500)).content();
    assertEquals(
        42, densities.limits(Densities.class).plywood().value().leastKilogramsPerCubicMetre());
  }

  private static DynamicTest refused(String path, String text, String says) {
    return DynamicTest.dynamicTest(
        path + ": " + says,
        () -> {
          var problems = new LaidOver().own(path, text).problems();
          // A record that is spread over files can be refused only as a whole.
          var stands = says.contains("m/s") ? path.substring(0, path.lastIndexOf('/')) : path;
          assertTrue(
              problems.stream()
                  .filter(problem -> problem.where().startsWith(stands + ":"))
                  .anyMatch(problem -> (problem.what() + " " + problem.allowed()).contains(says)),
              problems.toString());
        });
  }

  private static String velocity(String value) {
    return "capture-velocity:\n  name: velocity\n  value: %s\n  because: {source: own-choice}\n"
        .formatted(value);
  }

  private static String plywood(int least, int most) {
    return """
        plywood:
          name: density of plywood
          value: {least-kilograms-per-cubic-metre: %d, most-kilograms-per-cubic-metre: %d}
          because: {source: own-choice}
        """
        .formatted(least, most);
  }

  private static String gravity(String value) {
    return "  gravity: {name: specific gravity, value: %s, because: {source: own-choice}}\n"
        .formatted(value);
  }

  private static Wood wood(Content content, String id) {
    return content.dust().woods().get(id);
  }
}
