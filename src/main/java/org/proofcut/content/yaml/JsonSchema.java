package org.proofcut.content.yaml;

import java.lang.reflect.Type;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Worked;

/**
 * Says what a {@link Binder} reads, as a JSON Schema (draft 2020-12), so that an editor can help
 * whoever writes content.
 */
public final class JsonSchema {

  private final Binder binder;

  public JsonSchema(Binder binder) {
    this.binder = binder;
  }

  /** Schema of a file that holds one record. */
  public Map<String, Object> one(String title, Class<? extends Record> type) {
    return headed(title, record(Shape.of(type)));
  }

  /** Schema of a file that holds records, or limits, under their ids. */
  public Map<String, Object> byId(String title, Class<?> type) {
    return headed(title, map(underId(type)));
  }

  private static Map<String, Object> headed(String title, Map<String, Object> body) {
    var schema = new LinkedHashMap<String, Object>();
    schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.put("title", title);
    schema.putAll(body);
    return schema;
  }

  private Map<String, Object> of(Type type) {
    var raw = Shape.raw(type);
    if (raw == Optional.class || raw == Located.class) {
      return of(Shape.argument(type, 0));
    }
    if (raw == List.class) {
      var list = typed("array");
      list.put("items", of(Shape.argument(type, 0)));
      return list;
    }
    if (raw == Map.class) {
      return map(underId(Shape.argument(type, 1)));
    }
    if (raw == Worked.class) {
      return record(Shape.ofWorked(Shape.argument(type, 0)));
    }
    if (raw == Written.class) {
      return typed(List.of("string", "number", "boolean", "array"));
    }
    var writtenAs = binder.writtenAs(raw);
    if (writtenAs.isPresent()) {
      return record(Shape.of(writtenAs.get()));
    }
    return raw.isRecord() && !binder.isText(raw) ? record(Shape.of(raw)) : text(raw);
  }

  private Map<String, Object> underId(Type type) {
    var raw = Shape.raw(type);
    return raw.isRecord() && binder.writtenAs(raw).isEmpty() && Shape.of(raw).hasId()
        ? record(Shape.of(raw).underItsId())
        : of(type);
  }

  private Map<String, Object> text(Class<?> raw) {
    var type = binder.textType(raw);
    if (raw == boolean.class || raw == Boolean.class) {
      return typed("boolean");
    }
    if (List.of(int.class, Integer.class, long.class, Long.class).contains(raw)) {
      return typed("integer");
    }
    if (raw == String.class) {
      return typed("string");
    }
    // A plain 3 or true is read as the text that it is, so the schema must let it stand.
    var schema = typed(type.names().isEmpty() ? List.of("string", "integer") : "string");
    if (type.names().isEmpty()) {
      schema.put("description", type.allowed());
    } else {
      schema.put("enum", type.names());
    }
    return schema;
  }

  /** Keeps its order, so that the written schema is the same at every run. */
  private static Map<String, Object> typed(Object type) {
    var schema = new LinkedHashMap<String, Object>();
    schema.put("type", type);
    return schema;
  }

  private static Map<String, Object> map(Map<String, Object> values) {
    var schema = typed("object");
    schema.put("minProperties", 1);
    schema.put("additionalProperties", values);
    return schema;
  }

  private Map<String, Object> record(Shape shape) {
    var properties = new LinkedHashMap<String, Object>();
    for (var slot : shape.slots()) {
      var value = new LinkedHashMap<>(of(slot.type()));
      if (slot.atLeastOne()) {
        value.put("minItems", 1);
      }
      properties.put(slot.key(), value);
    }
    var schema = typed("object");
    schema.put("properties", properties);
    schema.put(
        "required",
        shape.slots().stream().filter(slot -> !slot.mayBeMissing()).map(Shape.Slot::key).toList());
    schema.put("additionalProperties", false);
    return schema;
  }
}
