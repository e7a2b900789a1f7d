package org.proofcut.core.storage;

import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.storage.Fitting.DoorRail;
import org.proofcut.core.storage.Fitting.Drawer;
import org.proofcut.core.storage.Fitting.LidBox;
import org.proofcut.core.storage.Fitting.Rail;
import org.proofcut.core.storage.Fitting.Shelf;
import org.proofcut.core.storage.Fitting.Wall;

/**
 * Whether a place gives no more than what is built there. Written apart from {@link Places}, which
 * plans are made with, so that a judge who asks here sees what is wrong there.
 */
final class AsBuilt {

  private static final String BOTTOM = "bottom-";

  private final Cabinet cabinet;

  AsBuilt(Cabinet cabinet) {
    this.cabinet = cabinet;
  }

  /** Whether it is there, holds what it says and lies where it says. */
  boolean gives(Place place) {
    if (place.id().startsWith(BOTTOM)) {
      return cabinet.bays().stream()
          .filter(bay -> place.id().equals(BOTTOM + bay.number()))
          .anyMatch(bay -> bottom(place, bay));
    }
    return cabinet.fittings().stream()
        .filter(fitting -> fitting.id().equals(place.id()))
        .anyMatch(fitting -> fitting(place, fitting));
  }

  private boolean fitting(Place place, Fitting fitting) {
    if (place.mostGrams() > fitting.mostGrams()) {
      return false;
    }
    if (fitting instanceof Shelf shelf) {
      return stands(place, bay(shelf.bay()), shelf.top(), shelf.deep());
    }
    if (fitting instanceof Rail rail) {
      return is(place, Place.Kind.RAIL, rail.eachGrams())
          && isInside(place)
          && place.upright().most().equals(rail.at())
          && place.deep().least().isAtLeast(HookSheet.Fastening.USUAL.standsOut(cabinet.back()))
          && within(bay(rail.bay()).across(), place.across());
    }
    if (fitting instanceof Drawer drawer) {
      return is(place, Place.Kind.DRAWER, 0)
          && within(bay(drawer.bay()).across(), place.across())
          && place.upright().least().isAtLeast(drawer.bottom())
          && isNoLarger(place, drawer.inner());
    }
    if (fitting instanceof LidBox box) {
      return is(place, Place.Kind.BOX, 0)
          && cabinet.boxAround(box.id()).holds(room(place))
          && isNoLarger(place, box.inner());
    }
    if (fitting instanceof DoorRail rail) {
      return is(place, Place.Kind.DOOR_RAIL, rail.eachGrams())
          && isInside(place)
          && place.upright().most().equals(rail.at())
          && place.deep().most().equals(cabinet.inside().deep())
          && place.deep().extent().isAtMost(rail.deepest())
          && cabinet
              .door(rail.door())
              .filter(on -> within(on.across(), place.across()))
              .isPresent();
    }
    var wall = (Wall) fitting;
    return is(place, Place.Kind.WALL, wall.eachGrams())
        && place.upright().most().plus(cabinet.raised()).equals(wall.at())
        && isNoLarger(place, new Size(wall.wide(), wall.drop(), wall.deep()));
  }

  private boolean bottom(Place place, Bay bay) {
    return place.mostGrams() <= Fitting.BOTTOM_GRAMS
        && stands(place, bay, Length.ZERO, cabinet.inside().deep());
  }

  private boolean stands(Place place, Bay bay, Length top, Length deep) {
    return is(place, Place.Kind.SHELF, 0)
        && isInside(place)
        && place.upright().least().equals(top)
        && place.deep().most().isAtMost(deep)
        && within(bay.across(), place.across());
  }

  /**
   * @param each what one hook carries; 0 where there are none
   */
  private boolean is(Place place, Place.Kind kind, int each) {
    return place.kind() == kind
        && place.mostGramsEach().isPresent() == kind.isHung()
        && place.mostGramsEach().orElse(0) <= each
        && place.sealed() == (kind == Place.Kind.BOX)
        && (!place.dry() || cabinet.dry() || kind == Place.Kind.WALL);
  }

  private boolean isInside(Place place) {
    return cabinet.room().holds(room(place));
  }

  private static Block room(Place place) {
    return new Block(place.across(), place.upright(), place.deep());
  }

  private static boolean isNoLarger(Place place, Size inner) {
    return place.across().extent().isAtMost(inner.wide())
        && place.upright().extent().isAtMost(inner.high())
        && place.deep().extent().isAtMost(inner.deep());
  }

  private Bay bay(int number) {
    return cabinet.bay(number).orElseThrow();
  }

  private static boolean within(Band outer, Band inner) {
    return outer.contains(inner.least()) && outer.contains(inner.most());
  }
}
