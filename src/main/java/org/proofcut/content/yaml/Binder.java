package org.proofcut.content.yaml;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.proofcut.core.evidence.Citation;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.measure.Length;
import org.proofcut.core.measure.LengthFormatException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * Binds YAML to records: each key is a component's name in small letters with hyphens.
 *
 * <p>A component may be text, a yes or no, a whole number, a {@link Length} with its unit, an enum,
 * another record, a list, a map from ids to records (whose {@code id} is then the key), optional,
 * {@link Located}, {@link Written}, or a {@link Worked} limit ({@code name}, {@code value}, {@code
 * because}). Other types are taught with {@link #text}, {@link #names} and {@link #via}.
 *
 * <p>Every fault is noted, none is thrown. Within, {@code null} stands for "faulty, and said so".
 */
public final class Binder {

  private final Faults faults;
  private final Map<Class<?>, TextType<?>> texts = new HashMap<>();
  private final Map<Class<?>, Via<?, ?>> vias = new HashMap<>();

  /** What may be written for a type in one text. */
  record TextType<T>(
      String kind, String allowed, List<String> names, Function<String, T> reading) {}

  /** A type that is written as a record of another type. */
  record Via<S, T>(Class<S> written, Function<Located<S>, Optional<T>> reading) {}

  public Binder(Faults faults) {
    this.faults = faults;
    text(String.class, "text", text -> text);
    text(Integer.class, "a whole number, such as 4", Integer::valueOf);
    text(Long.class, "a whole number, such as 18000", Long::valueOf);
    text(Length.class, "a length with its unit, such as 18.25 mm or 23/32 in", Length::of);
    names(Boolean.class, "answer", Map.of("true", true, "false", false));
    texts.put(int.class, texts.get(Integer.class));
    texts.put(long.class, texts.get(Long.class));
    texts.put(boolean.class, texts.get(Boolean.class));
  }

  /**
   * Teaches a type that is written as one text.
   *
   * @param reading throws {@link IllegalArgumentException} for a text that is none
   */
  public <T> Binder text(Class<T> type, String allowed, Function<String, T> reading) {
    texts.put(type, new TextType<>(type.getSimpleName(), allowed, List.of(), reading));
    return this;
  }

  /** Teaches a type that is written as one of these names. */
  public <T> Binder names(Class<T> type, String kind, Map<String, T> byName) {
    texts.put(type, new TextType<>(kind, "", List.copyOf(byName.keySet()), byName::get));
    return this;
  }

  /** Teaches a type that is written as a record and then understood; the reading notes faults. */
  public <S extends Record, T> Binder via(
      Class<S> written, Class<T> type, Function<Located<S>, Optional<T>> reading) {
    vias.put(type, new Via<>(written, reading));
    return this;
  }

  /** Reads a file that holds one thing. */
  public <T extends Record> Optional<T> one(YamlFile file, Class<T> type) {
    return Optional.ofNullable(type.cast(bind(new Place(file, file.root()), type)));
  }

  /** Reads a file that holds several things under their ids, in the order of the file. */
  public <T> Map<String, T> byId(YamlFile file, Class<T> type) {
    var bound = new LinkedHashMap<String, T>();
    locatedById(file, type).forEach((id, entry) -> bound.put(id, entry.value()));
    return bound;
  }

  /** The same, each with the place of its id. */
  public <T> Map<String, Located<T>> locatedById(YamlFile file, Class<T> type) {
    var bound = new LinkedHashMap<String, Located<T>>();
    for (var entry : new Place(file, file.root()).entries(faults).entrySet()) {
      var value = underId(entry.getKey(), entry.getValue(), type);
      if (value != null) {
        bound.put(entry.getKey(), new Located<>(type.cast(value), entry.getValue().keySpot()));
      }
    }
    return bound;
  }

  /** Reads one record whose components are spread over several files. */
  public <T extends Record> Optional<T> spread(String folder, List<YamlFile> files, Class<T> type) {
    var shape = Shape.of(type);
    var values = new HashMap<String, Object>();
    for (var file : files) {
      fill(shape, new Place(file, file.root()), values);
    }
    return Optional.ofNullable(type.cast(construct(type, shape, Spot.of(folder), values)));
  }

  private Object bind(Place place, Type type) {
    var raw = Shape.raw(type);
    if (raw == Optional.class) {
      var value = bind(place, Shape.argument(type, 0));
      return value == null ? null : Optional.of(value);
    }
    if (raw == Located.class) {
      var value = bind(place, Shape.argument(type, 0));
      return value == null ? null : new Located<>(value, place.spot());
    }
    if (raw == List.class) {
      return list(place, Shape.argument(type, 0));
    }
    if (raw == Map.class) {
      return map(place, Shape.argument(type, 0), Shape.argument(type, 1));
    }
    if (raw == Worked.class) {
      return worked(place, Shape.argument(type, 0));
    }
    if (raw == Written.class) {
      return written(place);
    }
    var via = vias.get(raw);
    if (via != null) {
      return understood(place, via);
    }
    if (raw.isEnum() || texts.containsKey(raw)) {
      return scalar(place, textType(raw));
    }
    return record(place, raw, Shape.of(raw), new HashMap<>());
  }

  private <S, T> T understood(Place place, Via<S, T> via) {
    var written = via.written.cast(bind(place, via.written));
    return written == null
        ? null
        : via.reading.apply(new Located<>(written, place.spot())).orElse(null);
  }

  private Object record(Place place, Class<?> type, Shape shape, Map<String, Object> values) {
    return fill(shape, place, values) ? construct(type, shape, place.spot(), values) : null;
  }

  /** Puts what a mapping says into the values, and says whether there was a mapping. */
  private boolean fill(Shape shape, Place place, Map<String, Object> values) {
    if (!(place.node instanceof MappingNode)) {
      faults.add(
          place.spot(),
          "%s stands where keys should".formatted(place.quoted()),
          "keys: " + String.join(", ", shape.keys()),
          "Write one key a line, indented.");
      return false;
    }
    for (var entry : place.entries(faults).entrySet()) {
      var slot = shape.slot(entry.getKey());
      if (slot.isEmpty()) {
        faults.addUnknown(entry.getValue().keySpot(), "key", entry.getKey(), shape.keys());
      } else if (values.containsKey(entry.getKey())) {
        addDuplicate(entry.getValue().keySpot(), entry.getKey());
      } else {
        values.put(entry.getKey(), bindSlot(entry.getValue(), slot.get()));
      }
    }
    return true;
  }

  private Object bindSlot(Place place, Shape.Slot slot) {
    var value = bind(place, slot.type());
    if (slot.atLeastOne() && value instanceof List<?> list && list.isEmpty()) {
      faults.add(
          place.spot(),
          "\"%s\" is an empty list".formatted(slot.key()),
          "at least one entry",
          "Write the first entry.");
    }
    return value;
  }

  /** Notes what is missing, fills in what may be, and says whether a record can be made. */
  private boolean isComplete(Shape shape, Spot spot, Map<String, Object> values) {
    for (var slot : shape.slots()) {
      if (!values.containsKey(slot.key())) {
        if (!slot.mayBeMissing()) {
          faults.add(
              spot,
              "\"%s\" is missing".formatted(slot.key()),
              "keys: " + String.join(", ", shape.keys()),
              "Write \"%s: …\".".formatted(slot.key()));
          values.put(slot.key(), null);
        } else {
          values.put(slot.key(), slot.whenMissing());
        }
      }
    }
    return !values.containsValue(null);
  }

  private Object construct(Class<?> type, Shape shape, Spot spot, Map<String, Object> values) {
    if (!isComplete(shape, spot, values)) {
      return null;
    }
    var components = type.getRecordComponents();
    var arguments = Shape.of(type).keys().stream().map(values::get).toArray();
    try {
      var constructor =
          type.getDeclaredConstructor(
              Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
      constructor.setAccessible(true);
      return constructor.newInstance(arguments);
    } catch (InvocationTargetException e) {
      if (e.getCause() instanceof IllegalArgumentException refused) {
        faults.add(spot, refused.getMessage(), "see content/README.md", "Mend this entry.");
        return null;
      }
      throw new IllegalStateException(type + " can't be made", e.getCause());
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(type + " is no record to bind to", e);
    }
  }

  private Object worked(Place place, Type valueType) {
    var shape = Shape.ofWorked(valueType);
    var values = new HashMap<String, Object>();
    return fill(shape, place, values) && isComplete(shape, place.spot(), values)
        ? Worked.given(
            (String) values.get("name"), values.get("value"), (Citation) values.get("because"))
        : null;
  }

  private List<Object> list(Place place, Type itemType) {
    if (!(place.node instanceof SequenceNode sequence)) {
      faults.add(
          place.spot(),
          "%s is no list".formatted(place.quoted()),
          "a list, such as [one, two]",
          "Put it in a list.");
      return null;
    }
    var items = new ArrayList<>();
    for (var node : sequence.getValue()) {
      items.add(bind(new Place(place.file, node), itemType));
    }
    return items.contains(null) ? null : List.copyOf(items);
  }

  private Map<Object, Object> map(Place place, Type keyType, Type valueType) {
    if (!(place.node instanceof MappingNode)) {
      faults.add(
          place.spot(),
          "%s stands where keys should".formatted(place.quoted()),
          "\"key: value\" lines",
          "Write one key a line, indented.");
      return null;
    }
    var bound = new LinkedHashMap<Object, Object>();
    var sound = true;
    for (var entry : place.entries(faults).entrySet()) {
      var key = bind(entry.getValue().key(), keyType);
      var value = underId(entry.getKey(), entry.getValue(), valueType);
      sound &= key != null && value != null;
      bound.put(key, value);
    }
    return sound ? bound : null;
  }

  private Object underId(String id, Place place, Type type) {
    var raw = Shape.raw(type);
    if (raw.isRecord() && !vias.containsKey(raw) && Shape.of(raw).hasId()) {
      var values = new HashMap<String, Object>(Map.of("id", id));
      return record(place, raw, Shape.of(raw).underItsId(), values);
    }
    return bind(place, type);
  }

  private Object scalar(Place place, TextType<?> type) {
    var text = place.text();
    if (text.isEmpty()) {
      faults.add(
          place.spot(),
          "%s is no single text".formatted(place.quoted()),
          type.names.isEmpty() ? type.allowed : Faults.some(type.names),
          "Write it behind the colon.");
      return null;
    }
    if (!type.names.isEmpty() && !type.names.contains(text.get())) {
      faults.addUnknown(place.spot(), type.kind, text.get(), type.names);
      return null;
    }
    try {
      return type.reading.apply(text.get());
    } catch (IllegalArgumentException | ArithmeticException e) {
      var reason = e instanceof LengthFormatException length ? length.reason() : "";
      faults.add(
          place.spot(),
          "\"%s\" can't be used here%s"
              .formatted(text.get(), reason.isEmpty() ? "" : ": " + reason),
          type.allowed,
          "Write it so.");
      return null;
    }
  }

  private Written written(Place place) {
    if (place.node instanceof SequenceNode) {
      var items = list(place, String.class);
      return items == null
          ? null
          : new Written(place.spot(), items.stream().map(String.class::cast).toList(), true);
    }
    var text = (String) scalar(place, texts.get(String.class));
    return text == null ? null : new Written(place.spot(), List.of(text), false);
  }

  TextType<?> textType(Class<?> raw) {
    if (texts.containsKey(raw)) {
      return texts.get(raw);
    }
    var names = new LinkedHashMap<String, Object>();
    for (var constant : raw.getEnumConstants()) {
      names.put(Shape.kebab(((Enum<?>) constant).name()), constant);
    }
    var kind = Shape.kebab(raw.getSimpleName()).replace('-', ' ');
    return new TextType<>(kind, "", List.copyOf(names.keySet()), names::get);
  }

  boolean isText(Class<?> raw) {
    return texts.containsKey(raw);
  }

  Optional<Class<?>> writtenAs(Class<?> raw) {
    return Optional.ofNullable(vias.get(raw)).map(Via::written);
  }

  private void addDuplicate(Spot spot, String key) {
    faults.add(
        spot, "\"%s\" stands here twice".formatted(key), "each key once", "Take one of them out.");
  }

  /** A node and the file that it stands in, with its key where it has one. */
  private final class Place {
    private final YamlFile file;
    private final Node node;
    private final Node key;

    Place(YamlFile file, Node node) {
      this(file, node, node);
    }

    private Place(YamlFile file, Node node, Node key) {
      this.file = file;
      this.node = node;
      this.key = key;
    }

    Spot spot() {
      return file.spot(node);
    }

    Place key() {
      return new Place(file, key);
    }

    Spot keySpot() {
      return file.spot(key);
    }

    /** The text of a scalar that is neither empty nor null. */
    Optional<String> text() {
      return node instanceof ScalarNode scalar
          ? Optional.of(scalar.getValue().strip()).filter(text -> !text.isEmpty())
          : Optional.empty();
    }

    String quoted() {
      return node instanceof MappingNode
          ? "a mapping"
          : node instanceof SequenceNode ? "a list" : "\"" + text().orElse("") + "\"";
    }

    /** The entries of a mapping by their keys; a key that stands twice is a fault. */
    Map<String, Place> entries(Faults faults) {
      var entries = new LinkedHashMap<String, Place>();
      for (var pair : ((MappingNode) node).getValue()) {
        var in = file.of(pair.getKeyNode());
        var at = new Place(in, pair.getValueNode(), pair.getKeyNode());
        var name = at.key().text().orElse("");
        if (entries.putIfAbsent(name, at) != null) {
          addDuplicate(at.keySpot(), name);
        }
      }
      return entries;
    }
  }
}
