package org.proofcut.core.weight;

/**
 * How heavy a material is, dry as in a heated shop.
 *
 * @param leastKilogramsPerCubicMetre of the lightest that is sold
 * @param mostKilogramsPerCubicMetre of the heaviest that is usual
 */
public record Density(int leastKilogramsPerCubicMetre, int mostKilogramsPerCubicMetre) {

  public Density {
    if (leastKilogramsPerCubicMetre <= 0
        || mostKilogramsPerCubicMetre < leastKilogramsPerCubicMetre) {
      throw new IllegalArgumentException(
          "a density from "
              + leastKilogramsPerCubicMetre
              + " to "
              + mostKilogramsPerCubicMetre
              + " kg per cubic metre");
    }
  }

  @Override
  public String toString() {
    return leastKilogramsPerCubicMetre + " to " + mostKilogramsPerCubicMetre + " kg/m³";
  }
}
