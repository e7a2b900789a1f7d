package org.proofcut.web.noise;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.proofcut.bench.NoiseDraft;
import org.proofcut.core.drawing.DayBar;
import org.proofcut.core.drawing.Picture;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.NoiseLaw;
import org.proofcut.core.exposure.NoiseRule;
import org.proofcut.core.intake.Field;
import org.proofcut.core.intake.NoiseForm;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.noise.DayPart;
import org.proofcut.core.noise.NoiseDay;
import org.proofcut.core.noise.NoiseLevels;
import org.proofcut.core.noise.Protection;
import org.proofcut.web.part.Asked;
import org.proofcut.web.part.FormView;
import org.proofcut.web.part.WorkingLine;

/**
 * Everything on the page of a day's noise.
 *
 * @param action its address
 * @param job id of the job; null without one
 * @param about the job's name, or what the page is for
 * @param sheets the fields of each sheet that a machine runs for
 * @param others the fields of what else is loud
 * @param tried the fields of protectors that are thought of
 * @param problems what can't be read; while there is any, nothing is worked out
 * @param rows the day, sheet by sheet
 * @param doses what it comes to
 * @param law what holds where the shop stands
 * @param steps what the law asks for of such a day
 * @param most which sheets bring most of it, in sentences
 * @param bar the same drawn; null where nothing counts
 * @param protectors what each leaves
 * @param needed what a protector has to be marked with; empty where none is needed
 * @param protectorsJudged what is enough, and where that is written
 * @param works how each figure was found
 * @param verdict in one line, for the strip that stays in sight
 */
record NoisePage(
    String action,
    String job,
    String about,
    List<FormView.Group> sheets,
    List<FormView.Group> others,
    List<Asked> tried,
    List<Problem> problems,
    List<Row> rows,
    List<Figure> doses,
    String law,
    List<Step> steps,
    List<String> most,
    Picture bar,
    List<Protector> protectors,
    String needed,
    String protectorsJudged,
    List<Work> works,
    String verdict) {

  private static final BigDecimal SECONDS = BigDecimal.valueOf(60);
  private static final int MOST_NAMED = 3;

  /** One line of the day. */
  record Row(String what, String says) {}

  /** A figure with its name and what goes with it. */
  record Figure(String name, String value, String more) {}

  /** A step of the law that the day comes under. */
  record Step(String name, String asks, String source) {}

  /** A protector and what it leaves. */
  record Protector(
      String name, String marked, String asRated, String asWorn, String verdict, String more) {}

  /** How a figure was found. */
  record Work(String name, List<WorkingLine> lines) {}

  static NoisePage of(NoiseDraft draft) {
    var day = draft.day();
    boolean read = draft.problems().isEmpty();
    return new NoisePage(
        draft.job().map(job -> "/jobs/" + job.id() + "/noise").orElse("/noise"),
        draft.job().map(job -> job.id()).orElse(null),
        draft
            .job()
            .map(job -> job.typed().getOrDefault("name", "A job"))
            .orElse("A day without a job: enter what is loud, and for how long."),
        sheets(draft),
        others(draft),
        Stream.of(NoiseForm.TRIED, NoiseForm.SECOND, NoiseForm.DIFFERENCE)
            .map(field -> asked(field, draft))
            .toList(),
        draft.problems(),
        read ? rows(day) : List.of(),
        read ? doses(day) : List.of(),
        day.law().title(),
        read ? steps(day) : List.of(),
        read ? most(day) : List.of(),
        read ? bar(day) : null,
        read ? day.protections().stream().map(NoisePage::protector).toList() : List.of(),
        read ? needed(day) : "",
        judged(day.law()),
        read ? works(day) : List.of(),
        verdict(draft));
  }

  // ---- what is asked -------------------------------------------------------------------------

  private static List<FormView.Group> sheets(NoiseDraft draft) {
    return draft.day().parts().stream()
        .filter(part -> part.sheet().isPresent() && part.machine().isPresent())
        .map(part -> sheet(part, draft))
        .toList();
  }

  private static FormView.Group sheet(DayPart part, NoiseDraft draft) {
    int number = part.sheet().orElseThrow();
    var minutes = asked(NoiseForm.minutes(number), draft);
    var planned =
        part.planned()
            .map(time -> "worked out: " + minutes(time.value()) + "; empty takes that")
            .orElse("that the machine runs; it can't be worked out");
    return new FormView.Group(
        "sheet-" + number,
        "Sheet " + number + ": " + part.title(),
        List.of(asked(NoiseForm.done(number), draft), minutes.hinted(planned)));
  }

  private static List<FormView.Group> others(NoiseDraft draft) {
    return IntStream.rangeClosed(1, NoiseForm.OTHERS)
        .mapToObj(
            number ->
                new FormView.Group(
                    "other-" + number,
                    "Something else, " + number,
                    NoiseForm.other(number).stream().map(field -> asked(field, draft)).toList()))
        .toList();
  }

  private static Asked asked(Field field, NoiseDraft draft) {
    return Asked.of(field, draft.typed(), draft.problems(), LengthUnit.MILLIMETRE);
  }

  // ---- what it comes to ----------------------------------------------------------------------

  private static List<Row> rows(NoiseDay day) {
    return day.parts().stream().map(part -> row(part, day)).toList();
  }

  private static Row row(DayPart part, NoiseDay day) {
    var what =
        part.sheet().map(number -> "Sheet " + number + ": ").orElse("")
            + part.title()
            + part.machine().map(name -> ", " + name).orElse("");
    if (!part.done()) {
      return new Row(what, "not done that day");
    }
    if (part.sheet().isPresent() && part.machine().isEmpty()) {
      return new Row(what, "by hand, nothing counted");
    }
    return new Row(
        what,
        part.level().map(level -> shown(level) + ", ").orElse("")
            + part.from().words()
            + " · "
            + part.time().map(time -> minutes(time.value()) + " min").orElse("no time known")
            + " · "
            + day.share(part).toPlainString()
            + " % of the dose");
  }

  private static List<Figure> doses(NoiseDay day) {
    return Stream.concat(
            day.doses().stream()
                .map(
                    dose ->
                        new Figure(
                            name(dose.rule()),
                            dose.dose().value().text(),
                            dose.steady()
                                .map(level -> "steady level " + shown(level))
                                .orElse("no noise that counts"))),
            day.dailyLevel().stream()
                .map(level -> new Figure("Daily level, LEX,8h", shown(level), "as Europe reckons")))
        .toList();
  }

  private static String name(NoiseRule rule) {
    return switch (rule) {
      case PERMITTED_US -> "Dose: 90 dBA for 8 h, halved each 5 dB";
      case RECOMMENDED -> "Dose: 85 dBA for 8 h, halved each 3 dB";
    };
  }

  private static List<Step> steps(NoiseDay day) {
    return Stream.concat(
            day.aboveCeiling().stream()
                .map(
                    part ->
                        new Step(
                            "No time at all without a protector: " + part.title(),
                            "It is louder than "
                                + day.law().ceiling().orElseThrow().at()
                                + ", where the table ends.",
                            day.law().ceiling().orElseThrow().because().text())),
            day.steps().stream()
                .map(
                    step ->
                        new Step(
                            capital(step.name())
                                + ": "
                                + (step.above() ? "above " : "from ")
                                + step.at()
                                + (step.above() ? "" : " on"),
                            step.asks(),
                            step.because().text())))
        .toList();
  }

  private static List<String> most(NoiseDay day) {
    var told =
        day.loudestFirst().stream()
            .limit(MOST_NAMED)
            .map(part -> part.title() + ": " + day.share(part).toPlainString() + " % of the dose.");
    var unknown =
        day.parts().stream()
            .filter(DayPart::isUnknown)
            .map(part -> part.title() + " is not counted: its level or its time is not known.");
    return Stream.concat(told, unknown).toList();
  }

  private static Picture bar(NoiseDay day) {
    var pieces =
        day.loudestFirst().stream()
            .filter(part -> day.share(part).signum() > 0)
            .map(
                part ->
                    new DayBar.Piece(
                        part.sheet().map(number -> Integer.toString(number)).orElse("–"),
                        part.title(),
                        day.share(part),
                        day.share(part).toPlainString() + " %"))
            .toList();
    return pieces.isEmpty() ? null : new DayBar(pieces).drawn();
  }

  private static Protector protector(Protection one) {
    return new Protector(
        one.name(),
        one.marked().isEmpty() ? "no rating" : one.marked(),
        one.asRated().map(NoisePage::shown).orElse(""),
        one.asWorn().map(NoisePage::shown).orElse(""),
        one.verdict().words(),
        more(one));
  }

  private static String more(Protection one) {
    return switch (one.verdict()) {
      case NOT_READ ->
          "Write the rating as marked in the shop, with its kind: NRR or SNR and a number.";
      case NO_FIGURE -> "Two ratings add up by a rule that is known for NRR alone.";
      case QUIET_DAY -> "";
      case ENOUGH, ENOUGH_BY_THE_RULE, NOT_ENOUGH ->
          one.tooMuch()
              ? "It may take off more than is good: calls and a machine that changes its sound"
                  + " must still be heard."
              : "";
    };
  }

  private static String needed(NoiseDay day) {
    return day.needed().isEmpty()
        ? ""
        : day.needed().stream()
            .map(
                one ->
                    one.least()
                        .map(rating -> rating.text() + " or more")
                        .orElse("no " + one.kind() + " alone"))
            .collect(Collectors.joining("; ", "Marked with this, one is enough as worn: ", "."));
  }

  private static String judged(NoiseLaw law) {
    return "Enough is at most %s as worn (%s); by the rule %s may be left (%s)."
        .formatted(
            law.better().at(),
            law.better().because().text(),
            law.mayBeLeft().at(),
            law.mayBeLeft().because().text());
  }

  private static List<Work> works(NoiseDay day) {
    var times =
        day.parts().stream()
            .filter(part -> part.done() && part.sheet().isPresent())
            .flatMap(
                part ->
                    part.time().stream()
                        .map(time -> work("Time of sheet " + part.sheet().orElseThrow(), time)));
    var levels =
        day.parts().stream()
            .filter(part -> part.done() && part.from() != NoiseLevels.From.TYPED)
            .flatMap(part -> part.level().stream())
            .distinct()
            .map(level -> work("Level: " + level.name(), level));
    var doses =
        day.doses().stream()
            .filter(dose -> dose.steady().isPresent())
            .map(dose -> work(name(dose.rule()), dose.steady().orElseThrow()));
    var protectors =
        day.protections().stream()
            .filter(one -> one.asWorn().isPresent())
            .flatMap(
                one ->
                    Stream.of(
                        work(one.name() + ", " + one.marked() + ", as rated", one.asRated()),
                        work(one.name() + ", " + one.marked() + ", as worn", one.asWorn())));
    return Stream.of(
            levels,
            times,
            doses,
            day.dailyLevel().stream().map(level -> work("Daily level, LEX,8h", level)),
            protectors)
        .flatMap(works -> works)
        .toList();
  }

  private static Work work(String name, Optional<Worked<Amount>> worked) {
    return work(name, worked.orElseThrow());
  }

  private static Work work(String name, Worked<?> worked) {
    return new Work(name, WorkingLine.of(worked, Scale.caliper(LengthUnit.MILLIMETRE)));
  }

  private static String verdict(NoiseDraft draft) {
    int wrong = draft.problems().size();
    if (wrong > 0) {
      return wrong == 1 ? "1 thing to mend" : wrong + " things to mend";
    }
    var day = draft.day();
    if (day.parts().isEmpty()) {
      return "Nothing loud is entered yet";
    }
    return day.steadyByLaw()
        .map(
            level ->
                minutes(day.time())
                    + " minutes of noise · steady level "
                    + shown(level)
                    + (day.steps().isEmpty()
                        ? ""
                        : " · past the " + day.steps().get(day.steps().size() - 1).name()))
        .orElse("No noise that counts");
  }

  /** To the tenth; what is worked out further stands in the working. */
  private static String shown(Worked<Amount> level) {
    var amount = level.value();
    return new Amount(amount.value().setScale(1, RoundingMode.HALF_UP), amount.unit()).text();
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private static String minutes(Duration time) {
    return BigDecimal.valueOf(time.toSeconds())
        .divide(SECONDS, 1, RoundingMode.HALF_UP)
        .toPlainString();
  }

  /** Whether what was typed could be read, and there is a day to show. */
  public boolean isRead() {
    return problems.isEmpty();
  }

  /**
   * Whether there is no day yet: what it comes to is then not known, which is more than nothing.
   */
  public boolean isUnentered() {
    return isRead() && rows.isEmpty();
  }

  /** Whether something was said of the sheets, or can't be read there. */
  public boolean isSheetsTold() {
    return sheets.stream()
        .flatMap(group -> group.asked().stream())
        .anyMatch(
            asked ->
                asked.problem() != null || !asked.value().equals(asked.isChoice() ? "yes" : ""));
  }

  /**
   * Whether it has to be asked at once what else is loud: nothing else is known, or it was told.
   */
  public boolean isMoreAsked() {
    return sheets.isEmpty()
        || Stream.concat(others.stream().flatMap(group -> group.asked().stream()), tried.stream())
            .anyMatch(asked -> asked.problem() != null || !asked.value().isBlank());
  }

  /** Whether anything counts that day. */
  public boolean isLoud() {
    return !steps.isEmpty();
  }
}
