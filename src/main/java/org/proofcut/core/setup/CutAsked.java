package org.proofcut.core.setup;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.boring.PocketHole;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.geometry.Corner;
import org.proofcut.core.geometry.Taper;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.shop.BearingCutter;
import org.proofcut.core.shop.Bit;
import org.proofcut.core.stock.Material;

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

  /**
   * Where holes go.
   *
   * @param fromEdge from the reference edge to their centres
   * @param along from the reference end to the centre of each, the nearest first
   */
  record Row(Worked<Length> fromEdge, List<Worked<Length>> along) {

    public Row {
      along = List.copyOf(along);
      if (along.isEmpty()) {
        throw new IllegalArgumentException("a row without a hole");
      }
    }

    public Worked<Length> first() {
      return along.get(0);
    }

    public Worked<Length> last() {
      return along.get(along.size() - 1);
    }
  }

  /** What a bit makes. */
  interface Bored {

    Row row();

    Material material();
  }

  /**
   * Holes of one diameter and depth.
   *
   * @param accepted diameters that will do; as near as a bit is made to its mark if empty
   * @param depth of the wall; empty for a hole that goes through
   * @param flat whether the floor has to be flat
   */
  record Holes(
      Worked<Length> diameter,
      Optional<Band> accepted,
      Optional<Worked<Length>> depth,
      boolean flat,
      Row row,
      Material material,
      Work work)
      implements CutAsked, Bored {}

  /**
   * Seats for the heads of screws, at the mouths of holes that are there.
   *
   * @param head diameter of the head
   * @param hole diameter of the hole
   * @param under how far the head is to lie below the face
   */
  record Countersink(
      Worked<Length> head,
      Worked<Length> hole,
      Worked<Length> under,
      Row row,
      Material material,
      Work work)
      implements CutAsked, Bored {}

  /**
   * Pocket holes through the end of a part, for screws into another that the end butts against.
   *
   * @param angle between the holes and the face
   * @param exit from the face to where their axis leaves the end
   * @param guide along the axis, from the face up to where the collar lands on the jig
   * @param stopShort wood that the bit leaves before the end, along the axis
   * @param deep how far the other part reaches away from the joint
   * @param thick its thickness, where the faces are flush; empty where it goes on past the part
   * @param row from the end to the middle of the mouths; along from the reference edge
   */
  record Pocket(
      Worked<Angle> angle,
      Worked<Length> exit,
      Worked<Length> guide,
      Worked<Length> stopShort,
      Worked<Length> screw,
      Worked<Length> deep,
      Optional<Worked<Length>> thick,
      Row row,
      Material material,
      Work work)
      implements CutAsked, Bored {

    /** The hole that this stepped bit makes, in the thinnest stock. */
    public PocketHole with(Bit bit) {
      return new PocketHole(
          angle,
          Worked.measured("thinnest reading of the part", work.thickness().least()),
          exit,
          Worked.entered("nose of " + bit.name(), bit.point()),
          stopShort,
          Worked.entered("diameter of " + bit.name(), bit.diameter()));
    }
  }

  /**
   * Ends cut to halve the corner in which two like pieces meet.
   *
   * @param size of the piece between the long points of its longest edge
   * @param corner seen from above
   * @param lean of its good face from upright, leaning out of the ring that the pieces make; empty
   *     for a flat frame
   * @param width across the piece, on its face
   */
  record Mitre(
      Worked<Length> size,
      Corner corner,
      Optional<Worked<Angle>> lean,
      Worked<Length> width,
      Work work)
      implements CutAsked {}

  /**
   * One of the two cuts at the saw that make a step along an edge: flat first, then on edge.
   *
   * @param width from the edge to the wall
   * @param stays what of the thickness stays beside the step, from the face that is not cut
   * @param acceptedStays what a proof may show of it, where a fit decides that
   * @param carrier what lies between fence and work on edge, if anything does
   * @param onEdge whether this is the second cut
   * @param work the pieces flat: along the edge, and out from it
   */
  record Step(
      Worked<Length> width,
      Worked<Length> stays,
      Optional<Band> acceptedStays,
      Optional<Worked<Length>> carrier,
      boolean onEdge,
      Work work)
      implements CutAsked {}

  /**
   * A tongue along the edge or end that rides the guide, in the middle of the thickness.
   *
   * @param length from its edge to the shoulders
   * @param thickness aimed at
   * @param accepted thicknesses that a proof may show
   * @param work the pieces flat: along the edge, and out from it
   */
  record Tongue(Worked<Length> length, Worked<Length> thickness, Band accepted, Work work)
      implements CutAsked {}

  /**
   * A rip whose edge slopes.
   *
   * @param bevel of the blade from upright
   * @param goodFace width wanted on the good face
   * @param goodIsWide whether the good face is the wider one
   */
  record Bevel(Worked<Angle> bevel, Worked<Length> goodFace, boolean goodIsWide, Work work)
      implements CutAsked {

    /** Width of the wider face, at most. */
    public Length widest() {
      return goodIsWide
          ? goodFace.value()
          : goodFace
              .value()
              .plus(
                  work.thickness()
                      .most()
                      .times(bevel.value().tangent(), Length.HUNDREDTH, Rounding.UP));
    }
  }

  /**
   * A profile along an edge of the face that is cut, by a cutter whose bearing decides the width.
   *
   * @param width from the edge to where the profile ends on the face
   * @param height how far it reaches down the edge
   * @param edge which edge of the piece, and of what shape
   */
  record EdgeProfile(
      BearingCutter.Profile profile,
      Worked<Length> width,
      Worked<Length> height,
      EdgeKind edge,
      Work work)
      implements CutAsked {}

  /**
   * What stands out over an edge, taken off level with it.
   *
   * @param overhang how far it stands out, at most
   * @param layer how thick it is where it stands out
   * @param under how much of the edge is there below it for a bearing to ride
   */
  record FlushTrim(
      Worked<Length> overhang, Worked<Length> layer, Worked<Length> under, EdgeKind edge, Work work)
      implements CutAsked {}

  /**
   * An edge trimmed straight, so that a piece comes to its size.
   *
   * @param now the size before, from that edge to the one opposite
   * @param size wanted
   */
  record EdgeTrim(Worked<Length> now, Worked<Length> size, Work work) implements CutAsked {

    /** The size after so many passes that take so much each. */
    public Length after(int passes, Length each) {
      return now.value().minus(each.times(passes));
    }
  }

  /**
   * A recess or mortise, cut inside a template by a guide bush.
   *
   * @param length the longer way
   * @param width the shorter way
   * @param depth into the face that is cut
   * @param corner largest radius that its corners may keep
   * @param template how thick the template is
   */
  record TemplateRecess(
      Worked<Length> length,
      Worked<Length> width,
      Worked<Length> depth,
      Worked<Length> corner,
      Worked<Length> template,
      Bush bush,
      Work work)
      implements CutAsked {}

  /**
   * A guide bush.
   *
   * @param outside diameter of its collar
   * @param bore inside diameter of its collar
   * @param collar how far it stands out below the router's base
   */
  record Bush(Worked<Length> outside, Worked<Length> bore, Worked<Length> collar) {}

  /** Which edge of a piece is followed. */
  enum EdgeKind {
    OUTSIDE_STRAIGHT("straight outside edge"),
    OUTSIDE_CURVED("curved outside edge"),
    INSIDE("edge of an opening");

    private final String words;

    EdgeKind(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /**
   * Thin strips, one after another off the free edge of a board; the board is what is held.
   *
   * @param thickness of each strip, across the board
   * @param count how many
   * @param work the board along the cut; across it, from what is left of it to all of it
   */
  record Strips(Worked<Length> thickness, int count, Work work) implements CutAsked {}

  /**
   * One cut of a taper, on a carrier that rides the fence.
   *
   * @param second whether the other edge is tapered already
   * @param work the pieces along their straight edge, and across it where they are widest
   */
  record Tapered(Taper taper, boolean second, Carrier carrier, Work work) implements CutAsked {

    public Length wide() {
      return taper.wide().value();
    }

    public Length run() {
      return taper.run().value();
    }

    /** How far one edge runs in over the run. */
    public Length runsIn() {
      return taper.runsIn().value();
    }

    public Angle angle() {
      return taper.angle().value();
    }

    /** What one stop stands farther from the carrier's edge than the other. */
    public Worked<Length> offset() {
      return second ? taper.secondStopOffset(carrier.apart) : taper.stopOffset(carrier.apart);
    }
  }

  /**
   * A flat carrier with two stops.
   *
   * @param width from the edge that rides the fence to the edge at the blade
   * @param base how thick it is under the work
   * @param apart from the heel to the side stop, along its edge
   */
  record Carrier(Worked<Length> width, Worked<Length> base, Worked<Length> apart) {}

  /**
   * A face made flat, or an edge made straight and square to it, over knives.
   *
   * @param off how far it is out: the widest gap under it on something flat
   * @param edge whether the edge is meant; the face lies flat already then
   * @param work the pieces as they are; along the feed, and across it as a face
   */
  record Jointing(Worked<Length> off, boolean edge, Work work) implements CutAsked {}

  /**
   * A thickness, the same all over, for pieces with one flat face.
   *
   * @param thickness wanted
   * @param finished length wanted; what is longer is cut off afterwards
   * @param work the pieces as they are, along the feed and across it
   */
  record Planing(Worked<Length> thickness, Worked<Length> finished, Work work)
      implements CutAsked {}
}
