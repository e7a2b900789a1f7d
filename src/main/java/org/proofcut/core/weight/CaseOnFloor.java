package org.proofcut.core.weight;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.proofcut.core.casework.Case;
import org.proofcut.core.casework.CaseDesign.Outside;
import org.proofcut.core.casework.Seated;
import org.proofcut.core.casework.Seated.Block;
import org.proofcut.core.casework.SpaceCheck;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.ClothingStorage;
import org.proofcut.core.exposure.Standing;
import org.proofcut.core.exposure.Standing.Mass;
import org.proofcut.core.exposure.Standing.Pull;
import org.proofcut.core.measure.Length;
import org.proofcut.core.part.PartRole;

/**
 * A finished case that stands free on the lower ends of its sides, with what stands in it, what is
 * open before it, what hangs on it and who pulls at it.
 *
 * @param outside its outer size
 * @param contents what stands in each compartment that holds anything
 * @param fronts doors and drawers with what is in them; empty where there are none
 * @param frontsBefore how far before the front edges their middle lies when they are open
 * @param hung what hangs on the front, such as a child
 * @param hungBefore how far before the front edges it hangs
 * @param pull how hard somebody pulls forward
 * @param pullHigh at what height above the floor
 * @param drop how much lower the front feet stand than the rear ones
 * @param feetBack how far the front feet stand behind the front edges
 */
public record CaseOnFloor(
    CaseBody body,
    Outside outside,
    List<Contents> contents,
    Optional<Worked<Amount>> fronts,
    Worked<Length> frontsBefore,
    Worked<Amount> hung,
    Worked<Length> hungBefore,
    Worked<Amount> pull,
    Worked<Length> pullHigh,
    Worked<Length> drop,
    Worked<Length> feetBack) {

  /** The room over a board, with what it measures inside. */
  public record Compartment(
      String name,
      Worked<Length> width,
      Worked<Length> depth,
      Worked<Length> floor,
      Worked<Length> height) {

    /** What usually stands in it, by the area of its board. */
    public Worked<Amount> usual(Worked<Integer> kilogramsPerSquareMetre) {
      var area = width.value().inMillimetres().multiply(depth.value().inMillimetres());
      return Worked.called("what usually stands " + name)
          .by("width × depth × weight on a square metre, to 0.1 kg")
          .with("width", width)
          .with("depth", depth)
          .with("weight on a square metre", kilogramsPerSquareMetre)
          .from(kilogramsPerSquareMetre.source())
          .is(
              new Amount(
                  area.multiply(BigDecimal.valueOf(kilogramsPerSquareMetre.value()))
                      .movePointLeft(6)
                      .setScale(1, RoundingMode.HALF_UP),
                  "kg"));
    }

    /** The middle of it, from the front edges. */
    public Worked<Length> middle() {
      return Worked.called("middle of what stands " + name)
          .by("½ × depth")
          .with("depth", depth)
          .is(depth.value().half());
    }
  }

  /**
   * What stands in a compartment.
   *
   * @param behind from the front edges to its middle
   */
  public record Contents(Compartment in, Worked<Amount> weight, Worked<Length> behind) {

    private Worked<Length> high() {
      return Worked.called("height of what stands " + in.name())
          .by("height of the board + ½ × height of the room over it")
          .with("height of the board", in.floor())
          .with("height of the room over it", in.height())
          .is(in.floor().value().plus(in.height().value().half()));
    }
  }

  /** How much of what usually stands in it is there. */
  public enum Filling {
    EMPTY("empty"),
    /** Only what hangs before the front feet, where the floor drops; the rest taken out. */
    ABOVE("filled above alone"),
    FULL("full");

    private final String words;

    Filling(String words) {
      this.words = words;
    }
  }

  /** One way in which it is met with. */
  public record State(Filling filling, boolean open, boolean pulled, Standing standing) {

    /** In words: {@code empty, doors and drawers open, pulled}. */
    public String words() {
      return filling.words
          + (open ? ", doors and drawers open" : ", shut")
          + (pulled ? ", hung on and pulled" : ", left alone");
    }
  }

  public CaseOnFloor {
    contents = List.copyOf(contents);
  }

  /** The compartments of a sound case, from the bottom up. */
  public static List<Compartment> compartments(Case sound) {
    var seated = SpaceCheck.seated(sound);
    var boards =
        seated.stream()
            .filter(
                one -> one.part().role() == PartRole.BOTTOM || one.part().role() == PartRole.SHELF)
            .sorted(Comparator.comparing((Seated one) -> top(one)))
            .toList();
    var ceilings = new ArrayList<>(boards.subList(1, boards.size()));
    ceilings.add(
        seated.stream().filter(one -> one.part().role() == PartRole.TOP).findFirst().orElseThrow());
    var left = side(seated, PartRole.LEFT_SIDE);
    var right = side(seated, PartRole.RIGHT_SIDE);
    var compartments = new ArrayList<Compartment>();
    for (int i = 0; i < boards.size(); i++) {
      var board = boards.get(i);
      var floor = top(board);
      compartments.add(
          new Compartment(
              (board.part().role() == PartRole.BOTTOM ? "on the " : "on ") + board.part().name(),
              Worked.called("width between the sides")
                  .by("from the inside of one side to that of the other, as assembled")
                  .with("length of the board", board.part().length())
                  .is(right.minus(left)),
              board.part().width().as("depth of the " + board.part().name()),
              seatedAt("height of the upper face of the " + board.part().name(), floor),
              seatedAt(
                  "height of the room over the " + board.part().name(),
                  underside(ceilings.get(i)).minus(floor))));
    }
    return compartments;
  }

  private static Worked<Length> seatedAt(String name, Length value) {
    return Worked.given(name, value, Citation.GEOMETRY);
  }

  /** Where the inside of a side lies: the housings take nothing of what stands between them. */
  private static Length side(List<Seated> seated, PartRole role) {
    var blocks =
        seated.stream()
            .filter(one -> one.part().role() == role)
            .flatMap(one -> one.blocks().stream())
            .map(Block::across);
    return role == PartRole.LEFT_SIDE
        ? blocks.map(band -> band.most()).max(Comparator.naturalOrder()).orElseThrow()
        : blocks.map(band -> band.least()).min(Comparator.naturalOrder()).orElseThrow();
  }

  private static Length top(Seated board) {
    return board.blocks().stream()
        .map(block -> block.high().most())
        .max(Comparator.naturalOrder())
        .orElseThrow();
  }

  private static Length underside(Seated board) {
    return board.blocks().stream()
        .map(block -> block.high().least())
        .min(Comparator.naturalOrder())
        .orElseThrow();
  }

  /** Empty, filled so that it is worst, and full; shut and open; left alone and pulled. */
  public List<State> states() {
    var states = new ArrayList<State>();
    for (boolean pulled : new boolean[] {false, true}) {
      for (var filling : fillings()) {
        for (boolean open : new boolean[] {false, true}) {
          if (!open || fronts.isPresent()) {
            states.add(new State(filling, open, pulled, standing(filling, open, pulled)));
          }
        }
      }
    }
    return states;
  }

  /** Where no shelf holds it while another turns it over, full or empty is worst. */
  private List<Filling> fillings() {
    long above = contents(Filling.ABOVE).size();
    return Stream.of(Filling.values())
        .filter(filling -> filling != Filling.ABOVE || 0 < above && above < contents.size())
        .toList();
  }

  private List<Mass> contents(Filling filling) {
    var all =
        contents.stream()
            .map(
                each ->
                    Mass.of(
                        "contents " + each.in().name(),
                        each.weight(),
                        behindTheFeet(each.behind()),
                        each.high()))
            .toList();
    return switch (filling) {
      case EMPTY -> List.of();
      case ABOVE -> all.stream().filter(on(all)::isTurnedOverBy).toList();
      case FULL -> all;
    };
  }

  /** The way that comes nearest to tipping, or tips by most. */
  public State worst() {
    return states().stream()
        .min(Comparator.comparing(state -> state.standing().margin().value().value()))
        .orElseThrow();
  }

  private Standing standing(Filling filling, boolean open, boolean pulled) {
    var masses = new ArrayList<Mass>();
    for (var piece : body.pieces()) {
      masses.add(
          new Mass(
              piece.part().name(),
              piece.weight().least(),
              piece.weight().most(),
              behindTheFeet(piece.behind()),
              piece.high()));
    }
    masses.addAll(contents(filling));
    fronts.ifPresent(
        weight ->
            masses.add(
                Mass.of(
                    "doors and drawers",
                    weight,
                    before(open ? frontsBefore : atTheFront()),
                    middleHeight())));
    if (!pulled) {
      return on(masses);
    }
    masses.add(Mass.of("weight that hangs on the front", hung, before(hungBefore), top()));
    return new Standing(masses, List.of(new Pull("pull", pull, pullHigh)), drop, base());
  }

  private Standing on(List<Mass> masses) {
    return new Standing(masses, List.of(), drop, base());
  }

  private Worked<Length> base() {
    return Worked.called("front feet to rear feet")
        .by("depth of the case − front feet behind the front edges")
        .with("depth of the case", Worked.entered("depth of the case", outside.depth()))
        .with("front feet behind the front edges", feetBack)
        .is(outside.depth().minus(feetBack.value()));
  }

  private Worked<Length> behindTheFeet(Worked<Length> behindTheEdges) {
    return Worked.called("behind the front feet")
        .by("behind the front edges − front feet behind the front edges")
        .with("behind the front edges", behindTheEdges)
        .with("front feet behind the front edges", feetBack)
        .is(behindTheEdges.value().minus(feetBack.value()));
  }

  private Worked<Length> before(Worked<Length> before) {
    return Worked.called("behind the front feet; negative before them")
        .by("− before the front edges − front feet behind the front edges")
        .with("before the front edges", before)
        .with("front feet behind the front edges", feetBack)
        .is(before.value().negated().minus(feetBack.value()));
  }

  private static Worked<Length> atTheFront() {
    return Worked.entered("shut, at the front edges", Length.ZERO);
  }

  private Worked<Length> top() {
    return Worked.entered("height of the case", outside.height());
  }

  private Worked<Length> middleHeight() {
    return Worked.called("middle of the height")
        .by("½ × height of the case")
        .with("height of the case", top())
        .is(outside.height().half());
  }

  /** How it compares in size with what a standard for clothing storage tests. */
  public ClothingStorage comparedInSize() {
    return new ClothingStorage(
        top(),
        body.weight().most(),
        ClothingStorage.counted(
            Worked.entered("width of the case", outside.width()),
            top(),
            Worked.entered("depth of the case", outside.depth())));
  }
}
