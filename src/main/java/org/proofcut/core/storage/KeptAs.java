package org.proofcut.core.storage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.proofcut.core.measure.Length;

/**
 * What is known of the way in which a piece is kept. All of it may be missing: the greatest sizes
 * and the greatest weight of its kind are then taken, so that it fits whatever it is.
 *
 * @param kind id of its kind of thing; empty where it was not said
 * @param grams its weight, rounded up
 * @param boxed whether it has a closed box or bag of its own, in which it is kept
 * @param use how often it is taken out; as its kind usually is where it was not said
 * @param users names of those who use it; none where everybody does
 * @param cabinet id of the cabinet that it is to be kept in
 */
public record KeptAs(
    Optional<String> kind,
    Optional<Length> wide,
    Optional<Length> high,
    Optional<Length> deep,
    Optional<Integer> grams,
    boolean boxed,
    Optional<Use> use,
    Set<String> users,
    Optional<String> cabinet) {

  public KeptAs {
    users = Set.copyOf(users);
  }

  /** The thing that wants a place. */
  public Thing thing(String id, String name, ThingKind of) {
    return new Thing(
        id,
        name,
        of,
        new Size(
            wide.orElse(of.most().wide()),
            high.orElse(of.most().high()),
            deep.orElse(of.most().deep())),
        grams.orElse(of.mostGrams()),
        boxed,
        use.orElse(of.use()),
        users);
  }

  /** What of its sizes and weight is taken from its kind. */
  public List<String> assumed() {
    var assumed = new ArrayList<String>();
    unknown(wide, "width", assumed);
    unknown(high, "height", assumed);
    unknown(deep, "depth", assumed);
    unknown(grams, "weight", assumed);
    return assumed;
  }

  private static void unknown(Optional<?> entered, String what, List<String> assumed) {
    if (entered.isEmpty()) {
      assumed.add(what);
    }
  }
}
