package org.proofcut.core.weight;

import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;

/** Densities that stand for no wood in particular. */
public final class DensitiesForTests {

  /** Everything between 500 and 800 kg in a cubic metre. */
  public static final Densities ALIKE = alike(500, 800);

  private DensitiesForTests() {}

  public static Densities alike(int least, int most) {
    var density = Worked.given("density", new Density(least, most), Citation.COMMON_PRACTICE);
    return new Densities(density, density, density, density, density, density);
  }
}
