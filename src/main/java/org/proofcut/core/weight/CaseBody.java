package org.proofcut.core.weight;

import java.math.BigInteger;
import java.util.List;
import java.util.function.Function;
import org.proofcut.core.casework.Case;
import org.proofcut.core.casework.Seated;
import org.proofcut.core.casework.Seated.Block;
import org.proofcut.core.casework.SpaceCheck;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.part.Part;

/**
 * A finished case as a body: where the middle of gravity of each part lies, with its housings cut,
 * and what it weighs. Glue, screws, edging and finish are left out.
 */
public record CaseBody(List<Piece> pieces) {

  /**
   * One part in its place.
   *
   * @param behind from the front edges to its middle of gravity
   * @param high from the floor to it
   */
  public record Piece(Part part, Weight weight, Worked<Length> behind, Worked<Length> high) {}

  public CaseBody {
    pieces = List.copyOf(pieces);
  }

  /** The body of a case whose design has no problem that stops it. */
  public static CaseBody of(Case sound, Densities densities) {
    return new CaseBody(
        SpaceCheck.seated(sound).stream().map(seated -> piece(seated, densities)).toList());
  }

  private static Piece piece(Seated seated, Densities densities) {
    var part = seated.part();
    var volume =
        seated.blocks().stream().map(CaseBody::volume).reduce(BigInteger.ZERO, BigInteger::add);
    var density = densities.of(part.sheet().material());
    return new Piece(
        part,
        Weight.ofVolume(density, volume, "the " + part.name()),
        // To the unsafe side never: nearer to the front, and higher.
        middle(seated, "front edges", Block::deep, Rounding.DOWN),
        middle(seated, "floor", Block::high, Rounding.UP));
  }

  /** Each block as often as it is large, all divided by the whole. */
  private static Worked<Length> middle(
      Seated seated, String from, Function<Block, Band> axis, Rounding rounding) {
    var moment = BigInteger.ZERO;
    var volume = BigInteger.ZERO;
    for (var block : seated.blocks()) {
      var band = axis.apply(block);
      var ends =
          BigInteger.valueOf(band.least().picometres())
              .add(BigInteger.valueOf(band.most().picometres()));
      moment = moment.add(volume(block).multiply(ends));
      volume = volume.add(volume(block));
    }
    var step = BigInteger.valueOf(Length.HUNDREDTH.picometres());
    var divisor = volume.shiftLeft(1).multiply(step);
    var steps = moment.divide(divisor);
    if (rounding == Rounding.UP && moment.mod(divisor).signum() != 0) {
      steps = steps.add(BigInteger.ONE);
    }
    return Worked.called(from + " to the middle of gravity of the " + seated.part().name())
        .by("middle of all its blocks, to 0.01 mm " + (rounding == Rounding.UP ? "up" : "down"))
        .with("length of the part", seated.part().length())
        .with("width of the part", seated.part().width())
        .is(Length.HUNDREDTH.times(steps.longValueExact()));
  }

  private static BigInteger volume(Block block) {
    return extent(block.across()).multiply(extent(block.deep())).multiply(extent(block.high()));
  }

  private static BigInteger extent(Band band) {
    return BigInteger.valueOf(band.extent().picometres());
  }

  /** What the whole weighs. */
  public Weight weight() {
    return Weight.sum("the case", pieces.stream().map(Piece::weight).toList());
  }

  /** Where the middle of gravity of the whole lies behind the front edges, if it is light. */
  public Worked<Length> behind() {
    return whole("front edges to the middle of gravity of the case", Piece::behind);
  }

  /** How high the middle of gravity of the whole lies, if it is light. */
  public Worked<Length> high() {
    return whole("floor to the middle of gravity of the case", Piece::high);
  }

  private Worked<Length> whole(String name, Function<Piece, Worked<Length>> of) {
    var working =
        Worked.called(name).by("sum of weight × place of each part ÷ weight of all, to 0.01 mm");
    var moment = BigInteger.ZERO;
    var weight = BigInteger.ZERO;
    for (var piece : pieces) {
      var grams = piece.weight().least().value().value().movePointRight(3).toBigIntegerExact();
      var place = of.apply(piece);
      working = working.with(piece.weight().least()).with(place);
      moment = moment.add(grams.multiply(BigInteger.valueOf(place.value().picometres())));
      weight = weight.add(grams);
    }
    return working.is(
        new Length(moment.divide(weight).longValueExact())
            .roundedTo(Length.HUNDREDTH, Rounding.NEAREST));
  }
}
