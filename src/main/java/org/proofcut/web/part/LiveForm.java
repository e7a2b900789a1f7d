package org.proofcut.web.part;

import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A form whose answer follows while it is typed. What was typed stands in the address of the page:
 * it outlives a reload and a restart, and can be kept as a bookmark; nothing is stored.
 */
public final class LiveForm {

  private LiveForm() {}

  /** What stands in an address, by name of the field. */
  public static Map<String, String> typed(UriInfo address) {
    var query = address.getRequestUri().getRawQuery();
    return Sent.typed(query == null ? "" : query);
  }

  /**
   * What changes on a page with what was typed; the browser then shows the page's own address.
   *
   * @param page address of the page, without what was typed
   * @param address that the answer was asked for at, with what was typed
   */
  public static Response answer(TemplateInstance changed, String page, UriInfo address) {
    var query = address.getRequestUri().getRawQuery();
    return Response.ok(changed)
        .header("HX-Replace-Url", page + (query == null ? "" : "?" + query))
        .build();
  }

  /** Address of a page with its fields filled in. */
  public static String address(String page, Map<String, String> typed) {
    return typed.entrySet().stream()
        .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
        .collect(Collectors.joining("&", page + "?", ""));
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
