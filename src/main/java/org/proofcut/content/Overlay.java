package org.proofcut.content;

import java.util.List;

/**
 * What came of laying a shop's own content over ours.
 *
 * @param loaded all of it together, or what is wrong with it
 * @param files the shop's files, by their paths below its folder
 * @param changes what they change in ours
 */
public record Overlay(Loaded loaded, List<String> files, List<Change> changes) {

  public Overlay {
    files = List.copyOf(files);
    changes = List.copyOf(changes);
  }
}
