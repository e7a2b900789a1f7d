package org.proofcut.core.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.proofcut.core.storage.StorageForTests.cabinet;
import static org.proofcut.core.storage.StorageForTests.length;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.measure.LengthUnit;

class CabinetCheckTest {

  private static List<String> where(Fitting... more) {
    var cabinet =
        cabinet()
            .with(
                all -> {
                  var fittings = new ArrayList<>(all);
                  fittings.addAll(List.of(more));
                  return fittings;
                });
    return CabinetCheck.problems(cabinet, LengthUnit.MILLIMETRE).stream()
        .map(Problem::where)
        .toList();
  }

  @Test
  void asItIs_nothingIsWrong() {
    assertEquals(List.of(), where());
  }

  /** The shelf is to carry 15 kg. */
  @ParameterizedTest
  @CsvSource({"shelf-1,15000,true", "shelf-1,15001,false", "'',50000,true", "'',50001,false"})
  void boxThatCarriesMoreThanWhatItStandsOn(String on, int grams, boolean good) {
    var size = new Size(length(100), length(100), length(100));
    var box = new Fitting.LidBox("box-2", "box", 1, on, size, size, grams);
    assertEquals(good ? List.of() : List.of("box-2-load"), where(box));
  }

  private static Fitting.LidBox box(String id, int bay, String on) {
    var size = new Size(length(100), length(100), length(100));
    return new Fitting.LidBox(id, id, bay, on, size, size, 100);
  }

  @Test
  void boxOnAShelfOfAnotherBay_orInABayThatIsNotThere() {
    assertEquals(List.of(), where(box("box-2", 1, "shelf-1")));
    assertEquals(List.of("box-2-on"), where(box("box-2", 1, "shelf-2")));
    assertEquals(List.of("box-2-bay"), where(box("box-2", 3, "shelf-1")));
    assertEquals(List.of("box-2-on"), where(box("box-2", 1, "shelf-9")));
  }

  @Test
  void twoBoxesOnOneShelf() {
    assertEquals(List.of(), where(box("box-2", 1, "shelf-1"), box("box-3", 1, "")));
    assertEquals(List.of("box-3-on"), where(box("box-2", 1, ""), box("box-3", 1, "")));
    assertEquals(
        List.of("box-3-on"), where(box("box-2", 1, "shelf-1"), box("box-3", 1, "shelf-1")));
  }

  /** The bays are 200 mm deep. */
  @ParameterizedTest
  @CsvSource({"200,''", "201,drawer-2-inner-depth"})
  void drawerDeeperThanItsBay(long deep, String wrong) {
    var inner = new Size(length(360), length(90), length(deep));
    var drawer = new Fitting.Drawer("drawer-2", "more", 1, length(0), length(100), inner, 5_000);
    assertEquals(wrong.isEmpty() ? List.of() : List.of(wrong), where(drawer));
  }

  @ParameterizedTest
  @CsvSource({"900,''", "901,drawer-2-height", "1000,drawer-2-at"})
  void drawerUnderTheTop(long bottom, String wrong) {
    var inner = new Size(length(360), length(90), length(180));
    var drawer = new Fitting.Drawer("drawer-2", "more", 2, length(bottom), length(100), inner, 9);
    assertEquals(wrong.isEmpty() ? List.of() : List.of(wrong), where(drawer));
  }

  @ParameterizedTest
  @CsvSource({"282,true", "283,false"})
  void boxUnderAShelf(long high, boolean good) {
    var size = new Size(length(100), length(high), length(100));
    var box = new Fitting.LidBox("box-2", "box", 1, "", size, size, 100);
    assertEquals(good ? List.of() : List.of("box-2-height"), where(box));
  }

  /** Shelf 1 is from 282 to 300 mm. */
  @ParameterizedTest
  @CsvSource({"282,true", "283,false", "299,false", "300,true"})
  void hooksBehindAShelf(long at, boolean good) {
    var rail = new Fitting.Rail("rail-2", "pegs", 1, length(at), 5_000, 5_000);
    assertEquals(good ? List.of() : List.of("rail-2-at"), where(rail));
  }

  @ParameterizedTest
  @CsvSource({"282,true", "283,false", "317,false", "318,true"})
  void shelfThroughAShelf(long at, boolean good) {
    var shelf = new Fitting.Shelf("shelf-3", "more", 1, length(at), length(18), length(200), 9);
    assertEquals(good ? List.of() : List.of("shelf-3-at"), where(shelf));
  }

  @ParameterizedTest
  @CsvSource({"999,true", "1000,false", "18,true", "17,false"})
  void shelfUnderTheTop_andOnTheBottom(long at, boolean good) {
    var shelf = new Fitting.Shelf("shelf-3", "more", 1, length(at), length(18), length(200), 9);
    assertEquals(good ? List.of() : List.of("shelf-3-at"), where(shelf));
  }

  @Test
  void baysOutOfOrder_areAFaultOfTheProgram() {
    var good = cabinet();
    assertThrows(IllegalArgumentException.class, () -> with(List.of(), good.doors()));
    assertThrows(
        IllegalArgumentException.class,
        () -> with(List.of(good.bays().get(1), good.bays().get(0)), good.doors()));
    assertThrows(
        IllegalArgumentException.class, () -> with(good.bays(), List.of(good.doors().get(1))));
    assertEquals(good, with(good.bays(), good.doors()));
  }

  private static Cabinet with(List<Bay> bays, List<Door> doors) {
    var c = cabinet();
    return new Cabinet(
        c.id(),
        c.name(),
        c.inside(),
        c.raised(),
        c.before(),
        c.back(),
        c.side(),
        c.uprightDeep(),
        c.dry(),
        bays,
        doors,
        c.fittings());
  }

  @Test
  void twoOfOneName_inOneBay() {
    var rail = new Fitting.Rail("rail-2", "hooks", 1, length(700), 5_000, 5_000);
    assertEquals(List.of("rail-2-name"), where(rail));
  }
}
