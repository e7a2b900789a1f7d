package org.proofcut.core.operation;

import java.util.Optional;
import org.proofcut.core.part.Axis;
import org.proofcut.core.part.Edge;
import org.proofcut.core.part.Housing;
import org.proofcut.core.part.Lie;
import org.proofcut.core.part.Part;
import org.proofcut.core.part.PartRole;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Guide;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.shop.TrackSaw;

/** Which way round a part lies for a cut, and what its trailing edge needs. */
final class Handlings {

  private Handlings() {}

  /** A part at router or saw, for one of its housings. */
  static Handling housed(Part part, Housing housing, Optional<Housing> backRabbet, Setup setup) {
    if (setup.guide() == Guide.SLED) {
      return housedOnSled(part, housing, backRabbet);
    }
    // At the saw's fence, a quarter turn from the router table's, a part lies the same way round.
    boolean byHand = setup.guide() == Guide.STRAIGHTEDGE;
    var named = byHand ? Axis.PLUS_Z : Axis.MINUS_Z;
    var rides = byHand ? guidedByHand(housing.reference(), setup) : housing.reference();
    var lie = new Lie(part.role(), named, rides, byHand ? Axis.MINUS_X : Axis.PLUS_Y);
    // On the table the work moves left; by hand the router moves away.
    var leads = lie.edgeTowards(byHand ? Axis.MINUS_Y : Axis.MINUS_X);
    var trails = lie.edgeTowards(byHand ? Axis.PLUS_Y : Axis.PLUS_X);
    return new Handling(
        part.role().namedFaceWords() + (byHand ? " up" : " down"),
        rides,
        leads,
        trails,
        breakout(trails, housing, backRabbet));
  }

  /** Face down, the reference edge against the stop on the left, pushed away with the sled. */
  private static Handling housedOnSled(Part part, Housing housing, Optional<Housing> backRabbet) {
    var lie = new Lie(part.role(), Axis.MINUS_Z, housing.reference(), Axis.MINUS_X);
    var trails = lie.edgeTowards(Axis.MINUS_Y);
    return new Handling(
        part.role().namedFaceWords() + " down",
        trails,
        lie.edgeTowards(Axis.PLUS_Y),
        trails,
        breakout(trails, housing, backRabbet));
  }

  /** The edge on the guide's side of the cut. */
  private static Edge guidedByHand(Edge reference, Setup setup) {
    return isNearSide(setup) ? reference : Edge.towards(reference.towards().opposite());
  }

  private static boolean isNearSide(Setup setup) {
    var straightedge = setup.setting(Setting.Role.STRAIGHTEDGE).orElseThrow().set().value();
    return straightedge.isLessThan(setup.passes().get(0).takes().most());
  }

  private static Optional<String> breakout(
      Edge trails, Housing housing, Optional<Housing> backRabbet) {
    boolean takenLater =
        trails == Edge.REAR
            && backRabbet.isPresent()
            && housing.depth().value().isAtMost(backRabbet.get().depth().value());
    if (takenLater) {
      return Optional.empty();
    }
    return Optional.of("Back up the " + trails.words() + " with scrap: the cutter comes out there");
  }

  /** A piece ripped to width. */
  static Handling ripped(PartRole role, Setup setup) {
    return new Handling(
        goodFace(setup), Edge.REAR, farEnd(role), reference(role), Optional.empty());
  }

  /** A piece cut to length. */
  static Handling crosscut(Setup setup) {
    if (setup.guide() == Guide.SAW_FENCE) {
      return new Handling(
          goodFace(setup), Edge.REAR, Edge.FRONT, Edge.REAR, Optional.of(onFenceAndTable()));
    }
    return new Handling(
        goodFace(setup), Edge.REAR, Edge.FRONT, Edge.REAR, Optional.of(backed(setup.guide())));
  }

  private static String backed(Guide guide) {
    if (guide == Guide.SLED) {
      return "Score the line; the rear edge lies against the sled's fence, which backs it";
    }
    return guide == Guide.GAUGE
        ? "Score the line; the rear edge lies against the gauge's facing: let it reach past the cut"
        : "Score the line; the track holds the fibres on the side that is kept";
  }

  /** What distances are taken from on a piece that belongs to no case. */
  static Edge reference(CutAsked asked) {
    if (asked instanceof CutAsked.Tapered tapered) {
      return tapered.second() ? Edge.CUT_FIRST : Edge.STRAIGHT;
    }
    return asked instanceof CutAsked.CentredGroove ? Edge.MARKED_FACE : Edge.REFERENCE;
  }

  /** A piece that belongs to no case. */
  static Handling single(Setup setup) {
    if (setup.asked() instanceof CutAsked.Pocket) {
      return bored(
          "face with the pockets up",
          Edge.JOINED_END,
          Edge.REFERENCE,
          Edge.OPPOSITE,
          "reference edge on your left",
          setup);
    }
    if (setup.asked() instanceof CutAsked.CentredGroove) {
      return single("edge that gets the groove down", Edge.MARKED_FACE);
    }
    if (setup.asked() instanceof CutAsked.Tongue) {
      return new Handling(
          "marked face down, then the other",
          Edge.REFERENCE,
          Edge.LEADING,
          Edge.TRAILING,
          Optional.of(
              "Ends first, each with scrap behind it: what tears out there the long edges take"
                  + " off"));
    }
    if (setup.asked() instanceof CutAsked.Bored) {
      return bored(
          "face or end that is bored up",
          Edge.REFERENCE,
          Edge.REFERENCE_END,
          Edge.FAR_END,
          "reference end on your left",
          setup);
    }
    if (setup.asked() instanceof CutAsked.Step step && step.onEdge()) {
      return new Handling(
          "standing on the edge, the cut face away from the fence",
          Edge.FLAT_FACE,
          Edge.LEADING,
          Edge.TRAILING,
          Optional.of("Back up the trailing edge with scrap: the cutter comes out there"));
    }
    if (setup.asked() instanceof CutAsked.Jointing jointing) {
      return jointed(jointing.edge());
    }
    return switch (setup.guide()) {
      case BEARING ->
          byBearing(
              setup.asked() instanceof CutAsked.FlushTrim ? "overhanging layer up" : "cut face up");
      case BEARING_WITH_PIN -> byBearing("cut face down");
      case TEMPLATE ->
          new Handling(
              "cut face up, under the template",
              Edge.REFERENCE,
              Edge.LEADING,
              Edge.TRAILING,
              Optional.empty());
      case FENCE, FENCE_WITH_BLOCK ->
          setup.asked() instanceof CutAsked.Parting
                  || setup.asked() instanceof CutAsked.Bevel
                  || setup.asked() instanceof CutAsked.Strips
              ? ripped(setup)
              : single("cut face down", Edge.REFERENCE);
      case STRAIGHTEDGE ->
          single("cut face up", isNearSide(setup) ? Edge.REFERENCE : Edge.OPPOSITE);
      case CARRIER -> tapered((CutAsked.Tapered) setup.asked());
      case SAW_FENCE -> atSawFence(setup);
      case ROLLERS -> planed();
      case SLED, GAUGE, TRACK ->
          setup.asked() instanceof CutAsked.Bevel
              ? ripped(setup)
              : !(setup.asked() instanceof CutAsked.Parting parting)
                  ? single("cut face down", Edge.TRAILING)
                  : parting.along()
                      ? ripped(setup)
                      : new Handling(
                          goodFace(setup),
                          Edge.TRAILING,
                          Edge.LEADING,
                          Edge.TRAILING,
                          crosscut(setup).breakout());
      case MARKS, DRILL_GUIDE, POCKET_JIG ->
          throw new AssertionError("only holes are bored by marks");
    };
  }

  /**
   * One of a mirror pair of sides, inside face up, an edge against the fence or away from you. Of
   * the two, one has its lower end on the left.
   */
  static Handling boredSide(PartRole side, Edge rides, Setup setup) {
    var lie = new Lie(side, Axis.PLUS_Z, rides, Axis.PLUS_Y);
    boolean left = lie.edgeTowards(Axis.MINUS_X) == Edge.LOWER_END;
    return bored(
        side.namedFaceWords() + " up",
        rides,
        Edge.LOWER_END,
        Edge.TOP_END,
        Edge.LOWER_END.words() + (left ? " on your left" : " on your right"),
        setup);
  }

  private static Handling bored(
      String face, Edge rides, Edge from, Edge to, String end, Setup setup) {
    boolean through = setup.asked() instanceof CutAsked.Holes holes && holes.depth().isEmpty();
    return new Handling(
        face,
        rides,
        from,
        to,
        through
            ? Optional.of("Lay a waste board under it: the bit breaks fibres where it comes out")
            : Optional.empty(),
        Optional.of(end));
  }

  /** Knives below: fibres that slope down toward the trailing end are cut off, not split. */
  private static Handling jointed(boolean edge) {
    return new Handling(
        edge ? "hollow edge down" : "hollow face down",
        edge ? Edge.FLAT_FACE : Edge.REFERENCE,
        Edge.LEADING,
        Edge.TRAILING,
        Optional.of("Seen from the side, the grain slopes down toward the trailing end"));
  }

  /** Knives above: the board is turned end for end when it comes from the jointer. */
  private static Handling planed() {
    return new Handling(
        "flat face down for the first pass",
        Edge.FLAT_FACE,
        Edge.LEADING,
        Edge.TRAILING,
        Optional.of(
            "Seen from the side, the grain slopes up toward the trailing end: end for end from how"
                + " it went over the jointer. For the other face turn it end over end, and it still"
                + " does"));
  }

  private static Handling ripped(Setup setup) {
    return new Handling(
        goodFace(setup), Edge.REFERENCE, Edge.LEADING, Edge.TRAILING, Optional.empty());
  }

  /**
   * The blade comes in at the side of the wide end and goes out at the narrow one. So the waste
   * hangs on until the cut ends, and its thick end comes free last, not a tip; the heel pushes the
   * end, and fibres that the cut lays open run out behind it.
   */
  private static Handling tapered(CutAsked.Tapered asked) {
    return new Handling(
        asked.second() ? "turned over" : "good face up",
        reference(asked),
        Edge.WIDE_END,
        Edge.NARROW_END,
        Optional.empty());
  }

  /** Against a mitre saw's fence, the longest edge where they differ. */
  private static Handling atSawFence(Setup setup) {
    var rides = setup.asked() instanceof CutAsked.Mitre ? Edge.LONG : Edge.REFERENCE;
    return new Handling(
        goodFace(setup), rides, Edge.OPPOSITE, rides, Optional.of(onFenceAndTable()));
  }

  private static String onFenceAndTable() {
    return "Score the line; a strip of scrap on the fence holds the fibres where the blade comes out";
  }

  private static Handling byBearing(String face) {
    return new Handling(
        face,
        Edge.REFERENCE,
        Edge.LEADING,
        Edge.TRAILING,
        Optional.of(
            "Cut end grain first: what tears out at its far corner, the long edge takes off"));
  }

  private static Handling single(String face, Edge rides) {
    return new Handling(
        face,
        rides,
        Edge.LEADING,
        Edge.TRAILING,
        Optional.of("Back up the trailing edge with scrap: the cutter comes out there"));
  }

  private static String goodFace(Setup setup) {
    if (setup.asked() instanceof CutAsked.Bevel bevel) {
      // The wide face of the piece that is kept is up, whatever tilts.
      return bevel.goodIsWide() ? "good face up" : "good face down";
    }
    return setup.machine() instanceof TrackSaw ? "good face down" : "good face up";
  }

  /** The end that lengths are taken from. */
  static Edge reference(PartRole role) {
    return switch (role) {
      case LEFT_SIDE, RIGHT_SIDE, BACK -> Edge.LOWER_END;
      case TOP, BOTTOM, SHELF, PLINTH -> Edge.LEFT_END;
    };
  }

  private static Edge farEnd(PartRole role) {
    return Edge.towards(reference(role).towards().opposite());
  }
}
