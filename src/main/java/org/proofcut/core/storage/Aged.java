package org.proofcut.core.storage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.shop.GearLife;

/**
 * A piece of the shop, and what of it falls due with time.
 *
 * @param ages of its kind
 * @param opened when it was bought or opened; since it was replaced, when the new one was
 * @param life the days that are marked on it
 * @param outOfUse whether it was entered as out of use: then nothing falls due
 */
public record Aged(
    String id,
    String name,
    List<Ageing> ages,
    Optional<LocalDate> opened,
    GearLife life,
    boolean outOfUse,
    GearState state) {

  private static final Comparator<Due> MOST_URGENT =
      Comparator.comparing((Due due) -> !due.ageing().equals(Due.FAILED))
          .thenComparing(due -> !due.overdue())
          .thenComparing(due -> due.on().orElse(LocalDate.MIN))
          .thenComparing(Due::name)
          .thenComparing(Due::thing)
          .thenComparing(Due::ageing);

  public Aged {
    ages = List.copyOf(ages);
  }

  /** Of all these what has failed first, then what is overdue, what has no day, the rest by day. */
  public static List<Due> due(List<Aged> pieces, LocalDate today) {
    return pieces.stream().flatMap(piece -> piece.due(today)).sorted(MOST_URGENT).toList();
  }

  private Stream<Due> due(LocalDate today) {
    if (state.failed().isPresent()) {
      return Stream.of(
          new Due(
              id,
              name,
              Due.FAILED,
              "Mend or replace it: it was looked at and was not good",
              state.failed(),
              true,
              true,
              Citation.ENTERED));
    }
    if (outOfUse) {
      return Stream.empty();
    }
    var due = new ArrayList<Due>();
    life.goodUntil()
        .ifPresent(
            last -> due.add(marked(Due.ENDS, "Replace it: its last day", last, true, today)));
    life.inspectBy()
        .ifPresent(last -> due.add(marked(Due.MARKED, "Look at it", last, false, today)));
    ages.forEach(ageing -> due.add(due(ageing, today)));
    return due.stream();
  }

  private Due marked(String ageing, String what, LocalDate on, boolean ends, LocalDate today) {
    return new Due(
        id, name, ageing, what, Optional.of(on), on.isBefore(today), ends, Citation.ENTERED);
  }

  /**
   * Counted from when it was last looked at; else from when it was opened, as entered: whoever
   * enters another day after it was replaced knows better.
   */
  private Due due(Ageing ageing, LocalDate today) {
    var looked =
        ageing.ends()
            ? Optional.<LocalDate>empty()
            : Optional.ofNullable(state.looked().get(ageing.id()));
    var on = looked.or(this::opened).or(state::replaced).map(ageing::after);
    return new Due(
        id,
        name,
        ageing.id(),
        ageing.what(),
        on,
        on.filter(day -> day.isBefore(today)).isPresent(),
        ageing.ends(),
        ageing.because());
  }
}
