package org.proofcut.core.setup;

import java.util.Optional;
import org.proofcut.core.measure.Length;
import org.proofcut.core.shop.TableSaw;
import org.proofcut.core.shop.TableSaw.BlindCuts;
import org.proofcut.core.shop.TableSaw.Gauge;
import org.proofcut.core.shop.Tilt;

/** The shop's table saw with something about it changed. */
public final class SawForTests {

  private static final TableSaw SAW = ShopsForTests.SAW;

  private Length fenceStep = SAW.fenceStep();
  private Length heightStep = SAW.heightStep();
  private Length sledReach = SAW.sledStopReach();
  private boolean guarded = true;
  private Optional<BlindCuts> blindCuts = SAW.blindCuts();
  private Optional<Tilt> tilt = Optional.empty();
  private Optional<Length> leftReach = Optional.empty();
  private Optional<Gauge> gauge = Optional.empty();

  public SawForTests step(Length step) {
    fenceStep = step;
    return this;
  }

  public SawForTests heightStep(Length step) {
    heightStep = step;
    return this;
  }

  public SawForTests sledReach(Length reach) {
    sledReach = reach;
    return this;
  }

  public SawForTests withoutGuardAndKnife() {
    guarded = false;
    return this;
  }

  public SawForTests blindCuts(BlindCuts blind) {
    blindCuts = Optional.of(blind);
    return this;
  }

  public SawForTests tilt(Optional<Tilt> to) {
    tilt = to;
    return this;
  }

  public SawForTests leftReach(Optional<Length> reach) {
    leftReach = reach;
    return this;
  }

  public SawForTests gauge(String stopReach, String widestWork) {
    gauge = Optional.of(new Gauge(Length.of(stopReach), Length.of(widestWork)));
    return this;
  }

  public TableSaw made() {
    return new TableSaw(
        SAW.id(),
        SAW.name(),
        SAW.speeds(),
        SAW.fenceReach(),
        fenceStep,
        heightStep,
        SAW.greatestHeight(),
        SAW.blades(),
        sledReach,
        SAW.sledDepth(),
        guarded,
        guarded,
        true,
        blindCuts,
        tilt,
        leftReach,
        gauge);
  }
}
