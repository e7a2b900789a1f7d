package org.proofcut;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.stream.Collectors.toCollection;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;

/** The rooms below a root package as compiled, and what is wrong with them. */
final class Rooms {

  /** What a pure core may know of Java: values, collections, text, and digests of text. */
  private static final Pattern PURE_JAVA =
      Pattern.compile(
          "java\\.(lang(\\.(annotation|invoke|runtime))?|math|nio\\.charset|security|text|time(\\.\\w+)?"
              + "|util(\\.(concurrent|function|regex|stream))?)");

  /** Each of these gives another answer the next time it is asked. */
  private static final Pattern CLOCK_OR_CHANCE =
      Pattern.compile(
          "java\\.time\\.[\\w.]+\\.now|java\\.time\\.Clock\\.\\w+"
              + "|java\\.lang\\.System\\.(currentTimeMillis|nanoTime|getenv|getProperty)"
              + "|java\\.lang\\.Math\\.random|java\\.util\\.UUID\\.randomUUID"
              + "|java\\.(util|security)\\..*Random\\..+");

  /** As javap writes it: {@code Ljava/lang/String;}. The D and F in class names are no types. */
  private static final Pattern CLASS_IN_SIGNATURE =
      Pattern.compile("(?<=[(;:)\\[BCDFIJSZ])L[\\w/$]+;");

  private static final Pattern FLOATING_POINT =
      Pattern.compile(
          "\\b(double|float)\\b|java[./]lang[./](Double|Float)\\b"
              + "|:\\s[df](load|store|add|sub|mul|div|rem|neg|cmp[lg]|const|return|2[ilfd])"
              + "|:\\s([il]2[df]|[df]a(load|store))\\b"
              + "|:(\\([^)]*[DF][^)]*\\).*|(\\(.*\\))?\\[*[DF])$");

  private static final Set<String> NO_IDEAS =
      Set.of("util", "utils", "helper", "helpers", "manager", "impl", "dto", "misc", "common");

  private final JavaClasses classes;
  private final String root;

  private Rooms(JavaClasses classes, String root) {
    this.classes = classes;
    this.root = root;
  }

  static Rooms ofMain() {
    return new Rooms(
        new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.proofcut"),
        "org.proofcut");
  }

  static Rooms of(String root) {
    return new Rooms(new ClassFileImporter().importPackages(root), root);
  }

  /** Names of all packages below the root that hold a class. */
  Set<String> names() {
    return classes.stream()
        .map(JavaClass::getPackageName)
        .filter(name -> name.startsWith(root + "."))
        .map(this::nameOf)
        .collect(toCollection(TreeSet::new));
  }

  /** Rooms that are labelled, in the order of the flow. */
  List<String> inOrder() {
    return names().stream()
        .filter(name -> label(name).isPresent())
        .sorted(
            Comparator.comparing((String name) -> label(name).orElseThrow().step())
                .thenComparing(Comparator.naturalOrder()))
        .toList();
  }

  Optional<Room> label(String name) {
    return javaPackage(name).flatMap(it -> it.tryGetAnnotationOfType(Room.class));
  }

  List<String> unlabelled() {
    return names().stream()
        .filter(name -> label(name).isEmpty())
        .map(name -> name + " has no package-info.java with @Room")
        .toList();
  }

  /** Folders with sources that the scan has not seen as packages, and the other way round. */
  List<String> notScanned(Path sources) throws IOException {
    var base = sources.resolve(root.replace('.', '/'));
    try (var files = Files.walk(base)) {
      var folders =
          files
              .filter(file -> file.toString().endsWith(".java"))
              .map(file -> base.relativize(file.getParent()).toString().replace('/', '.'))
              .filter(Predicate.not(String::isEmpty))
              .collect(toCollection(TreeSet::new));
      var faults = new ArrayList<String>();
      var scanned = names();
      folders.stream()
          .filter(Predicate.not(scanned::contains))
          .forEach(name -> faults.add(name + " has sources but no class was scanned"));
      scanned.stream()
          .filter(Predicate.not(folders::contains))
          .forEach(name -> faults.add(name + " was scanned but has no sources: clean target/"));
      return faults;
    }
  }

  List<String> wrongDeclarations() {
    var faults = new ArrayList<String>();
    for (var name : inOrder()) {
      var room = label(name).orElseThrow();
      for (var other : room.mayImport()) {
        var otherRoom = label(other);
        if (otherRoom.isEmpty()) {
          faults.add(name + " may import " + other + ", which is no room");
        } else if (otherRoom.get().step() >= room.step()) {
          faults.add(name + " may import " + other + ", which is not before it in the flow");
        }
      }
    }
    return faults;
  }

  List<String> undeclaredImports() {
    return faults(
        (from, to) -> {
          var label = label(from);
          return !to.isEmpty()
              && !to.equals(from)
              && (label.isEmpty() || !Arrays.asList(label.get().mayImport()).contains(to));
        },
        "must not import");
  }

  List<String> importsOfWeb() {
    return faults((from, to) -> isIn("web", to) && !isIn("web", from), "must not import");
  }

  private interface Arrow {
    boolean isWrong(String from, String to);
  }

  private List<String> faults(Arrow arrow, String words) {
    return dependencies(name -> true)
        .filter(it -> isBelowRoot(target(it)))
        .filter(
            it ->
                arrow.isWrong(
                    nameOf(it.getOriginClass().getPackageName()),
                    nameOf(target(it).getPackageName())))
        .map(
            it ->
                "%s %s %s: %s"
                    .formatted(
                        nameOf(it.getOriginClass().getPackageName()),
                        words,
                        nameOf(target(it).getPackageName()),
                        it.getDescription()))
        .distinct()
        .toList();
  }

  List<String> cycles() {
    return slices()
        .matching(root + ".(**)")
        .should()
        .beFreeOfCycles()
        .allowEmptyShould(true)
        .evaluate(classes)
        .getFailureReport()
        .getDetails();
  }

  List<String> coreBeyondPureJava() {
    var imports =
        dependencies(name -> isIn("core", name))
            .filter(it -> !target(it).isPrimitive())
            .filter(
                it ->
                    !isBelowRoot(target(it)) || !isIn("core", nameOf(target(it).getPackageName())))
            .filter(it -> !target(it).getName().equals(Room.class.getName()))
            .filter(it -> !PURE_JAVA.matcher(target(it).getPackageName()).matches())
            .map(Dependency::getDescription);
    var calls =
        inRooms(name -> isIn("core", name))
            .flatMap(it -> it.getAccessesFromSelf().stream())
            .filter(
                it ->
                    CLOCK_OR_CHANCE
                        .matcher(it.getTargetOwner().getName() + "." + it.getTarget().getName())
                        .matches())
            .map(it -> it.getDescription());
    return Stream.concat(imports, calls).distinct().toList();
  }

  /** Looks into the byte code, so that a local variable and a call to Math.sqrt are seen too. */
  List<String> coreInFloatingPoint() {
    var files =
        inRooms(name -> isIn("core", name))
            .map(it -> Path.of(it.getSource().orElseThrow().getUri()).toString())
            .distinct();
    var listing = new StringWriter();
    var writer = new PrintWriter(listing);
    int failed =
        ToolProvider.findFirst("javap")
            .orElseThrow()
            .run(
                writer, writer, Stream.concat(Stream.of("-c", "-p"), files).toArray(String[]::new));
    if (failed != 0) {
      throw new IllegalStateException(listing.toString());
    }
    var faults = new ArrayList<String>();
    var file = "";
    for (var line : listing.toString().lines().toList()) {
      if (line.startsWith("Compiled from")) {
        file = line.replaceAll("Compiled from |\"", "");
      } else if (!line.contains("// String")
          && FLOATING_POINT.matcher(CLASS_IN_SIGNATURE.matcher(line).replaceAll("L;")).find()) {
        faults.add(file + ": " + line.strip());
      }
    }
    return faults;
  }

  List<String> persistenceOutsideLogbook() {
    return dependencies(name -> !isIn("logbook", name))
        .filter(
            it ->
                target(it).getPackageName().startsWith("jakarta.persistence")
                    || target(it).getPackageName().startsWith("io.quarkus.hibernate")
                    || target(it).getPackageName().startsWith("org.hibernate"))
        .map(Dependency::getDescription)
        .toList();
  }

  List<String> entitiesHandedOut() {
    return inRooms(name -> isIn("logbook", name))
        .filter(it -> it.getModifiers().contains(JavaModifier.PUBLIC) && !isEntity(it))
        .flatMap(it -> it.getCodeUnits().stream())
        .filter(it -> !it.getModifiers().contains(JavaModifier.PRIVATE))
        .filter(it -> signature(it).anyMatch(Rooms::isEntity))
        .map(it -> it.getFullName() + " hands out an entity: hand out a record")
        .toList();
  }

  List<String> namedAfterNoIdea() {
    return names().stream()
        .filter(name -> Arrays.stream(name.split("\\.")).anyMatch(NO_IDEAS::contains))
        .map(name -> name + ": name the room after what it hands on")
        .toList();
  }

  private static Stream<JavaClass> signature(JavaCodeUnit unit) {
    return Stream.concat(Stream.of(unit.getReturnType()), unit.getParameterTypes().stream())
        .map(JavaType::getAllInvolvedRawTypes)
        .flatMap(Set::stream);
  }

  private static boolean isEntity(JavaClass type) {
    return type.isAssignableTo("io.quarkus.hibernate.orm.panache.PanacheEntityBase")
        || type.getAnnotations().stream()
            .anyMatch(it -> it.getRawType().getPackageName().equals("jakarta.persistence"));
  }

  private Stream<JavaClass> inRooms(Predicate<String> which) {
    return classes.stream()
        .filter(this::isBelowRoot)
        .filter(it -> which.test(nameOf(it.getPackageName())));
  }

  private Stream<Dependency> dependencies(Predicate<String> fromRooms) {
    return inRooms(fromRooms).flatMap(it -> it.getDirectDependenciesFromSelf().stream());
  }

  private static JavaClass target(Dependency dependency) {
    return dependency.getTargetClass().getBaseComponentType();
  }

  private Optional<JavaPackage> javaPackage(String name) {
    var full = root + "." + name;
    return classes.containPackage(full) ? Optional.of(classes.getPackage(full)) : Optional.empty();
  }

  private boolean isBelowRoot(JavaClass type) {
    return (type.getPackageName() + ".").startsWith(root + ".");
  }

  /** Name below the root; empty for the root itself. */
  private String nameOf(String packageName) {
    return packageName.equals(root) ? "" : packageName.substring(root.length() + 1);
  }

  private static boolean isIn(String ring, String name) {
    return name.equals(ring) || name.startsWith(ring + ".");
  }
}
