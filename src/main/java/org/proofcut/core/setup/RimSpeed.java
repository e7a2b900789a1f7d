package org.proofcut.core.setup;

import org.proofcut.core.shop.Bit;
import org.proofcut.core.stock.Material;

/**
 * How fast the rim of a kind of bit may run, by what it bores in.
 *
 * @param panelsMetresPerMinute in plywood and boards of glued fibres or chips
 */
public record RimSpeed(
    Bit.Kind kind,
    int softwoodMetresPerMinute,
    int hardwoodMetresPerMinute,
    int panelsMetresPerMinute) {

  int metresPerMinuteIn(Material material) {
    return switch (material) {
      case SOFTWOOD -> softwoodMetresPerMinute;
      case HARDWOOD -> hardwoodMetresPerMinute;
      case PLYWOOD, MDF, PARTICLEBOARD, HARDBOARD -> panelsMetresPerMinute;
    };
  }
}
