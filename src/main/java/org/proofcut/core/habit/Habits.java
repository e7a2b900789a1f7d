package org.proofcut.core.habit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.habit.Ruling.Accepted;
import org.proofcut.core.habit.Ruling.LeftOut;
import org.proofcut.core.habit.Ruling.SetAside;
import org.proofcut.core.habit.Ruling.StartedAfresh;
import org.proofcut.core.habit.Ruling.TakenUp;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.setup.Learned;

/**
 * All that a shop's proof cuts have taught: worked out from observations and rulings whenever it is
 * asked, and never kept.
 */
public final class Habits {

  private static final Comparator<Observation> AS_IT_HAPPENED =
      Comparator.comparing(Observation::at).thenComparing(Observation::proof);

  private final Map<Trait, Habit> byTrait;

  private Habits(Map<Trait, Habit> byTrait) {
    this.byTrait = byTrait;
  }

  /**
   * What observations and rulings come to.
   *
   * @param observations in any order; of one proof told twice, the later one counts
   * @param rulings in any order
   */
  public static Habits of(
      Collection<Observation> observations,
      Collection<Ruling> rulings,
      HabitLimits limits,
      StudentT t) {
    var inOrder = rulings.stream().sorted(Comparator.comparing(Ruling::at)).toList();
    var byTrait = new LinkedHashMap<Trait, Map<String, Observation>>();
    observations.stream()
        .sorted(AS_IT_HAPPENED)
        .forEach(
            one ->
                byTrait
                    .computeIfAbsent(one.trait(), trait -> new LinkedHashMap<>())
                    .put(one.proof(), one));
    var habits = new LinkedHashMap<Trait, Habit>();
    byTrait.forEach(
        (trait, byProof) -> habits.put(trait, habit(trait, byProof.values(), inOrder, limits, t)));
    return new Habits(habits);
  }

  /** What is known of one trait; nothing yet where no proof has shown it. */
  public Habit of(Trait trait) {
    return byTrait.getOrDefault(trait, Habit.unknown(trait));
  }

  /** The same, as the next set-up uses it; its words in this unit. */
  public Learned taught(HabitLimits limits, LengthUnit unit) {
    return new TaughtByProofs(this, limits, unit);
  }

  /** Every trait that some proof has shown. */
  public List<Habit> all() {
    return List.copyOf(byTrait.values());
  }

  private static Habit habit(
      Trait trait,
      Collection<Observation> observations,
      List<Ruling> rulings,
      HabitLimits limits,
      StudentT t) {
    var since =
        rulings.stream()
            .filter(StartedAfresh.class::isInstance)
            .map(StartedAfresh.class::cast)
            .filter(ruling -> ruling.about().covers(trait))
            .reduce((earlier, later) -> later);
    var learned = new ArrayList<Observation>();
    var open = new ArrayList<Lesson.AskFirst>();
    var leftOut = new ArrayList<Lesson.LeftOut>();
    for (var one : observations) {
      if (since.isPresent() && one.at().isBefore(since.get().at())) {
        continue;
      }
      var said = said(one, rulings);
      var lesson = said.isPresent() ? ruled(one, said.get()) : Lesson.of(one, learned, limits, t);
      if (lesson instanceof Lesson.AskFirst ask) {
        open.add(ask);
      } else if (lesson instanceof Lesson.LeftOut out) {
        leftOut.add(out);
      } else {
        learned.add(one);
      }
    }
    var estimate =
        learned.isEmpty()
            ? Optional.<Estimate>empty()
            : Optional.of(Estimate.of(learned.stream().map(Observation::value).toList(), t));
    return new Habit(trait, learned, open, leftOut, since, aside(trait, rulings), estimate);
  }

  private static Lesson ruled(Observation one, Ruling said) {
    return said instanceof LeftOut out
        ? new Lesson.LeftOut(one, out.because())
        : new Lesson.Learned(one);
  }

  /** A ruling is of what had been told by then: a proof that is told again is judged anew. */
  private static Optional<Ruling> said(Observation about, List<Ruling> rulings) {
    return rulings.stream()
        .filter(ruling -> !ruling.at().isBefore(about.at()))
        .filter(
            ruling ->
                ruling instanceof Accepted yes && about.isOf(yes.proof(), yes.trait())
                    || ruling instanceof LeftOut no && about.isOf(no.proof(), no.trait()))
        .reduce((earlier, later) -> later);
  }

  private static Optional<SetAside> aside(Trait trait, List<Ruling> rulings) {
    return rulings.stream()
        .filter(
            ruling ->
                ruling instanceof SetAside aside && aside.trait().equals(trait)
                    || ruling instanceof TakenUp up && up.trait().equals(trait))
        .reduce((earlier, later) -> later)
        .flatMap(
            ruling -> ruling instanceof SetAside aside ? Optional.of(aside) : Optional.empty());
  }
}
