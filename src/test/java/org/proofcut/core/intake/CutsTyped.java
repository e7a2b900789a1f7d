package org.proofcut.core.intake;

import java.util.LinkedHashMap;
import java.util.Map;

/** One cut of each kind as a person might type it, in millimetres. */
public final class CutsTyped {

  private static final Map<String, Map<String, String>> ALL = all();

  private CutsTyped() {}

  /** By kind of cut, in the order of the forms. */
  public static Map<String, Map<String, String>> byKind() {
    return ALL;
  }

  /** One of them with some fields typed otherwise. */
  public static Map<String, String> with(String kind, String... fieldsAndTexts) {
    var typed = new LinkedHashMap<>(ALL.get(kind));
    for (int i = 0; i < fieldsAndTexts.length; i += 2) {
      typed.put(fieldsAndTexts[i], fieldsAndTexts[i + 1]);
    }
    return typed;
  }

  private static Map<String, Map<String, String>> all() {
    var all = new LinkedHashMap<String, Map<String, String>>();
    all.put(
        "dado",
        typed(
            "entering-thinnest", "17.9",
            "entering-thickest", "18",
            "depth", "6",
            "distance", "96",
            "thinnest", "18",
            "thickest", "18.1",
            "along", "400",
            "across", "600",
            "material", "plywood"));
    all.put(
        "rabbet",
        typed(
            "entering-thinnest", "17.9",
            "entering-thickest", "18",
            "depth", "6",
            "thinnest", "18",
            "thickest", "18.1",
            "along", "400",
            "across", "600",
            "material", "plywood"));
    all.put(
        "break-down",
        typed(
            "size", "306",
            "thinnest", "18",
            "thickest", "18.1",
            "along", "2440",
            "across", "1220",
            "material", "plywood"));
    all.put(
        "rip",
        typed(
            "size", "300",
            "thinnest", "18",
            "thickest", "18.1",
            "along", "700",
            "material", "plywood"));
    all.put(
        "crosscut",
        typed(
            "size", "700",
            "thinnest", "18",
            "thickest", "18.1",
            "across", "300",
            "material", "plywood"));
    all.put(
        "centred-groove",
        typed(
            "entering-thinnest", "5.58",
            "entering-thickest", "5.66",
            "depth", "10",
            "thinnest", "19",
            "thickest", "19.04",
            "along", "520",
            "standing", "58",
            "material", "softwood"));
    all.put(
        "screw-hole",
        typed(
            "bore", "clearance",
            "screw", "8",
            "from-edge", "60",
            "first", "80",
            "holes", "3",
            "pitch", "120",
            "thinnest", "18",
            "thickest", "18.1",
            "along", "600",
            "across", "300",
            "material", "plywood"));
    return all;
  }

  private static Map<String, String> typed(String... fieldsAndTexts) {
    var typed = new LinkedHashMap<String, String>();
    for (int i = 0; i < fieldsAndTexts.length; i += 2) {
      typed.put(fieldsAndTexts[i], fieldsAndTexts[i + 1]);
    }
    return typed;
  }
}
