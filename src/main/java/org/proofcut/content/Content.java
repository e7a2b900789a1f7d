package org.proofcut.content;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.proofcut.core.checklist.Wording;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.exposure.DustBook;
import org.proofcut.core.safety.Fact;
import org.proofcut.core.setup.DrillLimits;
import org.proofcut.core.setup.KnifeLimits;
import org.proofcut.core.setup.RouterLimits;
import org.proofcut.core.setup.SawLimits;
import org.proofcut.core.setup.SettingLimits;
import org.proofcut.core.setup.SetupLimits;
import org.proofcut.core.shop.LiquidKind;
import org.proofcut.core.storage.ThingKind;
import org.proofcut.rulebook.CelRulebook;

/**
 * All that the content folder says. Immutable; maps are by id, in the order of the files.
 *
 * <p>For example, {@code Content.bundled().rulebook().judge(step)}, or {@code
 * Content.bundled().limits(FitLimits.class)}.
 *
 * @param sources the published sources that rules and limits cite
 * @param regions where a shop can stand, by id
 * @param wording operations, gear, aids and cutter changes, in words
 * @param liquids kinds of glue, finish and solvent, by id
 * @param storage kinds of things that keep a person whole, as they are kept, by id
 * @param trouble what to do when something has gone wrong, by id
 * @param noise how loud machines are, and what places make of it
 * @param dust woods, and what their dust does and is held to
 * @param limitRecords limits as other rooms take them, by class; see {@link #limits}
 * @param facts what a condition may ask, as told to whoever writes rules
 * @param cases what each rule means, in examples
 * @param matrix which rules speak of which harm, cut by cut
 * @param files how many files were read
 */
public record Content(
    CelRulebook rulebook,
    Map<String, Source> sources,
    Map<String, Region> regions,
    Wording wording,
    Map<String, LiquidKind> liquids,
    Map<String, ThingKind> storage,
    Map<String, Trouble> trouble,
    NoiseContent noise,
    DustBook dust,
    Map<Class<?>, Record> limitRecords,
    Map<Fact, FactEntry> facts,
    List<RuleCase> cases,
    HarmMatrix matrix,
    int files)
    implements Loaded {

  private static final FutureTask<Content> BUNDLED =
      new FutureTask<>(
          () -> ContentReader.read(ContentSource.bundled(), LimitFolder.ALL).orThrow());

  /**
   * The content that comes with the program; read once, by whoever asks first, while others wait.
   *
   * @throws IllegalStateException if it is faulty; the message lists every fault
   */
  public static Content bundled() {
    BUNDLED.run();
    try {
      return BUNDLED.get();
    } catch (ExecutionException e) {
      throw new IllegalStateException(e.getCause().getMessage(), e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("stopped while content was read", e);
    }
  }

  /** Reads a content folder on disk. */
  public static Loaded load(Path folder) {
    return ContentReader.read(ContentSource.folder(folder), LimitFolder.ALL);
  }

  /**
   * The limits of a room.
   *
   * @throws IllegalArgumentException if the class stands in no {@link LimitFolder}
   */
  public <T extends Record> T limits(Class<T> type) {
    if (!limitRecords.containsKey(type)) {
      throw new IllegalArgumentException(type + " is read from no folder");
    }
    return type.cast(limitRecords.get(type));
  }

  /** The limits of set-ups, by what cuts. */
  public SetupLimits setupLimits() {
    return new SetupLimits(
        limits(SettingLimits.class),
        limits(RouterLimits.class),
        limits(SawLimits.class),
        limits(KnifeLimits.class),
        limits(DrillLimits.class));
  }

  /** How the words of a published source are known to us; empty for what has no source. */
  public Optional<String> known(Citation citation) {
    return sources.values().stream()
        .filter(source -> source.cited().equals(citation.source()))
        .map(Source::known)
        .findFirst();
  }

  /** The names of these regions, without those that lie within another of them. */
  public List<String> names(List<String> ids) {
    return ids.stream()
        .map(regions::get)
        .filter(region -> region.within().filter(larger -> ids.contains(larger.value())).isEmpty())
        .map(Region::name)
        .toList();
  }

  /** For the log: {@code 42 rules from 120 files}. */
  public String summary() {
    return "%d rules from %d files".formatted(rulebook.rules().size(), files);
  }
}
