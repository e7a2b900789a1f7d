package org.proofcut.bench;

import java.util.Optional;
import java.util.UUID;
import java.util.function.Predicate;
import org.proofcut.core.checklist.Item;
import org.proofcut.core.proof.Verdict.Outcome;
import org.proofcut.core.run.Act;
import org.proofcut.core.run.SheetProgress;
import org.proofcut.core.safety.Check.Pause;

/** Does at the bench what a sheet asks for next, when all goes well, without its pages. */
public final class Hand {

  private static final int MOST_ACTS = 900;

  private final WorkBench bench;
  private final String job;
  private final String device;

  public Hand(WorkBench bench, String job, String device) {
    this.bench = bench;
    this.job = job;
    this.device = device;
    if (!bench.begin(job).isEmpty()) {
      throw new AssertionError("the demo job can't be begun");
    }
  }

  public Optional<SheetProgress> current() {
    return bench.work(job).orElseThrow().progress().current();
  }

  public SheetProgress sheet(String operation) {
    return bench.work(job).orElseThrow().progress().sheet(operation).orElseThrow();
  }

  /** Works on until the sheet in hand is so; gives that sheet. */
  public SheetProgress until(Predicate<SheetProgress> reached) {
    for (int acts = 0; acts < MOST_ACTS; acts++) {
      var progress = current().orElseThrow();
      if (reached.test(progress)) {
        return progress;
      }
      act(progress, next(progress));
    }
    throw new AssertionError("never reached");
  }

  public void act(SheetProgress progress, Act act) {
    bench
        .act(
            job,
            new WorkBench.Sent(
                UUID.randomUUID().toString(),
                device,
                progress.sheet().id(),
                progress.sheet().marks().fingerprint(),
                act))
        .ifPresent(
            problem -> {
              throw new AssertionError(act + ": " + problem);
            });
  }

  public static Act next(SheetProgress progress) {
    return switch (progress.stage()) {
      case SET -> confirm(progress, Pause.SET);
      case MACHINE -> confirm(progress, Pause.MACHINE);
      case BEFORE_POWER -> confirm(progress, Pause.BEFORE_POWER);
      case PROOF ->
          progress.verdicts().stream()
              .filter(verdict -> verdict.outcome() == Outcome.MORE_READINGS)
              .findFirst()
              .<Act>map(
                  verdict ->
                      new Act.ReadingTaken(
                          progress.attempt(),
                          verdict.measure().dimension(),
                          verdict.measure().target().value()))
              .orElseGet(() -> confirm(progress, Pause.PROOF));
      case CUT ->
          new Act.PartCut(
              progress.sheet().operation().parts().stream()
                  .map(part -> part.id())
                  .filter(part -> !progress.cut().contains(part))
                  .findFirst()
                  .orElseThrow());
      case LEAVE_SAFE ->
          progress.open(Pause.LEAVE_SAFE).isEmpty()
              ? new Act.SignedOff()
              : confirm(progress, Pause.LEAVE_SAFE);
      case LOCKED, DONE -> throw new AssertionError("nothing to do on " + progress.stage());
    };
  }

  private static Act confirm(SheetProgress progress, Pause pause) {
    var item = progress.open(pause).get(0);
    return new Act.Confirmed(item.id(), answer(progress, item));
  }

  private static String answer(SheetProgress progress, Item item) {
    if (item instanceof Item.Figure figure) {
      return asSet(progress, figure);
    }
    return item instanceof Item.Look look ? look.answer() : ((Item.Gear) item).answer();
  }

  /** What is read back of a figure that is set as asked. */
  public static String asSet(SheetProgress progress, Item.Figure figure) {
    var setup = progress.setup().orElseThrow();
    return setup.setting(figure.role()).orElseThrow().read().value().toString();
  }
}
