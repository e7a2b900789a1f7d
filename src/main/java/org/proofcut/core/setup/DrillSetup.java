package org.proofcut.core.setup;

import org.proofcut.core.setup.CutAsked.Countersink;
import org.proofcut.core.setup.CutAsked.Holes;
import org.proofcut.core.shop.Bit;
import org.proofcut.core.shop.DrillPress;
import org.proofcut.core.shop.HandDrill;

/** Holes square to a face, and seats of heads: at a drill press, or with a drill in the hands. */
public final class DrillSetup {

  private DrillSetup() {}

  /** Whether this bit makes these holes, on whatever machine. */
  public static boolean serves(Holes asked, Bit bit, Conditions conditions) {
    return Boring.otherHole(asked, bit, conditions).isEmpty();
  }

  /** Whether this bit makes these seats, on whatever machine. */
  public static boolean serves(Countersink asked, Bit bit, Conditions conditions) {
    return Boring.otherHole(asked, bit, conditions).isEmpty();
  }

  /** The set-up for holes at a drill press, or why this press and bit can't make them. */
  public static Answer holes(Holes asked, DrillPress press, Bit bit, Conditions conditions) {
    return PressSetup.of(new Boring(asked, bit, Setting.Role.DEPTH, conditions), press);
  }

  /** The set-up for holes with a drill in the hands, or why this drill and bit can't make them. */
  public static Answer holes(Holes asked, HandDrill drill, Bit bit, Conditions conditions) {
    return HandDrillSetup.of(new Boring(asked, bit, Setting.Role.COLLAR, conditions), drill);
  }

  /** The set-up for seats of heads at a drill press, or why it can't make them. */
  public static Answer countersink(
      Countersink asked, DrillPress press, Bit bit, Conditions conditions) {
    return PressSetup.of(new Boring(asked, bit, Setting.Role.DEPTH, conditions), press);
  }

  /** The same with a drill in the hands. */
  public static Answer countersink(
      Countersink asked, HandDrill drill, Bit bit, Conditions conditions) {
    return HandDrillSetup.of(new Boring(asked, bit, Setting.Role.COLLAR, conditions), drill);
  }
}
