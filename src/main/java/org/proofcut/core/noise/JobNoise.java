package org.proofcut.core.noise;

import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.proofcut.core.checklist.Item;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.exposure.DayAsked;
import org.proofcut.core.exposure.ExposureLimits;
import org.proofcut.core.exposure.HearingRating;
import org.proofcut.core.exposure.NoiseLaw;
import org.proofcut.core.noise.Protection.Verdict;
import org.proofcut.core.plan.Plan;
import org.proofcut.core.shop.Shop;

/**
 * Holds the ear protectors of a shop against the noise of a whole job. Laws judge a day and not a
 * cut; nobody knows beforehand how much of a job falls on one day, so all of it counts as one.
 */
public final class JobNoise {

  private static final String ONE_DAY = "for all of this job in one day";

  private final NoiseDay day;

  private JobNoise(NoiseDay day) {
    this.day = day;
  }

  /**
   * The plan with its ear protectors judged: one that leaves more of the job than the law allows is
   * not offered, and what is asked for has its rating beside it. Unchanged where no level is known
   * or the job is quiet.
   */
  public static Plan judge(
      Plan plan, Shop shop, NoiseLevels levels, ExposureLimits limits, NoiseLaw law) {
    var day = NoiseDay.dayOf(Optional.of(plan), shop, levels, limits, law, DayAsked.AS_PLANNED);
    return day.needed().isEmpty() ? plan : new JobNoise(day).judge(plan);
  }

  private Plan judge(Plan plan) {
    var needed = needed();
    var refused = refused();
    return plan.with(
        item ->
            item instanceof Item.Gear gear && gear.kind().equals(NoiseDay.EAR_PROTECTION)
                ? gear.heldTo(needed, refused)
                : item);
  }

  private String needed() {
    var alone =
        day.needed().stream()
            .flatMap(needed -> needed.least().stream())
            .map(HearingRating::text)
            .collect(Collectors.joining(" or "));
    return (alone.isEmpty() ? "plugs under muffs, " : alone + " or more, ") + ONE_DAY;
  }

  /** Why pieces are not offered, by their ids. One with two ratings serves if either is enough. */
  private Map<String, String> refused() {
    var byPiece =
        day.protections().stream()
            .filter(one -> one.gear().isPresent())
            .collect(
                Collectors.groupingBy(
                    one -> one.gear().get(), LinkedHashMap::new, Collectors.toList()));
    var refused = new LinkedHashMap<String, String>();
    byPiece.forEach((piece, all) -> tooLittle(all).ifPresent(why -> refused.put(piece, why)));
    return refused;
  }

  private Optional<String> tooLittle(List<Protection> all) {
    return all.stream().allMatch(one -> one.verdict() == Verdict.NOT_ENOUGH)
        ? all.get(0)
            .asWorn()
            .map(
                left ->
                    "%s leaves %s as worn %s; %s may be left"
                        .formatted(
                            all.get(0).marked(),
                            up(left.value()),
                            ONE_DAY,
                            day.law().mayBeLeft().at()))
        : Optional.empty();
  }

  /** To 0.1, never to the quieter side. */
  private static Amount up(Amount level) {
    return new Amount(level.value().setScale(1, RoundingMode.CEILING), level.unit());
  }
}
