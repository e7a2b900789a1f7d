package org.proofcut.broken.logbook;

import java.util.ArrayList;
import java.util.List;

public final class Log {

  private final List<Entry> entries = new ArrayList<>();

  List<Entry> all() {
    return entries;
  }

  void add(Entry entry) {
    entries.add(entry);
  }

  public int size() {
    return entries.size();
  }
}
