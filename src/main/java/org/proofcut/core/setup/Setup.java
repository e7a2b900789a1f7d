package org.proofcut.core.setup;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
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
 * @param learned what proof cuts have taught of its cutter; empty where marks alone are used
 * @param angles the angles to set besides; empty where the machine has none to set
 * @param knifeMarks what knives leave on the face; empty for every other cutter
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
    List<Measure> measures,
    Optional<List<Taught>> learned,
    Optional<List<AngleSetting>> angles,
    Optional<KnifeMarks> knifeMarks)
    implements Answer {

  /** What every set-up has: one that stands on marks and scales alone, with no angle to set. */
  public Setup(
      CutAsked asked,
      Machine machine,
      Cutter cutter,
      Guide guide,
      List<Setting> settings,
      List<Pass> passes,
      Speed speed,
      Feed feed,
      List<Measure> measures) {
    this(
        asked,
        machine,
        cutter,
        guide,
        settings,
        passes,
        speed,
        feed,
        measures,
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  public Setup {
    learned = learned.map(List::copyOf);
    angles = angles.map(List::copyOf);
    settings = List.copyOf(settings);
    passes = List.copyOf(passes);
    measures = List.copyOf(measures);
  }

  /** The setting of this role, where the set-up has one. */
  public Optional<Setting> setting(Setting.Role role) {
    return settings.stream().filter(setting -> setting.role() == role).findFirst();
  }

  /** The angles to set; none where the machine has none. */
  public List<AngleSetting> anglesSet() {
    return angles.orElse(List.of());
  }

  /** The angle of this role, where the set-up has one. */
  public Optional<AngleSetting> angle(AngleSetting.Role role) {
    return anglesSet().stream().filter(angle -> angle.role() == role).findFirst();
  }

  /** The same set-up, made from what proof cuts have taught of its cutter. */
  Setup using(Optional<List<Taught>> taught) {
    return copy(settings, passes, taught, angles, knifeMarks);
  }

  /** The same set-up with these angles set besides. */
  Setup at(List<AngleSetting> set) {
    return copy(settings, passes, learned, Optional.of(set), knifeMarks);
  }

  /** The same set-up, of knives that leave these marks. */
  Setup leaving(KnifeMarks marks) {
    return copy(settings, passes, learned, angles, Optional.of(marks));
  }

  /** The same set-up with these passes in place of its own. */
  Setup with(List<Pass> others) {
    return copy(settings, others, learned, angles, knifeMarks);
  }

  /**
   * This set-up with one setting moved by a correction. The passes cover the same wood as before;
   * where the height or depth moves, so does the figure that each of them is cut at.
   */
  public Setup movedBy(Setting.Role role, Length by) {
    boolean deeper = role.isOfDepth();
    return copy(
        settings.stream().map(one -> one.role() == role ? one.movedBy(by) : one).toList(),
        deeper ? passes.stream().map(pass -> pass.deeperBy(by)).toList() : passes,
        learned,
        angles,
        knifeMarks);
  }

  /** The same set-up, its figures read on scales that proof cuts have shown to be off. */
  Setup readAs(Function<Setting, Optional<Taught>> taught) {
    return copy(
        settings.stream().map(setting -> setting.readAs(taught.apply(setting))).toList(),
        passes,
        learned,
        angles,
        knifeMarks);
  }

  /** The same cut on the same machine, with these in place of its own. */
  private Setup copy(
      List<Setting> otherSettings,
      List<Pass> otherPasses,
      Optional<List<Taught>> otherLearned,
      Optional<List<AngleSetting>> otherAngles,
      Optional<KnifeMarks> otherMarks) {
    return new Setup(
        asked,
        machine,
        cutter,
        guide,
        otherSettings,
        otherPasses,
        speed,
        feed,
        measures,
        otherLearned,
        otherAngles,
        otherMarks);
  }

  /** What the scale of height or depth reads when it is set for a pass. */
  public Length read(Pass pass) {
    return settings.stream()
        .filter(one -> one.role().isOfDepth())
        .map(one -> one.read().value().minus(one.set().value()))
        .findFirst()
        .map(pass.depth().value()::plus)
        .orElse(pass.depth().value());
  }

  /** All that proof cuts have taught and this set-up uses, in words. */
  public List<String> taught() {
    return Stream.concat(
            learned.stream().flatMap(List::stream),
            settings.stream().flatMap(setting -> setting.learned().stream()))
        .map(Taught::words)
        .toList();
  }

  public boolean usesStrip() {
    return setting(Setting.Role.STRIP).isPresent();
  }
}
