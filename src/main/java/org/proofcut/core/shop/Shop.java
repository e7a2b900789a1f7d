package org.proofcut.core.shop;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One shop: what there is to cut with, to hold with, to wear, to glue and to finish with.
 *
 * @param region id of where it stands, as in {@code content/regions.yaml}
 * @param liquids glues, finishes and solvents
 * @param aids ids of the kinds of work aid, such as {@code push-stick}, that are at hand without
 *     being entered piece by piece
 * @param beard whether whoever works here has a beard where a mask seals
 * @param ownedAids work aids that are entered piece by piece, whether they will do or not
 */
public record Shop(
    String name,
    String region,
    List<Machine> machines,
    List<Cutter> cutters,
    List<OwnedGear> gear,
    List<String> aids,
    boolean beard,
    List<Liquid> liquids,
    List<OwnedAid> ownedAids) {

  /** Where no law is known to us. */
  public static final String ELSEWHERE = "elsewhere";

  /** A shop without glues and finishes, where every mask seals and aids are only ticked. */
  public Shop(
      String name,
      String region,
      List<Machine> machines,
      List<Cutter> cutters,
      List<OwnedGear> gear,
      List<String> aids) {
    this(name, region, machines, cutters, gear, aids, false, List.of(), List.of());
  }

  /** The same where no law is known to us. */
  public Shop(
      String name,
      List<Machine> machines,
      List<Cutter> cutters,
      List<OwnedGear> gear,
      List<String> aids) {
    this(name, ELSEWHERE, machines, cutters, gear, aids);
  }

  public Shop {
    machines = List.copyOf(machines);
    cutters = List.copyOf(cutters);
    gear = List.copyOf(gear);
    aids = List.copyOf(aids);
    liquids = List.copyOf(liquids);
    ownedAids = List.copyOf(ownedAids);
  }

  /** The machines of one kind, in the order entered. */
  public <M extends Machine> Stream<M> machines(Class<M> kind) {
    return machines.stream().filter(kind::isInstance).map(kind::cast);
  }

  /** The cutters of one kind, in the order entered. */
  public <C extends Cutter> Stream<C> cutters(Class<C> kind) {
    return cutters.stream().filter(kind::isInstance).map(kind::cast);
  }

  /** The same shop with this machine and this cutter alone, where one is named. */
  public Shop with(Optional<String> machineId, Optional<String> cutterId) {
    return new Shop(
        name,
        region,
        machines.stream().filter(one -> isChosen(machineId, one.id())).toList(),
        cutters.stream().filter(one -> isChosen(cutterId, one.id())).toList(),
        gear,
        aids,
        beard,
        liquids,
        ownedAids);
  }

  private static boolean isChosen(Optional<String> chosen, String id) {
    return chosen.map(id::equals).orElse(true);
  }

  /** The cutter with this id, be it one by itself or part of a machine. */
  public Optional<Cutter> cutter(String id) {
    var own = machines.stream().flatMap(machine -> machine.ownCutter().stream());
    return Stream.concat(cutters.stream(), own).filter(one -> one.id().equals(id)).findFirst();
  }

  /** Ids of the kinds of work aid of which there is one that may be used, each once. */
  public List<String> aidsAtHand() {
    return Stream.concat(
            aids.stream(),
            ownedAids.stream().filter(aid -> aid.unfit().isEmpty()).map(OwnedAid::kind))
        .distinct()
        .toList();
  }

  public boolean hasAid(String kind) {
    return aidsAtHand().contains(kind);
  }
}
