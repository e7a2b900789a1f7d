package org.proofcut.bench;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A piece that somebody has, as pages say it.
 *
 * @param thing id of the piece
 * @param name of the piece, to begin a line with
 * @param who has it
 * @param says who has it and since when: {@code with Ash, since yesterday}
 * @param stillOut whether it has been out since an earlier day
 * @param place where it belongs; empty where it has no place yet
 */
public record OutOfPlace(
    String thing, String name, String who, String says, boolean stillOut, String place) {

  static OutOfPlace of(StoredThing one, LocalDate today) {
    var out = one.out().orElseThrow();
    var name = one.thing().name();
    return new OutOfPlace(
        one.thing().id(),
        name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1),
        out.who(),
        out.words(today),
        out.isFromBefore(today),
        one.home().map(StoredThing.Home::words).orElse(""));
  }

  /** Who has each of these, and since when, by the ids of the pieces. */
  public static Map<String, String> inWords(List<OutOfPlace> all) {
    return all.stream().collect(Collectors.toMap(OutOfPlace::thing, OutOfPlace::says));
  }

  /** An id for the act that puts it back. */
  public String entry() {
    return WorkBench.newEntryId();
  }
}
