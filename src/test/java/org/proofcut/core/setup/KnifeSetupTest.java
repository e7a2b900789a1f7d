package org.proofcut.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.setup.CutsForTests.band;
import static org.proofcut.core.setup.ShopsForTests.JOINTER;
import static org.proofcut.core.setup.ShopsForTests.PLANER;
import static org.proofcut.core.setup.ShopsForTests.mm;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.CutAsked.Jointing;
import org.proofcut.core.setup.CutAsked.Planing;
import org.proofcut.core.shop.KnifeMachine;
import org.proofcut.core.shop.Planer;

class KnifeSetupTest {

  static Work board(String along, String across, String thinnest, String thickest) {
    return new Work(
        new Band(Length.of(along), Length.of(along)),
        new Band(Length.of(across), Length.of(across)),
        band(thinnest, thickest));
  }

  static Answer jointed(String off, boolean edge, Work work) {
    return KnifeSetup.jointing(
        new Jointing(Worked.measured("widest gap", Length.of(off)), edge, work),
        JOINTER,
        ShopsForTests.CONDITIONS);
  }

  static Answer planed(String thickness, String finished, Work work) {
    return KnifeSetup.planing(
        new Planing(
            Worked.entered("thickness wanted", Length.of(thickness)),
            Worked.entered("length wanted", Length.of(finished)),
            work),
        PLANER,
        ShopsForTests.CONDITIONS);
  }

  private static Refusal refused(Answer answer) {
    return assertInstanceOf(Refusal.class, answer);
  }

  private static List<Length> takes(Setup setup) {
    return setup.passes().stream().map(pass -> pass.planed().orElseThrow().takes()).toList();
  }

  @Nested
  class Jointed {

    /** 2 mm in passes of at most 1.5: two of 1 each, though the machine would bear 3. */
    @Test
    void face_isSharedEvenly_overTheFewestPasses() {
      var setup = (Setup) jointed("2 mm", false, board("900 mm", "150 mm", "24 mm", "25 mm"));
      assertEquals(List.of(mm(1), mm(1)), takes(setup));
      assertEquals(mm(1), setup.settings().get(0).set().value());
      assertEquals(mm(23), setup.passes().get(1).planed().orElseThrow().leaves());
      assertEquals(5_000, setup.speed().step().perMinute());
      assertTrue(setup.measures().isEmpty());
    }

    /** 3.1 mm wants three passes; a third of it is 1.0333, set as 1.1. */
    @Test
    void gapThatDoesNotDivide_isSetUpward() {
      var setup = (Setup) jointed("3.1 mm", false, board("900 mm", "150 mm", "24 mm", "25 mm"));
      assertEquals(
          List.of(Length.of("1.1 mm"), Length.of("1.1 mm"), Length.of("1.1 mm")), takes(setup));
    }

    @Test
    void edge_takesFromTheWidth() {
      var setup = (Setup) jointed("1.5 mm", true, board("900 mm", "150 mm", "24 mm", "25 mm"));
      assertEquals(Length.of("148.5 mm"), setup.passes().get(0).planed().orElseThrow().leaves());
      assertEquals(Feed.OVER_THE_KNIVES, setup.feed());
    }

    /** 3 knives at 5000 turns make 15,000 cuts a minute: 20 an inch at 750 in, 19.05 m. */
    @Test
    void fastestFeed_leavesTheMarksWanted() {
      var marks =
          ((Setup) jointed("1 mm", true, board("900 mm", "150 mm", "24 mm", "25 mm")))
              .knifeMarks()
              .orElseThrow();
      assertEquals(mm(19_050), marks.feed().value());
      assertEquals("1.27 mm", marks.apart().value().toString());
      assertTrue(marks.areFine());
    }

    @ParameterizedTest
    @CsvSource({
      "304 mm, 150 mm, 24 mm, WORK_TOO_SMALL, crosscut it afterwards",
      "900 mm, 201 mm, 24 mm, OUT_OF_REACH, Rip it",
      "2801 mm, 150 mm, 24 mm, OUT_OF_REACH, Crosscut it first",
      "900 mm, 150 mm, 7.9 mm, WORK_TOO_SMALL, Saw the thin piece off",
      "900 mm, 150 mm, 9.9 mm, WORK_TOO_SMALL, shorter pieces"
    })
    void face_thatCannotGo_isRefusedWithAnotherWay(
        String along, String across, String thickness, Refusal.Reason reason, String instead) {
      var refusal = refused(jointed("2 mm", false, board(along, across, thickness, thickness)));
      assertEquals(reason, refusal.reason());
      assertTrue(refusal.instead().contains(instead), refusal.instead());
    }

    /** The larger of limit and manual, the widest work, and twice the tables are still taken. */
    @Test
    void face_exactlyAtEachLimit_goes() {
      assertInstanceOf(
          Setup.class, jointed("2 mm", false, board("305 mm", "200 mm", "10 mm", "10 mm")));
      assertInstanceOf(
          Setup.class, jointed("2 mm", false, board("2800 mm", "200 mm", "10 mm", "10 mm")));
    }

    /** On edge the width stands up, and may be more than the knives are long. */
    @Test
    void edgeOfAWideBoard_goes() {
      assertInstanceOf(
          Setup.class, jointed("2 mm", true, board("900 mm", "320 mm", "20 mm", "20 mm")));
    }
  }

  @Nested
  class Planed {

    /** 24 down to 20: the rough face first, then in turn; light passes last. */
    @Test
    void thickness_isReachedOnBothFacesInTurn() {
      var setup = (Setup) planed("20 mm", "700 mm", board("900 mm", "150 mm", "23 mm", "24 mm"));
      var passes = setup.passes();
      assertEquals(mm(20), passes.get(passes.size() - 1).depth().value());
      assertEquals("rough face up", passes.get(0).planed().orElseThrow().where());
      assertEquals("flat face up", passes.get(1).planed().orElseThrow().where());
      assertEquals(mm(20), setup.setting(Setting.Role.HEIGHT).orElseThrow().set().value());
      assertEquals(mm(4), takes(setup).stream().reduce(Length.ZERO, Length::plus));
    }

    /** 2 knives at 8000 turns and 6 m a minute: 16,000 cuts, 0.375 mm apart, 67.7 to the inch. */
    @Test
    void knifeMarks_followFromFeedAndKnives() {
      var marks =
          ((Setup) planed("20 mm", "700 mm", board("900 mm", "150 mm", "23 mm", "24 mm")))
              .knifeMarks()
              .orElseThrow();
      assertEquals("0.375 mm", marks.apart().value().toString());
      assertEquals("67.7", marks.perInch().value().value().toPlainString());
      assertTrue(marks.areFine());
    }

    /** One knife at 3000 turns and 10 m a minute: 7.6 to the inch. */
    @Test
    void coarseMarks_areSaidToBeCoarse() {
      var coarse =
          new Planer(
              "coarse",
              "coarse planer",
              new KnifeMachine.Head(3_000, mm(60), 1),
              mm(10_000),
              PLANER.widestWork(),
              PLANER.bedLength(),
              PLANER.thickestWork(),
              PLANER.deepestPass(),
              PLANER.step(),
              PLANER.shortestWork(),
              PLANER.thinnestWork(),
              true,
              true,
              true);
      var setup =
          (Setup)
              KnifeSetup.planing(
                  new Planing(
                      Worked.entered("thickness", mm(20)),
                      Worked.entered("length", mm(700)),
                      board("900 mm", "150 mm", "23 mm", "24 mm")),
                  coarse,
                  ShopsForTests.CONDITIONS);
      assertEquals("7.6", setup.knifeMarks().orElseThrow().perInch().value().value().toString());
      assertFalse(setup.knifeMarks().orElseThrow().areFine());
    }

    @ParameterizedTest
    @CsvSource({
      "20 mm, 750.1 mm, 900 mm, 150 mm, 23 mm, 24 mm, WORK_TOO_SMALL, runners",
      "20 mm, 100 mm, 349 mm, 150 mm, 23 mm, 24 mm, WORK_TOO_SMALL, crosscut it afterwards",
      "6.4 mm, 700 mm, 900 mm, 150 mm, 8 mm, 8 mm, WORK_TOO_SMALL, carrier board",
      "20 mm, 700 mm, 900 mm, 331 mm, 23 mm, 24 mm, OUT_OF_REACH, Rip it",
      "20 mm, 700 mm, 900 mm, 150 mm, 23 mm, 150.1 mm, OUT_OF_REACH, Resaw",
      "20 mm, 700 mm, 900 mm, 150 mm, 19.9 mm, 24 mm, WORK_TOO_SMALL, thicker stock",
      "24 mm, 700 mm, 900 mm, 150 mm, 24 mm, 24 mm, WORK_TOO_SMALL, smaller thickness",
      "6 mm, 700 mm, 900 mm, 150 mm, 6.4 mm, 8 mm, WORK_TOO_SMALL, Saw the thin piece off"
    })
    void board_thatCannotGo_isRefusedWithAnotherWay(
        String thickness,
        String finished,
        String along,
        String across,
        String thinnest,
        String thickest,
        Refusal.Reason reason,
        String instead) {
      var refusal = refused(planed(thickness, finished, board(along, across, thinnest, thickest)));
      assertEquals(reason, refusal.reason());
      assertTrue(refusal.instead().contains(instead), refusal.instead());
    }

    @Test
    void board_exactlyAtEachLimit_goes() {
      assertInstanceOf(
          Setup.class, planed("20 mm", "750 mm", board("900 mm", "330 mm", "20 mm", "150 mm")));
      assertInstanceOf(
          Setup.class, planed("6.5 mm", "200 mm", board("350 mm", "150 mm", "6.5 mm", "8 mm")));
    }

    /** On steps of 0.1 a thickness of 20.05 is set as 20.1 or 20.0, inside 0.15 mm. */
    @Test
    void thicknessBetweenSteps_isSetToAStep_insideWhatIsAccepted() {
      var setup = (Setup) planed("20.04 mm", "700 mm", board("900 mm", "150 mm", "23 mm", "24 mm"));
      assertEquals(mm(20), setup.settings().get(0).set().value());
      assertTrue(setup.measures().get(0).accepted().contains(mm(20)));
      assertEquals(Length.of("20.04 mm"), setup.measures().get(0).target().value());
    }

    /** What the scale reads too much moves every pass alike. */
    @Test
    void correction_movesTheHeightOfEveryPass() {
      var setup = (Setup) planed("20 mm", "700 mm", board("900 mm", "150 mm", "23 mm", "24 mm"));
      var moved = setup.movedBy(Setting.Role.HEIGHT, Length.of("-0.2 mm"));
      for (int i = 0; i < setup.passes().size(); i++) {
        assertEquals(
            Length.of("0.2 mm"),
            setup.passes().get(i).depth().value().minus(moved.passes().get(i).depth().value()));
      }
      assertEquals(setup.knifeMarks(), moved.knifeMarks());
    }
  }
}
