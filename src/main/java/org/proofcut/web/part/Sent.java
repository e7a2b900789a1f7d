package org.proofcut.web.part;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a form sent, in the encoding that forms have (WHATWG URL Standard, {@code
 * application/x-www-form-urlencoded}). Read here because whatever is sent must come back as a
 * message at its field: the framework's own reader fails on some of it.
 */
public final class Sent {

  private Sent() {}

  /** By name of the field; of a field sent twice the first, as a page has each only once. */
  public static Map<String, String> typed(String body) {
    var typed = new LinkedHashMap<String, String>();
    for (var pair : body.split("&")) {
      int equals = pair.indexOf('=');
      var name = decoded(equals < 0 ? pair : pair.substring(0, equals));
      if (!name.isEmpty()) {
        typed.putIfAbsent(name, equals < 0 ? "" : decoded(pair.substring(equals + 1)));
      }
    }
    return typed;
  }

  private static String decoded(String text) {
    try {
      return URLDecoder.decode(text, StandardCharsets.UTF_8);
    } catch (IllegalArgumentException percentThatMeansNothing) {
      return text;
    }
  }
}
