package org.proofcut.bench;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.habit.Advice;
import org.proofcut.core.habit.Habit;
import org.proofcut.core.habit.HabitLimits;
import org.proofcut.core.habit.Habits;
import org.proofcut.core.habit.Observation;
import org.proofcut.core.habit.Observations;
import org.proofcut.core.habit.Ruling;
import org.proofcut.core.habit.StudentT;
import org.proofcut.core.habit.Trait;
import org.proofcut.core.intake.Read;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.proof.Verdict;
import org.proofcut.core.run.Act;
import org.proofcut.core.run.SheetProgress;
import org.proofcut.core.setup.Learned;
import org.proofcut.core.setup.Measure;
import org.proofcut.core.setup.Setup;
import org.proofcut.logbook.Logbook;
import org.proofcut.statistics.CommonsStudentT;

/**
 * What proof cuts have taught of the shop's machines and cutters, and what the maker says to it.
 */
@ApplicationScoped
public class HabitDesk {

  private static final StudentT T = new CommonsStudentT();

  private final Logbook logbook;
  private final Clock clock;
  private final House house;
  private volatile Known known = new Known(-1, null, null);

  HabitDesk(Logbook logbook, House house, Clock clock) {
    this.logbook = logbook;
    this.clock = clock;
    this.house = house;
  }

  private HabitLimits limits() {
    return house.content().limits(HabitLimits.class);
  }

  /** What so many observations and rulings came to, by these limits. */
  private record Known(long lessons, HabitLimits limits, Habits habits) {}

  /**
   * All that has been taught, as it stands now. Not for a transaction that has just added to it: it
   * may still be undone.
   */
  public Habits habits() {
    // Counted before they are read: what comes in between is missed by nobody who asks later.
    long lessons = logbook.lessonsKept();
    var limits = limits();
    var now = known;
    if (now.lessons != lessons || now.limits != limits) {
      now =
          new Known(
              lessons, limits, Habits.of(logbook.observations(), logbook.rulings(), limits, T));
      known = now;
    }
    return now.habits;
  }

  /** The same, as set-ups use it. */
  Learned taught(LengthUnit unit) {
    return habits().taught(limits(), unit);
  }

  /**
   * What had been taught by some moment, as set-ups use it: what is set and proven keeps to it, or
   * every proof cut that follows would change its figures.
   */
  Function<Instant, Learned> taughtBy(LengthUnit unit) {
    var observations = logbook.observations();
    var rulings = logbook.rulings();
    var limits = limits();
    var taught = new HashMap<Instant, Learned>();
    return moment ->
        taught.computeIfAbsent(
            moment,
            by ->
                Habits.of(
                        observations.stream().filter(one -> !one.at().isAfter(by)).toList(),
                        rulings.stream().filter(one -> !one.at().isAfter(by)).toList(),
                        limits,
                        T)
                    .taught(limits, unit));
  }

  /**
   * Takes in a proof cut that belongs to no job.
   *
   * @param proof id of the proof
   * @param found the readings of each measure
   * @return whether it showed anything
   */
  boolean learn(String proof, Setup setup, Function<Measure, List<Length>> found) {
    var shown = Observations.of(proof, setup, found, clock.instant());
    shown.forEach(logbook::append);
    return !shown.isEmpty();
  }

  /** Whether this proof was taken in already. */
  boolean knows(String proof) {
    return logbook.observations().stream().anyMatch(one -> one.proof().equals(proof));
  }

  /** What proofs have shown of the trait with this {@link Trait#id}, if any has. */
  public Optional<Habit> habit(String traitId) {
    return habits().all().stream().filter(habit -> habit.trait().id().equals(traitId)).findFirst();
  }

  /** What the next set-up makes of it; against the mark that the last proof was cut with. */
  public Advice advice(Habit habit, LengthUnit unit) {
    if (habit.trait() instanceof Trait.ScaleOffset) {
      return habit.correction(limits(), unit);
    }
    if (habit.trait() instanceof Trait.StackWider) {
      return habit.wider(limits(), unit);
    }
    var mark =
        habit.learned().stream()
            .map(Observation::set)
            .reduce((earlier, later) -> later)
            .orElse(Length.ZERO);
    return habit.size(Worked.entered("mark", mark), limits(), unit);
  }

  /** Keeps what the maker says, if it can be read. */
  public Read<Ruling> rule(Function<Instant, Read<Ruling>> said) {
    var read = said.apply(clock.instant());
    read.value().ifPresent(logbook::append);
    return read;
  }

  /** Whether an act may change what a proof cut shows. */
  static boolean isOfAProof(Act act) {
    return act instanceof Act.ReadingTaken || act instanceof Act.ReadingsDropped;
  }

  /**
   * Takes in what an act on a sheet shows, as part of the transaction that records the act: the
   * first proof cut of a set-up teaches as soon as it is wholly measured. When its readings are
   * thrown away after that, what they taught is left out by a ruling and not silently: the record
   * is only added to, the page says why the proof is gone, and the readings that are taken in their
   * place are judged anew.
   *
   * @param after how far the sheet is with this act
   */
  void learn(String jobId, SheetProgress after, Act act, Instant at) {
    if (after.attempt() != 1) {
      return;
    }
    var proof =
        String.join("/", jobId, after.sheet().id(), after.sheet().marks().fingerprint(), "1");
    if (act instanceof Act.ReadingTaken && after.isMeasured()) {
      // Nothing is corrected before the first proof cut: it was set as planned.
      var setup = after.sheet().operation().setup().orElseThrow();
      Observations.of(
              proof,
              setup,
              measure ->
                  after.verdicts().stream()
                      .filter(verdict -> verdict.measure().dimension() == measure.dimension())
                      .findFirst()
                      .map(Verdict::found)
                      .orElse(List.of()),
              at)
          .forEach(logbook::append);
    } else if (act instanceof Act.ReadingsDropped) {
      logbook.observations().stream()
          .filter(one -> one.proof().equals(proof))
          .map(Observation::trait)
          .distinct()
          .map(trait -> new Ruling.LeftOut(proof, trait, "its readings were thrown away", at))
          .forEach(logbook::append);
    }
  }
}
