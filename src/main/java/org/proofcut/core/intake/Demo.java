package org.proofcut.core.intake;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A shop and a job to walk through, invented: a seed cupboard for an allotment hut. As typed, so
 * that it can be changed like any other, and thrown away.
 */
public final class Demo {

  /**
   * Something in the demo shop, as typed.
   *
   * @param group machine, cutter, gear, kit, aid or liquid
   */
  public record Thing(Group group, String kind, Map<String, String> typed) {

    /** What kind of thing it is. */
    public enum Group {
      MACHINE,
      CUTTER,
      GEAR,
      KIT,
      AID,
      LIQUID
    }
  }

  private Demo() {}

  /** Name and unit of the demo shop. */
  public static Map<String, String> shop() {
    return typed("name", "The long shed", "unit", "mm", "region", "gb", "beard", "no");
  }

  /** All that stands in the demo shop. */
  public static List<Thing> things() {
    return Stream.concat(atHand().stream(), DemoGear.more().stream()).toList();
  }

  private static List<Thing> atHand() {
    return List.of(
        machine(
            "router-table",
            "name",
            "router table by the window",
            "speeds",
            "1: 8000, 2: 12000, 3: 15500, 4: 18000, 5: 21000, 6: 24000",
            "fence-reach",
            "430",
            "fence-step",
            "0.1",
            "height-step",
            "0.1",
            "largest-cutter",
            "50",
            "guard",
            "yes",
            "extraction",
            "yes"),
        machine(
            "hand-held-router",
            "name",
            "plunge router",
            "speeds",
            "1: 9000, 2: 12000, 3: 15000, 4: 18000, 5: 21000, 6: 23000",
            "base-edge-to-centre",
            "75",
            "depth-step",
            "0.1",
            "largest-cutter",
            "36",
            "guard",
            "yes",
            "extraction",
            "yes"),
        machine(
            "table-saw",
            "name",
            "table saw",
            "speeds",
            "4200",
            "fence-reach",
            "660",
            "fence-step",
            "0.1",
            "height-step",
            "0.5",
            "greatest-height",
            "78",
            "smallest-blade",
            "240",
            "largest-blade",
            "254",
            "sled-stop-reach",
            "1050",
            "sled-depth",
            "620",
            "guard",
            "yes",
            "riving-knife",
            "yes",
            "knife-stays",
            "yes",
            "extraction",
            "yes",
            "leans",
            "left",
            "greatest-bevel",
            "46",
            "bevel-step",
            "0.1",
            "gauge-stop-reach",
            "1200",
            "gauge-widest-work",
            "310"),
        machine(
            "track-saw",
            "name",
            "track saw",
            "speeds",
            "5200",
            "track-length",
            "2700",
            "depth-step",
            "0.5",
            "greatest-depth",
            "52",
            "smallest-blade",
            "160",
            "largest-blade",
            "165",
            "guard",
            "yes",
            "riving-knife",
            "yes",
            "extraction",
            "yes",
            "greatest-bevel",
            "47",
            "bevel-step",
            "0.5"),
        machine(
            "mitre-saw",
            "name",
            "mitre saw",
            "speeds",
            "4900",
            "greatest-mitre",
            "50",
            "mitre-step",
            "0.1",
            "tilts",
            "left",
            "greatest-bevel",
            "46",
            "bevel-step",
            "0.1",
            "cut-width",
            "305",
            "cut-height",
            "70",
            "tilted-height",
            "36",
            "stop-reach",
            "1800",
            "stop-step",
            "0.1",
            "smallest-blade",
            "214",
            "largest-blade",
            "216",
            "guard",
            "yes",
            "extraction",
            "yes"),
        machine(
            "jointer",
            "name",
            "jointer",
            "knife-speed",
            "5000",
            "head-diameter",
            "75",
            "knives",
            "3",
            "widest-work",
            "200",
            "infeed-length",
            "800",
            "outfeed-length",
            "800",
            "deepest-pass",
            "3",
            "table-step",
            "0.1",
            "shortest-work",
            "305",
            "thinnest-work",
            "8",
            "guard",
            "yes",
            "extraction",
            "yes"),
        machine(
            "planer",
            "name",
            "planer",
            "knife-speed",
            "8000",
            "head-diameter",
            "50",
            "knives",
            "2",
            "feed",
            "6 m",
            "widest-work",
            "330",
            "bed-length",
            "700",
            "thickest-work",
            "152",
            "deepest-pass",
            "3",
            "height-step",
            "0.1",
            "shortest-work",
            "350",
            "thinnest-work",
            "6",
            "guard",
            "yes",
            "kickback-fingers",
            "yes",
            "extraction",
            "yes"),
        cutter(
            "straight-cutter",
            "name",
            "4.5 mm straight",
            "diameter",
            "4.5",
            "cutting-length",
            "14",
            "edges",
            "2",
            "shank",
            "8",
            "top-speed",
            "24000"),
        cutter(
            "straight-cutter",
            "name",
            "12 mm straight",
            "diameter",
            "12",
            "cutting-length",
            "30",
            "edges",
            "2",
            "shank",
            "12",
            "top-speed",
            "24000"),
        cutter(
            "straight-cutter",
            "name",
            "16 mm straight",
            "diameter",
            "16",
            "cutting-length",
            "25",
            "edges",
            "2",
            "shank",
            "12",
            "top-speed",
            "22000"),
        cutter(
            "straight-cutter",
            "name",
            "20 mm straight",
            "diameter",
            "20",
            "cutting-length",
            "25",
            "edges",
            "2",
            "shank",
            "12",
            "top-speed",
            "20000"),
        cutter(
            "bearing-cutter",
            "name",
            "6 mm round-over",
            "profile",
            "round-over",
            "bearing",
            "12",
            "diameter",
            "24",
            "cutting-length",
            "13",
            "edges",
            "2",
            "shank",
            "8",
            "top-speed",
            "22000"),
        cutter(
            "bearing-cutter",
            "name",
            "8 mm chamfer",
            "profile",
            "chamfer",
            "bearing",
            "12",
            "diameter",
            "28",
            "cutting-length",
            "12",
            "edges",
            "2",
            "shank",
            "8",
            "top-speed",
            "22000"),
        cutter(
            "bearing-cutter",
            "name",
            "10 mm rabbet",
            "profile",
            "rabbet",
            "bearing",
            "12",
            "diameter",
            "32",
            "cutting-length",
            "12",
            "edges",
            "2",
            "shank",
            "8",
            "top-speed",
            "20000"),
        cutter(
            "bearing-cutter",
            "name",
            "12 mm flush trim",
            "profile",
            "flush-trim",
            "bearing",
            "12",
            "diameter",
            "12",
            "cutting-length",
            "26",
            "edges",
            "2",
            "shank",
            "8",
            "top-speed",
            "24000"),
        cutter(
            "saw-blade",
            "name",
            "250 mm, 48 teeth",
            "diameter",
            "250",
            "kerf",
            "2.8",
            "edges",
            "48",
            "top-speed",
            "7600"),
        cutter(
            "saw-blade",
            "name",
            "160 mm, 48 teeth",
            "diameter",
            "160",
            "kerf",
            "1.8",
            "edges",
            "48",
            "top-speed",
            "9500"),
        machine(
            "drill-press",
            "name",
            "drill press in the corner",
            "speeds",
            "A: 250, B: 480, C: 900, D: 1550, E: 2600",
            "fence-reach",
            "150",
            "fence-step",
            "0.1",
            "stop-reach",
            "450",
            "travel",
            "80",
            "under-chuck",
            "430",
            "depth-step",
            "0.1",
            "largest-bit",
            "40",
            "guard",
            "yes",
            "extraction",
            "no"),
        machine(
            "hand-drill",
            "name",
            "cordless drill",
            "speeds",
            "1: 450, 2: 1700",
            "collar-step",
            "0.1",
            "guide-height",
            "0",
            "largest-bit",
            "20",
            "extraction",
            "no"),
        bit("2 mm twist", "twist", "2", "35", "0.6"),
        bit("2.5 mm twist", "twist", "2.5", "40", "0.8"),
        bit("3 mm twist", "twist", "3", "45", "0.9"),
        bit("4.5 mm twist", "twist", "4.5", "60", "1.4"),
        bit("5 mm brad point", "brad-point", "5", "60", "2"),
        bit("8 mm brad point", "brad-point", "8", "75", "3"),
        bit("countersink, 90°", "countersink", "12", "20", "6"),
        bit("35 mm cup", "cup", "35", "50", "1.2"),
        bit("9.5 mm stepped", "stepped", "9.5", "110", "10"),
        cutter(
            "saw-blade",
            "name",
            "216 mm, 60 teeth",
            "diameter",
            "216",
            "kerf",
            "2.2",
            "edges",
            "60",
            "top-speed",
            "7000"),
        gear("eye-protection", "clear safety glasses", "shelf 1, left", "class", "impact"),
        gear(
            "ear-protection",
            "ear muffs",
            "hook 3",
            "decibels",
            "30",
            "scale",
            "SNR",
            "inspect-by",
            "2097-06-30"),
        gear(
            "dust-mask",
            "half mask with particle filters",
            "sealed box 2",
            "class",
            "ffp3",
            "rating",
            "P3 filters",
            "opened",
            "2026-03-02",
            "good-until",
            "2096-03-01"),
        gear(
            "dust-mask",
            "folded spare mask",
            "sealed box 1",
            "class",
            "ffp3",
            "good-until",
            "2024-05-03"),
        gear("safety-shoes", "safety shoes", "under the bench", "class", "toe-cap", "rating", "S3"),
        gear("gloves", "thin grip gloves", "hook 5", "class", "handling"),
        aid("straightedge"),
        aid("clamps"),
        aid("pocket-jig"),
        aid("square-block"),
        aid("starting-pin"),
        aid("roller-stand"),
        aid("hold-down-clamp"),
        aid("sled"),
        aid("carrier-jig"),
        aid("flat-carrier"),
        gear("chemical-gloves", "nitrile gloves", "shelf 2, box", "class", "chemical"),
        gear(
            "vapour-mask",
            "half mask with gas filters",
            "sealed box 4",
            "class",
            "vapour",
            "good-until",
            "2096-03-01"),
        aid("extinguisher"),
        aid("rag-can"),
        liquid("water-based-wood-glue", "white wood glue", "", "", "yes", "folder by the door"),
        liquid("polyurethane-glue", "foaming glue for the porch", "", "", "no", ""),
        liquid("drying-oil", "boiled oil", "> 150 °C", "", "yes", "folder by the door"),
        liquid("solvent-lacquer", "quick lacquer", "-4 °C", "77 °C", "yes", "folder by the door"),
        liquid("solvent", "white spirit", "40 °C", "150 °C", "no", ""));
  }

  /** The demo job. */
  public static Map<String, String> job() {
    var job = new LinkedHashMap<String, String>();
    job.putAll(
        typed(
            "name", "Seed cupboard for the allotment hut",
            "unit", "mm",
            "width", "620",
            "height", "940",
            "depth", "360",
            "top-rabbet", "6",
            "bottom-dado", "6",
            "shelf-dado", "6",
            "back-rabbet", "6",
            "back-set-in", "0",
            "plinth-height", "90",
            "plinth-set-back", "35",
            "shelf-1", "500"));
    job.putAll(
        sheet(1, "poplar ply, from the rack", "plywood", "17.68", "17.74", "17.70", "17.78"));
    job.putAll(sheet(2, "thin ply for the back", "plywood", "5.62", "5.58", "5.66", "5.64"));
    for (var part : List.of("left-side", "right-side", "top", "bottom", "shelf", "plinth")) {
      job.put("from-" + part, "1");
    }
    job.put("from-back", "2");
    return job;
  }

  private static Map<String, String> sheet(
      int number, String name, String material, String... readings) {
    var stem = "sheet-" + number + "-";
    var sheet =
        typed(
            stem + "name",
            name,
            stem + "material",
            material,
            stem + "length",
            "2440",
            stem + "width",
            "1220");
    for (int i = 0; i < readings.length; i++) {
      sheet.put(stem + "reading-" + (i + 1), readings[i]);
    }
    return sheet;
  }

  private static Thing machine(String kind, String... typed) {
    return new Thing(Thing.Group.MACHINE, kind, typed(typed));
  }

  private static Thing cutter(String kind, String... typed) {
    return new Thing(Thing.Group.CUTTER, kind, typed(typed));
  }

  private static Thing bit(String name, String kind, String diameter, String length, String point) {
    return cutter(
        "bit",
        "name",
        name,
        "bit-kind",
        kind,
        "diameter",
        diameter,
        "length",
        length,
        "point",
        point,
        "edges",
        "2");
  }

  private static Thing gear(String kind, String name, String place, String... more) {
    var typed = typed("name", name, "place", place);
    typed.putAll(typed(more));
    typed.putAll(DemoGear.kept(name));
    return new Thing(Thing.Group.GEAR, kind, typed);
  }

  private static Thing aid(String kind) {
    return new Thing(Thing.Group.AID, kind, Map.of());
  }

  private static Thing liquid(
      String kind, String name, String flash, String boils, String dataSheet, String place) {
    return new Thing(
        Thing.Group.LIQUID,
        kind,
        typed(
            "name",
            name,
            "flash",
            flash,
            "boils",
            boils,
            "data-sheet",
            dataSheet,
            "data-sheet-place",
            place,
            "opened",
            ""));
  }

  static Map<String, String> typed(String... pairs) {
    var typed = new LinkedHashMap<String, String>();
    for (int i = 0; i < pairs.length; i += 2) {
      typed.put(pairs[i], pairs[i + 1]);
    }
    return typed;
  }
}
