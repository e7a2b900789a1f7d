package org.proofcut.web.shop;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.proofcut.bench.HabitDesk;
import org.proofcut.core.habit.Advice;
import org.proofcut.core.habit.Estimate;
import org.proofcut.core.habit.Habit;
import org.proofcut.core.habit.Lesson;
import org.proofcut.core.habit.Trait;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.shop.Cutter;
import org.proofcut.core.shop.Machine;
import org.proofcut.core.shop.Shop;
import org.proofcut.web.part.WorkingLine;

/**
 * All that proof cuts have taught of what stands in the shop, as its page shows it.
 *
 * @param questions proofs that lie too far off to be learned unasked
 * @param groups what is known, by machine and cutter
 * @param gone how much is known of machines and cutters that no longer stand in the shop
 */
record HabitsView(List<Question> questions, List<Group> groups, int gone) {

  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm", Locale.ENGLISH);

  /** One proof to be asked about. */
  record Question(String address, String title, String when, String why, String proof) {}

  /** What is known of one cutter, or of one machine with it. */
  record Group(String title, List<Line> habits) {}

  /**
   * One habit.
   *
   * @param words what was found and what is made of it
   * @param use what the next set-up reckons with; empty where that is the mark
   * @param spread how single proofs differ; empty with less than two
   * @param since when and why it was started afresh; empty if never
   */
  record Line(
      String id,
      String address,
      String name,
      String words,
      String use,
      String spread,
      String since,
      boolean aside,
      List<WorkingLine> working,
      List<Told> told) {}

  /**
   * One proof.
   *
   * @param state whether it counts, in words
   * @param shape of that state
   * @param counts whether it does; else it may be made to
   */
  record Told(
      String proof,
      String when,
      String set,
      String found,
      String state,
      String shape,
      boolean counts) {}

  static HabitsView of(HabitDesk desk, Shop shop, LengthUnit unit, ZoneId zone) {
    var writes = new Writes(Scale.caliper(unit), zone);
    var questions = new ArrayList<Question>();
    var groups = new LinkedHashMap<String, List<Line>>();
    int gone = 0;
    for (var habit : desk.habits().all()) {
      var trait = habit.trait();
      if (!stands(trait, shop)) {
        gone++;
        continue;
      }
      for (var ask : habit.open()) {
        questions.add(
            new Question(
                address(trait),
                title(trait, shop),
                writes.when(ask.observation().at()),
                ask.why(unit),
                ask.observation().proof()));
      }
      groups
          .computeIfAbsent(owners(trait, shop), title -> new ArrayList<>())
          .add(writes.line(habit, desk.advice(habit, unit)));
    }
    return new HabitsView(
        questions,
        groups.entrySet().stream().map(each -> new Group(each.getKey(), each.getValue())).toList(),
        gone);
  }

  static String address(Trait trait) {
    return "/shop/habits/" + trait.id();
  }

  /** Of what it is, and what. */
  static String title(Trait trait, Shop shop) {
    return owners(trait, shop) + ": " + name(trait);
  }

  private static String owners(Trait trait, Shop shop) {
    var cutter = cutter(trait, shop).map(Cutter::name).orElse("a cutter that is gone");
    if (isOfCutterAlone(trait)) {
      return cutter;
    }
    return machine(trait, shop).map(Machine::name).orElse("A machine that is gone")
        + " with "
        + cutter;
  }

  private static String name(Trait trait) {
    if (trait instanceof Trait.CutWidth) {
      return "how wide it cuts";
    }
    if (trait instanceof Trait.StackWider) {
      return "how much wider than its parts it cuts";
    }
    if (trait instanceof Trait.BaseToEdge) {
      return "from base edge to cutting edge";
    }
    return ((Trait.ScaleOffset) trait).datum().words();
  }

  private static boolean stands(Trait trait, Shop shop) {
    return cutter(trait, shop).isPresent()
        && (isOfCutterAlone(trait) || machine(trait, shop).isPresent());
  }

  private static boolean isOfCutterAlone(Trait trait) {
    return trait instanceof Trait.CutWidth || trait instanceof Trait.StackWider;
  }

  private static Optional<Cutter> cutter(Trait trait, Shop shop) {
    return shop.cutter(trait.cutter());
  }

  private static Optional<Machine> machine(Trait trait, Shop shop) {
    return shop.machines().stream().filter(one -> trait.isOfMachine(one.id())).findFirst();
  }

  /** Lengths and moments as this page writes them. */
  private record Writes(Scale scale, ZoneId zone) {

    String when(Instant moment) {
      return WHEN.format(moment.atZone(zone));
    }

    Line line(Habit habit, Advice advice) {
      return new Line(
          habit.trait().id(),
          address(habit.trait()),
          ShopPages.capital(name(habit.trait())),
          advice.words(),
          advice.isLearned() ? use(habit.trait(), advice.use().value()) : "",
          habit.estimate().flatMap(Estimate::scatter).map(this::spread).orElse(""),
          habit
              .since()
              .map(since -> "Started afresh " + when(since.at()) + ": " + since.because() + ".")
              .orElse(""),
          habit.aside().isPresent(),
          advice.isLearned() ? WorkingLine.of(advice.use(), scale) : List.of(),
          habit.lessons().stream().map(this::told).toList());
    }

    private String use(Trait trait, Length use) {
      if (trait instanceof Trait.ScaleOffset) {
        return "The next set-up sets it "
            + scale.show(use.abs()).text()
            + (use.isNegative() ? " less" : " more")
            + " for that.";
      }
      if (trait instanceof Trait.StackWider) {
        return "The next stack is chosen "
            + scale.show(use.abs()).text()
            + (use.isNegative() ? " wider" : " narrower")
            + " for that.";
      }
      return "The next set-up reckons with " + scale.show(use).text() + ".";
    }

    private String spread(Estimate.Scatter scatter) {
      var deviation = scatter.deviation().roundedTo(scale.step(), Rounding.UP).max(scale.step());
      return "Two proofs in three lie within "
          + scale.show(deviation).text()
          + " of their mean. If that is much, mend what does not repeat: no figure can.";
    }

    private Told told(Lesson lesson) {
      var one = lesson.observation();
      var state = "Counts";
      var shape = "done";
      if (lesson instanceof Lesson.AskFirst) {
        state = "Not counted until you say so";
        shape = "open";
      } else if (lesson instanceof Lesson.LeftOut out) {
        state = "Left out: " + out.because();
        shape = "stop";
      }
      return new Told(
          one.proof(),
          when(one.at()),
          scale.show(one.set()).text(),
          scale.show(one.found()).text(),
          state,
          shape,
          lesson instanceof Lesson.Learned);
    }
  }
}
