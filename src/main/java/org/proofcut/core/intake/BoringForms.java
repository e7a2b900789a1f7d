package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.ACROSS;
import static org.proofcut.core.intake.CutFields.ALONG;
import static org.proofcut.core.intake.CutFields.DEPTHS;
import static org.proofcut.core.intake.CutFields.DISTANCES;
import static org.proofcut.core.intake.CutFields.SIZES;
import static org.proofcut.core.intake.CutFields.THICKNESSES;
import static org.proofcut.core.intake.CutFields.at;
import static org.proofcut.core.intake.CutFields.band;
import static org.proofcut.core.intake.CutFields.piece;
import static org.proofcut.core.intake.CutFields.stock;
import static org.proofcut.core.intake.CutFields.work;
import static org.proofcut.core.intake.Field.choice;
import static org.proofcut.core.intake.Field.count;
import static org.proofcut.core.intake.Field.length;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.boring.Dowels;
import org.proofcut.core.boring.HingeCup;
import org.proofcut.core.boring.ScrewHoles;
import org.proofcut.core.boring.ShelfPins;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.operation.OperationKind;
import org.proofcut.core.operation.SingleCut;
import org.proofcut.core.part.Edge;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.setup.Work;
import org.proofcut.core.shop.Bit;
import org.proofcut.core.shop.Cutter;
import org.proofcut.core.shop.DrillPress;
import org.proofcut.core.shop.HandDrill;
import org.proofcut.core.shop.Machine;
import org.proofcut.core.stock.Material;
import org.proofcut.core.stock.Sheet;

/** Holes: where each goes, and what goes in. */
final class BoringForms {

  private static final List<Class<? extends Machine>> DRILLS =
      List.of(DrillPress.class, HandDrill.class);

  private static final List<Class<? extends Cutter>> BITS = List.of(Bit.class);

  /** A hole on the very edge is none. */
  private static final Band PLACES = band("1 mm", "4000 mm");

  private static final Band SCREWS = band("1 mm", "20 mm");
  private static final Band SCREW_LENGTHS = band("6 mm", "200 mm");

  private static final Field FROM_EDGE =
      length("from-edge", "From the reference edge", "to the centre of the holes");
  private static final Field FIRST =
      length("first", "First hole", "from the reference end to its centre");
  private static final Field HOLES =
      count("holes", "How many holes", "in this row; one if left empty").mayStayEmpty();
  private static final Field PITCH =
      length("pitch", "From hole to hole", "centre to centre; only for several").mayStayEmpty();
  private static final int MOST_HOLES = 60;

  private static final String BY_CALIPER = "by-caliper";
  private static final Field SCREW =
      choice(
          "screw",
          "Screw",
          List.of(
              new Field.Choice("4", "No. 4"),
              new Field.Choice("6", "No. 6"),
              new Field.Choice("8", "No. 8"),
              new Field.Choice("10", "No. 10"),
              new Field.Choice(BY_CALIPER, "by caliper, below")));
  private static final Field SHANK =
      length("shank", "Diameter over the thread", "by caliper; empty for a screw with a number")
          .mayStayEmpty();
  private static final Field ROOT =
      length("root", "Root", "between the threads, by caliper; empty for a screw with a number")
          .mayStayEmpty();

  private static final Field BORE =
      choice(
          "bore",
          "Which of its holes",
          List.of(
              new Field.Choice("clearance", "clearance hole, through the part under the head"),
              new Field.Choice("pilot", "pilot, in the part that holds the thread"),
              new Field.Choice("countersink", "seat for the head, at the clearance hole")));
  private static final Field SCREW_LENGTH =
      length(
              "screw-length",
              "Length of the screw",
              "under its head, or over all if it is sunk; for a pilot")
          .mayStayEmpty();
  private static final Field UNDER_HEAD =
      length("under-head", "Part under the head", "its thickness; for a pilot").mayStayEmpty();
  private static final Field HEAD =
      length("head", "Head of the screw", "its diameter, by caliper; for a seat").mayStayEmpty();

  /** Sunk so far that nothing stands proud of a face that is sanded. */
  private static final Length UNDER_FACE = Length.ofMicrometres(300);

  private static final Map<Dimension, Integer> PLACED_AND_DEEP =
      Map.of(
          Dimension.DIAMETER, 2, Dimension.DEPTH, 2, Dimension.DISTANCE, 2, Dimension.FROM_END, 2);

  private static final Field CUP = length("cup", "Diameter of the cup", "35 mm for most");
  private static final Field CUP_DEPTH =
      length("cup-depth", "Depth of the cup", "from the hinge's sheet");
  private static final Field CUP_DISTANCE =
      length(
          "cup-distance",
          "Door's edge to the cup",
          "to the near edge of the cup, from the hinge's sheet");
  private static final Field FIXED =
      length(
              "fixed-distance",
              "Fixed distance of the hinge",
              "from its sheet; only to check an overlay")
          .mayStayEmpty();
  private static final Field PLATE =
      length("plate", "Height of the plate", "from its sheet; only to check an overlay")
          .mayStayEmpty();
  private static final Field OVERLAY =
      length("overlay", "Overlay wanted", "how far the door covers the case; to be checked")
          .mayStayEmpty();
  private static final Field LAST =
      length("last", "Last hole", "from the far end; as the first one if left empty")
          .mayStayEmpty();

  /** Common practice. */
  private static final Worked<Length> LEAST_UNDER_CUP =
      Worked.given("least wood under the cup", Length.ofMillimetres(4), Citation.COMMON_PRACTICE);

  private static final Field ROW =
      choice(
          "row",
          "Which row",
          List.of(
              new Field.Choice("front", "front row, front edge as reference"),
              new Field.Choice("rear", "rear row, rear edge as reference")));
  private static final Field PIN = length("pin", "Diameter of the pins", "5 mm for most");
  private static final Field PIN_DEPTH = length("depth", "Depth", "of the holes");
  private static final Field PIN_PITCH = length("pitch", "Pitch", "hole to hole, centre to centre");
  private static final Field MARGIN =
      length("margin", "Least margin", "from either end to the nearest hole");
  private static final Field PINS =
      count("holes", "How many holes", "as many as there is room for if left empty").mayStayEmpty();
  private static final Field SIDE =
      length("along", "Length of the side", "from its lower end to its top end");

  private static final Field DOWELLED =
      choice(
          "part",
          "Which part is bored now",
          List.of(
              new Field.Choice("face", "the one bored into its face"),
              new Field.Choice("end", "the one bored into its end")));
  private static final Field DOWEL = length("dowel", "Diameter of the dowels", "by caliper");
  private static final Field DOWEL_LENGTH = length("dowel-length", "Length of the dowels", "");
  private static final Field DOWELS = count("dowels", "How many dowels", "in the joint");
  private static final Field DOWEL_EDGE =
      length("dowel-edge", "First dowel", "from either edge of the joint to its centre");
  private static final Field GLUE_ROOM =
      length("glue-room", "Glue room", "left empty at the bottom of each hole; 1 or 2 mm");
  private static final Field FACE_TO_MIDDLE =
      length(
              "from-edge",
              "Middle of the other part",
              "from the reference edge to where it will stand; flush with that edge if left empty")
          .mayStayEmpty();
  private static final Field END_THICKNESS =
      length("end-thickness", "Its thickness", "by caliper: the dowels stand in its middle");
  private static final Field END_LENGTH =
      length("end-length", "Its length", "from the end that is bored to the other");
  private static final Field FACE_REACH =
      length("across", "Reach", "how far it goes out from its reference edge");
  private static final Field JOINT =
      length("along", "Width of the joint", "along it, where both parts meet");

  /** Common practice. */
  private static final Worked<Length> LEAST_UNDER_DOWEL =
      Worked.given(
          "least wood under a dowel's hole", Length.ofMillimetres(4), Citation.COMMON_PRACTICE);

  /** Of the trade's jigs, from memory. */
  private static final Worked<Angle> POCKET_ANGLE =
      Worked.given("angle of the jig", Angle.ofDegrees(15), Citation.COMMON_PRACTICE);

  private static final Band SIZES_OF_JIGS = band("0 mm", "150 mm");
  private static final Field JIG_GUIDE =
      length(
          "guide",
          "Jig: face to the collar's seat",
          "along the bit, from the face of the work to where the collar lands");
  private static final Field JIG_EXIT =
      length(
              "exit",
              "Where the screw leaves the end",
              "from the face with the pocket; the middle if left empty")
          .mayStayEmpty();
  private static final Field STOP_SHORT =
      length(
          "stop-short",
          "Bit stops short of the end",
          "along the bit: 3 mm keeps its tip off the jig");
  private static final Field POCKET_SCREW =
      length("screw-length", "Length of the screw", "under its head");
  private static final Field OTHER_DEEP =
      length(
          "other-deep",
          "From the joint to its far side",
          "a stile's width, or a panel's thickness");
  private static final Field OTHER_THICK =
      length(
              "other-thick",
              "Its thickness",
              "where both faces lie flush; empty where it goes on past")
          .mayStayEmpty();
  private static final Field POCKET_FIRST =
      length("first", "First pocket", "from the reference edge to its middle");
  private static final Field JOINED =
      length("along", "Width of the part", "along the end that is joined");
  private static final Field JOINED_LENGTH =
      length("across", "Length of the part", "from the end that is joined to the other");

  private BoringForms() {}

  static List<CutForm> all() {
    return List.of(screwHoles(), hingeCup(), shelfPins(), dowels(), pocketHoles());
  }

  private static CutForm screwHoles() {
    return new CutForm(
        "screw-hole",
        "Hole for a screw",
        "Clearance hole, pilot or seat for the head of a wood screw.",
        List.of(
            new CutForm.Group(
                "The screw", List.of(BORE, SCREW, SHANK, ROOT, SCREW_LENGTH, UNDER_HEAD, HEAD)),
            new CutForm.Group("Where it goes", List.of(FROM_EDGE, FIRST, HOLES, PITCH)),
            piece(ALONG, ACROSS)),
        DRILLS,
        BITS,
        Map.of(
            Dimension.DIAMETER,
            2,
            Dimension.DEPTH,
            2,
            Dimension.DISTANCE,
            2,
            Dimension.FROM_END,
            2),
        form -> {
          var bore = form.choice(BORE);
          var screw = screw(form);
          var length = form.optionalLength(SCREW_LENGTH, SCREW_LENGTHS);
          var through = form.optionalLength(UNDER_HEAD, THICKNESSES);
          var head = form.optionalLength(HEAD, SCREWS);
          var row = row(form);
          var stock = stock(form);
          var work = work(form, stock);
          inside(form, row, work, true);
          switch (bore) {
            case "pilot" -> {
              wanted(form, SCREW_LENGTH, length);
              wanted(form, UNDER_HEAD, through);
              if (length.isPresent() && through.isPresent()) {
                reaches(form, length.get(), through.get(), stock);
              }
            }
            case "countersink" -> {
              wanted(form, HEAD, head);
              head.filter(one -> one.isAtMost(screw.clearance().value()))
                  .ifPresent(
                      one ->
                          form.problem(
                              HEAD,
                              "That is no wider than the clearance hole",
                              "more than " + form.shown(screw.clearance().value())));
            }
            default -> {}
          }
          return form.result(
              () ->
                  new SingleCut(
                      OperationKind.SCREW_HOLES,
                      title(bore),
                      asked(bore, screw, length, through, head, row, stock, work),
                      stock,
                      Optional.empty()));
        });
  }

  // ---- hinge cups ------------------------------------------------------------------------------

  private static CutForm hingeCup() {
    return new CutForm(
        "hinge-cup",
        "Hinge cups",
        "Flat-bottomed holes in the back of a door, as the sheet of the hinge says.",
        List.of(
            new CutForm.Group(
                "From the hinge's sheet",
                List.of(CUP, CUP_DEPTH, CUP_DISTANCE, FIXED, PLATE, OVERLAY)),
            new CutForm.Group("Where they go", List.of(FIRST, HOLES, LAST)),
            piece(ALONG, ACROSS)),
        DRILLS,
        BITS,
        PLACED_AND_DEEP,
        form -> {
          var diameter =
              Worked.entered("diameter of the cup", form.length(CUP, band("15 mm", "60 mm")));
          var depth = Worked.entered("depth of the cup", form.length(CUP_DEPTH, DEPTHS));
          var fromEdge =
              Worked.entered(
                  "door's edge to the cup", form.length(CUP_DISTANCE, band("1 mm", "30 mm")));
          var fixed = form.optionalLength(FIXED, band("0 mm", "40 mm"));
          var plate = form.optionalLength(PLATE, band("0 mm", "40 mm"));
          var overlay = form.optionalLength(OVERLAY, band("0 mm", "60 mm"));
          var stock = stock(form);
          var work = work(form, stock);
          var cup =
              new HingeCup(
                  diameter,
                  depth,
                  fromEdge,
                  Worked.measured("thinnest reading of the door", stock.thickness().ends().least()),
                  LEAST_UNDER_CUP);
          if (form.isSound(CUP_DEPTH, CutFields.THINNEST)) {
            cup.problems(form.unit()).stream()
                .filter(Problem::stops)
                .forEach(problem -> form.problem(CUP_DEPTH, problem.what(), problem.allowed()));
          }
          if (fixed.isPresent() && plate.isPresent() && overlay.isPresent()) {
            overlays(form, cup, fixed.get(), plate.get(), overlay.get());
          }
          var row = new CutAsked.Row(cup.centre(), ends(form, work));
          inside(form, row, work, false);
          return form.result(
              () ->
                  new SingleCut(
                      OperationKind.HINGE_CUPS,
                      "Hinge cups",
                      new CutAsked.Holes(
                          diameter,
                          Optional.empty(),
                          Optional.of(depth),
                          true,
                          row,
                          stock.material(),
                          work),
                      stock,
                      Optional.empty()));
        });
  }

  private static void overlays(
      FormReader form, HingeCup cup, Length fixed, Length plate, Length overlay) {
    var comesTo =
        cup.overlay(
            Worked.entered("fixed distance of the hinge", fixed),
            Worked.entered("height of the plate", plate));
    if (!comesTo.value().equals(overlay) && form.isSound(CUP_DISTANCE)) {
      form.problem(
          OVERLAY,
          "With these figures the door covers "
              + form.shown(comesTo.value())
              + ", not "
              + form.shown(overlay),
          "fixed distance + edge to cup − plate: a cup "
              + form.shown(
                  HingeCup.fromEdge(
                          Worked.entered("overlay", overlay),
                          Worked.entered("fixed distance", fixed),
                          Worked.entered("plate", plate))
                      .value())
              + " from the edge, or another plate");
    }
  }

  /** As far from the far end as from the near one, the others evenly between. */
  private static List<Worked<Length>> ends(FormReader form, Work work) {
    var first = Worked.entered("reference end to cup 1", form.length(FIRST, PLACES));
    var last =
        form.optionalLength(LAST, PLACES)
            .map(one -> Worked.entered("far end to the last cup", one));
    int cups = form.optionalCount(HOLES, 1, 7).orElse(2);
    var length = Worked.entered("length of the edge", work.alongGuide().least());
    var fromFar = last.orElse(first);
    var between = length.value().minus(first.value()).minus(fromFar.value());
    if (cups > 1 && !between.isPositive()) {
      form.problem(
          last.isPresent() ? LAST : FIRST,
          "Both ends' cups would meet",
          "less than half of " + form.shown(length.value()));
      return List.of(first);
    }
    var along = new ArrayList<>(List.of(first));
    for (int i = 1; i < cups; i++) {
      along.add(
          Worked.called("reference end to cup " + (i + 1))
              .by("first + (length − first − last) × %d ÷ %d, to 0.01 mm".formatted(i, cups - 1))
              .with("first", first)
              .with("length", length)
              .with("last", fromFar)
              .is(
                  first
                      .value()
                      .plus(
                          between.inProportion(
                              new Length(i),
                              new Length(cups - 1L),
                              Length.HUNDREDTH,
                              Rounding.NEAREST))));
    }
    return along;
  }

  // ---- shelf pins ------------------------------------------------------------------------------

  private static CutForm shelfPins() {
    return new CutForm(
        "shelf-pins",
        "Row of shelf pins",
        "Holes at one pitch down both sides of a case, with equal margins at both ends.",
        List.of(
            new CutForm.Group(
                "The row", List.of(ROW, FROM_EDGE, PIN, PIN_DEPTH, PIN_PITCH, MARGIN, PINS)),
            piece(SIDE, ACROSS)),
        DRILLS,
        BITS,
        PLACED_AND_DEEP,
        form -> {
          var edge = form.choice(ROW).equals("rear") ? Edge.REAR : Edge.FRONT;
          var fromEdge =
              Worked.entered(edge.words() + " to the row", form.length(FROM_EDGE, PLACES));
          var diameter =
              Worked.entered("diameter of the pin", form.length(PIN, band("2 mm", "20 mm")));
          var depth = Worked.entered("depth of the holes", form.length(PIN_DEPTH, DEPTHS));
          var pitch = Worked.entered("pitch", form.length(PIN_PITCH, band("8 mm", "500 mm")));
          var margin = Worked.entered("least margin at both ends", form.length(MARGIN, DISTANCES));
          var wanted = form.optionalCount(PINS, 1, MOST_HOLES);
          var stock = stock(form);
          var side = Worked.entered("length of the side", form.length(SIDE, SIZES));
          var work =
              new Work(at(side.value()), at(form.length(ACROSS, SIZES)), stock.thickness().ends());
          var pins = new ShelfPins(side, pitch, margin, wanted);
          if (form.isSound(SIDE, PIN_PITCH, MARGIN, PINS)) {
            pins.problems(form.unit())
                .forEach(
                    problem ->
                        form.problem(field(problem.where()), problem.what(), problem.allowed()));
          }
          if (form.isSound(SIDE, PIN_PITCH, MARGIN, PINS) && pins.holes().value() > MOST_HOLES) {
            form.problem(
                PIN_PITCH,
                "That makes " + pins.holes().value() + " holes",
                "at most " + MOST_HOLES);
          }
          leavesWood(form, PIN_DEPTH, depth, stock);
          if (form.isSound(FROM_EDGE, ACROSS)
              && fromEdge.value().isAtLeast(work.acrossGuide().least())) {
            form.problem(
                FROM_EDGE,
                "That is off the side",
                "less than its reach, " + form.shown(work.acrossGuide().least()));
          }
          return form.result(
              () ->
                  new SingleCut(
                      OperationKind.SHELF_PINS,
                      "Row of shelf pins, " + (edge == Edge.FRONT ? "front" : "rear"),
                      new CutAsked.Holes(
                          diameter,
                          Optional.empty(),
                          Optional.of(depth),
                          false,
                          new CutAsked.Row(fromEdge, pins.positions()),
                          stock.material(),
                          work),
                      stock,
                      Optional.empty(),
                      Optional.of(edge)));
        });
  }

  private static Field field(String of) {
    return switch (of) {
      case "margin" -> MARGIN;
      case "pitch" -> PIN_PITCH;
      default -> PINS;
    };
  }

  // ---- dowels ----------------------------------------------------------------------------------

  private static CutForm dowels() {
    return new CutForm(
        "dowels",
        "Dowels across a joint",
        "One joint, two set-ups: holes in the face of one part, and in the end of the other.",
        List.of(
            new CutForm.Group(
                "The joint",
                List.of(DOWELLED, DOWEL, DOWEL_LENGTH, DOWELS, JOINT, DOWEL_EDGE, GLUE_ROOM)),
            new CutForm.Group("The part bored into its end", List.of(END_THICKNESS, END_LENGTH)),
            new CutForm.Group(
                "The part bored into its face",
                List.of(CutFields.THINNEST, CutFields.THICKEST, FACE_TO_MIDDLE, FACE_REACH)),
            new CutForm.Group("Both parts", List.of(CutFields.MATERIAL))),
        DRILLS,
        BITS,
        PLACED_AND_DEEP,
        form -> {
          boolean inFace = !form.choice(DOWELLED).equals("end");
          var diameter =
              Worked.entered("diameter of the dowels", form.length(DOWEL, band("3 mm", "25 mm")));
          var length =
              Worked.entered(
                  "length of the dowels", form.length(DOWEL_LENGTH, band("10 mm", "150 mm")));
          int count = form.count(DOWELS, 1, 20);
          var edge =
              Worked.entered(
                  "edge of the joint to the first dowel", form.length(DOWEL_EDGE, PLACES));
          var room =
              Worked.entered(
                  "glue room at the bottom of each hole",
                  form.length(GLUE_ROOM, band("0 mm", "10 mm")));
          var place = form.optionalLength(FACE_TO_MIDDLE, PLACES);
          var end =
              Worked.entered(
                  "thickness of the part bored into its end",
                  form.length(END_THICKNESS, THICKNESSES));
          var stock = stock(form);
          var joint = Worked.entered("width of the joint", form.length(JOINT, SIZES));
          var across = form.length(FACE_REACH, SIZES);
          var endLength = form.length(END_LENGTH, SIZES);
          var face =
              Worked.measured(
                  "thinnest reading of the part bored into its face",
                  stock.thickness().ends().least());
          var pair =
              new Dowels(joint, count, edge, diameter, length, room, face, end, LEAST_UNDER_DOWEL);
          if (form.isSound(
              DOWEL,
              DOWEL_LENGTH,
              DOWELS,
              DOWEL_EDGE,
              GLUE_ROOM,
              END_THICKNESS,
              CutFields.THINNEST,
              CutFields.THICKEST,
              JOINT)) {
            pair.problems(form.unit()).stream()
                .filter(Problem::stops)
                .forEach(
                    problem ->
                        form.problem(
                            dowelField(problem.where()), problem.what(), problem.allowed()));
          }
          if (inFace
              && form.isSound(FACE_TO_MIDDLE, FACE_REACH)
              && place.isPresent()
              && place.get().isAtLeast(across)) {
            form.problem(
                FACE_TO_MIDDLE,
                "That is off the part",
                "less than its reach, " + form.shown(across));
          }
          // In the face: where the other part's middle will stand; in the end: its own middle.
          var fromEdge =
              inFace
                  ? place
                      .map(
                          one ->
                              Worked.entered("reference edge to the middle of the other part", one))
                      .orElseGet(pair::centre)
                  : pair.centre();
          var work =
              inFace
                  ? new Work(at(joint.value()), at(across), stock.thickness().ends())
                  : new Work(at(joint.value()), at(end.value()), at(endLength));
          return form.result(
              () ->
                  new SingleCut(
                      OperationKind.DOWEL_HOLES,
                      inFace ? "Dowel holes in the face" : "Dowel holes in the end",
                      new CutAsked.Holes(
                          diameter,
                          Optional.empty(),
                          Optional.of(inFace ? pair.depthInFace() : pair.depthInEnd()),
                          false,
                          new CutAsked.Row(fromEdge, pair.positions()),
                          stock.material(),
                          work),
                      stock,
                      Optional.empty()));
        });
  }

  // ---- pocket holes ----------------------------------------------------------------------------

  private static CutForm pocketHoles() {
    return new CutForm(
        "pocket-holes",
        "Pocket holes",
        "Slanted holes for screws through the end of a part, at the 15° of the usual jig.",
        List.of(
            new CutForm.Group(
                "Jig and screw", List.of(JIG_GUIDE, JIG_EXIT, STOP_SHORT, POCKET_SCREW)),
            new CutForm.Group(
                "The part that the screw goes into", List.of(OTHER_DEEP, OTHER_THICK)),
            new CutForm.Group("Where they go", List.of(POCKET_FIRST, HOLES, PITCH)),
            piece(JOINED, JOINED_LENGTH)),
        List.of(HandDrill.class),
        BITS,
        Map.of(Dimension.DEPTH, 2),
        form -> {
          var guide =
              Worked.entered(
                  "face of the work to the collar's seat, along the bit",
                  form.length(JIG_GUIDE, SIZES_OF_JIGS));
          var exit = form.optionalLength(JIG_EXIT, THICKNESSES);
          var stopShort =
              Worked.entered(
                  "what the bit stops short of the end",
                  form.length(STOP_SHORT, band("0.5 mm", "15 mm")));
          var screw =
              Worked.entered("length of the screw", form.length(POCKET_SCREW, SCREW_LENGTHS));
          var deep =
              Worked.entered("other part, away from the joint", form.length(OTHER_DEEP, SIZES));
          var thick =
              form.optionalLength(OTHER_THICK, THICKNESSES)
                  .map(one -> Worked.entered("thickness of the other part", one));
          var first =
              Worked.entered("reference edge to pocket 1", form.length(POCKET_FIRST, PLACES));
          var along = along(form, first, "reference edge to pocket ");
          var stock = stock(form);
          var work =
              new Work(
                  at(form.length(JOINED, SIZES)),
                  at(form.length(JOINED_LENGTH, SIZES)),
                  stock.thickness().ends());
          var thinnest =
              Worked.measured("thinnest reading of the part", stock.thickness().ends().least());
          var leaves =
              exit.map(one -> Worked.entered("face to where the axis leaves the end", one))
                  .orElseGet(
                      () ->
                          Worked.called("face to where the axis leaves the end")
                              .by("thinnest reading ÷ 2")
                              .with("thinnest reading", thinnest)
                              .is(thinnest.value().half()));
          var mouth =
              Worked.called("end to the middle of the pocket's mouth")
                  .by("face to where the axis leaves the end ÷ tan(angle), to 0.01 mm")
                  .with("face to where the axis leaves the end", leaves)
                  .with("angle", POCKET_ANGLE)
                  .is(
                      leaves
                          .value()
                          .times(
                              Angle.RIGHT.minus(POCKET_ANGLE.value()).tangent(),
                              Length.HUNDREDTH,
                              Rounding.NEAREST));
          var row = new CutAsked.Row(mouth, along);
          if (form.isSound(POCKET_FIRST, HOLES, PITCH, JOINED)
              && row.last().value().isAtLeast(work.alongGuide().least())) {
            form.problem(
                along.size() > 1 ? PITCH : POCKET_FIRST,
                "The last pocket would be off the part, "
                    + form.shown(row.last().value())
                    + " from its edge",
                "less than its width, " + form.shown(work.alongGuide().least()));
          }
          return form.result(
              () ->
                  new SingleCut(
                      OperationKind.POCKET_HOLES,
                      "Pocket holes",
                      new CutAsked.Pocket(
                          POCKET_ANGLE,
                          leaves,
                          guide,
                          stopShort,
                          screw,
                          deep,
                          thick,
                          row,
                          stock.material(),
                          work),
                      stock,
                      Optional.empty()));
        });
  }

  private static Field dowelField(String of) {
    return switch (of) {
      case "edge" -> DOWEL_EDGE;
      case "count" -> DOWELS;
      case "diameter" -> DOWEL;
      default -> DOWEL_LENGTH;
    };
  }

  private static void leavesWood(FormReader form, Field field, Worked<Length> depth, Sheet stock) {
    var thinnest = stock.thickness().ends().least();
    if (form.isSound(field, CutFields.THINNEST) && depth.value().isAtLeast(thinnest)) {
      form.problem(field, "That goes through the piece", "less than " + form.shown(thinnest));
    }
  }

  // ---- screws ----------------------------------------------------------------------------------

  private static String title(String bore) {
    return switch (bore) {
      case "pilot" -> "Pilot for a screw";
      case "countersink" -> "Seat for the head of a screw";
      default -> "Clearance hole for a screw";
    };
  }

  private static CutAsked asked(
      String bore,
      ScrewHoles screw,
      Optional<Length> length,
      Optional<Length> through,
      Optional<Length> head,
      CutAsked.Row row,
      Sheet stock,
      Work work) {
    var material = stock.material();
    var wood = wood(material);
    return switch (bore) {
      case "pilot" ->
          new CutAsked.Holes(
              screw.pilot(wood),
              Optional.of(screw.pilotAccepted(wood)),
              Optional.of(
                  ScrewHoles.pilotDepth(
                      Worked.entered("length of the screw", length.orElseThrow()),
                      Worked.entered(
                          "thickness of the part under the head", through.orElseThrow()))),
              false,
              row,
              material,
              work);
      case "countersink" ->
          new CutAsked.Countersink(
              Worked.entered("head of the screw", head.orElseThrow()),
              screw.clearance(),
              Worked.given(
                  "how far the head is to lie below the face",
                  UNDER_FACE,
                  Citation.COMMON_PRACTICE),
              row,
              material,
              work);
      default ->
          new CutAsked.Holes(
              screw.clearance(),
              Optional.of(screw.clearanceAccepted()),
              Optional.empty(),
              false,
              row,
              material,
              work);
    };
  }

  private static ScrewHoles.Wood wood(Material material) {
    return switch (material) {
      case SOFTWOOD -> ScrewHoles.Wood.SOFTWOOD;
      case HARDWOOD -> ScrewHoles.Wood.HARDWOOD;
      case PLYWOOD, MDF, PARTICLEBOARD, HARDBOARD -> ScrewHoles.Wood.PANEL;
    };
  }

  /** A screw by its number, or by what the caliper says of it. */
  private static ScrewHoles screw(FormReader form) {
    var chosen = form.choice(SCREW);
    var shank = form.optionalLength(SHANK, SCREWS);
    var root = form.optionalLength(ROOT, SCREWS);
    if (chosen.matches("4|6|8|10")) {
      return ScrewHoles.ofGauge(Integer.parseInt(chosen));
    }
    if (chosen.equals(BY_CALIPER)) {
      wanted(form, SHANK, shank);
      wanted(form, ROOT, root);
    }
    if (shank.isPresent() && root.isPresent()) {
      if (root.get().isLessThan(shank.get())) {
        return new ScrewHoles(
            Worked.measured("diameter of the screw", shank.get()),
            Worked.measured("root of the screw", root.get()));
      }
      form.problem(
          ROOT, "That is not less than over the thread", "less than " + form.shown(shank.get()));
    }
    return ScrewHoles.ofGauge(8);
  }

  private static void wanted(FormReader form, Field field, Optional<Length> length) {
    if (length.isEmpty() && form.isSound(field)) {
      form.problem(field, "Nothing was entered, and this hole needs it", "a length");
    }
  }

  private static void reaches(FormReader form, Length screw, Length through, Sheet stock) {
    var thinnest = stock.thickness().ends().least();
    if (screw.isAtMost(through)) {
      form.problem(
          SCREW_LENGTH,
          "The screw ends in the part under its head",
          "more than " + form.shown(through));
    } else if (form.isSound(CutFields.THINNEST) && screw.minus(through).isAtLeast(thinnest)) {
      form.problem(
          SCREW_LENGTH,
          "The screw would come out of the piece: it goes in " + form.shown(screw.minus(through)),
          "less than " + form.shown(through.plus(thinnest)));
    }
  }

  /** A row with equal steps from the first hole. */
  private static CutAsked.Row row(FormReader form) {
    var fromEdge = Worked.entered("reference edge to the holes", form.length(FROM_EDGE, PLACES));
    var first = Worked.entered("reference end to hole 1", form.length(FIRST, PLACES));
    return new CutAsked.Row(fromEdge, along(form, first, "reference end to hole "));
  }

  private static List<Worked<Length>> along(FormReader form, Worked<Length> first, String called) {
    var holes = form.optionalCount(HOLES, 1, MOST_HOLES).orElse(1);
    var pitch = form.optionalLength(PITCH, SIZES);
    if (holes > 1) {
      wanted(form, PITCH, pitch);
    }
    var along = new ArrayList<>(List.of(first));
    for (int i = 1; i < holes && pitch.isPresent(); i++) {
      along.add(
          Worked.called(called + (i + 1))
              .by("first hole + " + i + " × from hole to hole")
              .with("first hole", first)
              .with("from hole to hole", Worked.entered("from hole to hole", pitch.get()))
              .is(first.value().plus(pitch.get().times(i))));
    }
    return along;
  }

  private static void inside(FormReader form, CutAsked.Row row, Work work, boolean pitched) {
    if (form.isSound(FROM_EDGE, ACROSS)
        && row.fromEdge().value().isAtLeast(work.acrossGuide().least())) {
      form.problem(
          FROM_EDGE,
          "That is off the piece",
          "less than its reach, " + form.shown(work.acrossGuide().least()));
    }
    if (form.isSound(FIRST, HOLES, PITCH, ALONG)
        && row.last().value().isAtLeast(work.alongGuide().least())) {
      form.problem(
          pitched && row.along().size() > 1 ? PITCH : FIRST,
          "The last hole would be off the piece, "
              + form.shown(row.last().value())
              + " from the end",
          "less than its edge, " + form.shown(work.alongGuide().least()));
    }
  }
}
