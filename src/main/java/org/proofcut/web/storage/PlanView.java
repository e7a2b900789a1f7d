package org.proofcut.web.storage;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.bench.ChosenHeights;
import org.proofcut.bench.PlannedCabinet;
import org.proofcut.core.drawing.CabinetElevation;
import org.proofcut.core.drawing.Picture;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.storage.Change;
import org.proofcut.core.storage.Place;

/**
 * Everything on the page of a planned cabinet.
 *
 * @param verdict in one line
 * @param best whether a better plan is possible, in a sentence
 * @param canBeTaken whether things can begin to live by it
 * @param more what takes longer to work out; null where it follows by itself
 * @param refused why what was asked for was not done
 */
record PlanView(
    String id,
    String name,
    String job,
    String verdict,
    String shape,
    String best,
    boolean taken,
    boolean canBeTaken,
    String mark,
    Drawn drawn,
    List<PlaceRow> places,
    List<String> faults,
    List<String> without,
    List<String> unmet,
    More more,
    List<Problem> refused) {

  /** A drawing in two widths. */
  record Drawn(Picture wide, Picture narrow) {}

  /** A place with what is in it, from left to right. */
  record PlaceRow(String id, String name, List<ThingRow> things) {}

  /**
   * A thing in its place.
   *
   * @param number in the drawing
   * @param pinned whether it stays there
   */
  record ThingRow(int number, String id, String name, String size, boolean pinned) {}

  /** Shelves of a job's case, as designed and as the gear asks for them. */
  record Heights(String job, boolean better, String gain, List<ChosenHeights.MovedShelf> shelves) {}

  static final int WIDE = 600;

  static final int NARROW = 350;

  /**
   * What takes longer to work out.
   *
   * @param change the smallest one after which everything has a place; empty where there is none
   * @param canBeEntered whether the form of the cabinet can begin with it
   * @param heights of the shelves of a job's case; null for any other cabinet
   */
  record More(String id, String change, boolean canBeEntered, Heights heights) {

    static More of(String id, Optional<Change> change, Optional<ChosenHeights> heights) {
      return new More(
          id,
          change.map(Change::words).orElse(""),
          change.filter(one -> !(one instanceof Change.Unpin)).isPresent(),
          heights.map(PlanView::heights).orElse(null));
    }
  }

  static PlanView of(PlannedCabinet planned, More more, List<Problem> refused) {
    var cabinet = planned.cabinet();
    return new PlanView(
        cabinet.id(),
        cabinet.name(),
        cabinet.job().orElse(""),
        verdict(planned),
        planned.without().isEmpty() && planned.isSound() ? "shape-done" : "shape-stop",
        best(planned),
        planned.taken(),
        planned.isSound() && !planned.taken() && !planned.plan().puts().isEmpty(),
        planned.mark(),
        drawn(planned),
        rows(planned),
        planned.faults().stream().map(one -> Says.capital(one.words())).toList(),
        planned.without().stream()
            .map(one -> Says.capital(one.thing().name()) + ": " + one.why())
            .toList(),
        planned.unmet().stream().map(one -> Says.capital(one.words())).toList(),
        more,
        refused);
  }

  static String verdict(PlannedCabinet planned) {
    int without = planned.without().size();
    if (without > 0) {
      return Says.counted(without, "thing has", "things have") + " no place here";
    }
    return planned.plan().puts().isEmpty()
        ? "Nothing is to be kept here yet"
        : "Everything has a place: "
            + Says.counted(planned.plan().puts().size(), "thing", "things");
  }

  private static String best(PlannedCabinet planned) {
    if (planned.plan().puts().isEmpty()) {
      return "";
    }
    return planned.plan().isBest()
        ? "No other plan keeps to more of what is wished for."
        : "A better plan may be found; it could be better by at most "
            + planned.plan().gap().toPlainString()
            + " %.";
  }

  static Drawn drawn(PlannedCabinet planned) {
    return new Drawn(picture(planned, WIDE), picture(planned, NARROW));
  }

  private static Picture picture(PlannedCabinet planned, int width) {
    return CabinetElevation.of(
        planned.task().cabinet(),
        planned.places(),
        planned.plan(),
        planned.cabinet().unit(),
        width);
  }

  /** Every place that has something in it, and then those that have nothing. */
  static List<PlaceRow> rows(PlannedCabinet planned) {
    var numbers = CabinetElevation.numbers(planned.places(), planned.plan());
    return planned.places().stream().map(place -> row(place, planned, numbers)).toList();
  }

  private static PlaceRow row(Place place, PlannedCabinet planned, Map<String, Integer> numbers) {
    return new PlaceRow(
        place.id(),
        Says.capital(place.name()),
        planned.plan().in(place.id()).stream()
            .map(
                put ->
                    new ThingRow(
                        numbers.get(put.thing().id()),
                        put.thing().id(),
                        Says.capital(put.thing().name()),
                        Says.size(put.thing().size(), planned.cabinet().unit()),
                        place.id().equals(planned.task().pins().get(put.thing().id()))))
            .toList());
  }

  private static Heights heights(ChosenHeights chosen) {
    int before = chosen.before().without().size();
    int after = chosen.after().without().size();
    return new Heights(
        chosen.job(),
        chosen.isBetter(),
        before > after
            ? "So "
                + Says.counted(before - after, "more thing has", "more things have")
                + " a place."
            : "So more of what is wished for is kept to.",
        chosen.shelves());
  }
}
