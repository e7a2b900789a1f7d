package org.proofcut.logbook;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.module.SimpleModule;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Angle;
import org.proofcut.core.measure.AngleFormatException;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthFormatException;
import org.proofcut.core.safety.Finding.Seen;

/** How those types of the core are written that are more than the sum of their components. */
final class CoreTypes extends SimpleModule {

  private static final long serialVersionUID = 1L;

  /** A fact that a rule looked at. */
  private record KeptSeen(String name, TaggedValue value, Optional<String> own) {}

  /**
   * A working. The same one often stands behind several figures; it is written where it comes
   * first, and its number alone afterwards.
   *
   * @param number within the document
   */
  private record KeptWorking(
      int number,
      String name,
      String formula,
      List<Worked.Input> inputs,
      TaggedValue value,
      Citation source) {}

  CoreTypes() {
    super("core types");
    add(Length.class, CoreTypes::writeLength, CoreTypes::readLength);
    add(Angle.class, CoreTypes::writeAngle, CoreTypes::readAngle);
    add(Instant.class, CoreTypes::writeMoment, CoreTypes::readMoment);
    add(LocalDate.class, CoreTypes::writeDay, CoreTypes::readDay);
    add(TaggedValue.class, TaggedValue::write, TaggedValue::read);
    add(Seen.class, CoreTypes::writeSeen, CoreTypes::readSeen);
    add(Worked.class, CoreTypes::writeWorking, CoreTypes::readWorking);
  }

  private static void writeLength(Length length, JsonGenerator to, SerializerProvider writer)
      throws IOException {
    to.writeString(length.toString());
  }

  private static Length readLength(JsonParser from, DeserializationContext reader)
      throws IOException {
    var text = reader.readValue(from, String.class);
    try {
      return Length.of(text);
    } catch (LengthFormatException e) {
      return (Length) reader.handleWeirdStringValue(Length.class, text, "%s", e.getMessage());
    }
  }

  private static void writeAngle(Angle angle, JsonGenerator to, SerializerProvider writer)
      throws IOException {
    to.writeString(angle.toString());
  }

  private static Angle readAngle(JsonParser from, DeserializationContext reader)
      throws IOException {
    var text = reader.readValue(from, String.class);
    try {
      return Angle.parse(text);
    } catch (AngleFormatException e) {
      return (Angle) reader.handleWeirdStringValue(Angle.class, text, "%s", e.getMessage());
    }
  }

  private static void writeMoment(Instant moment, JsonGenerator to, SerializerProvider writer)
      throws IOException {
    to.writeString(KeptTime.write(moment));
  }

  private static Instant readMoment(JsonParser from, DeserializationContext reader)
      throws IOException {
    var text = reader.readValue(from, String.class);
    try {
      return KeptTime.read(text);
    } catch (DateTimeException e) {
      return (Instant) reader.handleWeirdStringValue(Instant.class, text, "%s", e.getMessage());
    }
  }

  private static void writeDay(LocalDate day, JsonGenerator to, SerializerProvider writer)
      throws IOException {
    to.writeString(day.toString());
  }

  private static LocalDate readDay(JsonParser from, DeserializationContext reader)
      throws IOException {
    var text = reader.readValue(from, String.class);
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException e) {
      return (LocalDate) reader.handleWeirdStringValue(LocalDate.class, text, "%s", e.getMessage());
    }
  }

  private static void writeSeen(Seen seen, JsonGenerator to, SerializerProvider writer)
      throws IOException {
    writer.defaultSerializeValue(
        new KeptSeen(seen.name(), new TaggedValue(seen.value()), seen.own()), to);
  }

  private static Seen readSeen(JsonParser from, DeserializationContext reader) throws IOException {
    var kept = reader.readValue(from, KeptSeen.class);
    return new Seen(kept.name, kept.value.value(), kept.own);
  }

  private static void writeWorking(Worked<?> working, JsonGenerator to, SerializerProvider writer)
      throws IOException {
    Map<Worked<?>, Integer> written = numbersWritten(writer);
    var number = written.get(working);
    if (number != null) {
      to.writeNumber(number);
      return;
    }
    written.put(working, written.size() + 1);
    writer.defaultSerializeValue(
        new KeptWorking(
            written.get(working),
            working.name(),
            working.formula(),
            working.inputs(),
            new TaggedValue(working.value()),
            working.source()),
        to);
  }

  private static Worked<?> readWorking(JsonParser from, DeserializationContext reader)
      throws IOException {
    Map<Integer, Worked<?>> read = workingsRead(reader);
    if (from.currentToken() == JsonToken.VALUE_NUMBER_INT) {
      var again = read.get(from.getIntValue());
      return again != null
          ? again
          : reader.reportInputMismatch(
              Worked.class, "no working before this has the number %s", from.getText());
    }
    var kept = reader.readValue(from, KeptWorking.class);
    var working =
        new Worked<>(kept.name, kept.formula, kept.inputs, kept.value.value(), kept.source);
    read.put(kept.number, working);
    return working;
  }

  @SuppressWarnings("unchecked") // Nothing else is kept under this key.
  private static Map<Worked<?>, Integer> numbersWritten(SerializerProvider writer) {
    if (writer.getAttribute(Worked.class) == null) {
      // By identity: to compare workings is to walk all that stands behind them, time and again.
      writer.setAttribute(Worked.class, new IdentityHashMap<Worked<?>, Integer>());
    }
    return (Map<Worked<?>, Integer>) writer.getAttribute(Worked.class);
  }

  @SuppressWarnings("unchecked") // Nothing else is kept under this key.
  private static Map<Integer, Worked<?>> workingsRead(DeserializationContext reader) {
    if (reader.getAttribute(Worked.class) == null) {
      reader.setAttribute(Worked.class, new HashMap<Integer, Worked<?>>());
    }
    return (Map<Integer, Worked<?>>) reader.getAttribute(Worked.class);
  }

  private <T> void add(Class<T> type, Writing<? super T> writing, Reading<? extends T> reading) {
    addSerializer(
        type,
        new JsonSerializer<T>() {
          @Override
          public void serialize(T value, JsonGenerator to, SerializerProvider writer)
              throws IOException {
            writing.write(value, to, writer);
          }
        });
    addDeserializer(
        type,
        new JsonDeserializer<T>() {
          @Override
          public T deserialize(JsonParser from, DeserializationContext reader) throws IOException {
            return reading.read(from, reader);
          }
        });
  }

  private interface Writing<T> {
    void write(T value, JsonGenerator to, SerializerProvider writer) throws IOException;
  }

  private interface Reading<T> {
    T read(JsonParser from, DeserializationContext reader) throws IOException;
  }
}
