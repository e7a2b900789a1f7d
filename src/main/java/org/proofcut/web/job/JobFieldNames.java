package org.proofcut.web.job;

import java.util.Map;
import java.util.stream.Collectors;
import org.proofcut.core.intake.Field;
import org.proofcut.core.intake.JobForm;

/** What each field of the job form is called where it stands apart from its group. */
final class JobFieldNames {

  private static final Map<String, String> BY_FIELD =
      JobForm.fields().stream().collect(Collectors.toMap(Field::name, JobFieldNames::name));

  private JobFieldNames() {}

  static String of(String field) {
    return BY_FIELD.getOrDefault(field, field);
  }

  private static String name(Field field) {
    boolean ofSheet = field.name().matches("sheet-[0-9]-.*") && !field.name().endsWith("-name");
    return ofSheet
        ? "Sheet " + field.name().charAt("sheet-".length()) + ", " + field.label()
        : field.label();
  }
}
