package org.proofcut.web.api;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.intake.Field;

/**
 * The JSON object that was sent, read field by field, so that everything wrong with it is told at
 * once. What can't be read comes back as an empty stand-in; {@link #check} then ends the request.
 */
final class Body {

  /** Longest body: a job with every field filled is a tenth of it. */
  static final int MOST_BYTES = 65_536;

  /** Where forms stand in what is sent. */
  private static final String TYPED = "typed";

  private static final int DEEPEST = 8;
  private static final int LONGEST_NUMBER = 40;
  private static final String ANY_TEXT = "text of up to %d characters on one line";

  private static final ObjectReader READER =
      JsonMapper.builder(
              JsonFactory.builder()
                  .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                  .streamReadConstraints(
                      StreamReadConstraints.builder()
                          .maxNestingDepth(DEEPEST)
                          .maxNumberLength(LONGEST_NUMBER)
                          .build())
                  .build())
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build()
          .reader();

  private final JsonNode node;
  private final String place;
  private final List<Problem> problems;

  private Body(JsonNode node, String place, List<Problem> problems) {
    this.node = node;
    this.place = place;
    this.problems = problems;
  }

  /** The body of a request; ends the request where it is no JSON object. */
  static Body of(byte[] sent) {
    if (sent != null && sent.length > MOST_BYTES) {
      throw ProblemDetail.refusal(
          ProblemKind.TOO_LARGE,
          Problem.stops(
              "body",
              "That is " + sent.length + " bytes",
              "up to " + MOST_BYTES + " bytes",
              "Send only the fields that are asked for"));
    }
    try {
      // From text, not from bytes: the parser would take other encodings for what they are not.
      var node =
          READER.readTree(new String(sent == null ? new byte[0] : sent, StandardCharsets.UTF_8));
      if (node == null || !node.isObject()) {
        throw notJson("line 1, column 1", "That is no JSON object");
      }
      return new Body(node, "", new ArrayList<>());
    } catch (StreamConstraintsException e) {
      throw notJson(
          place(e), "It is nested more than " + DEEPEST + " deep, or has a number too long");
    } catch (JsonProcessingException e) {
      throw notJson(place(e), "From here on it is no JSON, or has a field twice");
    }
  }

  private static RuntimeException notJson(String where, String what) {
    return ProblemDetail.refusal(
        ProblemKind.NOT_JSON,
        Problem.stops(where, what, "one JSON object in UTF-8", "Mend it at this place"));
  }

  private static String place(JsonProcessingException e) {
    var at = e.getLocation();
    return at == null ? "body" : "line " + at.getLineNr() + ", column " + at.getColumnNr();
  }

  /**
   * A form as a person typed it, which is all that was sent; ends the request where something is
   * wrong with that.
   *
   * @param fields that the form asks for
   * @param beside names of fields that it takes as well
   */
  static Map<String, String> form(byte[] sent, List<Field> fields, String... beside) {
    var body = of(sent).only(TYPED);
    var typed = body.typed(TYPED, names(fields, beside));
    body.check();
    return typed;
  }

  /** Names of the fields of a form, and those beside them. */
  static Set<String> names(List<Field> fields, String... beside) {
    return Stream.concat(fields.stream().map(Field::name), Stream.of(beside))
        .collect(Collectors.toUnmodifiableSet());
  }

  /** Only these fields may be there. */
  Body only(String... allowed) {
    var known = Set.of(allowed);
    node.fieldNames()
        .forEachRemaining(
            name -> {
              if (!known.contains(name)) {
                wrong(
                    at(shortened(name)),
                    "There is no such field",
                    String.join(", ", allowed),
                    "Leave it out");
              }
            });
    return this;
  }

  boolean has(String field) {
    return node.has(field);
  }

  /** A text on one line; may not be left out or empty. */
  String text(String field, int longest) {
    var allowed = ANY_TEXT.formatted(longest);
    var value = node.get(field);
    if (value == null || !value.isTextual() || value.textValue().isBlank()) {
      wrong(at(field), "Nothing was sent as text", allowed, "Send it as text");
    } else if (isText(at(field), value.textValue(), longest)) {
      return value.textValue();
    }
    return "";
  }

  /** One of these words. */
  String word(String field, Set<String> words) {
    var value = node.get(field);
    if (value != null && value.isTextual() && words.contains(value.textValue())) {
      return value.textValue();
    }
    wrong(
        at(field),
        value == null ? "Nothing was sent" : shortened(value.toString()) + " is none of them",
        String.join(", ", words.stream().sorted().toList()),
        "Send one of these");
    return "";
  }

  /** A whole number from 1 to 1000. */
  int count(String field) {
    var value = node.get(field);
    if (value != null && value.isInt() && value.intValue() >= 1 && value.intValue() <= 1000) {
      return value.intValue();
    }
    wrong(at(field), "That is no count", "a whole number from 1 to 1000", "Send the number");
    return 1;
  }

  /** Fields as a person typed them, each a text; empty where the object is left out. */
  Map<String, String> typed(String field, Set<String> known) {
    var typed = new LinkedHashMap<String, String>();
    var value = node.get(field);
    if (value == null || !value.isObject()) {
      wrong(
          at(field),
          "Nothing was sent as an object",
          "an object of fields, each a text",
          "Send what was typed, such as {\"width\": \"620 mm\"}");
      return typed;
    }
    for (var one : value.properties()) {
      var where = at(field) + "." + shortened(one.getKey());
      if (!known.contains(one.getKey())) {
        wrong(
            where,
            "There is no such field",
            "the fields that the form lists",
            "Look at the form, or leave it out");
      } else if (!one.getValue().isTextual()) {
        wrong(where, "That is no text", "text, such as \"18.25 mm\"", "Send it as text");
      } else if (isText(where, one.getValue().textValue(), MOST_BYTES)) {
        typed.put(one.getKey(), one.getValue().textValue());
      }
    }
    return typed;
  }

  /** An object within this one. */
  Body object(String field) {
    var value = node.get(field);
    if (value == null || !value.isObject()) {
      wrong(at(field), "Nothing was sent as an object", "an object", "Send an object");
      return new Body(READER.createObjectNode(), at(field), new ArrayList<>());
    }
    return new Body(value, at(field), problems);
  }

  void wrong(String where, String what, String allowed, String doThis) {
    problems.add(Problem.stops(where, what, allowed, doThis));
  }

  /** Ends the request if anything was wrong so far. */
  void check() {
    if (!problems.isEmpty()) {
      throw ProblemDetail.refusal(ProblemKind.FIELDS, problems);
    }
  }

  String at(String field) {
    return place.isEmpty() ? field : place + "." + field;
  }

  private boolean isText(String where, String text, int longest) {
    if (text.length() > longest) {
      wrong(
          where,
          "That is " + text.length() + " characters long",
          ANY_TEXT.formatted(longest),
          "Send it shorter");
    } else if (text.codePoints().anyMatch(Body::cannotBeShown)) {
      wrong(
          where,
          "There are characters in it that can't be shown",
          ANY_TEXT.formatted(longest),
          "Send it without them");
    } else {
      return true;
    }
    return false;
  }

  /** Half of a pair is no character: it could be kept, and would come back as another one. */
  private static boolean cannotBeShown(int codePoint) {
    return Character.isISOControl(codePoint)
        || codePoint >= Character.MIN_SURROGATE && codePoint <= Character.MAX_SURROGATE;
  }

  /** For a message: short, and without characters that can't be shown. */
  private static String shortened(String text) {
    var shown = new StringBuilder();
    text.codePoints()
        .limit(24)
        .forEach(point -> shown.appendCodePoint(cannotBeShown(point) ? '\ufffd' : point));
    return text.codePointCount(0, text.length()) > 24 ? shown + "…" : shown.toString();
  }
}
