package org.proofcut.bench;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.proofcut.core.habit.Observation;
import org.proofcut.core.habit.Ruling;
import org.proofcut.core.habit.Ruling.About;
import org.proofcut.core.habit.Trait;
import org.proofcut.core.measure.Length;
import org.proofcut.core.shop.RouterTable;
import org.proofcut.core.shop.StraightCutter;
import org.proofcut.logbook.Logbook;

/**
 * What proof cuts of a test have taught of the router table and the first straight cutter of the
 * shop. Nothing kept can be taken back, so it is forgotten by a new beginning.
 */
public final class Taught {

  private final Logbook logbook;
  private final ShopFloor floor;
  private final String table;
  private final StraightCutter cutter;

  public Taught(Logbook logbook, ShopFloor floor) {
    this.logbook = logbook;
    this.floor = floor;
    table = floor.shop().machines(RouterTable.class).findFirst().orElseThrow().id();
    cutter = floor.shop().cutters(StraightCutter.class).findFirst().orElseThrow();
    forget();
  }

  public Trait fence() {
    return new Trait.ScaleOffset(table, cutter.id(), Trait.Datum.FENCE_TO_NEAREST_EDGE);
  }

  public Trait width() {
    return new Trait.CutWidth(cutter.id());
  }

  /** The fence was set to 100 mm, once for each of these. */
  public List<Observation> fenceOff(String... offsets) {
    var set = Length.ofMillimetres(100);
    return List.of(offsets).stream()
        .map(offset -> observe(fence(), set, set.plus(Length.of(offset))))
        .toList();
  }

  /** The cutter was found this much narrower than its mark. */
  public Observation widthUnder(String less) {
    return observe(width(), cutter.diameter(), cutter.diameter().minus(Length.of(less)));
  }

  private Observation observe(Trait trait, Length set, Length found) {
    var one = new Observation(UUID.randomUUID().toString(), trait, set, found, Instant.now());
    logbook.append(one);
    return one;
  }

  public void forget() {
    var now = Instant.now();
    for (var machine : floor.shop().machines()) {
      logbook.append(
          new Ruling.StartedAfresh(new About.Machine(machine.id()), "end of a test", now));
    }
    for (var one : floor.shop().cutters()) {
      logbook.append(new Ruling.StartedAfresh(new About.Cutter(one.id()), "end of a test", now));
    }
    logbook.append(new Ruling.TakenUp(fence(), now));
  }
}
