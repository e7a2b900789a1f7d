package org.proofcut.bench;

import java.util.List;
import java.util.Optional;
import org.proofcut.core.storage.Out;
import org.proofcut.core.storage.Thing;

/**
 * A thing of the shop that wants a place, or has one.
 *
 * @param thing its id is that of the shop's item
 * @param assumed what was taken from its kind because it is not known: "width", "weight", "kind of
 *     thing"; empty where all was entered
 * @param warnings what is to be mended, in sentences: nobody of that name
 * @param cabinet id of the cabinet that it is to be kept in; empty while there is none
 * @param home where it lives; empty where no plan with it was taken
 * @param pin where it is to stay; empty where it may go anywhere
 * @param out who has it now, and since when; empty where it is in its place
 * @param idle why it is not used today: out of use, or its day has passed
 */
public record StoredThing(
    Thing thing,
    List<String> assumed,
    List<String> warnings,
    Optional<String> cabinet,
    Optional<Home> home,
    Optional<Pin> pin,
    Optional<Out> out,
    Optional<String> idle) {

  /**
   * Where a thing lives.
   *
   * @param words as prompts say it: "Gear cabinet: bay 1, hooks"
   */
  public record Home(String cabinet, String place, String words) {}

  /** Where a thing is to stay. */
  public record Pin(String cabinet, String place) {}

  public StoredThing {
    assumed = List.copyOf(assumed);
    warnings = List.copyOf(warnings);
  }

  /** Who has it now; empty where it is in its place. */
  public Optional<String> with() {
    return out.map(Out::who);
  }
}
