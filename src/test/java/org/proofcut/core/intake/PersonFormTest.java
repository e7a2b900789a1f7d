package org.proofcut.core.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.storage.Person;

class PersonFormTest {

  private static final Map<String, String> MEASURED =
      Map.of(
          "name", "Ilse", "knuckle", "750", "elbow", "1050", "shoulder", "1400", "highest", "1950");

  @Test
  void measured_isAsMeasured_andNothingIsEstimated() {
    var read = read(MEASURED).value().orElseThrow();
    assertEquals(new Person("Ilse", mm(750), mm(1050), mm(1400), mm(1950), false), read.person());
    assertEquals(List.of(), read.estimated());
  }

  /** 0.43, 0.63, 0.818 and 1.2 times the height of the body. */
  @Test
  void bodyAlone_givesTheUsualHeights_eachWithItsSource() {
    var read = read(Map.of("name", "Ilse", "body", "1700 mm")).value().orElseThrow();
    assertEquals(new Person("Ilse", mm(731), mm(1071), mm(1390), mm(2040), false), read.person());
    assertEquals(4, read.estimated().size());
    assertTrue(read.estimated().get(2).source().text().contains("from memory"));
    assertEquals("our own choice", read.estimated().get(3).source().text());
  }

  /** Lower by 1700 − 884 − 480 = 336 mm. */
  @Test
  void bodyAlone_fromAChair_isLowerByTheSameEverywhere() {
    var read = read(Map.of("name", "Tomo", "body", "1700", "seated", "yes")).value().orElseThrow();
    assertEquals(new Person("Tomo", mm(395), mm(735), mm(1054), mm(1704), true), read.person());
  }

  @Test
  void oneHeightMeasured_holdsBesideThoseEstimated() {
    var read = read(Map.of("name", "Ilse", "body", "1700", "elbow", "1020")).value().orElseThrow();
    assertEquals(mm(1020), read.person().elbow());
    assertEquals(3, read.estimated().size());
  }

  @Test
  void wrong_isToldAtItsField() {
    assertEquals(List.of("knuckle", "elbow", "shoulder", "highest"), wrong(Map.of("name", "I")));
    assertEquals(List.of("body"), wrong(Map.of("name", "I", "body", "tall")));
    assertEquals(List.of("name"), wrong(with("name", "Ilse, Tomo")));
    assertEquals(List.of("name"), wrong(with("name", "")));
    assertEquals(List.of("seated"), wrong(with("seated", "rubbish")));
    for (var field : List.of("knuckle", "elbow", "shoulder", "highest")) {
      assertEquals(List.of(field), wrong(with(field, "rubbish")));
    }
    assertEquals(List.of("shoulder"), wrong(with("shoulder", "1050")));
  }

  private static Map<String, String> with(String field, String text) {
    var typed = new HashMap<>(MEASURED);
    typed.put(field, text);
    return typed;
  }

  private static Length mm(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  private static Read<PersonForm.Measured> read(Map<String, String> typed) {
    return PersonForm.read(typed, LengthUnit.MILLIMETRE);
  }

  private static List<String> wrong(Map<String, String> typed) {
    return read(typed).problems().stream().map(Problem::where).toList();
  }
}
