package org.proofcut.core.storage;

import org.proofcut.core.measure.Length;

/** What a cabinet is fitted out with. Heights count from the inner face of its bottom. */
public sealed interface Fitting {

  /** What the bottom is taken to carry: it is held on all sides (our own choice). */
  int BOTTOM_GRAMS = 50_000;

  /** What is reckoned for a row of hooks that is only thought of (our own choice). */
  int RAIL_GRAMS = 8_000;

  /** And for each of its hooks (our own choice). */
  int HOOK_GRAMS = 5_000;

  /** How deep a thing on a door may be where its hooks are only thought of (our own choice). */
  Length DOOR_RAIL_DEEPEST = Length.ofMillimetres(120);

  String id();

  /** How its places are called beside the bay or door: "shelf 2". */
  String name();

  /** What it carries, in grams. */
  int mostGrams();

  /**
   * A shelf.
   *
   * @param bay number of the bay, from 1
   * @param top height of the face that things stand on
   * @param deep from the back to its front edge
   */
  record Shelf(
      String id, String name, int bay, Length top, Length thickness, Length deep, int mostGrams)
      implements Fitting {}

  /**
   * A row of hooks on the back.
   *
   * @param at height that things hang from
   * @param eachGrams what one hook carries
   */
  record Rail(String id, String name, int bay, Length at, int mostGrams, int eachGrams)
      implements Fitting {}

  /**
   * A drawer.
   *
   * @param bottom height of its lowest edge
   * @param high of its front
   * @param inner clear sizes inside
   */
  record Drawer(
      String id, String name, int bay, Length bottom, Length high, Size inner, int mostGrams)
      implements Fitting {}

  /**
   * A box with a lid, on the right end of a shelf.
   *
   * @param on id of the shelf; empty text for the bottom
   * @param outer sizes outside
   * @param inner clear sizes inside
   */
  record LidBox(String id, String name, int bay, String on, Size outer, Size inner, int mostGrams)
      implements Fitting {}

  /**
   * A row of hooks on the back of a door.
   *
   * @param door number of the door, from 1
   * @param deepest that may hang there
   */
  record DoorRail(
      String id, String name, int door, Length at, Length deepest, int mostGrams, int eachGrams)
      implements Fitting {}

  /**
   * A place in sight, on the wall or on the outside of the cabinet.
   *
   * @param at height above the floor that things hang from
   * @param wide that is free
   * @param drop that is free below it
   * @param deep that is free before it
   */
  record Wall(
      String id,
      String name,
      Length at,
      Length wide,
      Length drop,
      Length deep,
      int mostGrams,
      int eachGrams)
      implements Fitting {}
}
