package org.proofcut.web.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.proofcut.bench.HabitDesk;
import org.proofcut.core.habit.Estimate;
import org.proofcut.core.habit.Habit;
import org.proofcut.core.habit.Lesson;
import org.proofcut.core.habit.Trait;
import org.proofcut.core.measure.LengthUnit;

/** What proof cuts have taught. */
final class HabitJson {

  private HabitJson() {}

  /** One thing that is known of a cutter, or of a machine with it. */
  @Schema(name = "Habit")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record One(
      @Schema(description = "names it in a ruling") String trait,
      @Schema(description = "cut-width, stack-wider, base-to-edge or scale-offset") String kind,
      @Schema(description = "id in the shop") String cutter,
      @Schema(description = "id in the shop; left out for a cut-width") Optional<String> machine,
      @Schema(description = "what the scale is read between; of a scale-offset only")
          Optional<String> datum,
      @Schema(description = "what was found and what is made of it") String words,
      @Schema(description = "whether the next set-up reckons with it") boolean used,
      @Schema(
              description =
                  "the size to reckon with, or what to add to the figure that is set; left out"
                      + " where it is not used")
          Optional<LengthJson.Figure> use,
      @Schema(description = "left out before the first proof that counts")
          Optional<Estimated> estimate,
      @Schema(description = "why it was set aside, if it is") Optional<String> aside,
      @Schema(description = "when it was last started afresh, and why") Optional<Since> since,
      @Schema(description = "since then, as they happened") List<Told> observations) {}

  /** What the proofs that count come to. */
  @Schema(name = "Estimate")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Estimated(
      int proofs,
      LengthJson.Plain mean,
      @Schema(description = "sample standard deviation of single proofs; from two proofs on")
          Optional<LengthJson.Plain> deviation,
      @Schema(description = "where the true value lies, 95 % sure; from two proofs on")
          Optional<LengthJson.Range> ofMean,
      @Schema(description = "where the next single cut comes to, 95 % sure; from two proofs on")
          Optional<LengthJson.Range> ofNext) {}

  /** A new beginning. */
  @Schema(name = "StartedAfresh")
  record Since(String at, String because) {}

  /** What one proof cut showed. */
  @Schema(name = "Observation")
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Told(
      String proof,
      String at,
      @Schema(description = "what was set or marked") LengthJson.Plain set,
      @Schema(description = "mean of the readings, as it bears on this") LengthJson.Plain found,
      @Schema(
              description = "asked: it counts only once it is ruled to",
              enumeration = {"counts", "asked", "left-out"})
          String state,
      @Schema(description = "what is asked, or why it was left out") Optional<String> words) {}

  /** What is sent to rule on what was taught. */
  @Schema(
      name = "RulingSent",
      requiredProperties = {"ruling", "trait"})
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Sent(
      @Schema(
              description =
                  "count (proof), leave-out (proof, because if you like), set-aside (because),"
                      + " take-up, start-afresh (changed, because where it is other)",
              enumeration = {"count", "leave-out", "set-aside", "take-up", "start-afresh"})
          String ruling,
      @Schema(description = "of a habit that is listed") String trait,
      @Schema(description = "of an observation that is listed") Optional<String> proof,
      @Schema(
              description = "scale only where the trait is a scale-offset",
              enumeration = {"cutter", "scale", "other"})
          Optional<String> changed,
      @Schema(description = "in a few words") Optional<String> because) {}

  static List<One> all(HabitDesk desk, LengthUnit unit) {
    return desk.habits().all().stream().map(habit -> one(habit, desk, unit)).toList();
  }

  private static One one(Habit habit, HabitDesk desk, LengthUnit unit) {
    var trait = habit.trait();
    var advice = desk.advice(habit, unit);
    return new One(
        trait.id(),
        kind(trait),
        trait.cutter(),
        machine(trait),
        trait instanceof Trait.ScaleOffset scale
            ? Optional.of(ShopJson.word(scale.datum()))
            : Optional.empty(),
        advice.words(),
        advice.isLearned(),
        advice.isLearned() ? Optional.of(LengthJson.figure(advice.use(), unit)) : Optional.empty(),
        habit.estimate().map(estimate -> estimated(estimate, unit)),
        habit.aside().map(aside -> aside.because()),
        habit.since().map(since -> new Since(since.at().toString(), since.because())),
        habit.lessons().stream().map(lesson -> told(lesson, unit)).toList());
  }

  private static String kind(Trait trait) {
    if (trait instanceof Trait.CutWidth) {
      return "cut-width";
    }
    if (trait instanceof Trait.StackWider) {
      return "stack-wider";
    }
    return trait instanceof Trait.BaseToEdge ? "base-to-edge" : "scale-offset";
  }

  private static Optional<String> machine(Trait trait) {
    if (trait instanceof Trait.BaseToEdge base) {
      return Optional.of(base.machine());
    }
    return trait instanceof Trait.ScaleOffset scale
        ? Optional.of(scale.machine())
        : Optional.empty();
  }

  private static Estimated estimated(Estimate estimate, LengthUnit unit) {
    var scatter = estimate.scatter();
    return new Estimated(
        estimate.proofs(),
        LengthJson.plain(estimate.mean(), unit),
        scatter.map(one -> LengthJson.plain(one.deviation(), unit)),
        scatter.map(one -> LengthJson.range(one.ofMean(), unit)),
        scatter.map(one -> LengthJson.range(one.ofNext(), unit)));
  }

  private static Told told(Lesson lesson, LengthUnit unit) {
    var state = "counts";
    var words = Optional.<String>empty();
    if (lesson instanceof Lesson.AskFirst ask) {
      state = "asked";
      words = Optional.of(ask.why(unit));
    } else if (lesson instanceof Lesson.LeftOut out) {
      state = "left-out";
      words = Optional.of(out.because());
    }
    var one = lesson.observation();
    return new Told(
        one.proof(),
        one.at().toString(),
        LengthJson.plain(one.set(), unit),
        LengthJson.plain(one.found(), unit),
        state,
        words);
  }
}
