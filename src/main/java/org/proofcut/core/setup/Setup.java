package org.proofcut.core.setup;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.measure.Length;
import org.proofcut.core.shop.Cutter;
import org.proofcut.core.shop.Machine;

/**
 * One state of one machine: the figures to set, the passes, the speed, and how a proof is judged.
 *
 * @param asked what the cut must come to
 * @param settings the figures to set, the one that decides most first
 * @param passes in the order cut
 * @param measures what is measured on the proof cut; empty where nothing is cut to a size
 */
public record Setup(
    CutAsked asked,
    Machine machine,
    Cutter cutter,
    Guide guide,
    List<Setting> settings,
    List<Pass> passes,
    Speed speed,
    Feed feed,
    List<Measure> measures)
    implements Answer {

  public Setup {
    settings = List.copyOf(settings);
    passes = List.copyOf(passes);
    measures = List.copyOf(measures);
  }

  /** The setting of this role, where the set-up has one. */
  public Optional<Setting> setting(Setting.Role role) {
    return settings.stream().filter(setting -> setting.role() == role).findFirst();
  }

  /**
   * This set-up with one setting moved by a correction. The passes cover the same wood as before;
   * where the height or depth moves, so does the figure that each of them is cut at.
   */
  public Setup movedBy(Setting.Role role, Length by) {
    boolean deeper = role == Setting.Role.HEIGHT || role == Setting.Role.DEPTH;
    return new Setup(
        asked,
        machine,
        cutter,
        guide,
        settings.stream().map(one -> one.role() == role ? one.movedBy(by) : one).toList(),
        deeper ? passes.stream().map(pass -> pass.deeperBy(by)).toList() : passes,
        speed,
        feed,
        measures);
  }

  public boolean usesStrip() {
    return setting(Setting.Role.STRIP).isPresent();
  }
}
