package org.proofcut.content;

import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.proofcut.core.boring.BoringLimits;
import org.proofcut.core.casework.CaseLimits;
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
