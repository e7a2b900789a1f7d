package org.proofcut.core.boring;

import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;

/** Limits of holes as a shop has them. */
public final class HolesForTests {

  public static final BoringLimits LIMITS =
      new BoringLimits(
          limit("play of a screw", "0.25 mm"),
          limit("most play of a screw", "0.5 mm"),
          limit("tolerance of a pilot", "0.25 mm"),
          limit("head below the face", "0.3 mm"),
          limit("least under a cup", "4 mm"),
          limit("least under a dowel", "4 mm"));

  private HolesForTests() {}

  private static Worked<Length> limit(String name, String length) {
    return Worked.given(name, Length.of(length), Citation.COMMON_PRACTICE);
  }
}
