package org.proofcut.bench;

import java.util.LinkedHashMap;
import java.util.Map;

/** Gear and a cabinet for it as a person types them. */
final class GearTyped {

  private GearTyped() {}

  static Map<String, String> pairs(String... pairs) {
    var typed = new LinkedHashMap<String, String>();
    for (int i = 0; i < pairs.length; i += 2) {
      typed.put(pairs[i], pairs[i + 1]);
    }
    return typed;
  }

  static Map<String, String> muffs(String name, String... more) {
    var typed = pairs("name", name, "kept-width", "180", "kept-height", "220");
    typed.putAll(pairs("kept-depth", "100", "kept-weight", "280 g"));
    typed.putAll(pairs(more));
    return typed;
  }

  /** One bay with a row of hooks, and no door. */
  static Map<String, String> cabinet(String... changed) {
    var typed = pairs("name", "small one", "unit", "mm", "dry", "yes", "doors", "none");
    typed.putAll(pairs("width", "600", "height", "700", "depth", "300", "raised", "800"));
    typed.putAll(pairs("before", "0", "back", "12", "side", "18", "bays", "1"));
    typed.putAll(pairs("fitting-1-kind", "rail", "fitting-1-at", "660"));
    typed.putAll(pairs("fitting-1-load", "8 kg", "fitting-1-each", "5 kg"));
    typed.putAll(pairs(changed));
    return typed;
  }
}
