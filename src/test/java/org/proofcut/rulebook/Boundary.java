package org.proofcut.rulebook;

import dev.cel.common.CelValidationException;
import dev.cel.common.ast.CelExpr;
import dev.cel.compiler.CelCompilerFactory;
import dev.cel.parser.CelStandardMacro;
import java.util.Map;
import java.util.Set;
import org.proofcut.core.safety.StepFacts;

/**
 * Whether a step lies exactly at a limit of a condition: both sides of the comparison are equal.
 */
public final class Boundary {

  private static final Set<String> COMPARISONS = Set.of("_<_", "_<=_", "_>_", "_>=_");

  private final Condition condition;
  private final String limit;
  private final Map<String, Object> facts;

  private Boundary(Condition condition, String limit, StepFacts step) {
    this.condition = condition;
    this.limit = limit;
    facts = Condition.values(step);
  }

  public static boolean isReached(Condition condition, String limit, StepFacts step) {
    try {
      var parser =
          CelCompilerFactory.standardCelCompilerBuilder()
              .setStandardMacros(CelStandardMacro.HAS)
              .build();
      return new Boundary(condition, limit, step)
          .isReached(parser.parse(condition.text()).getAst().getExpr());
    } catch (CelValidationException e) {
      throw new IllegalStateException(condition.text(), e);
    }
  }

  private boolean isReached(CelExpr part) {
    if (part.getKind() != CelExpr.ExprKind.Kind.CALL) {
      return false;
    }
    var call = part.call();
    return COMPARISONS.contains(call.function())
        ? part.toString().contains("." + limit + "\n")
            && number(call.args().get(0)) == number(call.args().get(1))
        : call.args().stream().anyMatch(this::isReached);
  }

  private long number(CelExpr part) {
    if (part.getKind() == CelExpr.ExprKind.Kind.SELECT) {
      var id = part.select().field();
      return part.select().operand().ident().name().equals("limit")
          ? condition.limits().get(id).number()
          : (Long) facts.getOrDefault(id, Long.MIN_VALUE);
    }
    var left = number(part.call().args().get(0));
    var right = number(part.call().args().get(1));
    return switch (part.call().function()) {
      case "_+_" -> left + right;
      case "_-_" -> left - right;
      case "_*_" -> left * right;
      default -> throw new IllegalStateException(part.call().function());
    };
  }
}
