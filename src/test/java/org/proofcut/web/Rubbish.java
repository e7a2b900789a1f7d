package org.proofcut.web;

import io.restassured.RestAssured;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpClient.Version;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What people and machines type where something else was asked. */
public final class Rubbish {

  /** Half of a pair of UTF-16, which no text may end with. */
  private static final String HALF_A_LETTER = "\ud800";

  public static final List<String> ALL =
      List.of(
          "abc",
          "-5",
          "0",
          "1e9",
          "",
          "   ",
          "<script>alert(1)</script>",
          "\"><img src=x onerror=alert(1)>",
          "x".repeat(10_000),
          "9".repeat(10_000),
          "1,234.5",
          "\u0000\u0007",
          HALF_A_LETTER,
          "{name}",
          "NaN");

  /** As browsers speak to a service without a certificate. */
  private static final HttpClient CLIENT =
      HttpClient.newBuilder().version(Version.HTTP_1_1).build();

  private Rubbish() {}

  /** What came back: status, page, and where a redirect leads. */
  public record Answer(int statusCode, String asString, String location) {}

  /** Sends a form as a browser would; half a letter goes as the three bytes that some send. */
  public static Answer post(String to, Map<String, String> typed) {
    return postRaw(to, query(typed));
  }

  /** Fields as they stand in the body of a form, or behind the question mark of an address. */
  public static String query(Map<String, String> typed) {
    return typed.entrySet().stream()
        .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
        .collect(Collectors.joining("&"));
  }

  /** Opens a page at this very address, whatever characters it is made of. */
  public static Answer fetch(String address) {
    return answer(HttpRequest.newBuilder(at(address)).build());
  }

  /** Sends these very characters as a form, whatever they are. */
  public static Answer postRaw(String to, String body) {
    return answer(
        HttpRequest.newBuilder(at(to))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(BodyPublishers.ofString(body))
            .build());
  }

  private static URI at(String address) {
    return URI.create(RestAssured.baseURI + ":" + RestAssured.port + address);
  }

  private static Answer answer(HttpRequest request) {
    try {
      var answer = CLIENT.send(request, BodyHandlers.ofString());
      return new Answer(
          answer.statusCode(), answer.body(), answer.headers().firstValue("Location").orElse(""));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String encoded(String text) {
    return text.equals(HALF_A_LETTER)
        ? "%ED%A0%80"
        : URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  /** What the server reads: bytes that are no letter come as the mark for "unreadable". */
  public static String asReceived(String text) {
    return text.equals(HALF_A_LETTER) ? "\ufffd" : text;
  }

  /** As text stands in an attribute. */
  public static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }

  /** The same fields with one of them typed otherwise. */
  public static Map<String, String> with(Map<String, String> typed, String field, String text) {
    var changed = new LinkedHashMap<>(typed);
    changed.put(field, text);
    return changed;
  }
}
