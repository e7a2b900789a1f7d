package org.proofcut.logbook;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import com.fasterxml.jackson.annotation.PropertyAccessor;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.AnnotationIntrospector;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.introspect.JacksonAnnotationIntrospector;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.proofcut.core.evidence.Problem;

/**
 * Values of the core as versioned text, in JSON, and back: {@code {"version":1,"content":…}}. What
 * is read equals what was written, or it is not read at all: nothing unknown is skipped, nothing
 * missing is made up; what is optional and missing is empty.
 *
 * @param <T> what is written
 */
final class Written<T> {

  /** To be raised when a change of the core's records makes what was written unreadable. */
  static final int VERSION = 1;

  private static final ObjectMapper JSON =
      JsonMapper.builder()
          .addModules(new Jdk8Module(), new CoreTypes())
          .annotationIntrospector(
              AnnotationIntrospector.pair(new SealedTypes(), new JacksonAnnotationIntrospector()))
          // The components of a record are what it is; its other methods are worked out of them.
          .visibility(PropertyAccessor.FIELD, Visibility.ANY)
          .visibility(PropertyAccessor.GETTER, Visibility.NONE)
          .visibility(PropertyAccessor.IS_GETTER, Visibility.NONE)
          .disable(SerializationFeature.FAIL_ON_EMPTY_BEANS)
          .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          // What is missing would be null, but what is optional is then empty: so a record can gain
          // an optional component without a new version.
          .enable(
              DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES,
              DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES,
              DeserializationFeature.FAIL_ON_NUMBERS_FOR_ENUMS,
              DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private record Versioned<T>(int version, T content) {}

  private final JavaType versioned;

  Written(Class<T> type) {
    versioned = JSON.getTypeFactory().constructParametricType(Versioned.class, type);
  }

  String write(T value) {
    try {
      return JSON.writerFor(versioned).writeValueAsString(new Versioned<>(VERSION, value));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("can't be written: " + e.getOriginalMessage(), e);
    }
  }

  /**
   * Reads what {@link #write} wrote.
   *
   * @param where what it is and to which job it belongs, in words
   * @throws UnreadableException if it is of another version, or damaged
   */
  T read(String json, String where) {
    try {
      int version = version(json);
      if (version != VERSION) {
        throw unreadable(where, "it was written as version " + version, null);
      }
      Versioned<T> read = JSON.readValue(json, versioned);
      return read.content;
    } catch (JsonProcessingException e) {
      var place =
          e.getLocation() == null ? "" : " near character " + e.getLocation().getCharOffset();
      throw unreadable(where, "it is damaged" + place, e);
    }
  }

  /** The version stands first, so that it is known before anything else is tried. */
  private static int version(String json) throws JsonProcessingException {
    try (var tokens = JSON.createParser(json)) {
      if (tokens.nextToken() == JsonToken.START_OBJECT
          && "version".equals(tokens.nextFieldName())
          && tokens.nextToken() == JsonToken.VALUE_NUMBER_INT) {
        return tokens.getIntValue();
      }
      throw new JsonParseException(tokens, "does not begin with a version");
    } catch (JsonProcessingException e) {
      throw e;
    } catch (IOException e) {
      throw new UncheckedIOException("text in memory can't fail to be read", e);
    }
  }

  private static UnreadableException unreadable(String where, String what, Throwable cause) {
    return new UnreadableException(
        Problem.stops(
            where,
            what,
            "version " + VERSION + ", unchanged since it was written",
            "It is kept as it is: open it with the version of the program that wrote it, or put"
                + " back a copy of the logbook"),
        cause);
  }
}
