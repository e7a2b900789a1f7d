package org.proofcut.core.part;

/**
 * How a part lies at a machine, worked out from which way its faces look in the case. Saves the
 * guess, at the machine, which of a mirror pair has its front edge trailing.
 *
 * <p>For example, a left side with its inside face down and its lower end at the far fence has its
 * front edge on your left: fed from right to left, the front edge leads.
 */
public record Lie(PartRole part, Axis named, Edge guided, Axis guide) {

  /**
   * A part on a table.
   *
   * @param part which part
   * @param named which way its named face looks at the machine: {@code MINUS_Z} is face down
   * @param guided the edge that rides the guide
   * @param guide where the guide is, seen from the person
   */
  public Lie {
    if (part.namedFace().dot(guided.towards()) != 0) {
      throw new IllegalArgumentException(part + " has no " + guided + " beside its face");
    }
  }

  /** The edge of the part that looks that way at the machine. */
  public Edge edgeTowards(Axis machine) {
    // Three directions of the part and their images at the machine, both right-handed.
    var face = part.namedFace();
    var edge = guided.towards();
    var third = face.cross(edge);
    var thirdImage = named.cross(guide);
    Axis inCase;
    if (machine.dot(guide) != 0) {
      inCase = machine == guide ? edge : edge.opposite();
    } else if (machine.dot(thirdImage) != 0) {
      inCase = machine == thirdImage ? third : third.opposite();
    } else {
      throw new IllegalArgumentException("a face looks " + machine + ", not an edge");
    }
    return Edge.towards(inCase);
  }
}
