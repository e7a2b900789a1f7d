package org.proofcut.core.noise;

import java.math.BigDecimal;
import java.util.Optional;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.HearingRating;
import org.proofcut.core.exposure.NoiseLaw;
import org.proofcut.core.shop.OwnedGear;

/**
 * What one protector, or two at once, leave of the day's steady level if they are worn all the
 * time.
 *
 * @param gear id of the piece in the shop; empty for one that is thought of
 * @param name what the maker calls it
 * @param marked as it is marked
 * @param rating by which it is judged; empty where the mark can't be read, and then nothing is said
 * @param asRated under it as in a laboratory; empty where no figure can be given
 * @param asWorn under it as it is worn at work; empty where no figure can be given
 * @param tooMuch whether so little may be left at the loudest machine that calls are not heard
 */
public record Protection(
    Optional<String> gear,
    String name,
    String marked,
    Optional<HearingRating> rating,
    Optional<Worked<Amount>> asRated,
    Optional<Worked<Amount>> asWorn,
    Verdict verdict,
    boolean tooMuch) {

  /** What is to be said of it. */
  public enum Verdict {
    ENOUGH("enough"),
    ENOUGH_BY_THE_RULE("enough by the rule, not by good practice"),
    NOT_ENOUGH("not enough"),
    NOT_READ("its rating can't be read"),
    NO_FIGURE("no figure"),
    QUIET_DAY("no noise to keep out");

    private final String words;

    Verdict(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  static Protection without(
      String name, String marked, Optional<HearingRating> rating, Verdict verdict) {
    return new Protection(
        Optional.empty(), name, marked, rating, Optional.empty(), Optional.empty(), verdict, false);
  }

  /** The same, said of a piece in the shop. */
  Protection of(OwnedGear piece) {
    return new Protection(
        Optional.of(piece.id()), name, marked, rating, asRated, asWorn, verdict, tooMuch);
  }

  /** Judged by what is left as worn, not as rated. */
  static Verdict judged(Worked<Amount> asWorn, NoiseLaw law) {
    if (isAtMost(asWorn, law.better().at().value())) {
      return Verdict.ENOUGH;
    }
    return isAtMost(asWorn, law.mayBeLeft().at().value())
        ? Verdict.ENOUGH_BY_THE_RULE
        : Verdict.NOT_ENOUGH;
  }

  static boolean isAtMost(Worked<Amount> level, BigDecimal most) {
    return level.value().value().compareTo(most) <= 0;
  }
}
