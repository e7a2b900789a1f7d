package org.proofcut.core.operation;

import static org.proofcut.core.operation.OperationKind.BACK_RABBET;
import static org.proofcut.core.operation.OperationKind.BEVEL_RIP;
import static org.proofcut.core.operation.OperationKind.CENTRED_GROOVE;
import static org.proofcut.core.operation.OperationKind.COMPOUND_MITRE;
import static org.proofcut.core.operation.OperationKind.CROSSCUT;
import static org.proofcut.core.operation.OperationKind.DADO;
import static org.proofcut.core.operation.OperationKind.DOWEL_HOLES;
import static org.proofcut.core.operation.OperationKind.EDGE_PROFILE;
import static org.proofcut.core.operation.OperationKind.EDGE_TRIM;
import static org.proofcut.core.operation.OperationKind.FINAL_LENGTH;
import static org.proofcut.core.operation.OperationKind.FLATTEN;
import static org.proofcut.core.operation.OperationKind.FLUSH_TRIM;
import static org.proofcut.core.operation.OperationKind.HINGE_CUPS;
import static org.proofcut.core.operation.OperationKind.MITRE;
import static org.proofcut.core.operation.OperationKind.PLANE;
import static org.proofcut.core.operation.OperationKind.POCKET_HOLES;
import static org.proofcut.core.operation.OperationKind.RABBET;
import static org.proofcut.core.operation.OperationKind.RIP;
import static org.proofcut.core.operation.OperationKind.ROUGH_STRIPS;
import static org.proofcut.core.operation.OperationKind.SCREW_HOLES;
import static org.proofcut.core.operation.OperationKind.SHELF_PINS;
import static org.proofcut.core.operation.OperationKind.STEP_FLAT;
import static org.proofcut.core.operation.OperationKind.STEP_ON_EDGE;
import static org.proofcut.core.operation.OperationKind.STRAIGHTEN;
import static org.proofcut.core.operation.OperationKind.TAPER;
import static org.proofcut.core.operation.OperationKind.TEMPLATE_RECESS;
import static org.proofcut.core.operation.OperationKind.THIN_STRIP;
import static org.proofcut.core.operation.OperationKind.TONGUE;
import static org.proofcut.core.operation.Way.So.ALWAYS;
import static org.proofcut.core.operation.Way.So.AT_TIMES;
import static org.proofcut.core.setup.Guide.BEARING;
import static org.proofcut.core.setup.Guide.BEARING_WITH_PIN;
import static org.proofcut.core.setup.Guide.CARRIER;
import static org.proofcut.core.setup.Guide.DRILL_GUIDE;
import static org.proofcut.core.setup.Guide.FENCE;
import static org.proofcut.core.setup.Guide.FENCE_WITH_BLOCK;
import static org.proofcut.core.setup.Guide.GAUGE;
import static org.proofcut.core.setup.Guide.MARKS;
import static org.proofcut.core.setup.Guide.POCKET_JIG;
import static org.proofcut.core.setup.Guide.ROLLERS;
import static org.proofcut.core.setup.Guide.SAW_FENCE;
import static org.proofcut.core.setup.Guide.SLED;
import static org.proofcut.core.setup.Guide.STRAIGHTEDGE;
import static org.proofcut.core.setup.Guide.TEMPLATE;
import static org.proofcut.core.setup.Guide.TRACK;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.proofcut.core.setup.Guide;

/**
 * Every way in which a cut can be made, machine by machine, and the work by hand around them. A
 * test makes them all and holds this list to what comes out.
 */
public final class Ways {

  private static final String TABLE_SAW = "table-saw";
  private static final String TRACK_SAW = "track-saw";
  private static final String MITRE_SAW = "mitre-saw";
  private static final String ROUTER_TABLE = "router-table";
  private static final String HAND_ROUTER = "hand-held-router";
  private static final String PRESS = "drill-press";
  private static final String DRILL = "hand-drill";
  private static final String JOINTER = "jointer";
  private static final String PLANER = "planer";

  /** Stands where a machine would, as in conditions. */
  public static final String BY_HAND = "none";

  private static final List<Way> ALL =
      Stream.of(
              atTableSaw(),
              atOtherSaws(),
              atRouterTable(),
              byRouter(),
              boring(),
              atKnives(),
              byHand())
          .flatMap(ways -> ways)
          .toList();

  private Ways() {}

  /** All of them, by machine, work by hand last. */
  public static List<Way> all() {
    return ALL;
  }

  private static Stream<Way> atTableSaw() {
    return Stream.of(
        Way.of(ROUGH_STRIPS, TABLE_SAW, FENCE).through(ALWAYS),
        Way.of(RIP, TABLE_SAW, FENCE).through(ALWAYS),
        Way.of(BEVEL_RIP, TABLE_SAW, FENCE).through(ALWAYS),
        Way.of(THIN_STRIP, TABLE_SAW, FENCE).through(ALWAYS),
        Way.of(TAPER, TABLE_SAW, CARRIER).through(ALWAYS),
        Way.of(CROSSCUT, TABLE_SAW, SLED, GAUGE).through(ALWAYS),
        Way.of(FINAL_LENGTH, TABLE_SAW, SLED, GAUGE).through(ALWAYS),
        Way.of(DADO, TABLE_SAW, FENCE, SLED).strip(AT_TIMES).stacked(AT_TIMES),
        Way.of(CENTRED_GROOVE, TABLE_SAW, FENCE),
        Way.of(STEP_FLAT, TABLE_SAW, FENCE, SLED),
        Way.of(STEP_ON_EDGE, TABLE_SAW, FENCE));
  }

  private static Stream<Way> atOtherSaws() {
    return Stream.of(
        Way.of(ROUGH_STRIPS, TRACK_SAW, TRACK).through(ALWAYS),
        Way.of(RIP, TRACK_SAW, TRACK).through(ALWAYS),
        Way.of(BEVEL_RIP, TRACK_SAW, TRACK).through(ALWAYS),
        Way.of(CROSSCUT, TRACK_SAW, TRACK).through(ALWAYS),
        Way.of(FINAL_LENGTH, TRACK_SAW, TRACK).through(ALWAYS),
        Way.of(CROSSCUT, MITRE_SAW, SAW_FENCE).through(ALWAYS),
        Way.of(FINAL_LENGTH, MITRE_SAW, SAW_FENCE).through(ALWAYS),
        Way.of(MITRE, MITRE_SAW, SAW_FENCE).through(ALWAYS),
        Way.of(COMPOUND_MITRE, MITRE_SAW, SAW_FENCE).through(ALWAYS));
  }

  private static Stream<Way> atRouterTable() {
    return Stream.of(
        Way.of(RABBET, ROUTER_TABLE, FENCE, FENCE_WITH_BLOCK).strip(AT_TIMES),
        Way.of(DADO, ROUTER_TABLE, FENCE, FENCE_WITH_BLOCK).strip(AT_TIMES),
        Way.of(BACK_RABBET, ROUTER_TABLE, FENCE),
        Way.of(CENTRED_GROOVE, ROUTER_TABLE, FENCE),
        Way.of(TONGUE, ROUTER_TABLE, FENCE, FENCE_WITH_BLOCK),
        Way.of(EDGE_PROFILE, ROUTER_TABLE, FENCE, FENCE_WITH_BLOCK, BEARING_WITH_PIN)
            .bearing(ALWAYS),
        Way.of(EDGE_TRIM, ROUTER_TABLE, FENCE, FENCE_WITH_BLOCK).through(ALWAYS));
  }

  private static Stream<Way> byRouter() {
    return Stream.of(
        Way.of(RABBET, HAND_ROUTER, STRAIGHTEDGE).strip(AT_TIMES),
        Way.of(DADO, HAND_ROUTER, STRAIGHTEDGE).strip(AT_TIMES),
        Way.of(BACK_RABBET, HAND_ROUTER, STRAIGHTEDGE),
        Way.of(TEMPLATE_RECESS, HAND_ROUTER, TEMPLATE).inside(ALWAYS),
        Way.of(EDGE_PROFILE, HAND_ROUTER, BEARING).inside(AT_TIMES).bearing(ALWAYS),
        Way.of(FLUSH_TRIM, HAND_ROUTER, BEARING).through(ALWAYS).inside(AT_TIMES).bearing(ALWAYS));
  }

  private static Stream<Way> boring() {
    var byHand = new Guide[] {MARKS, DRILL_GUIDE};
    return Stream.of(
        Way.of(SHELF_PINS, PRESS, FENCE),
        Way.of(DOWEL_HOLES, PRESS, FENCE),
        Way.of(HINGE_CUPS, PRESS, FENCE),
        Way.of(SCREW_HOLES, PRESS, FENCE).through(AT_TIMES),
        Way.of(SHELF_PINS, DRILL, byHand),
        Way.of(DOWEL_HOLES, DRILL, byHand),
        Way.of(HINGE_CUPS, DRILL, DRILL_GUIDE),
        Way.of(SCREW_HOLES, DRILL, byHand).through(AT_TIMES),
        Way.of(POCKET_HOLES, DRILL, POCKET_JIG));
  }

  private static Stream<Way> atKnives() {
    return Stream.of(
        Way.of(FLATTEN, JOINTER, FENCE),
        Way.of(STRAIGHTEN, JOINTER, FENCE),
        Way.of(PLANE, PLANER, ROLLERS));
  }

  private static Stream<Way> byHand() {
    return Arrays.stream(OperationKind.values())
        .filter(kind -> !kind.cuts())
        .map(kind -> Way.of(kind, BY_HAND));
  }
}
