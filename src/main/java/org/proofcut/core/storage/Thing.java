package org.proofcut.core.storage;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A thing that wants a place.
 *
 * @param size as it is kept
 * @param grams what it weighs
 * @param boxed whether it has a closed box or bag of its own, in which it is kept
 * @param users names of those who use it; empty where everybody does
 */
public record Thing(
    String id,
    String name,
    ThingKind kind,
    Size size,
    int grams,
    boolean boxed,
    Use use,
    Set<String> users) {

  public Thing {
    users = Set.copyOf(users);
  }

  /** Whether its place must give this; what is boxed is sealed wherever it is. */
  public boolean needs(Need need) {
    return !(boxed && need == Need.SEALED)
        && kind.keeping().stream().anyMatch(keeping -> keeping.need() == need);
  }

  /** What comes off it or must not come on to it; nothing does through a box of its own. */
  public Soil soil() {
    return boxed ? Soil.EITHER : kind.soil();
  }

  public List<Posture> postures() {
    return kind.postures();
  }

  public Optional<Integer> dressing() {
    return kind.dressing();
  }
}
