package org.proofcut.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.junit.jupiter.api.Test;

class SchemaNamesTest {

  /** Of two under one name, the description shows one: the other is described as what it is not. */
  @Test
  void schemas_eachHasANameOfItsOwn() {
    Map<String, List<String>> byName =
        new ClassFileImporter()
            .importPackages("org.proofcut.web.api").stream()
                .filter(one -> one.isAnnotatedWith(Schema.class))
                .collect(
                    Collectors.groupingBy(
                        one -> one.getAnnotationOfType(Schema.class).name(),
                        Collectors.mapping(JavaClass::getName, Collectors.toList())));
    assertTrue(byName.size() > 100, () -> "only " + byName.size() + " were found");
    byName.values().removeIf(classes -> classes.size() == 1);
    assertEquals(Map.of(), byName);
  }
}
