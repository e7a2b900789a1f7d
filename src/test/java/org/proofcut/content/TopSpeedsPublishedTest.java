package org.proofcut.content;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.RouterLimits;
import org.proofcut.core.setup.SpeedBand;

class TopSpeedsPublishedTest {

  /**
   * Highest speed by diameter of a router cutter: to 1 in 24,000; 1 to 2 in 18,000; 2 to 2 1/2 in
   * 16,000; 2 1/2 to 3 1/2 in 12,000 /min. Found in a secondary copy; other tables in print differ
   * by a step.
   */
  @Test
  void topSpeeds_areThoseInPrint() {
    assertEquals(
        List.of(
            new SpeedBand(Length.ofInches(1, 1), 24_000),
            new SpeedBand(Length.ofInches(2, 1), 18_000),
            new SpeedBand(Length.ofInches(5, 2), 16_000),
            new SpeedBand(Length.ofInches(7, 2), 12_000)),
        Content.bundled().limits(RouterLimits.class).topSpeeds().value());
  }
}
