package org.proofcut.web.reading;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.proofcut.core.checklist.Item;
import org.proofcut.core.shop.GearOffer;

/**
 * The work aids that a look is about, as they are read off a sheet on a day.
 *
 * @param lines where each is that will do; where none will, why. None where the look is about none,
 *     or about one that is at hand and lives nowhere
 * @param lacking whether none will do
 */
public record AidReads(List<String> lines, boolean lacking) {

  public AidReads {
    lines = List.copyOf(lines);
  }

  /** The aids of a look, the best piece of each kind. */
  public static AidReads of(Item.Look look, Today today) {
    if (!look.isAtHand(today.day())) {
      return new AidReads(look.refused(today.day()).stream().map(AidReads::capital).toList(), true);
    }
    return new AidReads(
        look.aids().orElse(List.of()).stream().flatMap(offer -> lines(offer, today)).toList(),
        false);
  }

  /** Of one that is at hand and lives nowhere: why it is none of those that live somewhere. */
  private static Stream<String> lines(GearOffer offer, Today today) {
    return offer.best(today.day(), today.out().keySet()).stream()
        .flatMap(
            piece ->
                piece.isEntered()
                    ? Stream.of(capital(piece.name()) + ": " + place(piece, today))
                    : offer.refused(today.day()).stream().map(AidReads::capital));
  }

  /** {@code Gear cabinet: bay 1, hooks}; who has it where it is not there. */
  static String place(GearOffer.Piece piece, Today today) {
    var place = piece.place().isEmpty() ? "no place entered" : piece.place();
    var out = today.out().get(piece.id());
    return out == null
        ? place
        : "out, " + out + (piece.place().isEmpty() ? "" : "; its place: " + place);
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
