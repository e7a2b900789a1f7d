package org.proofcut.core.intake;

import static org.proofcut.core.intake.Field.length;
import static org.proofcut.core.intake.Field.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.proofcut.core.casework.Case;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.StandingLimits;
import org.proofcut.core.exposure.WeightUnit;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.weight.CaseBody;
import org.proofcut.core.weight.CaseOnFloor;
import org.proofcut.core.weight.CaseOnFloor.Compartment;
import org.proofcut.core.weight.CaseOnFloor.Contents;
import org.proofcut.core.weight.Densities;

/** The form of a finished case on the floor: what stands in it, and who pulls at it. */
public final class StandForm {

  private static final Field FRONTS =
      text(
              "fronts",
              "Doors and drawers",
              "what all that can stand open weighs, drawers with what is in them; empty for none")
          .mayStayEmpty();
  private static final Field FRONTS_BEFORE =
      length(
              "fronts-before",
              "How far before the front, open",
              "their middle when open: half the width of a door; what a drawer comes out, less half"
                  + " its length")
          .mayStayEmpty();
  private static final Field HUNG =
      text("hung", "What hangs on the front", "such as a child on a shelf, a drawer or a door");
  private static final Field HUNG_BEFORE =
      length("hung-before", "How far before the front", "from the front edges to where it hangs");
  private static final Field PULL =
      text("pull", "Pulled forward with", "as a spring balance shows it");
  private static final Field PULL_HIGH =
      length("pull-high", "Pulled at what height", "from the floor; the top is the worst");
  private static final Field DROP =
      length(
          "drop",
          "Front lower than the rear",
          "by a level and a rule; a carpet's edge under the rear lifts it");
  private static final Field FEET_BACK =
      length(
          "feet-back",
          "Front feet set back",
          "behind the front edges; 0 where the sides stand on the floor");

  private static final Amount NOTHING = new Amount(BigDecimal.ZERO, "kg");
  private static final Amount MOST = new Amount(BigDecimal.valueOf(1000), "kg");

  private final Case sound;
  private final LengthUnit unit;
  private final List<Compartment> compartments;

  /**
   * @param sound a case whose design has no problem that stops it
   */
  public StandForm(Case sound) {
    this.sound = sound;
    this.unit = sound.design().unit();
    this.compartments = CaseOnFloor.compartments(sound);
  }

  /** The fields, in the order they are asked. */
  public List<CutForm.Group> groups() {
    var groups = new ArrayList<CutForm.Group>();
    groups.add(
        new CutForm.Group(
            "What stands in it, when it is full",
            IntStream.range(0, compartments.size())
                .boxed()
                .flatMap(i -> List.of(weight(i), behind(i)).stream())
                .toList()));
    groups.add(new CutForm.Group("What can stand open", List.of(FRONTS, FRONTS_BEFORE)));
    groups.add(new CutForm.Group("Who pulls at it", List.of(HUNG, HUNG_BEFORE, PULL, PULL_HIGH)));
    groups.add(new CutForm.Group("What it stands on", List.of(DROP, FEET_BACK)));
    return groups;
  }

  /** All fields. */
  public List<Field> fields() {
    return groups().stream().flatMap(group -> group.fields().stream()).toList();
  }

  /** What was typed, with the usual where nothing was. */
  public Map<String, String> filledIn(Map<String, String> typed, StandingLimits limits) {
    var filledIn = new LinkedHashMap<>(typed);
    filledIn.putIfAbsent(HUNG.name(), inUnit(kilograms(limits.hungKilograms())));
    filledIn.putIfAbsent(HUNG_BEFORE.name(), limits.hungBefore().value().toString());
    filledIn.putIfAbsent(PULL.name(), inUnit(kilograms(limits.pullKilograms())));
    filledIn.putIfAbsent(PULL_HIGH.name(), sound.design().outside().height().toString());
    filledIn.putIfAbsent(DROP.name(), "0");
    filledIn.putIfAbsent(FEET_BACK.name(), "0");
    return filledIn;
  }

  private static Amount kilograms(Worked<Integer> limit) {
    return new Amount(BigDecimal.valueOf(limit.value()), "kg");
  }

  private String inUnit(Amount weight) {
    return WeightUnit.beside(unit).amount(weight, 0, RoundingMode.UP).text();
  }

  /** The case with what was typed of it, or what is wrong with that. */
  public Read<CaseOnFloor> read(
      Map<String, String> typed, StandingLimits limits, Densities densities) {
    var form = new FormReader(typed, unit);
    var outside = sound.design().outside();
    var contents = new ArrayList<Contents>();
    for (int i = 0; i < compartments.size(); i++) {
      var in = compartments.get(i);
      var weight =
          form.optionalWeight(weight(i), NOTHING, MOST)
              .map(one -> entered("weight of what stands " + in.name(), one))
              .orElseGet(() -> in.usual(limits.contentsPerSquareMetre()));
      var behind =
          form.optionalLength(behind(i), upTo(in.depth().value()))
              .map(one -> Worked.entered("middle of what stands " + in.name(), one))
              .orElseGet(in::middle);
      contents.add(new Contents(in, weight, behind));
    }
    var fronts =
        form.optionalWeight(FRONTS, NOTHING, MOST)
            .map(one -> entered("weight of doors and drawers", one));
    var frontsBefore =
        fronts.isPresent()
            ? form.length(FRONTS_BEFORE, upTo(Length.ofMillimetres(2000)))
            : Length.ZERO;
    var hung = form.weight(HUNG, NOTHING, MOST);
    var hungBefore = form.length(HUNG_BEFORE, upTo(Length.ofMillimetres(2000)));
    var pull = form.weight(PULL, NOTHING, MOST);
    var pullHigh = form.length(PULL_HIGH, upTo(outside.height()));
    // Steeper than a third, and it is no floor; feet behind the middle, and it is no cabinet.
    var drop = form.length(DROP, upTo(new Length(outside.depth().picometres() / 6)));
    var feetBack = form.length(FEET_BACK, upTo(new Length(outside.depth().picometres() / 2)));
    return form.result(
        () ->
            new CaseOnFloor(
                CaseBody.of(sound, densities),
                outside,
                contents,
                fronts,
                Worked.entered("doors and drawers before the front edges", frontsBefore),
                entered("what hangs on the front", hung),
                Worked.entered("how far before the front edges it hangs", hungBefore),
                entered("pull forward", pull),
                Worked.entered("height of the pull", pullHigh),
                Worked.entered("front feet lower than the rear ones", drop),
                Worked.entered("front feet behind the front edges", feetBack)));
  }

  /** In kg, which all weights are reckoned in; pounds to a gram. */
  private static Worked<Amount> entered(String name, Amount weight) {
    return Worked.entered(
        name,
        weight.unit().equals(WeightUnit.KILOGRAM.symbol())
            ? weight
            : WeightUnit.KILOGRAM.amount(weight, 3, RoundingMode.HALF_UP));
  }

  private static Band upTo(Length most) {
    return new Band(Length.ZERO, most);
  }

  private Field weight(int i) {
    return text(
            "contents-" + (i + 1),
            "What stands " + compartments.get(i).name(),
            "its weight; the usual for such a shelf where it is empty")
        .mayStayEmpty();
  }

  private Field behind(int i) {
    return length(
            "behind-" + (i + 1),
            "Its middle, behind the front",
            "half the depth of the shelf where it is empty")
        .mayStayEmpty();
  }
}
