package org.proofcut.content;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.proofcut.core.boring.BoringLimits;
import org.proofcut.core.casework.CaseLimits;
import org.proofcut.core.evidence.Amount;
import org.proofcut.core.evidence.Worked;
import org.proofcut.core.exposure.ExposureLimits;
import org.proofcut.core.exposure.ExtractionLimits;
import org.proofcut.core.exposure.LiftLimits;
import org.proofcut.core.exposure.StandingLimits;
import org.proofcut.core.fit.FitLimits;
import org.proofcut.core.habit.HabitLimits;
import org.proofcut.core.measure.Length;
import org.proofcut.core.operation.OperationLimits;
import org.proofcut.core.safety.Fact;
import org.proofcut.core.setup.DrillLimits;
import org.proofcut.core.setup.KnifeLimits;
import org.proofcut.core.setup.RouterLimits;
import org.proofcut.core.setup.SawLimits;
import org.proofcut.core.setup.SettingLimits;
import org.proofcut.core.storage.StorageLimits;
import org.proofcut.core.weight.Densities;
import org.proofcut.core.weight.Density;
import org.proofcut.rulebook.Limit;

/**
 * A folder of limits and the record that a room takes them as.
 *
 * <p>Each component of the record is one limit: {@code Worked<Length>}, {@code Worked<Integer>}, or
 * {@code Worked} of a list of records. The files of the folder may share them out as they like.
 *
 * @param path below the content folder, such as {@code fit/limits}
 */
record LimitFolder(String path, Class<? extends Record> type) {

  /** The rooms that take their limits from content; one line each. */
  static final List<LimitFolder> ALL =
      List.of(
          new LimitFolder("fit/limits", FitLimits.class),
          new LimitFolder("boring/limits", BoringLimits.class),
          new LimitFolder("exposure/limits/noise", ExposureLimits.class),
          new LimitFolder("casework/limits", CaseLimits.class),
          new LimitFolder("setup/limits/settings", SettingLimits.class),
          new LimitFolder("setup/limits/router", RouterLimits.class),
          new LimitFolder("setup/limits/saw", SawLimits.class),
          new LimitFolder("setup/limits/knives", KnifeLimits.class),
          new LimitFolder("setup/limits/drill", DrillLimits.class),
          new LimitFolder("operation/limits", OperationLimits.class),
          new LimitFolder("habit/limits", HabitLimits.class),
          new LimitFolder("exposure/limits/extraction", ExtractionLimits.class),
          new LimitFolder("exposure/limits/lifting", LiftLimits.class),
          new LimitFolder("exposure/limits/standing", StandingLimits.class),
          new LimitFolder("storage/limits", StorageLimits.class),
          new LimitFolder("weight/limits", Densities.class));

  /** The limits of a record that are one number each, by the names that conditions use. */
  static Map<String, Limit> single(Record limits) {
    var single = new LinkedHashMap<String, Limit>();
    for (var component : limits.getClass().getRecordComponents()) {
      var worked = (Worked<?>) read(limits, component);
      type(worked.value())
          .ifPresent(
              type ->
                  single.put(
                      snake(component.getName()),
                      new Limit(worked.name(), type, number(worked.value()), worked.source())));
    }
    return single;
  }

  /**
   * The figures of a record by the names that conditions would use, each with the numbers in it;
   * not those that are lists.
   */
  static Map<String, Figure> figures(Record limits) {
    var figures = new LinkedHashMap<String, Figure>();
    for (var component : limits.getClass().getRecordComponents()) {
      var worked = (Worked<?>) read(limits, component);
      var numbers = numbers(worked.value());
      if (!numbers.isEmpty()) {
        figures.put(snake(component.getName()), new Figure(worked, numbers));
      }
    }
    return figures;
  }

  /**
   * A limit with the numbers in it, in one unit.
   *
   * @param numbers at least one
   */
  record Figure(Worked<?> limit, List<BigDecimal> numbers) {

    /** Whether each number is within so many times that of another one, or that part of it. */
    boolean isNear(Figure other, int times) {
      var many = BigDecimal.valueOf(times);
      return IntStream.range(0, numbers.size())
          .allMatch(n -> isNear(numbers.get(n), other.numbers.get(n), many));
    }

    private static boolean isNear(BigDecimal here, BigDecimal there, BigDecimal many) {
      return here.signum() == there.signum()
          && here.abs().compareTo(there.abs().multiply(many)) <= 0
          && there.abs().compareTo(here.abs().multiply(many)) <= 0;
    }
  }

  private static List<BigDecimal> numbers(Object value) {
    if (value instanceof Length length) {
      return List.of(BigDecimal.valueOf(length.picometres()));
    }
    if (value instanceof Integer count) {
      return List.of(BigDecimal.valueOf(count));
    }
    if (value instanceof Density density) {
      return List.of(
          BigDecimal.valueOf(density.leastKilogramsPerCubicMetre()),
          BigDecimal.valueOf(density.mostKilogramsPerCubicMetre()));
    }
    return value instanceof Amount amount ? List.of(amount.value()) : List.of();
  }

  private static Optional<Fact.Type> type(Object value) {
    if (value instanceof Length) {
      return Optional.of(Fact.Type.LENGTH);
    }
    return value instanceof Integer ? Optional.of(Fact.Type.COUNT) : Optional.empty();
  }

  private static Object number(Object value) {
    return value instanceof Integer count ? (Object) count.longValue() : value;
  }

  private static String snake(String name) {
    return name.replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
  }

  private static Object read(Record limits, RecordComponent component) {
    try {
      var accessor = component.getAccessor();
      accessor.setAccessible(true);
      return accessor.invoke(limits);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(component + " can't be read", e);
    }
  }
}
