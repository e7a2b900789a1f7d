package org.proofcut.rulebook;

import com.google.common.collect.ImmutableCollection;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import dev.cel.common.CelIssue;
import dev.cel.common.CelValidationException;
import dev.cel.common.types.CelType;
import dev.cel.common.types.CelTypeProvider;
import dev.cel.common.types.ListType;
import dev.cel.common.types.SimpleType;
import dev.cel.common.types.StructType;
import dev.cel.common.types.StructTypeReference;
import dev.cel.compiler.CelCompiler;
import dev.cel.compiler.CelCompilerFactory;
import dev.cel.parser.CelStandardMacro;
import dev.cel.runtime.CelEvaluationException;
import dev.cel.runtime.CelRuntime;
import dev.cel.runtime.CelRuntimeFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.proofcut.core.safety.Fact;

/** Compiles conditions against a {@link Vocabulary}. */
public final class Conditions {

  private static final String FACT = "fact";
  private static final String LIMIT = "limit";

  /** More than any rule needs; a condition of this length is judged in microseconds. */
  static final int LONGEST = 2_000;

  /** How deep brackets may lie in each other. */
  static final int DEEPEST = 20;

  private static final Pattern UNDEFINED_FIELD = Pattern.compile("undefined field '(\\w+)'");

  private static final Pattern LOOP =
      Pattern.compile("undeclared reference to '(all|exists|exists_one|existsOne|map|filter)'");

  private final Vocabulary vocabulary;
  private final CelCompiler compiler;
  private final CelRuntime runtime = CelRuntimeFactory.standardCelRuntimeBuilder().build();

  public Conditions(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
    var types =
        Map.<String, CelType>of(
            FACT,
            struct(
                FACT,
                Arrays.stream(Fact.values()).collect(Collectors.toMap(Fact::id, Conditions::type))),
            LIMIT,
            struct(
                LIMIT,
                vocabulary.limits().keySet().stream()
                    .collect(Collectors.toMap(Function.identity(), id -> SimpleType.INT))));
    // Of CEL's macros only has(…): a condition that needs a loop should be a fact instead.
    compiler =
        CelCompilerFactory.standardCelCompilerBuilder()
            .setTypeProvider(new ClosedTypes(types))
            .setStandardMacros(CelStandardMacro.HAS)
            .addVar(FACT, StructTypeReference.create(FACT))
            .addVar(LIMIT, StructTypeReference.create(LIMIT))
            .setResultType(SimpleType.BOOL)
            .build();
  }

  /** Compiles the condition of a rule for all operations on these machines. */
  public Optional<Condition> compile(
      String text, List<String> machines, Consumer<ConditionFault> faults) {
    return compile(text, machines, List.of(), faults);
  }

  /**
   * Compiles the condition of a rule.
   *
   * @param machines the machines that the rule is for; all if empty
   * @param operations the operations that the rule is for; all if empty
   * @param faults is told what is wrong; then nothing is given back
   */
  public Optional<Condition> compile(
      String text,
      List<String> machines,
      List<String> operations,
      Consumer<ConditionFault> faults) {
    var tooMuch = tooMuch(text);
    if (tooMuch.isPresent()) {
      faults.accept(tooMuch.get());
      return Optional.empty();
    }
    var result = compiler.compile(text);
    if (result.hasError()) {
      var loop =
          result.getErrors().stream().filter(Conditions::isLoop).map(CelIssue::getSourceLocation);
      var first = loop.findFirst();
      if (first.isPresent()) {
        faults.accept(
            new ConditionFault.Wrong(
                Math.max(0, first.get().getColumn()),
                "a loop has no place in a condition",
                "a fact that says what the loop would find out"));
        return Optional.empty();
      }
      result.getErrors().forEach(issue -> faults.accept(fault(text, issue)));
      return Optional.empty();
    }
    try {
      var tree = result.getAst();
      var reading = ConditionReader.read(tree, vocabulary, machines, operations);
      if (!reading.faults().isEmpty()) {
        reading.faults().forEach(faults);
        return Optional.empty();
      }
      return Optional.of(
          new Condition(
              text, runtime.createProgram(tree), reading.facts(), limits(reading.limits())));
    } catch (CelValidationException | CelEvaluationException e) {
      throw new IllegalStateException("checked, and yet no program: " + text, e);
    }
  }

  /** Looked at before it is compiled: the compiler goes into each bracket by calling itself. */
  private static Optional<ConditionFault> tooMuch(String text) {
    if (text.length() > LONGEST) {
      return Optional.of(
          new ConditionFault.Wrong(
              0,
              "the condition has %,d characters".formatted(text.length()),
              "at most %,d; two rules say as much as one".formatted(LONGEST)));
    }
    int open = 0;
    for (int at = 0; at < text.length(); at++) {
      switch (text.charAt(at)) {
        case '(', '[', '{', '?' -> open++;
        case ')', ']', '}' -> open--;
        default -> {}
      }
      if (open > DEEPEST) {
        return Optional.of(
            new ConditionFault.Wrong(
                at,
                "the condition is nested too deeply",
                "brackets at most %d deep".formatted(DEEPEST)));
      }
    }
    return Optional.empty();
  }

  private SortedMap<String, Limit> limits(Set<String> ids) {
    var limits = new TreeMap<String, Limit>();
    ids.forEach(id -> limits.put(id, vocabulary.limits().get(id)));
    return limits;
  }

  private ConditionFault fault(String text, CelIssue issue) {
    var column = Math.max(0, issue.getSourceLocation().getColumn());
    var undefined = UNDEFINED_FIELD.matcher(issue.getMessage());
    if (!undefined.find()) {
      return new ConditionFault.Wrong(
          column,
          "the condition can't be read: " + withoutCandidates(issue.getMessage()),
          "facts and limits compared with each other, true or false in the end");
    }
    // CEL points at the dot before the name.
    return text.substring(0, column).endsWith(LIMIT)
        ? new ConditionFault.UnknownName(
            column, "limit", undefined.group(1), List.copyOf(vocabulary.limits().keySet()))
        : new ConditionFault.UnknownName(
            column,
            "fact",
            undefined.group(1),
            Arrays.stream(Fact.values()).map(Fact::id).toList());
  }

  private static boolean isLoop(CelIssue issue) {
    return LOOP.matcher(issue.getMessage()).find();
  }

  private static String withoutCandidates(String message) {
    return message.replaceFirst(" \\(candidates: .*", "").replaceFirst(" \\(in container .*", "");
  }

  private static CelType type(Fact fact) {
    return switch (fact.type()) {
      case TEXT -> SimpleType.STRING;
      case TEXTS -> ListType.create(SimpleType.STRING);
      case YES_NO -> SimpleType.BOOL;
      case COUNT, SPEED, LENGTH, WEIGHT, LEVEL -> SimpleType.INT;
    };
  }

  private static StructType struct(String name, Map<String, CelType> fields) {
    return StructType.create(
        name,
        ImmutableSet.copyOf(fields.keySet()),
        field -> Optional.ofNullable(fields.get(field)));
  }

  /** The two types there are: facts and limits. */
  private record ClosedTypes(Map<String, CelType> byName) implements CelTypeProvider {

    @Override
    public ImmutableCollection<CelType> types() {
      return ImmutableList.copyOf(byName.values());
    }

    @Override
    public Optional<CelType> findType(String name) {
      return Optional.ofNullable(byName.get(name));
    }
  }
}
