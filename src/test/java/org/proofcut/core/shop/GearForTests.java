package org.proofcut.core.shop;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.shop.GearKind.Judged;
import org.proofcut.core.shop.OwnedGear.Rated;

/** Kinds and pieces of gear, as few words as they take. */
public final class GearForTests {

  public static final LocalDate TODAY = LocalDate.of(2026, 5, 10);

  /** Three that seal, weakest first, and a hood that does not. */
  public static final GearKind MASK =
      kind(
          "mask",
          Judged.BY_CLASS,
          grade("one", true),
          grade("two", true),
          grade("three", true),
          grade("hood", false));

  public static final GearKind GLOVES =
      kind("gloves", Judged.BY_USE, grade("handling", false), grade("chemical", false));

  public static final GearKind MUFFS = kind("muffs", Judged.BY_FIGURE, grade("rated", false));

  private GearForTests() {}

  public static GearKind kind(String id, Judged judged, GearClass... classes) {
    return new GearKind(
        id,
        id,
        false,
        1,
        "M001",
        Optional.empty(),
        Optional.empty(),
        new GearKind.Prompt("Is it on?", "On"),
        new GearKind.Prompt("Is it off?", "Off"),
        List.of(classes),
        Optional.of(judged));
  }

  static GearClass grade(String id, boolean seals) {
    return new GearClass(id, "mark " + id, "dust", Optional.of(seals), Citation.COMMON_PRACTICE);
  }

  /** A piece with a class and a last day, either of them null where it is not known. */
  public static OwnedGear piece(GearKind kind, String id, String marked, LocalDate goodUntil) {
    return piece(kind, id, marked, "hook", new GearLife(day(goodUntil), Optional.empty()), false);
  }

  static OwnedGear piece(
      GearKind kind, String id, String marked, String place, GearLife life, boolean outOfUse) {
    return new OwnedGear(
        id,
        kind.id(),
        id,
        "",
        place,
        Optional.ofNullable(marked),
        Optional.empty(),
        Optional.empty(),
        life,
        outOfUse);
  }

  static OwnedGear muffs(String id, Rated rated) {
    return new OwnedGear(
        id,
        "muffs",
        id,
        "",
        "hook",
        Optional.empty(),
        Optional.ofNullable(rated),
        Optional.empty(),
        GearLife.UNDATED,
        false);
  }

  static Optional<LocalDate> day(LocalDate day) {
    return Optional.ofNullable(day);
  }
}
