package org.proofcut.content;

import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.proofcut.content.yaml.Faults;
import org.proofcut.content.yaml.JsonSchema;
import org.proofcut.core.checklist.CutterChange;
import org.proofcut.core.checklist.OperationWording;
import org.proofcut.core.shop.GearKind;
import org.proofcut.core.shop.LiquidKind;
import org.proofcut.core.shop.WorkAid;
import org.proofcut.rulebook.Limit;

/** The schemas in {@code docs/schema} are those of the records that read content. */
class ContentSchemaTest {

  private static final Path FOLDER = Path.of("docs/schema");

  private final JsonSchema schema =
      new JsonSchema(ContentReader.binder(new Faults(), entry -> Optional.empty()));

  @TestFactory
  Stream<DynamicTest> schemas() {
    var schemas = new LinkedHashMap<String, Map<String, Object>>();
    schemas.put("facts", schema.byId("content/facts.yaml", FactEntry.class));
    schemas.put("regions", schema.byId("content/regions.yaml", Region.class));
    schemas.put("sources", schema.byId("content/sources/*.yaml", Source.class));
    schemas.put("liquids", schema.byId("content/stock/liquids.yaml", LiquidKind.class));
    schemas.put("gear", schema.byId("content/shop/gear.yaml", GearKind.class));
    schemas.put("aids", schema.byId("content/shop/aids.yaml", WorkAid.class));
    schemas.put(
        "cutter-change", schema.byId("content/shop/cutter-change.yaml", CutterChange.class));
    schemas.put("operation", schema.one("content/operation/<id>.yaml", OperationWording.class));
    schemas.put("trouble", schema.byId("content/trouble.yaml", Trouble.class));
    schemas.put("safety-limits", schema.byId("content/safety/limits/*.yaml", Limit.class));
    schemas.put("rule", schema.one("content/safety/<family>/<id>.yaml", RuleEntry.class));
    schemas.put(
        "cases", schema.one("content/safety/<family>/<id>.cases.yaml", RuleCase.File.class));
    for (var folder : LimitFolder.ALL) {
      schemas.put(
          folder.path().replace('/', '-'),
          schema.one("content/" + folder.path() + "/*.yaml", folder.type()));
    }
    return schemas.entrySet().stream()
        .map(
            entry ->
                dynamicTest(
                    entry.getKey(),
                    () ->
                        Golden.assertSame(
                            FOLDER.resolve(entry.getKey() + ".schema.json"),
                            new ObjectMapper()
                                    .writerWithDefaultPrettyPrinter()
                                    .writeValueAsString(entry.getValue())
                                + "\n")));
  }
}
