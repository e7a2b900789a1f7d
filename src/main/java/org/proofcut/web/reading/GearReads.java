package org.proofcut.web.reading;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.proofcut.core.checklist.Item;
import org.proofcut.core.checklist.Wording;
import org.proofcut.core.drawing.Sign;
import org.proofcut.core.plan.OperationSheet;

/**
 * One piece of protective gear as it is read off a sheet.
 *
 * @param name for what is to be taken off with its state: "Gloves off"
 * @param place where it lives; may be empty
 * @param forbidden true for what is to be taken off, null for what is to be put on
 */
public record GearReads(
    Item.Gear item, Sign sign, String name, String place, String ask, Boolean forbidden) {

  /** All gear of a sheet, in the order it is put on. */
  public static List<GearReads> of(OperationSheet sheet, Wording wording) {
    return sheet.checklist().items().stream()
        .filter(Item.Gear.class::isInstance)
        .map(Item.Gear.class::cast)
        .map(gear -> of(gear, wording))
        .toList();
  }

  private static GearReads of(Item.Gear gear, Wording wording) {
    var kind = wording.gear().get(gear.kind());
    var number = gear.on() ? kind.sign() : kind.offSign().orElse("");
    var sign =
        Arrays.stream(Sign.values())
            .filter(one -> !number.isEmpty() && one.see().equals(number))
            .findFirst()
            .orElse(gear.on() ? Sign.MUST : Sign.NO_REACHING_IN);
    return new GearReads(
        gear,
        sign,
        gear.on() ? capital(gear.name()) : capital(kind.name()) + " off",
        place(gear),
        gear.ask(),
        gear.on() ? null : Boolean.TRUE);
  }

  private static String place(Item.Gear gear) {
    if (gear.on() && !gear.atHand()) {
      return "none in the shop";
    }
    return gear.place().isEmpty() && gear.on() ? "no place entered" : gear.place();
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
