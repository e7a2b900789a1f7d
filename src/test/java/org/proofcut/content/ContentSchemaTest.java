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
import org.proofcut.core.exposure.MachineDust;
import org.proofcut.core.exposure.MachineNoise;
import org.proofcut.core.exposure.NoiseLaw;
import org.proofcut.core.exposure.PanelMark;
import org.proofcut.core.exposure.Wood;
import org.proofcut.core.shop.GearKind;
import org.proofcut.core.shop.LiquidKind;
import org.proofcut.core.shop.WorkAid;
import org.proofcut.core.storage.ThingKind;
import org.proofcut.rulebook.Limit;

/** The schemas in {@code docs/schema} are those of the records that read content. */
class ContentSchemaTest {

  private static final Path FOLDER = Path.of("docs/schema");

  private final JsonSchema schema =
      new JsonSchema(
          ContentReader.binder(
              new Faults(),
              entry -> Optional.empty(),
              entry -> entry.value().check(Map.of(), new Faults())));

  @TestFactory
  Stream<DynamicTest> schemas() {
    var schemas = new LinkedHashMap<String, Map<String, Object>>();
    schemas.put("facts", schema.byId("content/facts.yaml", FactEntry.class));
    schemas.put("regions", schema.byId("content/regions.yaml", Region.class));
    schemas.put("sources", schema.byId("content/sources/*.yaml", Source.class));
    schemas.put("noise-levels", schema.byId("content/exposure/levels.yaml", MachineNoise.class));
    schemas.put("noise-laws", schema.byId("content/exposure/laws.yaml", NoiseLaw.class));
    schemas.put("liquids", schema.byId("content/stock/liquids.yaml", LiquidKind.class));
    schemas.put("gear", schema.byId("content/shop/gear.yaml", GearKind.class));
    schemas.put("gear-pairs", schema.byId("content/shop/gear-pairs.yaml", GearPairEntry.class));
    schemas.put("storage", schema.byId("content/storage/kinds.yaml", ThingKind.class));
    schemas.put("aids", schema.byId("content/shop/aids.yaml", WorkAid.class));
    schemas.put(
        "cutter-change", schema.byId("content/shop/cutter-change.yaml", CutterChange.class));
    schemas.put("operation", schema.one("content/operation/<id>.yaml", OperationWording.class));
    schemas.put("trouble", schema.byId("content/trouble.yaml", Trouble.class));
    schemas.put("safety-limits", schema.byId("content/safety/limits/*.yaml", Limit.class));
    schemas.put("rule", schema.one("content/safety/<family>/<id>.yaml", RuleEntry.class));
    schemas.put(
        "cases", schema.one("content/safety/<family>/<id>.cases.yaml", RuleCase.File.class));
    schemas.put("none-here", schema.byId("content/safety/none-here/*.yaml", NoneHere.class));
    schemas.put("species", schema.byId("content/stock/species.yaml", Wood.class));
    schemas.put("machine-dust", schema.byId("content/exposure/machines.yaml", MachineDust.class));
    schemas.put(
        "air-limits",
        schema.byId("content/exposure/air-limits.yaml", DustReader.AirLimitEntry.class));
    schemas.put("masks", schema.byId("content/exposure/masks.yaml", DustReader.MaskEntry.class));
    schemas.put("panel-marks", schema.byId("content/exposure/panel-marks.yaml", PanelMark.class));
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
