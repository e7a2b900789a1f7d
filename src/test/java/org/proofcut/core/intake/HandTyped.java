package org.proofcut.core.intake;

import java.util.LinkedHashMap;
import java.util.Map;

/** Each kind of work by hand as a person would type it. */
public final class HandTyped {

  private HandTyped() {}

  /** By kind, for a shop of millimetres. */
  public static Map<String, Map<String, String>> byKind() {
    var all = new LinkedHashMap<String, Map<String, String>>();
    all.put(
        "carry",
        typed(
            "load", "sheet",
            "length", "2440",
            "width", "1220",
            "thickness", "18",
            "material", "plywood",
            "people", "one",
            "stairs", "no",
            "unit", "mm"));
    all.put("dry-fit", typed("material", "plywood"));
    all.put(
        "fasten",
        typed("material", "plywood", "glue", "kind:epoxy", "screws", "yes", "nails", "no"));
    all.put("sand", typed("by", "sander", "material", "hardwood", "extracted", "no"));
    all.put(
        "finish",
        typed(
            "finish", "kind:solvent-lacquer",
            "applied", "brushed",
            "where", "inside",
            "wet-room", "no"));
    all.put("clean-up", typed("what", "rags", "liquid", "kind:drying-oil"));
    return all;
  }

  /** The same with some fields typed otherwise: a name, then what is typed. */
  public static Map<String, String> with(String kind, String... changed) {
    var typed = new LinkedHashMap<>(byKind().get(kind));
    typed.putAll(typed(changed));
    return typed;
  }

  private static Map<String, String> typed(String... pairs) {
    var typed = new LinkedHashMap<String, String>();
    for (int i = 0; i < pairs.length; i += 2) {
      typed.put(pairs[i], pairs[i + 1]);
    }
    return typed;
  }
}
