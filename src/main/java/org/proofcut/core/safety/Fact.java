package org.proofcut.core.safety;

import org.proofcut.core.evidence.Amount;
import org.proofcut.core.measure.Length;

/**
 * What a rule's condition may ask of a step. The list is closed; {@code content/facts.yaml} says
 * each in one sentence, and a test holds the two together.
 */
public enum Fact {
  /** Which operation: rough-strips, rip, crosscut, rabbet, dado, back-rabbet, … */
  OPERATION("operation", Type.TEXT, false),
  /** Which kind of machine, or "none". */
  MACHINE("machine", Type.TEXT, false),
  /** What guides the work or the machine: fence, sled, straightedge, track, none. */
  GUIDE("guide", Type.TEXT, false),
  THROUGH_CUT("through_cut", Type.YES_NO, false),
  /** Where the shop stands, for whose law binds there. */
  REGION("region", Type.TEXT, false),
  MATERIALS("materials", Type.TEXTS, false),
  PARTS("parts", Type.COUNT, false),
  PASSES("passes", Type.COUNT, true),
  USES_STRIP("uses_strip", Type.YES_NO, false),
  /** Whether the cutter is a stack of outer blades, chippers and shims. */
  STACKED_CUTTER("stacked_cutter", Type.YES_NO, false),
  /** Whether a bearing of the cutter rides an edge. */
  CUTTER_HAS_BEARING("cutter_has_bearing", Type.YES_NO, false),
  /** Whether the edge of an opening is followed, from inside it. */
  INSIDE_OPENING("inside_opening", Type.YES_NO, false),
  CUTTER_DIAMETER("cutter_diameter", Type.LENGTH, true),
  CUTTER_MARKED("cutter_marked", Type.YES_NO, false),
  CUTTER_TOP_SPEED("cutter_top_speed", Type.SPEED, true),
  SPINDLE_SPEED("spindle_speed", Type.SPEED, true),
  /** Into the work, or for a through cut the height of the blade above the table. */
  CUT_DEPTH("cut_depth", Type.LENGTH, true),
  DEEPEST_PASS("deepest_pass", Type.LENGTH, true),
  /** Along the feed, the shortest piece of the batch. */
  SHORTEST_WORK("shortest_work", Type.LENGTH, true),
  /** Between the guide and the outer edge, the narrowest piece of the batch. */
  NARROWEST_WORK("narrowest_work", Type.LENGTH, true),
  LONGEST_WORK("longest_work", Type.LENGTH, true),
  WIDEST_WORK("widest_work", Type.LENGTH, true),
  THICKEST_WORK("thickest_work", Type.LENGTH, true),
  THINNEST_WORK("thinnest_work", Type.LENGTH, true),
  /** How long the tables are that carry the work, before and behind the knives together. */
  TABLE_LENGTH("table_length", Type.LENGTH, true),
  /** How much of the work rides the fence or guide. */
  GUIDE_CONTACT("guide_contact", Type.LENGTH, true),
  /** How far the work reaches out from the fence or guide. */
  OVERHANG("overhang", Type.LENGTH, true),
  MACHINE_HAS_GUARD("machine_has_guard", Type.YES_NO, false),
  MACHINE_HAS_RIVING_KNIFE("machine_has_riving_knife", Type.YES_NO, false),
  /** Whether a planer has pawls that hold back what its knives would throw. */
  MACHINE_HAS_KICKBACK_FINGERS("machine_has_kickback_fingers", Type.YES_NO, true),
  MACHINE_HAS_EXTRACTION("machine_has_extraction", Type.YES_NO, false),
  AIDS_AT_HAND("aids_at_hand", Type.TEXTS, false),
  GEAR_AT_HAND("gear_at_hand", Type.TEXTS, false),
  GLUE("glue", Type.YES_NO, false),
  SCREWS("screws", Type.YES_NO, false),
  /** The diameter of the largest blade that the saw takes. */
  LARGEST_BLADE("largest_blade", Type.LENGTH, true),
  /** What the dust of these woods does beside what any wood dust does. */
  DUST_EFFECTS("dust_effects", Type.TEXTS, true),
  /** How much fine dust: little, some, much, most. */
  DUST_STRENGTH("dust_strength", Type.TEXT, true),
  NAILS("nails", Type.YES_NO, true),
  /** What is carried, at the heavy end. */
  LOAD_WEIGHT("load_weight", Type.WEIGHT, true),
  LOAD_LONGEST("load_longest", Type.LENGTH, true),
  /** Whether a sheet is carried as it was bought. */
  WHOLE_SHEET("whole_sheet", Type.YES_NO, true),
  ALONE("alone", Type.YES_NO, true),
  STAIRS("stairs", Type.YES_NO, true),
  /** By category: none, 1, 2, 3, 4. */
  FLAMMABLE("flammable", Type.TEXT, true),
  /** Whether rags wet with the liquid heat up by themselves. */
  HEATS_ITSELF("heats_itself", Type.YES_NO, true),
  /** What the liquid does to a person. */
  LIQUID_HARMS("liquid_harms", Type.TEXTS, true),
  DATA_SHEET_ON_FILE("data_sheet_on_file", Type.YES_NO, true),
  SPRAYED("sprayed", Type.YES_NO, true),
  OUTDOORS("outdoors", Type.YES_NO, true),
  WET_ROOM("wet_room", Type.YES_NO, true),
  /** Whether what is finished so may stand in a wet room. */
  STANDS_WET("stands_wet", Type.YES_NO, true),
  /** Whether a sander held in the hands does it. */
  BY_MACHINE("by_machine", Type.YES_NO, true),
  /** What is cleaned up, or with what. */
  CLEANED("cleaned", Type.TEXT, true);

  /** How a fact is written in a condition. */
  public enum Type {
    TEXT(String.class),
    TEXTS(java.util.List.class),
    YES_NO(Boolean.class),
    COUNT(Long.class),
    /** Turns per minute. */
    SPEED(Long.class),
    /** An exact whole number of picometres in the condition. */
    LENGTH(Length.class),
    /** An {@link Amount} in kg, g or lb; a whole number of micrograms in the condition. */
    WEIGHT(Amount.class),
    /** An {@link Amount} in dBA; a whole number of hundredths of a decibel in the condition. */
    LEVEL(Amount.class);

    private final Class<?> javaType;

    Type(Class<?> javaType) {
      this.javaType = javaType;
    }

    public Class<?> javaType() {
      return javaType;
    }
  }

  private final String id;
  private final Type type;
  private final boolean optional;

  Fact(String id, Type type, boolean optional) {
    this.id = id;
    this.type = type;
    this.optional = optional;
  }

  /** The name that a condition uses. */
  public String id() {
    return id;
  }

  public Type type() {
    return type;
  }

  /** Whether a step may be without it; a condition must then ask {@code has(fact.…)} first. */
  public boolean isOptional() {
    return optional;
  }
}
