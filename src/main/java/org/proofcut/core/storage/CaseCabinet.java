package org.proofcut.core.storage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.proofcut.core.casework.Case;
import org.proofcut.core.casework.Seated;
import org.proofcut.core.casework.Seated.Block;
import org.proofcut.core.casework.SpaceCheck;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.part.PartRole;

/**
 * The inside of a case of a job as a cabinet for gear, with the shelves that it is designed with. A
 * door lies on its front edges.
 */
public final class CaseCabinet {

  private final Map<String, Block> inner;
  private final Length floor;

  private CaseCabinet(Case sound) {
    inner =
        SpaceCheck.seated(sound).stream()
            .collect(Collectors.toMap(seated -> seated.part().id(), CaseCabinet::widest));
    floor = inner.get("bottom").high().most();
  }

  /**
   * The cabinet that a case makes, before doors and hooks.
   *
   * @param sound a case without a problem that stops
   * @param shelfGrams what each shelf carries
   */
  public static Cabinet of(Case sound, String id, String name, int shelfGrams) {
    return new CaseCabinet(sound).cabinet(sound, id, name, shelfGrams);
  }

  /** Of a part with its housings cut, the block that reaches farthest into the room. */
  private static Block widest(Seated seated) {
    return seated.blocks().stream()
        .reduce(
            (one, other) ->
                new Block(
                    around(one.across(), other.across()),
                    around(one.deep(), other.deep()),
                    around(one.high(), other.high())))
        .orElseThrow();
  }

  private static Band around(Band one, Band other) {
    return new Band(one.least().min(other.least()), one.most().max(other.most()));
  }

  private Cabinet cabinet(Case sound, String id, String name, int shelfGrams) {
    var across =
        new Band(inner.get("left-side").across().most(), inner.get("right-side").across().least());
    var deep = inner.get("back").deep().least();
    var inside = new Size(across.extent(), inner.get("top").high().least().minus(floor), deep);
    var shelves = new ArrayList<Fitting>();
    for (var part : sound.parts()) {
      if (part.role() == PartRole.SHELF) {
        shelves.add(shelf(part.id(), part.name(), deep, shelfGrams));
      }
    }
    return new Cabinet(
        id,
        name,
        inside,
        floor,
        Length.ZERO,
        inner.get("back").deep().extent(),
        inner.get("left-side").across().extent(),
        deep,
        true,
        List.of(new Bay(1, new Band(Length.ZERO, inside.wide()))),
        List.of(),
        shelves);
  }

  /** Shelves end at the back, wherever their front edges are. */
  private Fitting shelf(String id, String name, Length deep, int grams) {
    var block = inner.get(id);
    return new Fitting.Shelf(
        id,
        name,
        1,
        block.high().most().minus(floor),
        block.high().extent(),
        deep.minus(block.deep().least()),
        grams);
  }
}
