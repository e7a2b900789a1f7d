package org.proofcut.core.run;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.proofcut.core.checklist.Item;
import org.proofcut.core.plan.OperationSheet;
import org.proofcut.core.proof.Verdict;
import org.proofcut.core.proof.Verdict.Outcome;
import org.proofcut.core.safety.Check.Pause;
import org.proofcut.core.setup.Setup;

/**
 * How far one sheet is.
 *
 * @param sheet the sheet
 * @param stage where the work stands
 * @param lockedBecause why it is not open; empty when it is
 * @param answers what was answered to each confirmed item that still counts, by item id
 * @param askedAgain items that were confirmed once and have to be again
 * @param setup the set-up with all corrections so far; empty for work without a cutter
 * @param attempt which proof cut this is, from 1
 * @param verdicts on each measure of this attempt
 * @param cut ids of the parts that are cut
 * @param lastAct when anything was last done on this sheet
 * @param without why an item is gone without, by item id, as far as that still counts
 * @param today the day on which all this holds: gear goes out of date
 */
public record SheetProgress(
    OperationSheet sheet,
    Stage stage,
    String lockedBecause,
    Map<String, String> answers,
    Set<String> askedAgain,
    Optional<Setup> setup,
    int attempt,
    List<Verdict> verdicts,
    ProofState proof,
    Set<String> cut,
    boolean held,
    Optional<Instant> lastAct,
    Map<String, String> without,
    LocalDate today) {

  public SheetProgress {
    answers = Map.copyOf(answers);
    askedAgain = Set.copyOf(askedAgain);
    verdicts = List.copyOf(verdicts);
    cut = Set.copyOf(cut);
    without = Map.copyOf(without);
  }

  /** Gear that is still to be put on and that nothing in the shop meets today. */
  public List<Item.Gear> lacking() {
    return isDone()
        ? List.of()
        : gear(item -> item.on() && !isConfirmed(item) && !item.isAtHand(today));
  }

  /** Gear that the sheet asks for and that the work goes on without, for a recorded reason. */
  public List<Item.Gear> workedWithout() {
    return gear(item -> without.containsKey(item.id()));
  }

  private List<Item.Gear> gear(Predicate<Item.Gear> chosen) {
    return sheet.checklist().items().stream()
        .filter(Item.Gear.class::isInstance)
        .map(Item.Gear.class::cast)
        .filter(chosen)
        .toList();
  }

  /** Whether an item counts as confirmed now. */
  public boolean isConfirmed(Item item) {
    return answers.containsKey(item.id());
  }

  /** The items of a pause that are still to be confirmed. */
  public List<Item> open(Pause pause) {
    return sheet.checklist().at(pause).stream().filter(item -> !isConfirmed(item)).toList();
  }

  /** The first measure that still wants readings, or a correction. */
  public Optional<Verdict> nextVerdict() {
    return verdicts.stream().filter(verdict -> !verdict.isProven()).findFirst();
  }

  /** What the verdicts on this proof cut ask to be moved; empty when nothing is. */
  public Act.Corrected corrections() {
    return new Act.Corrected(
        verdicts.stream().map(Verdict::correction).flatMap(Optional::stream).toList());
  }

  /** Whether every measure of this proof cut has all its readings, whatever they say. */
  public boolean isMeasured() {
    return !verdicts.isEmpty()
        && verdicts.stream().noneMatch(verdict -> verdict.outcome() == Outcome.MORE_READINGS);
  }

  public boolean isDone() {
    return stage == Stage.DONE;
  }

  /** Whether the next act on this sheet may be taken. */
  public boolean isOpen() {
    return stage != Stage.LOCKED && stage != Stage.DONE;
  }
}
