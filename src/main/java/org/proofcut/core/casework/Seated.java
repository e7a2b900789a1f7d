package org.proofcut.core.casework;

import java.util.List;
import org.proofcut.core.measure.Band;
import org.proofcut.core.part.Part;

/**
 * A part in its place in the case, as the blocks that are left of it when its housings are cut.
 * Places are measured from the left, the front and the floor.
 */
public record Seated(Part part, List<Block> blocks) {

  /**
   * A block with its faces along the three axes.
   *
   * @param across from the left
   * @param deep from the front to the rear
   * @param high from the floor up
   */
  public record Block(Band across, Band deep, Band high) {}

  public Seated {
    blocks = List.copyOf(blocks);
  }
}
