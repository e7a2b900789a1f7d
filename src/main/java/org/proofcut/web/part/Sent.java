package org.proofcut.web.part;

import jakarta.ws.rs.core.MultivaluedMap;
import java.util.LinkedHashMap;
import java.util.Map;

/** What a form sent. */
public final class Sent {

  private Sent() {}

  /** By name of the field; of a field sent twice the first, as the page has each only once. */
  public static Map<String, String> typed(MultivaluedMap<String, String> form) {
    var typed = new LinkedHashMap<String, String>();
    if (form != null) {
      form.forEach((name, values) -> typed.put(name, values.isEmpty() ? "" : values.get(0)));
    }
    return typed;
  }
}
