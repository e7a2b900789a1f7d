package org.proofcut.core.storage;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.AtLeastOne;
import org.proofcut.core.evidence.Citation;

/**
 * A kind of thing as it is kept: ear muffs, a first aid kit.
 *
 * @param gear id of the kind of protective gear that it is; empty for what nobody puts on
 * @param asAid the work aid that it is; empty for what holds or pushes no work
 * @param least the least of each size that one finds
 * @param most the greatest
 * @param leastGrams weight of the lightest
 * @param mostGrams weight of the heaviest
 * @param postures in which it may be kept, the best first
 * @param keeping what its place must give
 * @param dressing its turn as one dresses, from 1; empty where nobody puts it on
 * @param together what is taken out with it, by a word that those share
 * @param mounting how high it may hang; empty where it may anywhere within reach
 * @param ages what falls due with time
 * @param because where its sizes, its weight and all that has no source of its own come from
 */
public record ThingKind(
    String id,
    String name,
    Optional<String> gear,
    Optional<AsAid> asAid,
    Size least,
    Size most,
    int leastGrams,
    int mostGrams,
    @AtLeastOne List<Posture> postures,
    List<Keeping> keeping,
    Soil soil,
    Use use,
    Optional<Integer> dressing,
    Optional<String> together,
    Optional<Mounting> mounting,
    List<Ageing> ages,
    Citation because) {

  /** A kind that is no work aid. */
  public ThingKind(
      String id,
      String name,
      Optional<String> gear,
      Size least,
      Size most,
      int leastGrams,
      int mostGrams,
      List<Posture> postures,
      List<Keeping> keeping,
      Soil soil,
      Use use,
      Optional<Integer> dressing,
      Optional<String> together,
      Optional<Mounting> mounting,
      List<Ageing> ages,
      Citation because) {
    this(
        id,
        name,
        gear,
        Optional.empty(),
        least,
        most,
        leastGrams,
        mostGrams,
        postures,
        keeping,
        soil,
        use,
        dressing,
        together,
        mounting,
        ages,
        because);
  }

  public ThingKind {
    postures = List.copyOf(postures);
    keeping = List.copyOf(keeping);
    ages = List.copyOf(ages);
  }
}
