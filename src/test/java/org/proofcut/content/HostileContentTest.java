package org.proofcut.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.proofcut.core.evidence.Problem;
import org.proofcut.core.measure.Length;
import org.proofcut.core.setup.RouterLimits;

/** Whatever lies in the shop's folder, it is refused in clear lines, and soon. */
class HostileContentTest {

  private static final Duration SOON = Duration.ofSeconds(10);
  private static final String LIMITS = "safety/limits/cutter.yaml";
  private static final String PASSES = "setup/limits/router/passes.yaml";
  private static final String RULE = "safety/cutter/deep-pass.yaml";

  @TempDir Path folder;

  /** Something that is written into the folder. */
  private interface Mess {
    void in(Path folder) throws IOException;
  }

  /**
   * @param where the file that the one line names
   * @param says what is in that line
   */
  private record Told(Mess mess, String where, String says) {}

  @TestFactory
  Stream<DynamicTest> texts_areRefused_inOneLine() {
    var told = new LinkedHashMap<String, Told>();
    told.put(
        "a ring of anchors",
        new Told(text(LIMITS, "a: &a\n  b: *a\n"), LIMITS, "YAML can't be read: "));
    told.put("a billion laughs", new Told(text(LIMITS, laughs()), LIMITS, "YAML can't be read: "));
    told.put(
        "nested in brackets",
        new Told(
            text(LIMITS, "a: " + "[".repeat(50) + "]".repeat(50) + "\n"),
            LIMITS,
            "Nesting Depth exceeded"));
    told.put(
        "nested in a hundred thousand brackets",
        new Told(text(LIMITS, "[".repeat(100_000)), LIMITS, "Nesting Depth exceeded"));
    told.put(
        "nested by lines", new Told(text(LIMITS, steps(60)), LIMITS, "Nesting Depth exceeded"));
    told.put("a text instead of keys", new Told(text(LIMITS, "hello\n"), LIMITS, "is no mapping"));
    told.put("nothing", new Told(text(LIMITS, ""), LIMITS, "the file is empty"));
    told.put(
        "a tab", new Told(text(PASSES, "deepest-pass:\n\tname: x\n"), PASSES + ":2", "'\\t(TAB)'"));
    told.put(
        "no character",
        new Told(text(PASSES, "deepest-pass: \u0000\n"), PASSES, "the character U+0000"));
    told.put(
        "not UTF-8",
        new Told(
            bytes(PASSES, new byte[] {'a', ':', ' ', (byte) 0xC3, (byte) 0x28}),
            PASSES,
            "it is not UTF-8 text"));
    told.put(
        "a tag",
        new Told(text(PASSES, "deepest-pass: !!java.net.URL x\n"), PASSES, "tag is not allowed"));
    told.put(
        "an unknown key",
        new Told(text(PASSES, limit("4 mm") + "  sneaky: yes\n"), PASSES + ":5", "\"sneaky\""));
    told.put(
        "a key of a thousand letters",
        new Told(text(PASSES, "k".repeat(1_000) + ": x\n"), PASSES, "is no known key"));
    told.put(
        "a key twice",
        new Told(text(PASSES, limit("4 mm") + limit("5 mm")), PASSES + ":5", "stands here twice"));
    told.put(
        "a wrong unit",
        new Told(text(PASSES, limit("4 parsecs")), PASSES + ":3", "no unit of length"));
    told.put(
        "a speed for a length", new Told(text(PASSES, limit("4 kg")), PASSES + ":3", "\"4 kg\""));
    told.put(
        "a huge length",
        new Told(text(PASSES, limit("99999999999999999 mm")), PASSES + ":3", "99999999999999999"));
    told.put(
        "a huge number of a rule",
        new Told(
            text(LIMITS, ofRule("small_cutter", "99999999999999999 mm")),
            LIMITS + ":3",
            "99999999999999999"));
    told.put(
        "a huge speed",
        new Told(
            text(LIMITS, ofRule("small_cutter_speed", "99999999999999999999 per minute")),
            LIMITS + ":3",
            "can't be used here"));
    told.put(
        "a level finer than any meter's",
        new Told(text(LIMITS, ofRule("small_cutter", "85.123 dBA")), LIMITS + ":3", "85.123 dBA"));
    told.put(
        "a file of facts",
        new Told(text("facts.yaml", "machine: {}\n"), "facts.yaml", "facts are"));
    told.put(
        "a file that nobody reads",
        new Told(text("notes.txt", "milk"), "notes.txt", "nobody reads this file"));
    for (var condition : conditions().entrySet()) {
      told.put(
          "a condition: " + condition.getKey(),
          new Told(
              text(RULE, rule(condition.getValue().getKey())),
              RULE + ":3",
              condition.getValue().getValue()));
    }
    return tests(told);
  }

  /** Each with what is said of it. */
  private static Map<String, Map.Entry<String, String>> conditions() {
    var conditions = new LinkedHashMap<String, Map.Entry<String, String>>();
    conditions.put(
        "parentheses",
        Map.entry("(".repeat(900) + "fact.glue" + ")".repeat(900), "nested too deeply"));
    conditions.put(
        "lists in lists", Map.entry("[".repeat(900) + "]".repeat(900), "nested too deeply"));
    conditions.put(
        "either of either", Map.entry("fact.glue?true:".repeat(100) + "true", "nested too deeply"));
    conditions.put(
        "and a thousand times",
        Map.entry("fact.glue" + " && fact.glue".repeat(1_000), "13,009 characters"));
    conditions.put(
        "a loop", Map.entry("fact.materials.all(m, m == \"plywood\")", "a loop has no place"));
    conditions.put(
        "loops in loops",
        Map.entry("[1,1].map(a, [1,1].map(b, a)).size() > 0", "a loop has no place"));
    conditions.put(
        "a search that never ends",
        Map.entry("fact.guide.matches(\"(a+)+$\")", "no place in a condition"));
    conditions.put("a number without a source", Map.entry("fact.parts > 1000", "bare number"));
    conditions.put("a number beyond all", Map.entry("fact.parts > 99999999999999999999", "can't"));
    return conditions;
  }

  @TestFactory
  Stream<DynamicTest> filesAndFolders_areRefused_inOneLine() {
    var told = new LinkedHashMap<String, Told>();
    told.put(
        "fifty megabytes",
        new Told(in -> sized(in.resolve("huge.yaml"), 50L << 20), "huge.yaml", "52,428,800 bytes"));
    told.put(
        "one byte too many",
        new Told(in -> sized(in.resolve("a.yaml"), 262_145), "a.yaml", "262,145 bytes"));
    told.put(
        "too much in all",
        new Told(
            in -> {
              for (int n = 0; n < 9; n++) {
                sized(in.resolve(n + ".yaml"), 262_144);
              }
            },
            ".",
            "more than 2 MB in all"));
    told.put(
        "too many",
        new Told(
            in -> {
              for (int n = 0; n <= 2_000; n++) {
                Files.createFile(in.resolve(n + ".yaml"));
              }
            },
            ".",
            "more than 2,000 files and folders"));
    told.put(
        "folders too deep",
        new Told(
            in -> Files.createDirectories(in.resolve("a/b/c/d/e/f/g/h/i/j")),
            "a/b/c/d/e/f/g",
            "more than 6 deep"));
    told.put(
        "a folder with a file's name",
        new Told(
            in -> Files.createDirectories(in.resolve("safety/x.yaml")),
            "safety/x.yaml",
            "a folder has the name of a file"));
    told.put(
        "a link out of the folder",
        new Told(
            in ->
                Files.createSymbolicLink(
                    in.resolve("out.yaml"), Files.createTempFile(folder, "outside", ".yaml")),
            "out.yaml",
            "it is a link"));
    told.put(
        "a ring of links",
        new Told(in -> Files.createSymbolicLink(in.resolve("ring"), in), "ring", "it is a link"));
    told.put(
        "a strange name",
        new Told(in -> Files.createFile(in.resolve("a b.yaml")), "a b.yaml", "the name holds"));
    told.put(
        "a name over two lines",
        new Told(in -> Files.createFile(in.resolve("a\nb.yaml")), "a?b.yaml", "the name holds"));
    return tests(told);
  }

  @Test
  void unreadableFile_isRefused() throws IOException {
    var file =
        Files.writeString(
            Files.createDirectories(folder.resolve("shop")).resolve("gear.yaml"), "a: b");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
    assumeFalse(Files.isReadable(file), "nothing is unreadable to root");
    assertTold(problems(folder), "shop/gear.yaml", "it can't be opened");
  }

  @Test
  void fileThatWentAway_sinceItWasLookedAt_isRefused() throws IOException {
    var file = folder.resolve(PASSES);
    write(file, limit("4 mm").getBytes(StandardCharsets.UTF_8));
    var own = new OwnFolder(folder);
    var look = own.look();
    Files.delete(file);
    var faulty = assertInstanceOf(Faulty.class, own.lay(look, Content.bundled()).loaded());
    assertTold(faulty.problems(), PASSES, "it can't be opened");
  }

  @Test
  void fileThatBecameALink_sinceItWasLookedAt_isNotFollowed() throws IOException {
    var file = folder.resolve(PASSES);
    write(file, limit("4 mm").getBytes(StandardCharsets.UTF_8));
    var own = new OwnFolder(folder);
    var look = own.look();
    Files.delete(file);
    Files.createSymbolicLink(file, Files.createTempFile(folder, "outside", ".yaml"));
    var faulty = assertInstanceOf(Faulty.class, own.lay(look, Content.bundled()).loaded());
    assertTold(faulty.problems(), PASSES, "it can't be opened");
  }

  @Test
  void aFileInsteadOfTheFolder_isRefused() throws IOException {
    var file = Files.writeString(folder.resolve("content"), "not a folder");
    assertTold(problems(file), ".", "is no folder");
  }

  @Test
  void faults_areListedUpToFifty_andTheRestCounted() throws IOException {
    var keys = new StringBuilder();
    for (int n = 0; n < 20_000; n++) {
      keys.append("key-").append(n).append(": x\n");
    }
    write(folder.resolve(PASSES), keys.toString().getBytes(StandardCharsets.UTF_8));

    var faulty = assertTimeoutPreemptively(SOON, () -> faulty(folder));
    assertEquals(50, faulty.problems().size());
    assertEquals(19_950, faulty.more());
    assertTrue(faulty.printed().endsWith("and 19950 more\n"), "it is printed so");
  }

  @TestFactory
  Stream<DynamicTest> lineEndsAndMarks_ofOtherEditors_areFine() {
    return Map.of(
            "Windows line ends", limit("4 mm").replace("\n", "\r\n"),
            "a byte order mark", "\uFEFF" + limit("4 mm"),
            "both", "\uFEFF" + limit("4 mm").replace("\n", "\r\n"))
        .entrySet()
        .stream()
        .map(
            each ->
                DynamicTest.dynamicTest(
                    each.getKey(),
                    () -> {
                      var content = new LaidOver().own(PASSES, each.getValue()).content();
                      assertEquals(
                          Length.of("4 mm"),
                          content.limits(RouterLimits.class).deepestPass().value());
                    }));
  }

  @Test
  void whatAnEditorLeaves_isPassedBy() throws IOException {
    write(folder.resolve(PASSES), limit("4 mm").getBytes(StandardCharsets.UTF_8));
    write(folder.resolve("setup/limits/router/.passes.yaml.swp"), new byte[] {0, 1, 2});
    write(folder.resolve("setup/limits/router/passes.yaml~"), new byte[0]);
    write(folder.resolve(".git/config"), new byte[] {0});
    write(folder.resolve("README.md"), "ours".getBytes(StandardCharsets.UTF_8));

    var own = new OwnFolder(folder);
    var laid = own.lay(own.look(), Content.bundled());
    assertEquals(
        Length.of("4 mm"),
        laid.loaded().orThrow().limits(RouterLimits.class).deepestPass().value());
  }

  @Test
  void look_findsAChangeOfAFile_andNothingElse() throws IOException {
    assertEquals(OwnFolder.Look.nothing(), new OwnFolder(folder.resolve("none")).look());
    var own = new OwnFolder(folder);
    var file = folder.resolve(PASSES);
    write(file, limit("4 mm").getBytes(StandardCharsets.UTF_8));
    var before = own.look();
    assertEquals(before, own.look());
    write(file, limit("4.5 mm").getBytes(StandardCharsets.UTF_8));
    assertFalse(before.equals(own.look()));
  }

  private Stream<DynamicTest> tests(Map<String, Told> told) {
    return told.entrySet().stream()
        .map(
            each ->
                DynamicTest.dynamicTest(
                    each.getKey(),
                    () -> {
                      var within = Files.createTempDirectory(folder, "mess");
                      each.getValue().mess.in(within);
                      assertTold(
                          assertTimeoutPreemptively(SOON, () -> problems(within)),
                          each.getValue().where,
                          each.getValue().says);
                    }));
  }

  private static void assertTold(List<Problem> problems, String where, String says) {
    assertEquals(1, problems.size(), problems.toString());
    var problem = problems.get(0);
    assertTrue(problem.where().startsWith(where + ":"), problem.toString());
    assertTrue(problem.what().contains(says), problem.toString());
    assertFalse(problem.what().contains("\n"), problem.what());
    assertTrue(problem.what().length() <= 301, "a line that is read: " + problem.what().length());
  }

  private static List<Problem> problems(Path folder) {
    return faulty(folder).problems();
  }

  private static Faulty faulty(Path folder) {
    var own = new OwnFolder(folder);
    return assertInstanceOf(Faulty.class, own.lay(own.look(), Content.bundled()).loaded());
  }

  private static Mess text(String path, String text) {
    return bytes(path, text.getBytes(StandardCharsets.UTF_8));
  }

  private static Mess bytes(String path, byte[] bytes) {
    return in -> write(in.resolve(path), bytes);
  }

  private static void write(Path file, byte[] bytes) throws IOException {
    Files.createDirectories(file.getParent());
    Files.write(file, bytes);
  }

  /** A file that takes no room on the disk. */
  private static void sized(Path file, long bytes) throws IOException {
    try (var made = new RandomAccessFile(file.toFile(), "rw")) {
      made.setLength(bytes);
    }
  }

  private static String limit(String value) {
    return ofRule("deepest-pass", value);
  }

  private static String ofRule(String id, String value) {
    return "%s:\n  name: as it is called\n  value: %s\n  because: {source: own-choice}\n"
        .formatted(id, value);
  }

  /** Ours with another condition, on its third line. */
  private static String rule(String condition) {
    return LaidOver.text(RULE)
        .replaceFirst(
            "(?s)when: >-.*?effect", "when: '" + condition.replace("$", "\\$") + "'\neffect");
  }

  private static String laughs() {
    var text = new StringBuilder("a0: &a0 [ha, ha]\n");
    for (int n = 1; n < 30; n++) {
      text.append("a%1$d: &a%1$d [*a%2$d, *a%2$d]\n".formatted(n, n - 1));
    }
    return text.toString();
  }

  private static String steps(int deep) {
    var text = new StringBuilder();
    for (int n = 0; n < deep; n++) {
      text.append(" ".repeat(n)).append("a:\n");
    }
    return text.append(" ".repeat(deep)).append("b: c\n").toString();
  }
}
