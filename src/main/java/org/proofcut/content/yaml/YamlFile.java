package org.proofcut.content.yaml;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
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
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.resolver.Resolver;

/** One file as a tree of nodes that still know their lines. Nothing is built from its tags. */
public final class YamlFile {

  private static final int LARGEST_IN_CODE_POINTS = 200_000;
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
  private final List<String> lines;
  private final MappingNode root;

  private YamlFile(String path, List<String> lines, MappingNode root) {
    this.path = path;
    this.lines = lines;
    this.root = root;
  }

  /** Reads a file; empty if it is no YAML mapping, and then the faults say why. */
  public static Optional<YamlFile> read(String path, byte[] bytes, Faults faults) {
    String text;
    try {
      text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      faults.add(Spot.of(path), "it is not UTF-8 text", "UTF-8", "Save the file as UTF-8.");
      return Optional.empty();
    }
    var lines = text.lines().toList();
    try {
      var parser = new ParserImpl(new StreamReader(text), OPTIONS);
      var node = new Composer(parser, RESOLVER, OPTIONS).getSingleNode();
      if (node instanceof MappingNode mapping && !mapping.getValue().isEmpty()) {
        var file = new YamlFile(path, lines, mapping);
        return file.isPlain(mapping, faults) ? Optional.of(file) : Optional.empty();
      }
      faults.add(
          Spot.of(path),
          node == null ? "the file is empty" : "the file is no mapping",
          "lines of \"key: value\"",
          "Write the keys that a neighbouring file has, or delete it.");
    } catch (MarkedYAMLException e) {
      faults.add(
          spot(path, lines, e.getProblemMark()),
          "YAML can't be read: " + e.getProblem(),
          "YAML, indented by two spaces, text with \": \" in it quoted",
          "Mend this line or the one above it.");
    } catch (YAMLException e) {
      faults.add(
          Spot.of(path),
          "YAML can't be read: " + e.getMessage(),
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

  MappingNode root() {
    return root;
  }

  /** Where the file begins. */
  public Spot start() {
    return spot(root);
  }

  Spot spot(Node node) {
    return spot(path, lines, node.getStartMark());
  }

  private static Spot spot(String path, List<String> lines, Mark mark) {
    var line = Math.min(mark.getLine(), lines.size() - 1);
    return new Spot(path, line + 1, mark.getColumn() + 1, lines.get(line));
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
