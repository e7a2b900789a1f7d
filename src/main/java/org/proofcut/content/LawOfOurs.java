package org.proofcut.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proofcut.core.exposure.DustBook;
import org.proofcut.core.exposure.NoiseLaw;
import org.proofcut.core.safety.GearNeed;
import org.proofcut.rulebook.Rule;

/**
 * What of ours rests on law and stays in force, whatever a shop lays over it, in whatever regions
 * there are now. A shop may be stricter.
 *
 * @param ours empty where nothing is laid over
 */
record LawOfOurs(Optional<Content> ours, Regions regions, OwnMarks marks) {

  /**
   * What stops by law in ours stops all the same, with our limits, and gear that law asks for is
   * asked for; a rule that the shop's content leaves as it is need not stand there twice.
   */
  List<Rule> rules(List<Rule> now) {
    var law = new ArrayList<Rule>();
    for (var rule : ours.map(content -> content.rulebook().rules()).orElse(List.of())) {
      var kept = rule.spread(regions::spread);
      if ((rule.stopsByLaw() || rule.asksForGearByLaw())
          && now.stream().noneMatch(kept::isTheSameAs)) {
        law.add(kept);
        marks.oursStays(rule.id());
      }
    }
    return law;
  }

  /** Kinds of gear that a law asks for somewhere: no rule of a shop forbids them. */
  Set<String> gear() {
    return ours.map(content -> content.rulebook().rules()).orElse(List.of()).stream()
        .filter(Rule::asksForGearByLaw)
        .flatMap(rule -> rule.gear().stream())
        .filter(need -> need.state() == GearNeed.State.REQUIRED)
        .map(GearNeed::kind)
        .collect(Collectors.toSet());
  }

  /** Each region keeps our law of noise, unless that of the shop is as strict in all. */
  NoiseContent noise(NoiseContent now) {
    var laws = new HashMap<>(now.laws());
    var kept = new TreeSet<String>();
    for (var region : now.laws().entrySet()) {
      ofOurs(region.getKey())
          .filter(NoiseLaw::restsOnLaw)
          .filter(law -> !region.getValue().isAtLeastAsStrictAs(law))
          .ifPresent(
              law -> {
                laws.put(region.getKey(), law);
                kept.add(law.id());
              });
    }
    kept.forEach(id -> marks.oursStays(NoiseReader.LAWS, id));
    return new NoiseContent(now.levels(), laws);
  }

  /** Our law of a region; of one that is new, that of the region of ours that it lies in. */
  private Optional<NoiseLaw> ofOurs(String region) {
    var laws = ours.map(content -> content.noise().laws()).orElse(Map.of());
    return Optional.ofNullable(laws.get(region))
        .or(
            () ->
                laws.entrySet().stream()
                    .filter(law -> regions.spread(List.of(law.getKey())).contains(region))
                    .map(Map.Entry::getValue)
                    .findFirst());
  }

  /** Of two limits in the air the lower one counts, so ours need only stand beside the shop's. */
  DustBook dust(DustBook now) {
    var limits = new ArrayList<>(now.limits());
    for (var limit : ours.map(content -> content.dust().limits()).orElse(List.of())) {
      var kept = limit.in(within(limit.regions()));
      if (limit.isLaw() && !limits.contains(kept)) {
        limits.add(kept);
        marks.oursStays(DustReader.AIR_LIMITS, limit.id());
      }
    }
    return new DustBook(now.woods(), now.machines(), limits, now.masks(), now.marks(), now.air());
  }

  /** These regions, with all that lies within them now. */
  private List<String> within(List<String> named) {
    return Stream.concat(named.stream(), regions.spread(named).stream()).distinct().toList();
  }
}
