package org.proofcut.core.noise;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.Optional;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.ExposureLimits;
import org.proofcut.core.measure.Length;
import org.proofcut.core.operation.Operation;
import org.proofcut.core.plan.OperationSheet;
import org.proofcut.core.plan.ProofPiece;
import org.proofcut.core.setup.CutAsked;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.shop.Planer;

/**
 * How long a machine runs for a sheet: {@code runs × (length ÷ feed + before and after)}, for the
 * proof cuts and for the parts. Every part counts as the longest of its batch.
 */
final class RunTime {

  private static final Citation PLANNED = new Citation(Citation.Kind.GEOMETRY, "from the plan", "");

  private static final BigDecimal SECONDS = BigDecimal.valueOf(60);

  private final Setup setup;
  private final CutAsked asked;
  private final ExposureLimits limits;

  private RunTime(Setup setup, CutAsked asked, ExposureLimits limits) {
    this.setup = setup;
    this.asked = asked;
    this.limits = limits;
  }

  /** The time, up to a second; empty where no machine was found to run. */
  static Optional<Worked<Duration>> of(OperationSheet sheet, ExposureLimits limits) {
    var operation = sheet.operation();
    return operation
        .setup()
        .map(setup -> new RunTime(setup, setup.asked(), limits).of(sheet, operation));
  }

  private Worked<Duration> of(OperationSheet sheet, Operation operation) {
    var parts = each("time of one run", length());
    var runs = runs(operation);
    var working =
        Worked.called("time that the machine runs")
            .with("runs", runs)
            .with("time of one run", parts);
    var time = parts.value().multipliedBy(runs.value());
    if (!sheet.needsProof()) {
      return working.by("runs × time of one run").from(Citation.OWN_CHOICE).is(time);
    }
    var proof = each("time of one run of a proof", proofLength(sheet));
    return working
        .by("runs × time of one run + proof cuts × passes of each × time of one run of a proof")
        .with("proof cuts", limits.proofCuts())
        .with("passes of each", passes())
        .with("time of one run of a proof", proof)
        .from(Citation.OWN_CHOICE)
        .is(
            time.plus(
                proof
                    .value()
                    .multipliedBy(limits.proofCuts().value())
                    .multipliedBy(passes().value())));
  }

  private Worked<Integer> passes() {
    return Worked.given("passes of each", setup.passes().size(), PLANNED);
  }

  private Worked<Integer> runs(Operation operation) {
    var parts = Worked.given("parts", operation.parts().size(), PLANNED);
    var inEach = inEach();
    return Worked.called("runs")
        .by("parts × " + inEach.name() + " × passes of each")
        .from(PLANNED)
        .with("parts", parts)
        .with(inEach)
        .with("passes of each", passes())
        .is(parts.value() * inEach.value() * setup.passes().size());
  }

  /** Holes or strips of one part; one for any other cut. */
  private Worked<Integer> inEach() {
    if (asked instanceof CutAsked.Bored bored) {
      return Worked.given("holes of each", bored.row().along().size(), PLANNED);
    }
    return asked instanceof CutAsked.Strips strips
        ? Worked.given("strips of each", strips.count(), PLANNED)
        : Worked.given("cuts of each", 1, PLANNED);
  }

  private Worked<Duration> each(String name, Worked<Length> length) {
    if (asked instanceof CutAsked.Bored) {
      var seconds = limits.secondsEachPlunge();
      return Worked.called(name)
          .by("seconds for each plunge")
          .with("seconds for each plunge", seconds)
          .from(seconds.source())
          .is(Duration.ofSeconds(seconds.value()));
    }
    var feed = feed();
    var around = limits.secondsAroundCut();
    var fed =
        length
            .value()
            .inMillimetres()
            .multiply(SECONDS)
            .divide(feed.value().inMillimetres(), 0, RoundingMode.CEILING);
    return Worked.called(name)
        .by("length ÷ feed of one minute, up to a second + seconds around it")
        .with("length", length)
        .with("feed of one minute", feed)
        .with("seconds around it", around)
        .from(around.source())
        .is(Duration.ofSeconds(fed.longValueExact() + around.value()));
  }

  private Worked<Length> feed() {
    return setup.machine() instanceof Planer planer
        ? Worked.entered("feed of one minute of the " + planer.name(), planer.feed())
        : limits.handFeed();
  }

  /** The way of the cut in the longest part: across the part where it is cut to length. */
  private Worked<Length> length() {
    var work = asked.work();
    boolean across =
        asked instanceof CutAsked.Mitre
            || (asked instanceof CutAsked.Parting parting && !parting.along());
    return Worked.given(
        across ? "width of the widest part" : "length of the longest part along the guide",
        (across ? work.acrossGuide() : work.alongGuide()).most(),
        PLANNED);
  }

  private Worked<Length> proofLength(OperationSheet sheet) {
    var longest =
        sheet.proofPieces().stream()
            .map(ProofPiece::alongGuide)
            .reduce(Length.ZERO, (one, other) -> one.max(other));
    return longest.isPositive()
        ? Worked.given("length of the proof piece", longest, PLANNED)
        : length();
  }
}
