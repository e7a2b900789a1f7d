package org.proofcut.core.intake;

import static org.proofcut.core.intake.Field.date;
import static org.proofcut.core.intake.Field.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.proofcut.core.shop.GearKind;
import org.proofcut.core.shop.GearLife;
import org.proofcut.core.shop.OwnedGear;
import org.proofcut.core.shop.OwnedGear.Rated;

/**
 * The form of a piece of protective gear. All but its name may stay empty: what is not known never
 * meets what is needed.
 */
final class GearForm {

  /** Chosen where no class is marked; an empty choice looks as if it had been forgotten. */
  private static final String UNKNOWN = "unknown";

  private static final int LOUDEST = 50;
  private static final String DAY = "such as 2027-11-03; leave empty if there is none";

  private static final Field NAME = MachineFields.name("muffs on the hook by the door");
  private static final Field DECIBELS =
      Field.count("decibels", "Figure on it, in dB", "such as 30; leave empty if none is marked")
          .mayStayEmpty();
  private static final Field SCALE =
      Field.choice(
              "scale",
              "Kind of figure",
              Stream.of(Rated.Scale.values())
                  .map(scale -> new Field.Choice(scale.name(), scale.name()))
                  .toList())
          .mayStayEmpty();
  private static final Field RATING =
      text("rating", "What else is marked on it", "leave empty if nothing is").mayStayEmpty();
  private static final Field PLACE =
      text("place", "Where it lives", "such as \"hook 3\"; leave empty if nowhere yet")
          .mayStayEmpty();
  static final Field OPENED = date("opened", "Bought or opened on", DAY);
  static final Field GOOD_UNTIL = date("good-until", "Good until", DAY);
  static final Field INSPECT_BY = date("inspect-by", "To be looked at by", DAY);
  static final Field OUT_OF_USE =
      Field.yesNo("out-of-use", "Out of use: it has failed or is damaged").mayStayEmpty();

  private GearForm() {}

  /**
   * @param kept how it is kept; empty where that is not asked
   */
  static ItemForm<OwnedGear> of(GearKind kind, Optional<KeptForm> kept) {
    boolean byFigure = kind.judgedBy() == GearKind.Judged.BY_FIGURE;
    var marked = marked(kind);
    var fields = new ArrayList<Field>();
    fields.add(NAME);
    fields.addAll(byFigure ? List.of(DECIBELS, SCALE) : List.of(marked));
    fields.addAll(List.of(PLACE, GOOD_UNTIL, INSPECT_BY, OPENED, OUT_OF_USE, RATING));
    kept.ifPresent(form -> fields.addAll(form.fields()));
    return new ItemForm<>(
        kind.id(),
        kind.name(),
        fields,
        (id, form) -> {
          kept.ifPresent(asked -> asked.read(form));
          return read(kind, marked, byFigure, id, form);
        });
  }

  private static Field marked(GearKind kind) {
    var choices =
        Stream.concat(
                kind.classes().stream()
                    .map(one -> new Field.Choice(one.id(), one.name() + ": for " + one.goodFor())),
                Stream.of(new Field.Choice(UNKNOWN, "None is marked, or it can't be read")))
            .toList();
    return Field.choice("class", "Marked on it", choices).mayStayEmpty();
  }

  private static Read<OwnedGear> read(
      GearKind kind, Field marked, boolean byFigure, String id, FormReader form) {
    var name = form.text(NAME);
    Optional<Rated> rated = byFigure ? rated(form) : Optional.empty();
    Optional<String> classId =
        byFigure
            ? Optional.empty()
            : Optional.of(form.choice(marked))
                .filter(one -> !one.isEmpty() && !one.equals(UNKNOWN));
    var place = form.text(PLACE);
    var opened = form.optionalDate(OPENED);
    var life = life(form, opened);
    boolean outOfUse = form.yes(OUT_OF_USE);
    var rating = form.text(RATING);
    return form.result(
        () ->
            new OwnedGear(
                id, kind.id(), name, rating, place, classId, rated, opened, life, outOfUse));
  }

  /** How long it serves; not less long than until it was opened. */
  static GearLife life(FormReader form, Optional<LocalDate> opened) {
    var goodUntil = form.optionalDate(GOOD_UNTIL);
    var inspectBy = form.optionalDate(INSPECT_BY);
    if (opened.isPresent() && goodUntil.filter(opened.get()::isAfter).isPresent()) {
      form.problem(
          GOOD_UNTIL,
          "It ends on " + DateText.said(goodUntil.get()) + ", before it was bought or opened",
          DateText.said(opened.get()) + " or later");
    }
    return new GearLife(goodUntil, inspectBy);
  }

  /** A figure says nothing without the name of its scale. */
  private static Optional<Rated> rated(FormReader form) {
    var decibels = form.optionalCount(DECIBELS, 1, LOUDEST);
    var scale = form.choice(SCALE);
    if (decibels.isPresent() && scale.isEmpty()) {
      form.problem(SCALE, "Nothing was chosen", "NRR or SNR, as it stands beside the figure");
    }
    if (!scale.isEmpty() && form.isBlank(DECIBELS.name())) {
      form.problem(DECIBELS, "Nothing was entered", "the figure that stands beside " + scale);
    }
    return decibels.flatMap(
        figure ->
            Stream.of(Rated.Scale.values())
                .filter(one -> one.name().equals(scale))
                .findFirst()
                .map(one -> new Rated(one, figure)));
  }
}
