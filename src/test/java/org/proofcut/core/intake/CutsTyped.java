package org.proofcut.core.intake;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.proofcut.core.setup.ShopsForTests;
import org.proofcut.core.shop.Shop;
import org.proofcut.core.shop.TableSaw.BlindCuts;

/** One cut of each kind as a person might type it, in millimetres. */
public final class CutsTyped {

  /** A shop that can make them all. */
  public static final Shop SHOP =
      new Shop(
          "Test shop",
          ShopsForTests.shop().machines().stream()
              .map(
                  one ->
                      one.equals(ShopsForTests.SAW)
                          ? ShopsForTests.sawWith(new BlindCuts(true, Optional.empty()))
                          : one)
              .toList(),
          ShopsForTests.shop().cutters(),
          List.of(),
          Stream.concat(
                  ShopsForTests.shop().aids().stream(),
                  Stream.of("featherboard", "carrier-jig", "flat-carrier"))
              .distinct()
              .toList());

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
        "edge-profile",
        typed(
            "profile", "round-over",
            "width", "6",
            "height", "6",
            "edge", "outside-straight",
            "thinnest", "18",
            "thickest", "18.1",
            "along", "620",
            "across", "360",
            "material", "hardwood"));
    all.put(
        "flush-trim",
        typed(
            "overhang", "2",
            "layer", "4",
            "edge", "outside-straight",
            "thinnest", "18",
            "thickest", "18.1",
            "along", "620",
            "across", "360",
            "material", "plywood"));
    all.put(
        "edge-trim",
        typed(
            "now", "362",
            "size", "360",
            "thinnest", "18",
            "thickest", "18.1",
            "along", "620",
            "material", "plywood"));
    all.put(
        "template-recess",
        typed(
            "length", "90",
            "width", "40",
            "depth", "9",
            "corner", "6",
            "bush", "24",
            "bore", "21",
            "collar", "8",
            "template", "12",
            "thinnest", "18",
            "thickest", "18.1",
            "along", "400",
            "across", "300",
            "material", "mdf"));
    all.put(
        "screw-hole",
        typed(
            "bore", "pilot",
            "screw-length", "30",
            "under-head", "16",
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
    all.put(
        "hinge-cup",
        typed(
            "cup", "35",
            "cup-depth", "12.5",
            "cup-distance", "5",
            "first", "100",
            "thinnest", "18",
            "thickest", "18.1",
            "along", "720",
            "across", "400",
            "material", "mdf"));
    all.put(
        "shelf-pins",
        typed(
            "row", "front",
            "from-edge", "37",
            "pin", "5",
            "depth", "10",
            "pitch", "32",
            "margin", "90",
            "thinnest", "17.7",
            "thickest", "17.8",
            "along", "720",
            "across", "360",
            "material", "plywood"));
    all.put(
        "dowels",
        typed(
            "part", "face",
            "dowel", "8",
            "dowel-length", "40",
            "dowels", "2",
            "dowel-edge", "20",
            "glue-room", "1",
            "along", "80",
            "end-thickness", "18",
            "end-length", "300",
            "thinnest", "20",
            "thickest", "20",
            "across", "60",
            "material", "hardwood"));
    all.put(
        "pocket-holes",
        typed(
            "guide", "40",
            "stop-short", "3",
            "screw-length", "32",
            "other-deep", "50",
            "other-thick", "18",
            "first", "20",
            "holes", "2",
            "pitch", "30",
            "thinnest", "18",
            "thickest", "18.1",
            "along", "70",
            "across", "400",
            "material", "hardwood"));
    all.put(
        "mitre",
        typed(
            "size", "400",
            "measured", "outside",
            "corner", "90°",
            "across", "60",
            "thinnest", "18",
            "thickest", "18.1",
            "material", "hardwood"));
    all.put(
        "compound-mitre",
        typed(
            "size", "500",
            "corner", "90°",
            "lean", "38°",
            "across", "80",
            "thinnest", "18",
            "thickest", "18.1",
            "material", "hardwood"));
    all.put(
        "tongue-routed",
        typed(
            "slot", "6.2",
            "width", "9",
            "thinnest", "18",
            "thickest", "18.06",
            "along", "700",
            "across", "120",
            "material", "hardwood"));
    all.put(
        "taper",
        typed(
            "edge", "one",
            "wide", "50",
            "narrow", "30",
            "run", "600",
            "thinnest", "30",
            "thickest", "30.2",
            "along", "700",
            "material", "hardwood",
            "carrier", "250",
            "base", "12",
            "apart", "400"));
    all.put(
        "bevel-rip",
        typed(
            "size", "120",
            "good-is", "wide",
            "bevel", "45°",
            "thinnest", "18",
            "thickest", "18.1",
            "along", "700",
            "material", "hardwood"));
    for (var kind : new String[] {"flatten", "straighten"}) {
      all.put(
          kind,
          typed(
              "off", "2",
              "thinnest", "24",
              "thickest", "25",
              "along", "900",
              "across", "150",
              "material", "hardwood"));
    }
    all.put(
        "plane",
        typed(
            "thickness", "20",
            "finished", "700",
            "thinnest", "23",
            "thickest", "24",
            "along", "900",
            "across", "150",
            "material", "hardwood"));
    all.put(
        "thin-strip",
        typed(
            "size", "6",
            "count", "3",
            "thinnest", "18",
            "thickest", "18.1",
            "along", "700",
            "across", "120",
            "material", "hardwood"));
    for (var kind : new String[] {"rabbet-flat", "rabbet-on-edge"}) {
      all.put(
          kind,
          typed(
              "width", "18",
              "depth", "6",
              "thinnest", "18",
              "thickest", "18.1",
              "along", "400",
              "across", "600",
              "carrier", "0",
              "material", "plywood"));
    }
    for (var kind : new String[] {"tongue-flat", "tongue-on-edge"}) {
      all.put(
          kind,
          typed(
              "slot", "12.1",
              "width", "5.5",
              "thinnest", "17.6",
              "thickest", "18",
              "along", "400",
              "across", "600",
              "carrier", "19",
              "material", "plywood"));
    }
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
