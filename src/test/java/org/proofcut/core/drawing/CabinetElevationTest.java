package org.proofcut.core.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.proofcut.core.storage.StorageForTests.kind;
import static org.proofcut.core.storage.StorageForTests.length;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.proofcut.core.measure.LengthUnit;
import org.proofcut.core.storage.Cabinet;
import org.proofcut.core.storage.Posture;
import org.proofcut.core.storage.Put;
import org.proofcut.core.storage.StorageForTests;
import org.proofcut.core.storage.StoragePlan;
import org.proofcut.core.storage.StorageTask;
import org.proofcut.core.storage.Thing;

class CabinetElevationTest {

  private static final Thing MUFFS =
      kind("muffs", Posture.HANGING).thing("ear muffs", 150, 200, 90, 300);
  private static final Thing SHIELD =
      kind("shield", Posture.HANGING).thing("face shield", 120, 240, 70, 400);
  private static final Thing KIT =
      kind("kit", Posture.STANDING).thing("first aid kit", 260, 180, 120, 1500);
  private static final Thing THIN =
      kind("glasses", Posture.STANDING).thing("glasses", 20, 60, 60, 40);
  private static final Thing EXTINGUISHER =
      kind("extinguisher", Posture.HANGING).thing("extinguisher", 160, 500, 160, 9000);

  private final StorageTask task = StorageForTests.task(StorageForTests.cabinet(), List.of());

  private Put put(Thing thing, String place, long left) {
    return new Put(thing, StorageForTests.place(task, place), length(left));
  }

  private StoragePlan plan() {
    return StorageForTests.plan(
        put(MUFFS, "rail-1", 40),
        put(KIT, "shelf-1", 10),
        put(THIN, "shelf-1", 300),
        put(SHIELD, "door-1", 60),
        put(EXTINGUISHER, "wall", 20));
  }

  private Picture drawn(StoragePlan plan, int width) {
    return CabinetElevation.of(task.cabinet(), task.places(), plan, LengthUnit.MILLIMETRE, width);
  }

  /** The carcass is drawn first: 818 inside and 18 on each side. */
  private static double perMm(Seen seen) {
    return carcass(seen).width() / (818 + 36);
  }

  private static Seen.Box carcass(Seen seen) {
    return seen.boxes().get(0);
  }

  /** From the left face inside and above the bottom, in millimetres. */
  private static void assertBlock(
      Seen seen, String what, double left, double bottom, double wide, double high) {
    double mm = perMm(seen);
    double x = carcass(seen).left() + 18 * mm + left * mm;
    double y = carcass(seen).bottom() - 18 * mm - bottom * mm;
    assertTrue(
        seen.boxes().stream()
            .anyMatch(
                box ->
                    Math.abs(box.left() - x) < 0.02
                        && Math.abs(box.bottom() - y) < 0.02
                        && Math.abs(box.width() - wide * mm) < 0.02
                        && Math.abs(box.height() - high * mm) < 0.02),
        () -> what + " not among " + seen.boxes());
  }

  @Test
  void drawn_cabinet_isToScaleBothWays() {
    var seen = Seen.in(drawn(plan(), 760));
    assertEquals(1036 * perMm(seen), carcass(seen).height(), 0.02);
    assertBlock(seen, "shelf 1", 0, 282, 400, 18);
    assertBlock(seen, "upright", 400, 0, 18, 1000);
  }

  @Test
  void drawn_whatHangs_hangsFromItsHook_whatStands_standsOnItsShelf() {
    var seen = Seen.in(drawn(plan(), 760));
    assertBlock(seen, "muffs", 40, 960 - 200, 150, 200);
    assertBlock(seen, "kit", 10, 300, 260, 180);
    double mm = perMm(seen);
    double hook = carcass(seen).left() + (18 + 40 + 75) * mm;
    double at = carcass(seen).bottom() - (18 + 960) * mm;
    assertTrue(
        seen.circles().stream()
            .anyMatch(one -> Math.abs(one.x() - hook) < 0.02 && Math.abs(one.y() - at) < 0.02),
        () -> "no hook at " + hook + " among " + seen.circles());
  }

  private static List<Seen.Box> sized(Seen seen, double wide, double high) {
    double mm = perMm(seen);
    return seen.boxes().stream()
        .filter(
            box ->
                Math.abs(box.width() - wide * mm) < 0.02
                    && Math.abs(box.height() - high * mm) < 0.02)
        .toList();
  }

  /** Hinged on the left, its back has the hinges on the right: 60 mm from them stays 60 mm. */
  @Test
  void drawn_onDoor_liesAsFarFromTheHingesAsWhenItIsShut() {
    var seen = Seen.in(drawn(plan(), 760));
    var leaf = sized(seen, 409, 1000).get(0);
    var shield = sized(seen, 120, 240).get(0);
    assertEquals(60 * perMm(seen), leaf.right() - shield.right(), 0.02);
    assertEquals(100 * perMm(seen), shield.top() - leaf.top(), 0.02);
  }

  /** Hinged on the right, its back has the hinges on the left. */
  @Test
  void drawn_onTheRightDoor_isMirroredToo() {
    var withHooks =
        task.cabinet()
            .with(
                fittings -> {
                  var more = new ArrayList<>(fittings);
                  more.add(
                      new org.proofcut.core.storage.Fitting.DoorRail(
                          "door-2", "hooks", 2, length(900), length(80), 4_000, 3_000));
                  return more;
                });
    var other = StorageForTests.task(withHooks, List.of());
    var plan =
        StorageForTests.plan(
            new Put(SHIELD, StorageForTests.place(other, "door-2"), length(818 - 60 - 120)));
    var seen =
        Seen.in(CabinetElevation.of(withHooks, other.places(), plan, LengthUnit.MILLIMETRE, 760));
    var leaves = sized(seen, 409, 1000);
    var leaf = leaves.get(leaves.size() - 1);
    var shield = sized(seen, 120, 240).get(0);
    assertEquals(60 * perMm(seen), shield.left() - leaf.left(), 0.02);
  }

  @Test
  void drawn_onTheWall_hangsFromItsHooksBelowTheCase() {
    var seen = Seen.in(drawn(plan(), 760));
    var extinguisher = sized(seen, 160, 500).get(0);
    assertTrue(extinguisher.top() > carcass(seen).bottom(), extinguisher.toString());
    assertTrue(
        seen.circles().stream()
            .anyMatch(
                hook ->
                    Math.abs(hook.y() - extinguisher.top()) < 0.02
                        && Math.abs(hook.x() - (extinguisher.left() + extinguisher.right()) / 2)
                            < 0.02));
  }

  @Test
  void drawn_everyThing_hasItsNumberInTheDrawing() {
    for (int width : new int[] {760, 350}) {
      var texts = Seen.in(drawn(plan(), width)).texts().stream().map(Seen.Words::text).toList();
      for (int number = 1; number <= 5; number++) {
        var wanted = Integer.toString(number);
        assertTrue(
            texts.stream().anyMatch(text -> text.equals(wanted) || text.startsWith(wanted + " ")),
            () -> wanted + " not among " + texts);
      }
    }
  }

  @Test
  void numbers_placeByPlace_fromLeftToRight() {
    var numbers = CabinetElevation.numbers(task.places(), plan());
    assertEquals(
        Map.of(
            "first aid kit", 1, "glasses", 2, "ear muffs", 3, "face shield", 4, "extinguisher", 5),
        numbers);
  }

  @Test
  void words_sayWhatIsWhereAndHowLargeItIs() {
    var words = drawn(plan(), 760).words();
    assertTrue(words.contains("Inside 818 mm wide, 1000 mm high, 300 mm deep"), words);
    assertTrue(
        words.contains("Bay 1, shelf 1, from left to right: 1 first aid kit, 2 glasses."), words);
    assertTrue(words.contains("Door 1, hooks, from left to right: 4 face shield."), words);
    assertTrue(
        drawn(StorageForTests.plan(), 760).words().endsWith("Nothing is in it."), "an empty one");
  }

  @Test
  void drawn_fullOfThinThings_staysLegible() {
    var many = new ArrayList<Put>();
    for (int i = 0; i < 14; i++) {
      many.add(
          put(
              kind("thin" + i, Posture.STANDING).thing("safety glasses " + i, 15, 150, 60, 40),
              "shelf-1",
              25L * i));
      many.add(
          put(
              kind("hung" + i, Posture.HANGING).thing("push stick " + i, 15, 150, 60, 40),
              "rail-1",
              25L * i));
    }
    for (int width : new int[] {760, 350}) {
      Seen.in(drawn(StorageForTests.plan(many.toArray(Put[]::new)), width)).isLegible("many");
      Seen.in(drawn(plan(), width)).isLegible("few");
      Seen.in(drawn(StorageForTests.plan(), width)).isLegible("none");
    }
  }

  /** A line from a number over another thing would mislead: then it is told below the drawing. */
  @Test
  void drawn_betweenTwoThings_leadsItsNumberAcrossNeither() {
    var between = kind("stick", Posture.STANDING).thing("stick", 18, 440, 60, 40);
    var over = kind("over", Posture.HANGING).thing("bag", 100, 200, 60, 40);
    var under = kind("under", Posture.STANDING).thing("tin", 100, 275, 60, 40);
    var picture =
        drawn(
            StorageForTests.plan(
                put(over, "rail-1", 50), put(between, "shelf-1", 91), put(under, "bottom-1", 50)),
            350);
    var seen = Seen.in(picture);
    double x = carcass(seen).left() + (18 + 91 + 9) * perMm(seen);
    assertEquals(
        List.of(), seen.leads().stream().filter(lead -> Math.abs(lead.left() - x) < 2).toList());
    var told = String.join(" ", seen.texts().stream().map(Seen.Words::text).toList());
    assertTrue(told.contains("Too narrow for their numbers: 1 stick."), told);
  }

  @Test
  void drawn_doorAndWall_areNoWiderThanTheCase() {
    var seen = Seen.in(drawn(plan(), 350));
    assertEquals(
        350 - 2 * 10, carcass(seen).width(), 2, "nothing beside it makes the case any smaller");
  }

  @Test
  void drawn_slimCabinet_staysLegible() {
    var slim =
        new Cabinet(
            "slim",
            "slim",
            new org.proofcut.core.storage.Size(length(60), length(2400), length(100)),
            length(0),
            length(0),
            length(8),
            length(18),
            length(100),
            true,
            List.of(
                new org.proofcut.core.storage.Bay(
                    1, new org.proofcut.core.measure.Band(length(0), length(60)))),
            List.of(),
            List.of());
    var places = StorageForTests.task(slim, List.of()).places();
    for (int width : new int[] {760, 350}) {
      Seen.in(CabinetElevation.of(slim, places, StorageForTests.plan(), LengthUnit.INCH, width))
          .isLegible("slim");
    }
  }
}
