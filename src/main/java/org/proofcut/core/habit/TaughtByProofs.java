package org.proofcut.core.habit;

import java.util.Optional;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.measure.Rounding;
import org.proofcut.core.setup.Learned;
import org.proofcut.core.setup.Setting;
import org.proofcut.core.setup.Setup;
import org.proofcut.core.setup.Taught;
import org.proofcut.core.shop.Cutter;
import org.proofcut.core.shop.HandRouter;
import org.proofcut.core.shop.StackedCutter;

/** What habits come to, as set-ups ask for it. */
record TaughtByProofs(Habits habits, HabitLimits limits, LengthUnit unit) implements Learned {

  @Override
  public Optional<Taught> width(Cutter cutter, Worked<Length> marked) {
    if (!(cutter instanceof StackedCutter)) {
      return taught(habits.of(new Trait.CutWidth(cutter.id())).size(marked, limits, unit));
    }
    return taught(habits.of(new Trait.StackWider(cutter.id())).wider(limits, unit))
        .map(
            wider ->
                new Taught(
                    Worked.called("width that the stack cuts")
                        .by("width of its parts + what it cuts wider")
                        .with("width of its parts", marked)
                        .with("what it cuts wider", wider.use())
                        .is(marked.value().plus(wider.use().value())),
                    wider.words()));
  }

  @Override
  public Optional<Taught> baseToEdge(HandRouter router, Cutter cutter, Worked<Length> reckoned) {
    return taught(
        habits.of(new Trait.BaseToEdge(router.id(), cutter.id())).size(reckoned, limits, unit));
  }

  @Override
  public Optional<Taught> correction(Setup setup, Setting setting) {
    return Trait.Datum.of(setup, setting.role())
        .map(datum -> new Trait.ScaleOffset(setup.machine().id(), setup.cutter().id(), datum))
        .flatMap(scale -> taught(habits.of(scale).correction(limits, unit)))
        // What is less than half a step can't be set.
        .filter(
            taught -> !taught.use().value().roundedTo(setting.step(), Rounding.NEAREST).isZero());
  }

  private static Optional<Taught> taught(Advice advice) {
    return advice.isLearned()
        ? Optional.of(new Taught(advice.use(), advice.words()))
        : Optional.empty();
  }
}
