package org.proofcut.core.weight;

import org.proofcut.core.evidence.Worked;
import org.proofcut.core.stock.Material;

/** Densities by material. From {@code content/weight/limits}. */
public record Densities(
    Worked<Density> plywood,
    Worked<Density> mdf,
    Worked<Density> particleboard,
    Worked<Density> hardboard,
    Worked<Density> hardwood,
    Worked<Density> softwood) {

  public Worked<Density> of(Material material) {
    return switch (material) {
      case PLYWOOD -> plywood;
      case MDF -> mdf;
      case PARTICLEBOARD -> particleboard;
      case HARDBOARD -> hardboard;
      case HARDWOOD -> hardwood;
      case SOFTWOOD -> softwood;
    };
  }
}
