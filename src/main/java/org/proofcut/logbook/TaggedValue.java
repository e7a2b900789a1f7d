package org.proofcut.logbook;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.SerializerProvider;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.Band;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.RimSpeed;
import org.proofcut.core.setup.SpeedBand;

/**
 * A value whose type only itself knows, written with it: {@code {"Length": "18.25 mm"}}. The types
 * are a closed list, so that nothing is kept that can't be read back.
 */
record TaggedValue(Object value) {

  private static final String LIST = "List";

  private static final Map<String, Class<?>> KINDS =
      Stream.<Class<?>>of(
              Length.class,
              Band.class,
              Amount.class,
              SpeedBand.class,
              RimSpeed.class,
              Angle.class,
              Integer.class,
              Long.class,
              BigDecimal.class,
              Boolean.class,
              String.class)
          .collect(Collectors.toUnmodifiableMap(Class::getSimpleName, Function.identity()));

  void write(JsonGenerator to, SerializerProvider writer) throws IOException {
    to.writeStartObject();
    if (value instanceof List<?> list) {
      to.writeArrayFieldStart(LIST);
      for (var each : list) {
        new TaggedValue(each).write(to, writer);
      }
      to.writeEndArray();
    } else {
      var kind = value.getClass().getSimpleName();
      if (KINDS.get(kind) != value.getClass()) {
        writer.reportMappingProblem("a %s can't be kept: add it to TaggedValue", value.getClass());
      }
      to.writeFieldName(kind);
      writer.defaultSerializeValue(value, to);
    }
    to.writeEndObject();
  }

  /**
   * Reads what {@link #write} wrote; the parser stands at its first token, and then at its last.
   */
  static TaggedValue read(JsonParser from, DeserializationContext reader) throws IOException {
    expect(JsonToken.START_OBJECT, from.currentToken(), reader);
    expect(JsonToken.FIELD_NAME, from.nextToken(), reader);
    var kind = from.currentName();
    var first = from.nextToken();
    Object value;
    if (kind.equals(LIST)) {
      expect(JsonToken.START_ARRAY, first, reader);
      var list = new ArrayList<>();
      while (from.nextToken() != JsonToken.END_ARRAY) {
        list.add(read(from, reader).value);
      }
      value = List.copyOf(list);
    } else if (KINDS.containsKey(kind)) {
      value = reader.readValue(from, KINDS.get(kind));
    } else {
      value = reader.reportInputMismatch(Object.class, "a value of the unknown kind %s", kind);
    }
    expect(JsonToken.END_OBJECT, from.nextToken(), reader);
    return new TaggedValue(value);
  }

  private static void expect(JsonToken wanted, JsonToken found, DeserializationContext reader)
      throws IOException {
    if (found != wanted) {
      reader.reportInputMismatch(Object.class, "a value should go on with %s", wanted);
    }
  }
}
