package org.proofcut.logbook;

import java.util.Map;

/** What was typed into a form, as versioned text. */
record Typed(Map<String, String> fields) {

  private static final Written<Typed> WRITTEN = new Written<>(Typed.class);

  static String write(Map<String, String> fields) {
    return WRITTEN.write(new Typed(fields));
  }

  static Map<String, String> read(String kept, String where) {
    return WRITTEN.read(kept, where).fields;
  }
}
