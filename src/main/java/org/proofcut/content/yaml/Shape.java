package org.proofcut.content.yaml;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.AtLeastOne;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;

/** The keys that a mapping may have, read off a record's components in their order. */
record Shape(String name, List<Slot> slots) {

  /** The component that takes the key under which a record stands in a map. */
  private static final String ID = "id";

  private static final ClassValue<Shape> OF_RECORDS =
      new ClassValue<>() {
        @Override
        protected Shape computeValue(Class<?> type) {
          return new Shape(
              type.getSimpleName(),
              Arrays.stream(type.getRecordComponents()).map(Slot::of).toList());
        }
      };

  /**
   * One key.
   *
   * @param mayBeMissing an optional value, or a list that may be empty
   */
  record Slot(String key, Type type, boolean mayBeMissing, boolean atLeastOne) {

    static Slot of(RecordComponent component) {
      var atLeastOne = component.isAnnotationPresent(AtLeastOne.class);
      var raw = component.getType();
      var mayBeMissing = raw == Optional.class || (isMany(raw) && !atLeastOne);
      return new Slot(
          kebab(component.getName()), component.getGenericType(), mayBeMissing, atLeastOne);
    }

    /** What stands in the record when the key is left out. */
    Object whenMissing() {
      var raw = raw(type);
      return raw == Optional.class ? Optional.empty() : raw == Map.class ? Map.of() : List.of();
    }
  }

  static Shape of(Class<?> type) {
    return OF_RECORDS.get(type);
  }

  /** A limit with its reason: a value that was given, and where it is written. */
  static Shape ofWorked(Type value) {
    return new Shape(
        Worked.class.getSimpleName(),
        List.of(
            new Slot("name", String.class, false, false),
            new Slot("value", value, false, false),
            new Slot("because", Citation.class, false, false)));
  }

  /** The same without {@code id}, which the key above it says. */
  Shape underItsId() {
    return new Shape(name, slots.stream().filter(slot -> !slot.key.equals(ID)).toList());
  }

  boolean hasId() {
    return !slots.isEmpty() && slots.get(0).key.equals(ID);
  }

  Optional<Slot> slot(String key) {
    return slots.stream().filter(slot -> slot.key.equals(key)).findFirst();
  }

  List<String> keys() {
    return slots.stream().map(Slot::key).toList();
  }

  /**
   * As content writes it: {@code appliesTo} and {@code WORK_PRACTICE} in small letters, hyphened.
   */
  static String kebab(String javaName) {
    var words = new ArrayList<String>();
    for (var word : javaName.split("_|(?<=[a-z0-9])(?=[A-Z])")) {
      words.add(word.toLowerCase(Locale.ROOT));
    }
    return String.join("-", words);
  }

  static Class<?> raw(Type type) {
    return type instanceof ParameterizedType generic
        ? (Class<?>) generic.getRawType()
        : (Class<?>) type;
  }

  static Type argument(Type type, int index) {
    return ((ParameterizedType) type).getActualTypeArguments()[index];
  }

  private static boolean isMany(Class<?> raw) {
    return raw == List.class || raw == Map.class;
  }
}
