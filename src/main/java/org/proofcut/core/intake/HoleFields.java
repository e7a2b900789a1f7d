package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.ACROSS;
import static org.proofcut.core.intake.CutFields.ALONG;
import static org.proofcut.core.intake.CutFields.SIZES;
import static org.proofcut.core.intake.CutFields.band;
import static org.proofcut.core.intake.Field.count;
import static org.proofcut.core.intake.Field.length;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.setup.Work;
import org.proofcut.core.shop.Bit;
import org.proofcut.core.shop.Cutter;
import org.proofcut.core.shop.DrillPress;
import org.proofcut.core.shop.HandDrill;
import org.proofcut.core.shop.Machine;

/** Fields that several kinds of hole ask for, and how a row of them is read. */
final class HoleFields {

  static final List<Class<? extends Machine>> DRILLS = List.of(DrillPress.class, HandDrill.class);

  static final List<Class<? extends Cutter>> BITS = List.of(Bit.class);

  /** A hole on the very edge is none. */
  static final Band PLACES = band("1 mm", "4000 mm");

  static final Band SCREW_LENGTHS = band("6 mm", "200 mm");

  static final Field FROM_EDGE =
      length("from-edge", "From the reference edge", "to the centre of the holes");

  static final Field FIRST = length("first", "First hole", "from the reference end to its centre");

  static final Field HOLES =
      count("holes", "How many holes", "in this row; one if left empty").mayStayEmpty();

  static final Field PITCH =
      length("pitch", "From hole to hole", "centre to centre; only for several").mayStayEmpty();

  static final int MOST_HOLES = 60;

  static final Map<Dimension, Integer> PLACED_AND_DEEP =
      Map.of(
          Dimension.DIAMETER, 2, Dimension.DEPTH, 2, Dimension.DISTANCE, 2, Dimension.FROM_END, 2);

  private HoleFields() {}

  static List<Worked<Length>> along(FormReader form, Worked<Length> first, String called) {
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

  /**
   * The holes lie on the piece.
   *
   * @param out the field that says how far they lie from the reference edge
   * @param apart the field that is told when the last one is off the piece
   */
  static void inside(FormReader form, CutAsked.Row row, Work work, Field out, Field apart) {
    within(form, out, row.fromEdge().value(), work);
    if (form.isSound(FIRST, HOLES, PITCH, ALONG)
        && row.last().value().isAtLeast(work.alongGuide().least())) {
      form.problem(
          row.along().size() > 1 ? apart : FIRST,
          "The last hole would be off the piece, "
              + form.shown(row.last().value())
              + " from the end",
          "less than its edge, " + form.shown(work.alongGuide().least()));
    }
  }

  static void wanted(FormReader form, Field field, Optional<Length> length) {
    if (length.isEmpty() && form.isSound(field)) {
      form.problem(field, "Nothing was entered, and this hole needs it", "a length");
    }
  }

  /** A row so far from the reference edge lies on the piece. */
  static void within(FormReader form, Field out, Length fromEdge, Work work) {
    if (form.isSound(out, ACROSS) && fromEdge.isAtLeast(work.acrossGuide().least())) {
      form.problem(
          out,
          "That is off the piece",
          "less than its reach, " + form.shown(work.acrossGuide().least()));
    }
  }
}
