package org.proofcut.core.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.shop.StackedCutter;
import org.proofcut.core.shop.StackedCutter.Layer;
import org.proofcut.core.shop.TableSaw;

class ShopFormsTest {

  @Nested
  class Stacks {

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "3.2 mm x 3, 1.6 mm x 1",
          "3.2x3;1.6x1",
          "3,2 mm x 3, 1,6 mm x 1",
          "1.6 × 1, 3.2 × 3",
          "3.2 mm * 1, 1.6 mm x 1, 3.2 mm x 2,",
        })
    void layers_asPeopleWriteThem_areReadThickestFirst(String chippers) {
      assertEquals(
          List.of(layer("3.2 mm", 3), layer("1.6 mm", 1)),
          read(Map.of("chippers", chippers), LengthUnit.MILLIMETRE)
              .value()
              .orElseThrow()
              .chippers());
    }

    @Test
    void layers_inInches_takeFractions() {
      var typed =
          Map.of(
              "chippers",
              "1/8 x 4, 3/32 in x 1",
              "diameter",
              "8",
              "outer-kerf",
              "1/8",
              "shims",
              "");
      var read = read(typed, LengthUnit.INCH).value().orElseThrow();
      assertEquals(List.of(layer("1/8 in", 4), layer("3/32 in", 1)), read.chippers());
      assertEquals(List.of(), read.shims());
      // 2/8 + 4/8 + 3/32
      assertEquals(Length.ofInches(27, 32), read.cutWidth());
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "''                        | Nothing was entered",
          "3.2 mm                    | \"3.2 mm\" does not say how many there are",
          "3.2 mm x 3, 1.6 mm        | \"1.6 mm\" does not say how many there are",
          "3.2 mm x 3 of them        | \"3.2 mm x 3 of them\" does not say how many there are",
          "3.2 mm, 1.6 mm x 2        | \"3.2 mm, 1.6 mm\":",
          "3.2 mm x 0                | \"3.2 mm x 0\": 0 of them",
          "3.2 mm x 7                | \"3.2 mm x 7\": 7 of them",
          "x 3                       | \"x 3\" does not say how many there are",
          "99 mm x 1                 | That is 99.00 mm",
          "1x1,2x1,3x1,4x1,5x1,6x1,7x1 | That is 7 thicknesses",
        })
    void layers_notUnderstood_sayWhere(String chippers, String what) {
      var read = read(Map.of("chippers", chippers), LengthUnit.MILLIMETRE);
      assertTrue(read.value().isEmpty());
      assertTrue(
          read.problems().stream()
              .anyMatch(one -> one.where().equals("chippers") && one.what().contains(what)),
          () -> read.problems().toString());
    }

    private Layer layer(String thickness, int count) {
      return new Layer(Length.of(thickness), count);
    }

    @SuppressWarnings("unchecked") // This kind is read as this type.
    private Read<StackedCutter> read(Map<String, String> changed, LengthUnit unit) {
      var typed =
          new HashMap<>(
              Map.of(
                  "name", "stack",
                  "diameter", "200 mm",
                  "outer-kerf", "3.2 mm",
                  "edges", "24",
                  "chippers", "3.2 mm x 3",
                  "shims", "0.1 mm x 4",
                  "top-speed", "6000"));
      typed.putAll(changed);
      return (Read<StackedCutter>)
          ShopForms.of("stacked-cutter").orElseThrow().read("id", typed, unit);
    }
  }

  @Nested
  class Saws {

    /** As any saw is kept that was entered before this was asked. */
    @Test
    void saw_thatNeverSaid_allowsNoBlindCut() {
      var saw = read(Map.of("knife-stays", "")).value().orElseThrow();
      assertEquals(Optional.empty(), saw.widestStack());
      assertTrue(!saw.knifeStaysInBlindCuts());
    }

    @Test
    void stack_onlyWhereItIsAllowed() {
      var allowed = Map.of("stack-allowed", "yes", "widest-stack", "20 mm", "knife-stays", "yes");
      var saw = read(allowed).value().orElseThrow();
      assertEquals(Optional.of(Length.of("20 mm")), saw.widestStack());
      assertTrue(saw.knifeStaysInBlindCuts());
      for (var forbidden : List.of("no", "")) {
        var not = Map.of("stack-allowed", forbidden, "widest-stack", "20 mm");
        assertEquals(Optional.empty(), read(not).value().orElseThrow().widestStack());
      }
    }

    @Test
    void stackAllowedWithoutItsWidth_isTold() {
      var read = read(Map.of("stack-allowed", "yes"));
      assertEquals(List.of("widest-stack"), read.problems().stream().map(Problem::where).toList());
    }

    @Test
    void sawWithoutAKnife_hasNoneThatStays() {
      var saw = read(Map.of("riving-knife", "no", "knife-stays", "yes")).value().orElseThrow();
      assertTrue(!saw.knifeStaysInBlindCuts());
    }

    @SuppressWarnings("unchecked") // This kind is read as this type.
    private Read<TableSaw> read(Map<String, String> changed) {
      var typed =
          new HashMap<>(
              Demo.things().stream()
                  .filter(thing -> thing.kind().equals("table-saw"))
                  .findFirst()
                  .orElseThrow()
                  .typed());
      typed.putAll(changed);
      return (Read<TableSaw>)
          ShopForms.of("table-saw").orElseThrow().read("id", typed, LengthUnit.MILLIMETRE);
    }
  }

  @Nested
  class Levels {

    @Test
    void level_isAskedOfEveryMachine_andMayStayEmpty() {
      assertEquals(9, ShopForms.MACHINES.size());
      for (var form : ShopForms.MACHINES) {
        var last = form.fields().get(form.fields().size() - 1);
        assertEquals("level", last.name(), form.kind());
        assertTrue(last.optional(), form.kind());
      }
    }

    @ParameterizedTest
    @CsvSource({"98.5, 98.5", "'98,5', 98.5", "40, 40", "140, 140", "' 101 ', 101"})
    void level_inRange_isReadAndKept(String typed, String level) {
      for (var thing : Demo.things()) {
        if (thing.group() == Demo.Thing.Group.MACHINE) {
          assertEquals(List.of(), read(thing, typed).problems(), thing.kind());
        }
      }
      assertEquals(
          level + " dBA",
          ShopForms.measuredLevel(Map.of("level", typed)).orElseThrow().value().text());
    }

    @ParameterizedTest
    @CsvSource({"39.9", "140.1", "98.55", "abc", "'1,098'", "9e1", "-5", "98 dBA 99"})
    void level_otherwise_isRefusedAtItsField(String typed) {
      for (var thing : Demo.things()) {
        if (thing.group() == Demo.Thing.Group.MACHINE) {
          var read = read(thing, typed);
          assertEquals(Optional.empty(), read.value(), thing.kind());
          assertEquals(List.of("level"), read.problems().stream().map(Problem::where).toList());
        }
      }
      assertEquals(Optional.empty(), ShopForms.measuredLevel(Map.of("level", typed)));
    }

    /** As every machine is kept that was entered before this was asked. */
    @Test
    void level_neverAsked_isNone_andChangesNothing() {
      for (var thing : Demo.things()) {
        if (thing.group() == Demo.Thing.Group.MACHINE) {
          assertEquals(Optional.empty(), ShopForms.measuredLevel(thing.typed()));
          assertEquals(
              ShopForms.of(thing.kind())
                  .orElseThrow()
                  .read("id", thing.typed(), LengthUnit.MILLIMETRE),
              read(thing, "99.5"),
              thing.kind());
        }
      }
    }

    private Read<?> read(Demo.Thing thing, String level) {
      var typed = new HashMap<>(thing.typed());
      typed.put("level", level);
      return ShopForms.of(thing.kind()).orElseThrow().read("id", typed, LengthUnit.MILLIMETRE);
    }
  }
}
