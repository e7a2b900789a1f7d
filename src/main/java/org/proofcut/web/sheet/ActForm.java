package org.proofcut.web.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.proofcut.bench.WorkBench;
import org.proofcut.core.checklist.Item;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthFormatException;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.proof.Verdict;
import org.proofcut.core.run.Act;
import org.proofcut.core.run.SheetProgress;
import org.proofcut.core.setup.Measure;
import org.proofcut.core.setup.Measure.Dimension;
import org.proofcut.web.sheet.SheetViews.Typed;

/**
 * A form of a sheet as it was sent; what is missing in it is empty. It says which acts it asks for,
 * and whether they may be taken is judged at the bench.
 *
 * @param unit that numbers without one are in
 */
record ActForm(Map<String, String> fields, LengthUnit unit) {

  /** The acts asked for, or why it is not clear which. */
  record Asked(List<Act> acts, Optional<Problem> problem) {

    private static Asked to(Act act) {
      return new Asked(List.of(act), Optional.empty());
    }

    private static Asked unclear(String where, String what, String allowed, String doThis) {
      return new Asked(List.of(), Optional.of(Problem.stops(where, what, allowed, doThis)));
    }
  }

  String get(String name) {
    return fields.getOrDefault(name, "");
  }

  /** The one thing that was typed: its field is called after the act. */
  String text() {
    return get(Typed.field(get("act"), get("item")));
  }

  /** The name under which the n-th act, from 0, is recorded once, however often it is sent. */
  String entry(int n) {
    var entry = get("entry").isBlank() ? WorkBench.newEntryId() : get("entry");
    return n == 0 ? entry : entry + "-" + n;
  }

  Asked acts(SheetProgress progress) {
    return switch (get("act")) {
      case "confirm" -> confirm(progress);
      case "without" -> Asked.to(new Act.WentWithout(get("item"), text()));
      case "reading" -> reading();
      case "drop" -> drop(progress);
      case "correct" -> Asked.to(progress.corrections());
      case "override" -> Asked.to(new Act.Overridden(text()));
      case "read-again" -> measured(Act.ReadAgain::new);
      case "disturbed" -> Asked.to(new Act.Disturbed(text()));
      case "cut" -> Asked.to(new Act.PartCut(get("part")));
      case "not-cut" -> Asked.to(new Act.PartNotCut(get("part")));
      case "hold" -> Asked.to(new Act.Held());
      case "sign-off" -> Asked.to(new Act.SignedOff());
      default ->
          Asked.unclear(
              "", "That button is not known here", "a button of this sheet", "Open it again");
    };
  }

  private Asked confirm(SheetProgress progress) {
    var item = progress.sheet().checklist().item(get("item"));
    if (item.isPresent() && item.get() instanceof Item.Figure) {
      // A figure is kept as it was read, exactly.
      return measured(found -> new Act.Confirmed(get("item"), found.toString()));
    }
    var answer = item.map(ActForm::answer).orElse("");
    if (!answer.equals(get("answer"))) {
      return Asked.unclear(
          "",
          "That is no answer of this sheet",
          "the answer that stands on the button",
          "Look again and tap the answer that is true");
    }
    return Asked.to(new Act.Confirmed(get("item"), answer));
  }

  private static String answer(Item item) {
    if (item instanceof Item.Look look) {
      return look.answer();
    }
    return item instanceof Item.Gear gear ? gear.answer() : "";
  }

  private Asked reading() {
    var dimension =
        Arrays.stream(Dimension.values()).filter(one -> one.name().equals(get("item"))).findFirst();
    if (dimension.isEmpty() || !get("attempt").matches("[0-9]{1,4}")) {
      return Asked.unclear(
          "", "It is not clear what was measured", "a measure of this sheet", "Measure again");
    }
    int attempt = Integer.parseInt(get("attempt"));
    return measured(found -> new Act.ReadingTaken(attempt, dimension.get(), found));
  }

  /** The readings of every measure of this proof cut go, each by an act of its own. */
  private static Asked drop(SheetProgress progress) {
    return new Asked(
        progress.verdicts().stream()
            .filter(verdict -> !verdict.found().isEmpty())
            .map(Verdict::measure)
            .map(Measure::dimension)
            .<Act>map(dimension -> new Act.ReadingsDropped(progress.attempt(), dimension))
            .toList(),
        Optional.empty());
  }

  /** The act that a typed length makes, if it is one. */
  private Asked measured(Function<Length, Act> act) {
    var wrong = "That is not more than nothing";
    try {
      var length = Length.parse(text(), unit);
      if (length.isPositive()) {
        return Asked.to(act.apply(length));
      }
    } catch (LengthFormatException e) {
      wrong = e.reason();
    }
    return Asked.unclear(
        "found",
        wrong + ".",
        "a length like " + LengthFormatException.EXAMPLES,
        "Key in what you read");
  }
}
