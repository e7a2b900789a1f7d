package org.proofcut.core.storage;

import java.math.BigInteger;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.Rounding;

/**
 * What takes up room where something hangs: the thing, its hook, and its way round the hinges of a
 * door. Written apart from {@link Suits}, which plans are made with, and exact where that is only
 * careful.
 */
final class AsHung {

  private final Cabinet cabinet;
  private final StorageLimits limits;

  AsHung(Cabinet cabinet, StorageLimits limits) {
    this.cabinet = cabinet;
    this.limits = limits;
  }

  /** What hangs, with its hook and with room under it; what stands as it is. */
  Block needs(Put put) {
    return put.place().kind().isHung()
        ? withHook(put).withRoomUnder(limits.belowHanging().value())
        : put.block();
  }

  /** What hangs, with its hook; what stands as it is. */
  Block withHook(Put put) {
    var block = put.block();
    var deep = block.deep();
    var hook = limits.hookDeep().value();
    if (!put.place().kind().isHung() || deep.extent().isAtLeast(hook)) {
      return block;
    }
    return new Block(
        block.across(),
        block.upright(),
        put.place().isOnDoor()
            ? new Band(deep.most().minus(hook), deep.most())
            : new Band(deep.least(), deep.least().plus(hook)));
  }

  /** What hangs on a door, with room for it to sway. */
  Block swaying(Put put) {
    var room = limits.behindDoor().value();
    return withHook(put).grown(Length.ZERO, room, room);
  }

  /**
   * Whether something in the cabinet is met by what hangs on a door when it is shut, or on the way
   * there: its corner goes round the hinges, and comes farther along than where it then hangs.
   */
  boolean meetsSwinging(Put put, Block block) {
    var shut = swaying(put);
    if (!Block.overlap(shut.upright(), block.upright())
        || !Block.overlap(shut.deep(), block.deep())) {
      return false;
    }
    if (Block.overlap(shut.across(), block.across())) {
      return true;
    }
    var door = cabinet.doorOf(put.place());
    var near = door.hingedLeft() ? block.across().least() : block.across().most();
    var far = door.hingedLeft() ? put.block().across().most() : put.left();
    boolean beyond = door.hingedLeft() ? near.isAtLeast(far) : near.isAtMost(far);
    var before = cabinet.inside().deep().minus(block.deep().most());
    var corner =
        Length.rootOf(farCorner(put), Length.HUNDREDTH, Rounding.UP)
            .plus(limits.behindDoor().value());
    return beyond
        && squared(door.fromHinges(near)).add(squared(before)).compareTo(squared(corner)) < 0;
  }

  /** Whether its hook, in its middle, is clear of the door's edges, where hinges and joints are. */
  boolean isInPanel(Put put) {
    var stile = limits.doorStile().value();
    var door = cabinet.doorOf(put.place()).across();
    var middle = put.block().across().middle();
    return middle.minus(stile).isAtLeast(door.least()) && middle.plus(stile).isAtMost(door.most());
  }

  /** Whether its corner passes the frame as the door shuts. */
  boolean passesFrame(Put put) {
    var opening = cabinet.doorOf(put.place()).across().extent();
    var free = opening.minus(limits.behindDoor().value());
    return !free.isNegative() && farCorner(put).compareTo(squared(free)) <= 0;
  }

  /** Square of the way from the hinges to the corner that is farthest from them. */
  private BigInteger farCorner(Put put) {
    var door = cabinet.doorOf(put.place());
    var along = door.fromHinges(door.hingedLeft() ? put.block().across().most() : put.left());
    return squared(along).add(squared(put.thing().size().deep()));
  }

  private static BigInteger squared(Length length) {
    return BigInteger.valueOf(length.picometres()).pow(2);
  }
}
