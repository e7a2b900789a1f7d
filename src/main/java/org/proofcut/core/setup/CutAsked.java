package org.proofcut.core.setup;

import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;

/** What a cut must come to, whatever machine makes it. */
public sealed interface CutAsked {

  Work work();

  /**
   * A slot with wood on both sides.
   *
   * @param width the width aimed at
   * @param accepted widths that a proof may show
   * @param depth into the thickness
   * @param distance from the reference edge to the near wall
   */
  record Slot(
      Worked<Length> width, Band accepted, Worked<Length> depth, Worked<Length> distance, Work work)
      implements CutAsked {}

  /**
   * A step along the edge or end that rides the guide.
   *
   * @param width from the edge to the wall
   * @param accepted widths that a proof may show
   * @param depth into the thickness
   */
  record Rabbet(Worked<Length> width, Band accepted, Worked<Length> depth, Work work)
      implements CutAsked {}

  /**
   * A cut that parts the stock.
   *
   * @param size of the piece kept, from the guide to the cut
   * @param toSize whether the piece is finished by it; a rough cut needs no proof
   * @param along whether the cut runs along the pieces (a rip) or across them (a crosscut)
   */
  record Parting(Worked<Length> size, boolean toSize, boolean along, Work work)
      implements CutAsked {}

  /**
   * A groove along an edge, in the middle of the thickness. The piece stands on that edge, with one
   * face against the guide and then the other, so that {@code work} reaches out from the guide as
   * far as it is thick.
   *
   * @param width the width aimed at
   * @param accepted widths that a proof may show
   * @param depth into the edge
   * @param standing how high the pieces stand on the edge that is cut
   */
  record CentredGroove(
      Worked<Length> width, Band accepted, Worked<Length> depth, Band standing, Work work)
      implements CutAsked {}
}
