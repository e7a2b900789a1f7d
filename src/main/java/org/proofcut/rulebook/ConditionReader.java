package org.proofcut.rulebook;

import dev.cel.common.CelAbstractSyntaxTree;
import dev.cel.common.ast.CelConstant;
import dev.cel.common.ast.CelExpr;
import dev.cel.common.ast.CelExpr.CelCall;
import dev.cel.common.ast.CelExpr.CelSelect;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.proofcut.core.safety.Fact;
import org.proofcut.core.safety.Fact.Type;

/**
 * Reads a type-checked condition once more, for what CEL's types can't see: whether two numbers
 * measure the same thing, whether a word is one that the fact can say, whether an optional fact is
 * asked for first, whether a measured number is written where a limit should stand.
 */
final class ConditionReader {

  private static final Map<String, Fact> FACTS =
      Arrays.stream(Fact.values()).collect(Collectors.toMap(Fact::id, Function.identity()));

  /** What a condition speaks of, or what is wrong with it. */
  record Reading(Set<Fact> facts, Set<String> limits, List<ConditionFault> faults) {}

  /**
   * What a part of a condition stands for.
   *
   * @param fact the text fact whose words it may be compared with
   * @param words the words written here
   */
  private record Term(Type type, Optional<Fact> fact, List<String> words) {

    static Term of(Type type) {
      return new Term(type, Optional.empty(), List.of());
    }
  }

  private final CelAbstractSyntaxTree tree;
  private final Vocabulary vocabulary;
  private final List<String> machines;
  private final List<String> operations;
  private final Set<Fact> facts = EnumSet.noneOf(Fact.class);
  private final Set<String> limits = new TreeSet<>();
  private final List<ConditionFault> faults = new ArrayList<>();

  private ConditionReader(
      CelAbstractSyntaxTree tree,
      Vocabulary vocabulary,
      List<String> machines,
      List<String> operations) {
    this.tree = tree;
    this.vocabulary = vocabulary;
    this.machines = machines;
    this.operations = operations;
  }

  static Reading read(
      CelAbstractSyntaxTree tree,
      Vocabulary vocabulary,
      List<String> machines,
      List<String> operations) {
    var reader = new ConditionReader(tree, vocabulary, machines, operations);
    reader.term(tree.getExpr(), Set.of());
    return new Reading(reader.facts, reader.limits, reader.faults);
  }

  /**
   * @param known the optional facts that are certainly there when this part is looked at
   */
  private Term term(CelExpr part, Set<Fact> known) {
    return switch (part.getKind()) {
      case SELECT -> selected(part, known);
      case CONSTANT -> constant(part, part.constant());
      case LIST ->
          new Term(
              Type.TEXTS,
              Optional.empty(),
              part.list().elements().stream()
                  .flatMap(item -> term(item, known).words().stream())
                  .toList());
      case CALL -> called(part, part.call(), known);
      default -> refused(part, part.getKind().toString().toLowerCase(java.util.Locale.ROOT));
    };
  }

  private Term selected(CelExpr part, Set<Fact> known) {
    var select = part.select();
    var fact = FACTS.get(select.field());
    if (fact == null || !isOf(select, "fact")) {
      limits.add(select.field());
      return Term.of(vocabulary.limits().get(select.field()).type());
    }
    facts.add(fact);
    var alwaysThere = vocabulary.isAlwaysThere(fact, machines, operations);
    if (select.testOnly()) {
      if (alwaysThere) {
        add(
            part,
            "has(fact.%s) would hide that it is missing: here it must be there"
                .formatted(fact.id()),
            "has(…) around facts that may be missing on the rule's machines");
      }
      return Term.of(Type.YES_NO);
    }
    if (!alwaysThere && !known.contains(fact)) {
      add(
          part,
          "fact.%s may be missing".formatted(fact.id()),
          "has(fact.%1$s) && fact.%1$s …, or a rule for machines that always say it"
              .formatted(fact.id()));
    }
    return new Term(fact.type(), Optional.of(fact), List.of());
  }

  private Term constant(CelExpr part, CelConstant constant) {
    return switch (constant.getKind()) {
      case STRING_VALUE -> new Term(Type.TEXT, Optional.empty(), List.of(constant.stringValue()));
      case BOOLEAN_VALUE -> Term.of(Type.YES_NO);
      case INT64_VALUE -> {
        if (constant.int64Value() < 0 || constant.int64Value() > 1) {
          add(
              part,
              "the bare number " + constant.int64Value(),
              "limit.<id>, with its source, in safety/limits; 0 and 1 may be counted with");
        }
        yield Term.of(Type.COUNT);
      }
      default -> refused(part, "a constant of this kind");
    };
  }

  private Term called(CelExpr part, CelCall call, Set<Fact> known) {
    var args = call.args();
    switch (call.function()) {
      case "!_" -> term(args.get(0), known);
      case "_&&_" -> {
        term(args.get(0), known);
        term(args.get(1), with(known, thereIf(true, args.get(0))));
      }
      case "_||_" -> {
        term(args.get(0), known);
        term(args.get(1), with(known, thereIf(false, args.get(0))));
      }
      case "_==_", "_!=_", "_<_", "_<=_", "_>_", "_>=_" ->
          compared(part, term(args.get(0), known), term(args.get(1), known));
      case "@in" -> worded(part, term(args.get(0), known), term(args.get(1), known));
      case "_+_", "_-_" -> {
        var left = term(args.get(0), known);
        compared(part, left, term(args.get(1), known));
        return Term.of(left.type());
      }
      case "_*_" -> {
        return product(part, term(args.get(0), known), term(args.get(1), known));
      }
      default -> refused(part, call.function());
    }
    return Term.of(Type.YES_NO);
  }

  private void compared(CelExpr part, Term left, Term right) {
    if (left.type() != right.type()) {
      add(
          part,
          "%s is set against %s".formatted(words(left.type()), words(right.type())),
          "two of the same: length with length, speed with speed, count with count");
    }
    worded(part, left, right);
  }

  /** A word that the fact never says would make the condition false for ever, unseen. */
  private void worded(CelExpr part, Term left, Term right) {
    var fact = left.fact().or(right::fact);
    var known = fact.map(vocabulary.words()::get);
    if (known.isPresent()) {
      for (var term : List.of(left, right)) {
        for (var word : term.words()) {
          if (!known.get().contains(word)) {
            faults.add(
                new ConditionFault.UnknownName(
                    column(part), "word of fact." + fact.get().id(), word, known.get()));
          }
        }
      }
    }
  }

  private Term product(CelExpr part, Term left, Term right) {
    if (left.type() != Type.COUNT && right.type() != Type.COUNT) {
      add(
          part,
          "%s times %s".formatted(words(left.type()), words(right.type())),
          "a count times a length or a speed");
    }
    return Term.of(left.type() == Type.COUNT ? right.type() : left.type());
  }

  private Term refused(CelExpr part, String what) {
    add(
        part,
        what + " has no place in a condition",
        "&& || ! == != < <= > >= + - * in has(…), words, lists of words");
    return Term.of(Type.YES_NO);
  }

  /** The facts that must be there if this part has turned out so. */
  private static Set<Fact> thereIf(boolean outcome, CelExpr part) {
    if (part.getKind() == CelExpr.ExprKind.Kind.SELECT) {
      var fact = FACTS.get(part.select().field());
      return outcome && part.select().testOnly() && fact != null ? Set.of(fact) : Set.of();
    }
    if (part.getKind() != CelExpr.ExprKind.Kind.CALL) {
      return Set.of();
    }
    var args = part.call().args();
    return switch (part.call().function()) {
      case "!_" -> thereIf(!outcome, args.get(0));
      case "_&&_", "_||_" -> {
        var both = part.call().function().equals("_&&_") == outcome;
        yield both ? with(thereIf(outcome, args.get(0)), thereIf(outcome, args.get(1))) : Set.of();
      }
      default -> Set.of();
    };
  }

  private static Set<Fact> with(Set<Fact> some, Set<Fact> others) {
    var all = EnumSet.noneOf(Fact.class);
    all.addAll(some);
    all.addAll(others);
    return all;
  }

  private static boolean isOf(CelSelect select, String variable) {
    return select.operand().identOrDefault().name().equals(variable);
  }

  private static String words(Type type) {
    return switch (type) {
      case TEXT -> "a text";
      case TEXTS -> "a list of texts";
      case YES_NO -> "a yes or no";
      case COUNT -> "a count";
      case SPEED -> "a speed";
      case LENGTH -> "a length";
      case WEIGHT -> "a weight";
      case LEVEL -> "a level of noise";
    };
  }

  private void add(CelExpr part, String what, String allowed) {
    faults.add(new ConditionFault.Wrong(column(part), what, allowed));
  }

  private int column(CelExpr part) {
    return tree.getSource().getPositionsMap().getOrDefault(part.id(), 0);
  }
}
