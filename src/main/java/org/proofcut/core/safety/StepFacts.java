package org.proofcut.core.safety;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.measure.Length;

/** What is true of one step, for the rules to judge. Every fact is present or declared optional. */
public final class StepFacts {

  private final Map<Fact, Object> values;

  private StepFacts(Map<Fact, Object> values) {
    this.values = values;
  }

  public static Builder builder() {
    return new Builder();
  }

  /** The value of a fact; empty only where the fact is optional. */
  public Optional<Object> value(Fact fact) {
    return Optional.ofNullable(values.get(fact));
  }

  @Override
  public String toString() {
    return values.toString();
  }

  /** Collects facts and refuses a wrong type or a missing one: both are faults of the program. */
  public static final class Builder {
    private final Map<Fact, Object> values = new EnumMap<>(Fact.class);

    public Builder with(Fact fact, Object value) {
      if (!fact.type().javaType().isInstance(value)) {
        throw new IllegalArgumentException(fact + " takes a " + fact.type() + ", not " + value);
      }
      values.put(fact, value instanceof List<?> list ? List.copyOf(list) : value);
      return this;
    }

    public Builder with(Fact fact, long count) {
      return with(fact, (Object) count);
    }

    public Builder with(Fact fact, Length length) {
      return with(fact, (Object) length);
    }

    public Builder with(Fact fact, Amount amount) {
      return with(fact, (Object) amount);
    }

    public StepFacts build() {
      for (var fact : Fact.values()) {
        if (!fact.isOptional() && !values.containsKey(fact)) {
          throw new IllegalStateException("a step must say its " + fact.id());
        }
      }
      return new StepFacts(new EnumMap<>(values));
    }
  }
}
