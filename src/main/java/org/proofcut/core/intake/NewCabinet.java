package org.proofcut.core.intake;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a form of a cabinet begins with: a small one on the wall, with something of each kind that
 * one usually has. All sizes and loads are our own choice, to be changed to those of the real one.
 */
public final class NewCabinet {

  private NewCabinet() {}

  /** As it would be typed. */
  public static Map<String, String> typed() {
    var typed = new LinkedHashMap<String, String>();
    put(typed, "name", "gear cabinet", "unit", "mm", "dry", "yes");
    put(typed, "width", "760 mm", "height", "900 mm", "depth", "300 mm", "raised", "700 mm");
    put(typed, "before", "0 mm", "back", "9 mm", "side", "18 mm");
    put(typed, "bays", "1", "upright-depth", "200 mm");
    put(typed, "doors", "two", "door", "18 mm");
    fitting(typed, 1, "shelf", "at", "300 mm", "thickness", "18 mm", "load", "15 kg");
    fitting(typed, 2, "rail", "at", "860 mm", "load", "8 kg", "each", "5 kg");
    fitting(typed, 3, "door-rail", "at", "860 mm", "depth", "80 mm", "load", "4 kg");
    put(typed, "fitting-3-each", "5 kg");
    return typed;
  }

  static void fitting(Map<String, String> typed, int number, String kind, String... more) {
    typed.put("fitting-" + number + "-kind", kind);
    for (int i = 0; i < more.length; i += 2) {
      typed.put("fitting-" + number + "-" + more[i], more[i + 1]);
    }
  }

  static void put(Map<String, String> typed, String... pairs) {
    typed.putAll(Demo.typed(pairs));
  }
}
