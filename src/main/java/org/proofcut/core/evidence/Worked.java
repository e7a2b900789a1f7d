package org.proofcut.core.evidence;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * A value with the way it was found: the formula in words, the values put in (each {@code Worked}
 * itself, back to what was measured or entered), and the source.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Worked<Length> inside =
 *     Worked.called("width between the sides")
 *         .by("case width − left side − right side")
 *         .with("case width", width)
 *         .with("left side", left)
 *         .with("right side", right)
 *         .is(width.value().minus(left.value()).minus(right.value()));
 * }</pre>
 *
 * @param name what this is, in shop words
 * @param formula the formula in words; empty for a value that was given and not computed
 * @param inputs what was put in, in the order of the formula
 * @param value the result
 * @param source where the formula or the given value comes from
 */
public record Worked<T>(String name, String formula, List<Input> inputs, T value, Citation source) {

  /** One value put into a formula, under the name that the formula gives it. */
  public record Input(String as, Worked<?> value) {}

  public Worked {
    Objects.requireNonNull(name);
    Objects.requireNonNull(formula);
    inputs = List.copyOf(inputs);
    Objects.requireNonNull(value);
    Objects.requireNonNull(source);
  }

  /** A value that was not computed: measured, entered, or a limit from a source. */
  public static <T> Worked<T> given(String name, T value, Citation source) {
    return new Worked<>(name, "", List.of(), value, source);
  }

  /** A value read off an instrument. */
  public static <T> Worked<T> measured(String name, T value) {
    return given(name, value, Citation.MEASURED);
  }

  /** A value that the maker chose. */
  public static <T> Worked<T> entered(String name, T value) {
    return given(name, value, Citation.ENTERED);
  }

  /** Begins the working of a computed value. */
  public static Working called(String name) {
    return new Working(name);
  }

  /** Whether this was given and not computed. */
  public boolean isGiven() {
    return formula.isEmpty();
  }

  /** The same value and working under another name. */
  public Worked<T> as(String otherName) {
    return new Worked<>(otherName, formula, inputs, value, source);
  }

  /** All lines of working, from what was given to this result; lines that read alike only once. */
  public List<Worked<?>> lines() {
    var lines = new LinkedHashMap<Line, Worked<?>>();
    collect(this, lines, Collections.newSetFromMap(new IdentityHashMap<>()));
    return List.copyOf(lines.values());
  }

  /** Each value is gone into once, however many others were worked out from it. */
  private static void collect(
      Worked<?> worked, Map<Line, Worked<?>> lines, Set<Worked<?>> alreadySeen) {
    if (alreadySeen.add(worked)) {
      for (var input : worked.inputs) {
        collect(input.value, lines, alreadySeen);
      }
      lines.putIfAbsent(worked.line(), worked);
    }
  }

  /** What one line says, without the lines before it. */
  private record Line(
      String name, String formula, List<Object> putIn, Object value, Citation source) {}

  private Line line() {
    var putIn = new ArrayList<Object>();
    for (var input : inputs) {
      putIn.add(input.as);
      putIn.add(input.value.value);
    }
    return new Line(name, formula, putIn, value, source);
  }

  /** A working in the making; {@link #is} closes it. */
  public static final class Working {
    private final String name;
    private final List<Input> inputs = new ArrayList<>();
    private String formula = "";
    private Citation source = Citation.GEOMETRY;

    private Working(String name) {
      this.name = name;
    }

    /** The formula in words, naming each input as {@link #with} does. */
    public Working by(String formulaInWords) {
      formula = formulaInWords;
      return this;
    }

    /** A value put in, under the name that the formula gives it. */
    public Working with(String as, Worked<?> value) {
      inputs.add(new Input(as, value));
      return this;
    }

    /** A value put in under its own name. */
    public Working with(Worked<?> value) {
      return with(value.name(), value);
    }

    /** Where the formula comes from; geometry unless said. */
    public Working from(Citation formulaSource) {
      source = formulaSource;
      return this;
    }

    /** The result. */
    public <T> Worked<T> is(T value) {
      if (formula.isEmpty()) {
        throw new IllegalStateException(name + " is computed by no formula");
      }
      return new Worked<>(name, formula, inputs, value, source);
    }
  }
}
