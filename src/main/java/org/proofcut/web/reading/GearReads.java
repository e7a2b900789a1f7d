package org.proofcut.web.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.proofcut.core.checklist.Item;
import org.proofcut.core.checklist.Wording;
import org.proofcut.core.drawing.Sign;
import org.proofcut.core.plan.OperationSheet;
import org.proofcut.core.shop.GearOffer;

/**
 * One piece of protective gear as it is read off a sheet on a day.
 *
 * @param name for what is to be taken off with its state: "Gloves off"
 * @param place where it lives; may be empty
 * @param forbidden true for what is to be taken off, null for what is to be put on
 * @param lacking true where nothing in the shop meets what is needed, else null
 * @param notes what is marked on it; where something is lacking, why each owned piece does not do
 */
public record GearReads(
    Item.Gear item,
    Sign sign,
    String name,
    String place,
    String ask,
    Boolean forbidden,
    Boolean lacking,
    List<String> notes) {

  private static final String LAW =
      "Law on protective gear is written for employers. Here it is kept to all the same: no reason"
          + " sets aside what rests on it.";

  public GearReads {
    notes = List.copyOf(notes);
  }

  /** All gear of a sheet, in the order it is put on. */
  public static List<GearReads> of(OperationSheet sheet, Wording wording, Today today) {
    return gear(sheet).stream().map(gear -> of(gear, wording, today)).toList();
  }

  /** How gear that disturbs other gear on this sheet goes together with it, and what law means. */
  public static List<String> together(OperationSheet sheet, Wording wording) {
    var pairs = pairs(sheet, wording);
    return gear(sheet).stream().anyMatch(gear -> gear.law().isPresent())
        ? Stream.concat(pairs.stream(), Stream.of(LAW)).toList()
        : pairs;
  }

  private static List<String> pairs(OperationSheet sheet, Wording wording) {
    var on = gear(sheet).stream().filter(Item.Gear::on).map(Item.Gear::kind).toList();
    return wording.gearPairs().values().stream()
        .filter(pair -> on.contains(pair.first()) && on.contains(pair.second()))
        .map(
            pair ->
                capital(wording.gear().get(pair.first()).name())
                    + " and "
                    + wording.gear().get(pair.second()).name()
                    + ": "
                    + pair.together())
        .toList();
  }

  private static List<Item.Gear> gear(OperationSheet sheet) {
    return sheet.checklist().items().stream()
        .filter(Item.Gear.class::isInstance)
        .map(Item.Gear.class::cast)
        .toList();
  }

  private static GearReads of(Item.Gear gear, Wording wording, Today today) {
    var kind = wording.gear().get(gear.kind());
    var number = gear.on() ? kind.sign() : kind.offSign().orElse("");
    var sign =
        Arrays.stream(Sign.values())
            .filter(one -> !number.isEmpty() && one.see().equals(number))
            .findFirst()
            .orElse(gear.on() ? Sign.MUST : Sign.NO_REACHING_IN);
    boolean atHand = gear.isAtHand(today.day());
    return new GearReads(
        gear,
        sign,
        gear.on()
            ? capital(gear.called(today.day(), today.out().keySet()))
            : capital(kind.name()) + " off",
        place(gear, today),
        atHand ? gear.ask() : "Nothing here meets it",
        gear.on() ? null : Boolean.TRUE,
        atHand ? null : Boolean.TRUE,
        notes(gear, today));
  }

  private static String place(Item.Gear gear, Today today) {
    if (!gear.on()) {
      return gear.place();
    }
    if (!gear.isAtHand(today.day())) {
      boolean some = gear.offer().filter(offer -> !offer.pieces().isEmpty()).isPresent();
      return some ? "none in the shop that will do" : "none in the shop";
    }
    return piece(gear, today)
        .map(piece -> AidReads.place(piece, today))
        .orElseGet(() -> gear.place().isEmpty() ? "no place entered" : gear.place());
  }

  private static Optional<GearOffer.Piece> piece(Item.Gear gear, Today today) {
    return gear.piece(today.day(), today.out().keySet());
  }

  private static List<String> notes(Item.Gear gear, Today today) {
    var notes = new ArrayList<String>();
    gear.why().ifPresent(notes::add);
    gear.offer()
        .ifPresent(
            offer -> {
              var piece = piece(gear, today);
              piece
                  .map(GearOffer.Piece::marked)
                  .filter(marked -> !marked.isEmpty())
                  .ifPresent(marked -> notes.add("Marked " + marked));
              piece
                  .flatMap(one -> one.life().soonAfter(today.day()))
                  .ifPresent(soon -> notes.add(capital(soon)));
              if (piece.isEmpty()) {
                offer.needed().ifPresent(needed -> notes.add("Needed: " + needed));
                notes.addAll(offer.refused(today.day()));
              }
            });
    gear.law().ifPresent(law -> notes.add("Rests on law here: " + law.source()));
    return notes;
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
