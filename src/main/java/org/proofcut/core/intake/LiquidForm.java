package org.proofcut.core.intake;

import static org.proofcut.core.intake.Field.text;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.shop.Liquid;
import org.proofcut.core.shop.LiquidKind;

/** The form of a glue, finish or solvent of a kind that content knows. */
final class LiquidForm {

  /** {@code 23 °C}, {@code 73.4 F}; a sheet's {@code > 61 °C} counts as 61 °C. */
  private static final Pattern TEMPERATURE =
      Pattern.compile("[>≥]?\\s*(?<value>[-−]?\\d{1,3}(?:[.,]\\d{1,2})?)\\s*°?\\s*(?<unit>[CcFf])");

  private static final BigDecimal COLDEST = new BigDecimal("-100");
  private static final BigDecimal HOTTEST = new BigDecimal("900");
  private static final String ALLOWED =
      "a temperature with its unit, such as 23 °C or 73.4 °F, from -100 to 900";

  private static final Field NAME = MachineFields.name("white wood glue, small bottle");

  private static final Field FLASH =
      text("flash", "Flash point", "section 9 of its safety data sheet, such as 23 °C or 73.4 °F")
          .mayStayEmpty();

  private static final Field BOILS =
      text("boils", "Boiling point, or where boiling begins", "the same section of the same sheet")
          .mayStayEmpty();

  private static final Field ON_FILE =
      Field.yesNo("data-sheet", "Is its safety data sheet in the shop?").mayStayEmpty();

  private static final Field PLACE =
      text("data-sheet-place", "Where the sheet is", "such as \"folder by the door\"")
          .mayStayEmpty();

  private static final Field OPENED =
      text("opened", "Opened on", "as you write dates; leave empty if unknown").mayStayEmpty();

  private LiquidForm() {}

  static ItemForm<Liquid> of(LiquidKind kind) {
    return new ItemForm<>(
        kind.id(),
        kind.name(),
        List.of(NAME, FLASH, BOILS, ON_FILE, PLACE, OPENED),
        (id, form) -> {
          var name = form.text(NAME);
          var flash = temperature(form, FLASH);
          var boils = temperature(form, BOILS);
          // A sheet that nobody has said to be there is not.
          boolean onFile = form.yes(ON_FILE);
          var place = form.text(PLACE);
          var opened = form.text(OPENED);
          return form.result(() -> new Liquid(id, kind, name, flash, boils, onFile, place, opened));
        });
  }

  private static Optional<Amount> temperature(FormReader form, Field field) {
    var text = form.raw(field.name()).strip();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    var read = TEMPERATURE.matcher(text);
    if (!read.matches()) {
      form.problem(field, "\"" + FormReader.shortened(text) + "\" can't be read", ALLOWED);
      return Optional.empty();
    }
    var value = new BigDecimal(read.group("value").replace(',', '.').replace('−', '-'));
    if (value.compareTo(COLDEST) < 0 || value.compareTo(HOTTEST) > 0) {
      form.problem(field, "That is " + text, ALLOWED);
    }
    return Optional.of(new Amount(value, "°" + read.group("unit").toUpperCase(Locale.ROOT)));
  }
}
