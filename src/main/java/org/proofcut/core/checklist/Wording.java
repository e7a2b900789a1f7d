package org.proofcut.core.checklist;

import java.util.Map;
import org.proofcut.core.shop.GearKind;
import org.proofcut.core.shop.GearPair;
import org.proofcut.core.shop.WorkAid;

/**
 * All words that checklists are made from, each by its id.
 *
 * @param operations by {@code OperationKind.id()}
 * @param gear kinds of protective gear
 * @param aids kinds of work aid
 * @param cutterChanges by {@code Machine.kind()}
 * @param gearPairs kinds of gear that disturb each other
 */
public record Wording(
    Map<String, OperationWording> operations,
    Map<String, GearKind> gear,
    Map<String, WorkAid> aids,
    Map<String, CutterChange> cutterChanges,
    Map<String, GearPair> gearPairs) {

  /** Words of gear that goes together as it is. */
  public Wording(
      Map<String, OperationWording> operations,
      Map<String, GearKind> gear,
      Map<String, WorkAid> aids,
      Map<String, CutterChange> cutterChanges) {
    this(operations, gear, aids, cutterChanges, Map.of());
  }
}
