package org.proofcut.content.yaml;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.composer.Composer;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.CollectionNode;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.ReaderException;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.resolver.Resolver;

/** One file as a tree of nodes that still know their lines. Nothing is built from its tags. */
public final class YamlFile {

  private static final int LARGEST_IN_CODE_POINTS = 256 * 1024;
  private static final String BYTE_ORDER_MARK = "\uFEFF";
  private static final int DEEPEST = 12;
  private static final LoaderOptions OPTIONS = options();
  private static final Resolver RESOLVER = new Resolver();
  private static final Set<Tag> PLAIN_TAGS =
      Set.of(
          Tag.MAP,
          Tag.SEQ,
          Tag.STR,
          Tag.INT,
          Tag.FLOAT,
          Tag.BOOL,
          Tag.NULL,
          Tag.TIMESTAMP,
          Tag.MERGE);

  private final String path;
  private final String shown;
  private final List<String> lines;
  private final MappingNode root;

  /** Which keys of the root stand in a file below this one, by identity. */
  private final Map<Node, YamlFile> below = new IdentityHashMap<>();

  private final Map<String, NodeTuple> byKey = new HashMap<>();

  private YamlFile(String path, String shown, List<String> lines, MappingNode root) {
    this.path = path;
    this.shown = shown;
    this.lines = lines;
    this.root = root;
  }

  /** Reads a file; empty if it is no YAML mapping, and then the faults say why. */
  public static Optional<YamlFile> read(String path, byte[] bytes, Faults faults) {
    return read(path, path, bytes, faults);
  }

  /**
   * The same.
   *
   * @param shown how faults call the file, where the path alone could mean two
   */
  public static Optional<YamlFile> read(String path, String shown, byte[] bytes, Faults faults) {
    String text;
    try {
      text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      faults.add(Spot.of(shown), "it is not UTF-8 text", "UTF-8", "Save the file as UTF-8.");
      return Optional.empty();
    }
    if (text.startsWith(BYTE_ORDER_MARK)) {
      text = text.substring(BYTE_ORDER_MARK.length());
    }
    var lines = text.lines().toList();
    try {
      var parser = new ParserImpl(new StreamReader(text), OPTIONS);
      var node = new Composer(parser, RESOLVER, OPTIONS).getSingleNode();
      if (node instanceof MappingNode mapping && !mapping.getValue().isEmpty()) {
        var file = new YamlFile(path, shown, lines, mapping);
        return file.isPlain(mapping, faults) ? Optional.of(file) : Optional.empty();
      }
      faults.add(
          Spot.of(shown),
          node == null ? "the file is empty" : "the file is no mapping",
          "lines of \"key: value\"",
          "Write the keys that a neighbouring file has, or delete it.");
    } catch (MarkedYAMLException e) {
      faults.add(
          spot(shown, lines, e.getProblemMark()),
          "YAML can't be read: " + e.getProblem(),
          "YAML, indented by two spaces, text with \": \" in it quoted",
          "Mend this line or the one above it.");
    } catch (ReaderException e) {
      faults.add(
          Spot.of(shown),
          "it holds the character U+%04X, which is no text".formatted(e.getCodePoint()),
          "letters, digits, signs, spaces and line ends",
          "Take it out.");
    } catch (YAMLException e) {
      faults.add(
          Spot.of(shown),
          "YAML can't be read: " + e.getMessage().lines().findFirst().orElse(""),
          "YAML of at most %,d characters, without repeated nodes"
              .formatted(LARGEST_IN_CODE_POINTS),
          "Split the file, and write out what is repeated.");
    }
    return Optional.empty();
  }

  /** Path below the content folder, such as {@code safety/cutter/unmarked-cutter.yaml}. */
  public String path() {
    return path;
  }

  /** File name without folder and {@code .yaml}. */
  public String stem() {
    return path.substring(path.lastIndexOf('/') + 1).replaceFirst("\\.yaml$", "");
  }

  /**
   * This file laid over one of the same path: an entry of this one stands instead of the entry
   * below that has its key, one with a new key comes after.
   */
  public YamlFile over(YamlFile other) {
    var own = new LinkedHashMap<String, List<NodeTuple>>();
    root.getValue()
        .forEach(entry -> own.computeIfAbsent(key(entry), key -> new ArrayList<>()).add(entry));
    var entries = new ArrayList<NodeTuple>();
    var kept = new ArrayList<Node>();
    for (var entry : other.root.getValue()) {
      var instead = own.remove(key(entry));
      if (instead == null) {
        entries.add(entry);
        kept.add(entry.getKeyNode());
      } else {
        entries.addAll(instead);
      }
    }
    own.values().forEach(entries::addAll);
    var merged =
        new YamlFile(
            path,
            shown,
            lines,
            new MappingNode(
                root.getTag(),
                true,
                entries,
                root.getStartMark(),
                root.getEndMark(),
                root.getFlowStyle()));
    kept.forEach(key -> merged.below.put(key, other));
    return merged;
  }

  /** The keys of the file, in their order, each with its place. */
  public Map<String, Spot> keys() {
    var keys = new LinkedHashMap<String, Spot>();
    root.getValue()
        .forEach(entry -> keys.put(key(entry), of(entry.getKeyNode()).spot(entry.getKeyNode())));
    return keys;
  }

  /** What stands under a key of an entry, if that is one text. */
  public Optional<String> text(String entry, String key) {
    return node(entry, key)
        .filter(ScalarNode.class::isInstance)
        .map(found -> ((ScalarNode) found).getValue().strip());
  }

  /** Where that stands, whatever it is. */
  public Optional<Spot> spot(String entry, String key) {
    return node(entry, key).map(found -> spot(entry, found));
  }

  /** In the file that the entry stands in. */
  private Spot spot(String entry, Node node) {
    return of(byKey().get(entry).getKeyNode()).spot(node);
  }

  private Optional<Node> node(String entry, String key) {
    return Optional.ofNullable(byKey().get(entry))
        .map(NodeTuple::getValueNode)
        .filter(MappingNode.class::isInstance)
        .flatMap(found -> child((MappingNode) found, key));
  }

  private Map<String, NodeTuple> byKey() {
    if (byKey.isEmpty()) {
      root.getValue().forEach(entry -> byKey.putIfAbsent(key(entry), entry));
    }
    return byKey;
  }

  private static Optional<Node> child(MappingNode mapping, String key) {
    return mapping.getValue().stream()
        .filter(entry -> key(entry).equals(key))
        .map(NodeTuple::getValueNode)
        .findFirst();
  }

  private static String key(NodeTuple entry) {
    return entry.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue().strip() : "";
  }

  MappingNode root() {
    return root;
  }

  /** The file that a key of the root stands in: this one, or one below it. */
  YamlFile of(Node key) {
    return below.getOrDefault(key, this);
  }

  /** Where the file begins. */
  public Spot start() {
    return spot(root);
  }

  Spot spot(Node node) {
    return spot(shown, lines, node.getStartMark());
  }

  private static Spot spot(String shown, List<String> lines, Mark mark) {
    if (lines.isEmpty()) {
      return Spot.of(shown);
    }
    var line = Math.min(mark.getLine(), lines.size() - 1);
    return new Spot(shown, line + 1, mark.getColumn() + 1, lines.get(line));
  }

  private boolean isPlain(Node node, Faults faults) {
    if (!PLAIN_TAGS.contains(node.getTag())) {
      faults.add(
          spot(node), "the tag " + node.getTag(), "plain text, lists and mappings", "Take it out.");
      return false;
    }
    if (node instanceof MappingNode mapping) {
      return mapping.getValue().stream()
          .allMatch(
              pair -> isPlain(pair.getKeyNode(), faults) && isPlain(pair.getValueNode(), faults));
    }
    return !(node instanceof CollectionNode<?> collection)
        || collection.getValue().stream().allMatch(item -> isPlain((Node) item, faults));
  }

  private static LoaderOptions options() {
    var options = new LoaderOptions();
    options.setCodePointLimit(LARGEST_IN_CODE_POINTS);
    options.setNestingDepthLimit(DEEPEST);
    options.setMaxAliasesForCollections(0);
    return options;
  }
}
