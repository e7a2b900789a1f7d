package org.proofcut.core.storage;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Citation;

/**
 * Something that is to be done to a piece of gear.
 *
 * @param thing id of the piece
 * @param name of the piece
 * @param ageing id of what falls due; {@link #MARKED} or {@link #ENDS} for a day that is marked on
 *     the piece, {@link #FAILED} where it has failed
 * @param what in the imperative: "Look at the cushions"
 * @param on the day on which it falls due; empty where it is not known since when to count
 * @param overdue whether that day has passed
 * @param ends whether the piece is over then, and not only to be looked at
 */
public record Due(
    String thing,
    String name,
    String ageing,
    String what,
    Optional<LocalDate> on,
    boolean overdue,
    boolean ends,
    Citation because) {

  /** The day by which the piece is to be looked at, as it is marked on it. */
  public static final String MARKED = "marked";

  /** The last day that the piece may be used, as it is marked on it. */
  public static final String ENDS = "ends";

  /** The piece was looked at and was not good. */
  public static final String FAILED = "failed";

  /** Ids that no ageing of a kind may have: two things would fall due as one. */
  public static final List<String> NOT_OF_KINDS = List.of(MARKED, ENDS, FAILED);
}
