package org.proofcut.web.storage;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.shop.GearLife;
import org.proofcut.core.storage.Due;
import org.proofcut.core.storage.GearAct;
import org.proofcut.core.storage.Size;

/** Things, sizes and days as the pages say them. */
final class Says {

  private static final int GRAMS_OF_KILOGRAM = 1000;

  private Says() {}

  static String capital(String words) {
    return words.isEmpty()
        ? ""
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  static String length(Length length, LengthUnit unit) {
    return Scale.rule(unit).show(length).text();
  }

  static String size(Size size, LengthUnit unit) {
    return "%s wide, %s high, %s deep"
        .formatted(length(size.wide(), unit), length(size.high(), unit), length(size.deep(), unit));
  }

  /** Grams under a kilogram, else kilograms to a tenth. */
  static String weight(int grams) {
    return grams < GRAMS_OF_KILOGRAM
        ? grams + " g"
        : BigDecimal.valueOf(grams)
                .movePointLeft(3)
                .setScale(1, RoundingMode.HALF_UP)
                .toPlainString()
            + " kg";
  }

  static String counted(int number, String one, String more) {
    return number + " " + (number == 1 ? one : more);
  }

  /** When something falls due, in words. */
  static String when(Due due) {
    return due.on()
        .map(GearLife::inWords)
        .map(day -> day(due) + day)
        .orElse("not known since when: write down when it was opened");
  }

  private static String day(Due due) {
    if (due.ageing().equals(Due.FAILED)) {
      return "Failed on ";
    }
    return due.overdue() ? "Overdue: was due by " : due.ends() ? "ends on " : "due by ";
  }

  /** The next day on which something falls due for a thing. */
  static Optional<LocalDate> next(String thing, List<Due> all) {
    return all.stream()
        .filter(due -> due.thing().equals(thing))
        .flatMap(due -> due.on().stream())
        .min(Comparator.naturalOrder());
  }

  /** What was done, as a sentence without its stop. */
  static String act(GearAct act) {
    if (act instanceof GearAct.TakenOut out) {
      return "Taken out by " + out.who();
    }
    if (act instanceof GearAct.PutBack back) {
      return "Put back by " + back.who();
    }
    if (act instanceof GearAct.LookedAt looked) {
      return (looked.good() ? "Looked at: good" : "Looked at: failed")
          + noted(looked.note())
          + looked.next().map(day -> "; to be looked at by " + GearLife.inWords(day)).orElse("");
    }
    if (act instanceof GearAct.Mended mended) {
      return "Mended" + noted(mended.note());
    }
    var replaced = (GearAct.Replaced) act;
    return "Replaced by a new one"
        + noted(replaced.note())
        + replaced.goodUntil().map(day -> "; good until " + GearLife.inWords(day)).orElse("");
  }

  private static String noted(String note) {
    return note.isBlank() ? "" : ", " + note;
  }
}
