package org.proofcut.core.checklist;

import java.util.Map;
import org.proofcut.core.shop.GearKind;
import org.proofcut.core.shop.WorkAid;

/**
 * All words that checklists are made from, each by its id.
 *
 * @param operations by {@code OperationKind.id()}
 * @param gear kinds of protective gear
 * @param aids kinds of work aid
 * @param cutterChanges by {@code Machine.kind()}
 */
public record Wording(
    Map<String, OperationWording> operations,
    Map<String, GearKind> gear,
    Map<String, WorkAid> aids,
    Map<String, CutterChange> cutterChanges) {}
