package org.proofcut.core.operation;

import java.util.List;
import org.proofcut.core.setup.Guide;

/**
 * One kind of operation as one kind of machine makes it, and what can be so of such a step. A rule
 * that asks for something else never speaks there.
 *
 * @param machine kind of machine, as content and conditions write it
 * @param guides what can guide the work or the machine; none where nothing does
 * @param through whether the cut comes out on the other face
 * @param inside whether the edge of an opening is followed, from inside it
 * @param bearing whether a bearing of the cutter rides an edge
 * @param strip whether a spacer strip lies between fence and work
 * @param stacked whether the cutter is a stack
 */
public record Way(
    OperationKind kind,
    String machine,
    List<Guide> guides,
    So through,
    So inside,
    So bearing,
    So strip,
    So stacked) {

  /** How often something is so. */
  public enum So {
    NEVER(List.of(false)),
    AT_TIMES(List.of(false, true)),
    ALWAYS(List.of(true));

    private final List<Boolean> answers;

    So(List<Boolean> answers) {
      this.answers = answers;
    }

    /** What a step can answer. */
    public List<Boolean> answers() {
      return answers;
    }
  }

  public Way {
    guides = List.copyOf(guides);
  }

  /** A blind cut of which nothing else is so. */
  static Way of(OperationKind kind, String machine, Guide... guides) {
    return new Way(
        kind, machine, List.of(guides), So.NEVER, So.NEVER, So.NEVER, So.NEVER, So.NEVER);
  }

  Way through(So through) {
    return new Way(kind, machine, guides, through, inside, bearing, strip, stacked);
  }

  Way inside(So inside) {
    return new Way(kind, machine, guides, through, inside, bearing, strip, stacked);
  }

  Way bearing(So bearing) {
    return new Way(kind, machine, guides, through, inside, bearing, strip, stacked);
  }

  Way strip(So strip) {
    return new Way(kind, machine, guides, through, inside, bearing, strip, stacked);
  }

  Way stacked(So stacked) {
    return new Way(kind, machine, guides, through, inside, bearing, strip, stacked);
  }
}
