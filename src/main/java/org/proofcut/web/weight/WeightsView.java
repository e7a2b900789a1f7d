package org.proofcut.web.weight;

import java.util.List;
import org.proofcut.bench.LoadDesk;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.LiftLimits;
import org.proofcut.core.exposure.LiftTask.Judged;
import org.proofcut.core.exposure.LiftTask.Strain;
import org.proofcut.core.weight.PartAtTheSaw;
import org.proofcut.web.part.WorkingLine;

/**
 * What the parts, the sheets and the case of a job weigh.
 *
 * @param parts the heaviest first
 * @param taken what a lift onto the saw table is taken to be, in a line
 */
record WeightsView(
    String job, String name, List<Row> parts, List<Row> sheets, Row whole, String taken) {

  /**
   * One thing.
   *
   * @param part its id; empty for what is no part
   * @param says what follows for whoever lifts it; empty where nothing is said
   */
  record Row(
      String part,
      String name,
      String size,
      String weight,
      String says,
      String shape,
      List<WorkingLine> working) {}

  static WeightsView of(LoadDesk.Weights weights, LiftLimits limits) {
    var weighs = new Weighs(weights.unit());
    return new WeightsView(
        weights.job().id(),
        weights.job().typed().getOrDefault("name", ""),
        weights.parts().stream().map(one -> part(one, weighs)).toList(),
        weights.sheets().stream()
            .map(
                one ->
                    new Row(
                        "",
                        one.sheet().name(),
                        weighs.length(one.sheet().length())
                            + " × "
                            + weighs.length(one.sheet().width()),
                        weighs.text(one.weight().most().value()),
                        "No figure for a whole sheet: break it down where it lies, or take a cart"
                            + " or a second person",
                        "shape-stop",
                        lines(one.weight().most(), weighs)))
            .toList(),
        new Row(
            "",
            "The case, put together and empty",
            "",
            weighs.band(weights.body().weight()),
            "",
            "",
            lines(weights.body().weight().most(), weighs)),
        ("hands at least %s out, taken up %s high, laid down %s high with care,"
                + " lifts in a minute: %s, for an hour at most (%s)")
            .formatted(
                weighs.length(limits.sawHandsOut().value()),
                weighs.length(limits.sawHandsFrom().value()),
                weighs.length(limits.sawHandsTo().value()),
                limits.sawLiftsPerMinute().value(),
                limits.sawHandsOut().source().text()));
  }

  private static Row part(PartAtTheSaw one, Weighs weighs) {
    var decides = one.lift().decides(weighs.unit());
    return new Row(
        one.part().id(),
        one.part().name(),
        weighs.length(one.part().length().value())
            + " × "
            + weighs.length(one.part().width().value()),
        weighs.text(one.weight().most().value()),
        decides
            .map(WeightsView::says)
            .orElse("Too large for one person to hold steady: no figure. Two people, or a cart"),
        decides.filter(judged -> judged.strain() == Strain.WITHIN).isPresent()
            ? "shape-done"
            : "shape-stop",
        lines(
            decides.flatMap(Judged::index).isPresent()
                ? decides.flatMap(Judged::index).get()
                : one.weight().most(),
            weighs));
  }

  private static String says(Judged judged) {
    return judged.strain().words()
        + judged
            .index()
            .map(one -> " (lifting index " + one.value().toPlainString() + ")")
            .orElse("");
  }

  private static List<WorkingLine> lines(Worked<?> worked, Weighs weighs) {
    return WorkingLine.of(worked, weighs.scale());
  }
}
