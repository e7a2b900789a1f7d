package org.proofcut.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.setup.ShopsForTests.mm;

import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.CutAsked.Planing;

/**
 * Boards planed and jointed as their sheets say, in a board drawn from the side: its thickness in
 * columns along its length. Which way knives run is worked out from which way their head turns and
 * where it stands, not from what the sheet says of it.
 */
class KnifeCutsByCuttingTest {

  private static final int COLUMNS = 90;

  /** Seen from the person's side, fed to the left; the trailing end is on the right. */
  private enum Head {
    /** Below the work, its top running away from the outfeed table: clockwise. */
    OF_A_JOINTER(-1, -1),
    /** Above the work: counter-clockwise. */
    OF_A_PLANER(1, 1);

    /** 1 above the work, −1 below it. */
    private final int stands;

    /** 1 counter-clockwise. */
    private final int turns;

    Head(int stands, int turns) {
      this.stands = stands;
      this.turns = turns;
    }

    /** A point at (0, y) from the middle of the head moves (−turns · y, 0). */
    int knifeRuns() {
      int y = -stands;
      return -turns * y;
    }

    /** Whether the knives run against work that moves so. */
    boolean holdsBack(int workMoves) {
      return knifeRuns() * workMoves < 0;
    }

    /** Fibres that rise so much to the right come out of the face that is cut, or run into it. */
    boolean cutsFibresOff(int rise) {
      return knifeRuns() * rise * stands > 0;
    }
  }

  /** A board from the side. */
  private static final class Board {
    private final Length[] thick = new Length[COLUMNS];
    private int rise;
    private boolean roughUp = true;
    private Length offRough = Length.ZERO;
    private Length offFlat = Length.ZERO;

    Board(Length thinnest, Length thickest, int rise) {
      this.rise = rise;
      for (int i = 0; i < COLUMNS; i++) {
        thick[i] = thinnest.plus(new Length((thickest.minus(thinnest).picometres() / 89) * i));
      }
      thick[COLUMNS - 1] = thickest;
    }

    Length thickest() {
      var most = Length.ZERO;
      for (var one : thick) {
        most = most.max(one);
      }
      return most;
    }

    /** Under the planer's knives at this height; what is taken at the thickest place. */
    Length plane(Length height) {
      var before = thickest();
      for (int i = 0; i < COLUMNS; i++) {
        thick[i] = thick[i].min(height);
      }
      var taken = before.minus(thickest());
      if (roughUp) {
        offRough = offRough.plus(taken);
      } else {
        offFlat = offFlat.plus(taken);
      }
      return taken;
    }

    void turnEndOverEnd() {
      roughUp = !roughUp;
    }

    void rollOver() {
      roughUp = !roughUp;
      rise = -rise;
    }
  }

  private static Answer planing(int targetTenths, int overTenths, int wavyTenths) {
    var target = ShopsForTests.tenths(targetTenths);
    var thickest = target.plus(ShopsForTests.tenths(overTenths));
    var thinnest = thickest.minus(ShopsForTests.tenths(Math.min(wavyTenths, overTenths)));
    var work =
        new Work(
            new Band(mm(900), mm(900)), new Band(mm(150), mm(150)), new Band(thinnest, thickest));
    return KnifeSetup.planing(
        new Planing(Worked.entered("thickness", target), Worked.entered("length", mm(600)), work),
        ShopsForTests.PLANER,
        ShopsForTests.CONDITIONS);
  }

  @Property(tries = 2_000, edgeCases = EdgeCasesMode.NONE)
  void planed_comesToItsThickness_andNoPassIsTooDeep(
      @ForAll @IntRange(min = 80, max = 600) int target,
      @ForAll @IntRange(min = 1, max = 120) int over,
      @ForAll @IntRange(min = 0, max = 30) int wavy) {
    var answer = planing(target, over, wavy);
    Assume.that(answer instanceof Setup);
    var setup = (Setup) answer;
    var work = setup.asked().work().thickness();
    var board = new Board(work.least(), work.most(), 1);
    for (var pass : setup.passes()) {
      assertTrue(Head.OF_A_PLANER.holdsBack(-1));
      assertTrue(Head.OF_A_PLANER.cutsFibresOff(board.rise), "torn out");
      assertEquals(board.roughUp, pass.planed().orElseThrow().where().startsWith("rough"));
      var taken = board.plane(setup.read(pass));
      assertEquals(taken, pass.planed().orElseThrow().takes());
      assertEquals(board.thickest(), pass.planed().orElseThrow().leaves());
      assertTrue(taken.isPositive() && taken.isAtMost(Length.of("1.5 mm")), taken::toString);
      board.turnEndOverEnd();
    }
    for (var column : board.thick) {
      assertEquals(ShopsForTests.tenths(target), column);
    }
    var uneven = board.offRough.minus(board.offFlat).abs();
    var light = setup.passes().get(setup.passes().size() - 1).planed().orElseThrow().takes();
    if (setup.passes().size() % 2 == 0) {
      assertTrue(uneven.isLessThan(ShopsForTests.tenths(2)), uneven::toString);
    }
    assertTrue(light.isAtMost(Length.of("0.5 mm")));
  }

  @Property(tries = 500, edgeCases = EdgeCasesMode.NONE)
  void jointed_isWholeAfterItsPasses(@ForAll @IntRange(min = 1, max = 250) int offTenths) {
    var off = ShopsForTests.tenths(offTenths);
    var answer =
        KnifeSetupTest.jointed(
            off.toString(), false, KnifeSetupTest.board("900 mm", "150 mm", "40 mm", "40 mm"));
    Assume.that(answer instanceof Setup);
    var setup = (Setup) answer;
    // The rims stand proud by the gap; each pass cuts all that stands lower than the pass before.
    var proud = off;
    int passes = 0;
    while (proud.isPositive()) {
      proud = proud.minus(setup.settings().get(0).read().value());
      passes++;
    }
    assertEquals(passes, setup.passes().size());
    assertTrue(setup.settings().get(0).set().value().isAtMost(Length.of("1.5 mm")));
    assertTrue(Head.OF_A_JOINTER.holdsBack(-1));
    assertTrue(Head.OF_A_JOINTER.cutsFibresOff(-1));
  }

  /** What is wrong has to be seen, or its silence says nothing. */
  @Test
  void fedFromTheWrongEnd_isAClimbCut() {
    assertFalse(Head.OF_A_JOINTER.holdsBack(1));
    assertFalse(Head.OF_A_PLANER.holdsBack(1));
  }

  @Test
  void grainTheOtherWay_isTornOut_atEither() {
    assertFalse(Head.OF_A_JOINTER.cutsFibresOff(1));
    assertFalse(Head.OF_A_PLANER.cutsFibresOff(-1));
  }

  /** As it came over the jointer, the grain would be wrong: the board is turned end for end. */
  @Test
  void fromJointerToPlaner_endForEnd_keepsTheGrainRight() {
    int overTheJointer = -1;
    assertTrue(Head.OF_A_JOINTER.cutsFibresOff(overTheJointer));
    assertFalse(Head.OF_A_PLANER.cutsFibresOff(overTheJointer));
    // End for end, the same face down: what rose to the right rises to the left.
    assertTrue(Head.OF_A_PLANER.cutsFibresOff(-overTheJointer));
  }

  @Test
  void rolledOverSideways_tearsTheOtherFace() {
    var board = new Board(mm(23), mm(24), 1);
    board.rollOver();
    assertFalse(Head.OF_A_PLANER.cutsFibresOff(board.rise));
  }

  @Test
  void passLeftOut_orHeightOff_showsInTheThickness() {
    var setup = (Setup) planing(200, 40, 10);
    assertNotEquals(mm(20), planed(setup.passes().subList(0, setup.passes().size() - 1), setup));
    assertEquals(mm(20), planed(setup.passes(), setup));
  }

  @Test
  void passesOnOneFaceOnly_leaveItUneven() {
    var setup = (Setup) planing(200, 40, 10);
    var board = new Board(mm(23), mm(24), 1);
    setup.passes().forEach(pass -> board.plane(setup.read(pass)));
    assertEquals(mm(4), board.offRough.minus(board.offFlat));
  }

  private static Length planed(List<Pass> passes, Setup setup) {
    var board = new Board(mm(23), mm(24), 1);
    passes.forEach(pass -> board.plane(setup.read(pass)));
    return board.thickest();
  }
}
