package org.proofcut.core.intake;

import java.util.LinkedHashMap;
import java.util.Map;

/** A lift and a case on the floor, as a person would type them. */
public final class LoadsTyped {

  private LoadsTyped() {}

  /** A drawer unit from the floor onto a bench. */
  public static Map<String, String> lift() {
    var typed = new LinkedHashMap<String, String>();
    typed.put("unit", "mm");
    typed.put("weight", "18 kg");
    typed.put("long", "900");
    typed.put("deep", "400");
    typed.put("grip", "poor");
    typed.put("out", "450");
    typed.put("from", "200");
    typed.put("turn", "30");
    typed.put("to", "1100");
    typed.put("care", "yes");
    typed.put("end-out", "500");
    typed.put("end-turn", "0");
    typed.put("often", "2");
    typed.put("span", "one-hour");
    for (var condition :
        new String[] {
          "one-hand",
          "long-day",
          "not-standing",
          "confined",
          "unstable",
          "carried",
          "slippery",
          "fast",
          "hot-or-cold"
        }) {
      typed.put(condition, "no");
    }
    return typed;
  }

  /** A cupboard with two doors. */
  public static Map<String, String> stand() {
    var typed = new LinkedHashMap<String, String>();
    typed.put("contents-1", "12 kg");
    typed.put("behind-1", "150");
    typed.put("fronts", "6 kg");
    typed.put("fronts-before", "140");
    typed.put("hung", "27 kg");
    typed.put("hung-before", "100");
    typed.put("pull", "5 kg");
    typed.put("pull-high", "800");
    typed.put("drop", "3");
    typed.put("feet-back", "0");
    return typed;
  }
}
