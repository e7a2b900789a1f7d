package org.proofcut.core.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.proofcut.core.storage.StorageForTests.LIMITS;
import static org.proofcut.core.storage.StorageForTests.length;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.measure.Length;

/**
 * Reach from a chair by the 2010 ADA Standards, 308.2.1 and 308.3.1 (15 to 48 in, here in whole
 * millimetres as printed: 380 to 1220) and 308.2.2 (over something up to 20 in deep as high, up to
 * 25 in no higher than 44 in, 1120 mm).
 */
class ReachPublishedTest {

  /** Reaches farther than the standard lets anybody be asked to. */
  private static final Person SEATED =
      new Person("anybody", length(600), length(700), length(1050), length(2000), true);

  private static boolean reaches(String height, String before) {
    return Reach.of(SEATED, Length.of(before), LIMITS)
        .filter(band -> band.contains(Length.of(height)))
        .isPresent();
  }

  @ParameterizedTest
  @CsvSource({"14.9 in,false", "380 mm,true", "1220 mm,true", "48.1 in,false"})
  void unobstructed(String height, boolean good) {
    assertEquals(good, reaches(height, "0 mm"));
  }

  /** Whoever grips no higher than the lowest that may be asked reaches that, or nothing. */
  @ParameterizedTest
  @CsvSource({"380,true", "379,false"})
  void gripsNoHigherThanTheLowest(long highest, boolean anything) {
    var person =
        new Person("anybody", length(200), length(250), length(300), length(highest), true);
    assertEquals(anything, Reach.of(person, length(0), LIMITS).isPresent());
  }

  @ParameterizedTest
  @CsvSource({
    "20 in,1220 mm,true",
    "20.1 in,1220 mm,false",
    "20.1 in,1120 mm,true",
    "20.1 in,1121 mm,false",
    "25 in,1120 mm,true",
    "25.1 in,1000 mm,false",
  })
  void overSomething(String before, String height, boolean good) {
    assertEquals(good, reaches(height, before));
  }
}
