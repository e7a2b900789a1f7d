package org.proofcut.core.exposure;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;

/**
 * A wood or board, as far as its dust depends on it.
 *
 * @param name what the trade calls it
 * @param alsoCalled other names that a maker may write
 * @param holds what a panel is made from, where that is known; only of a panel
 * @param finer whether it falls to finer dust than solid wood under the same cutter
 * @param gravity specific gravity at 12 % moisture, where a source gives it
 * @param effects what its dust does beside what any wood dust does
 */
public record Wood(
    String id,
    String name,
    List<String> alsoCalled,
    Group group,
    Optional<Group> holds,
    boolean finer,
    Optional<Worked<BigDecimal>> gravity,
    List<Effect> effects) {

  /** By the tree, not by how hard it is. */
  public enum Group {
    HARDWOOD("hardwood"),
    SOFTWOOD("softwood"),
    PANEL("panel");

    private final String words;

    Group(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** Where it is felt. */
  public enum Site {
    EYES,
    SKIN,
    BREATHING;

    public String words() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * One thing that its dust does.
   *
   * @param on where it is felt; empty where the whole body is meant
   */
  public record Effect(DustEffect does, List<Site> on, Citation because) {

    public Effect {
      on = List.copyOf(on);
    }
  }

  public Wood {
    alsoCalled = List.copyOf(alsoCalled);
    effects = List.copyOf(effects);
    if (holds.isPresent() && group != Group.PANEL) {
      throw new IllegalArgumentException("only a panel holds another wood: " + id);
    }
  }

  public boolean isPanel() {
    return group == Group.PANEL;
  }

  /** What its dust counts as. A panel of unknown make-up counts as hardwood. */
  public Group countsAs() {
    return group == Group.SOFTWOOD || holds.equals(Optional.of(Group.SOFTWOOD))
        ? Group.SOFTWOOD
        : Group.HARDWOOD;
  }

  /** Whether a maker who writes this means this wood. */
  public boolean isCalled(String written) {
    var asked = written.strip().toLowerCase(Locale.ROOT);
    return asked.equals(id)
        || asked.equals(name.toLowerCase(Locale.ROOT))
        || alsoCalled.stream().anyMatch(other -> other.toLowerCase(Locale.ROOT).equals(asked));
  }
}
