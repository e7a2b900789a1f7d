package org.proofcut.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.proofcut.core.boring.HolesForTests;
import org.proofcut.core.casework.CaseDesign;
import org.proofcut.core.casework.CaseDesign.Joinery;
import org.proofcut.core.casework.CaseDesign.Outside;
import org.proofcut.core.casework.CaseDesign.Plinth;
import org.proofcut.core.casework.CaseDesign.Sheets;
import org.proofcut.core.casework.CasesForTests;
import org.proofcut.core.casework.ProvenDepths;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.geometry.Corner;
import org.proofcut.core.intake.CutForm;
import org.proofcut.core.intake.CutForms;
import org.proofcut.core.intake.CutsTyped;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.plan.Marks;
import org.proofcut.core.plan.Plan;
import org.proofcut.core.plan.PlansForTests;
import org.proofcut.core.proof.Verdict.Correction;
import org.proofcut.core.run.Act;
import org.proofcut.core.safety.Finding.Seen;
import org.proofcut.core.setup.Conditions;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Learned;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.setup.MitreSawSetup;
import org.proofcut.core.setup.SawSlotSetup;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setting.Role;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.setup.SetupLimits;
import org.proofcut.core.setup.ShopsForTests;
import org.proofcut.core.setup.Taught;
import org.proofcut.core.setup.Work;
import org.proofcut.core.shop.Cutter;
import org.proofcut.core.shop.HandRouter;
import org.proofcut.core.shop.StackedCutter;
import org.proofcut.core.shop.StackedCutter.Layer;
import org.proofcut.core.shop.TableSaw.BlindCuts;

class WrittenTest {

  private static final Written<Plan> PLANS = new Written<>(Plan.class);
  private static final Written<Act> ACTS = new Written<>(Act.class);
  private static final Written<Marks> MARKS = new Written<>(Marks.class);

  @SuppressWarnings("rawtypes") // What a value is, a working says itself.
  private static final Written<Worked> WORKINGS = new Written<>(Worked.class);

  private static final List<Act> ONE_OF_EACH =
      List.of(
          new Act.Confirmed("figure:fence", "101.9 mm"),
          new Act.WentWithout("gear:hearing:on", "\"Ø\"\\ <script> \uD83E\uDE9A"),
          new Act.ReadingTaken(1, Dimension.WIDTH, Length.of("23/32 in")),
          new Act.ReadingsDropped(2, Dimension.DEPTH),
          new Act.Corrected(List.of(new Correction(Role.FENCE, Length.of("0.1 mm").negated()))),
          new Act.Overridden("one-off, offcut is all there is"),
          new Act.ReadAgain(new Length(1)),
          new Act.Disturbed(""),
          new Act.PartCut("left-side"),
          new Act.PartNotCut("left-side"),
          new Act.Held(),
          new Act.SignedOff());

  /** Reads and writes as the logbook does, and requires the same value and the same text. */
  private static <T> void assertReadsBack(Written<T> written, T value) {
    var json = written.write(value);
    var read = written.read(json, "the test");
    assertEquals(value, read);
    assertEquals(json, written.write(read));
  }

  @Test
  void read_wholePlan_equalsWhatWasWritten() {
    var plan = BundledPlans.cupboard();
    assertTrue(plan.isSound(), plan.problems().toString());
    assertReadsBack(PLANS, plan);
  }

  /** A pack of strips, and a stack of a cutter, are kept as they were set up. */
  @Test
  void read_slotsAtTheSaw_equalWhatWasWritten() {
    var saw = ShopsForTests.sawWith(new BlindCuts(true, Optional.of(Length.of("20 mm"))));
    var conditions =
        new Conditions(ShopsForTests.LIMITS, List.of("featherboard"), LengthUnit.MILLIMETRE);
    var size = new Band(Length.of("400 mm"), Length.of("400 mm"));
    var accepted = new Band(Length.of("8.1 mm"), Length.of("8.2 mm"));
    var asked =
        new CutAsked.Slot(
            Worked.entered("width", Length.of("8.15 mm")),
            accepted,
            Worked.entered("depth", Length.of("6 mm")),
            Worked.entered("distance", Length.of("100 mm")),
            new Work(size, size, new Band(Length.of("18 mm"), Length.of("18 mm"))));
    var stack =
        new StackedCutter(
            "s",
            "stack",
            Length.of("200 mm"),
            24,
            Length.of("3.2 mm"),
            List.of(new Layer(Length.of("1.6 mm"), 2)),
            List.of(new Layer(Length.of("0.1 mm"), 4)),
            Optional.of(6_000));
    var setups = new Written<>(Setup.class);
    for (var answer :
        List.of(
            SawSlotSetup.passes(asked, saw, ShopsForTests.RIP_BLADE, conditions),
            SawSlotSetup.stacked(asked, saw, stack, conditions))) {
      assertReadsBack(setups, assertInstanceOf(Setup.class, answer));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"screw-hole", "hinge-cup", "shelf-pins", "dowels", "pocket-holes"})
  void read_holes_equalWhatWasWritten(String kind) {
    var form =
        CutForms.all(CasesForTests.FIT, HolesForTests.LIMITS).stream()
            .filter(one -> one.kind().equals(kind))
            .findFirst()
            .orElseThrow();
    var typed = CutForm.filledIn(CutsTyped.with(kind), LengthUnit.MILLIMETRE);
    var wanted = form.read(typed, ShopsForTests.shop()).value().orElseThrow();
    var plan = PlansForTests.planner().plan(wanted.cut(), wanted.shop(), wanted.unit());
    assertReadsBack(new Written<>(Setup.class), plan.sheet().operation().setup().orElseThrow());
  }

  @Test
  void read_setUpWithAngles_equalsWhatWasWritten() {
    var size = Length.of("600 mm");
    var width = Length.of("80 mm");
    var asked =
        new CutAsked.Mitre(
            Worked.entered("size", size),
            Corner.ofSides(7),
            Optional.of(Worked.entered("lean", Angle.parse("38"))),
            Worked.entered("width", width),
            new Work(
                new Band(size, size),
                new Band(width, width),
                new Band(Length.of("18 mm"), Length.of("18.1 mm"))));
    var answer =
        MitreSawSetup.flat(
            asked, ShopsForTests.MITRE, ShopsForTests.MITRE_BLADE, ShopsForTests.CONDITIONS);
    var setup = assertInstanceOf(Setup.class, answer, answer::toString);
    assertEquals(2, setup.anglesSet().size());
    assertReadsBack(new Written<>(Setup.class), setup);
  }

  @Test
  void read_setUpThatUsesWhatWasLearned_equalsWhatWasWritten() {
    var taught =
        new Taught(Worked.entered("as proofs found it", Length.of("0.3 mm")), "6 proofs, ±0.1 mm");
    var learned =
        new Learned() {
          @Override
          public Optional<Taught> width(Cutter cutter, Worked<Length> marked) {
            return Optional.of(new Taught(marked, "as marked, 3 proofs"));
          }

          @Override
          public Optional<Taught> baseToEdge(
              HandRouter router, Cutter cutter, Worked<Length> reckoned) {
            return Optional.empty();
          }

          @Override
          public Optional<Taught> correction(Setup setup, Setting setting) {
            return Optional.of(taught);
          }
        };
    var plan =
        PlansForTests.planner()
            .plan(
                CasesForTests.cupboard(),
                ShopsForTests.shop(),
                ProvenDepths.NONE,
                operation -> learned);
    assertTrue(
        plan.sheets().stream()
            .flatMap(sheet -> sheet.operation().setup().stream())
            .anyMatch(setup -> setup.taught().size() > 2));
    assertReadsBack(PLANS, plan);
  }

  @Test
  void read_planWithoutSheets_equalsWhatWasWritten() {
    var d = CasesForTests.cupboard();
    var flat = new Outside(d.outside().width(), d.outside().height(), Length.ZERO);
    var plan = BundledPlans.plan(with(d, flat, d.joinery(), d.shelves()));
    assertFalse(plan.isSound());
    assertFalse(plan.problems().isEmpty());
    assertReadsBack(PLANS, plan);
  }

  @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
  void read_anyPlan_equalsWhatWasWritten(@ForAll("designs") CaseDesign design) {
    assertReadsBack(PLANS, BundledPlans.plan(design));
  }

  @Test
  void write_sameWorkingTwice_writesItOnce() {
    var width = Worked.measured("width of the sheet", Length.of("1220 mm"));
    var twice = Worked.called("both").by("a + b").with("a", width).with("b", width).is(Length.ZERO);
    assertEquals(2, WORKINGS.write(twice).split("width of the sheet", -1).length);
    assertReadsBack(WORKINGS, twice);
  }

  static List<Act> oneOfEach() {
    return ONE_OF_EACH;
  }

  @ParameterizedTest
  @MethodSource("oneOfEach")
  void read_act_equalsWhatWasWritten(Act act) {
    assertReadsBack(ACTS, act);
  }

  @Test
  void acts_tested_areAllThereAre() {
    assertEquals(
        Set.of(Act.class.getPermittedSubclasses()),
        ONE_OF_EACH.stream().map(Object::getClass).collect(Collectors.toSet()));
  }

  @Test
  void read_marks_equalsWhatWasWritten() {
    for (var sheet : BundledPlans.cupboard().sheets()) {
      assertReadsBack(MARKS, sheet.marks());
    }
  }

  @Test
  void write_everyLimit_isKept() throws ReflectiveOperationException {
    var limits = BundledPlans.CONTENT.setupLimits();
    for (var group : SetupLimits.class.getRecordComponents()) {
      for (var component : group.getType().getRecordComponents()) {
        var limit = (Worked<?>) component.getAccessor().invoke(group.getAccessor().invoke(limits));
        var worked = Worked.called("anything").by("from the limit").with(limit).is(Length.ZERO);
        assertReadsBack(WORKINGS, worked);
      }
    }
  }

  static List<Object> whatRulesSee() {
    return List.of(
        "rip",
        List.of("plywood", "mdf"),
        List.of(),
        true,
        24_000L,
        3,
        Length.of("0.001 mm"),
        new Band(Length.ZERO, Length.of("1 in")),
        new Amount(new BigDecimal("11.30"), "m/s"),
        new BigDecimal("1E+3"));
  }

  @ParameterizedTest
  @MethodSource("whatRulesSee")
  void read_whatARuleSaw_isOfTheSameType(Object value) {
    assertReadsBack(new Written<>(Seen.class), new Seen("fact", value));
  }

  @Test
  void write_valueThatCouldNotBeReadBack_isRefused() {
    var strange = Worked.given("strange", new StringBuilder("x"), Citation.MEASURED);
    var e = assertThrows(IllegalStateException.class, () -> WORKINGS.write(strange));
    assertTrue(e.getMessage().contains("StringBuilder"), e.getMessage());
  }

  @Test
  void read_laterVersion_saysWhichAndWhere() {
    var json = PLANS.write(BundledPlans.cupboard()).replaceFirst("\"version\":1", "\"version\":2");
    var e = assertThrows(UnreadableException.class, () -> PLANS.read(json, "job 7, plan 3"));
    assertEquals("job 7, plan 3", e.problem().where());
    assertEquals("it was written as version 2", e.problem().what());
    assertTrue(e.getMessage().startsWith("job 7, plan 3: it was written as version 2"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "{",
        "null",
        "[]",
        "{\"version\":1}",
        "{\"content\":{\"is\":\"Held\"}}",
        "{\"version\":1,\"content\":null}",
        "{\"version\":1,\"content\":{}}",
        "{\"version\":1,\"content\":{\"is\":\"Sawn\"}}",
        "{\"version\":1,\"content\":{\"is\":\"java.lang.Runtime\"}}",
        "{\"version\":1,\"content\":{\"is\":\"PartCut\"}}",
        "{\"version\":1,\"content\":{\"is\":\"PartCut\",\"part\":null}}",
        "{\"version\":1,\"content\":{\"is\":\"PartCut\",\"part\":\"a\",\"part\":\"b\"}}",
        "{\"version\":1,\"content\":{\"is\":\"PartCut\",\"part\":\"a\",\"more\":1}}",
        "{\"version\":1,\"content\":{\"is\":\"ReadAgain\",\"found\":\"18 furlongs\"}}",
        "{\"version\":1,\"content\":{\"is\":\"ReadAgain\",\"found\":18}}",
        "{\"version\":1,\"content\":{\"is\":\"ReadAgain\",\"found\":\"18.25\"}}",
        "{\"version\":1,\"content\":{\"is\":\"ReadingsDropped\",\"attempt\":1,\"dimension\":0}}",
        "{\"version\":1,\"content\":{\"is\":\"ReadingsDropped\",\"attempt\":\"1\","
            + "\"dimension\":\"WIDTH\"}}",
        "{\"version\":1,\"content\":{\"is\":\"Held\"}} {}",
        "{\"version\":\"1\",\"content\":{\"is\":\"Held\"}}",
      })
  void read_damagedAct_saysWhere(String json) {
    var e = assertThrows(UnreadableException.class, () -> ACTS.read(json, "job 7, entry e1"));
    assertEquals("job 7, entry e1", e.problem().where());
  }

  /** Cut off anywhere, a plan is refused and never read by half. */
  @Test
  void read_planCutOffAnywhere_isRefused() {
    var json = PLANS.write(BundledPlans.cupboard());
    for (int length = 0; length < json.length(); length += 997) {
      var cut = json.substring(0, length);
      assertThrows(UnreadableException.class, () -> PLANS.read(cut, "job 7, plan 3"));
    }
  }

  @Test
  void read_numberOfNoWorking_isRefused() {
    var e =
        assertThrows(
            UnreadableException.class,
            () -> WORKINGS.read("{\"version\":1,\"content\":5}", "job 7"));
    assertTrue(e.getCause().getMessage().contains("no working before this has the number 5"));
  }

  /** Sound ones and others: a plan with problems is kept just as well. */
  @Provide
  Arbitrary<CaseDesign> designs() {
    var outside =
        Combinators.combine(lengths(250, 1200), lengths(400, 2200), lengths(150, 600))
            .as(Outside::new);
    var depths = lengths(3, 9);
    var joinery =
        Combinators.combine(depths, depths, depths, depths)
            .as((top, bottom, shelf, back) -> new Joinery(top, bottom, shelf, back, Length.ZERO));
    var shelves = lengths(200, 2000).list().ofMaxSize(3);
    var thickness = lengths(14, 21);
    return Combinators.combine(outside, joinery, shelves, thickness, thickness)
        .as(
            (size, depth, undersides, one, other) -> {
              var d = CasesForTests.cupboard();
              var sides = CasesForTests.sheet("sides", one.toString(), one.toString());
              var rest =
                  CasesForTests.sheet(
                      "rest", other.toString(), other.toString(), other.toString(), "17.9 mm");
              return new CaseDesign(
                  d.name(),
                  LengthUnit.INCH,
                  size,
                  new Sheets(sides, sides, rest, rest, rest, CasesForTests.THIN, rest),
                  depth,
                  new Plinth(d.plinth().height(), d.plinth().setBack()),
                  undersides.stream().sorted().toList());
            });
  }

  /** Whole micrometres and whole 128ths of an inch. */
  private static Arbitrary<Length> lengths(int fromMm, int toMm) {
    return Arbitraries.oneOf(
        Arbitraries.longs().between(fromMm * 1000L, toMm * 1000L).map(Length::ofMicrometres),
        Arbitraries.longs()
            .between(fromMm * 128L / 25 + 1, toMm * 128L / 26)
            .map(count -> Length.ofInches(count, 128)));
  }

  private static CaseDesign with(
      CaseDesign d, Outside outside, Joinery joinery, List<Length> shelves) {
    return new CaseDesign(d.name(), d.unit(), outside, d.sheets(), joinery, d.plinth(), shelves);
  }
}
