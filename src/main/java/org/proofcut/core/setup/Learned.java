package org.proofcut.core.setup;

import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.shop.Cutter;
import org.proofcut.core.shop.HandRouter;

/** What the proof cuts of a shop have taught, as far as a set-up uses it. */
public interface Learned {

  /** A shop that has proven nothing yet. */
  Learned NOTHING =
      new Learned() {
        @Override
        public Optional<Taught> width(Cutter cutter, Worked<Length> marked) {
          return Optional.empty();
        }

        @Override
        public Optional<Taught> baseToEdge(
            HandRouter router, Cutter cutter, Worked<Length> reckoned) {
          return Optional.empty();
        }

        @Override
        public Optional<Taught> correction(Setup setup, Setting setting) {
          return Optional.empty();
        }
      };

  /**
   * The width that a cutter cuts in one pass, where it is better known than by its mark. Of a
   * stacked cutter every stack is as much wider than its parts come to.
   */
  Optional<Taught> width(Cutter cutter, Worked<Length> marked);

  /** From the base edge to the nearest cutting edge, where it is better known than reckoned. */
  Optional<Taught> baseToEdge(HandRouter router, Cutter cutter, Worked<Length> reckoned);

  /** What to add to a figure on the scale that it is set by, so that the cut comes to it. */
  Optional<Taught> correction(Setup setup, Setting setting);

  /** The same set-up with every scale read as proofs have shown that it reads. */
  default Setup applied(Setup setup) {
    return setup.readAs(setting -> correction(setup, setting));
  }
}
