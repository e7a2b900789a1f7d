package org.proofcut.core.storage;

import java.util.Optional;
import java.util.stream.Stream;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.shop.OwnedAid;

/**
 * What makes pieces of a kind work aids: they hold or push the work in place of a hand.
 *
 * @param aid id of the kind of work aid, as in {@code content/shop/aids.yaml}
 * @param longAtLeast how long a piece is that counts as one; empty where any does
 * @param because where that is written
 */
public record AsAid(String aid, Optional<Length> longAtLeast, Citation because) {

  /**
   * A piece as the work aid that it is. What was not measured may be too short.
   *
   * @param place where it lives; empty where it has no place yet
   * @param idle why it is not used, whatever it is for
   * @param kept its sizes; how it lies is not asked, so the longest of them is its length
   * @param unit that lengths are told in
   */
  public OwnedAid of(
      OwnedKit piece, String place, Optional<String> idle, KeptAs kept, LengthUnit unit) {
    return new OwnedAid(
        piece.id(), aid, piece.name(), place, idle.or(() -> tooShort(kept, unit)), piece.life());
  }

  private Optional<String> tooShort(KeptAs kept, LengthUnit unit) {
    var sizes = Stream.of(kept.wide(), kept.high(), kept.deep()).flatMap(Optional::stream).toList();
    var longest = sizes.stream().reduce(Length.ZERO, Length::max);
    var scale = Scale.rule(unit);
    return longAtLeast
        .filter(longest::isLessThan)
        .map(
            needed ->
                (sizes.size() < 3
                        ? "its length is not entered"
                        : scale.show(longest).text() + " long")
                    + "; needed: "
                    + scale.show(needed).text());
  }
}
