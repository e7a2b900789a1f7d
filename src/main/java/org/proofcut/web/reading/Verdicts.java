package org.proofcut.web.reading;

import java.util.Locale;
import org.proofcut.core.drawing.FitBar;
import org.proofcut.core.drawing.Picture;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.fit.Tightness;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.display.Degrees;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.proof.Verdict;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;

/** What a verdict means at the bench, and the one thing to do about it. */
public final class Verdicts {

  /** A verdict on what was measured. */
  public record VerdictView(
      Boolean proven, String word, String means, String doThis, Picture bar) {}

  private final Shows shows;
  private final FitLimits fit;

  public Verdicts(Shows shows, FitLimits fit) {
    this.shows = shows;
    this.fit = fit;
  }

  public VerdictView of(Verdict verdict, Operation operation, Setup setup) {
    var ends = verdict.ends().orElseThrow();
    return new VerdictView(
        verdict.isProven(),
        verdict.isProven() ? "Proven" : "Not yet",
        Shows.dimension(verdict.measure().dimension()) + ": " + means(verdict, ends, operation),
        doThis(verdict, setup),
        bar(verdict, ends, operation));
  }

  private String means(Verdict verdict, Band ends, Operation operation) {
    var found = range(ends) + ". ";
    if (isSlotWidth(verdict, operation)) {
      var room = room(ends, operation.entering().orElseThrow());
      return found
          + "Room for the part that goes in: "
          + range(room)
          + ": "
          + tightness(room)
          + ".";
    }
    return found + "Accepted: " + range(verdict.measure().accepted()) + ".";
  }

  private String range(Band band) {
    var least = shows.fine(band.least());
    var most = shows.fine(band.most());
    return least.equals(most) ? least : least + " to " + most;
  }

  private String tightness(Band room) {
    var tightest = Tightness.of(room.least(), fit);
    var loosest = Tightness.of(room.most(), fit);
    return tightest == loosest
        ? tightest.words()
        : "the thickest part is " + asState(tightest) + ", the thinnest is " + asState(loosest);
  }

  private static String asState(Tightness tightness) {
    return switch (tightness) {
      case WILL_NOT_ENTER -> "too thick to go in";
      case MALLET -> "so tight that it needs a mallet";
      case SNUG -> "snug";
      case RIGHT -> "right for glue";
      case SCREWED_ONLY -> "loose";
      case LOOSE -> "too loose";
    };
  }

  private String doThis(Verdict verdict, Setup setup) {
    return switch (verdict.outcome()) {
      case PROVEN -> "";
      case MORE_READINGS -> "Go on measuring.";
      case UNEVEN ->
          "The readings differ among themselves by more than is accepted, and no setting mends"
              + " that. Look for chips under the work, a worn cutter or a loose guide. Cut new"
              + " scrap.";
      case OTHER_CUTTER ->
          "No setting of this set-up mends it. Use another cutter: enter it in the shop, and the"
              + " sheet is worked out anew.";
      case CHANGE ->
          verdict
              .correction()
              .map(correction -> move(correction, setup, wasAccepted(verdict)))
              .or(() -> verdict.turn().map(turn -> turn(turn, setup)))
              .orElse(
                  "The other figure, once moved, mends this too. Cut new scrap and measure again.");
    };
  }

  private static boolean wasAccepted(Verdict verdict) {
    return verdict.found().stream().allMatch(verdict.measure().accepted()::contains);
  }

  private String move(Verdict.Correction correction, Setup setup, boolean wasAccepted) {
    var role = correction.role();
    var setting = setup.setting(role).orElseThrow();
    return (wasAccepted ? "The other figure, once moved, would carry it off. " : "")
        + role.words()
        + " "
        + shows.fine(correction.by().abs())
        + " "
        + (correction.by().isPositive() ? larger(role) : smaller(role))
        + ": "
        + setting.scale(shows.unit()).show(setting.read().value().plus(correction.by())).text()
        + ". Cut new scrap and measure again.";
  }

  private static String turn(Verdict.Turn turn, Setup setup) {
    var angle = setup.angle(turn.role()).orElseThrow();
    var by = turn.by().value();
    int decimals = turn.betweenMarks() ? 2 : Degrees.decimals(angle.step());
    return turn.role().deed()
        + " "
        + Degrees.text(by.abs(), decimals)
        + (by.isPositive() ? " more" : " less")
        + ": "
        + Degrees.text(angle.set().value().plus(by), decimals)
        + (turn.betweenMarks()
            ? ", between two marks of the scale. A strip of paper between fence and work does it."
            : ".")
        + " Cut new scrap and measure again.";
  }

  private static String larger(Setting.Role role) {
    return switch (role) {
      case FENCE, STOP, STOPS_APART, STRAIGHTEDGE, MARK, LINE, COLLAR -> "farther";
      case STRIP, SHIM -> "thicker";
      case OPENING_LENGTH, OPENING_WIDTH, STOP_OFFSET -> "larger";
      case HEIGHT -> "higher";
      case DEPTH -> "deeper";
    };
  }

  private static String smaller(Setting.Role role) {
    return switch (role) {
      case FENCE, STOP, STOPS_APART, STRAIGHTEDGE, MARK, LINE, COLLAR -> "nearer";
      case STRIP, SHIM -> "thinner";
      case OPENING_LENGTH, OPENING_WIDTH, STOP_OFFSET -> "smaller";
      case HEIGHT -> "lower";
      case DEPTH -> "shallower";
    };
  }

  /** Width of a slot against the room it leaves; all else against what is accepted. */
  private Picture bar(Verdict verdict, Band ends, Operation operation) {
    if (isSlotWidth(verdict, operation)) {
      var room = room(ends, operation.entering().orElseThrow());
      return new FitBar(
              fit.leastRoom().value(),
              fit.mostRoom().value(),
              room.least(),
              room.most(),
              "too tight",
              "right",
              "too loose")
          .drawn(shows.caliper());
    }
    var accepted = verdict.measure().accepted();
    var small = smallWord(verdict.measure().dimension());
    return new FitBar(
            accepted.least(),
            accepted.most(),
            ends.least(),
            ends.most(),
            small[0],
            "right",
            small[1])
        .drawn(shows.caliper());
  }

  private static String[] smallWord(Dimension dimension) {
    return switch (dimension) {
      case WIDTH -> new String[] {"too narrow", "too wide"};
      case DEPTH -> new String[] {"too shallow", "too deep"};
      case DISTANCE, FROM_END -> new String[] {"too near", "too far"};
      case SIZE, DIAMETER -> new String[] {"too small", "too large"};
      case RUN_ACROSS, RUN_THROUGH, RUN_ALONG -> new String[] {"too little", "too much"};
    };
  }

  private static boolean isSlotWidth(Verdict verdict, Operation operation) {
    return verdict.measure().dimension() == Dimension.WIDTH
        && operation.asked().orElseThrow() instanceof CutAsked.Slot;
  }

  private static Band room(Band slot, Band entering) {
    return new Band(slot.least().minus(entering.most()), slot.most().minus(entering.least()));
  }

  public static String lower(String words) {
    return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
  }
}
