package org.proofcut.core.operation;

/** The kinds of operation, in the order that a case takes them. */
public enum OperationKind {
  ROUGH_STRIPS,
  RIP,
  CROSSCUT,
  RABBET,
  DADO,
  BACK_RABBET,
  FINAL_LENGTH,
  SHELF_PINS,
  DOWEL_HOLES,
  POCKET_HOLES,
  HINGE_CUPS,
  SCREW_HOLES,
  STEP_FLAT,
  STEP_ON_EDGE,
  THIN_STRIP,
  FLATTEN,
  STRAIGHTEN,
  PLANE,
  DRY_FIT,
  FASTEN,
  // Cuts that no case takes.
  CENTRED_GROOVE,
  EDGE_PROFILE,
  FLUSH_TRIM,
  EDGE_TRIM,
  TEMPLATE_RECESS,
  MITRE,
  COMPOUND_MITRE,
  BEVEL_RIP,
  TAPER,
  TONGUE,
  // Work by hand that no case takes yet.
  CARRY,
  SAND,
  FINISH,
  CLEAN_UP;

  /** As content and conditions write it. */
  public String id() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }

  /** Whether a turning cutter is at work. */
  public boolean cuts() {
    return switch (this) {
      case STEP_FLAT, STEP_ON_EDGE, THIN_STRIP, FLATTEN, STRAIGHTEN, PLANE -> true;
      case MITRE, COMPOUND_MITRE, BEVEL_RIP, TAPER, TONGUE -> true;
      case ROUGH_STRIPS,
          RIP,
          CROSSCUT,
          RABBET,
          DADO,
          BACK_RABBET,
          FINAL_LENGTH,
          SHELF_PINS,
          DOWEL_HOLES,
          POCKET_HOLES,
          HINGE_CUPS,
          SCREW_HOLES ->
          true;
      case CENTRED_GROOVE, EDGE_PROFILE, FLUSH_TRIM, EDGE_TRIM, TEMPLATE_RECESS -> true;
      case DRY_FIT, FASTEN, CARRY, SAND, FINISH, CLEAN_UP -> false;
    };
  }
}
