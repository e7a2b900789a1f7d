package org.proofcut.content;

import java.util.List;

/**
 * A folder of limits and the record that a room takes them as.
 *
 * <p>Each component of the record is one limit: {@code Worked<Length>}, {@code Worked<Integer>}, or
 * {@code Worked} of a list of records. The files of the folder may share them out as they like.
 *
 * @param path below the content folder, such as {@code setup/limits}
 */
record LimitFolder(String path, Class<? extends Record> type) {

  /** The rooms that take their limits from content; one line each. */
  static final List<LimitFolder> ALL = List.of();
}
