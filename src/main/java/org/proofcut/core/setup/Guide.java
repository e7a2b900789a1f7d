package org.proofcut.core.setup;

/** What leads the work, or the machine, past the cutter. */
public enum Guide {
  FENCE("fence", "the fence"),
  /** A square block behind the work keeps a short end true to the fence. */
  FENCE_WITH_BLOCK("fence-with-block", "the fence, pushed by a square block"),
  /** The work is clamped on it, and touches no fence. */
  CARRIER("carrier", "the fence, the work clamped on a carrier"),
  SLED("sled", "the sled and its stop"),
  GAUGE("gauge", "the mitre gauge and the stop on its facing"),
  STRAIGHTEDGE("straightedge", "a clamped straightedge"),
  /** Of a mitre saw: the work lies still against it. */
  SAW_FENCE("saw-fence", "the mitre saw's fence, the work still"),
  TRACK("track", "the track"),
  /** A bit in the hands goes where the marks are. */
  MARKS("marks", "marks on the work"),
  DRILL_GUIDE("drill-guide", "a guide clamped on the marks"),
  POCKET_JIG("pocket-jig", "the pocket jig, clamped"),
  TEMPLATE("template", "the guide bush in the template"),
  /** The edge itself leads, by the bearing of the cutter. */
  BEARING("bearing", "the bearing on the edge"),
  /** On a table without its fence, the work is swung in from a fixed pin. */
  BEARING_WITH_PIN("bearing-with-pin", "the bearing on the edge, begun at the starting pin"),
  /** Nothing leads the work sideways; it lies flat and is drawn. */
  ROLLERS("rollers", "the bed, drawn by the rollers");

  private final String id;
  private final String words;

  Guide(String id, String words) {
    this.id = id;
    this.words = words;
  }

  /** As content and conditions write it. */
  public String id() {
    return id;
  }

  public String words() {
    return words;
  }
}
