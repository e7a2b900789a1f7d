package org.proofcut.content;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;

/**
 * A condition with one thing about it wrong: a comparison flipped, a clause turned round or left
 * out. Reads the condition by itself, so that it shares nothing with what judges it.
 */
final class ConditionMutants {

  private static final Pattern TOKEN =
      Pattern.compile("\"[^\"]*\"|'[^']*'|&&|\\|\\||==|!=|<=|>=|[-+*<>!()\\[\\],]|[\\w.]+");

  private static final Map<String, List<String>> FLIPPED =
      Map.of(
          "<", List.of("<=", ">", ">="),
          "<=", List.of("<", ">", ">="),
          ">", List.of(">=", "<", "<="),
          ">=", List.of(">", "<", "<="),
          "==", List.of("!="),
          "!=", List.of("=="));

  private sealed interface Node {

    String text();
  }

  /** Clauses joined by {@code &&} or {@code ||}. */
  private record Joined(String by, List<Node> clauses) implements Node {

    @Override
    public String text() {
      return "(" + String.join(" " + by + " ", clauses.stream().map(Node::text).toList()) + ")";
    }
  }

  private record Not(Node node) implements Node {

    @Override
    public String text() {
      return "!(" + node.text() + ")";
    }
  }

  private record Compared(String left, String by, String right) implements Node {

    @Override
    public String text() {
      return left + " " + by + " " + right;
    }
  }

  private record Plain(String text) implements Node {}

  private final List<String> tokens = new ArrayList<>();
  private int at;

  private ConditionMutants(String condition) {
    var matcher = TOKEN.matcher(condition);
    while (matcher.find()) {
      tokens.add(matcher.group());
    }
  }

  /** Every mutant of a condition, as text; none of them the condition itself. */
  static Set<String> of(String condition) {
    var whole = new ConditionMutants(condition).or();
    var mutants = new LinkedHashSet<String>();
    mutants(whole, node -> node, mutants);
    mutants.remove(whole.text());
    return mutants;
  }

  /** The condition as it was understood; for a test that it was understood right. */
  static String understood(String condition) {
    return new ConditionMutants(condition).or().text();
  }

  private static void mutants(Node node, UnaryOperator<Node> put, Set<String> mutants) {
    mutants.add(put.apply(new Not(node)).text());
    if (node instanceof Compared compared) {
      for (var by : FLIPPED.getOrDefault(compared.by(), List.of())) {
        mutants.add(put.apply(new Compared(compared.left(), by, compared.right())).text());
      }
    } else if (node instanceof Not not) {
      mutants(not.node(), inner -> put.apply(new Not(inner)), mutants);
    } else if (node instanceof Joined joined) {
      var other = joined.by().equals("&&") ? "||" : "&&";
      mutants.add(put.apply(new Joined(other, joined.clauses())).text());
      for (int i = 0; i < joined.clauses().size(); i++) {
        int which = i;
        var rest = new ArrayList<>(joined.clauses());
        rest.remove(which);
        mutants.add(
            put.apply(rest.size() == 1 ? rest.get(0) : new Joined(joined.by(), rest)).text());
        mutants(
            joined.clauses().get(which),
            inner -> {
              var changed = new ArrayList<>(joined.clauses());
              changed.set(which, inner);
              return put.apply(new Joined(joined.by(), changed));
            },
            mutants);
      }
    }
  }

  private Node or() {
    return joined("||", this::and);
  }

  private Node and() {
    return joined("&&", this::unary);
  }

  private Node joined(String by, Supplier<Node> part) {
    var parts = new ArrayList<Node>();
    parts.add(part.get());
    while (next(by)) {
      parts.add(part.get());
    }
    return parts.size() == 1 ? parts.get(0) : new Joined(by, List.copyOf(parts));
  }

  private Node unary() {
    if (next("!")) {
      return new Not(unary());
    }
    if (next("(")) {
      var inner = or();
      require(")");
      return inner;
    }
    return comparison();
  }

  private Node comparison() {
    var left = term();
    if (at < tokens.size() && compares(tokens.get(at))) {
      var by = tokens.get(at++);
      return new Compared(left, by, term());
    }
    return new Plain(left);
  }

  /** Up to what can't belong to it; brackets go along whole. */
  private String term() {
    var text = new StringBuilder();
    int open = 0;
    while (at < tokens.size()) {
      var token = tokens.get(at);
      boolean opens = token.equals("(") || token.equals("[");
      boolean closes = token.equals(")") || token.equals("]");
      if (open == 0 && (closes || token.equals("&&") || token.equals("||") || compares(token))) {
        break;
      }
      open += opens ? 1 : closes ? -1 : 0;
      text.append(text.isEmpty() ? "" : " ").append(token);
      at++;
    }
    return text.toString();
  }

  private static boolean compares(String token) {
    return token.equals("in") || FLIPPED.containsKey(token);
  }

  private boolean next(String token) {
    if (at < tokens.size() && tokens.get(at).equals(token)) {
      at++;
      return true;
    }
    return false;
  }

  private void require(String token) {
    if (!next(token)) {
      throw new IllegalStateException(token + " expected at " + at + " of " + tokens);
    }
  }
}
