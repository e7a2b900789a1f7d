package org.proofcut.web.storage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
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
import org.proofcut.core.storage.Put;
import org.proofcut.core.storage.Use;

/**
 * Everything on the page of a planned cabinet.
 *
 * @param standing whether things live by it, in a sentence without its stop
 * @param verdict in one line
 * @param best whether a better plan is possible, in a sentence
 * @param canBeTaken whether things can begin to live by it
 * @param faults what is wrong with it, thing by thing
 * @param without what has no place; what is for emergencies first, then what is used most
 * @param more what takes longer to work out; null where it follows by itself
 * @param refused why what was asked for was not done
 */
record PlanView(
    String id,
    String name,
    String job,
    String standing,
    String verdict,
    String shape,
    String best,
    boolean canBeTaken,
    String mark,
    Drawn drawn,
    List<PlaceRow> places,
    List<String> faults,
    List<Left> without,
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
   * @param moves from where it is to go here, in a sentence; empty where it is here, or nothing was
   *     anywhere before
   */
  record ThingRow(int number, String id, String name, String size, boolean pinned, String moves) {}

  /** Things that have no place, and the one reason for all of them. */
  record Left(String things, String why) {}

  /** Shelves of a job's case, as designed and as the gear asks for them. */
  record Heights(String job, boolean better, String gain, List<ChosenHeights.MovedShelf> shelves) {}

  /** What goes without a place is told in this order. */
  private static final List<Use> FIRST =
      List.of(Use.EMERGENCY, Use.EVERY_DAY, Use.OFTEN, Use.SELDOM);

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

  /** Whether nothing is planned to be here. */
  public boolean isEmpty() {
    return places.stream().allMatch(place -> place.things().isEmpty());
  }

  static PlanView of(PlannedCabinet planned, More more, List<Problem> refused) {
    var cabinet = planned.cabinet();
    return new PlanView(
        cabinet.id(),
        Says.capital(cabinet.name()),
        cabinet.job().orElse(""),
        standing(planned),
        verdict(planned),
        shape(planned),
        best(planned),
        planned.isSound() && !planned.taken() && !planned.plan().puts().isEmpty(),
        planned.mark(),
        drawn(planned),
        rows(planned),
        planned.faults().stream()
            .map(one -> Says.capital(one.thing()) + ": " + one.words())
            .toList(),
        without(planned),
        planned.unmet().stream().map(one -> Says.capital(one.words())).toList(),
        more,
        refused);
  }

  /** Whether things live by the plan, as its papers say it too. */
  static String standing(PlannedCabinet planned) {
    if (planned.plan().puts().isEmpty()) {
      return "Nothing lives here";
    }
    if (planned.taken()) {
      return "Everything lives by this plan";
    }
    return planned.task().before().isEmpty()
        ? "Planned; nobody lives by it yet"
        : "Planned anew; what lives here lives by an earlier plan";
  }

  static String shape(PlannedCabinet planned) {
    if (!planned.without().isEmpty() || !planned.isSound()) {
      return "shape-stop";
    }
    return planned.plan().puts().isEmpty() ? "shape-open" : "shape-done";
  }

  static List<Left> without(PlannedCabinet planned) {
    var whys = new LinkedHashMap<String, List<String>>();
    planned.without().stream()
        .sorted(Comparator.comparing(one -> FIRST.indexOf(one.thing().use())))
        .forEach(
            one ->
                whys.computeIfAbsent(one.why(), any -> new ArrayList<>()).add(one.thing().name()));
    return whys.entrySet().stream()
        .map(why -> new Left(Says.capital(String.join("; ", why.getValue())), why.getKey()))
        .toList();
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
    if (!planned.plan().isBest() && planned.plan().bound() <= 0) {
      return "A better plan may be found; how much better it could be is not known.";
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
                        place.id().equals(planned.task().pins().get(put.thing().id())),
                        moves(put, planned)))
            .toList());
  }

  private static String moves(Put put, PlannedCabinet planned) {
    var all = planned.task().before();
    var before = all.get(put.thing().id());
    if (all.isEmpty() || put.place().id().equals(before)) {
      return "";
    }
    return planned.places().stream()
        .filter(place -> place.id().equals(before))
        .map(place -> "Moves here from " + place.name())
        .findFirst()
        .orElse("New here");
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
