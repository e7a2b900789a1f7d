package org.proofcut.content;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.proofcut.content.yaml.Faults;
import org.proofcut.content.yaml.Spot;
import org.proofcut.content.yaml.YamlFile;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.measure.Length;
import org.proofcut.core.storage.Ageing;
import org.proofcut.core.storage.AsAid;
import org.proofcut.core.storage.Due;
import org.proofcut.core.storage.Keeping;
import org.proofcut.core.storage.Mounting;
import org.proofcut.core.storage.Need;
import org.proofcut.core.storage.Posture;
import org.proofcut.core.storage.Size;
import org.proofcut.core.storage.ThingKind;
import org.proofcut.core.storage.Use;

/**
 * Holds kinds of kept things to themselves and to the gear that there is: each has a place that can
 * be, and each kind of gear has one that is kept.
 */
final class StorageReader {

  static final String KINDS = "storage/kinds.yaml";

  private static final String AS_AID = "as-aid";

  private final YamlFile file;
  private final Map<String, Spot> gear;
  private final Map<String, Spot> aids;
  private final Faults faults;

  /**
   * @param gear the ids of all kinds of gear, with their places
   * @param aids the same of work aids
   */
  StorageReader(YamlFile file, Map<String, Spot> gear, Map<String, Spot> aids, Faults faults) {
    this.file = file;
    this.gear = gear;
    this.aids = aids;
    this.faults = faults;
  }

  /**
   * Notes whatever is wrong with kinds that were understood each for itself.
   *
   * @param ours the kinds that came with the program, where a shop's own are laid over them
   */
  void judge(Map<String, ThingKind> kinds, Map<String, ThingKind> ours) {
    for (var kind : kinds.values()) {
      sizes(kind);
      worn(kind);
      kind.asAid().ifPresent(as -> asAid(kind, as));
      keeping(kind);
      kind.mounting().ifPresent(mounting -> mounting(kind, mounting));
      ages(kind);
      Optional.ofNullable(ours.get(kind.id())).ifPresent(our -> refuseLooser(kind, our));
    }
    // A kind that was not understood may be the one that is missed.
    if (kinds.keySet().equals(file.keys().keySet())) {
      shared(kinds);
      refuseGearWithoutPlace(kinds);
    }
  }

  private void refuse(
      boolean wrong, ThingKind kind, String key, String what, String allowed, String doThis) {
    if (wrong) {
      faults.add(spot(kind, key), "\"" + kind.id() + "\" " + what, allowed, doThis);
    }
  }

  private Spot spot(ThingKind kind, String key) {
    return file.spot(kind.id(), key).or(() -> keySpot(kind.id())).orElse(file.start());
  }

  private Optional<Spot> keySpot(String id) {
    return Optional.ofNullable(file.keys().get(id));
  }

  private void sizes(ThingKind kind) {
    size(kind, "wide", Size::wide);
    size(kind, "high", Size::high);
    size(kind, "deep", Size::deep);
    refuse(
        kind.leastGrams() < 1,
        kind,
        "least-grams",
        "weighs %d g".formatted(kind.leastGrams()),
        "1 g or more",
        "Write what the lightest one weighs.");
    refuse(
        kind.leastGrams() > kind.mostGrams(),
        kind,
        "most-grams",
        "is at most %d g and at least %d g".formatted(kind.mostGrams(), kind.leastGrams()),
        "a greatest weight that is no less than the least",
        "Mend one of the two.");
  }

  private void size(ThingKind kind, String how, Function<Size, Length> one) {
    var least = one.apply(kind.least());
    var most = one.apply(kind.most());
    refuse(
        least.isGreaterThan(most),
        kind,
        "most",
        "is at most %s %s and at least %s".formatted(mm(most), how, mm(least)),
        "a greatest size that is no less than the least",
        "Mend one of the two.");
  }

  private void worn(ThingKind kind) {
    kind.gear()
        .filter(id -> !gear.containsKey(id))
        .ifPresent(id -> faults.addUnknown(spot(kind, "gear"), "kind of gear", id, gear.keySet()));
    refuse(
        kind.gear().isPresent() && kind.dressing().isEmpty(),
        kind,
        "gear",
        "is worn, and nobody knows when it is put on",
        "a turn in dressing, 1 for what is put on first",
        "Write \"dressing: …\", as a neighbour that is worn has it.");
    refuse(
        kind.dressing().filter(turn -> turn < 1).isPresent(),
        kind,
        "dressing",
        "has no turn in dressing",
        "1 for what is put on first, or more",
        "Write a number from 1.");
  }

  private void asAid(ThingKind kind, AsAid as) {
    if (!aids.containsKey(as.aid())) {
      faults.addUnknown(spot(kind, AS_AID), "work aid", as.aid(), aids.keySet());
    }
    refuse(
        kind.gear().isPresent(),
        kind,
        AS_AID,
        "is worn, and holds or pushes work",
        "one of the two: gear, or as-aid",
        "Take one of them out.");
    var longest = kind.most().wide().max(kind.most().high()).max(kind.most().deep());
    refuse(
        as.longAtLeast().filter(longest::isLessThan).isPresent(),
        kind,
        AS_AID,
        "is never long enough to be the work aid: at most " + mm(longest),
        "a length that one of its kind has",
        "Mend the length, or the greatest size.");
  }

  private void keeping(ThingKind kind) {
    var needs = kind.keeping().stream().map(Keeping::need).toList();
    refuse(
        new HashSet<>(needs).size() < needs.size(),
        kind,
        "keeping",
        "asks for the same twice",
        "each need once",
        "Make one of the two.");
    if (needs.contains(Need.ELSEWHERE)) {
      neverKept(kind, needs);
      return;
    }
    refuse(
        needs.contains(Need.UPRIGHT) && !kind.postures().contains(Posture.STANDING),
        kind,
        "postures",
        "has to be upright and never stands",
        "standing among its postures",
        "Add standing, or take out upright.");
    refuse(
        needs.contains(Need.OPEN) && !kind.postures().contains(Posture.HANGING),
        kind,
        "postures",
        "has to be in sight and never hangs: places in sight are on the wall",
        "hanging among its postures",
        "Add hanging, or take out open.");
    refuse(
        kind.use() == Use.EMERGENCY && !needs.contains(Need.AT_ONCE),
        kind,
        "use",
        "is for an emergency and may have things before it",
        "the need at-once",
        "Add it to what its place must give, or say how often it is used.");
  }

  private void neverKept(ThingKind kind, List<Need> needs) {
    refuse(
        needs.size() > 1,
        kind,
        "keeping",
        "is never kept here and asks for a place here",
        "elsewhere alone",
        "Take out the other needs, or elsewhere.");
    refuse(
        kind.gear().isPresent()
            || kind.asAid().isPresent()
            || kind.dressing().isPresent()
            || kind.mounting().isPresent(),
        kind,
        "keeping",
        "is never kept here, and is worn, hung or worked with here",
        "elsewhere without gear, as-aid, dressing and mounting",
        "Take those out, or elsewhere.");
  }

  /** What law asks of the place of a thing is asked of it whatever a shop lays over it. */
  private void refuseLooser(ThingKind kind, ThingKind our) {
    var needs = kind.keeping().stream().map(Keeping::need).toList();
    for (var keeping : our.keeping()) {
      refuse(
          keeping.because().kind() == Citation.Kind.LAW && !needs.contains(keeping.need()),
          kind,
          "keeping",
          "no longer has to be kept %s, as law asks: %s"
              .formatted(keeping.need().words(), keeping.because().text()),
          "each need of ours that rests on law",
          "Put it back, with its source.");
    }
  }

  private void mounting(ThingKind kind, Mounting mounting) {
    refuse(
        mounting.bottomAtLeast().isLessThan(Length.ZERO) || mounting.heavyOver() < 1,
        kind,
        "mounting",
        "hangs below the floor, or is heavy without weight",
        "a height from the floor, and 1 g or more",
        "Write both as they are measured.");
    refuse(
        mounting.heavyTopAtMost().isGreaterThan(mounting.topAtMost()),
        kind,
        "mounting",
        "may hang higher where it is heavy",
        "a heavy top that is no higher than the other",
        "Change the two, or mend one.");
    var lowest = mounting.topAtMost().min(mounting.heavyTopAtMost());
    refuse(
        mounting.bottomAtLeast().plus(kind.least().high()).isGreaterThan(lowest),
        kind,
        "mounting",
        "fits nowhere: %s from its lowest to its highest, and it is %s high at least"
            .formatted(mm(lowest.minus(mounting.bottomAtLeast())), mm(kind.least().high())),
        "heights with room for the smallest one between them",
        "Mend the heights, or the least size.");
  }

  private void ages(ThingKind kind) {
    var ids = kind.ages().stream().map(Ageing::id).toList();
    refuse(
        new HashSet<>(ids).size() < ids.size(),
        kind,
        "ages",
        "ages twice under one id",
        "each id once",
        "Rename one of the two.");
    refuse(
        ids.stream().anyMatch(Due.NOT_OF_KINDS::contains),
        kind,
        "ages",
        "ages under an id that what is marked on a piece, or has failed, falls due by",
        "any id but " + String.join(", ", Due.NOT_OF_KINDS),
        "Rename it.");
  }

  /** A word that one kind has alone is a word misspelt. */
  private void shared(Map<String, ThingKind> kinds) {
    var counts =
        kinds.values().stream()
            .flatMap(kind -> kind.together().stream())
            .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
    for (var kind : kinds.values()) {
      kind.together()
          .filter(word -> counts.get(word) == 1)
          .ifPresent(
              word ->
                  refuse(
                      true,
                      kind,
                      "together",
                      "is used together with nothing: no other kind says \"" + word + "\"",
                      "a word that two kinds share",
                      "Write it as the other kind does, or take it out."));
    }
  }

  private void refuseGearWithoutPlace(Map<String, ThingKind> kinds) {
    gear.forEach(
        (id, spot) -> {
          if (kinds.values().stream().noneMatch(kind -> kind.gear().equals(Optional.of(id)))) {
            faults.add(
                spot,
                "nothing says how gear of the kind \"%s\" is kept".formatted(id),
                "an entry in " + KINDS + " with \"gear: " + id + "\"",
                "Write one.");
          }
        });
  }

  private static String mm(Length length) {
    return length.inMillimetres().stripTrailingZeros().toPlainString() + " mm";
  }
}
