package org.proofcut.core.intake;

import static org.proofcut.core.intake.CutFields.band;
import static org.proofcut.core.intake.Field.count;
import static org.proofcut.core.intake.Field.length;
import static org.proofcut.core.intake.Field.yesNo;
import static org.proofcut.core.intake.MachineFields.EXTRACTION;
import static org.proofcut.core.intake.MachineFields.STEPS;

import java.util.List;
import org.proofcut.core.measure.Band;
import org.proofcut.core.shop.Jointer;
import org.proofcut.core.shop.KnifeMachine.Head;
import org.proofcut.core.shop.Planer;

/** The forms of machines with a head of knives. */
final class KnifeMachineForms {

  private static final Field NAME = MachineFields.name("planer under the stairs");

  private static final Band WIDTHS = band("50 mm", "1000 mm");
  private static final Band TABLES = band("150 mm", "4000 mm");
  private static final Band FEEDS = band("1 m", "40 m");
  private static final Band PASSES = band("0.2 mm", "8 mm");

  private static final Field SPEED =
      count("knife-speed", "Turns of the head a minute", "from the plate");
  private static final Field DIAMETER =
      length(
          "head-diameter",
          "Cutting circle of the knives",
          "diameter of the circle that their edges run on, from the manual");
  private static final Field KNIVES = count("knives", "Knives", "how many are in the head");
  private static final Field WIDEST =
      length("widest-work", "Widest work", "length of the knives that can be used");
  private static final Field INFEED =
      length("infeed-length", "Length of the infeed table", "before the knives");
  private static final Field OUTFEED =
      length("outfeed-length", "Length of the outfeed table", "behind the knives");
  private static final Field BED =
      length(
          "bed-length", "Length of the bed", "with its extensions, before and behind the knives");
  private static final Field DEEPEST =
      length("deepest-pass", "Deepest pass", "from the manual, at full width");
  private static final Field TABLE_STEP =
      length("table-step", "Infeed table: smallest step", "smallest change you can set and read");
  private static final Field BED_STEP =
      length("height-step", "Height: smallest step", "smallest change you can set and read");
  private static final Field SHORTEST = length("shortest-work", "Shortest work", "from the manual");
  private static final Field THINNEST = length("thinnest-work", "Thinnest work", "from the manual");
  private static final Field THICKEST =
      length("thickest-work", "Thickest work", "how far it opens");
  private static final Field FEED =
      length("feed", "Feed of one minute", "from the plate, with its unit: 6 m");
  private static final Field HEAD_GUARD =
      yesNo("guard", "A guard covers the head but where the work lies, and springs back");
  private static final Field COVER = yesNo("guard", "The head is covered on all sides");
  private static final Field FINGERS =
      yesNo("kickback-fingers", "Kickback fingers hang free before the rollers");

  private KnifeMachineForms() {}

  static ItemForm<Jointer> jointer() {
    return new ItemForm<>(
        "jointer",
        "Jointer",
        List.of(
            NAME,
            SPEED,
            DIAMETER,
            KNIVES,
            WIDEST,
            INFEED,
            OUTFEED,
            DEEPEST,
            TABLE_STEP,
            SHORTEST,
            THINNEST,
            HEAD_GUARD,
            EXTRACTION),
        (id, form) -> {
          var name = form.text(NAME);
          var head = head(form);
          var widest = form.length(WIDEST, WIDTHS);
          var infeed = form.length(INFEED, TABLES);
          var outfeed = form.length(OUTFEED, TABLES);
          var deepest = form.length(DEEPEST, PASSES);
          var step = form.length(TABLE_STEP, STEPS);
          var shortest = form.length(SHORTEST, band("100 mm", "1000 mm"));
          var thinnest = form.length(THINNEST, band("3 mm", "50 mm"));
          boolean guard = form.yes(HEAD_GUARD);
          boolean extraction = form.yes(EXTRACTION);
          return form.result(
              () ->
                  new Jointer(
                      id,
                      name,
                      head,
                      widest,
                      infeed,
                      outfeed,
                      deepest,
                      step,
                      shortest,
                      thinnest,
                      guard,
                      extraction));
        });
  }

  static ItemForm<Planer> planer() {
    return new ItemForm<>(
        "planer",
        "Planer (thicknesser)",
        List.of(
            NAME,
            SPEED,
            DIAMETER,
            KNIVES,
            FEED,
            WIDEST,
            BED,
            THICKEST,
            DEEPEST,
            BED_STEP,
            SHORTEST,
            THINNEST,
            COVER,
            FINGERS,
            EXTRACTION),
        (id, form) -> {
          var name = form.text(NAME);
          var head = head(form);
          var feed = form.length(FEED, FEEDS);
          var widest = form.length(WIDEST, WIDTHS);
          var bed = form.length(BED, TABLES);
          var thickest = form.length(THICKEST, band("20 mm", "400 mm"));
          var deepest = form.length(DEEPEST, PASSES);
          var step = form.length(BED_STEP, STEPS);
          var shortest = form.length(SHORTEST, band("100 mm", "1000 mm"));
          var thinnest = form.length(THINNEST, band("3 mm", "50 mm"));
          boolean guard = form.yes(COVER);
          boolean fingers = form.yes(FINGERS);
          boolean extraction = form.yes(EXTRACTION);
          return form.result(
              () ->
                  new Planer(
                      id,
                      name,
                      head,
                      feed,
                      widest,
                      bed,
                      thickest,
                      deepest,
                      step,
                      shortest,
                      thinnest,
                      guard,
                      fingers,
                      extraction));
        });
  }

  private static Head head(FormReader form) {
    int perMinute = form.count(SPEED, 1_000, 30_000);
    var diameter = form.length(DIAMETER, band("30 mm", "200 mm"));
    int knives = form.count(KNIVES, 1, 8);
    return new Head(perMinute, diameter, knives);
  }
}
