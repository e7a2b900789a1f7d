package org.proofcut.core.shop;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.measure.Length;

/**
 * A machine whose head of knives takes a whole face or edge at once.
 *
 * <p>What it takes, reads and bears is from its manual.
 */
public sealed interface KnifeMachine extends Machine permits Jointer, Planer {

  /** Its head and the one speed that it turns at. */
  Head knives();

  /** Widest work that goes over the knives. */
  Length widestWork();

  /** Most that one pass may take. */
  Length deepestPass();

  /** Smallest change of what is set. */
  Length step();

  /** Shortest piece that it may be fed. */
  Length shortestWork();

  /** Thinnest that a piece may be or become. */
  Length thinnestWork();

  /**
   * A head as its machine's form asks for it.
   *
   * @param perMinute from the plate on the machine
   * @param diameter of the circle that the knives' edges run on
   * @param count of knives
   */
  record Head(int perMinute, Length diameter, int count) {}

  @Override
  default List<SpeedStep> speeds() {
    return List.of(new SpeedStep("fixed", knives().perMinute()));
  }

  default KnifeHead head() {
    return new KnifeHead(
        id() + "-head",
        "knives of the " + name(),
        knives().diameter(),
        knives().count(),
        widestWork(),
        knives().perMinute());
  }

  @Override
  default Optional<Cutter> ownCutter() {
    return Optional.of(head());
  }
}
