package org.proofcut.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.setup.ShopsForTests.mm;
import static org.proofcut.core.setup.ShopsForTests.tenths;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.setup.CutAsked.Step;
import org.proofcut.core.shop.TableSaw;
import org.proofcut.core.shop.TableSaw.BlindCuts;

/**
 * Both cuts of steps, set as their sheets say, in the section of a board. The board is a grid of
 * tenths of a millimetre: along it from the edge that is stepped, across it from the face that
 * stays. What is free of the board after the cuts is found by spreading from where the fence holds
 * it.
 */
class SawStepsByCuttingTest {

  private static final TableSaw SAW = ShopsForTests.sawWith(new BlindCuts(true, Optional.empty()));
  private static final Conditions CONDITIONS =
      new Conditions(
          ShopsForTests.LIMITS, List.of("featherboard", "carrier-jig"), LengthUnit.MILLIMETRE);
  private static final int KERF = 28;

  private static Answer cut(
      Length width, Length stays, Length carrier, boolean onEdge, Band thick) {
    return SawStepSetup.cut(
        new Step(
            Worked.entered("width", width),
            Worked.entered("stays", stays),
            Optional.empty(),
            carrier.isZero() ? Optional.empty() : Optional.of(Worked.measured("carrier", carrier)),
            onEdge,
            new Work(new Band(mm(400), mm(400)), new Band(mm(600), mm(600)), thick)),
        SAW,
        ShopsForTests.RIP_BLADE,
        CONDITIONS);
  }

  /** The section of one board near its edge. */
  private static final class Board {
    private final boolean[][] wood;
    private final int thick;
    private final int deep;

    Board(int thick, int deep) {
      this.thick = thick;
      this.deep = deep;
      this.wood = new boolean[deep][thick];
      for (var row : wood) {
        Arrays.fill(row, true);
      }
    }

    private void remove(int fromEdge, int toEdge, int fromFace, int toFace) {
      for (int i = Math.max(0, fromEdge); i < Math.min(deep, toEdge); i++) {
        for (int j = Math.max(0, fromFace); j < Math.min(thick, toFace); j++) {
          wood[i][j] = false;
        }
      }
    }

    /** Cut face down, edge to the fence, which stands so far from the far side of the teeth. */
    void cutFlat(int farSide, int height) {
      remove(farSide - KERF, farSide, thick - height, thick);
    }

    /** Edge down, the face that stays toward the fence; near side of the teeth so far from it. */
    void cutOnEdge(int nearSide, int height) {
      remove(0, height, nearSide, nearSide + KERF);
    }

    /**
     * The wrong way round: the cut face toward the fence, the blade set for the waste's thickness.
     */
    void cutOnEdgeTurned(int nearSide, int height) {
      remove(0, height, thick - nearSide - KERF, thick - nearSide);
    }

    /** Cells that still hang on the board's middle. */
    private boolean[][] held() {
      var held = new boolean[deep][thick];
      var open = new ArrayList<int[]>();
      open.add(new int[] {deep - 1, 0});
      while (!open.isEmpty()) {
        var at = open.remove(open.size() - 1);
        int i = at[0];
        int j = at[1];
        if (i < 0 || j < 0 || i >= deep || j >= thick || held[i][j] || !wood[i][j]) {
          continue;
        }
        held[i][j] = true;
        open.add(new int[] {i + 1, j});
        open.add(new int[] {i - 1, j});
        open.add(new int[] {i, j + 1});
        open.add(new int[] {i, j - 1});
      }
      return held;
    }

    /** What has come free, from its nearest to its farthest place from the face that stays. */
    Optional<int[]> free() {
      var held = held();
      int least = Integer.MAX_VALUE;
      int most = -1;
      for (int i = 0; i < deep; i++) {
        for (int j = 0; j < thick; j++) {
          if (wood[i][j] && !held[i][j]) {
            least = Math.min(least, j);
            most = Math.max(most, j);
          }
        }
      }
      return most < 0 ? Optional.empty() : Optional.of(new int[] {least, most + 1});
    }

    /** How wide the step is at its face, and how thick the wood beside it. */
    int stepWidth() {
      var held = held();
      int i = 0;
      while (i < deep && !held[i][thick - 1]) {
        i++;
      }
      return i;
    }

    int stays() {
      var held = held();
      int j = 0;
      while (j < thick && held[0][j]) {
        j++;
      }
      return j;
    }

    /** The thinnest place beside the step, where a first cut that is too deep would show. */
    int thinnestBeside() {
      int least = thick;
      int width = stepWidth();
      var held = held();
      for (int i = 0; i < width; i++) {
        int j = 0;
        while (j < thick && held[i][j]) {
          j++;
        }
        least = Math.min(least, j);
      }
      return least;
    }
  }

  private static int in(Length length) {
    return Math.toIntExact(
        length.roundedTo(tenths(1), Rounding.NEAREST).dividedBy(tenths(1), Rounding.NEAREST));
  }

  private static int set(Answer answer, Setting.Role role) {
    return in(((Setup) answer).setting(role).orElseThrow().read().value());
  }

  /** The work stands with the staying face at the fence, so waste beyond the blade can't jam. */
  private static boolean isTrapped(int[] waste, int nearSideOfTeeth) {
    return waste[1] <= nearSideOfTeeth;
  }

  @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
  void bothCuts_makeTheStep_inEveryPieceOfTheBatch_andTheWasteFallsFree(
      @ForAll @IntRange(min = 6, max = 50) int widthInHalves,
      @ForAll @IntRange(min = 30, max = 200) int stays,
      @ForAll @IntRange(min = 2, max = 18) int depthInHalves,
      @ForAll @IntRange(min = 0, max = 10) int spread,
      @ForAll @IntRange(min = 0, max = 250) int carrier) {
    // Heights come in half millimetres here.
    int width = 5 * widthInHalves;
    int depth = 5 * depthInHalves;
    var thin = tenths(stays + depth);
    var thick = tenths(stays + depth + spread);
    var band = new Band(thin, thick);
    var flat = cut(tenths(width), tenths(stays), tenths(carrier), false, band);
    var edge = cut(tenths(width), tenths(stays), tenths(carrier), true, band);
    Assume.that(flat instanceof Setup && edge instanceof Setup);
    for (int t : new int[] {stays + depth, stays + depth + spread}) {
      var board = new Board(t, 300);
      board.cutFlat(set(flat, Setting.Role.FENCE), set(flat, Setting.Role.HEIGHT));
      assertTrue(board.free().isEmpty(), "nothing is free after the first cut");
      int near = set(edge, Setting.Role.FENCE) - carrier;
      board.cutOnEdge(near, set(edge, Setting.Role.HEIGHT));
      assertEquals(width, board.stepWidth());
      assertEquals(stays, board.stays());
      assertEquals(stays, board.thinnestBeside(), "the first cut is never too deep");
      board
          .free()
          .ifPresent(
              waste -> assertFalse(isTrapped(waste, near), "trapped between blade and fence"));
    }
  }

  /** 17.6 to 18 thick, 12 stay: the first cut 5.6 deep, set to half millimetres. */
  @Test
  void figures_areThoseOfOneJoint() {
    var band = new Band(tenths(176), mm(18));
    var flat = (Setup) cut(mm(6), mm(12), mm(19), false, band);
    var edge = (Setup) cut(mm(6), mm(12), mm(19), true, band);
    assertEquals(mm(6), flat.settings().get(0).set().value());
    assertEquals(
        Length.of("5.5 mm"), flat.setting(Setting.Role.HEIGHT).orElseThrow().set().value());
    assertEquals(mm(31), edge.settings().get(0).set().value());
    assertEquals(mm(6), edge.setting(Setting.Role.HEIGHT).orElseThrow().set().value());
    assertEquals(
        List.of(Measure.Dimension.WIDTH, Measure.Dimension.DEPTH),
        flat.measures().stream().map(Measure::dimension).toList());
    assertEquals(
        List.of(Measure.Dimension.SIZE, Measure.Dimension.WIDTH),
        edge.measures().stream().map(Measure::dimension).toList());
  }

  @ParameterizedTest
  @CsvSource({
    // Narrower than the kerf; nothing to cut; a spread of a kerf less the overlap.
    "28, 120, 180, 180, CUTTER_TOO_WIDE",
    "60, 180, 180, 180, WORK_TOO_SMALL",
    "60, 100, 162, 180, STEP_TOO_COARSE",
    "850, 100, 180, 180, TOO_DEEP"
  })
  void step_thatCannotBeCut_isRefused(
      int width, int stays, int thinnest, int thickest, Refusal.Reason reason) {
    var band = new Band(tenths(thinnest), tenths(thickest));
    var refusal =
        assertInstanceOf(Refusal.class, cut(tenths(width), tenths(stays), Length.ZERO, true, band));
    assertEquals(reason, refusal.reason());
  }

  @Test
  void withoutKnifeOrHold_isRefused() {
    var band = new Band(mm(18), mm(18));
    var step =
        new Step(
            Worked.entered("width", mm(6)),
            Worked.entered("stays", mm(12)),
            Optional.empty(),
            Optional.of(Worked.measured("carrier", mm(19))),
            true,
            new Work(new Band(mm(400), mm(400)), new Band(mm(600), mm(600)), band));
    var bare = new Conditions(ShopsForTests.LIMITS, List.of(), LengthUnit.MILLIMETRE);
    assertEquals(
        Refusal.Reason.AID_MISSING,
        ((Refusal) SawStepSetup.cut(step, SAW, ShopsForTests.RIP_BLADE, bare)).reason());
    assertEquals(
        Refusal.Reason.NOT_ALLOWED,
        ((Refusal) SawStepSetup.cut(step, ShopsForTests.SAW, ShopsForTests.RIP_BLADE, CONDITIONS))
            .reason());
  }

  /** The simulation has to see what is wrong, or its silence says nothing. */
  @Nested
  class SeededFaults {

    private final Band band = new Band(mm(18), mm(18));
    private final Answer flat = cut(mm(18), mm(12), Length.ZERO, false, band);
    private final Answer edge = cut(mm(18), mm(12), Length.ZERO, true, band);

    private Board afterTheFirst() {
      var board = new Board(180, 400);
      board.cutFlat(set(flat, Setting.Role.FENCE), set(flat, Setting.Role.HEIGHT));
      return board;
    }

    /** Turned round, the waste of 3.2 mm stands between blade and fence. */
    @Test
    void cutFaceToTheFence_trapsTheWaste() {
      var board = afterTheFirst();
      int near = 180 - 120 - KERF;
      board.cutOnEdgeTurned(near, set(edge, Setting.Role.HEIGHT));
      assertEquals(120, board.stays());
      var waste = board.free().orElseThrow();
      // Seen from the fence, the cut face is at 0.
      assertTrue(isTrapped(new int[] {180 - waste[1], 180 - waste[0]}, near));
    }

    @Test
    void fenceToTheFarSideOnEdge_leavesTooLittle() {
      var board = afterTheFirst();
      board.cutOnEdge(set(edge, Setting.Role.FENCE) - KERF, set(edge, Setting.Role.HEIGHT));
      assertEquals(120 - KERF, board.stays());
    }

    @Test
    void fenceToTheNearSideFlat_makesItAKerfTooWide() {
      var board = new Board(180, 400);
      board.cutFlat(set(flat, Setting.Role.FENCE) + KERF, set(flat, Setting.Role.HEIGHT));
      board.cutOnEdge(set(edge, Setting.Role.FENCE), set(edge, Setting.Role.HEIGHT));
      assertEquals(180 + KERF, board.stepWidth());
    }

    @Test
    void carrierForgotten_showsInWhatStays() {
      var carried = cut(mm(18), mm(12), mm(19), true, band);
      var board = afterTheFirst();
      board.cutOnEdge(set(carried, Setting.Role.FENCE), set(carried, Setting.Role.HEIGHT));
      assertEquals(180, board.stays());
    }

    @Test
    void secondCutTooLow_leavesTheWasteOn() {
      var board = afterTheFirst();
      board.cutOnEdge(set(edge, Setting.Role.FENCE), set(edge, Setting.Role.HEIGHT) - KERF - 1);
      assertTrue(board.free().isEmpty());
    }

    @Test
    void fedFromBehind_isAClimbCut_andLifts() {
      for (var setup : List.of((Setup) flat, (Setup) edge)) {
        for (var feed : List.of(CutSimulation.AWAY, CutSimulation.TOWARD_YOU)) {
          var met =
              new CutSimulation(mm(600))
                  .passOfBlade(
                      feed,
                      setup.passes().get(0).takes().least(),
                      ShopsForTests.RIP_BLADE.kerf(),
                      ShopsForTests.RIP_BLADE.diameter(),
                      setup.setting(Setting.Role.HEIGHT).orElseThrow().set().value());
          assertEquals(feed == CutSimulation.TOWARD_YOU, met.isClimb());
          assertEquals(feed == CutSimulation.AWAY, met.pressesOn());
        }
      }
    }
  }
}
