package org.proofcut.web.job;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.proofcut.bench.Draft;
import org.proofcut.core.casework.Case;
import org.proofcut.core.drawing.CaseElevation;
import org.proofcut.core.drawing.CaseSection;
import org.proofcut.core.drawing.Picture;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.intake.JobForm;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.display.Scale;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.part.Part;
import org.proofcut.core.plan.OperationSheet;
import org.proofcut.core.plan.Plan;
import org.proofcut.core.stock.Sheet;
import org.proofcut.web.part.WorkingLine;

/**
 * What a job comes to, as it stands beside its form.
 *
 * @param missing fields that nothing was entered in, while there are any
 * @param mend what stops the work
 * @param mayStay what the maker should know
 */
record CaseAnswer(
    boolean sound,
    int sheets,
    List<Missing> missing,
    List<Told> mend,
    List<Told> mayStay,
    List<Views> views,
    List<PartLine> parts,
    List<SheetLine> thicknesses,
    List<CutLine> cuts) {

  /** A field that is still empty. */
  record Missing(String href, String label) {}

  /**
   * What is wrong and where to mend it.
   *
   * @param link words of the way there
   */
  record Told(Problem problem, String href, String link) {}

  /** One drawing in the two widths of the tag {@code drawing}. */
  record Views(String title, Picture wide, Picture narrow) {}

  /** A figure that opens to its working. */
  record Opened(String name, String figure, String over, List<WorkingLine> working) {}

  record PartLine(String name, String sheet, List<Opened> sizes) {}

  record SheetLine(String name, int readings, List<Opened> figures) {}

  /**
   * How one cut is made.
   *
   * @param way machine and cutter; empty where none was found
   * @param refused ways tried before, and why not
   */
  record CutLine(int number, String title, String way, List<String> refused) {}

  private static final int WIDE = 600;
  private static final int NARROW = 350;

  static CaseAnswer of(Draft draft) {
    var unit = JobForm.unit(draft.typed());
    var missing =
        draft.problems().stream()
            .filter(problem -> draft.plan().isEmpty() && isEmpty(problem, draft))
            .toList();
    var told = draft.problems().stream().filter(problem -> !missing.contains(problem)).toList();
    var plan = draft.plan();
    var designed = plan.map(Plan::designed);
    var sheets = plan.map(Plan::sheets).orElse(List.of());
    return new CaseAnswer(
        draft.isSound(),
        sheets.size(),
        missing.stream().map(CaseAnswer::missing).toList(),
        told(told.stream().filter(Problem::stops)),
        told(told.stream().filter(problem -> !problem.stops())),
        designed.map(it -> views(it, unit)).orElse(List.of()),
        designed.stream().flatMap(it -> it.parts().stream()).map(it -> part(it, unit)).toList(),
        designed.map(it -> thicknesses(it, unit)).orElse(List.of()),
        sheets.stream().flatMap(CaseAnswer::cut).toList());
  }

  private static boolean isEmpty(Problem problem, Draft draft) {
    return draft.typed().getOrDefault(problem.where(), "").isBlank();
  }

  private static Missing missing(Problem problem) {
    var label = JobFieldNames.of(problem.where());
    return new Missing("#" + problem.where(), label);
  }

  private static List<Told> told(Stream<Problem> problems) {
    return problems
        .map(
            problem ->
                problem.where().contains(":")
                    ? new Told(problem, "/shop", "To the shop")
                    : new Told(
                        problem,
                        "#" + problem.where(),
                        "To the field: " + JobFieldNames.of(problem.where())))
        .toList();
  }

  private static List<Views> views(Case designed, LengthUnit unit) {
    return List.of(
        new Views(
            "From the front",
            CaseElevation.of(designed, unit, WIDE),
            CaseElevation.of(designed, unit, NARROW)),
        new Views(
            "Cut through, from the left",
            CaseSection.of(designed, unit, WIDE),
            CaseSection.of(designed, unit, NARROW)));
  }

  private static PartLine part(Part part, LengthUnit unit) {
    return new PartLine(
        part.name(),
        part.sheet().name(),
        List.of(size("long", part.length(), unit), size("wide", part.width(), unit)));
  }

  /** On the rule's scale in inches, since that is how such a part is marked out. */
  private static Opened size(String name, Worked<Length> size, LengthUnit unit) {
    var scale = unit == LengthUnit.INCH ? Scale.rule(unit) : Scale.caliper(unit);
    return opened(name, size, scale);
  }

  private static Opened opened(String name, Worked<Length> size, Scale scale) {
    var shown = scale.show(size.value());
    return new Opened(
        name, shown.text(), over(shown.leftover(), scale.unit()), WorkingLine.of(size, scale));
  }

  /** What the shown figure leaves out, where a caliper would see it. */
  private static String over(Length leftover, LengthUnit unit) {
    var shown = Scale.caliper(unit).show(leftover.abs());
    if (leftover.isZero() || shown.leftover().equals(leftover.abs())) {
      return "";
    }
    return shown.text() + (leftover.isNegative() ? " under" : " over");
  }

  private static List<SheetLine> thicknesses(Case designed, LengthUnit unit) {
    var scale = Scale.caliper(unit);
    var used = new LinkedHashSet<Sheet>();
    designed.parts().forEach(part -> used.add(part.sheet()));
    return used.stream()
        .map(
            sheet -> {
              var thickness = sheet.thickness();
              return new SheetLine(
                  sheet.name(),
                  thickness.all().size(),
                  List.of(
                      opened("thinnest", thickness.minimum(), scale),
                      opened("thickest", thickness.maximum(), scale),
                      opened("mean", thickness.mean(), scale),
                      opened("spread", thickness.spread(), scale)));
            })
        .toList();
  }

  private static Stream<CutLine> cut(OperationSheet sheet) {
    return sheet.operation().choice().stream()
        .map(
            choice ->
                new CutLine(
                    sheet.number(),
                    sheet.operation().title(),
                    way(sheet.operation()),
                    choice.refused().stream()
                        .map(
                            refused ->
                                refused.machine()
                                    + ", "
                                    + refused.cutter()
                                    + ": "
                                    + refused.why().what())
                        .toList()));
  }

  private static String way(Operation operation) {
    return operation
        .setup()
        .map(setup -> setup.machine().name() + ", " + setup.cutter().name())
        .orElse("");
  }

  /** Whether a way was found for every cut. */
  public boolean everyCutHasAWay() {
    return cuts.stream().noneMatch(cut -> cut.way().isEmpty());
  }

  /** In one line, for the strip that stays in sight. */
  public String verdict() {
    if (sound) {
      return "Sound: " + sheets + " sheets";
    }
    return Stream.of(
            count(mend.size(), "thing to mend", "things to mend"),
            count(missing.size(), "field still empty", "fields still empty"))
        .flatMap(Optional::stream)
        .reduce((one, other) -> one + ", " + other)
        .orElse("Nothing to cut yet");
  }

  private static Optional<String> count(int count, String one, String many) {
    return count == 0 ? Optional.empty() : Optional.of(count + " " + (count == 1 ? one : many));
  }
}
