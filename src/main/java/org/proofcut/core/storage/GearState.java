package org.proofcut.core.storage;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the record of a piece comes to.
 *
 * @param out who has it; empty where it is in its place
 * @param failed the day on which it was looked at and not good; empty where it was mended or
 *     replaced since, or never failed
 * @param replaced the day on which this one came in the place of another
 * @param looked the last day on which it was looked at and good, by the id of what fell due
 */
public record GearState(
    Optional<Out> out,
    Optional<LocalDate> failed,
    Optional<LocalDate> replaced,
    Map<String, LocalDate> looked) {

  /** Of a piece that has no record. */
  public static final GearState NEW =
      new GearState(Optional.empty(), Optional.empty(), Optional.empty(), Map.of());

  public GearState {
    looked = Map.copyOf(looked);
  }

  /** Who has it; empty where it is in its place. */
  public Optional<String> with() {
    return out.map(Out::who);
  }

  /** By the id of each thing that has a record, in the order recorded. */
  public static Map<String, GearState> of(List<GearEntry> entries) {
    var states = new LinkedHashMap<String, GearState>();
    for (var entry : entries) {
      states.merge(entry.thing(), NEW.after(entry), (before, any) -> before.after(entry));
    }
    return states;
  }

  private GearState after(GearEntry entry) {
    if (entry.act() instanceof GearAct.TakenOut taken) {
      return new GearState(
          Optional.of(new Out(taken.who(), entry.day())), failed, replaced, looked);
    }
    if (entry.act() instanceof GearAct.LookedAt at) {
      return at.good() ? good(at.ageing(), entry.day()) : failedOn(Optional.of(entry.day()));
    }
    if (entry.act() instanceof GearAct.Mended) {
      return failedOn(Optional.empty());
    }
    if (entry.act() instanceof GearAct.Replaced) {
      return new GearState(Optional.empty(), Optional.empty(), Optional.of(entry.day()), Map.of());
    }
    return new GearState(Optional.empty(), failed, replaced, looked);
  }

  private GearState good(String ageing, LocalDate day) {
    var more = new HashMap<>(looked);
    more.put(ageing, day);
    return new GearState(out, failed, replaced, more);
  }

  private GearState failedOn(Optional<LocalDate> day) {
    return new GearState(out, day, replaced, looked);
  }
}
