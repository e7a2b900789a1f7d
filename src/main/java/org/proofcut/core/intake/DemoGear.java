package org.proofcut.core.intake;

import static org.proofcut.core.intake.NewCabinet.fitting;
import static org.proofcut.core.intake.NewCabinet.put;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proofcut.core.intake.Demo.Thing;

/** The gear of the demo shop with its sizes, the cabinet it is kept in and who reaches for it. */
public final class DemoGear {

  /**
   * One piece as it is kept.
   *
   * @param size width, height and depth in millimetres, and weight in grams
   * @param more further fields
   */
  private record Piece(
      Thing.Group group, String kind, String name, int[] size, Map<String, String> more) {

    Map<String, String> kept() {
      var typed =
          Demo.typed(
              "kept-width", size[0] + " mm",
              "kept-height", size[1] + " mm",
              "kept-depth", size[2] + " mm",
              "kept-weight", size[3] + " g");
      more.forEach(
          (field, text) -> {
            if (field.startsWith("kept-")) {
              typed.put(field, text);
            }
          });
      return typed;
    }

    Thing thing() {
      var typed = Demo.typed("name", name);
      typed.putAll(more);
      typed.putAll(kept());
      return new Thing(group, kind, typed);
    }
  }

  /** Pieces that stand in the demo shop whether they have sizes or not. */
  private static final Map<String, Piece> AT_HAND =
      Stream.of(
              gear(
                  "eye-protection",
                  "clear safety glasses",
                  170,
                  65,
                  80,
                  60,
                  "kept-kind",
                  "safety-glasses",
                  "kept-boxed",
                  "yes"),
              gear("ear-protection", "ear muffs", 180, 220, 100, 280, "kept-kind", "ear-muffs"),
              gear(
                  "dust-mask",
                  "half mask with particle filters",
                  180,
                  150,
                  130,
                  320,
                  "kept-kind",
                  "dust-half-mask",
                  "kept-boxed",
                  "yes"),
              gear(
                  "dust-mask",
                  "folded spare mask",
                  120,
                  90,
                  100,
                  60,
                  "kept-kind",
                  "disposable-masks",
                  "kept-boxed",
                  "yes"),
              gear("safety-shoes", "safety shoes", 240, 130, 330, 1400),
              gear("gloves", "thin grip gloves", 120, 240, 40, 80),
              gear("chemical-gloves", "nitrile gloves", 120, 320, 40, 110),
              gear(
                  "vapour-mask",
                  "half mask with gas filters",
                  190,
                  160,
                  140,
                  420,
                  "kept-kind",
                  "gas-half-mask",
                  "kept-boxed",
                  "yes"))
          .collect(Collectors.toMap(Piece::name, piece -> piece));

  private DemoGear() {}

  /** How a piece of this name is kept; nothing where there is none. */
  static Map<String, String> kept(String name) {
    var piece = AT_HAND.get(name);
    return piece == null ? Map.of() : piece.kept();
  }

  /** What stands there beside it. */
  static List<Thing> more() {
    return Stream.concat(worn(), kit()).map(Piece::thing).toList();
  }

  private static Stream<Piece> worn() {
    return Stream.of(
        gear("face-shield", "clear face shield", 250, 300, 180, 320, "class", "impact"),
        gear(
            "eye-protection",
            "glasses of Ash",
            175,
            65,
            80,
            90,
            "class",
            "impact",
            "kept-kind",
            "prescription-glasses",
            "kept-boxed",
            "yes",
            "kept-users",
            "Ash",
            "opened",
            "2026-01-12"),
        gear(
            "eye-protection",
            "goggles",
            190,
            110,
            110,
            150,
            "class",
            "impact",
            "kept-kind",
            "goggles",
            "kept-boxed",
            "yes"),
        gear("ear-protection", "jar of plugs", 90, 120, 90, 150, "kept-kind", "ear-plugs"),
        gear(
            "ear-protection",
            "plugs on a band",
            150,
            40,
            110,
            40,
            "kept-kind",
            "corded-plugs",
            "kept-boxed",
            "yes",
            "opened",
            "2026-09-01"));
  }

  private static Stream<Piece> kit() {
    return Stream.of(
        kit("dust-filters", "particle filters, a pair", 130, 120, 60, 90, "kept-boxed", "yes"),
        kit(
            "gas-filters",
            "gas filters, a pair",
            130,
            130,
            90,
            260,
            "kept-boxed",
            "yes",
            "good-until",
            "2097-10-31"),
        kit("mask-wipes", "wipes for masks", 120, 160, 110, 380, "opened", "2026-08-20"),
        kit("disposable-gloves", "box of thin gloves", 230, 75, 120, 350),
        kit("barrier-cream", "barrier cream", 60, 170, 45, 120, "opened", "2026-05-05"),
        kit("apron", "canvas apron", 320, 620, 50, 700),
        kit("sleeves", "waxed sleeves", 110, 330, 40, 90),
        kit("knee-pads", "knee pads", 190, 220, 110, 380),
        kit("hair-ties", "tin of hair ties", 110, 60, 110, 70),
        kit("push-stick", "long push stick", 70, 470, 20, 160),
        kit("push-stick", "short push stick", 60, 270, 20, 90),
        kit("push-block", "push block with a heel", 100, 140, 180, 450),
        kit("featherboard", "ash featherboard", 100, 260, 25, 240),
        kit("first-aid-kit", "green first aid kit", 280, 220, 100, 1300, "opened", "2026-02-02"),
        kit("burn-dressing", "burn dressings", 150, 180, 40, 180, "opened", "2025-11-01"),
        kit("eye-wash-bottle", "eye wash, two bottles", 200, 260, 90, 1400, "opened", "2026-04-01"),
        kit(
            "fire-extinguisher",
            "foam extinguisher",
            170,
            560,
            170,
            9600,
            "inspect-by",
            "2097-02-28"),
        kit("fire-blanket", "fire blanket", 180, 240, 50, 700),
        kit("torch", "torch for a power cut", 60, 190, 60, 260, "opened", "2026-03-15"),
        kit("lock-out", "lock for the plug of the saw", 80, 110, 40, 180),
        kit("sound-level-meter", "sound level meter", 200, 70, 110, 380, "kept-boxed", "yes"));
  }

  private static Piece gear(
      String kind, String name, int wide, int high, int deep, int grams, String... more) {
    return piece(Thing.Group.GEAR, kind, name, new int[] {wide, high, deep, grams}, more);
  }

  private static Piece kit(
      String kind, String name, int wide, int high, int deep, int grams, String... more) {
    return piece(Thing.Group.KIT, kind, name, new int[] {wide, high, deep, grams}, more);
  }

  private static Piece piece(
      Thing.Group group, String kind, String name, int[] size, String... more) {
    return new Piece(group, kind, name, size, Demo.typed(more));
  }

  /** The cabinet that it is kept in: on the wall, three bays, two doors, hooks beside it. */
  public static Map<String, String> cabinet() {
    var typed = new LinkedHashMap<String, String>();
    put(typed, "name", "gear cabinet by the door", "unit", "mm", "dry", "yes");
    put(typed, "width", "1236", "height", "1050", "depth", "340", "raised", "600");
    put(typed, "before", "0", "back", "12", "side", "18", "bays", "3", "upright", "18");
    put(typed, "bay-1", "400", "bay-2", "400", "bay-3", "400", "upright-depth", "210");
    put(typed, "doors", "two", "door", "18", "left-door", "618");
    fitting(typed, 1, "rail", "bay", "1", "at", "1010", "load", "8 kg", "each", "6 kg");
    fitting(typed, 2, "shelf", "bay", "1", "at", "620", "thickness", "18", "load", "15 kg");
    fitting(typed, 3, "shelf", "bay", "1", "at", "380", "thickness", "18", "load", "15 kg");
    fitting(typed, 4, "drawer", "bay", "1", "at", "0", "height", "140", "load", "8 kg");
    inner(typed, 4, "370", "110", "190");
    fitting(typed, 5, "shelf", "bay", "2", "at", "760", "thickness", "18", "load", "15 kg");
    fitting(typed, 6, "shelf", "bay", "2", "at", "500", "thickness", "18", "load", "15 kg");
    fitting(typed, 7, "box", "bay", "2", "on", "fitting-6", "load", "3 kg");
    put(typed, "fitting-7-width", "320", "fitting-7-height", "200", "fitting-7-depth", "200");
    inner(typed, 7, "305", "190", "185");
    fitting(typed, 8, "shelf", "bay", "2", "at", "250", "thickness", "18", "load", "15 kg");
    fitting(typed, 9, "rail", "bay", "3", "at", "1010", "load", "8 kg", "each", "6 kg");
    fitting(typed, 10, "shelf", "bay", "3", "at", "200", "thickness", "18", "load", "15 kg");
    fitting(typed, 11, "door-rail", "door", "1", "at", "960", "depth", "110", "load", "5 kg");
    put(typed, "fitting-11-each", "5 kg");
    fitting(typed, 12, "door-rail", "door", "2", "at", "960", "depth", "110", "load", "5 kg");
    put(typed, "fitting-12-each", "5 kg");
    fitting(typed, 13, "wall", "name", "hooks left of it", "at", "1400", "width", "1250");
    put(typed, "fitting-13-drop", "700", "fitting-13-depth", "250");
    put(typed, "fitting-13-load", "40 kg", "fitting-13-each", "60 kg");
    return typed;
  }

  private static void inner(
      Map<String, String> typed, int number, String wide, String high, String deep) {
    var stem = "fitting-" + number + "-inner-";
    put(typed, stem + "width", wide, stem + "height", high, stem + "depth", deep);
  }

  /**
   * The place of each piece by its name, as the plan of the cabinet has it: typed here, so that the
   * first start waits for no plan. {@code DemoGearTest} holds it to what the planner finds.
   */
  public static Map<String, String> homes() {
    var homes = new LinkedHashMap<String, String>();
    live(homes, "fitting-1", "goggles", "lock for the plug of the saw");
    live(homes, "fitting-2", "folded spare mask", "tin of hair ties", "push block with a heel");
    live(homes, "fitting-3", "half mask with particle filters", "clear safety glasses");
    live(homes, "fitting-4", "sound level meter");
    live(homes, "fitting-5", "glasses of Ash", "ear muffs");
    live(homes, "fitting-6", "torch for a power cut");
    live(homes, "fitting-7", "jar of plugs", "wipes for masks", "barrier cream");
    live(homes, "fitting-8", "half mask with gas filters", "plugs on a band");
    live(homes, "bottom-2", "safety shoes", "particle filters, a pair");
    live(homes, "fitting-9", "clear face shield");
    live(homes, "fitting-10", "nitrile gloves", "long push stick", "short push stick");
    live(homes, "bottom-3", "box of thin gloves", "gas filters, a pair");
    live(homes, "fitting-11", "canvas apron", "ash featherboard");
    live(homes, "fitting-12", "knee pads", "waxed sleeves", "thin grip gloves");
    live(homes, "fitting-13", "burn dressings", "eye wash, two bottles", "fire blanket");
    live(homes, "fitting-13", "foam extinguisher", "green first aid kit");
    return homes;
  }

  private static void live(Map<String, String> homes, String place, String... names) {
    for (var name : names) {
      homes.put(name, place);
    }
  }

  /** Who takes things out there. */
  public static List<Map<String, String>> people() {
    return List.of(
        Demo.typed("name", "Ash", "unit", "mm", "body", "1720", "highest", "2050"),
        Demo.typed("name", "Rowan", "unit", "mm", "body", "1600"));
  }
}
