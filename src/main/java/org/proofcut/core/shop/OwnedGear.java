package org.proofcut.core.shop;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A piece of protective gear that is at hand.
 *
 * @param kind id of its kind, as in {@code content/shop/gear.yaml}
 * @param name what the maker calls it
 * @param rating what else is marked on it; empty where nothing is
 * @param place where it lives; empty where it has no place yet
 * @param marked id of the class that is marked on it; empty where none is, or it is not known
 * @param rated the figure on it, for kinds that are judged by one
 * @param opened when it was bought or opened
 * @param life how long it serves
 * @param outOfUse whether it has failed: it is not worn before it is mended
 */
public record OwnedGear(
    String id,
    String kind,
    String name,
    String rating,
    String place,
    Optional<String> marked,
    Optional<Rated> rated,
    Optional<LocalDate> opened,
    GearLife life,
    boolean outOfUse) {

  /** The figure on a hearing protector, in decibels. The two scales are not the same. */
  public record Rated(Scale scale, int decibels) {

    /** By whose test the figure was found. */
    public enum Scale {
      NRR,
      SNR
    }

    @Override
    public String toString() {
      return scale + " " + decibels + " dB";
    }
  }

  /** A piece of which neither class nor days are known. */
  public OwnedGear(String id, String kind, String name, String rating, String place) {
    this(
        id,
        kind,
        name,
        rating,
        place,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        GearLife.UNDATED,
        false);
  }

  /** Why it is not worn on a day, whatever it is wanted for; empty where it may be. */
  public Optional<String> idleOn(LocalDate day) {
    return outOfUse ? Optional.of(GearOffer.OUT_OF_USE) : life.overOn(day);
  }
}
