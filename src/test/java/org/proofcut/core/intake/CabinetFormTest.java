package org.proofcut.core.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.storage.Bay;
import org.proofcut.core.storage.Cabinet;
import org.proofcut.core.storage.Fitting;
import org.proofcut.core.storage.StorageForTests;

class CabinetFormTest {

  @Test
  void typed_withEveryKindOfFitting_isTheCabinet() {
    var wanted = StorageForTests.cabinet();
    var read = read(CabinetsTyped.full()).value().orElseThrow();
    assertEquals(wanted.inside(), read.inside());
    assertEquals(wanted.raised(), read.raised());
    assertEquals(wanted.uprightDeep(), read.uprightDeep());
    assertEquals(wanted.bays(), read.bays());
    assertEquals(wanted.doors(), read.doors());
    var names = read.fittings().stream().map(Fitting::name).toList();
    assertEquals(
        List.of("shelf 1", "hooks", "drawer", "shelf 2", "lidded box", "hooks", "hooks outside"),
        names);
    var box = read.fittings(Fitting.LidBox.class).findFirst().orElseThrow();
    assertEquals("fitting-4", box.on());
    var shelf = read.fittings(Fitting.Shelf.class).findFirst().orElseThrow();
    assertEquals(
        new Fitting.Shelf("fitting-1", "shelf 1", 1, mm(300), mm(18), read.uprightDeep(), 15_000),
        shelf);
  }

  /** What is not in the wild is said twice: once written, once read. */
  @Property(tries = 300)
  void cabinet_writtenAndReadAgain_isTheSame(@ForAll long seed, @ForAll LengthUnit unit) {
    var cabinet = CabinetsTyped.any(seed);
    var read = CabinetForm.read("id", CabinetForm.typed(cabinet, unit), Optional.empty());
    assertEquals(List.of(), read.problems());
    assertEquals(cabinet, read.value().orElseThrow());
    Statistics.label("fittings").collect(Math.min(3, cabinet.fittings().size()));
  }

  @Test
  void cabinet_ofAnInchShop_isWrittenInInches_whereThatIsExact() {
    var typed = CabinetsTyped.full();
    typed.put("unit", "in");
    typed.putAll(Map.of("width", "32 1/4", "bay-1", "15 3/4", "upright", "3/4", "back", "8 mm"));
    for (var one : List.of("height", "depth", "raised", "side", "upright-depth", "door")) {
      typed.put(one, typed.get(one) + " mm");
    }
    typed.replaceAll(
        (field, text) ->
            field.startsWith("fitting-") && text.matches("[0-9]+") && isLength(field)
                ? text + " mm"
                : text);
    typed.put("fitting-1-at", "11 13/16");
    var cabinet = read(typed).value().orElseThrow();
    var written = CabinetForm.typed(cabinet, LengthUnit.INCH);
    assertEquals("32 1/4 in", written.get("width"));
    assertEquals("3/4 in", written.get("upright"));
    assertEquals("15 3/4 in", written.get("bay-2"), "what is left");
    assertEquals("11 13/16 in", written.get("fitting-1-at"));
    assertEquals("8 mm", written.get("back"));
    assertEquals(cabinet, CabinetForm.read("id", written, Optional.empty()).value().orElseThrow());
  }

  private static boolean isLength(String field) {
    return CabinetForm.fields().stream()
        .anyMatch(one -> one.name().equals(field) && one.entry() == Field.Entry.LENGTH);
  }

  @Test
  void everyField_thatWasWritten_isAFieldOfTheForm() {
    var names = new HashSet<>(CabinetForm.fields().stream().map(Field::name).toList());
    for (long seed = 0; seed < 50; seed++) {
      var written = CabinetForm.typed(CabinetsTyped.any(seed), LengthUnit.MILLIMETRE).keySet();
      assertTrue(names.containsAll(written), written::toString);
    }
  }

  @Test
  void rubbish_inAnyField_isToldAtThatField() {
    for (var name : CabinetsTyped.full().keySet()) {
      var asked = name.endsWith("-name") || name.equals("name") ? "a\u0007b" : "rubbish";
      var wrong = wrong(Map.of(name, asked));
      assertTrue(wrong.contains(name) || name.equals("unit"), name + ": " + wrong);
    }
    assertEquals(List.of("unit"), wrong(Map.of("unit", "rubbish")));
  }

  @Test
  void empty_isTold_whereNothingHoldsInItsPlace() {
    var mayStay = List.of("bay-1", "upright-depth", "fitting-3-bay", "fitting-6-door");
    for (var name : CabinetsTyped.full().keySet()) {
      var wrong = wrong(Map.of(name, ""));
      // A box is in the bay of its shelf.
      boolean told = wrong.contains(name) || name.matches("fitting-[45]-bay") && !wrong.isEmpty();
      assertTrue(told != mayStay.contains(name), name + ": " + wrong);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // Bays and uprights make up the width inside.
        "bay-1=400;bay-2=390     | bay-2",
        "bay-1=400;bay-2=410     | bay-2",
        "bay-1=                  | bay-2",
        "bay-1=780               | bay-2",
        "upright=                | upright",
        "upright-depth=301       | upright-depth",
        "left-door=818           | left-door",
        // Shelves.
        "fitting-1-at=17         | fitting-1-at",
        "fitting-1-at=1000       | fitting-1-at",
        "fitting-1-depth=301     | fitting-1-depth",
        "fitting-1-bay=3         | fitting-1-bay",
        "fitting-4-at=130        | fitting-4-at",
        "fitting-1-bay=2;fitting-1-at=410 | fitting-4-at",
        // Hooks.
        "fitting-2-at=1001       | fitting-2-at",
        "fitting-2-at=290        | fitting-2-at",
        // Drawers.
        "fitting-3-at=1000       | fitting-3-at",
        "fitting-3-at=900        | fitting-3-height",
        "fitting-3-inner-width=401 | fitting-3-inner-width",
        "fitting-3-inner-height=121 | fitting-3-inner-height",
        "fitting-3-inner-depth=201 | fitting-3-inner-depth",
        "fitting-3-at=350        | fitting-4-at",
        // Boxes with a lid.
        "fitting-5-on=fitting-1  | fitting-5-on",
        "fitting-5-on=fitting-2  | fitting-5-on",
        "fitting-5-on=bottom     | fitting-5-height",
        "fitting-5-height=601    | fitting-5-height",
        "fitting-5-width=401     | fitting-5-width",
        "fitting-5-depth=201     | fitting-5-depth",
        "fitting-5-inner-width=201 | fitting-5-inner-width",
        // Hooks on doors.
        "fitting-6-door=3        | fitting-6-door",
        "doors=none              | fitting-6-door",
        "doors=left;fitting-6-door=2 | fitting-6-door",
        "fitting-6-at=1001       | fitting-6-at",
        "fitting-6-depth=301     | fitting-6-depth",
        // On the wall.
        "fitting-7-drop=1501     | fitting-7-drop",
        // Names.
        "fitting-2-name=shelf 1  | fitting-2-name",
        // Nothing but a size.
        "fitting-8-at=100        | fitting-8-kind",
      })
  void whatCannotBe_isToldWhere(String changes, String where) {
    var changed = new LinkedHashMap<String, String>();
    for (var change : changes.split(";")) {
      var both = change.split("=", -1);
      changed.put(both[0].strip(), both[1].strip());
    }
    assertTrue(wrong(changed).contains(where), () -> wrong(changed).toString());
  }

  @Test
  void whatJustFits_isNotTold() {
    for (var changed :
        List.of(
            Map.of("bay-2", "400"),
            Map.of("fitting-1-at", "18"),
            Map.of("fitting-1-depth", "300"),
            Map.of("fitting-2-at", "1000"),
            Map.of("fitting-2-at", "300"),
            Map.of("fitting-3-inner-width", "400", "fitting-3-inner-depth", "200"),
            Map.of("fitting-4-at", "138"),
            Map.of("fitting-5-height", "600"),
            Map.of("fitting-6-depth", "300"))) {
      assertEquals(List.of(), wrong(changed));
    }
  }

  @Test
  void ofAJob_takesItsFrameFromTheCase_andOnlyTheRestIsTyped() {
    var shelf = new Fitting.Shelf("shelf-1", "shelf 1", 1, mm(400), mm(18), mm(280), 12_000);
    var wide = new Band(Length.ZERO, mm(700));
    var made =
        new Cabinet(
            "any",
            "case",
            new org.proofcut.core.storage.Size(mm(700), mm(900), mm(300)),
            mm(98),
            Length.ZERO,
            mm(9),
            mm(18),
            mm(300),
            true,
            List.of(new Bay(1, wide)),
            List.of(),
            List.of(shelf));
    var typed = new LinkedHashMap<String, String>();
    typed.put("name", "hung by the door");
    typed.put("unit", "mm");
    typed.put("job", "job-1");
    typed.put("hung", "600");
    typed.put("before", "0");
    typed.put("dry", "yes");
    typed.put("shelf-load", "12 kg");
    typed.put("doors", "right");
    typed.put("door", "16");
    typed.put("fitting-1-kind", "box");
    typed.put("fitting-1-on", "shelf-1");
    for (var side : List.of("", "inner-")) {
      List.of("width", "height", "depth")
          .forEach(measure -> typed.put("fitting-1-" + side + measure, "150"));
    }
    typed.put("fitting-1-load", "2");
    assertEquals(Optional.of(12_000), CabinetForm.shelfGrams(typed));
    var read = CabinetForm.read("id", typed, Optional.of(made)).value().orElseThrow();
    assertEquals(mm(698), read.raised());
    assertEquals(made.inside(), read.inside());
    assertEquals(
        List.of("shelf-1", "fitting-1"), read.fittings().stream().map(Fitting::id).toList());
    var again = CabinetForm.typed(read, LengthUnit.MILLIMETRE, "job-1", made, 12_000);
    assertEquals(read, CabinetForm.read("id", again, Optional.of(made)).value().orElseThrow());
    assertEquals("job-1", CabinetForm.filledIn(again).get("job"));
  }

  @Test
  void filledIn_keepsFieldsOfTheFormAndNothingElse() {
    var sent = new LinkedHashMap<>(CabinetsTyped.full());
    sent.put("stranger", "1");
    sent.put("hung", " ");
    assertEquals(CabinetsTyped.full().keySet(), CabinetForm.filledIn(sent).keySet());
  }

  private static Length mm(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  private static Read<Cabinet> read(Map<String, String> typed) {
    return CabinetForm.read("id", typed, Optional.empty());
  }

  private static List<String> wrong(Map<String, String> changed) {
    var typed = new LinkedHashMap<>(CabinetsTyped.full());
    typed.putAll(changed);
    return read(typed).problems().stream().map(Problem::where).toList();
  }
}
